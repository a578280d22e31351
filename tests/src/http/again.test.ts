// A turn written again: the line as it was stays legible, and the job is what it was before it.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { audit } from '../../../src/audit.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import type { Reader } from '../../../src/readers/reader.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { headlines } from '../talk.ts'
import { openSign } from './hanging-model.ts'
import { type KeptOverHttp, pieces, talkingTo } from './talking.ts'

// (π/4 × 144 − 12.25) × 24 / 1728 = 1.40066 ft³ × 4 = 5.6026; / 0.6 = 9.34 → 10
const bags = 'Four posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'
// × 5 = 7.0033; / 0.6 = 11.67 → 12
const five = 'Five posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'
// (π/4 × 144 − 12.25) × 30 / 1728 = 1.75083 ft³ × 4 = 7.0033; / 0.6 = 11.67 → 12
const deeper = 'and if the holes are 30 inches deep?'

let store: Store
let talking: ReturnType<typeof talkingTo>
let id: string
beforeEach(async () => {
  store = await openStore({ memory: true })
  talking = talkingTo(createAssistant(offlineReader), store)
  id = await talking.start()
})
afterEach(() => store.close())

const ask = (text: string, headers: Record<string, string> = {}) =>
  talking.post(`/api/conversations/${id}/turns`, { text }, headers)
const again = (n: number | string, text: string, headers: Record<string, string> = {}) =>
  talking.post(`/api/conversations/${id}/turns/${n}/again`, { text }, headers)
/** The talk as nested lines: what stands, and behind it what was set aside. */
const lines = (turns: readonly KeptOverHttp[]): unknown[] =>
  turns.map(({ n, said, aside }) => (aside.length > 0 ? [n, said, aside.map(lines)] : [n, said]))
const jobOf = (turns: readonly KeptOverHttp[]) => turns.at(-1)?.job

describe('a turn asked anew', () => {
  it('takes the place of the old one and of all that followed, and these stay legible', async () => {
    await ask(bags)
    await ask(deeper)
    await ask('undo')
    const answer = await talking.answer(again(1, 'and if they are 10 in wide?'))
    expect(answer.turn).toBe(1)
    expect(lines(await talking.kept(id))).toEqual([
      [0, bags],
      [
        1,
        'and if they are 10 in wide?',
        [
          [
            [1, deeper],
            [2, 'undo'],
          ],
        ],
      ],
    ])
    const [set] = (await talking.kept(id))[1]?.aside[0] ?? []
    expect(headlines(set?.answer).bags).toBe('12 bags')
    expect(set?.answer).toHaveProperty('html')
  })

  it('is worked on the job as it was before: what was told later is not known', async () => {
    await ask('The holes are 12 in wide.')
    await ask('They are 24 in deep.')
    const before = jobOf((await talking.kept(id)).slice(0, 1))
    await again(1, 'hello')
    const sheet = (await (await talking.app.request(`/api/conversations/${id}/job`)).json()) as Record<string, string>[]
    const words = sheet.filter((it) => it.from === 'said').map((it) => it.word)
    expect(words).toEqual(['holeDiameter'])
    expect((jobOf(await talking.kept(id)) as { moves: unknown }).moves).toEqual((before as { moves: unknown }).moves)
  })

  it('gives what the same talk gives that never went astray', async () => {
    await ask(bags)
    await ask('Five posts')
    const edited = await talking.answer(again(1, deeper))
    const fresh = await talking.start()
    await talking.post(`/api/conversations/${fresh}/turns`, { text: bags })
    expect(edited).toEqual(await talking.answer(talking.post(`/api/conversations/${fresh}/turns`, { text: deeper })))
  })

  it('and anew keeps each version in order; the talk then goes on from the last', async () => {
    await ask(bags)
    await again(0, five)
    expect(headlines(await talking.answer(again(0, bags))).bags).toBe('10 bags')
    expect(headlines(await talking.answer(ask(deeper))).bags).toBe('12 bags')
    expect(lines(await talking.kept(id))).toEqual([
      [0, bags, [[[0, bags]], [[0, five]]]],
      [1, deeper],
    ])
    const list = (await (await talking.app.request('/api/conversations')).json()) as object[]
    expect(list).toEqual([expect.objectContaining({ id, title: bags, turns: 2 })])
  })

  it('gives the talk its name when it is the first', async () => {
    await ask('hello')
    await again(0, five)
    const list = (await (await talking.app.request('/api/conversations')).json()) as { title: string }[]
    expect(list[0]?.title).toBe(five)
  })

  it('comes in pieces where that is asked for', async () => {
    await ask(bags)
    const all = pieces(await (await again(0, five, { accept: 'text/event-stream' })).text())
    expect(all.map((it) => it.event)).toEqual(['read', 'cautions', 'call', 'call', 'figures', 'answer'])
    expect(all.at(-1)?.data).toMatchObject({ turn: 0 })
  })

  it('is exported as it stands', async () => {
    await ask(bags)
    await ask(deeper)
    await again(1, 'undo')
    const exported = await (await talking.app.request(`/api/conversations/${id}/export.json`)).json()
    expect((exported as { turns: { said: string }[] }).turns.map((it) => it.said)).toEqual([bags, 'undo'])
  })
})

