// The page in a real browser, before the real server: asked, answered, changed, cut off, refused, and looked at by axe.
import { mkdtempSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { serve, type ServerType } from '@hono/node-server'
import axe from 'axe-core'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, describe, expect } from 'vitest'
import { bundle } from '../../.ci/build.mjs'
import { type Assistant, createAssistant } from '../../src/assistant.ts'
import { createApp } from '../../src/http/app.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { openStore } from '../../src/store/open.ts'
import type { Store } from '../../src/store/store.ts'
import { createPage } from '../../src/web/app.tsx'
import { renderReply } from '../../src/web/markdown.ts'
import { browserTest } from './chromium.ts'

const bags =
  'How many 60 lb bags, 0.45 ft3 each, for eleven corner and gate posts, 10 in holes 30 in deep, 6 in of gravel in the bottom?'

let server: ServerType
let store: Store
let address = ''
let assistant: Assistant
/** How many of the next streams are cut after their first piece. */
let cuts = 0
const built = mkdtempSync(join(tmpdir(), 'plumbpost-page-'))

beforeAll(async () => {
  await bundle(fileURLToPath(new URL('../..', import.meta.url)), built)
  store = await openStore({ memory: true })
  const real = createAssistant(offlineReader)
  assistant = real
  const app = createApp({
    assistant: { turn: (...asked) => assistant.turn(...asked) },
    store,
    version: 'test',
    front: 'offline',
    renderReply,
    host: '127.0.0.1',
    page: createPage(join(built, 'web')),
  })
  server = serve({
    port: 0,
    hostname: '127.0.0.1',
    fetch: async (request) => {
      const response = await app.fetch(request)
      if (cuts === 0 || !response.headers.get('content-type')?.includes('event-stream')) return response
      cuts--
      const reader = (response.body as ReadableStream<Uint8Array>).getReader()
      const { value } = await reader.read()
      return new Response(new Blob([value as BlobPart]), { headers: response.headers })
    },
  })
  await new Promise((resolve) => server.once('listening', resolve))
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
}, 60_000)
afterAll(async () => {
  server.close()
  await store.close()
  rmSync(built, { recursive: true, force: true })
})
beforeEach(() => {
  cuts = 0
  assistant = createAssistant(offlineReader)
})

async function ask(page: Page, text: string): Promise<void> {
  const entries = await page.locator('.entry').count()
  await page.getByLabel('Ask about your fence').fill(text)
  await page.keyboard.press('Enter')
  await page.locator('.entry').nth(entries).waitFor({ timeout: 10_000 })
}
const fitsAcross = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)

