import { serve } from '@hono/node-server'
import type { AddressInfo } from 'node:net'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Answer, answerSchema, callSchema } from '../../../src/answer.ts'
import { type Assistant, createAssistant } from '../../../src/assistant.ts'
import { audit } from '../../../src/audit.ts'
import { exportSchema } from '../../../src/export/export.ts'
import { createApp } from '../../../src/http/app.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { renderReply } from '../../../src/web/markdown.ts'

const bags =
  'How many 60 lb bags, 0.45 ft3 each, for eleven corner and gate posts, 10 in holes 30 in deep, 6 in of gravel in the bottom?'
const spacing = 'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps at most 2 1/2 in?'

let store: Store
let app: ReturnType<typeof createApp>
const build = (assistant: Assistant = createAssistant(offlineReader)): void => {
  app = createApp({ assistant, store, version: '1.2.3', front: 'offline', renderReply, host: '127.0.0.1' })
}
beforeEach(async () => {
  store = await openStore({ memory: true })
  build()
})
afterEach(() => store.close())

const post = (path: string, body?: unknown, headers: Record<string, string> = {}) =>
  app.request(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body ?? {}),
  })
const start = async (): Promise<string> => ((await (await post('/api/conversations')).json()) as { id: string }).id
const ask = (id: string, text: string, headers: Record<string, string> = {}) =>
  post(`/api/conversations/${id}/turns`, { text }, headers)
const problem = async (response: Response | Promise<Response>) => {
  const it = await response
  return {
    status: it.status,
    ...((await it.json()) as { error: { code: string; message: string; field?: string } }).error,
  }
}
const pieces = (text: string) =>
  text
    .split('\n\n')
    .filter((it) => it.startsWith('event') || it.startsWith('id'))
    .map((block) => ({
      id: /^id: (.*)$/m.exec(block)?.[1],
      event: /^event: (.*)$/m.exec(block)?.[1],
      data: JSON.parse(/^data: (.*)$/m.exec(block)?.[1] ?? 'null') as unknown,
    }))

