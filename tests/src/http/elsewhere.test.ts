// Two servers on one database: a turn that is in the making at one of them goes on, is halted and is taken over at the other.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { openEndpoint } from '../../../src/readers/model/endpoint.ts'
import { createWriter } from '../../../src/readers/model/writing.ts'
import { readOffline } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { headlines } from '../talk.ts'
import { type HangingModel, openHangingModel, openSign, type Said } from './hanging-model.ts'
import { pieces, talkingTo } from './talking.ts'

// (π/4 × 144 − 12.25) × 24 / 1728 = 1.40066 ft³ × 4 = 5.6026; / 0.6 = 9.34 → 10
const bags = 'Four posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'
const inOrder = ['read', 'cautions', 'call', 'call', 'figures', 'card', 'prose', 'answer']

const folder = mkdtempSync(join(tmpdir(), 'plumbpost-elsewhere-'))
let [here, there]: Store[] = []
let models: HangingModel[] = []
beforeEach(async () => {
  here = await openStore({ dataFolder: folder })
  there = await openStore({ dataFolder: folder })
})
afterEach(async () => {
  for (const it of models) it.close()
  models = []
  await here?.close()
  await there?.close()
  rmSync(folder, { recursive: true, force: true })
})

/** A busy machine must not be taken for a dead one, but where death is what is tried. */
let deadMs = 20_000
/** A server whose model writes as told; messages are read without it. */
async function house(store: Store | undefined, ...answers: readonly Said[]) {
  const model = await openHangingModel(...answers)
  models.push(model)
  const assistant = createAssistant(
    { front: 'model', read: async (heard) => ({ request: readOffline(heard), by: 'model' }) },
    createWriter(openEndpoint({ model: 'm', baseUrl: model.address })),
  )
  const it = talkingTo(assistant, store as Store, undefined, { firstMs: 0, beatMs: 5, deadMs })
  return { ...it, model }
}
type House = Awaited<ReturnType<typeof house>>
const ask = (it: House, id: string, headers: Record<string, string> = {}, text = bags, signal?: AbortSignal) =>
  it.post(`/api/conversations/${id}/turns`, { text }, { 'idempotency-key': 'k', ...headers }, signal)
const stream = { accept: 'text/event-stream' }
/** Until the other server can know of it. */
async function announced(id: string, events: number): Promise<void> {
  while (((await there?.announced(id))?.[0]?.events.length ?? -1) < events)
    await new Promise((resolve) => setTimeout(resolve, 2))
}
const written = async (id: string): Promise<number | undefined> => (await here?.read(id))?.written

