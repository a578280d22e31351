// What a builder does with the page, start to end, on a phone, on a tablet and at a desk: the three questions that this began with,
// a fence planned in six turns, a what-if, a form, and papers to take along. On every view axe finds nothing on either paper, nothing moves by itself, and each thing is announced once.
import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect } from 'vitest'
import { browserTest } from './browser-test.ts'
import { ask, entry, fitsAcross, serveThePage, type Served, tooSmall, whole, withAxe } from './served.ts'

let served: Served
beforeAll(async () => {
  served = await serveThePage()
}, 60_000)
afterAll(() => served.close())

const sizes = [
  ['a phone', 360, 740],
  ['a tablet', 768, 1024],
  ['a desk', 1200, 860],
] as const

const leads = (page: Page, number: number): Promise<string> =>
  entry(page, number)
    .locator('.lead')
    // What is far from the window is not laid out, and has no inner text until it comes near.
    .allTextContents()
    .then((it) => it.join('; '))

type Paper = 'light' | 'dark'
/** On the view as it stands: nothing against WCAG 2.2 A and AA on these papers, nothing off sideways, nothing too small to press. */
async function holdsUp(page: Page, papers: readonly Paper[]): Promise<void> {
  const ground = (): Promise<string> => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
  const grounds = new Set<string>()
  for (const colorScheme of papers) {
    await page.emulateMedia({ colorScheme })
    grounds.add(await ground())
    expect(await withAxe(page), colorScheme).toEqual([])
  }
  expect(grounds.size).toBe(papers.length)
  expect(await fitsAcross(page)).toBe(true)
  expect(await tooSmall(page)).toEqual([])
}

/** Whether it can be seen without a finger moving. */
const isInWindow = (page: Page, number: number, selector: string): Promise<boolean> =>
  entry(page, number)
    .locator(selector)
    .first()
    .evaluate((it) => {
      const { top, bottom } = it.getBoundingClientRect()
      const foot = document.getElementById('ask')?.getBoundingClientRect().top ?? innerHeight
      return top >= 0 && bottom <= foot
    })

