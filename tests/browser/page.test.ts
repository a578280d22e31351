// The page in a real browser, before the real server: asked, answered, changed, cut off, refused, printed, and looked at by axe.
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
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
/** Lets every answer be worked, and holds it back until the gate is opened. */
function holdAnswers(): { open: () => void } {
  const real = createAssistant(offlineReader)
  const gate = { open: () => {} }
  const opened = new Promise<void>((resolve) => {
    gate.open = resolve
  })
  assistant = {
    turn: async (...asked) => {
      const answered = await real.turn(...asked)
      await opened
      return answered
    },
  }
  return gate
}
const hostile = [
  '<script>document.title="taken"</script>',
  '<img src=x onerror="document.title=\'taken\'"> ![seen](http://tracker.example/x.png)',
  '[press](javascript:document.title="taken") <iframe srcdoc="<script>parent.document.title=1</script>"></iframe>',
  '<style>.care { display: none }</style>',
  '<form action="http://other.example/"><input></form>',
].join('\n\n')
const fitsAcross = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)

describe('the page', () => {
  browserTest('a question gets its answer, sketch, working and cautions, and the job sheet fills', async ({ page }) => {
    await page.goto(address)
    await ask(page, bags)
    const entry = page.locator('.entry').first()
    expect(await entry.locator('.answer').innerText()).toContain('23 bags')
    expect(await entry.locator('.row', { hasText: 'Concrete in all' }).locator('.value').innerText()).toBe('10.13 ft³')
    expect(await entry.locator('.sketch img').getAttribute('alt')).toContain('a hole 30 in deep')
    expect(await entry.locator('.sketch img').evaluate((it) => (it as HTMLImageElement).naturalWidth)).toBeGreaterThan(
      0,
    )
    expect(await entry.locator('.care').innerText()).toContain('ask where the lines are buried')
    const sum = entry.locator('.step', { hasText: 'Bought together, so rounded up once' }).locator('.sum')
    expect((await sum.innerText()).replace(/\s+/g, ' ')).toBe(
      'bags = ceil(concrete / bagYield) = round up (10.13 ft³ / 0.45 ft³) = 23 bags',
    )
    await page.locator('#sheet .line').first().waitFor()
    expect(await page.locator('#sheet').innerText()).toContain('hole width')
  })

  browserTest('a change strikes the old figure through and writes the new one beside it', async ({ page }) => {
    await page.goto(address)
    await ask(page, bags)
    await ask(page, 'and if the holes are 12 inches?')
    const changed = page.locator('.entry').nth(1)
    const bought = changed.locator('.row', { hasText: 'Bags, bought together' })
    expect(await bought.locator('del').innerText()).toBe('23 bags')
    expect(await bought.locator('ins').innerText()).toBe('35 bags')
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

  browserTest('a question about the corner posts is answered for the corner posts', async ({ page }) => {
    await page.goto(address)
    await ask(page, 'How many 60 lb bags for the corner posts?')
    const form = page.locator('.entry').first().locator('form.questions')
    await form.getByLabel('How wide are the holes').fill('10 in')
    await form.getByLabel('How deep are the holes').fill('30 in')
    await form.getByLabel('How many posts are there? for the corner posts').fill('four')
    await form.getByRole('button').click()
    await page.locator('.entry').nth(1).waitFor()
    const second = page.locator('.entry').nth(1)
    expect(await second.locator('.asked').innerText()).toContain('corner posts: four')
    // π/4 × 10² − 3 1/2² = 66.29 in²; × 30 = 1988.7 in³ = 1.151 ft³; × 4 = 4.604; / 0.45 = 10.2, so 11.
    expect(await second.locator('.answer').innerText()).toContain('11 bags')
    expect(await second.locator('form.questions').count()).toBe(0)
  })

  browserTest('while the sentences are written, the figures are told', async ({ page }) => {
    const gate = holdAnswers()
    await page.goto(address)
    await page.getByLabel('Ask about your fence').fill(bags)
    await page.keyboard.press('Enter')
    await page.locator('#progress', { hasText: 'Worked: 23 bags. Writing it out …' }).waitFor()
    expect(await page.getByRole('button', { name: 'Ask', exact: true }).getAttribute('aria-disabled')).toBe('true')
    gate.open()
    await page.locator('.entry').first().waitFor()
    await page.waitForFunction(() => document.getElementById('progress')?.textContent === '')
  })

  browserTest('an answer that comes late is written on the page it was asked on', async ({ page }) => {
    const gate = holdAnswers()
    await page.goto(address)
    await page.getByLabel('Ask about your fence').fill(bags)
    await page.keyboard.press('Enter')
    await page.locator('#progress', { hasText: 'Worked' }).waitFor()
    const id = new URL(page.url()).hash.slice(1)
    await page.getByRole('button', { name: 'Turn to a fresh page' }).click()
    gate.open()
    await page.waitForFunction(() => document.getElementById('progress')?.textContent === '')
    expect(await page.locator('.entry').count()).toBe(0)
    expect((await store.read(id))?.turns).toHaveLength(1)
  })

  browserTest('a line that is cut is taken up again, and the turn is made once', async ({ page }) => {
    await page.goto(address)
    const from: (string | undefined)[] = []
    page.on('request', (it) => {
      if (it.url().endsWith('/turns')) from.push(it.headers()['last-event-id'])
    })
    cuts = 1
    await ask(page, bags)
    expect(from).toEqual([undefined, expect.stringMatching(/^\d+$/)])
    expect(await page.locator('.entry .answer').innerText()).toContain('23 bags')
    const id = (await page.evaluate(() => location.hash)).slice(1)
    expect((await store.read(id))?.turns).toHaveLength(1)
  })

  browserTest('a fault is said in place, what was typed is kept, and trying again goes on', async ({ page }) => {
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
    await page.getByRole('button', { name: 'Try again' }).click()
    await page.locator('.entry').first().waitFor()
    expect(await page.locator('#fault').isVisible()).toBe(false)
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe('')
  })

  browserTest(
    'a server that cannot be reached is said so, and trying again asks the same question',
    async ({ page }) => {
      await page.goto(address)
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
      await page.locator('.entry').first().waitFor()
      expect(keys.length).toBeGreaterThan(1)
      expect(new Set(keys).size).toBe(1)
      expect(keys[0]).toMatch(/^[0-9a-f]{32}$/)
    },
  )

  browserTest('what the server refuses is said in its words, without a second try', async ({ page }) => {
    await page.goto(address)
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

  browserTest('a reply that holds markup is shown as words', async ({ page }) => {
    const real = createAssistant(offlineReader)
    assistant = {
      turn: async (...asked) => {
        const { answer, job } = await real.turn(...asked)
        return { answer: { ...answer, reply: `${hostile}\n\n${answer.reply}` }, job }
      },
    }
    await page.goto(address)
    await ask(page, bags)
    const answer = page.locator('.entry .answer')
    expect(await answer.innerText()).toContain('<script>document.title="taken"</script>')
    expect(await answer.locator('script, iframe, img, a, style, form').count()).toBe(0)
    expect(await page.title()).toContain('Plumbpost')
    expect(await page.locator('.care').innerText()).toContain('ask where the lines are buried')
  })

  browserTest('an example fills in the question, and goes out only when it is asked', async ({ page }) => {
    await page.goto(address)
    await page.locator('.example', { hasText: 'How deep do I set posts' }).click()
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe('How deep do I set posts for a 4 ft fence?')
    expect(await page.locator('.entry').count()).toBe(0)
    await page.keyboard.press('Enter')
    await page.locator('.entry').first().waitFor()
    expect(await page.locator('.example').first().isVisible()).toBe(false)
  })

  browserTest('works with the keyboard alone, and is there again when it is loaded again', async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await page.goto(address)
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Go to the question')
    await page.keyboard.press('Enter')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('text')
    await page.keyboard.type(bags)
    await page.keyboard.press('Shift+Enter')
    expect(await page.locator('.entry').count()).toBe(0)
    await page.keyboard.press('Enter')
    await page.locator('.entry').first().waitFor()
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('asked')
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Working')
    await page.keyboard.press('Enter')
    await page.locator('.sum').first().waitFor({ state: 'visible' })
    await page.reload()
    await page.locator('.entry').first().waitFor()
    expect(await page.locator('.entry .answer').innerText()).toContain('23 bags')
  })

  browserTest('the list of earlier pages stands within a narrow window, and Escape closes it', async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 })
    await page.goto(address)
    await ask(page, bags)
    await page.getByText('Earlier pages').click()
    const tear = page.getByRole('button', { name: /^Tear out/ }).first()
    await tear.waitFor()
    for (const box of [await page.locator('.turn-to').first().boundingBox(), await tear.boundingBox()]) {
      expect(box?.x).toBeGreaterThanOrEqual(0)
      expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(320)
      expect(box?.height).toBeGreaterThanOrEqual(44)
    }
    expect(await fitsAcross(page)).toBe(true)
    await tear.focus()
    await page.keyboard.press('Escape')
    expect(await tear.isVisible()).toBe(false)
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe('Earlier pages')
  })

  browserTest('on paper the working is unfolded and the question box is left out', async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await page.goto(address)
    await ask(page, bags)
    expect(await page.locator('.sum').first().isVisible()).toBe(false)
    await page.emulateMedia({ media: 'print' })
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
    expect(await page.locator('.sum').first().isVisible()).toBe(true)
    expect(await page.getByLabel('Ask about your fence').isVisible()).toBe(false)
    await page.emulateMedia({ media: 'screen' })
    await page.evaluate(() => dispatchEvent(new Event('afterprint')))
    expect(await page.locator('.sum').first().isVisible()).toBe(false)
  })

  browserTest('a page is taken along as a file, and what is not there yet is said in place', async ({ page }) => {
    await page.goto(address)
    expect(await page.locator('#take').isVisible()).toBe(false)
    await ask(page, bags)
    for (const [name, file, begins] of [
      ['Sheets to print', 'field-pack-turn-1.pdf', '%PDF-'],
      ['Spreadsheet', 'figures-turn-1.csv', '\uFEFFField pack'],
    ] as const) {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.locator('#take').getByRole('link', { name }).click(),
      ])
      expect(download.suggestedFilename()).toBe(file)
      expect(readFileSync(await download.path(), 'utf8').startsWith(begins)).toBe(true)
    }
    await page.locator('#take').getByRole('link', { name: 'Calendar' }).click()
    await page.locator('#fault-text', { hasText: 'nothing to put in a calendar' }).waitFor()
    await page.getByRole('button', { name: 'Turn to a fresh page' }).click()
    expect(await page.locator('#take').isVisible()).toBe(false)
  })

  browserTest('the script is under 30 kB and the style under 15 kB', async () => {
    expect(statSync(join(built, 'web', 'page.js')).size).toBeLessThan(30_000)
    expect(statSync(join(built, 'web', 'page.css')).size).toBeLessThan(15_000)
  })

  for (const scheme of ['light', 'dark'] as const)
    for (const width of [320, 360, 1200])
      browserTest(
        `has nothing for axe to find at ${width} px, ${scheme}, and needs no scrolling sideways`,
        async ({ browser }) => {
          const context = await browser.newContext({ viewport: { width, height: 800 }, colorScheme: scheme })
          const page = await context.newPage()
          await page.goto(address)
          expect(await fitsAcross(page)).toBe(true)
          await ask(page, bags)
          await ask(page, 'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps at most 2 1/2 in?')
          await ask(page, 'and if the pickets are 5 1/2 in?')
          await ask(
            page,
            'How many pickets do I need for another bay of 93 in with 5 1/2 in boards and gaps at most 1/4 in?',
          )
          await page.locator('.fold').evaluateAll((folds) => {
            for (const fold of folds) fold.setAttribute('open', '')
          })
          await page.route('**/turns', (route) => route.fulfill({ status: 500, body: 'broken' }))
          await page.getByLabel('Ask about your fence').fill('How deep do I set posts?')
          await page.keyboard.press('Enter')
          await page.locator('#fault').waitFor()
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
