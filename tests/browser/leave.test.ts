// Leaving a server that several share, in a real browser: what was shown or typed is in none of its windows any more (ASVS 5.0, 14.3.1).
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect } from 'vitest'
import { browserTest } from './browser-test.ts'
import { ask, bags, entry, serveThePage, type Served, tooSmall, whole, withAxe } from './served.ts'

const secret = '3e9b7c015fd2a8647c90e1b52f38d6a4'
const asSomebody = { httpCredentials: { username: 'any', password: secret } }

let served: Served
beforeAll(async () => {
  served = await serveThePage(secret)
}, 60_000)
afterAll(() => served.close())

/** All that stands in the window, seen or not, and in its fields. */
const held = (page: Page): Promise<string> =>
  page.evaluate(() =>
    [
      document.documentElement.outerHTML,
      location.href,
      ...[...document.querySelectorAll<HTMLInputElement>('input, textarea')].map((it) => it.value),
    ].join('\n'),
  )
const leaves = async (page: Page): Promise<void> => {
  page.on('dialog', (it) => void it.accept())
  await page.getByRole('button', { name: 'Leave for good' }).click()
}

describe('who leaves', () => {
  browserTest('is known no more, and nothing of theirs stays in any window', async ({ open }) => {
    const { page } = await open(asSomebody)
    await page.goto(served.address)
    await ask(page, bags)
    expect([await withAxe(page), await tooSmall(page)]).toEqual([[], []])
    const id = new URL(page.url()).hash.slice(1)
    const other = await page.context().newPage()
    await other.goto(page.url())
    await whole(other, 1)
    await page.getByText('Earlier pages').click()
    await page.locator('#pages .turn-to').waitFor()
    await page.getByLabel('Paper').selectOption('night')
    await page.getByLabel('Ask about your fence').fill('the gate is by the old well')
    expect(await page.evaluate(() => localStorage.length)).toBe(1)
    expect(await held(page)).toMatch(/eleven corner.*old well/s)

    await leaves(page)
    await page.locator('#progress', { hasText: 'You have left.' }).waitFor()
    await other.locator('#progress', { hasText: 'You left, in another window.' }).waitFor()
    for (const it of [page, other]) {
      const all = await held(it)
      for (const theirs of ['eleven corner', 'old well', id]) expect(all.includes(theirs), theirs).toBe(false)
      expect(await it.evaluate(() => localStorage.length + sessionStorage.length)).toBe(0)
    }
    expect(await (await page.request.get(`${served.address}api/conversations`)).json()).toEqual([])
    expect((await page.request.get(`${served.address}api/conversations/${id}`)).status()).toBe(401)
    expect((await served.store.read(id))?.written).toBe(1)
    // The book can be begun anew, as somebody else.
    await ask(page, bags)
    expect(new URL(page.url()).hash.slice(1)).not.toBe(id)
  })

  browserTest('has a clean screen also when the server is away, and is told so', async ({ open }) => {
    const { page } = await open(asSomebody)
    await page.goto(served.address)
    await ask(page, bags)
    await page.context().setOffline(true)
    await leaves(page)
    await page.locator('#fault', { hasText: 'still knows this browser' }).waitFor()
    expect((await held(page)).includes('eleven corner')).toBe(false)
    await page.context().setOffline(false)
    await page.getByRole('button', { name: 'Try again' }).click()
    await page.locator('#progress', { hasText: 'You have left.' }).waitFor()
    expect(await page.locator('#fault').isVisible()).toBe(false)
  })
})

describe('whoever the server no longer knows', () => {
  browserTest('is shown nothing any more; what they were typing stays', async ({ open }) => {
    const { page } = await open(asSomebody)
    await page.goto(served.address)
    await ask(page, bags)
    await page.context().clearCookies()
    await page.getByLabel('Ask about your fence').fill('and with 12 in holes?')
    await page.getByLabel('Ask about your fence').press('Enter')
    await page.locator('#fault', { hasText: 'shown to its owner only' }).waitFor()
    expect(await entry(page, 1).count()).toBe(0)
    expect((await held(page)).includes('eleven corner')).toBe(false)
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe('and with 12 in holes?')
  })
})
