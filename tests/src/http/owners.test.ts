// Whose a talk is, where several share a server: each sees their own, by a token that only this server can have made; and what a link lets others read.
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { createOwners } from '../../../src/http/owners.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { renderReply } from '../../../src/web/markdown.ts'

const secret = '0123456789abcdef0123456789abcdef'
const authorization = `Bearer ${secret}`
const question = 'What spacing for a 70 5/8 in bay, 3 1/2 in pickets, gaps at most 2 1/2 in?'

let store: Store
beforeEach(async () => {
  store = await openStore({ memory: true })
})
afterEach(() => store.close())

const serverWith = (itsSecret: string | undefined, more: { names?: string[]; proxies?: string[] } = {}) =>
  createApp({
    assistant: createAssistant(offlineReader),
    store,
    version: '1.2.3',
    front: 'offline',
    renderReply,
    host: itsSecret === undefined ? '127.0.0.1' : '0.0.0.0',
    secret: itsSecret,
    ...more,
  })

type App = ReturnType<typeof serverWith>
const post = (app: App, path: string, headers: Record<string, string>, body: object = {}) =>
  app.request(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: JSON.stringify(body),
  })
/** Begins a talk as somebody new, and hands out its name and the token to go on with. */
const newcomer = async (app: App) =>
  (await (await post(app, '/api/conversations', { authorization })).json()) as { id: string; owner: string }
const as = (token: string) => ({ authorization: `Bearer ${token}` })

/** Every route with a talk in it, as the app has them. */
const routesOfTalks = (app: App): { method: string; at: (id: string) => string }[] =>
  app.routes
    .filter((it) => it.method !== 'ALL' && it.path.startsWith('/api/conversations/:id'))
    .map(({ method, path }) => ({
      method,
      at: (id) => path.replace(':id', id).replace(':n{[0-9]+}', '0').replace(':export{export\\.[a-z]+}', 'export.json'),
    }))

