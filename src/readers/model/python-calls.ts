// This file is about calls written as Python would: `[layout(length="96 ft"), hole_depth(soil='clay')]`.

export interface PythonCall {
  readonly name: string
  readonly args: Record<string, unknown>
}

/** The calls that open at `start`, alone or in a list, and where they end; undefined where it is anything else. */
export function readPythonCalls(text: string, start: number): { calls: PythonCall[]; end: number } | undefined {
  const cursor = { text, at: start }
  try {
    skipSpace(cursor)
    const listed = take(cursor, '[')
    const calls = [readCall(cursor)]
    if (listed) {
      while (take(cursor, ',')) calls.push(readCall(cursor))
      demand(cursor, ']')
    }
    return { calls, end: cursor.at }
  } catch (fault) {
    if (fault instanceof NotPython) return undefined
    throw fault
  }
}

interface Cursor {
  readonly text: string
  at: number
}

class NotPython extends Error {}

function readCall(cursor: Cursor): PythonCall {
  const name = readName(cursor, /[A-Za-z_][\w.]*/y)
  demand(cursor, '(')
  const args: Record<string, unknown> = {}
  while (!take(cursor, ')')) {
    const key = readName(cursor, /[A-Za-z_]\w*/y)
    demand(cursor, '=')
    args[key] = readValue(cursor)
    if (!take(cursor, ',')) {
      demand(cursor, ')')
      break
    }
  }
  return { name, args }
}

function readValue(cursor: Cursor): unknown {
  skipSpace(cursor)
  const letter = cursor.text[cursor.at]
  if (letter === '"' || letter === "'") return readQuoted(cursor, letter)
  if (take(cursor, '[')) return readListed(cursor)
  if (take(cursor, '{')) return readMapped(cursor)
  const word = readName(cursor, /-?[\w.]+/y)
  if (word === 'True' || word === 'true') return true
  if (word === 'False' || word === 'false') return false
  if (word === 'None' || word === 'null') return null
  const figure = Number(word)
  if (Number.isNaN(figure)) throw new NotPython()
  return figure
}

function readListed(cursor: Cursor): unknown[] {
  const values: unknown[] = []
  while (!take(cursor, ']')) {
    values.push(readValue(cursor))
    if (!take(cursor, ',')) {
      demand(cursor, ']')
      break
    }
  }
  return values
}

function readMapped(cursor: Cursor): Record<string, unknown> {
  const mapped: Record<string, unknown> = {}
  while (!take(cursor, '}')) {
    const key = String(readValue(cursor))
    demand(cursor, ':')
    mapped[key] = readValue(cursor)
    if (!take(cursor, ',')) {
      demand(cursor, '}')
      break
    }
  }
  return mapped
}

const escapes: Readonly<Record<string, string>> = { n: '\n', t: '\t', r: '\r' }

function readQuoted(cursor: Cursor, quote: string): string {
  let said = ''
  for (cursor.at++; cursor.at < cursor.text.length; cursor.at++) {
    const letter = cursor.text[cursor.at] ?? ''
    if (letter === quote) {
      cursor.at++
      return said
    }
    if (letter === '\\') {
      cursor.at++
      const escaped = cursor.text[cursor.at] ?? ''
      said += escapes[escaped] ?? escaped
    } else said += letter
  }
  throw new NotPython()
}

function readName(cursor: Cursor, form: RegExp): string {
  skipSpace(cursor)
  form.lastIndex = cursor.at
  const found = form.exec(cursor.text)?.[0]
  if (found === undefined) throw new NotPython()
  cursor.at += found.length
  return found
}

function skipSpace(cursor: Cursor): void {
  while (/\s/.test(cursor.text[cursor.at] ?? '')) cursor.at++
}

function take(cursor: Cursor, letter: string): boolean {
  skipSpace(cursor)
  if (cursor.text[cursor.at] !== letter) return false
  cursor.at++
  return true
}

function demand(cursor: Cursor, letter: string): void {
  if (!take(cursor, letter)) throw new NotPython()
}
