// Every route, as the app has them, with whatever may come: no fault of ours, no hang, nothing of the inside told, no empty error.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { connect, type AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { serve, type ServerType } from '@hono/node-server'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { legibly } from '../../../src/http/listening.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { createPage } from '../../../src/web/app.tsx'
import { workedExample } from '../../../src/web/example.ts'
import { renderReply } from '../../../src/web/markdown.ts'

const secret = 'aSecretOfThisServer0123456789'
/** `npm run soak` takes many more rounds, from other seeds. */
const times = Number(process.env.FUZZ_TIMES ?? 1)
const seed = Number(process.env.FUZZ_SEED ?? 20_261_127)

let store: Store
let id = ''
let link = ''
let alone: ReturnType<typeof createApp>
let among: ReturnType<typeof createApp>
const assets = mkdtempSync(join(tmpdir(), 'plumbpost-fuzz-'))
const lines: string[] = []

beforeAll(async () => {
  for (const name of ['page.js', 'page.css']) writeFileSync(join(assets, name), '/* */')
  store = await openStore({ memory: true })
  const parts = {
    assistant: createAssistant(offlineReader),
    store,
    version: '1.2.3',
    front: 'offline',
    renderReply,
    log: (level: string, entry: object) => level === 'error' && lines.push(JSON.stringify(entry)),
    page: createPage({ assets, example: workedExample, front: 'offline' }),
  } as const
  alone = createApp({ ...parts, host: '127.0.0.1' })
  among = createApp({ ...parts, host: '0.0.0.0', secret })
  id = (await store.create()).id
  const post = { method: 'POST', headers: { 'content-type': 'application/json' } }
  const text = 'What spacing for a 70 5/8 in bay, 3 1/2 in pickets, gaps at most 2 1/2 in?'
  await alone.request(`/api/conversations/${id}/turns`, { ...post, body: JSON.stringify({ text }) })
  link = ((await (await alone.request(`/api/conversations/${id}/share`, post)).json()) as { link: string }).link.slice(
    '/shared/'.length,
  )
})
afterAll(async () => {
  await store.close()
  rmSync(assets, { recursive: true, force: true })
})

/** Of the app itself, so that one that is added tomorrow is here too. */
const routes = () => [
  ...new Map(
    alone.routes.filter((it) => it.method !== 'ALL').map(({ method, path }) => [`${method} ${path}`, { method, path }]),
  ).values(),
]

const odd = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom(
    '..',
    '.',
    '%',
    '%00',
    '%ff',
    '%2e%2e%2f',
    '\u202e',
    "'; drop table turns; --",
    '__proto__',
    'constructor',
    '-1',
    '1e9',
    '0x1',
    '9'.repeat(400),
    'a'.repeat(3000),
    '<script>',
    '{{7*7}}',
    '\ud800',
  ),
)
const inAddress = (text: string): string => encodeURIComponent(Buffer.from(text).toString())
const inPath = odd.map((it) => inAddress(it)).filter((it) => it !== '.' && it !== '..')
const escaped = fc.oneof(inPath, fc.constantFrom('%', '%zz', '%ff', '%c0%ae', '%00', '..;', '*', ':id', '%252e%252e'))

const json = fc.oneof(
  fc.json({ maxDepth: 4 }),
  fc
    .record(
      {
        text: fc.oneof(odd, fc.jsonValue(), fc.constant('a'.repeat(20_001))),
        word: fc.oneof(odd, fc.constant('picketWidth'), fc.jsonValue()),
        at: fc.oneof(odd, fc.constant('yard'), fc.jsonValue()),
        value: fc.oneof(odd, fc.constant('3 1/2 in'), fc.jsonValue()),
        branch: fc.oneof(fc.double(), fc.jsonValue()),
        system: fc.oneof(fc.constantFrom('metric', 'imperial'), fc.jsonValue()),
        inputs: fc.oneof(fc.dictionary(odd, fc.jsonValue()), fc.record({ opening: fc.jsonValue() }), fc.jsonValue()),
        __proto__: fc.jsonValue(),
      },
      { requiredKeys: [] },
    )
    .map((it) => JSON.stringify(it)),
)
const body = fc.oneof(
  { weight: 4, arbitrary: json },
  json.chain((it) => fc.nat(it.length).map((cut) => it.slice(0, cut))),
  fc.uint8Array({ maxLength: 200 }),
  fc.constantFrom(
    '',
    ' ',
    'null',
    '[]',
    '"text"',
    '{"text":"a","text":1}',
    '{"text":"\\u0000"}',
    '{"text":"\\ud800"}',
    '\ufeff{"text":"a"}',
    `${'['.repeat(5000)}${']'.repeat(5000)}`,
    `{"text":${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}}`,
    '{"text":1e999}',
    `{"text":"${'a'.repeat(1_000_001)}"}`,
    '{"__proto__":{"text":"a"}}',
  ),
)