describe('where several share a server', () => {
  it('each lists, reads and deletes their own talks; another’s looks like one that never was, on every route', async () => {
    const app = serverWith(secret)
    const [ann, ben] = [await newcomer(app), await newcomer(app)]
    await post(app, `/api/conversations/${ann.id}/turns`, as(ann.owner), { text: question })
    const listed = async (token: string) =>
      ((await (await app.request('/api/conversations', { headers: as(token) })).json()) as { id: string }[]).map(
        (it) => it.id,
      )
    expect([await listed(ann.owner), await listed(ben.owner)]).toEqual([[ann.id], [ben.id]])

    const routes = routesOfTalks(app)
    expect(routes.length).toBeGreaterThan(12)
    for (const { method, at } of routes) {
      const told = async (id: string) => {
        const answer = await app.request(at(id), { method, headers: as(ben.owner) })
        return [answer.status, (await answer.text()).replaceAll(id, '…')]
      }
      const theirs = await told(ann.id)
      expect(theirs[0], `${method} ${at('…')}`).toBe(404)
      expect(theirs, `${method} ${at('…')}`).toEqual(await told('00000000-0000-4000-8000-000000000000'))
    }
    // Nothing of all that was done to it.
    const kept = await app.request(`/api/conversations/${ann.id}`, { headers: as(ann.owner) })
    expect(((await kept.json()) as { turns: unknown[] }).turns).toHaveLength(1)
    expect(await store.sharedBy(ann.id)).toBeNull()
    expect(
      (await app.request(`/api/conversations/${ann.id}`, { method: 'DELETE', headers: as(ann.owner) })).status,
    ).toBe(204)
    expect(await listed(ann.owner)).toEqual([])
  })

  it('the secret alone begins a talk and lists none; it opens nobody’s, and does not say whether there is one', async () => {
    const app = serverWith(secret)
    const { id } = await newcomer(app)
    expect(await (await app.request('/api/conversations', { headers: { authorization } })).json()).toEqual([])
    for (const { method, at } of routesOfTalks(app))
      for (const which of [id, 'no-such']) {
        const answer = await app.request(at(which), { method, headers: { authorization } })
        expect([answer.status, ((await answer.json()) as { error: { code: string } }).error.code]).toEqual([
          401,
          'no-owner',
        ])
      }
  })

  it('a page gets its token as a cookie that no script and no other site has, and not in the answer', async () => {
    const app = serverWith(secret)
    const headers = { authorization, host: 'fence.test', origin: 'http://fence.test' }
    const begun = await post(app, '/api/conversations', headers)
    expect(Object.keys((await begun.json()) as object)).toEqual(['id'])
    const cookie = begun.headers.get('set-cookie') ?? ''
    expect(cookie).toMatch(
      /^plumbpost-owner=[\w-]{43}\.\w+\.[\w-]{43}; Max-Age=7776000; Path=\/; HttpOnly; SameSite=Strict$/,
    )
    const kept = { cookie: cookie.split(';')[0] ?? '', host: 'fence.test' }
    const again = await post(app, '/api/conversations', kept)
    expect([again.status, again.headers.get('set-cookie')]).toEqual([201, null])
    expect(await (await app.request('/api/conversations', { headers: kept })).json()).toHaveLength(2)
    const gone = await app.request('/api/owner', { method: 'DELETE', headers: kept })
    expect([gone.status, gone.headers.get('set-cookie')]).toEqual([
      204,
      'plumbpost-owner=; Max-Age=0; Path=/; HttpOnly; SameSite=Strict',
    ])
  })

  it('reading alone hands out no token: a link from another site cannot put a new one over a person’s own', async () => {
    const app = serverWith(secret)
    for (const path of ['/', '/api/conversations', '/api/calculations', '/healthz'])
      expect((await app.request(path, { headers: { authorization } })).headers.get('set-cookie'), path).toBeNull()
  })

  it('over TLS, by the word of a proxy that was named, the cookie goes over TLS only; nobody else is believed', async () => {
    const app = serverWith(secret, { proxies: ['10.0.0.9'] })
    const from = (remoteAddress: string) =>
      app.request(
        '/api/conversations',
        { method: 'POST', headers: { authorization, 'x-forwarded-proto': 'https' } },
        { incoming: { socket: { remoteAddress } } },
      )
    expect((await from('::ffff:10.0.0.9')).headers.get('set-cookie')).toMatch(
      /^__Host-plumbpost-owner=.*; Path=\/; HttpOnly; Secure; SameSite=Strict$/,
    )
    expect((await from('10.0.0.8')).headers.get('set-cookie')).toMatch(/^plumbpost-owner=(?!.*Secure)/)
  })

  it('when the secret changes, nobody comes in by an old token; with the new secret beside it their talks are theirs again', async () => {
    const { id, owner } = await newcomer(serverWith(secret))
    const changed = serverWith(`${secret}changed`)
    const at = `/api/conversations/${id}`
    const cookie = `plumbpost-owner=${owner}`
    expect((await changed.request(at, { headers: { cookie } })).status).toBe(401)
    const both = await changed.request(at, { headers: { cookie, authorization: `${authorization}changed` } })
    expect(both.status).toBe(200)
    const renewed = both.headers.get('set-cookie')?.split(';')[0] ?? ''
    expect((await changed.request(at, { headers: { cookie: renewed } })).status).toBe(200)
    // Alone the old one still opens nothing.
    expect((await changed.request(at, { headers: { cookie } })).status).toBe(401)
  })

  it('a token is good for 90 days from the last visit, and is renewed by one', () => {
    const at = (day: number) => createOwners(secret, () => new Date(day * 86_400_000))
    const token = at(20_000).mint()
    expect(at(20_000).read(token)).toMatchObject({ isGood: true, isOlder: false, renewed: token })
    expect(at(20_090).read(token)).toMatchObject({ isGood: true, isOlder: true })
    expect(at(20_091).read(token)?.isGood).toBe(false)
    const renewed = at(20_090).read(token)?.renewed ?? ''
    expect(at(20_180).read(renewed)).toMatchObject({ isGood: true, owner: at(20_000).read(token)?.owner })
  })

  it('a token that was made up or changed anywhere opens nothing', () => {
    const owners = createOwners(secret)
    const token = owners.mint()
    for (let i = 0; i < token.length; i++) {
      const changed = `${token.slice(0, i)}${token[i] === 'A' ? 'B' : 'A'}${token.slice(i + 1)}`
      // The last sign of 256 bits in base64url carries two that mean nothing.
      expect(owners.read(changed)?.isGood ?? false, changed).toBe(false)
    }
    for (const made of ['', secret, '..', `${token}.`, ` ${token}`, token.toUpperCase(), token.replace('.', '')])
      expect(owners.read(made)?.isGood ?? false, made).toBe(false)
  })

  it('who leaves ends their token for good: no copy of it opens or begins anything, whatever is said beside it, also at another server', async () => {
    const app = serverWith(secret)
    const [ann, ben] = [await newcomer(app), await newcomer(app)]
    await post(app, `/api/conversations/${ann.id}/turns`, as(ann.owner), { text: question })
    const { link } = (await (await post(app, `/api/conversations/${ann.id}/share`, as(ann.owner))).json()) as {
      link: string
    }
    expect((await app.request(link)).status).toBe(200)
    const gone = await app.request('/api/owner', { method: 'DELETE', headers: as(ann.owner) })
    expect([gone.status, gone.headers.get('clear-site-data')]).toEqual([204, '"cache", "storage"'])
    for (const it of [app, serverWith(secret)]) {
      const cookie = `plumbpost-owner=${ann.owner}`
      for (const { method, at } of routesOfTalks(it))
        expect((await it.request(at(ann.id), { method, headers: { cookie } })).status, `${method} ${at('…')}`).toBe(401)
      for (const headers of [as(ann.owner), { cookie }] as Record<string, string>[])
        expect([
          (await post(it, '/api/conversations', headers)).status,
          (await it.request('/', { headers })).status,
        ]).toEqual([401, 401])
      // With the secret beside it they are somebody new, and no cookie brings the old one back.
      const anew = await it.request('/api/conversations', { headers: { authorization, cookie } })
      expect([await anew.json(), anew.headers.get('set-cookie')]).toEqual([[], null])
      expect((await it.request(`/api/conversations/${ann.id}`, { headers: { authorization, cookie } })).status).toBe(
        401,
      )
      expect((await it.request(link)).status).toBe(404)
      expect((await it.request(`/api/conversations/${ben.id}`, { headers: as(ben.owner) })).status).toBe(200)
    }
    // A new secret with the old token beside it would have let them in.
    const changed = serverWith(`${secret}changed`)
    const both = { authorization: `${authorization}changed`, cookie: `plumbpost-owner=${ann.owner}` }
    expect((await changed.request(`/api/conversations/${ann.id}`, { headers: both })).status).toBe(401)
    // What was said is with whoever runs the server.
    expect((await store.read(ann.id))?.written).toBe(1)
  })

  it('what is kept is no token: neither it nor its chance stands in the database', async () => {
    const { owner } = await newcomer(serverWith(secret))
    const [random = ''] = owner.split('.')
    expect(await store.list(random)).toEqual([])
    expect(await store.list(createOwners(secret).read(owner)?.owner ?? '')).toHaveLength(1)
  })

  it('of a thousand tokens no two are alike', () => {
    const owners = createOwners(secret)
    expect(new Set(Array.from({ length: 1000 }, () => owners.mint().slice(0, 43))).size).toBe(1000)
  })
})

