// The field pack on paper, read back from its bytes: what stands on each page, how large, and whether a millimetre is one.
import fc from 'fast-check'
import { PDFDocument } from 'pdf-lib'
import { describe, expect, it } from 'vitest'
import type { Block, FieldPack } from '../../../engine/index.ts'
import { fieldPackPdf } from '../../../src/export/pdf.ts'
import { readPdf, type Stroke } from './read-pdf.ts'

const caution = 'Buried lines: have them located and marked before you dig.'
const print = { date: '2026-11-26', caution }
const pack = (blocks: readonly Block[], more: Partial<FieldPack> = {}): FieldPack => ({
  title: 'Field pack',
  version: 'turn 7, mark 4F2A90',
  paper: 'letter',
  sheets: [{ title: 'Holes', blocks }],
  calendar: [],
  ...more,
})
const holes = (count: number): Block => ({
  kind: 'table',
  blanks: ['depth dug'],
  table: {
    title: 'Hole by hole',
    columns: [
      { label: 'post', unit: '' },
      { label: 'along the string', unit: '' },
      { label: 'hole depth', unit: 'in' },
    ],
    rows: Array.from({ length: count }, (_, i) => [`P${i + 1}`, `${8 * i}' 3/16"`, 30]),
  },
})
const lengthOf = ({ from, to }: Stroke): number => Math.hypot(to[0] - from[0], to[1] - from[1])
const isLevel = ({ from, to }: Stroke): boolean => Math.abs(to[1] - from[1]) < 0.01

describe('pages', () => {
  it('each says its sheet, its place in it, the plan, the day and the caution', async () => {
    const two = pack([holes(60)], {
      sheets: [
        { title: 'Holes', blocks: [holes(60)] },
        { title: 'Take care', blocks: [{ kind: 'lines', lines: ['• Dig by hand near any line.'] }] },
      ],
    })
    const pages = await readPdf(await fieldPackPdf(two, print))
    expect(pages.length).toBe(4)
    for (const [i, page] of pages.entries()) {
      expect(page.text).toContain(i < 3 ? `sheet 1 of 2 · page ${i + 1} of 3` : 'sheet 2 of 2')
      expect(page.text).toContain('plan as of turn 7, mark 4F2A90')
      expect(page.text).toContain('26 November 2026')
      expect(page.text).toContain(caution)
    }
    expect(pages[3]?.text).not.toContain('page 1 of 1')
    expect(pages[3]?.text).toContain('Dig by hand near any line.')
  })

  it('are saved where the last would be all but empty: what stands on the others moves closer, in letters of 11 points at least', async () => {
    const steps = (count: number): Block => ({
      kind: 'lines',
      lines: Array.from({ length: count }, (_, i) => `• Step ${i + 1}: set the post, plumb it both ways and brace it.`),
    })
    const sizes = new Set<number>()
    for (const make of [holes, steps])
      for (let count = 18; count <= 44; count += 3) {
        const pages = await readPdf(await fieldPackPdf(pack([make(count)]), print))
        const marks = pages.map((page) => page.words.filter((it) => /^(P\d+|• ?|Step \d+.*)$/.test(it.text)))
        expect(marks.flat().length, `${make.name} ${count}`).toBeGreaterThanOrEqual(count)
        // Of either 20 to 30 fill a page; four rows with their heading take up more than a quarter of it.
        if (pages.length > 1) expect(marks.at(-1)?.length, `${make.name} ${count}`).toBeGreaterThanOrEqual(4)
        for (const it of marks.flat()) sizes.add(it.size)
      }
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(11)
    expect(sizes.size).toBeGreaterThan(1)
  })

  it('that are turned for a table have what stands before it too', async () => {
    const wide: Block = {
      kind: 'table',
      table: {
        title: 'Wide',
        columns: Array.from({ length: 11 }, (_, i) => ({ label: `column ${i + 1}`, unit: '' })),
        rows: [Array.from({ length: 11 }, () => '12,345.678 mm')],
      },
    }
    const pages = await readPdf(await fieldPackPdf(pack([{ kind: 'lines', lines: ['• Told first.'] }, wide]), print))
    expect(pages.map((it) => [it.width, it.height])).toEqual([[792, 612]])
    expect(pages[0]?.text).toMatch(/Told first.*12,345.678 mm/s)
  })

  it('are Letter, 8 1/2 by 11 in, or A4, 210 by 297 mm', async () => {
    const sizes = await Promise.all(
      (['letter', 'a4'] as const).map(async (paper) => {
        const read = await PDFDocument.load(await fieldPackPdf(pack([holes(3)], { paper }), print))
        return read.getPage(0).getSize()
      }),
    )
    expect(sizes[0]).toEqual({ width: 8.5 * 72, height: 11 * 72 })
    expect(sizes[1]?.width).toBeCloseTo((210 / 25.4) * 72, 1)
    expect(sizes[1]?.height).toBeCloseTo((297 / 25.4) * 72, 1)
  })

  it('come out byte for byte alike for one plan and one day, and not for the next day', async () => {
    const [one, again, later] = await Promise.all([
      fieldPackPdf(pack([holes(30)]), print),
      fieldPackPdf(pack([holes(30)]), print),
      fieldPackPdf(pack([holes(30)]), { ...print, date: '2026-11-27' }),
    ])
    expect(Buffer.compare(one, again)).toBe(0)
    expect(Buffer.compare(one, later)).not.toBe(0)
  })

  it('hold every sign that we write with, each from the embedded font', async () => {
    const signs = '7′ 10 3⁄8″ × 90° ½ → − ≤ ≥ ² ³ √ π € £ ÷ é ł'
    const bytes = await fieldPackPdf(
      pack([{ kind: 'lines', lines: [`${signs} as they stand, and nothing else`] }]),
      print,
    )
    expect((await readPdf(bytes))[0]?.text).toContain(signs)
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/BaseFont \/(Helvetica|Times|Courier)/)
  })

  it('stand within their margins, letters and all, and nothing runs into the foot', async () => {
    const long = 'Set the string, measure from the corner stake, and mark both sides of every post. '.repeat(60)
    const pages = await readPdf(await fieldPackPdf(pack([{ kind: 'lines', lines: [long, long] }, holes(25)]), print))
    expect(pages.length).toBeGreaterThan(2)
    for (const page of pages) {
      const foot = page.words.filter((it) => it.text.startsWith('Buried lines')).map((it) => it.y)
      const body = page.words.filter((it) => it.y < page.height - 90 && it.size >= 11)
      expect(Math.min(...body.map((it) => it.y))).toBeGreaterThan((foot[0] as number) + 10)
      for (const it of page.words) expect(it.x).toBeGreaterThanOrEqual(40)
    }
  })

  it('with columns to write in by hand keep within the right margin too, lines and all', async () => {
    const wide: Block = { ...holes(25), blanks: ['dug', 'set', 'plumb'] } as Block
    for (const page of await readPdf(await fieldPackPdf(pack([wide]), print)))
      for (const { from, to } of page.strokes)
        expect(Math.max(from[0], to[0])).toBeLessThanOrEqual(page.width - 40 + 0.01)
  })
})

