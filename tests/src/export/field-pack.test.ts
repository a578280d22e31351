// The field pack of a whole fence on paper: told by talking or by decisions, its sheets stand there, numbered and dated.
import { describe, expect, it } from 'vitest'
import { type FieldPack, fieldPackOf } from '../../../engine/index.ts'
import { packOf, standingLine } from '../../../src/export/pack.ts'
import { fieldPackPdf } from '../../../src/export/pdf.ts'
import { jobOf } from '../../engine/job/fences.ts'
import { sixRuns, threeRuns } from '../../engine/job/whole-fence.ts'
import { readPdf } from './read-pdf.ts'
import { spacing, turnsOf } from './turns.ts'

const print = { date: '2026-11-26', caution: standingLine }
const packFrom = (told: Readonly<Record<string, string>>, system: 'imperial' | 'metric'): FieldPack =>
  fieldPackOf(jobOf(told, system), 3) as FieldPack

describe('a fence of six runs on paper', () => {
  it('has each of its sheets, numbered, with the plan’s version, the day and the cautions on every page', async () => {
    const pack = packFrom(sixRuns, 'imperial')
    const pages = await readPdf(await fieldPackPdf(pack, print))
    for (const [i, { title }] of pack.sheets.entries()) {
      const page = pages.find((it) => new RegExp(`sheet ${i + 1} of ${pack.sheets.length}( |$)`).test(it.text))
      expect(page?.text, title).toContain(title)
    }
    for (const page of pages) {
      expect(page.text).toContain(`plan as of ${pack.version}`)
      expect(page.text).toContain('26 November 2026')
      expect(page.text).toContain('Buried lines')
    }
    const stations = pages
      .filter((it) => it.text.includes('Stations and holes'))
      .map((it) => it.text)
      .join(' ')
    expect(stations).toMatch(/depth dug.*plumb/)
    expect(pages.filter((it) => it.text.includes('Measure this line: 100 mm')).length).toBeGreaterThan(8)
  })

  it('stands on A4 in millimetres, no figure smaller than can be read', async () => {
    const pages = await readPdf(await fieldPackPdf(packFrom(threeRuns, 'metric'), print))
    expect(Math.round(pages[0]?.width ?? 0)).toBe(595)
    const stations = pages.filter((it) => it.text.includes('Stations and holes'))
    for (const page of stations)
      for (const word of page.words.filter((it) => / mm$/.test(it.text))) expect(word.size).toBeGreaterThanOrEqual(11)
  })
})

describe('the pack of a talk about a fence', () => {
  const fence =
    'The front run is 60 ft and the right run is 84 ft. Posts at most 8 ft apart. 3 1/2 in pickets with gaps of at most 2 1/2 in, 42 in long, posts 4 ft above ground. How many pickets?'

  it('is that of the whole fence, and what it gives has no second sheet', async () => {
    const pack = packOf(await turnsOf(fence))
    const titles = pack.sheets.map((it) => it.title)
    expect(titles.slice(0, 4)).toEqual([
      'Plan',
      'Stations and holes',
      'Post lengths and cut heights',
      'Bays and pickets',
    ])
    expect(titles.at(-1)).toBe('Take care')
    expect(titles).not.toContain('Pickets of the whole fence')
    expect(pack.version).toMatch(/^turn 1 · [0-9A-Z]{7}$/)
  })

  it('keeps an answer that no part of the fence gives', async () => {
    const pack = packOf(await turnsOf(fence, 'Air at 70 °F and 60 % humidity: what is the dew point?'))
    expect(pack.sheets.map((it) => it.title)).toEqual(
      expect.arrayContaining(['Plan', 'Dew point, and dew on the wood', 'Take care']),
    )
  })

  it('is as it was where no run is told', async () => {
    expect(packOf(await turnsOf(spacing)).sheets[0]?.title).toBe('Pickets in one bay, with equal gaps')
  })
})
