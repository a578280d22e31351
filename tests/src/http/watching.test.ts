// What whoever runs the server sees of it: a line for each request, counts, spans, readiness; and nothing of what was said in any of them.
import { serve } from '@hono/node-server'
import { type Span, type SpanOptions, SpanStatusCode, trace, type Tracer } from '@opentelemetry/api'
import type { AddressInfo } from 'node:net'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { logTo } from '../../../src/http/watching.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import { type Store, Unavailable } from '../../../src/store/store.ts'

const secret = '0123456789abcdef0123456789abcdef'

interface Line {
  readonly level: string
  readonly request: string
  readonly method: string
  readonly route: string
  readonly status: number
  readonly ms: number
}

let store: Store
let lines: string[]
beforeEach(async () => {
  store = await openStore({ memory: true })
  lines = []
})
afterEach(() => store.close())

const offline = createAssistant(offlineReader)
const served = (itsSecret?: string, itsStore: Store = store, turn = offline.turn, wants: 'all' | 'faults' = 'all') =>
  createApp({
    assistant: { turn },
    store: itsStore,
    version: '1.2.3',
    front: 'offline',
    renderReply: (it) => it,
    host: '127.0.0.1',
    secret: itsSecret,
    log: logTo(
      (line) => lines.push(line),
      wants,
      () => new Date(0),
    ),
  })
const logged = (): Line[] => lines.map((it) => JSON.parse(it) as Line)
const json = { 'content-type': 'application/json' }
const said = (text: string) => ({ method: 'POST', headers: json, body: JSON.stringify({ text }) })

describe('the log', () => {
  it('has one line of JSON for each request: its id, as the answer has it, route, status and duration', async () => {
    const app = served()
    const answer = await app.request('/api/calculations')
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatch(/^\{.*\}\n$/)
    const [line] = logged()
    expect(line).toEqual({
      at: '1970-01-01T00:00:00.000Z',
      level: 'info',
      request: answer.headers.get('request-id'),
      method: 'GET',
      route: '/api/calculations',
      status: 200,
      ms: expect.any(Number),
    })
    expect(line?.request).toMatch(/^[\da-f]{8}-[\da-f-]{27}$/)
    const other = await app.request('/api/calculations', { headers: { 'request-id': line?.request ?? '' } })
    expect(other.headers.get('request-id')).not.toBe(line?.request)
  })

  it('names the route as the program has it: no talk, no word, no address that somebody made up', async () => {
    const app = served()
    const { id } = await store.create()
    await app.request(`/api/conversations/${id}/turns`, said('How many feet is 96 in, Wilhelmina?'))
    const { link } = (await (await app.request(`/api/conversations/${id}/share`, { method: 'POST' })).json()) as {
      link: string
    }
    await app.request(link)
    await app.request('/api/conversations/wilhelmina')
    await app.request('/wilhelmina?wilhelmina=1', { headers: { 'user-agent': 'Wilhelmina' } })
    await app.request('/api/calculations', { method: 'WILHELMINA' })
    await app.request(`/api/conversations/${id}`, { headers: { host: 'wilhelmina.test' } })
    expect(logged().map((it) => [it.method, it.route, it.status])).toEqual([
      ['POST', '/api/conversations/:id/turns', 200],
      ['POST', '/api/conversations/:id/share', 201],
      ['GET', '/shared/:link', 200],
      ['GET', '/api/conversations/:id', 404],
      ['GET', 'none', 404],
      ['other', 'none', 405],
      ['GET', '/api/conversations/:id', 403],
    ])
    for (const hidden of [/wilhelmina/i, id, link.split('.')[1] ?? '', '96 in'])
      expect(lines.join('')).not.toMatch(hidden)
  })

  it('of a fault says what kind it is and where, under the id that the person was given, and not what it says', async () => {
    const app = served(
      undefined,
      store,
      () => Promise.reject(new TypeError('cannot read “my neighbour’s gate”')),
      'faults',
    )
    const { id } = await store.create()
    await app.request(`/api/conversations/${id}`)
    expect(lines).toEqual([])
    const answer = await app.request(`/api/conversations/${id}/turns`, said('my neighbour’s gate'))
    expect(answer.status).toBe(500)
    expect(logged()).toEqual([
      {
        at: '1970-01-01T00:00:00.000Z',
        level: 'error',
        request: answer.headers.get('request-id'),
        fault: 'fault',
        kind: 'TypeError',
        where: expect.stringMatching(/^ {4}at .*watching\.test/),
      },
    ])
    expect(lines[0]).not.toContain('gate')
  })

  it('of a database that is away says why', async () => {
    const away = new Unavailable(
      'database-away',
      'away',
      Object.assign(new Error('connect ECONNREFUSED'), { code: 'ECONNREFUSED' }),
    )
    const app = served(undefined, { ...store, list: () => Promise.reject(away) }, offline.turn, 'faults')
    expect((await app.request('/api/conversations')).status).toBe(503)
    expect(logged()).toMatchObject([{ level: 'error', fault: 'database-away', because: 'connect ECONNREFUSED' }])
  })

  it('of a stream has the line when it has ended', async () => {
    let go = (): void => {}
    const held = new Promise<void>((resolve) => {
      go = resolve
    })
    const app = served(undefined, store, async (...asked) => {
      await held
      return offline.turn(...asked)
    })
    const { id } = await store.create()
    const server = serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' })
    await new Promise((resolve) => server.once('listening', resolve))
    try {
      const at = `http://127.0.0.1:${(server.address() as AddressInfo).port}/api/conversations/${id}/turns`
      const answer = await fetch(at, {
        ...said('How many feet is 96 in?'),
        headers: { ...json, accept: 'text/event-stream' },
      })
      expect([answer.status, lines]).toEqual([200, []])
      go()
      expect(await answer.text()).toContain('event: answer')
      await expect
        .poll(() => logged().map((it) => [it.route, it.status]))
        .toEqual([['/api/conversations/:id/turns', 200]])
    } finally {
      server.close()
    }
  })
})