/** What the standard lets stand in a header (RFC 9110, 5.5), and no more: the rest does not come through Node. */
const inHeader = fc.string({
  unit: fc
    .integer({ min: 0x20, max: 0xff })
    .filter((it) => it !== 0x7f)
    .map((it) => String.fromCharCode(it)),
  maxLength: 60,
})
const headers = fc.record(
  {
    'content-type': fc.oneof(
      fc.constantFrom(
        'application/json',
        'application/json; charset=utf-16',
        'text/plain',
        'multipart/form-data',
        'application/x-www-form-urlencoded',
        'application/problem+json',
      ),
      inHeader,
    ),
    accept: fc.oneof(
      fc.constantFrom(
        'text/event-stream',
        'application/json',
        '*/*',
        'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8',
        'text/html;q=many',
        'text/html;q=0, ;;, ,=',
      ),
      inHeader,
    ),
    'idempotency-key': fc.oneof(inHeader, fc.constant('k'.repeat(5000))),
    'last-event-id': fc.oneof(inHeader, fc.constantFrom('-1', 'NaN', '1e9', '99999999999999999999')),
    authorization: fc.oneof(
      inHeader,
      fc.constantFrom('Basic', 'Basic =', 'Bearer ', `Bearer ${'a'.repeat(43)}.g1c.${'b'.repeat(43)}`),
    ),
    cookie: fc.oneof(
      inHeader,
      fc.constantFrom(
        'plumbpost-owner=',
        `plumbpost-owner=${'a'.repeat(43)}.zzzzzzzz.${'b'.repeat(43)}`,
        'plumbpost-owner=%',
      ),
    ),
    'if-none-match': inHeader,
    'content-length': fc.constantFrom('0', '5', '-1', '1e9', 'many'),
    'content-encoding': fc.constantFrom('gzip', 'br', 'identity'),
    'x-forwarded-for': inHeader,
    'x-forwarded-proto': inHeader,
    'x-http-method-override': fc.constant('DELETE'),
  },
  { requiredKeys: [] },
)
const methods = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS', 'PROPFIND', 'POST2', 'get']

interface Sent {
  readonly method: string
  readonly at: string
  readonly headers: Record<string, string | undefined>
  readonly body: string | Uint8Array
}

/** That route's address with each of its parts right, or anything. */
function addressOf(path: string): fc.Arbitrary<string> {
  const parts = path.split('/').map((part) => {
    if (part === ':id') return fc.oneof({ weight: 2, arbitrary: fc.constant(id) }, escaped)
    if (part === ':link')
      return fc.oneof({ weight: 2, arbitrary: fc.constant(link) }, fc.constant(`${id}.${'é'.repeat(43)}`), escaped)
    if (part.startsWith(':n')) return fc.oneof(fc.constantFrom('0', '1', '00', '9'.repeat(30)), escaped)
    if (part.startsWith(':export'))
      return fc.oneof(
        fc.constantFrom(
          'export.json',
          'export.md',
          'export.csv',
          'export.ics',
          'export.svg',
          'export.constructor',
          'export.',
        ),
        escaped,
      )
    if (part === ':name') return fc.oneof(fc.constantFrom('picket-spacing', 'post-depth', 'toString'), escaped)
    return part.startsWith(':') ? escaped : fc.constant(part)
  })
  const after = fc.oneof(
    { weight: 4, arbitrary: fc.constant('') },
    fc.constantFrom('/', '//', '?', '#', '?a=%', '/..'),
    odd.map((it) => `?${inAddress(it)}`),
  )
  return fc.tuple(...parts).chain((it) => after.map((end) => `${it.join('/')}${end}`))
}

