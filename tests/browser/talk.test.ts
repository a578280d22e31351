// The page in a real browser, before the real server: asked, answered, changed, halted, struck and written again, cut off, refused.
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll, beforeEach, describe, expect } from 'vitest'
import { createAssistant } from '../../src/assistant.ts'
import { jobAfter } from '../../src/hearing.ts'
import { haltedTurn } from '../../src/halted.ts'
import { openEndpoint } from '../../src/readers/model/endpoint.ts'
import { createModelReader } from '../../src/readers/model/reading.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { browserTest } from './browser-test.ts'
import { ask, bags, entry, holdAnswers, serveThePage, type Served, whole } from './served.ts'

let served: Served
beforeAll(async () => {
  served = await serveThePage()
}, 60_000)
afterAll(() => served.close())
beforeEach(() => {
  served.cuts = 0
  served.assistant = createAssistant(offlineReader)
})

describe('a talk on the page', () => {
  browserTest('what it needs to know is a line to fill in, and is asked for the right place', async ({ page }) => {
    await page.goto(served.address)
    await ask(page, 'How many 60 lb bags for the corner posts?')
    const form = entry(page, 1).locator('form.questions')
    await form.getByLabel('How wide are the holes').fill('10 in')
    await form.getByLabel('How deep are the holes').fill('30 in')
    await form.getByLabel('How many posts are there? for the corner posts').fill('four')
    await form.getByRole('button').click()
    await whole(page, 2)
    expect(await entry(page, 2).locator('.asked').innerText()).toContain('corner posts: four')
    // π/4 × 10² − 3 1/2² = 66.29 in²; × 30 = 1988.7 in³ = 1.151 ft³; × 4 = 4.604; / 0.45 = 10.2, so 11.
    expect(await entry(page, 2).locator('.lead').innerText()).toContain('11 bags')
    expect(await entry(page, 2).locator('form.questions').count()).toBe(0)
  })

  browserTest(
    'while it is worked the figures are told once, and the answer stands where it was asked',
    async ({ page }) => {
      const gate = holdAnswers(served)
      await page.goto(served.address)
      await page.evaluate(() => {
        const told: string[] = []
        Object.assign(window, { told })
        const progress = document.getElementById('progress') as HTMLElement
        new MutationObserver(() => told.push(progress.textContent ?? '')).observe(progress, { childList: true })
      })
      await page.getByLabel('Ask about your fence').fill(bags)
      await page.keyboard.press('Enter')
      await page.locator('#progress', { hasText: 'Worked: 23 bags. Writing it out …' }).waitFor()
      // The question and how it was read are written in already, and the focus is on them.
      expect(await entry(page, 1).locator('.read').innerText()).toContain('hole width: 10 in')
      expect(await page.evaluate(() => document.activeElement?.className)).toBe('asked')
      expect(await page.locator('#send').innerText()).toBe('Halt')
      gate.open()
      await whole(page, 1)
      const told = await page.evaluate(() => (window as unknown as { told: string[] }).told.filter((it) => it !== ''))
      expect(told).toEqual(['Reading …', 'Worked: 23 bags. Writing it out …', 'Answered: 23 bags.'])
      expect(await page.locator('[aria-live], [role="status"], [role="alert"]').count()).toBe(2)

      // An answer that comes late is written on the page it was asked on.
      const second = holdAnswers(served)
      await page.getByLabel('Ask about your fence').fill('and if the holes are 12 inches?')
      await page.keyboard.press('Enter')
      await page.locator('#progress', { hasText: 'Worked' }).waitFor()
      const id = new URL(page.url()).hash.slice(1)
      await page.getByRole('button', { name: 'Fresh page' }).click()
      second.open()
      await page.waitForFunction(() => document.getElementById('progress')?.textContent === '')
      expect(await page.locator('#entries > .entry').count()).toBe(0)
      expect((await served.store.read(id))?.turns).toHaveLength(2)
    },
  )

  browserTest('a turn is halted by the button that asked it, and what was said is kept', async ({ page }) => {
    served.assistant = {
      turn: ({ before }, _watch, signal) =>
        new Promise((resolve) => {
          signal?.addEventListener('abort', () => resolve(haltedTurn(jobAfter(before), before.length, 'model')))
        }),
    }
    await page.goto(served.address)
    await page.getByLabel('Ask about your fence').fill(bags)
    await page.keyboard.press('Enter')
    await entry(page, 1).waitFor()
    await page.getByRole('button', { name: 'Halt' }).click()
    await whole(page, 1)
    expect(await entry(page, 1).locator('.answer').innerText()).toContain('Halted before it was read')
    expect(await entry(page, 1).locator('.care').count()).toBe(1)
    expect(await page.locator('#send').innerText()).toBe('Ask')
  })

  browserTest(
    'a question is struck and written again; the old lines can be read, and taken up again',
    async ({ page }) => {
      await page.goto(served.address)
      await ask(page, bags)
      await ask(page, 'and if the holes are 12 inches?')
      // An earlier figure that comes out otherwise is struck where it stands, and written again beside it.
      const lead = entry(page, 1).locator('.lead .value')
      expect(await lead.locator('del').innerText()).toBe('23 bags')
      expect(await lead.locator('ins').innerText()).toMatch(/^35 bags\s+entry 2$/)
      await entry(page, 1).getByRole('button', { name: 'Strike and write again' }).click()
      const field = page.getByLabel('Strike this, and write instead')
      expect(await field.inputValue()).toBe(bags)
      await field.fill(bags.replace('eleven', 'four'))
      await page.getByRole('button', { name: 'Write it again' }).click()
      await entry(page, 1).locator('.struck').waitFor()
      expect(await page.locator('#entries > .entry').count()).toBe(1)
      // 0.9207 ft³ a hole (see the concrete tests) × 4 = 3.68; / 0.45 = 8.2, so 9.
      expect(await entry(page, 1).locator('.lead').first().innerText()).toContain('9 bags')
      const struck = entry(page, 1).locator('.struck')
      expect(await struck.locator('summary del').innerText()).toBe(bags)
      await struck.locator('summary').click()
      await struck.locator('.entry').nth(1).waitFor()
      expect(await struck.innerText()).toContain('35 bags')
      await struck.getByRole('button', { name: 'Take this up again' }).click()
      await entry(page, 2).waitFor()
      expect(await entry(page, 2).locator('.lead').innerText()).toContain('bags')
      expect(await entry(page, 1).locator('.struck summary del').allInnerTexts()).toContain(
        bags.replace('eleven', 'four'),
      )
    },
  )

  browserTest(
    'a model that cannot be had is said so in plain words, and the figures are there all the same',
    async ({ page }) => {
      const refusing = createServer((_request, response) => {
        response.writeHead(401, { 'content-type': 'application/json' }).end('{"error":{"message":"bad key"}}')
      })
      await new Promise<void>((resolve) => refusing.listen(0, '127.0.0.1', resolve))
      const baseUrl = `http://127.0.0.1:${(refusing.address() as AddressInfo).port}/v1`
      served.assistant = createAssistant(
        createModelReader(openEndpoint({ model: 'any', key: 'wrong-key-for-a-test', baseUrl })),
      )
      await page.goto(served.address)
      await ask(page, bags)
      refusing.close()
      const text = await entry(page, 1).locator('.answer').innerText()
      expect(text).toContain('did not accept the key')
      expect(text).toContain('I read this without a model')
      expect(text).toContain('23 bags')
      expect(text).not.toContain('wrong-key')
    },
  )

  browserTest('a line that is cut is taken up again, and the turn is made once', async ({ page }) => {
    await page.goto(served.address)
    const from: (string | undefined)[] = []
    page.on('request', (it) => {
      if (it.url().endsWith('/turns')) from.push(it.headers()['last-event-id'])
    })
    served.cuts = 1
    await ask(page, bags)
    expect(from).toEqual([undefined, expect.stringMatching(/^\d+$/)])
    expect(await entry(page, 1).locator('.answer').innerText()).toContain('23 bags')
    const id = (await page.evaluate(() => location.hash)).slice(1)
    expect((await served.store.read(id))?.turns).toHaveLength(1)
  })

  browserTest('a page that lies open in two windows stays one talk, in order', async ({ page }) => {
    await page.goto(served.address)
    await ask(page, bags)
    const other = await page.context().newPage()
    await other.goto(page.url())
    await whole(other, 1)
    await ask(page, 'and if the holes are 12 inches?')
    // The other window has not seen the second entry: what is asked in it is the third, and both are there.
    await other.getByLabel('Ask about your fence').fill('and if the holes are 14 inches?')
    await other.keyboard.press('Enter')
    await whole(other, 3)
    expect(await entry(other, 2).locator('.asked').innerText()).toBe('and if the holes are 12 inches?')
    expect(await entry(other, 3).locator('.asked').innerText()).toBe('and if the holes are 14 inches?')
    expect(await other.locator('#progress').innerText()).toContain('What another window wrote is here too.')
    // Coming back to the first one brings it up to date.
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')))
    await whole(page, 3)
    expect(await page.locator('#entries > .entry').count()).toBe(3)
    await other.close()
  })

  browserTest('one figure is copied, and a whole entry with its cautions', async ({ page }) => {
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: served.address })
    await page.goto(served.address)
    await ask(page, bags)
    const copied = (): Promise<string> => page.evaluate(() => navigator.clipboard.readText())
    await entry(page, 1).locator('.lead .fig').first().click()
    await page.getByRole('button', { name: 'Copy the figure' }).click()
    await page.getByRole('button', { name: 'Copied' }).waitFor()
    expect(await copied()).toBe('23 bags')
    await page.keyboard.press('Escape')
    await entry(page, 1).getByRole('button', { name: 'Copy this entry' }).click()
    await entry(page, 1).getByRole('button', { name: 'Copied' }).waitFor()
    const text = await copied()
    expect(text.startsWith(bags)).toBe(true)
    expect(text).toContain('**23 bags**')
    expect(text).toContain('ask where the lines are buried')
  })

  browserTest('a fault is said in place, what was typed is kept, and trying again goes on', async ({ page }) => {
    await page.goto(served.address)
    served.assistant = {
      turn: () => {
        throw new Error('broken on purpose')
      },
    }
    await page.getByLabel('Ask about your fence').fill(bags)
    await page.getByRole('button', { name: 'Ask', exact: true }).click()
    await page.locator('#fault').waitFor()
    expect(await page.locator('#fault').innerText()).toContain('Something went wrong')
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe(bags)
    served.assistant = createAssistant(offlineReader)
    await page.getByRole('button', { name: 'Try again' }).click()
    await whole(page, 1)
    expect(await page.locator('#fault').isVisible()).toBe(false)
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe('')
  })

  browserTest(
    'a server that cannot be reached is said so, and trying again asks the same question',
    async ({ page }) => {
      await page.goto(served.address)
      const keys: (string | undefined)[] = []
      page.on('request', (it) => {
        if (it.url().endsWith('/turns')) keys.push(it.headers()['idempotency-key'])
      })
      await page.route('**/turns', (route) => route.abort())
      await page.getByLabel('Ask about your fence').fill(bags)
      await page.keyboard.press('Enter')
      await page.locator('#fault', { hasText: 'The server cannot be reached' }).waitFor()
      expect(await page.getByLabel('Ask about your fence').inputValue()).toBe(bags)
      await page.unroute('**/turns')
      await page.getByRole('button', { name: 'Try again' }).click()
      await whole(page, 1)
      expect(keys.length).toBeGreaterThan(1)
      expect(new Set(keys).size).toBe(1)
      expect(keys[0]).toMatch(/^[0-9a-f]{32}$/)
    },
  )

  browserTest('what the server refuses is said in its words, without a second try', async ({ page }) => {
    await page.goto(served.address)
    const message = 'This text is longer than I read.'
    await page.route('**/turns', (route) =>
      route.fulfill({ status: 422, json: { error: { code: 'too-long', message } } }),
    )
    await page.getByLabel('Ask about your fence').fill(bags)
    await page.keyboard.press('Enter')
    await page.locator('#fault', { hasText: message }).waitFor()
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe(bags)
    expect(await page.getByRole('button', { name: 'Try again' }).isVisible()).toBe(false)
  })
})