describe('the counts', () => {
  it('stand in the text that scrapers read, with the routes as the program has them', async () => {
    const app = served()
    for (let i = 0; i < 3; i++) await app.request('/api/conversations')
    await app.request('/api/conversations/wilhelmina')
    const answer = await app.request('/metrics')
    expect(answer.headers.get('content-type')).toBe('text/plain; version=0.0.4; charset=utf-8')
    const text = await answer.text()
    expect(text).toContain('plumbpost_requests_total{method="GET",route="/api/conversations",status="200"} 3\n')
    expect(text).toContain('plumbpost_requests_total{method="GET",route="/api/conversations/:id",status="404"} 1\n')
    expect(text).toContain('plumbpost_request_seconds_bucket{route="/api/conversations",le="+Inf"} 3\n')
    expect(text).toContain('plumbpost_request_seconds_count{route="/api/conversations"} 3\n')
    expect(text).toContain('plumbpost_database_retries_total 0\n')
    expect(text).not.toMatch(/wilhelmina/i)
    // The form of a line, after the exposition format: comments, or a name, labels and a number.
    const label = '[a-z]+="(?:[^"\\\\\\n]|\\\\["\\\\n])*"'
    const line = new RegExp(`^(?:# (?:HELP|TYPE) [a-z_]+ .+|[a-z_]+(?:\\{${label}(?:,${label})*\\})? [\\d.e+-]+)$`)
    expect(
      text
        .trimEnd()
        .split('\n')
        .filter((it) => !line.test(it)),
    ).toEqual([])
    // Each bucket holds those below it too.
    const buckets = [...text.matchAll(/_bucket\{route="\/api\/conversations",le="[^"]+"\} (\d+)/g)].map((it) =>
      Number(it[1]),
    )
    expect(buckets).toHaveLength(8)
    expect(buckets).toEqual(buckets.toSorted((a, b) => a - b))
  })

  it('are for whoever runs the server: on another machine the secret is asked', async () => {
    const app = served(secret)
    expect((await app.request('/metrics')).status).toBe(401)
    expect((await app.request('/metrics', { headers: { authorization: `Bearer ${secret}` } })).status).toBe(200)
  })
})

describe('readiness', () => {
  it('is said when the database answers, without a secret, beside whether the server is up', async () => {
    const app = served(secret)
    const answer = await app.request('/readyz')
    expect([answer.status, await answer.json()]).toEqual([200, { ready: true }])
    expect((await app.request('/healthz')).status).toBe(200)
  })

  it('is denied when it does not, or lacks its tables, while the server is up', async () => {
    for (const broken of [
      { isOf: () => Promise.reject(new Error('no such column: owner')) },
      { tokens: () => Promise.reject(new Unavailable('database-away', 'away', new Error('gone'))) },
    ]) {
      const app = served(secret, { ...store, ...broken })
      const answer = await app.request('/readyz')
      expect([answer.status, answer.headers.get('retry-after')]).toEqual([503, '5'])
      expect(await answer.json()).toMatchObject({ error: { code: 'not-ready' } })
      expect((await app.request('/healthz')).status).toBe(200)
    }
  })
})

describe('traces', () => {
  afterEach(() => trace.disable())

  it('are spans of whoever set tracing up: named by route, with its status, and nothing else', async () => {
    const spans: { name: string; attributes: object; status?: SpanStatusCode; isEnded: boolean }[] = []
    const start = (name: string): Span => {
      const kept: (typeof spans)[number] = { name, attributes: {}, isEnded: false }
      spans.push(kept)
      const span = {
        updateName: (it: string) => Object.assign(kept, { name: it }) && span,
        setAttributes: (it: object) => Object.assign(kept.attributes, it) && span,
        setStatus: ({ code }: { code: SpanStatusCode }) => Object.assign(kept, { status: code }) && span,
        end: () => Object.assign(kept, { isEnded: true }),
      }
      return span as unknown as Span
    }
    trace.setGlobalTracerProvider({
      getTracer: () =>
        ({
          startActiveSpan: (name: string, _: SpanOptions, within: (span: Span) => unknown) => within(start(name)),
        }) as unknown as Tracer,
    })
    const app = served(undefined, { ...store, list: () => Promise.reject(new Error('broken')) })
    await app.request('/api/conversations/wilhelmina')
    await app.request('/api/conversations')
    const route = '/api/conversations'
    expect(spans).toEqual([
      {
        name: `GET ${route}/:id`,
        attributes: { 'http.request.method': 'GET', 'http.route': `${route}/:id`, 'http.response.status_code': 404 },
        isEnded: true,
      },
      {
        name: `GET ${route}`,
        attributes: { 'http.request.method': 'GET', 'http.route': route, 'http.response.status_code': 500 },
        status: SpanStatusCode.ERROR,
        isEnded: true,
      },
    ])
  })
})
