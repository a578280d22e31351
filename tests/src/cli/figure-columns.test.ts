import { describe, expect, it } from 'vitest'
import { aligned, inColumns, tableLines } from '../../../src/cli/figure-columns.ts'
import { cells } from '../../../src/cli/lines.ts'

describe('figures one under another', () => {
  it('have their whole numbers end in one column, whatever comes after them', () => {
    expect(aligned(['30 in', '1.151 ft³', '2,850 lb', '−0.5 in', '13 1/2', '$643.00', 'yes'])).toEqual([
      '   30 in',
      '    1.151 ft³',
      '2,850 lb',
      '   −0.5 in',
      '   13 1/2',
      ' $643.00',
      'yes',
    ])
  })

  it('stand beside their labels, and after them where the room is too small', () => {
    const rows = [
      { label: 'Post in the ground:', figure: '30 in' },
      { label: 'Concrete in one hole:', figure: '1.151 ft³' },
    ]
    expect(inColumns(rows, 80)).toEqual(['  Post in the ground:    30 in', '  Concrete in one hole:   1.151 ft³'])
    expect(inColumns(rows, 24)).toEqual([
      '  Post in the ground:',
      '    30 in',
      '  Concrete in one hole:',
      '    1.151 ft³',
    ])
  })
})

describe('a table', () => {
  const head = ['boards alike', 'marks from one end', 'offcut']
  const body = [
    ['3', '45 in, 90 1/8 in', '5 3/4 in'],
    ['12', '30 in, 60 1/8 in, 90 1/4 in', '15 1/4 in'],
  ]
  it('has figures under the end of their label, by their whole number, and words under its start', () => {
    expect(tableLines(head, body, 80)).toEqual([
      '  boards alike   marks from one end               offcut',
      '  ────────────   ───────────────────────────   ─────────',
      '             3   45 in, 90 1/8 in               5 3/4 in',
      '            12   30 in, 60 1/8 in, 90 1/4 in   15 1/4 in',
    ])
  })

  it('breaks its words where it is narrow, and is told row by row where that is not enough', () => {
    for (let columns = 24; columns <= 80; columns++) {
      const lines = tableLines(head, body, columns)
      for (const line of lines) expect(cells(line)).toBeLessThanOrEqual(columns)
      for (const figure of ['90 1/4', '15 1/4 in']) expect(lines.join('\n')).toContain(figure)
    }
    expect(tableLines(head, body, 30)[0]).toBe('  boards alike: 3')
  })
})