describe('a conversation over HTTP', () => {
  it('says that it is ready', async () => {
    const response = await app.request('/healthz')
    expect(response.status).toBe(200)
    expect(await response.json()).toEqual({ ok: true, version: '1.2.3', front: 'offline', retries: 0 })
  })

  it('starts with 201, answers a turn whole, and keeps it', async () => {
    const started = await post('/api/conversations', {})
    expect(started.status).toBe(201)
    const id = ((await started.json()) as { id: string }).id
    const response = await ask(id, bags, { accept: 'application/json' })
    expect(response.status).toBe(200)
    const answer = answerSchema.parse(await response.json())
    expect(answer.figures.find((it) => it.headline)).toMatchObject({
      word: 'bags',
      value: 23,
      unit: 'bag',
      kind: 'rounded-up',
      role: 'result',
    })
    const kept = (await (await app.request(`/api/conversations/${id}`)).json()) as {
      turns: { said: string; answer: Answer; job: unknown }[]
    }
    expect(kept.turns[0]?.said).toBe(bags)
    expect(answerSchema.parse(kept.turns[0]?.answer)).toEqual(answer)
  })

  it('a bare POST without a body or a content type starts a conversation too', async () => {
    expect((await app.request('/api/conversations', { method: 'POST' })).status).toBe(201)
  })

  it('streams the same in pieces, numbered, ending with the whole answer', async () => {
    const id = await start()
    const response = await ask(id, bags, { accept: 'text/event-stream' })
    expect(response.headers.get('content-type')).toContain('text/event-stream')
    const events = pieces(await response.text())
    expect(events.map((it) => it.event)).toEqual(['read', 'cautions', 'call', 'figures', 'answer'])
    expect(events.map((it) => it.id)).toEqual(['0', '1', '2', '3', '4'])
    expect(answerSchema.parse(events.at(-1)?.data).reply).toContain('23 bags')
  })

  it('the same key never makes a second turn, whole or streamed, one after the other or at once', async () => {
    const id = await start()
    const answers = await Promise.all(
      [1, 2, 3].map(async () => (await ask(id, bags, { 'idempotency-key': 'k' })).json()),
    )
    expect(answers[1]).toEqual(answers[0])
    expect(answers[2]).toEqual(answers[0])
    const streamed = pieces(await (await ask(id, bags, { 'idempotency-key': 'k', accept: 'text/event-stream' })).text())
    expect(streamed.at(-1)?.data).toEqual(answers[0])
    expect((await store.read(id))?.turns).toHaveLength(1)
    expect(await problem(ask(id, spacing, { 'idempotency-key': 'k' }))).toMatchObject({
      status: 422,
      code: 'key-reused',
    })
  })

  it('an interrupted stream goes on from Last-Event-ID, also with another server on the same store', async () => {
    const id = await start()
    const all = pieces(await (await ask(id, bags, { 'idempotency-key': 'k', accept: 'text/event-stream' })).text())
    build()
    const rest = pieces(
      await (await ask(id, bags, { 'idempotency-key': 'k', accept: 'text/event-stream', 'last-event-id': '2' })).text(),
    )
    expect(rest).toEqual(all.slice(3))
  })

  it('turns of one conversation stand one on the other, even when asked at once', async () => {
    const id = await start()
    const [first, second] = await Promise.all(
      [ask(id, bags), ask(id, 'and if the holes are 12 inches?')].map(async (it) =>
        answerSchema.parse(await (await it).json()),
      ),
    )
    expect([first?.turn, second?.turn]).toEqual([0, 1])
    expect(second?.changed.find((it) => it.word === 'bags')).toMatchObject({
      before: { value: 23 },
      after: { value: 35 },
    })
  })

  it('lists, opens and deletes for good', async () => {
    const id = await start()
    await ask(id, spacing)
    expect(await (await app.request('/api/conversations')).json()).toEqual([
      expect.objectContaining({ id, title: spacing.slice(0, 81).replace(/ \S*$/, ' …'), turns: 1 }),
    ])
    expect((await app.request(`/api/conversations/${id}`, { method: 'DELETE' })).status).toBe(204)
    expect(await problem(app.request(`/api/conversations/${id}`))).toMatchObject({
      status: 404,
      code: 'no-conversation',
    })
    expect(await problem(app.request(`/api/conversations/${id}`, { method: 'DELETE' }))).toMatchObject({ status: 404 })
  })

  it('the job sheet says every word, its value and whose it is; a change is an answer with what changed', async () => {
    const id = await start()
    await ask(id, bags)
    const sheet = (await (await app.request(`/api/conversations/${id}/job`)).json()) as {
      word: string
      value: number
      unit: string
      from: string
    }[]
    expect(sheet).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ word: 'holeDiameter', value: 10, unit: 'in', from: 'said' }),
        expect.objectContaining({ word: 'postWidth', value: 3.5, from: 'usual' }),
        expect.objectContaining({ word: 'bags', value: 23, from: 'worked' }),
      ]),
    )
    const changed = answerSchema.parse(
      await (await post(`/api/conversations/${id}/job/change`, { word: 'holeDiameter', value: '12 in' })).json(),
    )
    expect(changed.changed.find((it) => it.word === 'bags')).toMatchObject({
      before: { value: 23 },
      after: { value: 35 },
    })
    expect(
      await problem(post(`/api/conversations/${id}/job/change`, { word: 'holeDiameter', value: 'blue' })),
    ).toMatchObject({ status: 422, field: 'value' })
    expect(
      await problem(post(`/api/conversations/${id}/job/change`, { word: 'constructor', value: '1' })),
    ).toMatchObject({ status: 422, field: 'word' })
    expect(
      await problem(post(`/api/conversations/${id}/job/change`, { word: 'holeDiameter', at: 'moon', value: '1 in' })),
    ).toMatchObject({ status: 422, field: 'at' })
  })

  it('a sum filled in as a form is written into the talk as a turn, and an audit works it again', async () => {
    const id = await start()
    const inputs = { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }
    const path = `/api/conversations/${id}/job/work`
    const written = answerSchema.parse(await (await post(path, { calculation: 'picket-spacing', inputs })).json())
    // 93 − 16 × 3 1/2 = 37, shared by 17 gaps: 2 3/17 in.
    expect(written.figures.filter((it) => it.headline).map((it) => it.text)).toEqual(['16 pickets', '2 3/16 in'])
    expect(written.readAs.map((it) => it.said)).toEqual(['93 in', '3 1/2 in', '2 1/2 in'])
    expect(written.cautions.map((it) => it.code)).toEqual(
      expect.arrayContaining(['utilities', 'lot-line', 'local-code']),
    )
    // A choice and a list are told as well, and what was filled in is known from here on.
    const holes = { posts: '4', holeDiameter: '10 in', holeDepth: '30 in', bagYield: '0.45 ft3', holeShape: 'square' }
    const square = answerSchema.parse(
      await (await post(path, { calculation: 'concrete-for-posts', inputs: holes })).json(),
    )
    // 10² − 3 1/2² = 87.75 in²; × 30 = 2632.5 in³ = 1.5234 ft³; × 4 = 6.094; / 0.45 = 13.5, so 14.
    expect(square.figures.find((it) => it.headline)?.text).toBe('14 bags')
    const yard = { sides: ['5 ft', '120 ft 6 in', '4 ft', '120 ft'], yardDiagonal: '120 ft 7 in' }
    const closed = answerSchema.parse(await (await post(path, { calculation: 'yard-closure', inputs: yard })).json())
    expect(closed.calls[0]?.problems).toEqual([])
    const exported = exportSchema.parse(await (await app.request(`/api/conversations/${id}/export.json`)).json())
    expect(await audit(exported)).toEqual([])

    for (const [body, field] of [
      [{ calculation: 'no-such-sum', inputs: {} }, 'calculation'],
      [{ calculation: 'picket-spacing', inputs: { opening: 'blue' } }, 'opening'],
      [{ calculation: 'picket-spacing', inputs: { constructor: '1' } }, 'constructor'],
      [{ calculation: 'picket-spacing', inputs: { opening: { in: 93 } } }, 'opening'],
      [{ calculation: 'picket-spacing', inputs: [] }, 'inputs'],
    ] as const)
      expect(await problem(post(path, body))).toMatchObject({ status: 422, field })
    expect((await (await app.request(`/api/conversations/${id}`)).json()).turns).toHaveLength(3)
  })

  it('exports what an audit reads', async () => {
    const id = await start()
    await ask(id, bags)
    const exported = exportSchema.parse(await (await app.request(`/api/conversations/${id}/export.json`)).json())
    expect(exported.turns).toHaveLength(1)
    expect(exported.plumbpost.version).toBeTruthy()
    expect(await problem(app.request(`/api/conversations/${id}/export.docx`))).toMatchObject({
      status: 404,
      code: 'no-such-export',
    })
  })
})

