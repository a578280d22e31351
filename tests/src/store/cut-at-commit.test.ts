// A connection that breaks at COMMIT: whether the turn was kept cannot be known from the outside. It must stand once all the same.
import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { type Pace, usualPace } from '../../../src/http/elsewhere.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { talkingTo } from '../http/talking.ts'
import { postgresServer } from './postgres-server.ts'
import { openRelay, type Cut, type Relay } from './relay.ts'

const folder = mkdtempSync(join(tmpdir(), 'plumbpost-cut-'))
// PostgreSQL runs as a user of its own, who must be let in.
chmodSync(folder, 0o777)
const server = postgresServer(() => folder)
let url: URL
beforeAll(async () => {
  url = new URL(await server.start())
}, 60_000)
afterAll(async () => {
  await server.stop()
  rmSync(folder, { recursive: true, force: true })
}, 60_000)

let relay: Relay
let store: Store
beforeEach(async () => {
  relay = await openRelay(Number(url.port))
  const throughRelay = new URL(url)
  throughRelay.port = String(relay.port)
  store = await openStore({ databaseUrl: throughRelay.href, longestWaitMs: 500 })
})
afterEach(async () => {
  await store.close()
  await relay.close()
})

const question = 'How many pickets go in a 93 in opening with 3 1/2 in pickets and gaps no wider than 2 1/2 in?'
const both: readonly Cut[] = ['before', 'after']
/** However slow the machine is, no turn is announced to other servers: that is a transaction of its own, and would be the one that is cut. */
const silent: Pace = { ...usualPace, firstMs: 3_600_000 }
const headers: readonly Record<string, string>[] = [{}, { 'idempotency-key': 'k' }]

describe.each(both)('a connection that breaks at COMMIT, %s the database has done it', (cut) => {
  const talk = async () => {
    const it = talkingTo(createAssistant(offlineReader), store, undefined, silent)
    const id = await it.start()
    const ask = (headers: Record<string, string> = {}, text = question) =>
      it.post(`/api/conversations/${id}/turns`, { text }, headers)
    const said = async (): Promise<string[]> => (await it.kept(id)).map((turn) => turn.said)
    return { it, id, ask, said }
  }

  it.each(headers)('is not seen by whoever asked, and the turn stands once: %o', async (key) => {
    const { it, ask, said } = await talk()
    relay.cutAtCommit(cut)
    expect((await it.answer(ask(key))).turn).toBe(0)
    expect(relay.cuts()).toBe(1)
    expect(store.retries()).toBe(1)
    expect(await said()).toEqual([question])
    expect((await it.answer(ask({}, 'and 4 in gaps?'))).turn).toBe(1)
  })

  it.each(headers)(
    'when the database is away after it, is said, and the same message sent again stands once: %o',
    async (key) => {
      const { it, ask, said } = await talk()
      relay.cutAtCommit(cut, true)
      expect(await it.refusal(ask(key))).toMatchObject({ status: 503, error: { code: 'database-away' } })
      expect(relay.cuts()).toBe(1)
      relay.moveTo(Number(url.port))
      expect((await it.answer(ask(key))).turn).toBe(0)
      expect(await said()).toEqual([question])
      // Asked once more on purpose it is a new turn, unless its key says that it is not.
      expect((await it.answer(ask(key))).turn).toBe('idempotency-key' in key ? 0 : 1)
    },
  )

  it('and another question asked after it is another turn', async () => {
    const { it, ask, said } = await talk()
    relay.cutAtCommit(cut, true)
    await it.refusal(ask())
    relay.moveTo(Number(url.port))
    await it.answer(ask({}, 'Something else.'))
    await it.answer(ask())
    expect(await said()).toEqual([...(cut === 'after' ? [question] : []), 'Something else.', question])
  })

  it('while a branch is taken up again, leaves it there once', async () => {
    const { it, id, ask, said } = await talk()
    await ask()
    await it.post(`/api/conversations/${id}/turns/0/again`, { text: 'Something else.' })
    relay.cutAtCommit(cut)
    const resumed = await it.post(`/api/conversations/${id}/turns/0/resume`, { branch: 0 })
    expect([resumed.status, await resumed.json()]).toEqual([200, { turns: 1 }])
    expect(await said()).toEqual([question])
    expect((await store.read(id))?.written).toBe(3)
  })
})
