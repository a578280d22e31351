// This file is about what went wrong between us and a server, in words for a person. No key and no stack ever stands in them.
import { APIConnectionTimeoutError, APIError } from 'openai'
import type { Refusal } from './profile.ts'
import { isRecord, type Trouble } from './speech.ts'

export interface Mishap {
  readonly trouble: Trouble
  readonly refusal?: Refusal
  readonly message: string
}

const plainly: Readonly<Record<Exclude<Trouble, 'unauthorised' | 'rejected' | 'upstream' | 'busy'>, string>> = {
  aborted: 'The question was taken back before the answer came.',
  idle: 'The server began to answer, then went quiet.',
  timeout: 'The server did not answer in time.',
  unreachable: 'Nothing answers at this address.',
  cut: 'The answer stopped before its end.',
  unreadable:
    'The server sent something that is not an answer. Check that the address is right; it usually ends in /v1.',
}

export const mishap = (trouble: keyof typeof plainly): Mishap => ({ trouble, message: plainly[trouble] })

export function mishapOf(fault: unknown, key: string | undefined): Mishap {
  if (fault instanceof APIConnectionTimeoutError) return mishap('timeout')
  if (!(fault instanceof APIError) || fault.status === undefined) return mishap('unreachable')
  return refusedWith(Number(fault.status), fault.error, key)
}

/** A status and a body, or an error inside an answer. */
export function refusedWith(status: number | undefined, body: unknown, key: string | undefined): Mishap {
  const words = wordsIn(body).join('\n')
  const said = quotable(body, key)
  const of = (trouble: Trouble, message: string): Mishap => ({
    trouble,
    message: `${message}${said}`,
    ...(status === undefined ? {} : { refusal: { status, words } }),
  })
  if (status === 401 || status === 403)
    return { trouble: 'unauthorised', message: 'The server did not accept the key.' }
  if (status === 404)
    return of('rejected', 'The server does not know this model or this address. The address usually ends in /v1.')
  if (status === 408 || status === 504) return { trouble: 'timeout', message: plainly.timeout }
  if (status === 429) return of('busy', 'The server is asked too much at the moment. Try again later.')
  if (status === undefined || status >= 500) return of('upstream', 'The server failed while answering.')
  return of('rejected', 'The server did not take the question.')
}

/** Every text in a value, however deep. */
function wordsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(wordsIn)
  return isRecord(value) ? Object.values(value).flatMap(wordsIn) : []
}

/** The server's own reason, where it is one short line that holds nothing of the key and no markup. */
function quotable(body: unknown, key: string | undefined): string {
  const outer = isRecord(body) && isRecord(body.error) ? body.error : body
  const reason = isRecord(outer)
    ? [outer.message, outer.detail, outer.error].find((it) => typeof it === 'string')
    : outer
  if (typeof reason !== 'string') return ''
  const line = reason.trim()
  if (line === '' || line.length > 200 || /[<>\n\r]|\bat .*:\d+|bearer|sk-/i.test(line) || holdsPartOf(line, key))
    return ''
  return ` It said: “${line}”`
}

// Servers repeat keys whole, or their first and last letters.
function holdsPartOf(line: string, key: string | undefined): boolean {
  if (key === undefined) return false
  const size = Math.min(4, key.length)
  for (let at = 0; at + size <= key.length; at++) if (line.includes(key.slice(at, at + size))) return true
  return false
}