describe('on this machine alone', () => {
  it('nothing is asked, no cookie is set, and all talks are there, also those begun while a secret was asked', async () => {
    const { id } = await newcomer(serverWith(secret))
    const app = serverWith(undefined)
    const begun = await post(app, '/api/conversations', {})
    expect(Object.keys((await begun.json()) as object)).toEqual(['id'])
    expect(begun.headers.get('set-cookie')).toBeNull()
    expect(await (await app.request('/api/conversations')).json()).toHaveLength(2)
    expect((await app.request(`/api/conversations/${id}`)).status).toBe(200)
    // They are nobody's once a secret is asked.
    const other = await newcomer(serverWith(secret))
    expect(await (await serverWith(secret).request('/api/conversations', { headers: as(other.owner) })).json()).toEqual(
      [expect.objectContaining({ id: other.id })],
    )
  })
})

describe('a link to read', () => {
  it('shows what was said, answered and drawn to whoever has it, without the secret, and nothing to press', async () => {
    const app = serverWith(secret)
    const { id, owner } = await newcomer(app)
    await post(app, `/api/conversations/${id}/turns`, as(owner), { text: question })
    const made = await post(app, `/api/conversations/${id}/share`, as(owner))
    const { link } = (await made.json()) as { link: string }
    expect([made.status, link]).toEqual([201, expect.stringMatching(new RegExp(`^/shared/${id}\\.[\\w-]{43}$`))])
    const shown = await app.request(link)
    const page = await shown.text()
    expect([shown.status, shown.headers.get('x-robots-tag'), shown.headers.get('cache-control')]).toEqual([
      200,
      'noindex',
      'no-store',
    ])
    // 12 × 3 1/2 = 42; 70 5/8 − 42 = 28 5/8; shared by 13 gaps = 2 21/104, by the tape 2 3/16.
    expect(page).toContain('12 pickets')
    expect(page).toContain(question)
    expect(page).toContain('Know where the lot line is')
    expect(page).toContain('<img alt=')
    expect(page).not.toMatch(/<(script|form|button|input|textarea|select)|\son\w+=|javascript:/i)
    // Nor does it let anybody do more: it is no token.
    const token = link.split('.')[1] ?? ''
    for (const { method, at } of routesOfTalks(app))
      expect(
        (await app.request(at(id), { method, headers: { cookie: `plumbpost-owner=${token}` } })).status,
        `${method} ${at(id)}`,
      ).toBe(401)
    for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'])
      expect((await app.request(link, { method, headers: as(owner) })).status, method).toBe(405)
  })

  it('is withdrawn, or replaced by a new one, at once; a wrong one looks like one that was withdrawn', async () => {
    const app = serverWith(undefined)
    const { id } = await store.create()
    const link = async () =>
      ((await (await post(app, `/api/conversations/${id}/share`, {})).json()) as { link: string }).link
    const status = async (at: string) => (await app.request(at)).status
    const first = await link()
    expect(await status(first)).toBe(200)
    const second = await link()
    expect([await status(first), await status(second)]).toEqual([404, 200])
    expect((await app.request(`/api/conversations/${id}/share`, { method: 'DELETE' })).status).toBe(204)
    const gone = await app.request(second)
    for (const at of [
      `/shared/${id}.${'A'.repeat(43)}`,
      `/shared/none.${'A'.repeat(43)}`,
      `/shared/${id}`,
      '/shared/.x',
    ])
      expect([(await app.request(at)).status, await (await app.request(at)).text()], at).toEqual([
        gone.status,
        await gone.clone().text(),
      ])
    const third = await link()
    await app.request(`/api/conversations/${id}`, { method: 'DELETE' })
    expect(await status(third)).toBe(404)
  })

  // What Firefox and Chromium ask for when a link is followed, from memory; curl and fetch take anything.
  it('that is withdrawn or unknown is a page to a person and JSON to a program', async () => {
    const { id } = await store.create()
    const at = `/shared/${id}.${'A'.repeat(43)}`
    const asks = (app: App, accept?: string) => app.request(at, { headers: accept ? { accept } : {} })
    for (const [app, book] of [
      [serverWith(undefined), true],
      [serverWith(secret), false],
    ] as const) {
      for (const accept of [
        'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8',
        'text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,image/webp,image/apng,*/*;q=0.8',
      ]) {
        const shown = await asks(app, accept)
        const page = await shown.text()
        expect([shown.status, shown.headers.get('content-type'), shown.headers.get('vary')]).toEqual([
          404,
          'text/html; charset=UTF-8',
          'Accept',
        ])
        expect(page).toContain('Nothing is shared under this link.')
        expect(page).toContain('It may have been withdrawn; ask for a new one.')
        // Whoever was lent one page has no key to the book.
        expect(page.includes('href="/"')).toBe(book)
      }
      for (const accept of [undefined, '*/*', 'application/json', 'application/json, text/html;q=0.9']) {
        const told = await asks(app, accept)
        expect([told.status, await told.json()]).toEqual([
          404,
          { error: { code: 'not-shared', message: expect.stringContaining('Nothing is shared under this link.') } },
        ])
      }
    }
    const hostile = await serverWith(undefined).request('/<script>alert(1)</script>', {
      headers: { accept: 'text/html' },
    })
    expect([hostile.status, /<script/i.test(await hostile.text())]).toEqual([404, false])
  })

  it('what somebody wrote stays text in it', async () => {
    const app = serverWith(undefined)
    const { id } = await store.create()
    await post(
      app,
      `/api/conversations/${id}/turns`,
      {},
      { text: '<script>alert(1)</script><img src=x onerror=alert(2)>' },
    )
    const { link } = (await (await post(app, `/api/conversations/${id}/share`, {})).json()) as { link: string }
    const page = await (await app.request(link)).text()
    expect(page).toContain('&lt;script&gt;alert(1)')
    expect(page).not.toMatch(/<script|<img src=x/i)
  })
})