async function answered({ method, at, headers: sent, body: carried }: Sent, app: typeof alone): Promise<void> {
  const request = new Request(`http://127.0.0.1:4680${at}`, {
    method,
    headers: Object.fromEntries(Object.entries(sent).filter((it): it is [string, string] => it[1] !== undefined)),
    ...(/^(GET|HEAD)$/i.test(method) ? {} : { body: carried as BodyInit, duplex: 'half' }),
  })
  const answer = await app.request(request)
  const text = await answer.text()
  expect(answer.status).toBeLessThan(500)
  expect(answer.headers.get('x-content-type-options')).toBe('nosniff')
  expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'")
  expect(answer.headers.get('content-security-policy')).toMatch(
    /object-src 'none'.*base-uri 'none'.*frame-ancestors 'none'/,
  )
  expect(answer.headers.get('strict-transport-security')).toBe('max-age=31536000; includeSubDomains')
  expect(answer.headers.get('referrer-policy')).toBe('no-referrer')
  if (text !== '')
    expect(answer.headers.get('content-type')).toMatch(
      /charset=utf-8|^application\/(json|schema\+json|pdf)|^image\/svg|^text\/event-stream/i,
    )
  expect(answer.headers.get('request-id')).toMatch(/^[\da-f-]{36}$/)
  expect([...answer.headers].filter(([name]) => name.startsWith('access-control'))).toEqual([])
  expectNothingInside(text)
  // MCP has a shape of its own for what it refuses (JSON-RPC 2.0, 5.1).
  const isRefusedByMcp = at.startsWith('/mcp') && text.startsWith('{"jsonrpc":"2.0","error":{"code":-')
  if (answer.status < 400 || method === 'HEAD' || isRefusedByMcp) return
  if (!answer.headers.get('content-type')?.startsWith('text/html')) return expectError(text)
  // A page to read, for who follows a link in a browser, and asks for one.
  expect([method.toUpperCase(), sent.accept]).toEqual(['GET', expect.stringContaining('text/html')])
  expect(text).toMatch(/<h2 class="asked">[^<>]{5,}<\/h2>/)
  expect(text).not.toContain('<script')
}

function expectError(text: string): void {
  const { error } = JSON.parse(text) as { error: { code: string; message: string } }
  expect(error.code).toMatch(/^[a-z-]+$/)
  expect(error.message.length).toBeGreaterThan(10)
}

function expectNothingInside(text: string): void {
  for (const inside of [process.cwd(), 'node_modules', '.ts:', 'node:internal', 'SQLITE', 'SqliteError', secret])
    expect(text.includes(inside), inside).toBe(false)
}