describe('a turn asked anew that is sent twice', () => {
  it('under one key is asked once, at once or later, and sets nothing aside that came after it', async () => {
    await ask(bags)
    const keyed = { 'idempotency-key': 'k' }
    const [once, twice] = await Promise.all([again(0, five, keyed), again(0, five, keyed)].map(talking.answer))
    expect(once).toEqual(twice)
    await ask(deeper)
    expect(await talking.answer(again(0, five, keyed))).toEqual(once)
    expect(lines(await talking.kept(id))).toEqual([
      [0, five, [[[0, bags]]]],
      [1, deeper],
    ])
  })

  it('with another text or for another turn under that key is refused', async () => {
    await ask(bags, { 'idempotency-key': 'first' })
    await ask(deeper)
    await again(1, 'undo', { 'idempotency-key': 'k' })
    const reused = { status: 422, error: { code: 'key-reused' } }
    expect(await talking.refusal(again(1, five, { 'idempotency-key': 'k' }))).toMatchObject(reused)
    expect(await talking.refusal(again(0, 'undo', { 'idempotency-key': 'k' }))).toMatchObject(reused)
    expect(await talking.refusal(again(1, bags, { 'idempotency-key': 'first' }))).toMatchObject(reused)
    expect(lines(await talking.kept(id))).toEqual([
      [0, bags],
      [1, 'undo', [[[1, deeper]]]],
    ])
  })

  it('without a key is asked twice, and the last stands', async () => {
    await ask(bags)
    await Promise.all([again(0, five), again(0, deeper)])
    const [turn, ...others] = await talking.kept(id)
    expect([turn?.aside.length, others]).toEqual([2, []])
  })
})

describe('what cannot be asked anew', () => {
  it('is a turn that is not there, in a talk that is not there, or without words', async () => {
    const noTurn = { status: 404, error: { code: 'no-turn' } }
    expect(await talking.refusal(again(0, bags))).toMatchObject(noTurn)
    await ask(bags)
    expect(await talking.refusal(again(1, bags))).toMatchObject({
      ...noTurn,
      error: { message: 'There is no turn 1 here. The last is 0.' },
    })
    expect(await talking.refusal(again('99999999999999999999', bags))).toMatchObject(noTurn)
    for (const n of ['-1', '0.5', 'last'])
      expect(await talking.refusal(again(n, bags))).toMatchObject({ status: 404, error: { code: 'not-found' } })
    expect(await talking.refusal(again(0, '  '))).toMatchObject({ status: 422, error: { code: 'empty' } })
    expect(await talking.refusal(talking.post(`/api/conversations/${id}/turns/0/again`))).toMatchObject({ status: 400 })
    expect(
      await talking.refusal(talking.post('/api/conversations/no-such/turns/0/again', { text: bags })),
    ).toMatchObject({ status: 404, error: { code: 'no-conversation' } })
    const wrong = await talking.app.request(`/api/conversations/${id}/turns/0/again`)
    expect([wrong.status, wrong.headers.get('allow')]).toEqual([405, 'POST'])
    expect(lines(await talking.kept(id))).toEqual([[0, bags]])
  })
})