describe('calculations over HTTP', () => {
  it('are listed with JSON Schemas', async () => {
    const list = (await (await app.request('/api/calculations')).json()) as {
      name: string
      inputs: { properties: object; required: string[] }
    }[]
    expect(list.find((it) => it.name === 'picket-spacing')?.inputs).toMatchObject({
      type: 'object',
      required: ['opening', 'picketWidth'],
    })
  })

  it('run directly: 200 with the call, 422 with its problems, 404 for one that is not there', async () => {
    const good = await post('/api/calculations/picket-spacing', {
      inputs: { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    })
    expect(good.status).toBe(200)
    expect(callSchema.parse(await good.json()).results.find((it) => it.word === 'gap')).toMatchObject({
      exact: '37/17',
      unit: 'in',
      text: '2 3/17 in',
    })
    const missing = await post('/api/calculations/picket-spacing', { inputs: { opening: '93 in' } })
    expect(missing.status).toBe(422)
    expect(callSchema.parse(await missing.json()).problems.map((it) => it.code)).toContain('missing')
    const impossible = await post('/api/calculations/picket-spacing', {
      inputs: { opening: '93 in', picketWidth: '5 1/2 in', widestGap: '1/4 in' },
    })
    expect(impossible.status).toBe(422)
    expect(callSchema.parse(await impossible.json()).problems[0]?.message).toContain('5/17 in')
    for (const inputs of [
      { opening: 'wide' },
      { opening: '4 lb' },
      { opening: {} },
      { nothing: '1' },
      { __proto__: '1' },
      { opening: '-5 in', picketWidth: '3 in', widestGap: '1 in' },
    ])
      expect((await post('/api/calculations/picket-spacing', { inputs })).status, JSON.stringify(inputs)).toBe(422)
    expect(await problem(post('/api/calculations/toString', {}))).toMatchObject({ status: 404, code: 'no-calculation' })
  })
})

describe('what is refused', () => {
  it.each([
    ['broken JSON', '{"text":', 400, 'bad-json'],
    ['a list', '[1]', 400, 'not-an-object'],
    ['no text', '{}', 400, 'missing'],
    ['empty text', '{"text":"  "}', 422, 'empty'],
    ['text that is none', '{"text":5}', 422, 'not-text'],
    ['a NUL character, which a database may not take', '{"text":"how many\\u0000bags"}', 400, 'no-character'],
    ['a body that goes ever deeper', `{"text":${'['.repeat(400_000)}${']'.repeat(400_000)}}`, 400, 'too-deep'],
    ['objects that go ever deeper', `{"text":${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}}`, 400, 'too-deep'],
    ['too much text', JSON.stringify({ text: 'a'.repeat(20_001) }), 422, 'too-long'],
  ])('%s', async (_, body, status, code) =>
    expect(await problem(post(`/api/conversations/${await start()}/turns`, body))).toMatchObject({ status, code }),
  )

  it('inputs of a calculation that go ever deeper, and a NUL character in an address', async () => {
    const deep = `{"inputs":{"opening":${'['.repeat(100_000)}${']'.repeat(100_000)}}}`
    expect(await problem(post('/api/calculations/picket-spacing', deep))).toMatchObject({
      status: 400,
      code: 'too-deep',
    })
    for (const path of ['/api/conversations/a%00b', '/api/conversations/a%00b/job', '/api/calculations/%00'])
      expect(await problem(app.request(path))).toMatchObject({ status: 400, code: 'no-character' })
  })

  it('another content type, another method, another place, too large a body', async () => {
    const id = await start()
    expect(
      await problem(post(`/api/conversations/${id}/turns`, '{"text":"hi"}', { 'content-type': 'text/plain' })),
    ).toMatchObject({ status: 415 })
    const wrong = await app.request('/api/conversations', { method: 'PUT' })
    expect([wrong.status, wrong.headers.get('allow')]).toEqual([405, 'GET, POST'])
    expect(await problem(app.request('/api/nothing'))).toMatchObject({ status: 404 })
    expect(
      await problem(post(`/api/conversations/${id}/turns`, JSON.stringify({ text: 'a'.repeat(1_100_000) }))),
    ).toMatchObject({ status: 413 })
    expect(await problem(ask('no-such', 'hi'))).toMatchObject({ status: 404, code: 'no-conversation' })
    expect(await problem(ask('no-such', 'hi', { accept: 'text/event-stream' }))).toMatchObject({ status: 404 })
  })

  it('another site’s page, and another name for this machine', async () => {
    expect(
      await problem(post('/api/conversations', {}, { origin: 'https://elsewhere.example', host: '127.0.0.1:4680' })),
    ).toMatchObject({ status: 403, code: 'other-site' })
    expect(await problem(post('/api/conversations', {}, { host: 'elsewhere.example' }))).toMatchObject({
      status: 403,
      code: 'wrong-host',
    })
    expect(
      (await post('/api/conversations', {}, { origin: 'http://127.0.0.1:4680', host: '127.0.0.1:4680' })).status,
    ).toBe(201)
  })

  it('a fault of ours is a plain sentence, never a stack, and the talk goes on', async () => {
    let broken = true
    const real = createAssistant(offlineReader)
    build({
      turn: (...asked) => {
        if (broken) throw new Error('secret /path/to/file')
        return real.turn(...asked)
      },
    })
    const id = await start()
    const error = await problem(ask(id, bags))
    expect(error).toMatchObject({ status: 500, code: 'fault' })
    expect(JSON.stringify(error)).not.toContain('secret')
    expect(await (await ask(id, bags, { accept: 'text/event-stream' })).text()).toContain('event: error')
    broken = false
    expect((await ask(id, bags)).status).toBe(200)
  })
})

describe('through a real server', () => {
  it('a reader that goes away in the middle loses nothing: the turn is kept, and the stream goes on where it stopped', async () => {
    let go: () => void = () => {}
    const gate = new Promise<void>((resolve) => {
      go = resolve
    })
    const real = createAssistant(offlineReader)
    build({
      turn: async (asked, watch) =>
        real.turn(asked, watch).then(async (it) => {
          await gate
          return it
        }),
    })
    const server = serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' })
    try {
      await new Promise((resolve) => server.once('listening', resolve))
      const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
      const send = (path: string, body: unknown, headers: Record<string, string> = {}, signal?: AbortSignal) =>
        fetch(base + path, {
          method: 'POST',
          headers: { 'content-type': 'application/json', ...headers },
          body: JSON.stringify(body),
          ...(signal ? { signal } : {}),
        })
      const id = ((await (await send('/api/conversations', {})).json()) as { id: string }).id
      const leave = new AbortController()
      const response = await send(
        `/api/conversations/${id}/turns`,
        { text: spacing },
        { accept: 'text/event-stream', 'idempotency-key': 'k' },
        leave.signal,
      )
      const reader = response.body?.getReader()
      expect(new TextDecoder().decode((await reader?.read())?.value)).toContain('event: read')
      leave.abort()
      go()
      const rest = pieces(
        await (
          await send(
            `/api/conversations/${id}/turns`,
            { text: spacing },
            { accept: 'text/event-stream', 'idempotency-key': 'k', 'last-event-id': '0' },
          )
        ).text(),
      )
      expect(rest.map((it) => it.event)).toEqual(['cautions', 'call', 'figures', 'answer'])
      expect((await store.read(id))?.turns).toHaveLength(1)
    } finally {
      server.close()
    }
  })
})