describe('a turn in the making at another server', () => {
  it('goes on in pieces where its stream was cut, and no model is asked twice', async () => {
    const time = openSign()
    const [one, two] = [await house(here, { text: 'Buy {{r2.bags}} together.', when: time.given }), await house(there)]
    const id = await one.start()
    const leave = new AbortController()
    await ask(one, id, stream, bags, leave.signal)
    await one.model.came(0)
    await announced(id, 6)
    leave.abort()
    const rest = await ask(two, id, { ...stream, 'last-event-id': '2' })
    const reader = rest.body?.getReader()
    // What is there already is told while the model still writes.
    let text = ''
    while (!text.includes('event: card')) text += new TextDecoder().decode((await reader?.read())?.value)
    time.give()
    for (let it = await reader?.read(); !it?.done; it = await reader?.read())
      text += new TextDecoder().decode(it?.value)
    const all = pieces(text)
    expect(all.map((it) => it.event)).toEqual(inOrder.slice(3))
    expect(all.at(-1)?.data).toMatchObject({ prose: 'Buy 10 bags together.' })
    expect([one.model.asked(), two.model.asked(), await written(id)]).toEqual([1, 0, 1])
    expect(await here?.announced(id)).toEqual([])
  })

  it('is answered whole as well, and is refused under its key for another question', async () => {
    const time = openSign()
    const [one, two] = [await house(here, { text: 'Buy {{r2.bags}} together.', when: time.given }), await house(there)]
    const id = await one.start()
    const first = ask(one, id)
    await announced(id, 6)
    const [same, other] = [ask(two, id), ask(two, id, {}, 'Something else.')]
    time.give()
    expect(await two.answer(same)).toEqual(await one.answer(first))
    expect(await two.refusal(other)).toMatchObject({ status: 422, error: { code: 'key-reused' } })
    expect([two.model.asked(), await written(id)]).toEqual([0, 1])
  })

  it.each(['k', undefined])('is halted from here, by its key or without one: %s', async (key) => {
    const [one, two] = [await house(here, 'nothing'), await house(there)]
    const id = await one.start()
    const first = ask(one, id)
    await one.model.came(0)
    await announced(id, 6)
    const halted = await two.answer(
      two.post(`/api/conversations/${id}/turns/halt`, {}, key ? { 'idempotency-key': key } : {}),
    )
    await one.model.closed(0)
    expect([halted.halted, headlines(halted).bags]).toEqual(['writing', '10 bags'])
    expect(await one.answer(first)).toEqual(halted)
  })

  it('is halted when it is asked anew from here, and is set aside', async () => {
    const [one, two] = [await house(here, 'nothing'), await house(there, { status: 401 })]
    const id = await one.start()
    await one.post(`/api/conversations/${id}/job/change`, { word: 'holeDiameter', value: '12 in' })
    void ask(one, id)
    await announced(id, 6)
    await two.answer(two.post(`/api/conversations/${id}/turns/0/again`, { text: 'The holes are 10 in wide.' }))
    const kept = await two.kept(id)
    expect(kept.map((it) => it.said)).toEqual(['The holes are 10 in wide.'])
    expect(kept[0]?.aside.flat().map((it) => [it.said, it.answer.halted])[1]).toEqual([bags, 'writing'])
  })

  it('is let go when the talk is deleted from here', async () => {
    const [one, two] = [await house(here, 'nothing'), await house(there)]
    const id = await one.start()
    const first = ask(one, id)
    await one.model.came(0)
    await announced(id, 6)
    expect((await two.app.request(`/api/conversations/${id}`, { method: 'DELETE' })).status).toBe(204)
    await one.model.closed(0)
    await first
    expect((await one.app.request(`/api/conversations/${id}`)).status).toBe(404)
  })
})

describe('a server that dies over a turn', () => {
  beforeEach(() => {
    deadMs = 150
  })

  /** A store that hears and says nothing any more once it is dead. */
  function mortal(store: Store | undefined) {
    const death = openSign()
    const revival = openSign()
    let isDead = false
    void death.given.then(() => {
      isDead = true
    })
    const living: Store = {
      ...(store as Store),
      announce: async (...said) => (isDead ? 'go on' : (store as Store).announce(...said)),
      withdraw: async (...said) => (isDead ? undefined : (store as Store).withdraw(...said)),
      append: async (...turn) => {
        if (isDead) await revival.given
        return (store as Store).append(...turn)
      },
    }
    return { store: living, die: death.give, revive: revival.give }
  }

  it('is stood in for: the turn is made here, its stream ends with the answer, and stands once even if it was only asleep', async () => {
    const time = openSign()
    const dying = mortal(here)
    const one = await house(dying.store, { text: 'Buy {{r2.bags}} together.', when: time.given })
    const two = await house(there, { text: 'Stack {{r2.bags}} by the gate.' })
    const id = await one.start()
    const first = ask(one, id)
    await announced(id, 6)
    dying.die()
    time.give()
    const all = pieces(await (await ask(two, id, { ...stream, 'last-event-id': '5' })).text())
    expect(all.at(-1)).toMatchObject({ event: 'answer', data: { prose: 'Stack 10 bags by the gate.' } })
    dying.revive()
    expect(await one.answer(first)).toMatchObject({ turn: 0, prose: 'Stack 10 bags by the gate.' })
    expect(await written(id)).toBe(1)
    // Whoever was further along before than the turn has pieces now still gets its answer.
    const late = pieces(await (await ask(two, id, { ...stream, 'last-event-id': '40' })).text())
    expect(late.map((it) => it.event)).toEqual(['answer'])
  })

  it('holds nobody up with what it has left: nothing is there to halt, and the talk goes on', async () => {
    const two = await house(there, { status: 401 })
    const id = await two.start()
    await here?.announce(id, 'left', 3, [])
    expect(await two.refusal(two.post(`/api/conversations/${id}/turns/halt`))).toMatchObject({
      status: 409,
      error: { code: 'nothing-to-halt' },
    })
    expect(await here?.announced(id)).toEqual([])
    expect((await two.answer(ask(two, id))).turn).toBe(0)
  })
})
