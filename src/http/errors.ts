// This file is about errors over HTTP: one shape, a fitting status, a sentence that says what to do.
import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { Unavailable } from '../store/store.ts'

export const failed = (
  c: Context,
  status: ContentfulStatusCode,
  code: string,
  message: string,
  field?: string,
): Response => c.json({ error: { code, message, ...(field ? { field } : {}) } }, status)

export const noConversation = (c: Context, id: string): Response =>
  failed(
    c,
    404,
    'no-conversation',
    `There is no conversation “${id.slice(0, 60)}”. It may have been deleted. Start a new one.`,
  )

/** A fault of ours, written to the log and said without a word of its inside. */
export function sayFault(fault: unknown): { readonly code: string; readonly message: string } {
  if (fault instanceof Unavailable) {
    const { message, code } = fault.cause as { message?: string; code?: string }
    process.stderr.write(`${fault.code}: ${message || code}\n`)
    return { code: fault.code, message: fault.message }
  }
  process.stderr.write(`${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`)
  return {
    code: 'fault',
    message: 'Something went wrong here, and it is not your doing. Nothing you had is lost. Try again.',
  }
}

const comeBackSeconds = 5

export function faulted(c: Context, fault: unknown): Response {
  const { code, message } = sayFault(fault)
  if (!(fault instanceof Unavailable)) return failed(c, 500, code, message)
  c.header('Retry-After', String(comeBackSeconds))
  return failed(c, 503, code, message)
}
