// This file is about errors over HTTP: one shape, a fitting status, a sentence that says what to do.
import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'

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
