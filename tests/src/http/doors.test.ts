// Who is let in. The attacks are those that a browser can be made to carry out, with the headers it then sends (Fetch standard, “Origin” and “Sec-Fetch-Site”).
import { spawn } from 'node:child_process'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { checkDoor } from '../../../src/http/doors.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'

const secret = '3e9b7c015fd2a8647c90e1b52f38d6a4'

let store: Store
beforeEach(async () => {
  store = await openStore({ memory: true })
})
afterEach(() => store.close())

const serverAt = (host: string, itsSecret?: string) =>
  createApp({
    assistant: createAssistant(offlineReader),
    store,
    version: '1.2.3',
    front: 'offline',
    renderReply: (it) => it,
    host,
    secret: itsSecret,
  })
const told = async (response: Response | Promise<Response>) => {
  const it = await response
  return [it.status, ((await it.json()) as { error?: { code: string } }).error?.code]
}

describe('a server that others can reach', () => {
  it.each(['0.0.0.0', '::', '192.168.1.5', 'fence.test', '127.0.0.1.fence.test'])(
    'does not start at %s without a secret, and says which setting to set',
    (host) => expect(() => checkDoor({ host, names: [] })).toThrow(/“.+”.+PLUMBPOST_SECRET/),
  )

  it('starts with a secret, unless that is too short; on this machine it needs none', () => {
    expect(() => checkDoor({ host: '0.0.0.0', names: [], secret: 'fence' })).toThrow('at least 24 characters')
    checkDoor({ host: '0.0.0.0', names: [], secret })
    for (const host of ['127.0.0.1', '127.8.9.1', 'localhost', '::1']) checkDoor({ host, names: [] })
  })

  it.each([
    'a'.repeat(40),
    'password'.repeat(4),
    '1234567890'.repeat(3),
    'picketfence1picketfence1pick',
    'administratorAdministrator',
    'abcdefghijklmnopqrstuvwxyz',
    'QWERTYUIOPasdfghjklzxcvbnm',
    '1qaz2wsx3edc4rfv5tgb6yhn7ujm',
    'password123456789qwertyuiop',
  ])('does not start with the secret %s, and does not say it', (guessed) => {
    const check = () => checkDoor({ host: '0.0.0.0', names: [], secret: guessed })
    expect(check).toThrow(/over and over, or runs along/)
    expect(check).not.toThrow(guessed.slice(0, 8))
  })

  // 12, 18, 24 and 32 bytes of chance, as people are told to make them. From a fixed seed: a xorshift of 32 bits (Marsaglia, 2003).
  it('starts with what chance makes, in hexadecimals and in base64', () => {
    let state = 20_261_127
    const byte = (): number => {
      state ^= state << 13
      state ^= state >>> 17
      state ^= state << 5
      return (state >>> 8) & 0xff
    }
    for (const size of [12, 18, 24, 32])
      for (let i = 0; i < 500; i++) {
        const made = Buffer.from(Array.from({ length: size }, byte))
        checkDoor({ host: '0.0.0.0', names: [], secret: made.toString('hex') })
        if (size >= 18) checkDoor({ host: '0.0.0.0', names: [], secret: made.toString('base64') })
      }
  })

  it('nor with a name that others reach it by, on this machine too', () =>
    expect(() => checkDoor({ host: '127.0.0.1', names: ['fence.test'] })).toThrow(/“fence.test”.+PLUMBPOST_SECRET/))

  it('as a program: it ends with that sentence, and with a fault', async () => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts'], {
      env: { PATH: process.env.PATH, HOST: '0.0.0.0', PORT: '0', PLUMBPOST_DATA: '/nowhere/that/is' },
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    let said = ''
    child.stderr.on('data', (data: Buffer) => {
      said += String(data)
    })
    expect(await new Promise((resolve) => child.on('close', resolve))).toBe(1)
    expect(said).toMatch(/^HOST is “0\.0\.0\.0”.*Set PLUMBPOST_SECRET.*\n$/)
  })

  it('answers nothing but whether it is up to whoever does not say the secret, also where there is nothing', async () => {
    const app = serverAt('0.0.0.0', secret)
    expect((await app.request('/healthz')).status).toBe(200)
    const routes = app.routes.filter(
      (it) => it.method !== 'ALL' && !['/healthz', '/readyz', '/shared/:link'].includes(it.path),
    )
    expect(routes.length).toBeGreaterThan(12)
    for (const { method, path } of [...routes, { method: 'GET', path: '/nothing' }, { method: 'GET', path: '/' }]) {
      const at = path.replace(/\{.*?\}/g, '').replace(/:\w+/g, '1')
      expect(await told(app.request(at, { method })), `${method} ${at}`).toEqual([401, 'no-secret'])
    }
    for (const path of ['/healthz/', '//healthz', '/healthz/../api/conversations', '/HEALTHZ'])
      expect((await app.request(path)).status, path).toBe(401)
  })

  it('any signs may be in it, a colon and letters of any alphabet among them', async () => {
    const odd = 'größer: “½” & <забор> 木の柵!'
    checkDoor({ host: '0.0.0.0', names: [], secret: odd })
    const app = serverAt('0.0.0.0', odd)
    const asked = async (password: string) => {
      const authorization = `Basic ${Buffer.from(`ann:${password}`).toString('base64')}`
      return (await app.request('/api/conversations', { headers: { authorization, host: 'fence.test' } })).status
    }
    expect([await asked(odd), await asked(odd.toUpperCase()), await asked(odd.slice(0, -1))]).toEqual([200, 401, 401])
  })

  it('lets in whoever says it, as a token or as the password of any name', async () => {
    const app = serverAt('0.0.0.0', secret)
    const basic = (pair: string): string => `Basic ${Buffer.from(pair).toString('base64')}`
    const asked = async (authorization: string) =>
      (await app.request('/api/conversations', { headers: { authorization, host: 'fence.test' } })).status
    for (const right of [`Bearer ${secret}`, `bearer ${secret}`, basic(`:${secret}`), basic(`ann:${secret}`)])
      expect(await asked(right), right).toBe(200)
    for (const wrong of [
      '',
      secret,
      'Bearer',
      'Bearer ',
      `Bearer ${secret}0`,
      `Bearer ${secret.slice(1)}`,
      `Digest ${secret}`,
      basic(secret),
      basic(`${secret}:`),
      basic(`ann:${secret}:`),
      'Basic %%%',
    ])
      expect(await asked(wrong), wrong).toBe(401)
  })

  it('a browser is asked for it, and another site’s page is refused even with it', async () => {
    const app = serverAt('0.0.0.0', secret)
    expect((await app.request('/')).headers.get('www-authenticate')).toMatch(/^Basic /)
    const headers = { authorization: `Bearer ${secret}`, host: 'fence.test', origin: 'https://elsewhere.test' }
    expect(await told(app.request('/api/conversations', { method: 'POST', headers }))).toEqual([403, 'other-site'])
  })
})

