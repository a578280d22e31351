// Turns halted by their owner, or left by everybody, while a model's server answers slowly or never.
import { serve } from '@hono/node-server'
import type { AddressInfo } from 'node:net'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Answer } from '../../../src/answer.ts'
import { createAssistant } from '../../../src/assistant.ts'
import { audit } from '../../../src/audit.ts'
import { exportConversation, exportSchema } from '../../../src/export/export.ts'
import { openEndpoint } from '../../../src/readers/model/endpoint.ts'
import { createModelReader } from '../../../src/readers/model/reading.ts'
import { createWriter } from '../../../src/readers/model/writing.ts'
import { offlineReader, readOffline } from '../../../src/readers/offline/offline.ts'
import type { Reader } from '../../../src/readers/reader.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { headlines } from '../talk.ts'
import { type HangingModel, openHangingModel, openSign, type Said } from './hanging-model.ts'
import { pieces, talkingTo } from './talking.ts'

// (π/4 × 144 − 12.25) × 24 / 1728 = 1.40066 ft³ × 4 = 5.6026; / 0.6 = 9.34 → 10
const bags = 'Four posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'

let store: Store
let model: HangingModel
beforeEach(async () => {
  store = await openStore({ memory: true })
})
afterEach(async () => {
  model.close()
  await store.close()
})

/** A house whose model answers as told. Where only its sentences are tried, the message is read here in its name. */
async function house(
  answers: readonly Said[],
  { reads = true, patienceMs }: { reads?: boolean; patienceMs?: number } = {},
) {
  model = await openHangingModel(...answers)
  const endpoint = openEndpoint({ model: 'm', baseUrl: model.address })
  const readHere: Reader = {
    front: 'model',
    read: async (heard) => ({ request: readOffline(heard), by: 'model' }),
  }
  return talkingTo(
    createAssistant(reads ? createModelReader(endpoint) : readHere, createWriter(endpoint)),
    store,
    patienceMs,
  )
}
type House = Awaited<ReturnType<typeof house>>
const ask = (it: House, id: string, text: string, headers: Record<string, string> = {}, signal?: AbortSignal) =>
  it.post(`/api/conversations/${id}/turns`, { text }, headers, signal)
const halt = (it: House, id: string, key?: string) =>
  it.post(`/api/conversations/${id}/turns/halt`, {}, key === undefined ? {} : { 'idempotency-key': key })
const codes = (answer: Answer | undefined): string[] => (answer?.cautions ?? []).map((it) => it.code)

async function expectNoDifference(id: string): Promise<void> {
  const turns = (await store.read(id))?.turns ?? []
  const exported = exportConversation(turns, { id, title: '', created: '' })
  expect(await audit(exportSchema.parse(JSON.parse(JSON.stringify(exported))))).toEqual([])
}

describe('a turn that is halted while its message is read', () => {
  it.each<[string, readonly Said[], number]>([
    ['before the server said anything', ['nothing'], 0],
    ['in the middle of what it says', ['only a beginning'], 0],
    ['at the second try', [{ text: 'I would rather talk.' }, 'nothing'], 1],
  ])(
    '%s: the connection is closed, the message kept, nothing worked, and no other reader steps in',
    async (_, answers, nth) => {
      const it = await house(answers)
      const id = await it.start()
      const asked = ask(it, id, bags)
      await model.came(nth)
      const halted = await it.answer(halt(it, id))
      await model.closed(nth)
      expect(await it.answer(asked)).toEqual(halted)
      expect(halted).toMatchObject({ halted: 'reading', calls: [], figures: [], readAs: [], front: 'model', prose: '' })
      expect(halted.reply).toContain('Halted before it was read. What you said is kept, and nothing was worked of it.')
      expect(halted.reply).not.toMatch(/10 bags|I read this myself/)
      expect(codes(halted)).toEqual(['utilities', 'lot-line', 'local-code'])
      expect((await it.kept(id)).map(({ n, said }) => [n, said])).toEqual([[0, bags]])
      await expectNoDifference(id)
    },
  )

  it('is not asked again of a server that wanted patience', async () => {
    const it = await house([{ status: 429, retryAfter: '9' }])
    const id = await it.start()
    const asked = ask(it, id, bags)
    await model.came(0)
    expect(await it.answer(halt(it, id))).toMatchObject({ halted: 'reading' })
    expect(await it.answer(asked)).toMatchObject({ halted: 'reading' })
    expect(model.asked()).toBe(1)
  })

  it('leaves the job as it was, and the talk goes on from there', async () => {
    const it = await house(['nothing', { status: 401 }])
    const id = await it.start()
    await it.post(`/api/conversations/${id}/job/change`, { word: 'holeDiameter', value: '12 in' })
    const asked = ask(it, id, 'The holes are 14 in wide.')
    await model.came(0)
    await halt(it, id)
    expect(await it.answer(asked)).toMatchObject({ turn: 1, halted: 'reading' })
    const [before, after] = await it.kept(id)
    expect(after?.job).toEqual(before?.job)
    const next = await it.answer(ask(it, id, 'Four posts, 24 in deep, 80 lb bags. How many bags?'))
    expect([next.turn, next.halted, headlines(next).bags]).toEqual([2, undefined, '10 bags'])
    await expectNoDifference(id)
  })

  it('ends its stream with the answer as any other', async () => {
    const it = await house(['nothing'])
    const id = await it.start()
    const stream = await ask(it, id, bags, { accept: 'text/event-stream' })
    await model.came(0)
    await halt(it, id)
    const [only, ...others] = pieces(await stream.text())
    expect([only?.event, others]).toEqual(['answer', []])
    expect(only?.data).toMatchObject({ halted: 'reading', html: expect.any(Object) })
  })
})

