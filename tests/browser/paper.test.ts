// The sheets to print as they are seen: each page drawn by pdf.js in a real browser. Nothing reaches the rim of the paper, and what is said to be 100 mm is.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { getDocumentProxy } from 'unpdf'
import { afterAll, beforeAll, describe, expect } from 'vitest'
import { type FieldPack, fieldPackOf } from '../../engine/index.ts'
import { standingLine } from '../../src/export/pack.ts'
import { fieldPackPdf } from '../../src/export/pdf.ts'
import { jobOf } from '../engine/job/fences.ts'
import { threeRuns } from '../engine/job/whole-fence.ts'
import { browserTest } from './browser-test.ts'
import { ask, bags, serveThePage, type Served } from './served.ts'

const print = { date: '2026-11-26', caution: standingLine }
const reader = readFileSync(join(process.cwd(), 'node_modules/unpdf/dist/pdfjs.mjs'))

/** Pixels to a millimetre of paper. */
const fine = 4

interface Picture {
  /** Millimetres of the paper, and how far from its edges the first ink stands, at the left, top, right and foot. */
  readonly wide: number
  readonly high: number
  readonly clear: readonly number[]
  /** Lengths of the unbroken level lines of ink longer than 60 mm. */
  readonly lines: readonly number[]
}

/** As much of pdf.js as is used here. */
type Reader = (from: { data: Uint8Array; disableFontFace: boolean; useSystemFonts: boolean }) => {
  promise: Promise<{
    numPages: number
    getPage(i: number): Promise<{
      getViewport(at: { scale: number }): { width: number; height: number }
      render(on: { canvasContext: CanvasRenderingContext2D; viewport: unknown }): { promise: Promise<void> }
    }>
  }>
}

/** Draws every page, and measures the pictures in the browser. */
async function picturesOf(page: Page, pdf: Uint8Array): Promise<Picture[]> {
  await page.route('http://127.0.0.1/**', (route) => {
    const path = new URL(route.request().url()).pathname
    if (path === '/reader.mjs') return route.fulfill({ contentType: 'text/javascript', body: reader })
    if (path === '/sheets.pdf') return route.fulfill({ contentType: 'application/pdf', body: Buffer.from(pdf) })
    return route.fulfill({
      contentType: 'text/html',
      body: '<!doctype html><title>Sheets</title><canvas id="paper"></canvas><script type="module">import { getDocument } from "/reader.mjs"; Object.assign(window, { getDocument })</script>',
    })
  })
  await page.goto('http://127.0.0.1/')
  return page.evaluate(async (fine) => {
    const { getDocument } = window as unknown as { getDocument: Reader }
    const data = new Uint8Array(await (await fetch('/sheets.pdf')).arrayBuffer())
    const sheets = await getDocument({ data, disableFontFace: true, useSystemFonts: false }).promise
    const canvas = document.getElementById('paper') as HTMLCanvasElement
    const context = canvas.getContext('2d', { willReadFrequently: true }) as CanvasRenderingContext2D
    const pictures = []
    for (let i = 1; i <= sheets.numPages; i++) {
      const sheet = await sheets.getPage(i)
      const viewport = sheet.getViewport({ scale: (fine * 25.4) / 72 })
      canvas.width = Math.ceil(viewport.width)
      canvas.height = Math.ceil(viewport.height)
      await sheet.render({ canvasContext: context, viewport }).promise
      const { width, height } = canvas
      const { data: pixels } = context.getImageData(0, 0, width, height)
      let [left, top, right, foot] = [width, height, 0, 0]
      const lines: number[] = []
      for (let y = 0; y < height; y++) {
        let run = 0
        for (let x = 0; x <= width; x++) {
          const isInk = x < width && (pixels[4 * (y * width + x)] as number) < 160
          if (isInk) {
            run++
            if (x < left) left = x
            if (x > right) right = x
            if (y < top) top = y
            foot = y
          } else {
            if (run > 60 * fine) lines.push(run / fine)
            run = 0
          }
        }
      }
      const clear = [left, top, width - 1 - right, height - 1 - foot].map((it) => it / fine)
      pictures.push({ wide: viewport.width / fine, high: viewport.height / fine, clear, lines })
    }
    return pictures
  }, fine)
}