describe('a table', () => {
  it('has its heading again on each page, and every row once', async () => {
    const pages = await readPdf(await fieldPackPdf(pack([holes(60)]), print))
    for (const page of pages) expect(page.text).toMatch(/Hole by hole.*post.*hole depth.*depth dug/)
    expect(pages.slice(1).every((it) => it.text.includes('Hole by hole, continued'))).toBe(true)
    const posts = pages.flatMap((page) => page.words.map((it) => it.text).filter((it) => /^P\d+$/.test(it)))
    expect(posts).toEqual(Array.from({ length: 60 }, (_, i) => `P${i + 1}`))
  })

  it('has figures of 11 points at least, with their ends one under the other', async () => {
    const [page] = await readPdf(await fieldPackPdf(pack([holes(15)]), print))
    const figures = page?.words.filter((it) => /^\d+' 3\/16"$/.test(it.text)) ?? []
    expect(figures).toHaveLength(15)
    expect(Math.min(...figures.map((it) => it.size))).toBeGreaterThanOrEqual(11)
    // Figures of one digit more begin further left.
    expect((figures[0]?.x ?? 0) - (figures[2]?.x ?? 0)).toBeGreaterThan(3)
  })

  it('that is too wide for an upright page is set on its side, in letters of 11 points at least', async () => {
    const columns = ['post', 'along', 'depth', 'sight line', 'below it', 'post length', 'cut height']
    const rows = Array.from({ length: 20 }, (_, i) => columns.map((_, n) => `${i + 3} ft ${n + 1} 3/16 in`))
    const wide: Block = {
      kind: 'table',
      table: { title: 'Post by post', columns: columns.map((label) => ({ label, unit: '' })), rows },
    }
    const pages = await readPdf(await fieldPackPdf(pack([wide]), print))
    const figures = pages.flatMap((page) => page.words.filter((it) => it.text.endsWith('3/16 in')))
    for (const page of pages) expect([page.width, page.height]).toEqual([792, 612])
    expect(figures).toHaveLength(20 * 7)
    for (const it of figures) {
      expect(it.size).toBeGreaterThanOrEqual(11)
      expect(it.x).toBeLessThan(752)
    }
  })

  it('of long sentences in two columns stays upright', async () => {
    const rows = Array.from({ length: 6 }, (_, i) => [
      `Part ${i}`,
      'Set the string a hand above the ground. '.repeat(6),
    ])
    const long: Block = {
      kind: 'table',
      table: { title: 'What to do', columns: ['what', 'how'].map((label) => ({ label, unit: '' })), rows },
    }
    const [page] = await readPdf(await fieldPackPdf(pack([long]), print))
    expect([page?.width, page?.height]).toEqual([612, 792])
  })

  it('with a cell longer than a page goes on over the next, and ends', async () => {
    const text = 'measure twice and cut once '.repeat(400).trim()
    const long: Block = {
      kind: 'table',
      table: { title: 'Long', columns: [{ label: 'what', unit: '' }], rows: [[text]] },
    }
    const pages = await readPdf(await fieldPackPdf(pack([long]), print))
    const count = pages.flatMap((it) => it.text.match(/twice/g) ?? []).length
    expect(count).toBe(400)
  })
})

describe('true size', () => {
  // 25 mm squares on a board 500 mm by 60 mm: each of their sides is 25 / 25.4 × 72 = 70.866 points.
  const marks = Array.from(
    { length: 20 },
    (_, i) => `<path d="M${i * 25} 20L${i * 25 + 25} 20" stroke="#111" stroke-width="0.5" fill="none"/>`,
  )
  const full = (wide: number, high: number, inside = marks.join('')): Block => ({
    kind: 'full-size',
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}">${inside}</svg>`,
    wide,
    high,
    caption: 'Marks from the left end.',
  })

  it('has a check length of 100 mm and 4 in on each page: 283.46 and 288 points', async () => {
    for (const paper of ['letter', 'a4'] as const) {
      const pages = await readPdf(await fieldPackPdf(pack([full(500, 400)], { paper }), print))
      expect(pages.length).toBeGreaterThan(1)
      for (const page of pages) {
        const lengths = page.strokes.filter(isLevel).map(lengthOf)
        expect(lengths.some((it) => Math.abs(it - 283.46) < 0.02)).toBe(true)
        expect(lengths.some((it) => Math.abs(it - 288) < 0.02)).toBe(true)
        expect(page.text).toMatch(/Measure this line: 100 mm/)
      }
    }
  })

  it('draws 25 mm as 25 mm, on every piece', async () => {
    const pages = await readPdf(await fieldPackPdf(pack([full(500, 60)]), print))
    const sides = pages.flatMap((page) => page.strokes.map(lengthOf)).filter((it) => Math.abs(it - 70.866) < 1)
    // Twenty marks, drawn anew in each piece and cut off at its edge.
    expect(sides.length).toBeGreaterThanOrEqual(20)
    for (const side of sides) expect(side).toBeCloseTo(70.866, 2)
  })

  it('has one line of the drawing under both dashed lines where two pieces meet', async () => {
    // A piece is 532 points wide on an upright Letter page; neighbours share 12 mm, 34.016 points.
    const [page] = await readPdf(await fieldPackPdf(pack([full(500, 60)]), print))
    const cuts = page?.strokes.filter((it) => Math.abs(lengthOf(it) - (60 / 25.4) * 72) < 0.05 && !isLevel(it)) ?? []
    const xs = cuts.map((it) => it.from[0])
    // A1 ends with its line at 40 + 532 − 17.008; A2 begins with its own at 40 + 17.008.
    expect(xs.some((it) => Math.abs(it - 554.992) < 0.02)).toBe(true)
    expect(xs.some((it) => Math.abs(it - 57.008) < 0.02)).toBe(true)
    // In the drawing both are at 532 − 17.008 = 514.992 points: A2 begins 532 − 34.016 = 497.984 points along, and 497.984 + 17.008 is that.
    expect(497.984 + 17.008).toBeCloseTo(514.992, 3)
  })

  it('cuts no words: where some stand on the line, the piece ends before them', async () => {
    // A Letter piece is 187.68 mm wide, and cut 6 mm before its end. Words from 170 to 190 mm stand there: it ends at 169.68, and is cut at 163.68.
    const block = { ...full(500, 60), words: [[170, 190]] } as Block
    const [page] = await readPdf(await fieldPackPdf(pack([block]), print))
    const cuts = page?.strokes.filter((it) => Math.abs(lengthOf(it) - (60 / 25.4) * 72) < 0.05 && !isLevel(it)) ?? []
    const first = Math.min(...cuts.map((it) => ((it.from[0] - 40) / 72) * 25.4).filter((it) => it > 20))
    expect(first).toBeCloseTo(163.68, 1)
  })

  it('names its pieces by row and column and uses as few pages as it can', async () => {
    const stick = await readPdf(await fieldPackPdf(pack([full(2400, 38)]), print))
    const named = (pages: Awaited<ReturnType<typeof readPdf>>): string[] =>
      pages.flatMap((page) => page.words.filter((it) => it.size === 15).map((it) => it.text))
    // (2400 − 12) / (187.68 − 12) = 13.6 pieces; three of them stand on a page.
    expect(named(stick)).toEqual(Array.from({ length: 14 }, (_, i) => `A${i + 1}`))
    expect(stick).toHaveLength(5)
    const arch = await readPdf(await fieldPackPdf(pack([full(300, 300)]), print))
    expect(named(arch)).toEqual(['A1', 'A2', 'B1', 'B2'])
    expect(named(await readPdf(await fieldPackPdf(pack([full(150, 100)]), print)))).toEqual(['A1'])
  })
})