describe('a server on this machine', () => {
  it.each([
    'elsewhere.test',
    'elsewhere.test:4680',
    'localhost.elsewhere.test',
    '127.0.0.1.elsewhere.test:4680',
    '127.elsewhere.test',
    'localhost:4680:4680',
    '0.0.0.0:4680',
    '',
  ])('is not reached by the name “%s”, on any route', async (host) => {
    const app = serverAt('127.0.0.1')
    for (const { method, path } of app.routes.filter((it) => it.method !== 'ALL')) {
      const at = path.replace(/\{.*?\}/g, '').replace(/:\w+/g, '1')
      expect(await told(app.request(at, { method, headers: { host } })), `${method} ${at}`).toEqual([403, 'wrong-host'])
    }
  })

  it.each(['127.0.0.1:4680', 'localhost', 'LOCALHOST:4680', '[::1]:4680', '127.0.0.2'])(
    'is reached as %s',
    async (host) =>
      expect((await serverAt('127.0.0.1').request('/api/conversations', { headers: { host } })).status).toBe(200),
  )

  it.each([
    ['another site', { origin: 'https://elsewhere.test', 'sec-fetch-site': 'cross-site' }],
    ['another site, in a browser that says no more', { origin: 'https://elsewhere.test' }],
    ['another server on this machine', { origin: 'http://127.0.0.1:9999', 'sec-fetch-site': 'same-site' }],
    ['a page without an origin', { origin: 'null', 'sec-fetch-site': 'cross-site' }],
    [
      'a page that claims this origin from elsewhere',
      { origin: 'http://127.0.0.1:4680', 'sec-fetch-site': 'cross-site' },
    ],
    ['nonsense', { origin: '127.0.0.1:4680' }],
  ])('takes nothing from the page of %s, and changes nothing for it', async (_, headers) => {
    const app = serverAt('127.0.0.1')
    const { id } = await store.create()
    const sent = { host: '127.0.0.1:4680', ...headers }
    expect(await told(app.request('/api/conversations', { method: 'POST', headers: sent }))).toEqual([
      403,
      'other-site',
    ])
    expect(await told(app.request(`/api/conversations/${id}`, { method: 'DELETE', headers: sent }))).toEqual([
      403,
      'other-site',
    ])
    expect(await store.list()).toHaveLength(1)
  })

  it('lets no other site read: no answer names one that may', async () => {
    const answer = await serverAt('127.0.0.1').request('/api/conversations', { headers: { host: 'localhost:4680' } })
    expect([...answer.headers.keys()].filter((it) => it.startsWith('access-control'))).toEqual([])
    expect(answer.headers.get('cross-origin-resource-policy')).toBe('same-origin')
  })

  it('answers its own page', async () =>
    expect(
      (
        await serverAt('127.0.0.1').request('/api/conversations', {
          method: 'POST',
          headers: { host: '127.0.0.1:4680', origin: 'http://127.0.0.1:4680', 'sec-fetch-site': 'same-origin' },
        })
      ).status,
    ).toBe(201))
})