describe('a turn that is halted while a model writes', () => {
  it.each<[string, readonly Said[], number]>([
    ['at the first try', ['only a beginning'], 0],
    ['at the second', [{ text: 'You need 14 bags.' }, 'nothing'], 1],
  ])('%s: the connection is closed, and the card stands as it was shown', async (_, answers, nth) => {
    const it = await house(answers, { reads: false })
    const id = await it.start()
    const stream = await ask(it, id, bags, { accept: 'text/event-stream' })
    await model.came(nth)
    const halted = await it.answer(halt(it, id))
    await model.closed(nth)
    const all = pieces(await stream.text())
    expect(all.map((piece) => piece.event)).not.toContain('prose')
    const { halted: how, ...rest } = halted
    expect(how).toBe('writing')
    expect(all.find((piece) => piece.event === 'card')?.data).toEqual({ ...rest, html: expect.any(Object) })
    expect(headlines(halted).bags).toBe('10 bags')
    expect(halted.reply).not.toMatch(/14 bags|Dig$/m)
    await expectNoDifference(id)
  })
})

describe('halting', () => {
  it('a turn that waits for another leaves that one alone; it is kept after it', async () => {
    const it = await house(['nothing', 'nothing'])
    const id = await it.start()
    const first = ask(it, id, bags, { 'idempotency-key': 'first' })
    await model.came(0)
    const second = ask(it, id, 'And 10 in?', { 'idempotency-key': 'second' })
    // Both are in the making by the time that this is answered.
    await it.kept(id)
    const halted = halt(it, id, 'second')
    await it.kept(id)
    expect(model.asked()).toBe(1)
    await halt(it, id, 'first')
    expect((await it.answer(first)).turn).toBe(0)
    expect(await it.answer(halted)).toMatchObject({ turn: 1, halted: 'reading' })
    expect((await it.answer(second)).turn).toBe(1)
    expect(model.asked()).toBe(1)
  })

  it('twice, or under the key of a turn that is whole, gives what there is; the same question is not asked again', async () => {
    const it = await house(['nothing'])
    const id = await it.start()
    const asked = ask(it, id, bags, { 'idempotency-key': 'k' })
    await model.came(0)
    const [once, twice] = await Promise.all([halt(it, id, 'k'), halt(it, id, 'k')].map(it.answer))
    expect(once).toEqual(twice)
    expect(await it.answer(halt(it, id, 'k'))).toEqual(once)
    expect(await it.answer(ask(it, id, bags, { 'idempotency-key': 'k' }))).toEqual(await it.answer(asked))
    expect([model.asked(), (await it.kept(id)).length]).toEqual([1, 1])
  })

  it('an answer that is only to be kept yet changes nothing of it', async () => {
    const [reached, time] = [openSign(), openSign()]
    const slow: Store = {
      ...store,
      append: async (...turn) => {
        reached.give()
        await time.given
        return store.append(...turn)
      },
    }
    model = await openHangingModel('nothing')
    const it = talkingTo(createAssistant(offlineReader), slow)
    const id = await it.start()
    const asked = it.post(`/api/conversations/${id}/turns`, { text: bags })
    await reached.given
    const halted = halt(it, id)
    time.give()
    expect(await it.answer(halted)).toEqual(await it.answer(asked))
    expect((await it.kept(id)).map(({ answer }) => [answer.halted, headlines(answer).bags])).toEqual([
      [undefined, '10 bags'],
    ])
  })

  it('nothing, or in no conversation, is said', async () => {
    const it = await house(['nothing'])
    const id = await it.start()
    const nothing = { status: 409, error: { code: 'nothing-to-halt' } }
    expect(await it.refusal(halt(it, id))).toMatchObject(nothing)
    expect(await it.refusal(halt(it, id, 'never-used'))).toMatchObject(nothing)
    expect(await it.refusal(halt(it, 'no-such'))).toMatchObject({ status: 404, error: { code: 'no-conversation' } })
    const wrong = await it.app.request(`/api/conversations/${id}/turns/halt`)
    expect([wrong.status, wrong.headers.get('allow')]).toEqual([405, 'POST'])
  })

  it('never touches what is read on this machine: an emergency is answered, and so is a question without a model', async () => {
    const it = await house(['nothing'])
    const id = await it.start()
    const gone = AbortSignal.abort()
    const urgent = await it.answer(ask(it, id, 'I hit a gas line and smell gas', {}, gone))
    expect([urgent.halted, urgent.advice.length > 0, model.asked()]).toEqual([undefined, true, 0])
    const offline = talkingTo(createAssistant(offlineReader), store)
    const answer = await offline.answer(offline.post(`/api/conversations/${id}/turns`, { text: bags }, {}, gone))
    expect([answer.halted, headlines(answer).bags]).toEqual([undefined, '10 bags'])
  })

  it('comes with deleting: no server goes on for a talk that is gone', async () => {
    const it = await house(['nothing'])
    const id = await it.start()
    const asked = ask(it, id, bags)
    await model.came(0)
    expect((await it.app.request(`/api/conversations/${id}`, { method: 'DELETE' })).status).toBe(204)
    await model.closed(0)
    expect(await it.answer(asked)).toMatchObject({ halted: 'reading' })
    expect((await it.app.request(`/api/conversations/${id}`)).status).toBe(404)
  })
})