describe('the page', () => {
  browserTest('a question gets its answer, sketch, working and cautions, and the job sheet fills', async ({ page }) => {
    await page.goto(address)
    await ask(page, bags)
    const entry = page.locator('.entry').first()
    expect(await entry.locator('.answer').innerText()).toContain('23 bags')
    expect(await entry.locator('.sketch img').getAttribute('alt')).toContain('a hole 30 in deep')
    expect(await entry.locator('.sketch img').evaluate((it) => (it as HTMLImageElement).naturalWidth)).toBeGreaterThan(
      0,
    )
    expect(await entry.locator('.care').innerText()).toContain('have the buried lines located')
    await entry.getByText('Working', { exact: true }).click()
    expect(await entry.innerText()).toContain('bags = ceil(concrete / bagYield)')
    await page.locator('#sheet .line').first().waitFor()
    expect(await page.locator('#sheet').innerText()).toContain('hole width')
  })

  browserTest('a change strikes the old figure through and writes the new one beside it', async ({ page }) => {
    await page.goto(address)
    await ask(page, bags)
    await ask(page, 'and if the holes are 12 inches?')
    const changed = page.locator('.entry').nth(1)
    expect(await changed.locator('del').allInnerTexts()).toContain('23 bags')
    expect(await changed.locator('.answer').innerText()).toContain('35 bags')
  })

  browserTest('what it needs to know is a line to fill in', async ({ page }) => {
    await page.goto(address)
    await ask(page, 'How many pickets do I need?')
    const form = page.locator('.entry').first().locator('form.questions')
    await form.getByLabel('How wide is the opening, from post face to post face?').fill('93 in')
    await form.getByLabel('How wide is a picket, measured across its face?').fill('3 1/2 in')
    await form.getByLabel('How wide may a gap between pickets be at most?').fill('2 1/2 in')
    await form.getByRole('button').click()
    await page.locator('.entry').nth(1).waitFor()
    expect(await page.locator('.entry').nth(1).locator('.answer').innerText()).toContain('16 pickets')
  })

  browserTest('a line that is cut is taken up again, and the turn is made once', async ({ page }) => {
    await page.goto(address)
    cuts = 1
    await ask(page, bags)
    expect(await page.locator('.entry .answer').innerText()).toContain('23 bags')
    const id = (await page.evaluate(() => location.hash)).slice(1)
    expect((await store.read(id))?.turns).toHaveLength(1)
  })

  browserTest('a fault is said in place, what was typed is kept, and asking again goes on', async ({ page }) => {
    await page.goto(address)
    assistant = {
      turn: () => {
        throw new Error('broken on purpose')
      },
    }
    await page.getByLabel('Ask about your fence').fill(bags)
    await page.getByRole('button', { name: 'Ask', exact: true }).click()
    await page.locator('#fault').waitFor()
    expect(await page.locator('#fault').innerText()).toContain('Something went wrong')
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe(bags)
    assistant = createAssistant(offlineReader)
    await page.getByRole('button', { name: 'Ask', exact: true }).click()
    await page.locator('.entry').first().waitFor()
  })

  browserTest('an earlier page is opened again, and torn out for good', async ({ page }) => {
    await page.goto(address)
    await ask(page, 'How deep do I set posts for a 4 ft fence with 6 in of gravel?')
    await page.getByRole('button', { name: 'Turn to a fresh page' }).click()
    expect(await page.locator('.entry').count()).toBe(0)
    await page.getByText('Earlier pages').click()
    await page.locator('.turn-to', { hasText: 'How deep do I set posts' }).click()
    await page.locator('.entry').first().waitFor()
    page.on('dialog', (it) => void it.accept())
    await page.getByText('Earlier pages').click()
    await page.getByLabel('Tear out: How deep do I set posts for a 4 ft fence with 6 in of gravel?').click()
    await page.locator('#empty').waitFor({ state: 'visible' })
  })

  browserTest('words that look like markup do nothing', async ({ page }) => {
    await page.goto(address)
    await ask(
      page,
      `<img src=x onerror="alert('a')"> How many pickets in a 93 in opening with **3 1/2 in** pickets, gaps at most 2 1/2 in? <script>document.title='b'</script>`,
    )
    expect(await page.locator('.entry .answer').innerText()).toContain('16 pickets')
    expect(await page.locator('.entry img:not(.sketch img)').count()).toBe(0)
    expect(await page.title()).toContain('Plumbpost')
  })

  browserTest('works with the keyboard alone', async ({ page }) => {
    await page.goto(address)
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Go to the question')
    await page.getByLabel('Ask about your fence').focus()
    await page.keyboard.type('How deep for a 4 ft fence?')
    await page.keyboard.press('Enter')
    await page.locator('.entry').first().waitFor()
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('asked')
  })

  for (const scheme of ['light', 'dark'] as const)
    for (const width of [320, 1280])
      browserTest(
        `has nothing for axe to find at ${width} px, ${scheme}, and needs no scrolling sideways`,
        async ({ browser }) => {
          const context = await browser.newContext({ viewport: { width, height: 800 }, colorScheme: scheme })
          const page = await context.newPage()
          await page.goto(address)
          expect(await fitsAcross(page)).toBe(true)
          await ask(page, bags)
          await ask(page, 'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps at most 2 1/2 in?')
          await ask(
            page,
            'How many pickets do I need for another bay of 93 in with 5 1/2 in boards and gaps at most 1/4 in?',
          )
          for (const fold of await page.locator('.fold > summary').all()) await fold.click()
          expect(await fitsAcross(page)).toBe(true)
          const found = await withAxe(page)
          expect(found).toEqual([])
          await context.close()
        },
      )
})

interface Finding {
  readonly id: string
  readonly nodes: readonly { readonly target: readonly string[] }[]
}

async function withAxe(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page)
  await session.send('Runtime.evaluate', { expression: axe.source })
  const { result } = await session.send('Runtime.evaluate', {
    expression: 'axe.run().then((it) => JSON.stringify(it.violations))',
    awaitPromise: true,
    returnByValue: true,
  })
  return (JSON.parse(String(result.value)) as Finding[]).map(
    (it) => `${it.id}: ${it.nodes.map((n) => n.target).join(', ')}`,
  )
}
