// This file is about how long the page lets a finger wait: each act on a talk of six entries and on a whole fence of 25, in Chromium with its processor slowed four times.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { openBrowser } from '../browser/chromium.ts'
import { ask, bags, serveThePage } from '../browser/served.ts'

export interface PageMeasured {
  readonly what: string
  /** From the press to the next picture, the slowest of its presses, as the browser itself times it. */
  readonly ms: number
  readonly limitMs: number
  readonly kept: boolean
}

const limitMs = 100
const slowed = 4

const sixEntries = [
  bags,
  'and if the holes are 12 inches?',
  'How many pickets go in a 93 in opening with 3 1/2 in pickets and gaps no wider than 2 1/2 in?',
  'The front run is 40 ft and the left run is 30 ft. Posts at most 8 ft apart.',
  'How many posts do I need?',
  'Where do the marks go?',
]

const wholeFence = (): string[] =>
  (
    JSON.parse(readFileSync(join(process.cwd(), 'transcripts-demo', 'whole-yard.json'), 'utf8')) as {
      turns: { said: string }[]
    }
  ).turns.map((it) => it.said)

const acts: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  [
    'asking: the question is written in',
    async (page) => {
      await page.locator('#text').fill('How deep do I set posts for a 4 ft fence?')
      await page.keyboard.press('Enter')
      await page.locator('#entries > .entry:last-child:has(.care)').waitFor()
    },
  ],
  ['a figure: where it comes from', (page) => page.locator('#entries .lead .fig').nth(0).click()],
  ['a figure: written anew', (page) => page.locator('#entries .change').nth(0).click()],
  ['the working: unfolded', (page) => page.locator('#entries .fold > summary').nth(0).click()],
  ['a sketch: looked at closer', (page) => page.locator('#entries .sketch button').nth(0).click()],
  ['the job sheet: pulled out', (page) => page.locator('#lip').click()],
]

/** Undefined where no browser can be had. */
export async function pageMeasures(): Promise<readonly PageMeasured[] | undefined> {
  const browser = await openBrowser().catch(() => undefined)
  if (!browser) return undefined
  const served = await serveThePage()
  try {
    const six = await measuredOn('six entries', sixEntries, served.address, browser)
    return [...six, ...(await measuredOn('a whole fence', wholeFence(), served.address, browser))]
  } finally {
    await browser.close()
    await served.close()
  }
}

async function measuredOn(
  name: string,
  talk: readonly string[],
  address: string,
  browser: Browser,
): Promise<PageMeasured[]> {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } })
  await page.addInitScript(() => {
    const slowest = { ms: 0 }
    Object.assign(window, { slowest })
    new PerformanceObserver((list) => {
      for (const it of list.getEntries()) slowest.ms = Math.max(slowest.ms, it.duration)
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
  })
  await page.goto(address)
  for (const said of talk) await ask(page, said)
  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed })
  const measured: PageMeasured[] = []
  for (const [what, act] of acts) {
    await page.evaluate(() => {
      ;(window as unknown as { slowest: { ms: number } }).slowest.ms = 0
    })
    await act(page)
    await page.waitForTimeout(600)
    const ms = await page.evaluate(() => (window as unknown as { slowest: { ms: number } }).slowest.ms)
    measured.push({ what: `${name}: ${what}`, ms, limitMs, kept: ms <= limitMs })
    await page.keyboard.press('Escape')
  }
  await page.close()
  return measured
}

export const pageInWords = (measured: readonly PageMeasured[] | undefined): string =>
  measured === undefined
    ? 'the page: NOT MEASURED, since no browser could be started'
    : [
        `the page, in Chromium slowed ${slowed} times, from a press to the next picture`,
        ...measured.map(
          ({ what, ms, limitMs: most, kept }) =>
            `  ${what}: ${Math.round(ms)} ms; ${kept ? 'within' : 'OVER'} ${most} ms`,
        ),
      ].join('\n')