describe('asking anew while a turn is in the making', () => {
  /** Reads only what is halted, or let through. */
  const gated = () => {
    const [came, through] = [openSign(), openSign()]
    const reader: Reader = {
      front: 'model',
      read: (heard, allowance, signal) =>
        heard.said === deeper
          ? new Promise((resolve) => {
              signal?.addEventListener('abort', () => resolve('halted'))
              void through.given.then(() => resolve(offlineReader.read(heard, allowance)))
              came.give()
            })
          : offlineReader.read(heard, allowance),
    }
    talking = talkingTo(createAssistant(reader), store)
    return { came: came.given, letThrough: through.give }
  }

  it('halts that turn, since nobody waits for its answer any more, and sets it aside with what it said', async () => {
    const { came } = gated()
    await ask(bags)
    const making = ask(deeper)
    await came
    expect(headlines(await talking.answer(again(0, five))).bags).toBe('12 bags')
    expect(await talking.answer(making)).toMatchObject({ turn: 1, halted: 'reading' })
    expect(lines(await talking.kept(id))).toEqual([
      [
        0,
        five,
        [
          [
            [0, bags],
            [1, deeper],
          ],
        ],
      ],
    ])
  })

  it('takes the very turn that is in the making', async () => {
    const { came } = gated()
    await ask(bags)
    const making = ask(deeper)
    await came
    expect((await talking.answer(again(1, 'undo'))).turn).toBe(1)
    expect(await talking.answer(making)).toMatchObject({ turn: 1, halted: 'reading' })
    expect(lines(await talking.kept(id))).toEqual([
      [0, bags],
      [1, 'undo', [[[1, deeper]]]],
    ])
  })

  it('of a turn that is not there leaves it alone', async () => {
    const { came, letThrough } = gated()
    await ask(bags)
    const making = ask(deeper)
    await came
    expect(await talking.refusal(again(7, five))).toMatchObject({ status: 404, error: { code: 'no-turn' } })
    letThrough()
    expect(headlines(await talking.answer(making)).bags).toBe('12 bags')
  })

  it('a second time under the same key halts nothing that was asked since', async () => {
    const { came, letThrough } = gated()
    await ask(bags)
    const keyed = { 'idempotency-key': 'k' }
    const once = await talking.answer(again(0, five, keyed))
    const making = ask(deeper)
    await came
    // Its stream is open as soon as it stands in the line.
    const late = await again(0, five, { ...keyed, accept: 'text/event-stream' })
    letThrough()
    const { halted, turn } = await talking.answer(making)
    expect([turn, halted]).toEqual([1, undefined])
    expect(pieces(await late.text()).at(-1)?.data).toMatchObject(once)
  })
})

describe('a branch that was set aside', () => {
  const resume = (n: number, branch: unknown) => talking.post(`/api/conversations/${id}/turns/${n}/resume`, { branch })

  it('is taken up again turn by turn as it was, and what stood there is set aside for it', async () => {
    await ask(bags)
    await ask(deeper)
    const before = await talking.kept(id)
    await again(0, five)
    expect((await resume(0, 0)).status).toBe(200)
    const now = await talking.kept(id)
    expect(lines(now)).toEqual([
      [
        0,
        bags,
        [
          [
            [0, bags],
            [1, deeper],
          ],
          [[0, five]],
        ],
      ],
      [1, deeper],
    ])
    expect(now.map((it) => it.answer)).toEqual(before.map((it) => it.answer))
    expect(jobOf(now)).toEqual(jobOf(before))
  })

  it('that is not there is refused in words', async () => {
    await ask(bags)
    expect(await talking.refusal(resume(0, 0))).toMatchObject({ status: 404, error: { code: 'no-branch' } })
    expect(await talking.refusal(resume(0, 'first'))).toMatchObject({ status: 422, error: { code: 'no-branch' } })
  })
})

describe('the units of a talk', () => {
  it('are changed without a message, and what was asked is worked again in them', async () => {
    await ask(bags)
    const answer = await talking.answer(talking.post(`/api/conversations/${id}/job/units`, { system: 'metric' }))
    // A metric post is usually 90 mm: (π/4 × 304.8² − 90²) × 609.6 = 39.542 L a hole; × 4 = 158.17 L.
    const concrete = answer.calls.flatMap((call) => call.results).find((it) => it.word === 'concrete')
    expect(concrete).toMatchObject({ unit: 'L', value: expect.closeTo(158.17, 1) })
    expect(headlines(answer).bags).toBe('10 bags')
    const open = await (await talking.app.request(`/api/conversations/${id}/job/open`)).json()
    expect(open).toMatchObject({ units: 'metric', open: [] })
    const refused = talking.post(`/api/conversations/${id}/job/units`, { system: 'cubits' })
    expect(await talking.refusal(refused)).toMatchObject({ status: 422, error: { code: 'no-units' } })
  })

  it('are changed the same when the talk is audited', async () => {
    await ask(bags)
    await talking.post(`/api/conversations/${id}/job/units`, { system: 'metric' })
    const exported = await (await talking.app.request(`/api/conversations/${id}/export.json`)).json()
    expect(await audit(exported)).toEqual([])
  })
})

describe('what is open', () => {
  it('is what the last answer asked for while no fence is told', async () => {
    await ask('How many pickets do I need?')
    const { open } = (await (await talking.app.request(`/api/conversations/${id}/job/open`)).json()) as {
      open: { word: string }[]
    }
    expect(open.map((it) => it.word)).toContain('picketWidth')
  })
})
