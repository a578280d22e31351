// What of a talk goes outside: answers that still stand, each with its figures, and never without the cautions.
import { describe, expect, it } from 'vitest'
import type { FieldPack } from '../../../engine/index.ts'
import { packOf, standingLine } from '../../../src/export/pack.ts'
import { calendar, spacing, turnsOf } from './turns.ts'

const linesOf = (pack: FieldPack, title: string): string[] =>
  pack.sheets
    .filter((it) => it.title.startsWith(title))
    .flatMap((it) => it.blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])))

describe('the pack of a talk', () => {
  it('has a sheet for an answer, figures before what they were worked from, then the cautions', async () => {
    const pack = packOf(await turnsOf(spacing))
    expect(pack.sheets.map((it) => it.title)).toEqual(['Pickets in one bay, with equal gaps', 'Take care'])
    expect(pack.sheets[0]?.blocks.map((it) => it.kind)).toEqual(expect.arrayContaining(['lines', 'table', 'drawing']))
    const lines = linesOf(pack, 'Pickets')
    // Who asks what spacing is told the spacing first.
    expect(lines.slice(0, 2)).toEqual(['gap by the tape: 2 3/16 in', 'pickets in one bay: 12 pickets'])
    expect(lines.indexOf('opening: 70 5/8 in')).toBeGreaterThan(lines.indexOf('Worked from:'))
    expect(linesOf(pack, 'Take care').join(' ')).toMatch(/gas pipe or cable can kill.*lot line.*building office/)
    expect(standingLine).toMatch(/Buried lines.*Lot line.*Local code/)
  })

  it('keeps the latest answer of a calculation only, and its mark changes with it', async () => {
    const turns = await turnsOf(spacing, 'make the bay 93 in')
    const [before, after] = [packOf(turns.slice(0, 1)), packOf(turns)]
    expect(after.sheets).toHaveLength(2)
    expect(linesOf(after, 'Pickets')).toContain('opening: 93 in')
    expect(linesOf(after, 'Pickets')).not.toContain('opening: 70 5/8 in')
    expect(before.version).toMatch(/^turn 1, mark [0-9A-F]{6}$/)
    expect(after.version).toMatch(/^turn 2, mark [0-9A-F]{6}$/)
    expect(after.version.slice(-6)).not.toBe(before.version.slice(-6))
    expect(packOf(turns.slice(0, 1)).version).toBe(before.version)
  })

  it('is printed on Letter for inches and on A4 for millimetres, and for Australia whatever its tape says', async () => {
    expect(packOf(await turnsOf(spacing)).paper).toBe('letter')
    const metric = 'What spacing for a 1790 mm bay with 90 mm pickets and gaps at most 60 mm?'
    expect(packOf(await turnsOf(metric)).paper).toBe('a4')
    expect(packOf(await turnsOf(`In Australia: ${spacing}`)).paper).toBe('a4')
  })

  it('has no sheet and no day where nothing was worked', async () => {
    expect(packOf([])).toMatchObject({ sheets: [], calendar: [] })
    expect(packOf(await turnsOf('What spacing for a 70 5/8 in bay?')).sheets).toEqual([])
  })

  it('puts the parts of the job in the calendar, first and last day as they were worked', async () => {
    // Mon 1: call; 2–4 notice; Fri 5–6 holes; 7 posts; 8–10 concrete … 28 coat; 29 between; 30 coat
    const pack = packOf(await turnsOf(calendar))
    expect(pack.calendar[0]).toMatchObject({ what: 'call', first: '2026-06-01', last: '2026-06-01' })
    expect(pack.calendar.find((it) => it.what === 'holes')).toMatchObject({ first: '2026-06-05', last: '2026-06-06' })
    expect(pack.calendar.at(-1)).toMatchObject({ what: 'coat 2', first: '2026-06-30', last: '2026-06-30' })
  })
})