describe('a drawing', () => {
  it('is set whole and upright, its caption under it', async () => {
    const svg =
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 360 200" font-family="sans-serif" font-size="12"><rect width="360" height="200" fill="#fff"/><line x1="0" y1="10" x2="360" y2="10" stroke="#111"/><text x="180" y="100" font-weight="700">gap 2 3/16 in</text></svg>'
    const [page] = await readPdf(await fieldPackPdf(pack([{ kind: 'drawing', svg, caption: 'One bay' }]), print))
    const drawn = page?.words.find((it) => it.text.includes('gap 2 3/16 in'))
    const caption = page?.words.find((it) => it.text === 'One bay')
    expect(drawn?.size).toBeGreaterThanOrEqual(12)
    expect(caption?.y).toBeLessThan(drawn?.y ?? 0)
    // 360 units at 1.35 points each.
    expect(page?.strokes.some((it) => Math.abs(lengthOf(it) - 486) < 0.05)).toBe(true)
  })

  it('that cannot be read is our mistake and thrown, not printed as a blank', async () => {
    const broken: Block = { kind: 'drawing', svg: '<svg viewBox="0 0 10 10"><line', caption: '' }
    await expect(fieldPackPdf(pack([broken]), print)).rejects.toThrow(/cannot be set on paper/)
    await expect(fieldPackPdf(pack([{ ...broken, svg: '<svg/>' }]), print)).rejects.toThrow(/viewBox/)
  })
})

