// This file is about what whoever runs the server can see of it: a line of its log for each request, counts to scrape, and a span where tracing is set up.
// Nothing of what was said, of whose it is or which talk it is in.
import { randomUUID } from 'node:crypto'
import { SpanKind, SpanStatusCode, trace } from '@opentelemetry/api'
import type { Context, MiddlewareHandler } from 'hono'
import { matchedRoutes } from 'hono/route'
import type { Metrics } from './metrics.ts'

/** One line of the log. Its fields are our own words and numbers. */
export type Log = (level: 'info' | 'error', entry: Readonly<Record<string, string | number | undefined>>) => void

declare module 'hono' {
  interface ContextVariableMap {
    requestId: string
    log: Log
  }
}

/** A line of JSON to standard error; of the ordinary ones only where they are wanted. */
export const logTo =
  (write: (line: string) => void, wants: 'all' | 'faults', clock: () => Date = () => new Date()): Log =>
  (level, entry) => {
    if (level === 'info' && wants === 'faults') return
    write(`${JSON.stringify({ at: clock().toISOString(), level, ...entry })}\n`)
  }

/** The route as it stands in the program, never the address that was asked for. */
const routeOf = (c: Context): string => matchedRoutes(c).findLast((it) => it.method !== 'ALL')?.path ?? 'none'

/** The program serves no others; what somebody made up names no count. */
const knownMethods = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'])

const tracer = trace.getTracer('plumbpost')

export const watched =
  (log: Log, metrics: Metrics): MiddlewareHandler =>
  (c, next) => {
    const began = performance.now()
    const requestId = randomUUID()
    const method = knownMethods.has(c.req.method) ? c.req.method : 'other'
    c.set('requestId', requestId)
    c.set('log', log)
    return tracer.startActiveSpan(method, { kind: SpanKind.SERVER }, async (span) => {
      await next()
      c.header('Request-Id', requestId)
      const route = routeOf(c)
      const { status } = c.res
      const end = (): void => {
        const seconds = (performance.now() - began) / 1000
        log('info', { request: requestId, method, route, status, ms: Math.round(seconds * 1000) })
        metrics.count({ method, route, status, seconds })
        span.updateName(`${method} ${route}`)
        // Names as in OpenTelemetry's semantic conventions for HTTP, 1.23.
        span.setAttributes({ 'http.request.method': method, 'http.route': route, 'http.response.status_code': status })
        if (status >= 500) span.setStatus({ code: SpanStatusCode.ERROR })
        span.end()
      }
      // A stream goes on after this: it has ended when the last of it is sent, or its listener is gone.
      const { outgoing } = (c.env ?? {}) as { outgoing?: NodeJS.EventEmitter }
      if (outgoing) outgoing.once('close', end)
      else end()
    })
  }
