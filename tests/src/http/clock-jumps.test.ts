// A clock on the wall that is put back an hour, or runs a day ahead until somebody mends it: order does not go by it, and what does recovers.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Answer } from '../../../src/answer.ts'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { Rate } from '../../../src/http/rate.ts'
import { readOffline } from '../../../src/readers/offline/offline.ts'
import { type Limits, limitsAmongOthers } from '../../../src/settings.ts'
import { openStore, talksFileIn } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { turnToKill } from '../store/turn-to-kill.ts'

const secret = '0123456789abcdef0123456789abcdef'
const question = 'How many feet is 96 in?'
const [hour, day] = [3_600_000, 86_400_000]
const noon = Date.UTC(2026, 4, 1, 12)

let store: Store
beforeEach(async () => {
  // The clock on the wall alone: what is waited for goes by another.
  vi.useFakeTimers({ toFake: ['Date'], now: noon })
  store = await openStore({ memory: true })
})
afterEach(async () => {
  vi.useRealTimers()
  await store.close()
})
const clockAt = (time: number): void => void vi.setSystemTime(time)

/** A server for several, whose model takes 600 tokens a turn and reads as we do. */
async function served(limits: Partial<Limits> = {}) {
  const app = createApp({
    assistant: createAssistant({
      front: 'model',
      read: async (heard, allowance) => {
        allowance.count(600)
        return { request: readOffline(heard), by: 'model' }
      },
    }),
    store,
    version: '1.2.3',
    front: 'model',
    renderReply: (it) => it,
    host: '0.0.0.0',
    secret,
    limits: { ...limitsAmongOthers, ...limits },
  })
  const send = (path: string, headers: Record<string, string>, body?: object) =>
    app.request(path, {
      method: body ? 'POST' : 'GET',
      headers: { 'content-type': 'application/json', ...headers },
      ...(body ? { body: JSON.stringify(body) } : {}),
    })
  const authorization = `Bearer ${secret}`
  const begun = await send('/api/conversations', { authorization, origin: 'http://fence.test', host: 'fence.test' }, {})
  const cookie = begun.headers.get('set-cookie')?.split(';')[0] ?? ''
  const { id } = (await begun.json()) as { id: string }
  const ask = (text = question) => send(`/api/conversations/${id}/turns`, { cookie }, { text })
  return { id, cookie, send, ask }
}

describe('turns', () => {
  it('stay in the order in which they were asked, are numbered on, and each builds on the one before', async () => {
    const { id, ask } = await served()
    const asked = [
      'The holes are 12 in wide and 24 in deep.',
      'Four posts, 80 lb bags. How many bags?',
      'and 14 in wide?',
    ]
    for (const [i, text] of asked.entries()) {
      clockAt(noon + ([0, -hour, day][i] ?? 0))
      expect(((await (await ask(text)).json()) as Answer).turn).toBe(i)
    }
    clockAt(noon - day)
    const turns = (await store.read(id))?.turns ?? []
    expect(turns.map((it) => it.said)).toEqual(asked)
    expect(turns.map((it) => it.at)).not.toEqual(turns.map((it) => it.at).sort())
    // (π/4 × 144 − 12.25) × 24 / 1728 = 1.40066 ft³ × 4 = 5.6026; / 0.6 = 9.34 → 10
    expect(JSON.stringify(turns[1]?.answer.figures.filter((it) => it.headline))).toContain('10 bags')
  })
})

describe('limits', () => {
  it.each([
    ['an hour back', -hour],
    ['a day ahead', day],
  ])('of a minute are over after a minute, with the clock %s', async (_, jump) => {
    const { ask } = await served({ turnsAMinute: 1 })
    expect((await ask()).status).toBe(200)
    clockAt(noon + jump)
    const refused = await ask()
    expect(refused.status).toBe(429)
    expect(Number(refused.headers.get('retry-after'))).toBeLessThanOrEqual(60)
    // By the clock it really goes by, a short minute is over although the one on the wall went back.
    const rate = new Rate(1, 20)
    rate.count('ann')
    clockAt(noon + 2 * jump)
    await expect.poll(() => rate.wait('ann')).toBe(0)
  })

  it('of tokens a day: what was asked under a clock that ran ahead is of that day, and today has its own', async () => {
    const { ask } = await served({ tokensADay: 1000 })
    const front = async () => ((await (await ask()).json()) as Answer).front
    clockAt(noon + 60 * day)
    expect([await front(), await front(), await front()]).toEqual(['model', 'model', 'offline'])
    clockAt(noon)
    expect([await front(), await front(), await front()]).toEqual(['model', 'model', 'offline'])
    clockAt(noon + hour - day)
    expect(await front()).toBe('model')
    clockAt(noon + day)
    expect(await front()).toBe('model')
  })
})

describe('a cookie', () => {
  it('is good with the clock back, renewed ahead, asked for again past its 90 days, and good once the clock is right', async () => {
    const { id, cookie, send } = await served()
    const at = async (time: number) => {
      clockAt(time)
      const { status, headers } = await send(`/api/conversations/${id}`, { cookie })
      return [status, headers.get('set-cookie') === null ? 'kept' : 'renewed']
    }
    expect(await at(noon - hour)).toEqual([200, 'kept'])
    expect(await at(noon - 100 * day)).toEqual([200, 'renewed'])
    expect(await at(noon + day)).toEqual([200, 'renewed'])
    expect(await at(noon + 91 * day)).toEqual([401, 'kept'])
    expect(await at(noon)).toEqual([200, 'kept'])
  })
})

describe('a file that another program holds', () => {
  it('is waited for no longer because the clock was put back', async () => {
    const dataFolder = mkdtempSync(join(tmpdir(), 'plumbpost-clock-'))
    const kept = await openStore({ dataFolder, longestWaitMs: 100 })
    const { id } = await kept.create()
    const other = new Database(talksFileIn(dataFolder))
    other.exec('begin exclusive')
    const waiting = expect(kept.append(id, turnToKill(id, 0), 0)).rejects.toMatchObject({ code: 'database-busy' })
    clockAt(noon - hour)
    await waiting
    other.exec('rollback')
    other.close()
    await kept.close()
    rmSync(dataFolder, { recursive: true, force: true })
  })
})