describe('whatever stands on a sheet', () => {
  const words = [
    'post',
    '7′ 10 3⁄8″',
    'heartwoodoftheslowestgrowinglarches',
    '2,400 mm',
    'a',
    'mind the line',
    '–',
    '12.3',
  ]
  const phrase = (most: number) => fc.array(fc.constantFrom(...words), { maxLength: most }).map((it) => it.join(' '))
  const filled = (wide: number, high: number): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}"><rect width="${wide}" height="${high}" fill="#eee"/></svg>`
  const side = fc.integer({ min: 1, max: 900 })
  const table = fc.integer({ min: 1, max: 12 }).chain((columns) =>
    fc.record({
      title: phrase(30),
      columns: fc.array(fc.record({ label: phrase(6), unit: fc.constantFrom('', 'in') }), {
        minLength: columns,
        maxLength: columns,
      }),
      rows: fc.array(fc.array(fc.oneof(phrase(6), fc.integer()), { minLength: columns, maxLength: columns }), {
        maxLength: 25,
      }),
    }),
  )
  const block: fc.Arbitrary<Block> = fc.oneof(
    fc.record({ kind: fc.constant('lines' as const), lines: fc.array(phrase(300), { maxLength: 6 }) }),
    fc.record({ kind: fc.constant('table' as const), table, blanks: fc.array(phrase(3), { maxLength: 2 }) }),
    fc
      .tuple(side, side, phrase(30))
      .map(([wide, high, caption]): Block => ({ kind: 'drawing', svg: filled(wide, high), caption })),
    fc
      .tuple(side, side, phrase(30))
      .map(([wide, high, caption]): Block => ({ kind: 'full-size', svg: filled(wide, high), wide, high, caption })),
  )

  it('no word of it leaves the paper or runs into the foot', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(block, { maxLength: 4 }), phrase(20), async (blocks, title) => {
        const pages = await readPdf(await fieldPackPdf(pack(blocks, { sheets: [{ title, blocks }] }), print))
        for (const page of pages) {
          const foot = page.words.find((it) => it.text.startsWith('Buried lines'))?.y ?? Number.NaN
          for (const it of page.words) {
            expect(it.x, it.text).toBeGreaterThanOrEqual(25)
            expect(it.x + it.wide, it.text).toBeLessThanOrEqual(page.width - 35)
            if (it.size > 10.6) expect(it.y, it.text).toBeGreaterThan(foot + 6)
          }
        }
      }),
      { numRuns: 12, seed: 7 },
    )
  })
})
