// How the page holds up in a real browser: to axe in both papers, to gloved fingers, narrow windows, the keyboard, paper, files, and to words that would like to be more.
import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { brotliCompressSync } from 'node:zlib'
import { afterAll, beforeAll, beforeEach, describe, expect } from 'vitest'
import { type Assistant, createAssistant } from '../../src/assistant.ts'
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

/** A reader that counts as a model, and a writer that takes its time over its sentences. */
function slowWriter(): Assistant {
  const reads = {
    front: 'model' as const,
    read: (...heard: Parameters<typeof offlineReader.read>) => offlineReader.read(...heard),
  }
  return createAssistant(
    { ...reads, read: async (...heard) => ({ ...((await reads.read(...heard)) as object), by: 'model' }) as never },
    async (_said, _entry, show) => {
      const sentences = [
        'Bought together that is 23 bags.',
        'Opened one by one it is more, since what is left over is lost.',
      ]
      let all = ''
      for (const it of sentences) {
        await new Promise((resolve) => setTimeout(resolve, 150))
        all = `${all} ${it}`.trim()
        show(all)
      }
      return all
    },
  )
}

describe('the page', () => {
  for (const [width, scheme] of [
    [320, 'light'],
    [360, 'dark'],
    [768, 'light'],
    [1200, 'dark'],
  ] as const)
    browserTest(
      `at ${width} px, ${scheme}: axe finds nothing, nothing moves by itself, all is large enough to press, nothing runs off sideways`,
      async ({ open }) => {
        const { page, moved } = await open({
          viewport: { width, height: 740 },
          colorScheme: scheme,
          reducedMotion: 'reduce',
        })
        await page.goto(served.address)
        await page.locator('#example .lead').waitFor()
        expect(await fitsAcross(page)).toBe(true)
        expect(await withAxe(page)).toEqual([])
        expect(await moved()).toEqual([])
        if (width < 736) await page.getByRole('button', { name: 'Pages and units' }).click()
        expect(await tooSmall(page)).toEqual([])
        if (width < 736) await page.getByRole('button', { name: 'Pages and units' }).click()
        await moved()

        await ask(page, bags)
        served.assistant = slowWriter()
        await ask(page, 'and if the holes are 12 inches?')
        expect(await entry(page, 2).locator('.prose').innerText()).toContain('Opened one by one')
        served.assistant = createAssistant(offlineReader)
        await ask(page, 'How many pickets for another bay of 93 in with 5 1/2 in boards?')
        expect(await moved()).toEqual([])

        await page.locator('.fold').evaluateAll((folds) => {
          for (const fold of folds) fold.setAttribute('open', '')
        })
        // Whoever asks for less motion sees none.
        expect(await page.evaluate(() => document.getAnimations().length)).toBe(0)
        await entry(page, 2).getByRole('button', { name: 'Change post width' }).click()
        expect(await withAxe(page)).toEqual([])
        expect(await tooSmall(page)).toEqual([])
        expect(await fitsAcross(page)).toBe(true)
        await page.keyboard.press('Escape')

        if (width < 960) {
          await page.locator('#lip').click()
          expect(await page.locator('#sheet').isVisible()).toBe(true)
          expect(await tooSmall(page)).toEqual([])
          expect(await withAxe(page)).toEqual([])
          await page.keyboard.press('Escape')
          expect(await page.evaluate(() => document.activeElement?.id)).toBe('lip')
        }
        await page.route('**/turns', (route) => route.fulfill({ status: 500, body: 'broken' }))
        await page.getByLabel('Ask about your fence').fill('How deep do I set posts?')
        await page.getByLabel('Ask about your fence').press('Enter')
        await page.locator('#fault').waitFor()
        expect(await fitsAcross(page)).toBe(true)
        expect(await withAxe(page)).toEqual([])
      },
    )

  browserTest(
    'a page that is lent, and what the sums were held against, hold up in a narrow window and a wide one, on both papers',
    async ({ open }) => {
      const { page: own } = await open()
      await own.goto(served.address)
      await ask(own, bags)
      const link = await own.evaluate(async () => {
        const at = `/api/conversations/${location.hash.slice(1)}/share`
        const headers = { 'content-type': 'application/json' }
        return ((await (await fetch(at, { method: 'POST', headers, body: '{}' })).json()) as { link: string }).link
      })
      for (const [width, colorScheme] of [
        [320, 'dark'],
        [1200, 'light'],
      ] as const) {
        const { page } = await open({ viewport: { width, height: 740 }, colorScheme })
        for (const [at, says] of [
          [link, 'somebody else’s yard'],
          ['/evidence', 'What the sums were held against'],
        ] as const) {
          await page.goto(new URL(at, served.address).href)
          expect(await page.locator('header').innerText()).toContain(says)
          expect(await fitsAcross(page), at).toBe(true)
          expect(await withAxe(page), at).toEqual([])
          expect(await tooSmall(page), at).toEqual([])
        }
        await page.getByRole('link', { name: 'Back to the book' }).click()
        if (width < 736) await page.getByRole('button', { name: 'Pages and units' }).click()
        await page.getByRole('link', { name: 'What the sums were held against' }).click()
        // The report of one check that the tests are served.
        await page.locator('main', { hasText: '1 figures agree' }).waitFor()
      }
    },
  )

  browserTest(
    'the job sheet lies over the book and is put back: the book is out of reach meanwhile, and one comes back to the same line',
    async ({ open }) => {
      const { page, moved } = await open({ viewport: { width: 360, height: 740 } })
      await page.goto(served.address)
      for (const inches of [93, 92, 91, 90])
        await ask(page, `How many pickets in a ${inches} in opening with 3 1/2 in pickets, gaps at most 2 1/2 in?`)
      await entry(page, 2).locator('.lead .fig').first().scrollIntoViewIfNeeded()
      await moved()
      const lies = (): Promise<number[]> =>
        page.evaluate(() => [
          scrollY,
          document.documentElement.scrollHeight,
          document.querySelector('[data-number="2"] .lead')?.getBoundingClientRect().top ?? 0,
        ])
      const before = await lies()
      await page.locator('#lip').click()
      // Every stop of the keyboard, once round.
      const stops = new Set<string>()
      for (let i = 0; i < 60; i++) {
        await page.keyboard.press('Tab')
        stops.add(await page.evaluate(() => document.activeElement?.closest('#book, #job, #ask')?.id ?? ''))
      }
      expect(stops).toEqual(new Set(['job', '']))
      const tree = await (await page.context().newCDPSession(page)).send('Accessibility.getFullAXTree')
      const read = tree.nodes.flatMap((it) => (it.ignored ? [] : [String(it.name?.value ?? '')]))
      expect(read).toContain('Back to the book')
      expect(read.filter((it) => it.startsWith('How many pickets in a'))).toEqual([])
      // The slip moved along with the keyboard.
      await moved()
      await page.locator('#sheet-back').click()
      expect(await lies()).toEqual(before)
      expect(await moved()).toEqual([])
      expect(await entry(page, 2).locator('.lead').innerText()).toContain('pickets')
    },
  )

  browserTest('day and night paper are laid by hand too, and stay', async ({ page }) => {
    await page.goto(served.address)
    const paper = (): Promise<string> => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
    await page.getByLabel('Paper').selectOption('night')
    const night = await paper()
    await page.reload()
    expect(await paper()).toBe(night)
    await page.getByLabel('Paper').selectOption('day')
    expect(await paper()).not.toBe(night)
  })

  browserTest('words that look like markup are words, whoever wrote them', async ({ open }) => {
    const { page } = await open({ viewport: { width: 1200, height: 800 } })
    const hostile = [
      '<script>document.title="taken"</script>',
      '<img src=x onerror="document.title=\'taken\'"> ![seen](http://tracker.example/x.png)',
      '[press](javascript:document.title="taken") <iframe srcdoc="<script>parent.document.title=1</script>"></iframe>',
      '<style>.care { display: none }</style>',
      '<form action="http://other.example/"><input></form>',
    ].join('\n\n')
    await page.goto(served.address)
    // Pasted by the person: a whole page of it, and a name for a plan.
    await ask(
      page,
      `${hostile}\n\nHow many pickets in a 93 in opening with **3 1/2 in** pickets, gaps at most 2 1/2 in?`,
    )
    expect(await entry(page, 1).locator('.lead').innerText()).toContain('16 pickets')
    await ask(page, 'Keep this as <b onclick=alert(1)>gravel</b>')
    // Written by a model or a server, past every guard.
    const real = createAssistant(offlineReader)
    served.assistant = {
      turn: async (...asked) => {
        const { answer, job } = await real.turn(...asked)
        const words = { ...answer.words, notices: [hostile], leftOver: [hostile], remarks: [], usual: [] }
        const calls = answer.calls.map((it) => ({
          ...it,
          title: hostile,
          drawing: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" onload="document.title=1"><script>document.title='taken'</script><a href="javascript:1"><text>x</text></a><foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><img src="x" onerror="document.title=1"/></body></foreignObject><image href="http://tracker.example/x.png"/></svg>`,
        }))
        return { answer: { ...answer, calls, words, prose: hostile }, job }
      },
    }
    await ask(page, bags)
    const third = entry(page, 3)
    expect(await third.locator('.answer').innerText()).toContain('<script>document.title="taken"</script>')
    expect(
      await third
        .locator(
          'script, iframe, img, style, form[action], foreignObject, image, [onload], [onclick], a:not([href^="http"])',
        )
        .count(),
    ).toBe(0)
    expect(await page.title()).toContain('Plumbpost')
    expect(await third.locator('.care').innerText()).toContain('have them located and marked before you dig')
  })

  browserTest('works with the keyboard alone, and is there again when it is loaded again', async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await page.goto(served.address)
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Go to the question')
    await page.keyboard.press('Enter')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('text')
    await page.keyboard.type(bags)
    await page.keyboard.press('Shift+Enter')
    expect(await page.locator('#entries > .entry').count()).toBe(0)
    await page.keyboard.press('Enter')
    await whole(page, 1)
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('asked')
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('60 lb')
    const working = entry(page, 1).locator('summary', { hasText: 'Working' })
    await working.focus()
    await page.keyboard.press('Enter')
    await entry(page, 1).locator('.sum').first().waitFor({ state: 'visible' })
    await page.reload()
    await whole(page, 1)
    expect(await entry(page, 1).locator('.lead').innerText()).toContain('23 bags')
    // On paper the working is unfolded and the question box is left out.
    await page.emulateMedia({ media: 'print' })
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
    expect(await entry(page, 1).locator('.sum').first().isVisible()).toBe(true)
    for (const gone of ['#ask', '#units', '.entry .acts', '.change'])
      expect(await page.locator(gone).first().isVisible(), gone).toBe(false)
  })

  browserTest('an example fills in the question, and goes out only when it is asked', async ({ page }) => {
    await page.goto(served.address)
    // 93 − 16 × 3 1/2 = 37, shared by 17 gaps.
    expect(await page.locator('#example .lead').innerText()).toContain('16 pickets')
    await page.locator('.example', { hasText: 'How deep do I set posts' }).click()
    expect(await page.getByLabel('Ask about your fence').inputValue()).toBe('How deep do I set posts for a 4 ft fence?')
    expect(await page.locator('#entries > .entry').count()).toBe(0)
    await page.keyboard.press('Enter')
    await whole(page, 1)
    expect(await page.locator('#example').isVisible()).toBe(false)
  })

  browserTest('an earlier page is opened again in a narrow window, and torn out for good', async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 })
    await page.goto(served.address)
    await ask(page, 'How deep do I set posts for a 5 ft fence with 6 in of gravel?')
    await page.getByRole('button', { name: 'Pages and units' }).click()
    await page.getByRole('button', { name: 'Fresh page' }).click()
    expect(await page.locator('#entries > .entry').count()).toBe(0)
    await page.getByText('Earlier pages').click()
    const tear = page.getByLabel('Tear out: How deep do I set posts for a 5 ft fence with 6 in of gravel?')
    await tear.waitFor()
    expect(await fitsAcross(page)).toBe(true)
    expect(await tooSmall(page)).toEqual([])
    await tear.focus()
    await page.keyboard.press('Escape')
    expect(await tear.isVisible()).toBe(false)
    await page.getByText('Earlier pages').click()
    await page.locator('.turn-to', { hasText: 'for a 5 ft fence' }).click()
    await whole(page, 1)
    page.on('dialog', (it) => void it.accept())
    await page.getByText('Earlier pages').click()
    await tear.click()
    await page.locator('#empty').waitFor({ state: 'visible' })
  })

  browserTest('a page is taken along as a file, and what is not there yet is said in place', async ({ page }) => {
    await page.setViewportSize({ width: 1200, height: 800 })
    await page.goto(served.address)
    expect(await page.getByText('Take it along').isVisible()).toBe(false)
    await ask(page, bags)
    await page.getByText('Take it along').click()
    for (const [name, file, begins] of [
      ['Sheets to print', 'field-pack-turn-1.pdf', '%PDF-'],
      ['Spreadsheet', 'figures-turn-1.csv', '\uFEFFField pack'],
      ['Drawing', 'drawing-turn-1.svg', '<svg'],
      ['Text', 'talk-turn-1.md', '#'],
      ['Record', 'conversation.json', '{'],
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
    await page.getByRole('button', { name: 'Fresh page' }).click()
    expect(await page.getByText('Take it along').isVisible()).toBe(false)
  })

  browserTest('script and style come to under 70 kB compressed', async () => {
    const files = ['page.js', 'page.css'].map((it) => join(served.built, 'web', it))
    const sent = files.map((it) => brotliCompressSync(readFileSync(it)).length).reduce((a, b) => a + b)
    expect(sent).toBeLessThan(70_000)
    // What is sent today is not compressed, and is less than that all the same.
    expect(files.map((it) => statSync(it).size).reduce((a, b) => a + b)).toBeLessThan(70_000)
  })
})