let served: Served
beforeAll(async () => {
  served = await serveThePage()
}, 60_000)
afterAll(() => served.close())

/** The words of each page, and how far to the right they go, as a share of the paper. */
async function wordsOn(pdf: Uint8Array): Promise<{ text: string; right: number }[]> {
  const printed = await getDocumentProxy(new Uint8Array(pdf))
  return Promise.all(
    Array.from({ length: printed.numPages }, async (_, i) => {
      const page = await printed.getPage(i + 1)
      const { items } = await page.getTextContent()
      const words = items.flatMap((it) => ('str' in it && it.str.trim() !== '' ? [it] : []))
      const right = Math.max(...words.map((it) => (it.transform[4] as number) + it.width))
      return { text: words.map((it) => it.str).join(' '), right: right / page.getViewport({ scale: 1 }).width }
    }),
  )
}

describe('the book printed by the browser', () => {
  browserTest(
    'on Letter and A4 all is there that was folded, nothing that is pressed, and nothing runs over the edge',
    async ({ page }) => {
      await page.goto(served.address)
      await ask(page, bags)
      await ask(page, 'and if the holes are 12 inches?')
      for (const format of ['Letter', 'A4'] as const) {
        const pages = await wordsOn(await page.pdf({ format }))
        const text = pages.map((it) => it.text).join(' ')
        // π/4 × 12² = 113.1 in²: folded in the second entry, where the like was worked in the first.
        for (const it of ['113.1 in²', '35 bags', 'wait for every answer', 'Job sheet', 'Where it comes from'])
          expect(text, format).toContain(it)
        for (const it of ['Pages and units', 'Fresh page', 'Copy this entry', 'Ask about your fence'])
          expect(text, format).not.toContain(it)
        for (const [i, it] of pages.entries()) {
          expect(it.text.length, `${format}, page ${i + 1}`).toBeGreaterThan(100)
          expect(it.right, `${format}, page ${i + 1}`).toBeLessThan(1)
        }
      }
    },
  )

  browserTest('is the book and the sheet, also while the sheet lies over the book', async ({ open }) => {
    const { page } = await open({ viewport: { width: 360, height: 740 } })
    await page.goto(served.address)
    await ask(page, bags)
    await ask(page, 'and if the holes are 12 inches?')
    // The sheet follows the answer by a moment.
    await page.locator('#sheet', { hasText: '12 in' }).waitFor({ state: 'attached' })
    const lines = async () => (await wordsOn(await page.pdf({ format: 'A4' }))).map((it) => it.text)
    const before = await lines()
    await page.locator('#lip').click()
    expect(await lines()).toEqual(before)
    // Not on each page again, as what is fixed would be.
    expect(before.join(' ').split('Job sheet')).toHaveLength(2)
  })
})

describe('the sheets as they are seen', () => {
  for (const [name, paper, system, wide, high] of [
    ['Letter', 'letter', 'imperial', 215.9, 279.4],
    ['A4', 'a4', 'metric', 210, 297],
  ] as const)
    browserTest(`on ${name} nothing is cut at the rim, and the line of 100 mm is 100 mm long`, async ({ page }) => {
      const pack: FieldPack = { ...(fieldPackOf(jobOf(threeRuns, system), 3) as FieldPack), paper }
      const pictures = await picturesOf(page, await fieldPackPdf(pack, print))
      expect(pictures.length).toBeGreaterThan(8)
      for (const [i, it] of pictures.entries()) {
        expect([it.wide, it.high].sort((a, b) => a - b).map((mm) => Math.round(mm * 10) / 10)).toEqual([wide, high])
        // Printers leave out some 6 mm at each edge: nothing of ours stands there.
        for (const mm of it.clear) expect(mm, `page ${i + 1}`).toBeGreaterThan(6)
      }
      // A pixel is a quarter of a millimetre; a line ends within one.
      const checked = pictures.filter((it) => it.lines.some((mm) => Math.abs(mm - 100) <= 0.5))
      expect(checked.length).toBeGreaterThan(4)
    })
})
