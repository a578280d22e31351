// A server that is told to stop while it answers: nothing that was asked is lost, and it stops.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { Stopping } from '../../../src/http/stopping.ts'
import { openEndpoint } from '../../../src/readers/model/endpoint.ts'
import { createWriter } from '../../../src/readers/model/writing.ts'
import { readOffline } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { headlines } from '../talk.ts'
import { type HangingModel, openHangingModel, openSign, type Said } from './hanging-model.ts'
import { buildServer } from './server-process.ts'
import { talkingTo } from './talking.ts'

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

async function house(...answers: readonly Said[]) {
  model = await openHangingModel(...answers)
  const stopping = new Stopping()
  const assistant = createAssistant(
    { front: 'model', read: async (heard) => ({ request: readOffline(heard), by: 'model' }) },
    createWriter(openEndpoint({ model: 'm', baseUrl: model.address })),
  )
  const it = talkingTo(assistant, store, undefined, undefined, stopping)
  return { it, stopping, id: await it.start() }
}

describe('a server that is to stop', () => {
  it('finishes what is in the making, and begins nothing more', async () => {
    const time = openSign()
    const { it, stopping, id } = await house({ text: 'Buy {{r2.bags}} together.', when: time.given })
    const asked = it.post(`/api/conversations/${id}/turns`, { text: bags })
    await model.came(0)
    const finished = stopping.finish({ finishMs: 60_000, haltMs: 60_000 })
    expect(await it.refusal(it.post(`/api/conversations/${id}/turns`, { text: 'and more?' }))).toMatchObject({
      status: 503,
      error: { code: 'server-stopping' },
    })
    expect((await it.app.request('/readyz')).status).toBe(503)
    time.give()
    await finished
    expect((await it.answer(asked)).prose).toBe('Buy 10 bags together.')
    expect((await it.kept(id)).map((turn) => turn.said)).toEqual([bags])
  })

  it('halts what takes too long, and keeps it as far as it got', async () => {
    const { it, stopping, id } = await house('nothing')
    const asked = it.post(`/api/conversations/${id}/turns`, { text: bags })
    await model.came(0)
    await stopping.finish({ finishMs: 0, haltMs: 60_000 })
    await model.closed(0)
    const answer = await it.answer(asked)
    expect([answer.halted, headlines(answer).bags]).toEqual(['writing', '10 bags'])
    expect((await it.kept(id)).map((turn) => turn.answer.halted)).toEqual(['writing'])
  })

  it('waits for no answer that will never come', async () => {
    const { it, stopping, id } = await house('nothing')
    const never: Store['append'] = () => new Promise(() => {})
    Object.assign(store, { append: never })
    void it.post(`/api/conversations/${id}/turns`, { text: bags })
    await model.came(0)
    expect(await stopping.finish({ finishMs: 0, haltMs: 10 })).toBeUndefined()
  })
})

it('the program, told to stop by SIGTERM while it waits for a model, answers, keeps the turn and ends with 0', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-stop-'))
  const time = openSign()
  model = await openHangingModel({ text: 'I would rather not.', when: time.given })
  const built = await buildServer()
  const server = await built.start({
    PLUMBPOST_DATA: folder,
    PLUMBPOST_MODEL: 'm',
    OPENAI_BASE_URL: model.address,
  })
  try {
    const { id } = (await (await server.post('/api/conversations', {})).json()) as { id: string }
    const asked = server.post(`/api/conversations/${id}/turns`, { text: bags })
    await model.came(0)
    server.kill('SIGTERM')
    // Halted or read without the model: it is answered either way.
    time.give()
    expect((await asked).status).toBe(200)
    expect(await server.ended).toBe(0)
    const kept = await openStore({ dataFolder: folder })
    expect((await kept.read(id))?.turns.map((turn) => turn.said)).toEqual([bags])
    await kept.close()
  } finally {
    server.kill('SIGKILL')
    built.remove()
    rmSync(folder, { recursive: true, force: true })
  }
}, 60_000)