describe('whatever comes', () => {
  it(
    'to any route, in any method, with any body and headers, is answered in our words',
    async () => {
      expect(routes().length).toBeGreaterThan(24)
      for (const { method, path } of routes())
        await fc.assert(
          fc.asyncProperty(
            fc.record({
              method: fc.oneof({ weight: 3, arbitrary: fc.constant(method) }, fc.constantFrom(...methods)),
              at: addressOf(path),
              headers,
              body,
            }),
            async (sent) => {
              // The talk that the addresses name is there each time.
              if (/^DELETE$/i.test(sent.method) && new RegExp(`/${id}(?:[?#].*)?$`).test(sent.at)) return
              await answered(sent, alone)
            },
          ),
          { numRuns: 25 * times, seed },
        )
      expect(lines).toEqual([])
    },
    120_000 * times,
  )

  it('where a secret is asked, and is not said, is let in nowhere and changes nothing', async () => {
    const before = JSON.stringify([await store.list(), await store.read(id)])
    const open = new Set(['/healthz', '/readyz', '/shared/:link', '/web/page.css', '/web/mark.svg'])
    for (const { method, path } of routes())
      await fc.assert(
        fc.asyncProperty(
          fc.record({ method: fc.constantFrom(method, ...methods), at: addressOf(path), headers, body }),
          async (sent) => {
            await answered(sent, among)
            if (open.has(path)) return
            const answer = await among.request(sent.at.replace(/#.*/, ''), { method: sent.method })
            // From nowhere, so that all wrong secrets here are one visitor's.
            expect([401, 404, 429]).toContain(answer.status)
          },
        ),
        { numRuns: 10 * times, seed },
      )
    expect(JSON.stringify([await store.list(), await store.read(id)])).toBe(before)
    expect(lines).toEqual([])
  })
})

describe('what comes down the line', () => {
  let server: ServerType
  beforeAll(async () => {
    server = serve({ fetch: alone.fetch, port: 0, hostname: '127.0.0.1', ...legibly() })
    await new Promise((resolve) => server.once('listening', resolve))
  })
  afterAll(() => void server.close())

  /** What is answered, whole. The line is closed behind what is sent. */
  const sent = (bytes: string | Uint8Array): Promise<string> =>
    new Promise((resolve) => {
      const line = connect((server.address() as AddressInfo).port, '127.0.0.1')
      let heard = ''
      line.on('data', (it) => {
        heard += String(it)
      })
      line.on('error', () => {})
      line.on('close', () => resolve(heard))
      line.end(bytes)
    })
  const head = 'GET /healthz HTTP/1.1\r\n'
  const host = 'Host: 127.0.0.1\r\n'
  const close = 'Connection: close\r\n'

  it.each([
    ['no request', 'hello\r\n\r\n', 400],
    ['HTTP/2 without asking', 'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n', 400],
    ['no host', `${head}${close}\r\n`, 400],
    ['two hosts', `${head}${host}Host: elsewhere.test\r\n${close}\r\n`, 400],
    ['a host that is none', `${head}Host: a b/c\r\n${close}\r\n`, 400],
    ['a number that is no address', `${head}Host: 127A.0.0.1\r\n${close}\r\n`, 400],
    ['the name of another', `${head}Host: elsewhere.test\r\n${close}\r\n`, 403],
    ['another’s address', `GET http://elsewhere.test/healthz HTTP/1.1\r\n${host}${close}\r\n`, 400],
    ['a backslash in the address', `GET /\\healthz HTTP/1.1\r\n${host}${close}\r\n`, 400],
    ['no address', `OPTIONS * HTTP/1.1\r\n${host}${close}\r\n`, 400],
    ['an address too long', `GET /${'a'.repeat(20_000)} HTTP/1.1\r\n${host}\r\n`, 431],
    ['headers too long', `${head}${host}X: ${'a'.repeat(20_000)}\r\n\r\n`, 431],
    ['a NUL in a header', `${head}${host}X: a\0b\r\n\r\n`, 400],
    ['letters beyond ASCII in the address', `GET /caf\u00e9 HTTP/1.1\r\n${host}\r\n`, 400],
    // Request smuggling: two ways to say where the body ends (RFC 9112, 11.2).
    [
      'two lengths',
      `POST /api/conversations HTTP/1.1\r\n${host}Content-Length: 3\r\nContent-Length: 4\r\n\r\n{}  `,
      400,
    ],
    [
      'a length, and pieces',
      `POST /api/conversations HTTP/1.1\r\n${host}Content-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
      400,
    ],
    [
      'pieces that are none',
      `POST /api/conversations HTTP/1.1\r\n${host}Transfer-Encoding: chunked\r\n\r\nZZ\r\nabc`,
      400,
    ],
    ['an expectation', `${head}${host}Expect: nonsense\r\n${close}\r\n`, 417],
    ['a method of no use', `TRACE /healthz HTTP/1.1\r\n${host}${close}\r\n`, 405],
  ])('%s is refused in our words', async (_, bytes, status) => {
    const answer = await sent(bytes)
    expect(answer).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `))
    expectError(answer.slice(answer.indexOf('\r\n\r\n')).match(/\{.*\}/s)?.[0] ?? '')
    expectNothingInside(answer)
  })

  it('before HTTP/1.1 no host was said', async () =>
    expect(await sent('GET /healthz HTTP/1.0\r\n\r\n')).toMatch(/^HTTP\/1\.1 200 OK\r\n.*"ok":true/s))

  it('a request with bytes changed, cut out or put in is answered or refused in words, and the server goes on', async () => {
    const whole = Buffer.from(
      `POST /api/conversations HTTP/1.1\r\n${host}Content-Type: application/json\r\nContent-Length: 2\r\n${close}\r\n{}`,
    )
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(3), fc.uint8Array({ maxLength: 4 })), {
          minLength: 1,
          maxLength: 4,
        }),
        async (changes) => {
          const changed = changes.reduce(
            (bytes, [at, many, put]) => Buffer.concat([bytes.subarray(0, at), put, bytes.subarray(at + many)]),
            whole,
          )
          const answer = await sent(changed)
          expectNothingInside(answer)
          // A request that never ends is no request: the line is closed on it.
          if (answer !== '') expect(answer).toMatch(/^HTTP\/1\.1 (201|4\d\d) .*\r\n\r\n.*\{/s)
        },
      ),
      { numRuns: 150 * times, seed },
    )
    expect(await sent(`${head}${host}${close}\r\n`)).toMatch(/^HTTP\/1\.1 200 /)
    expect(lines).toEqual([])
  })
})

describe('sent again', () => {
  it('a question under its key makes no second turn, whoever sends it; another under the same key is refused', async () => {
    const talk = (await store.create()).id
    const ask = (text: string) =>
      alone.request(`/api/conversations/${talk}/turns`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'idempotency-key': 'once' },
        body: JSON.stringify({ text }),
      })
    const [first, second] = [
      await (await ask('How many feet is 96 in?')).text(),
      await (await ask('How many feet is 96 in?')).text(),
    ]
    expect(second).toBe(first)
    expect((await ask('How many feet is 84 in?')).status).toBe(422)
    expect((await store.read(talk))?.written).toBe(1)
  })
})