describe('a builder', () => {
  for (const [where, width, height] of sizes)
    browserTest(`at ${where} gets three answers, tries what if, and fills in a form`, async ({ open }) => {
      const { page, moved, told } = await open({ viewport: { width, height } })
      await page.goto(served.address)
      await page.locator('#example .lead').waitFor()
      await moved()
      // How many bags for the corner posts? What is lacking is asked at once, and the answer is told as it comes.
      await ask(page, 'How many 60 lb bags for the corner posts? The holes are 10 in wide and 30 in deep.')
      const form = entry(page, 1).locator('form.questions')
      expect(await isInWindow(page, 1, 'form.questions input')).toBe(true)
      expect((await told()).at(-1)).toBe('Something is to be told.')
      await form.getByRole('textbox').fill('4')
      await form.getByRole('button').click()
      await whole(page, 2)
      // π/4 × 10² − 3 1/2² = 66.29 in²; × 30 × 4 = 4.604 ft³; a 60 lb bag makes 0.45: 10.2, so 11.
      expect(await leads(page, 2)).toContain('11 bags')
      // Is this dry enough to finish? 20 % at depth is over 15 %, and water that beads is not taken in.
      await ask(
        page,
        'The meter reads 14 % at the surface and 20 % at depth. Water still beads. Is it dry enough to finish?',
      )
      expect(await leads(page, 3)).toMatch(/not dry enough.*surface not ready/i)
      // What spacing for this odd bay? 70 5/8 − 12 × 3 1/2 = 28 5/8, shared by 13 gaps: 2 21/104 in.
      await ask(page, 'What spacing for a 70 5/8 in bay, 3 1/2 in pickets, gaps at most 2 1/2 in?')
      expect(await leads(page, 4)).toMatch(/2 3\/16 in.*12 pickets/s)
      expect(await leads(page, 4)).toContain('2 21/104 in')
      // What if? (70 5/8 − 2) / (3 1/2 + 2) = 12.5, so 13.
      await ask(page, 'and if the gaps are at most 2 inches?')
      expect(await leads(page, 5)).toContain('13 pickets')
      expect(await leads(page, 4)).toContain('13 pickets')
      for (const number of [2, 3, 4, 5]) {
        await entry(page, number)
          .locator('.asked')
          .evaluate((it) => it.scrollIntoView({ behavior: 'instant' }))
        expect(await isInWindow(page, number, '.lead .fig'), `entry ${number}`).toBe(true)
      }
      expect(await moved()).toEqual([])
      expect((await told()).filter((it) => it.startsWith('Answered'))).toEqual([
        'Answered: 11 bags.',
        'Answered: not dry enough, surface not ready.',
        'Answered: 2 3/16 in, 12 pickets, 2 21/104 in.',
        'Answered: 1 13/16 in, 13 pickets, 1 89/112 in.',
      ])
      await holdsUp(page, ['light', 'dark'])
      await page.goto(`${served.address}#sums/picket-spacing?opening=93+in&picketWidth=3+1%2F2+in&widestGap=2+1%2F2+in`)
      await page.reload()
      await page.locator('#forms .lead', { hasText: '16 pickets' }).waitFor()
      await holdsUp(page, ['light', 'dark'])
    })

  for (const [where, width, height] of sizes)
    browserTest(
      `at ${where} plans a fence in six turns with the keyboard alone, compares two plans and takes the papers along`,
      async ({ open }) => {
        const paper: Paper = width === 768 ? 'dark' : 'light'
        const { page, moved, told } = await open({
          colorScheme: paper,
          viewport: { width, height },
          reducedMotion: 'reduce',
        })
        await page.goto(served.address)
        await page.locator('#example .lead').waitFor()
        await moved()
        await page.keyboard.press('Tab')
        await page.keyboard.press('Enter')
        for (const [i, said] of [
          'The front run is 48 ft and the left run is 24 ft. Posts at most 8 ft apart.',
          'How many posts do I need?',
          'Keep this as eights',
          'and if the posts are at most 6 ft apart?',
          'Keep this as sixes',
          'Compare the plans',
        ].entries()) {
          // Whoever has no pointer comes to the line again by the link before everything.
          await page.locator('#skip').focus()
          await page.keyboard.press('Enter')
          await page.keyboard.type(said)
          await page.keyboard.press('Enter')
          await whole(page, i + 1)
          expect(await page.evaluate(() => document.activeElement?.className)).toBe('asked')
        }
        // 48 / 8 = 6 and 24 / 8 = 3 bays; the runs share their corner: 10 posts. At 6 ft 8 and 4 bays: 13.
        expect(await leads(page, 2)).toContain('10 posts')
        expect(await leads(page, 4)).toContain('13 posts')
        const compared = await entry(page, 6).innerText()
        for (const it of ['eights', 'sixes', '10 posts', '13 posts']) expect(compared).toContain(it)
        expect(await moved()).toEqual([])
        const said = await told()
        expect(said.filter((it, i) => it === said[i - 1])).toEqual([])
        await holdsUp(page, [paper])
        if (width < 960) await page.locator('#lip').press('Enter')
        await page.locator('#take-title').press('Enter')
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          page.locator('#take').getByRole('link', { name: 'Sheets to print' }).press('Enter'),
        ])
        expect(
          readFileSync(await download.path())
            .subarray(0, 5)
            .toString(),
        ).toBe('%PDF-')
        await holdsUp(page, [paper])
        // What was taken last is taken back from the sheet, and said.
        await page.locator('#undo').press('Enter')
        await page.locator('#progress', { hasText: 'Written in as entry 7.' }).waitFor({ state: 'attached' })
        expect((await told()).some((it) => it.startsWith('Written in as entry 7.'))).toBe(true)
        // Told also while the sheet lies over the book: what tells it is within reach of a screen reader.
        expect(await page.locator('#progress').evaluate((it) => it.closest('[inert]'))).toBeNull()
        if (width < 960) await page.locator('#sheet-back').press('Enter')
        await whole(page, 7)
      },
    )
})