describe('a turn that nobody waits for any more', () => {
  it('without a key is halted at once, streamed or whole: nobody could come back for it', async () => {
    for (const accept of ['text/event-stream', 'application/json']) {
      const it = await house(['nothing'])
      const server = serve({ fetch: it.app.fetch, port: 0, hostname: '127.0.0.1' })
      try {
        await new Promise((resolve) => server.once('listening', resolve))
        const id = await it.start()
        const leave = new AbortController()
        const asked = fetch(
          `http://127.0.0.1:${(server.address() as AddressInfo).port}/api/conversations/${id}/turns`,
          {
            method: 'POST',
            headers: { 'content-type': 'application/json', accept },
            body: JSON.stringify({ text: bags }),
            signal: leave.signal,
          },
        ).catch(() => 'left')
        await model.came(0)
        leave.abort()
        await asked
        await model.closed(0)
        // What comes next stands behind it, so by then it is kept.
        await it.post(`/api/conversations/${id}/job/change`, { word: 'holeDiameter', value: '12 in' })
        expect((await it.kept(id)).map(({ said, answer }) => [said, answer.halted])[0]).toEqual([bags, 'reading'])
      } finally {
        server.close()
        model.close()
      }
    }
  })

  it('under a key is halted when the patience for whoever lost the line is over; the key still leads to it', async () => {
    const it = await house(['nothing'], { patienceMs: 0 })
    const id = await it.start()
    const leave = new AbortController()
    const asked = ask(it, id, bags, { 'idempotency-key': 'k' }, leave.signal)
    await model.came(0)
    leave.abort()
    await model.closed(0)
    expect(await it.answer(asked)).toMatchObject({ halted: 'reading' })
    expect(await it.answer(ask(it, id, bags, { 'idempotency-key': 'k' }))).toMatchObject({ turn: 0, halted: 'reading' })
  })

  it('is worked on while one of two is still there', async () => {
    const time = openSign()
    const it = await house([{ text: 'Buy {{r2.bags}} together.', when: time.given }], { reads: false, patienceMs: 0 })
    const id = await it.start()
    const leave = new AbortController()
    const keyed = (signal?: AbortSignal) =>
      ask(it, id, bags, { 'idempotency-key': 'k', accept: 'text/event-stream' }, signal)
    await keyed(leave.signal)
    await model.came(0)
    const other = await keyed()
    leave.abort()
    // A patience of nothing is over by then.
    await new Promise((resolve) => setTimeout(resolve, 0))
    time.give()
    const all = pieces(await other.text())
    expect(all.map((piece) => piece.event)).toEqual(inOrder)
    expect(all.at(-1)?.data).toMatchObject({ prose: 'Buy 10 bags together.' })
    expect(all.at(-1)?.data).not.toHaveProperty('halted')
  })

  it('is worked on when somebody comes back in time', async () => {
    const time = openSign()
    const it = await house([{ text: 'Buy {{r2.bags}} together.', when: time.given }], { reads: false })
    const id = await it.start()
    const leave = new AbortController()
    const keyed = (signal?: AbortSignal) =>
      ask(it, id, bags, { 'idempotency-key': 'k', accept: 'text/event-stream' }, signal)
    await keyed(leave.signal)
    await model.came(0)
    leave.abort()
    const back = await keyed()
    time.give()
    const all = pieces(await back.text())
    expect(all.map((piece) => piece.event)).toEqual(inOrder)
    expect([model.asked(), (await it.kept(id)).length]).toEqual([1, 1])
  })
})

/** No figure comes before its cautions, and the card before what a model takes its time for. */
const inOrder = ['read', 'cautions', 'call', 'call', 'figures', 'card', 'prose', 'answer']
