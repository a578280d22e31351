// This file is about how long the page lets a finger wait: each act on a talk of six entries and on a whole fence of 25, in Chromium with its processor slowed four times.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, CDPSession, Page } from 'playwright-core'
import { openBrowser } from '../browser/chromium.ts'
import { ask, bags, serveThePage } from '../browser/served.ts'

export interface PageMeasured {
  readonly what: string
  /** From a press to the next picture, as the browser itself times it: the slowest event of the press, the median of so many presses. */
  readonly ms: number
  /** The page's own work, of the 600 ms after the press, in processor time: what else the machine does is not in it. */
  readonly workMs: number
  readonly limitMs: number
  /** By whichever is less: each is at least what the press takes on a machine that does nothing else. */
  readonly kept: boolean
}

const limitMs = 100
const slowed = 4
const presses = 3

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

interface Act {
  readonly what: string
  /** What is pressed. */
  readonly on: string
  /** What is pressed before the clock begins, and after it: each press finds the page as the one before it did. */
  readonly before?: string
  readonly after?: string
}

const sheetOut = '#lip'
const acts: readonly Act[] = [
  // What the machine takes for itself, in the same minute.
  { what: 'nothing', on: '#entries .care li' },
  { what: 'a figure: where it comes from', on: '#entries .lead .fig' },
  { what: 'a figure: written anew', on: '#entries .change' },
  { what: 'the working: unfolded', on: '#entries .fold > summary', after: '#entries .fold > summary' },
  {
    what: 'a sketch: looked at closer',
    on: '#entries .sketch .acts > :first-child',
    after: '#entries .sketch .acts > :last-child',
  },
  { what: 'the job sheet: pulled out', on: sheetOut, after: '#sheet-back' },
  { what: 'the job sheet: put back', on: '#sheet-back', before: sheetOut },
  { what: 'asking: the question is written in', on: '#send' },
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
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed })
  const measured: PageMeasured[] = []
  for (const act of acts) {
    const times: { ms: number; workMs: number }[] = []
    for (let i = 0; i < presses; i++) times.push(await timeOf(page, session, act))
    const ms = median(times.map((it) => it.ms))
    const workMs = median(times.map((it) => it.workMs))
    measured.push({ what: `${name}: ${act.what}`, ms, workMs, limitMs, kept: Math.min(ms, workMs) <= limitMs })
  }
  await page.close()
  return measured
}

const median = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] as number

async function timeOf(
  page: Page,
  session: CDPSession,
  { on, before, after }: Act,
): Promise<{ ms: number; workMs: number }> {
  const worked = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics')
    return (metrics.find((it) => it.name === 'TaskDuration')?.value ?? Number.NaN) * 1000
  }
  if (on === '#send') await page.locator('#text').fill('How deep do I set posts for a 4 ft fence?')
  if (before) await page.locator(before).click()
  const it = page.locator(on).first()
  await it.scrollIntoViewIfNeeded()
  // At rest, as it is for whoever looks before they press.
  await page.waitForTimeout(400)
  await page.evaluate(() => {
    ;(window as unknown as { slowest: { ms: number } }).slowest.ms = 0
  })
  const workedBefore = await worked()
  await it.click()
  await page.waitForTimeout(600)
  const workMs = (await worked()) - workedBefore
  const ms = await page.evaluate(() => (window as unknown as { slowest: { ms: number } }).slowest.ms)
  if (after) await page.locator(after).first().click()
  await page.keyboard.press('Escape')
  return { ms, workMs }
}

export const pageInWords = (measured: readonly PageMeasured[] | undefined): string =>
  measured === undefined
    ? 'the page: NOT MEASURED, since no browser could be started'
    : [
        `the page, in Chromium slowed ${slowed} times, from a press to the next picture, the median of ${presses}, and how much of it the page works`,
        ...measured.map(
          ({ what, ms, workMs, limitMs: most, kept }) =>
            `  ${what}: ${Math.round(ms)} ms, ${(ms / most).toFixed(2)} × what it may take, ${Math.round(workMs)} ms of work; ${kept ? 'within' : 'OVER'} ${most} ms`,
        ),
      ].join('\n')
