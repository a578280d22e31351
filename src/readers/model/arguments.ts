// This file is about the arguments of a call as text: where one JSON value ends, and whether it can be read.
import { isRecord } from './speech.ts'

/** The end of the JSON object or list that opens at `start`, or undefined where the text stops first. */
export function endOfJson(text: string, start: number): number | undefined {
  let depth = 0
  let quoted = false
  for (let at = start; at < text.length; at++) {
    const letter = text[at]
    if (quoted) {
      if (letter === '\\') at++
      else if (letter === '"') quoted = false
    } else if (letter === '"') quoted = true
    else if (letter === '{' || letter === '[') depth++
    else if (letter === '}' || letter === ']') {
      depth--
      if (depth === 0) return at + 1
      if (depth < 0) return undefined
    }
  }
  return undefined
}

/** One JSON object from end to end, with nothing after it. */
export function isWholeObject(text: string): boolean {
  const said = text.trim()
  return said.startsWith('{') && endOfJson(said, 0) === said.length
}

/** Several whole objects written one behind the other are several calls. Anything else is left as it is. */
export function separateObjects(text: string): string[] {
  const parts: string[] = []
  let rest = text.trim()
  while (rest.startsWith('{')) {
    const end = endOfJson(rest, 0)
    if (end === undefined) break
    parts.push(rest.slice(0, end))
    rest = rest.slice(end).trimStart()
  }
  if (parts.length === 0) return [text]
  if (rest.startsWith('{')) parts.push(rest)
  else if (rest !== '') return [text]
  // An empty object before a filled one is a place held open, not a call.
  const filled = parts.filter((part) => !isEmptyObject(part))
  return filled.length > 0 ? filled : parts
}

export const isEmptyObject = (text: string): boolean => /^\s*\{\s*\}\s*$/.test(text)

export type ArgumentsRead =
  | { readonly state: 'ok'; readonly args: Record<string, unknown> }
  | { readonly state: 'bad-json' | 'truncated'; readonly args: null }

/** Empty or null means no arguments. Text that stops inside a value is truncated; anything else unreadable is bad JSON. */
export function readArguments(raw: string): ArgumentsRead {
  const said = raw.trim()
  if (said === '' || said === 'null' || said === '[]' || said === '""') return { state: 'ok', args: {} }
  try {
    const value: unknown = JSON.parse(said)
    // Some servers write the JSON as a JSON string.
    if (typeof value === 'string') return readArguments(value)
    return isRecord(value) ? { state: 'ok', args: value } : { state: 'bad-json', args: null }
  } catch {
    return { state: stopsShort(said) ? 'truncated' : 'bad-json', args: null }
  }
}

const stopsShort = (text: string): boolean => /^[{["]/.test(text) && endOfJson(text, 0) === undefined
