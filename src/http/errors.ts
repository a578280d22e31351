// This file is about errors over HTTP: one shape, a fitting status, a sentence that says what to do.
import type { Context } from 'hono'
import { accepts } from 'hono/accepts'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { Unavailable } from '../store/store.ts'
import { refusalPage } from '../web/refusal.tsx'

/** One shape for programs; a page for whoever followed a link in a browser, which asks for one. */
export function failed(
  c: Context,
  status: ContentfulStatusCode,
  code: string,
  message: string,
  field?: string,
): Response {
  c.header('Vary', 'Accept', { append: true })
  const [json, html] = ['application/json', 'text/html']
  const wanted = accepts(c, { header: 'Accept', supports: [json, html], default: json })
  return c.req.method === 'GET' && wanted === html
    ? c.html(refusalPage({ message, hasBook: c.get('visitor') !== undefined }), status)
    : c.json({ error: { code, message, ...(field ? { field } : {}) } }, status)
}

export const noConversation = (c: Context, id: string): Response =>
  failed(
    c,
    404,
    'no-conversation',
    `There is no conversation “${id.slice(0, 60)}”. It may have been deleted. Start a new one.`,
  )

/** A fault of ours, written to the log and said without a word of its inside. */
export function sayFault(c: Context, fault: unknown): { readonly code: string; readonly message: string } {
  const log = c.get('log')
  const request = c.get('requestId')
  if (fault instanceof Unavailable) {
    const { message, code } = fault.cause as { message?: string; code?: string }
    log('error', { request, fault: fault.code, because: message || code })
    return { code: fault.code, message: fault.message }
  }
  log('error', { request, fault: 'fault', ...whereFrom(fault) })
  return {
    code: 'fault',
    message: 'Something went wrong here, and it is not your doing. Nothing you had is lost. Try again.',
  }
}

/** What broke, and where. What it says of itself is left out: it may hold what somebody wrote. */
function whereFrom(fault: unknown): { readonly kind: string; readonly where?: string } {
  if (!(fault instanceof Error)) return { kind: typeof fault }
  const frames = (fault.stack ?? '').split('\n').filter((it) => /^ {4}at /.test(it))
  return { kind: [fault.name, (fault as { code?: string }).code].filter(Boolean).join(' '), where: frames.join('\n') }
}

const comeBackSeconds = 5

export function faulted(c: Context, fault: unknown): Response {
  const { code, message } = sayFault(c, fault)
  if (!(fault instanceof Unavailable)) return failed(c, 500, code, message)
  c.header('Retry-After', String(comeBackSeconds))
  return failed(c, code === 'database-full' ? 507 : 503, code, message)
}
