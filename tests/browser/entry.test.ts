// One page of the book in a real browser: figures that tell where they come from, assumptions changed in place, the job sheet, files, paper.
import { afterAll, beforeAll, beforeEach, describe, expect } from 'vitest'
import { createAssistant } from '../../src/assistant.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { browserTest } from './browser-test.ts'
import { ask, bags, entry, fitsAcross, serveThePage, type Served, tooSmall, whole, withAxe } from './served.ts'

let served: Served
beforeAll(async () => {
  served = await serveThePage()
}, 60_000)
afterAll(() => served.close())
beforeEach(() => {
  served.assistant = createAssistant(offlineReader)
})

describe('an entry', () => {
  browserTest('has its answer, sketch, working and cautions, and the job sheet fills', async ({ page }) => {
    await page.goto(served.address)
    await ask(page, bags)
    const first = entry(page, 1)
    expect(await first.locator('.lead').innerText()).toContain('23 bags')
    expect(await first.locator('.row', { hasText: 'Concrete in all' }).locator('.value').innerText()).toBe('10.13 ft³')
    expect(await first.locator('.sketch svg').getAttribute('aria-label')).toContain('a hole 30 in deep')
    expect(await first.locator('.care').innerText()).toContain('ask where the lines are buried')
    const sum = first.locator('.step', { hasText: 'Bought together, so rounded up once' }).locator('.sum')
    expect((await sum.innerText()).replace(/\s+/g, ' ')).toBe(
      'bags = ceil(concrete / bagYield) = round up (10.13 ft³ / 0.45 ft³) = 23 bags',
    )
    await page.locator('#sheet .line').first().waitFor()
    // Where it holds, and whether it was said, taken as usual or worked.
    const sheet = page.locator('#sheet')
    expect(await sheet.locator('h3').allInnerTexts()).toContain('For the corner and gate posts')
    for (const [label, text, whose] of [
      ['hole width', '10 in', 'you said'],
      ['post width', '3 1/2 in', 'taken as usual'],
      ['bags, bought together', '23 bags', 'worked'],
    ])
      expect(await sheet.locator('.line', { hasText: label }).first().innerText()).toMatch(
        new RegExp(`${label}\\s+${text}\\s+${whose}`),
      )
  })

  browserTest(
    'every figure tells where it comes from: pointed at, in focus, pressed, and read out',
    async ({ page }) => {
      await page.goto(served.address)
      await ask(page, bags)
      const slip = page.locator('#slip')
      const first = entry(page, 1)
      const bought = first.locator('.lead .fig')
      await bought.hover()
      // The sum by hand is in the test of concrete: 11 × 0.9207 = 10.13 ft³; / 0.45 = 22.5, so 23.
      expect(await slip.innerText()).toContain('round up (10.13 ft³ / 0.45 ft³) = 23 bags')
      await page.mouse.move(0, 0)
      await slip.waitFor({ state: 'hidden' })
      await first.locator('.read .fig', { hasText: '11 posts' }).focus()
      await page.keyboard.press('Shift+Tab')
      await page.keyboard.press('Tab')
      expect(await slip.innerText()).toContain('You said “eleven” for the corner and gate posts in entry 1.')
      await page.keyboard.press('Enter')
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Copy the figure')
      await page.keyboard.press('Escape')
      expect(await slip.isVisible()).toBe(false)
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('11 posts')
      await first.locator('.assumed .fig', { hasText: '3 1/2 in' }).click()
      expect(await slip.innerText()).toContain('Taken as usual, since a nominal 4x4 is dressed')
      await page.keyboard.press('Escape')
      // A dimension of the drawing tells the same: a little beside it is near enough for a glove.
      await first.locator('.sketch').evaluate((it) => it.scrollIntoView({ block: 'center' }))
      const wide = await first.locator('.sketch text', { hasText: '10 in wide' }).boundingBox()
      await page.mouse.click((wide?.x ?? 0) + (wide?.width ?? 0) + 12, (wide?.y ?? 0) + 8)
      expect(await slip.innerText()).toContain('You said “10 in”')
      await page.locator('#sheet .fig', { hasText: '12.65 ft³' }).first().focus()
      const session = await page.context().newCDPSession(page)
      const { nodes } = await session.send('Accessibility.getFullAXTree')
      const figures = nodes.filter(
        (it) => it.role?.value === 'button' && /\d (bags|in|ft³|lb|posts)$/.test(String(it.name?.value)),
      )
      expect(figures.length).toBeGreaterThan(30)
      for (const it of figures)
        expect(String(it.description?.value ?? ''), String(it.name?.value)).toMatch(/^(You said|Taken as usual|Worked)/)
    },
  )

  browserTest(
    'a drawing is alive: its pickets and posts tell their figures to a finger, to the keyboard and to a reader, and it is looked at closer',
    async ({ page }) => {
      await page.setViewportSize({ width: 360, height: 740 })
      await page.goto(served.address)
      await ask(page, 'What spacing for a 70 5/8 in bay, 3 1/2 in pickets, gaps at most 2 1/2 in?')
      const sketch = entry(page, 1).locator('.sketch')
      const slip = page.locator('#slip')
      await sketch.evaluate((it) => it.scrollIntoView({ block: 'center' }))
      // Picket 5 begins at 5 × 229/104 + 4 × 3 1/2 = 25.01 in.
      const picket = sketch.locator('.part').nth(4)
      const box = (await picket.boundingBox()) as { x: number; y: number; width: number; height: number }
      await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
      expect(await slip.innerText()).toMatch(/^Picket 5 of 12\s+Left edge at 25 in from the face of the left post/)
      await page.keyboard.press('Escape')
      // The keyboard stops once at a drawing, and goes from part to part with the arrows.
      expect(await sketch.locator('.part[tabindex="0"]').count()).toBe(1)
      await sketch.locator('.part[tabindex="0"]').focus()
      await page.keyboard.press('ArrowRight')
      expect(await slip.innerText()).toContain('Picket 2 of 12')
      await page.keyboard.press('End')
      await page.keyboard.press('Home')
      await page.keyboard.press('Enter')
      expect(await slip.innerText()).toContain('Picket 1 of 12')
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Copy this')
      await page.keyboard.press('Escape')
      const session = await page.context().newCDPSession(page)
      const { nodes } = await session.send('Accessibility.getFullAXTree')
      const names = nodes.map((it) => String(it.name?.value ?? ''))
      expect(names.filter((it) => /^Picket \d+ of 12: Left edge at .*3 1\/2 in wide\.$/.test(it))).toHaveLength(12)
      expect(names.some((it) => it.startsWith('Right post: Its face is 70 5/8 in'))).toBe(true)
      // Twice as near, around the same middle.
      const wide = async (): Promise<number> => (await sketch.locator('svg').boundingBox())?.width ?? 0
      const before = await wide()
      await sketch.getByRole('button', { name: 'Closer' }).click()
      expect((await wide()) / before).toBeCloseTo(2, 1)
      const seen = await sketch.locator('.sheet-of-paper').evaluate((it) => ({
        middle: it.scrollLeft + it.clientWidth / 2,
        all: it.scrollWidth,
      }))
      expect(seen.middle / seen.all).toBeCloseTo(0.5, 1)
      await sketch.getByRole('button', { name: 'Closer' }).click()
      expect(await sketch.getByRole('button', { name: 'Closer' }).isDisabled()).toBe(true)
      expect(await withAxe(page)).toEqual([])
    },
  )

  browserTest('an assumption is changed in place, is worked again at once, and is taken back', async ({ page }) => {
    await page.goto(served.address)
    await ask(page, bags)
    await entry(page, 1).getByRole('button', { name: 'Change post width' }).click()
    const field = page.getByLabel('Write post width anew')
    await field.fill('fat')
    await page.getByRole('button', { name: 'Write it in' }).click()
    await page.locator('#slip .wrong', { hasText: 'I cannot read “fat” as' }).waitFor()
    await field.fill('5 1/2 in')
    await page.keyboard.press('Enter')
    await whole(page, 2)
    // π/4 × 10² − 5 1/2² = 48.29 in²; × 24 = 1159 in³ = 0.6707 ft³; × 11 = 7.378; / 0.45 = 16.4, so 17.
    expect(await entry(page, 1).locator('.lead ins').innerText()).toContain('17 bags')
    expect(await page.locator('#progress').innerText()).toContain('23 bags → 17 bags')
    await entry(page, 1).getByRole('button', { name: 'Change shape of the hole' }).click()
    await page.getByLabel('Write shape of the hole anew').selectOption('square')
    await page.getByRole('button', { name: 'Write it in' }).click()
    await whole(page, 3)
    await page.getByRole('button', { name: 'Take the last change back' }).click()
    await whole(page, 4)
    expect(await entry(page, 4).locator('.lead').innerText()).toContain('17 bags')
  })

  browserTest(
    'cautions are whole at first and one line each after, with the whole of it below; a reason for a usual value stands once',
    async ({ page }) => {
      await page.goto(served.address)
      await ask(page, bags)
      await ask(page, 'and if the holes are 12 inches?')
      const [first, second] = [entry(page, 1).locator('.care'), entry(page, 2).locator('.care')]
      const whole = ['wait for every answer', 'talk to the neighbour first', 'corner sight lines']
      for (const it of whole) {
        expect(await first.innerText()).toContain(it)
        expect(await second.innerText()).not.toContain(it)
      }
      expect(await first.locator('li strong').first().innerText()).toMatch(/can kill\.$/)
      expect(await first.locator('summary, button').count()).toBe(0)
      // As many cautions as before, none of them left out, and nothing to press but what unfolds it.
      expect(await second.locator('li').count()).toBe(await first.locator('li').count())
      expect(await second.locator('button, a').count()).toBe(0)
      expect(await second.locator('li').first().innerText()).toContain('have them located and marked before you dig')
      await second.locator('summary').first().click()
      expect(await second.innerText()).toContain('wait for every answer')
      // What is called up for the first time is whole, whatever else was read.
      await ask(page, 'How do I burn the old pickets?')
      const third = entry(page, 3).locator('.care')
      expect(await third.locator('li:not(.short)').count()).toBeGreaterThan(0)
      expect(await withAxe(page)).toEqual([])
      expect(await entry(page, 1).locator('.assumed .because').count()).toBeGreaterThan(3)
      expect(await entry(page, 2).locator('.assumed .because').count()).toBe(0)
    },
  )

  browserTest('a page is lent by a link to read, until it is withdrawn', async ({ page, open }) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await page.goto(served.address)
    await ask(page, bags)
    const toTheSheet = async (): Promise<void> => {
      await page.locator('#lip').click()
      await page.getByText('Let somebody read it').click()
    }
    await toTheSheet()
    expect(await page.getByLabel('The link').isVisible()).toBe(false)
    await page.getByRole('button', { name: 'Make a link' }).click()
    await page.waitForFunction(() => (document.getElementById('lent-link') as HTMLInputElement).value !== '')
    const link = await page.getByLabel('The link').inputValue()
    // 32 bytes of chance: 43 letters of base64url.
    expect(link).toMatch(/\/shared\/[^.]+\.[\w-]{43}$/)
    expect(await page.locator('#lent-says').innerText()).toContain('on this machine alone')
    expect([await withAxe(page), await tooSmall(page), await fitsAcross(page)]).toEqual([[], [], true])
    const reader = (await open({ viewport: { width: 360, height: 740 } })).page
    await reader.goto(link)
    expect(await reader.locator('main').innerText()).toContain('23 bags')
    expect(await reader.locator('main').innerText()).toContain('ask where the lines are buried')
    expect(await reader.locator('button, input, textarea, form').count()).toBe(0)
    expect([await withAxe(reader), await fitsAcross(reader)]).toEqual([[], true])
    // Opened again, the page says that a link is out, and cannot show it.
    await page.reload()
    await whole(page, 1)
    await toTheSheet()
    expect(await page.locator('#lent-says').innerText()).toContain('A link to read this page is out.')
    await page.getByRole('button', { name: 'Withdraw it' }).click()
    await page.locator('#lent-says', { hasText: 'It is withdrawn.' }).waitFor()
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('lend')
    expect((await reader.goto(link))?.status()).toBe(404)
    expect(await reader.locator('main').innerText()).toContain('It may have been withdrawn; ask for a new one.')
    expect([await withAxe(reader), await tooSmall(reader), await fitsAcross(reader)]).toEqual([[], [], true])
  })

  browserTest('units and country are changed at the head of the page, and the answer follows', async ({ page }) => {
    await page.goto(served.address)
    await ask(page, bags)
    await page.getByLabel('Units').selectOption('metric')
    await whole(page, 2)
    // 30 in − 6 in = 24 in, × 25.4 = 609.6 mm.
    expect(await entry(page, 2).locator('.row', { hasText: 'Post in the ground' }).innerText()).toContain('609.6 mm')
    // The sketch too; what the person said stays in their units.
    const drawn = (await entry(page, 2).locator('.sketch svg text').allTextContents()).join(' ')
    expect(drawn).toContain('609.6 mm in the ground')
    expect(drawn).toContain('254 mm wide')
    await page.getByLabel('Country').selectOption('uk')
    await whole(page, 3)
    await page.reload()
    await whole(page, 3)
    await page.waitForFunction(() => (document.getElementById('country') as HTMLSelectElement).value === 'uk')
    expect(await page.locator('#units').inputValue()).toBe('metric')
    expect(await entry(page, 3).locator('.care').innerText()).not.toContain('811')
  })

  browserTest('the job sheet asks what to settle next, and fills as it is answered', async ({ page }) => {
    await page.goto(served.address)
    await ask(page, 'The front run is 40 ft and the left run is 30 ft.')
    const next = page.locator('#sheet form.next')
    await next.waitFor()
    const question = await next.locator('label').innerText()
    await next.getByRole('textbox').fill('8 ft')
    await next.getByRole('button').click()
    await whole(page, 2)
    await page.waitForFunction((was) => document.querySelector('form.next label')?.textContent !== was, question)
    await page.getByText('Plans side by side').click()
    await page.getByLabel('Keep this plan under a name').fill('eights')
    await page.getByRole('button', { name: 'Keep it' }).click()
    await whole(page, 3)
    expect(await entry(page, 3).innerText()).toContain('Kept as “eights”')
  })

  browserTest('a sum is filled in as a form, says what is lacking, and is handed on as a link', async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await page.goto(served.address)
    await page.getByRole('button', { name: 'Pages and units' }).click()
    await page.getByRole('button', { name: 'Sums without talking' }).click()
    // By the part of the job: those of one part are seen when it is unfolded, or when their words are written.
    expect(await page.locator('#forms summary').first().innerText()).toContain('Lot lines')
    expect(await page.getByRole('link', { name: 'Pickets in one bay, with equal gaps' }).isVisible()).toBe(false)
    expect(await withAxe(page)).toEqual([])
    await page.getByLabel('Find one by its words').fill('zzz')
    expect(await page.locator('#forms').innerText()).toContain('None has those words')
    await page.getByLabel('Find one by its words').fill('equal gaps')
    await page.getByRole('link', { name: 'Pickets in one bay, with equal gaps' }).click()
    const forms = page.locator('#forms')
    await forms.getByLabel('Opening').fill('93 in')
    await forms.getByRole('button', { name: 'Work it' }).click()
    await page.locator('#sum-picketWidth-wrong', { hasText: /\w/ }).waitFor()
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('sum-picketWidth')
    await page.locator('#sum-picketWidth').fill('3 1/2 in')
    await page.locator('#sum-widestGap').fill('2 1/2 in')
    await page.keyboard.press('Enter')
    // 93 − 16 × 3 1/2 = 37, shared by 17 gaps: 2 3/17 in.
    await forms.locator('.lead', { hasText: '16 pickets' }).waitFor()
    expect(await forms.locator('.care').innerText()).toContain('ask where the lines are buried')
    expect(await withAxe(page)).toEqual([])
    const link = page.url()
    expect(link).toContain('#sums/picket-spacing?opening=93+in')
    await page.goto('about:blank')
    await page.goto(link)
    await forms.locator('.lead', { hasText: '16 pickets' }).waitFor()
    expect(await page.locator('#sum-opening').inputValue()).toBe('93 in')
    // Into the book as an entry, which knows from then on what was filled in.
    await forms.getByRole('button', { name: 'Write it into the book' }).click()
    await whole(page, 1)
    expect(await forms.isVisible()).toBe(false)
    expect(page.url()).not.toContain('sums')
    expect(await entry(page, 1).locator('.lead').first().innerText()).toContain('16 pickets')
    await ask(page, 'and if the gaps are at most 2 inches?')
    // (93 − 2) / (3 1/2 + 2) = 16.5, so 17.
    expect(await entry(page, 2).locator('.lead').first().innerText()).toContain('17 pickets')
  })
})