describe('wrong secrets', () => {
  const from = (app: App, address: string, said: string, forwarded?: string) =>
    app.request(
      '/api/calculations',
      { headers: { ...as(said), ...(forwarded ? { 'x-forwarded-for': forwarded } : {}) } },
      { incoming: { socket: { remoteAddress: address } } },
    )

  it('are slowed after ten from one address, whatever is said next; others, and who holds a token, come in', async () => {
    const app = serverWith(secret)
    const { owner } = await newcomer(app)
    for (let i = 0; i < 10; i++) expect((await from(app, '10.0.0.1', `wrong-${i}`.padEnd(24, '0'))).status).toBe(401)
    const slowed = await from(app, '10.0.0.1', secret)
    expect([slowed.status, Number(slowed.headers.get('retry-after'))]).toEqual([429, expect.closeTo(60, -1)])
    expect(((await slowed.json()) as { error: { message: string } }).error.message).toMatch(/Wait \d+ s/)
    expect((await from(app, '10.0.0.2', secret)).status).toBe(200)
    expect((await from(app, '10.0.0.1', owner)).status).toBe(200)
  })

  it('are counted for the half of an IPv6 address that its holder cannot choose, and for whom a proxy of ours names', async () => {
    const app = serverWith(secret, { proxies: ['127.0.0.1', '10.0.0.9'] })
    for (let i = 0; i < 10; i++) await from(app, `2001:db8:1:2::${i}`, 'wrong')
    expect((await from(app, '2001:db8:1:2:3:4:5:6', secret)).status).toBe(429)
    expect((await from(app, '2001:db8:1:3::1', secret)).status).toBe(200)
    // What stands before the proxy's own word is made up anew each time, and does not help.
    for (let i = 0; i < 10; i++) await from(app, '127.0.0.1', 'wrong', `10.9.9.${i}, 192.0.2.7, 10.0.0.9`)
    expect((await from(app, '127.0.0.1', secret, '10.8.8.8, 192.0.2.7')).status).toBe(429)
    expect((await from(app, '127.0.0.1', secret, '192.0.2.8')).status).toBe(200)
    // Who is no proxy of ours names nobody but themselves.
    for (let i = 0; i < 10; i++) await from(app, '192.0.2.66', 'wrong', `192.0.2.${i}`)
    expect((await from(app, '192.0.2.66', secret, '192.0.2.200')).status).toBe(429)
  })

  it('nothing said is no wrong secret: a browser asks first', async () => {
    const app = serverWith(secret)
    for (let i = 0; i < 20; i++) expect((await app.request('/')).status).toBe(401)
    expect((await app.request('/api/calculations', { headers: { authorization } })).status).toBe(200)
  })
})

describe('the names of a server', () => {
  it('are those that were told and this machine’s; a rebound one is refused even with the secret', async () => {
    const app = serverWith(secret, { names: ['Fence.test', 'club.test'] })
    const at = async (host: string) =>
      (await app.request('/api/calculations', { headers: { authorization, host } })).status
    for (const host of ['fence.test', 'FENCE.TEST:443', 'club.test', 'localhost:4680']) expect(await at(host)).toBe(200)
    for (const host of ['elsewhere.test', 'fence.test.elsewhere.test', 'xfence.test', '192.0.2.1', ''])
      expect(await at(host), host).toBe(403)
  })
})
