// This file is about the bytes of an answer: server-sent events, one whole JSON document, or lines of JSON, told apart by looking.
// The content type is not believed: servers send events as JSON, and JSON as events.

export type Arrival =
  | { readonly kind: 'event'; readonly value: unknown }
  | { readonly kind: 'done' }
  | { readonly kind: 'unreadable'; readonly why: 'markup' | 'json' | 'empty' }

export interface EventReader {
  /** The events that these bytes complete. Bytes may be cut anywhere, inside a letter too. */
  push(bytes: Uint8Array): Arrival[]
  /** What was left when the bytes ended. */
  end(): Arrival[]
}

export function createEventReader(): EventReader {
  // The decoder drops a byte order mark at the start, and waits for the rest of a letter.
  const decoder = new TextDecoder()
  const events = createEventLines()
  let form: 'unknown' | 'events' | 'document' = 'unknown'
  let text = ''
  let arrived = 0

  const read = (last: boolean): Arrival[] => {
    if (form === 'unknown') {
      const first = text.trimStart()[0]
      if (first !== undefined) form = '{[<'.includes(first) ? 'document' : 'events'
    }
    if (form !== 'events') return last ? documentIn(text) : []
    const { lines, rest } = wholeLines(text, last)
    text = rest
    const arrivals = lines.flatMap(events.take)
    if (last) arrivals.push(...events.end())
    arrived += arrivals.length
    return last && arrived === 0 ? [{ kind: 'unreadable', why: 'empty' }] : arrivals
  }
  return {
    push: (bytes) => {
      text += decoder.decode(bytes, { stream: true })
      return read(false)
    },
    end: () => {
      text += decoder.decode()
      return read(true)
    },
  }
}

function wholeLines(text: string, last: boolean): { lines: string[]; rest: string } {
  // A carriage return at the very end may be the first half of a line end.
  const held = !last && text.endsWith('\r') ? '\r' : ''
  const lines = text.slice(0, text.length - held.length).split(/\r\n|\n|\r/)
  const rest = last ? '' : (lines.pop() ?? '') + held
  return { lines, rest }
}

function createEventLines() {
  let name = ''
  let data: string | undefined

  const dispatch = (): Arrival[] => {
    const [said, called] = [data?.trim() ?? '', name]
    name = ''
    data = undefined
    return arrivalOf(said, called)
  }
  const take = (line: string): Arrival[] => {
    if (line === '') return dispatch()
    if (line.startsWith(':')) return []
    const [, field, value] = /^([^:]*):? ?(.*)$/s.exec(line) ?? []
    if (field === 'event') name = (value ?? '').trim()
    if (field !== 'data') return []
    // Some servers leave out the blank line between events: a whole event is not waited upon.
    const before = data !== undefined && isWholeEvent(data) ? dispatch() : []
    data = data === undefined ? value : `${data}\n${value}`
    return before
  }
  return { take, end: dispatch }
}

const isWholeEvent = (data: string): boolean => data.trim().startsWith('[DONE]') || parsed(data) !== undefined

function arrivalOf(data: string, name: string): Arrival[] {
  if (data.startsWith('[DONE]')) return [{ kind: 'done' }]
  const value = parsed(data)
  // "ping" and the like are signs of life; a broken piece of JSON may have held part of the answer.
  if (value === undefined) return /[{[]/.test(data) ? [{ kind: 'unreadable', why: 'json' }] : []
  if (name === 'error' && !hasError(value)) return [{ kind: 'event', value: { error: value } }]
  return [{ kind: 'event', value }]
}

const hasError = (value: unknown): boolean => typeof value === 'object' && value !== null && 'error' in value

function documentIn(text: string): Arrival[] {
  const said = text.trim()
  if (said === '') return [{ kind: 'unreadable', why: 'empty' }]
  if (said.startsWith('<')) return [{ kind: 'unreadable', why: 'markup' }]
  const whole = parsed(said)
  if (whole !== undefined) {
    const values: unknown[] = Array.isArray(whole) ? whole : [whole]
    return [...values.map((value): Arrival => ({ kind: 'event', value })), { kind: 'done' }]
  }
  const lines = said.split(/\r\n|\n|\r/).filter((line) => line.trim() !== '')
  const values = lines.map(parsed)
  if (lines.length < 2 || values.includes(undefined)) return [{ kind: 'unreadable', why: 'json' }]
  return values.map((value): Arrival => ({ kind: 'event', value }))
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
