// How much is taken from one owner: each limit is met, said with its number, and leaves everybody else alone.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Answer } from '../../../src/answer.ts'
import { type Assistant, createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { createGuards } from '../../../src/http/limits.ts'
import { Rate } from '../../../src/http/rate.ts'
import { offlineReader, readOffline } from '../../../src/readers/offline/offline.ts'
import { type Limits, limitsAlone, limitsAmongOthers } from '../../../src/settings.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'

const secret = '0123456789abcdef0123456789abcdef'
const question = 'How many feet is 96 in?'

let store: Store
beforeEach(async () => {
  store = await openStore({ memory: true })
})
afterEach(() => store.close())

/** A model that takes so many tokens for a turn, and reads as we do. */
const modelOf = (tokens: number): Assistant =>
  createAssistant({
    front: 'model',
    read: async (heard, allowance) => {
      allowance.count(tokens)
      return { request: readOffline(heard), by: 'model' }
    },
  })

function served(limits: Partial<Limits>, assistant: Assistant = createAssistant(offlineReader)) {
  const app = createApp({
    assistant,
    store,
    version: '1.2.3',
    front: 'model',
    renderReply: (it) => it,
    host: '0.0.0.0',
    secret,
    limits: { ...limitsAmongOthers, ...limits },
  })
  const send = (
    path: string,
    token: string,
    body: object = {},
    headers: Record<string, string> = {},
    method = 'POST',
  ) =>
    app.request(path, {
      method,
      headers: { 'content-type': 'application/json', authorization: `Bearer ${token}`, ...headers },
      ...(method === 'POST' ? { body: JSON.stringify(body) } : {}),
    })
  const begin = async () =>
    (await (await send('/api/conversations', secret)).json()) as { readonly id: string; readonly owner: string }
  const ask = ({ id, owner }: { id: string; owner: string }, headers: Record<string, string> = {}, text = question) =>
    send(`/api/conversations/${id}/turns`, owner, { text }, headers)
  return { app, send, begin, ask }
}

const told = async (response: Response | Promise<Response>) => {
  const it = await response
  const { error } = (await it.json()) as { error?: { code: string; message: string } }
  return { status: it.status, code: error?.code, message: error?.message, wait: it.headers.get('retry-after') }
}

describe('limits', () => {
  it('of a body: what is larger is not read, and the most is said', async () => {
    const { begin, ask } = served({ bytes: 2000 })
    const ann = await begin()
    expect(await told(ask(ann, {}, 'a'.repeat(2000)))).toMatchObject({
      status: 413,
      code: 'too-large',
      message: expect.stringContaining('2000 bytes'),
    })
    expect((await ask(ann)).status).toBe(200)
  })

  it('of a message: both its length and the most are said', async () => {
    const { begin, ask } = served({ characters: 40 })
    const ann = await begin()
    expect(await told(ask(ann, {}, 'a'.repeat(41)))).toMatchObject({
      status: 422,
      code: 'too-long',
      message: expect.stringMatching(/41 characters.*40 is the most/),
    })
    expect((await ask(ann, {}, 'a'.repeat(40))).status).toBe(200)
  })

  it('of a talk: those set aside count, what was kept is told again under its key, and a new talk goes on', async () => {
    const { begin, ask, send } = served({ turns: 3 })
    const ann = await begin()
    await ask(ann)
    await send(`/api/conversations/${ann.id}/turns/0/again`, ann.owner, { text: question })
    expect((await ask(ann, { 'idempotency-key': 'third' })).status).toBe(200)
    const full = { status: 409, code: 'talk-full', message: expect.stringContaining('its 3 turns') }
    expect(await told(ask(ann))).toMatchObject(full)
    expect(await told(send(`/api/conversations/${ann.id}/turns/0/again`, ann.owner, { text: question }))).toMatchObject(
      full,
    )
    expect(await told(send(`/api/conversations/${ann.id}/turns/0/resume`, ann.owner, { branch: 0 }))).toMatchObject(
      full,
    )
    expect(await told(send(`/api/conversations/${ann.id}/job/units`, ann.owner, { system: 'metric' }))).toMatchObject(
      full,
    )
    expect((await ask(ann, { 'idempotency-key': 'third' })).status).toBe(200)
    const { id } = (await (await send('/api/conversations', ann.owner)).json()) as { id: string }
    expect((await ask({ id, owner: ann.owner })).status).toBe(200)
  })

  it('of turns that are asked at once: the last place is taken once', async () => {
    const { begin, ask } = served({ turns: 2 })
    const ann = await begin()
    const asked = await Promise.all([ask(ann), ask(ann), ask(ann), ask(ann)])
    expect(asked.map((it) => it.status).sort()).toEqual([200, 200, 409, 409])
    expect((await store.read(ann.id))?.written).toBe(2)
  })

  it('of a minute: turns, changes, sums and files count for one owner alone; reading and halting do not', async () => {
    const { begin, ask, send } = served({ turnsAMinute: 4 })
    const [ann, ben] = [await begin(), await begin()]
    const at = `/api/conversations/${ann.id}`
    expect((await ask(ann)).status).toBe(200)
    expect((await send(`${at}/job/units`, ann.owner, { system: 'metric' })).status).toBe(200)
    expect((await send('/api/calculations/picket-spacing', ann.owner)).status).toBe(422)
    expect((await send(`${at}/export.json`, ann.owner, {}, {}, 'GET')).status).toBe(200)
    const refused = await told(ask(ann))
    expect(refused).toMatchObject({
      status: 429,
      code: 'too-often',
      message: expect.stringMatching(/4 times within a minute.*in \d+ s/),
    })
    expect(Number(refused.wait)).toBeGreaterThan(0)
    expect(Number(refused.wait)).toBeLessThanOrEqual(60)
    expect((await send(`${at}/export.json`, ann.owner, {}, {}, 'GET')).status).toBe(429)
    expect((await send(at, ann.owner, {}, {}, 'GET')).status).toBe(200)
    expect((await send(`${at}/turns/halt`, ann.owner)).status).toBe(409)
    expect((await ask(ben)).status).toBe(200)
  })

  it('of newcomers count for the place they come from: nobody is somebody new for each turn', async () => {
    const { send } = served({ turnsAMinute: 2 })
    expect((await send('/api/conversations', secret)).status).toBe(201)
    expect((await send('/api/conversations', secret)).status).toBe(201)
    expect(await told(send('/api/conversations', secret))).toMatchObject({ status: 429, code: 'too-often' })
  })

  it('of answers waited for at once: a place is free again when one is there, failed or was let go', async () => {
    const open: (() => void)[] = []
    let isBroken = false
    const offline = createAssistant(offlineReader)
    const { begin, ask } = served(
      { atOnce: 2 },
      {
        turn: async (...asked) => {
          if (isBroken) throw new Error('broken')
          await new Promise<void>((resolve) => open.push(resolve))
          return offline.turn(...asked)
        },
      },
    )
    const [ann, ben] = [await begin(), await begin()]
    const stream = ask(ann, { accept: 'text/event-stream' })
    await expect.poll(() => open.length).toBe(1)
    const whole = ask(ann)
    await expect.poll(async () => (await told(ask(ann))).code).toBe('too-many-at-once')
    expect(await told(ask(ann))).toMatchObject({
      status: 429,
      wait: '2',
      message: expect.stringContaining('2 answers'),
    })
    const bens = ask(ben)
    await expect.poll(() => open.length).toBe(2)
    // Ann's second turn begins when her first is done.
    for (const it of open) it()
    await expect.poll(() => open.length).toBe(3)
    open[2]?.()
    expect((await (await stream).text()).match(/^event: answer$/gm)).toHaveLength(1)
    expect([(await whole).status, (await bens).status]).toEqual([200, 200])
    isBroken = true
    for (let i = 0; i < 4; i++) expect((await ask(ann)).status).toBe(500)
    for (let i = 0; i < 4; i++) expect((await ask({ ...ann, id: 'none' })).status).toBe(404)
  })

  it('of talks kept: both numbers are said, and one deleted makes room; others keep theirs', async () => {
    const { begin, send } = served({ talks: 2 })
    const [ann] = [await begin(), await begin()]
    expect((await send('/api/conversations', ann.owner)).status).toBe(201)
    expect(await told(send('/api/conversations', ann.owner))).toMatchObject({
      status: 409,
      code: 'too-many-talks',
      message: expect.stringMatching(/You keep 2 talks, and 2 is the most/),
    })
    expect((await send(`/api/conversations/${ann.id}`, ann.owner, {}, {}, 'DELETE')).status).toBe(204)
    expect((await send('/api/conversations', ann.owner)).status).toBe(201)
  })

  it('of wrong secrets: the number is the setting’s', async () => {
    const { send } = served({ wrongSecrets: 2 })
    for (let i = 0; i < 2; i++) expect((await send('/api/conversations', 'wrong')).status).toBe(401)
    expect((await send('/api/conversations', secret)).status).toBe(429)
  })
})

describe('a budget of tokens', () => {
  const noticeOf = async (response: Response | Promise<Response>) => {
    const { front, heard, reply } = (await (await response).json()) as Answer
    return { front, notice: heard.notice, isSaid: heard.notice !== undefined && reply.includes(heard.notice) }
  }

  it('of a talk: when it is spent no model is asked, the answer is there all the same and says so; a new talk has its own', async () => {
    const { begin, ask, send } = served({ tokens: 1000 }, modelOf(600))
    const ann = await begin()
    for (let i = 0; i < 2; i++) expect(await noticeOf(ask(ann))).toMatchObject({ front: 'model', notice: undefined })
    const after = await ask(ann)
    expect(((await after.clone().json()) as Answer).reply).toContain('8 ft')
    expect(await noticeOf(after)).toEqual({
      front: 'offline',
      notice: expect.stringMatching(/^This talk has used 1200 of the 1000 tokens/),
      isSaid: true,
    })
    expect(await store.tokens({ id: ann.id })).toBe(1200)
    const { id } = (await (await send('/api/conversations', ann.owner)).json()) as { id: string }
    expect(await noticeOf(ask({ id, owner: ann.owner }))).toMatchObject({ front: 'model' })
  })

  it('of a day: it is everybody’s, and there is a new one after midnight UTC', async () => {
    const { begin, ask } = served({ tokensADay: 1000 }, modelOf(600))
    const [ann, ben] = [await begin(), await begin()]
    await ask(ann)
    await ask(ben)
    expect(await noticeOf(ask(ben))).toMatchObject({
      front: 'offline',
      notice: expect.stringMatching(/^Today 1200 of the 1000/),
    })
    const limits = { ...limitsAlone, tokensADay: 1000 }
    const tomorrow = createGuards(limits, store, [], () => new Date(Date.now() + 86_400_000))
    expect(await tomorrow.spared(ann.id)).toBeUndefined()
  })
})

describe('a rate', () => {
  it('counts what lies within its time, says how long to wait, and forgets', () => {
    let now = 0
    const rate = new Rate(2, 60_000, () => now)
    rate.count('ann')
    now = 30_000
    rate.count('ann')
    expect([rate.wait('ann'), rate.wait('ben')]).toEqual([30, 0])
    now = 59_999
    expect(rate.wait('ann')).toBe(1)
    now = 60_000
    expect(rate.wait('ann')).toBe(0)
    rate.count('ann')
    // The one of 30 s is the older of the two by now.
    expect(rate.wait('ann')).toBe(30)
  })

  it('keeps few names: who comes under ever new ones pushes out the quietest alone', () => {
    const rate = new Rate(1, 60_000, () => 0)
    rate.count('first')
    for (let i = 0; i < 9_999; i++) rate.count(`name ${i}`)
    expect(rate.wait('first')).toBe(60)
    rate.count('one more')
    expect([rate.wait('first'), rate.wait('one more')]).toEqual([0, 60])
  })
})
