import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cells, harmless, wrap, wrapSum } from '../../../src/cli/lines.ts'

describe('wrap', () => {
  it('breaks between words, hangs what follows, and tears no figure from its fraction or its unit', () => {
    expect(wrap('  - a gap no wider than 2 1/2 in, please', 24, '    ')).toEqual([
      '  - a gap no wider than',
      '    2 1/2 in, please',
    ])
    expect(wrap('at most 51 lb (23 kg)', 18)).toEqual(['at most 51 lb', '(23 kg)'])
  })

  it('breaks inside a word only where the word is longer than a line, after a stroke where it has one', () => {
    expect(wrap('see https://example.org/brick-sizes/modular now', 24)).toEqual([
      'see',
      'https://example.org/',
      'brick-sizes/modular now',
    ])
    expect(wrap('x'.repeat(25), 10)).toEqual(['x'.repeat(10), 'x'.repeat(10), 'x'.repeat(5)])
  })

  it('counts what is wide twice, and what is bold not at all', () => {
    expect(cells('漢字 é')).toBe(6)
    expect(cells('\u001b[1mbold\u001b[22m')).toBe(4)
    expect(wrap('漢字 漢字', 5)).toEqual(['漢字', '漢字'])
  })

  it('is never wider than it may be, and loses no sign', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 300, unit: 'grapheme' }),
        fc.integer({ min: 12, max: 80 }),
        (text, columns) => {
          const lines = wrap(harmless(text), columns, '  ')
          for (const line of lines) expect(cells(line)).toBeLessThanOrEqual(columns)
          expect(lines.join('').replace(/\s/g, '')).toBe(harmless(text).replace(/\s/g, ''))
        },
      ),
    )
  })
})

describe('wrapSum', () => {
  it('breaks before a plus and not inside a bracket', () => {
    expect(wrapSum('  inAll = (holeSection - postWidth ^ 2) * height + holeSection * under', 56, '    ')).toEqual([
      '  inAll = (holeSection - postWidth ^ 2) * height',
      '    + holeSection * under',
    ])
  })

  it('is never wider than it may be where it can be broken, and loses no sign', () => {
    const sum = '= (78.54 in² − (3 1/2 in)²) × 30 in + 78.54 in² × (0 in + 12 in) − 5 × (1 + 10 %)'
    for (let columns = 24; columns < 100; columns++) {
      const lines = wrapSum(sum, columns, '  ')
      for (const line of lines) expect(cells(line)).toBeLessThanOrEqual(columns)
      expect(lines.join('').replace(/\s/g, '')).toBe(sum.replace(/\s/g, ''))
    }
  })
})

it('harmless text moves no cursor, changes no colour and turns no line round', () => {
  expect(harmless('a\u001b[31m\r\u0007\u009b2Jb\u202ec\n')).toBe('a[31m2Jbc\n')
})
