// The talk as a spreadsheet, as text and as one drawing: nothing in them acts, and what can be added up is a number.
import { describe, expect, it } from 'vitest'
import type { FieldPack, Table } from '../../../engine/index.ts'
import type { Turn } from '../../../src/answer.ts'
import { spreadsheet } from '../../../src/export/csv.ts'
import { talkInMarkdown } from '../../../src/export/md.ts'
import { packOf, standingLine } from '../../../src/export/pack.ts'
import { drawingsInOne } from '../../../src/export/svg.ts'
import { calendar, spacing, turnsOf } from './turns.ts'

const about = { title: 'A talk', caution: standingLine }
const packWith = (table: Table): FieldPack => ({
  title: 'Field pack',
  version: 'turn 1, mark 000000',
  paper: 'letter',
  sheets: [{ title: 'Sheet', blocks: [{ kind: 'table', table }] }],
  calendar: [],
})

/** Read as RFC 4180 has it: quotes, doubled quotes, commas. */
function cellsIn(csv: string): string[][] {
  const rows = csv
    .replace(/^\uFEFF/, '')
    .trimEnd()
    .split('\r\n')
  return rows.map((row) =>
    [...`${row},`.matchAll(/(?:"((?:[^"]|"")*)"|([^",]*)),/g)].map(
      (it) => (it[1]?.replace(/""/g, '"') ?? it[2]) as string,
    ),
  )
}

describe('a spreadsheet', () => {
  it('has every figure with its value apart from its unit, then each table, and the cautions', async () => {
    const turns = await turnsOf(spacing, calendar)
    const rows = cellsIn(await spreadsheet(turns, packOf(turns), about))
    expect(rows).toContainEqual(['opening', '', '70.625', 'in', '70 5/8 in', 'you said', ''])
    expect(rows.find((it) => it[0] === 'pickets in one bay')?.slice(2, 4)).toEqual(['12', 'picket'])
    expect(rows.find((it) => it[0] === 'last coat goes on')?.[2]).toBe('2026-06-30')
    expect(rows.some((it) => it[0]?.includes('Running marks'))).toBe(true)
    expect(rows.find((it) => it[0] === 'holes')?.slice(1, 3)).toEqual(['2026-06-05', '2026-06-06'])
    expect(rows.find((it) => it[0] === 'Take care')?.[1]).toBe(standingLine)
    expect(new Set(rows.map((it) => it.length)).size).toBe(1)
  })

  it('puts a number beside every size in a column: 2 3/16 in is 2.1875', async () => {
    const table: Table = {
      title: 'Marks',
      columns: [
        { label: 'mark (in)', unit: 'in' },
        { label: 'along', unit: '' },
        { label: 'off by', unit: '' },
        { label: 'mixed', unit: '' },
      ],
      rows: [
        ['2 3/16', '7\' 10 3/8"', '−0.014', '3 in'],
        ['25', '2 ft', '0.5', 'by eye'],
      ],
    }
    const rows = cellsIn(await spreadsheet([], packWith(table), about))
    const head = rows.findIndex((it) => it[0] === 'mark (in)')
    expect(rows[head]).toEqual([
      'mark (in)',
      'mark (in, decimal)',
      'along',
      expect.stringMatching(/^along \((in|ft), decimal\)$/),
      'off by',
      'mixed',
    ])
    const [along] = /in|ft/.exec(rows[head]?.[3]?.slice(7) ?? '') ?? []
    // 7 ft 10 3/8 in is 94.375 in.
    expect(Number(rows[head + 1]?.[3])).toBeCloseTo(along === 'in' ? 94.375 : 94.375 / 12, 9)
    expect(rows[head + 1]?.slice(0, 2)).toEqual(['2 3/16', '2.1875'])
    expect(rows[head + 1]?.slice(4)).toEqual(['-0.014', '3 in'])
  })

  it('lets no cell begin a formula, and leaves a negative number a number', async () => {
    const table: Table = {
      title: '=1+1',
      columns: [
        { label: '@SUM(A1)', unit: '' },
        { label: 'n', unit: '' },
      ],
      rows: [
        ['=HYPERLINK("https://example.org")', -5],
        ['+1', -0.25],
        ['-2+3', 1],
        ['\t=1', 2],
      ],
    }
    const rows = cellsIn(await spreadsheet([], packWith(table), { ...about, title: '=cmd' }))
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=+@\t\r]|^-(?!\d+(\.\d+)?$)/)
    expect(rows.flat()).toEqual(expect.arrayContaining(["'=cmd", "'@SUM(A1)", '-5', '-0.25']))
  })
})

describe('the talk as text', () => {
  it('is every turn, what was said and the reply as it was shown', async () => {
    const turns = await turnsOf(spacing, 'make the bay 93 in')
    const text = talkInMarkdown(turns, { title: 'A bay', version: 'turn 2, mark 4F2A90', date: '2026-11-26' })
    for (const turn of turns) expect(text).toContain(turn.answer.reply)
    expect(text).toMatch(/^# A bay\n\nTurn 2, mark 4F2A90, written out on 2026-11-26\.\n\n## 1\n\n> What spacing/)
    expect(text).toContain('## 2\n\n> make the bay 93 in')
  })

  it('what was said stays what was said', () => {
    const said = '# shout\n<b>bold</b> [x](https://example.org) `code`\n---'
    const text = talkInMarkdown([{ said, answer: { reply: 'So.' } } as Turn], { title: '# t', version: 'v', date: 'd' })
    expect(text).toContain('# \\# t')
    expect(text).toContain('> \\# shout')
    expect(text).toContain('\\<b\\>bold')
    expect(text).not.toMatch(/[^\\]\[x\]\(/)
  })
})

describe('the drawings in one', () => {
  it('are those of the last answer that has any, whole, with what they are of and the cautions', async () => {
    const turns = await turnsOf(spacing, 'What does a bag weigh?')
    const svg = drawingsInOne(turns, standingLine) ?? ''
    const drawing = turns[0]?.answer.calls[0]?.drawing ?? 'none'
    expect(svg).toContain(drawing.slice(drawing.indexOf('<title>')))
    expect(svg).toContain('>Pickets in one bay, with equal gaps</text>')
    expect(svg).toContain('Buried lines: have them located and marked before you dig.')
    expect(svg.match(/<svg /g)).toHaveLength(2)
    expect(svg.match(/<\/svg>/g)).toHaveLength(2)
  })

  it('are none where nothing was drawn', () => {
    expect(drawingsInOne([], standingLine)).toBeNull()
  })
})
