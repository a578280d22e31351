// Lists of values as programs and forms send them: what parts them, and which unit one without its own takes.
import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { readOne } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'
import { parseValue } from '../../../engine/words/value.ts'
import type { Word } from '../../../engine/words/word.ts'

const listed = (name: string, text: string, system: 'imperial' | 'metric' = 'imperial'): string | undefined => {
  const values = parseValue(vocabulary.get(name) as Word, text, system)
  return Array.isArray(values) ? values.map(show).join(' | ') : undefined
}

describe('a list', () => {
  it.each([
    ['openings', '60, 40, 59.7 and 39.8 ft', '60 ft | 40 ft | 59 ft 8 2/5 in | 39 ft 9 3/5 in'],
    ['openings', '60,40,30', '60 in | 40 in | 30 in'],
    ['openings', '60,40', '60 in | 40 in'],
    ['openings', ' 60,40 ', '60 in | 40 in'],
    ['openings', '60,40 ft', '60 ft 4 4/5 in'],
    ['openings', '60; 40', '60 in | 40 in'],
    ['openings', '60: 40 : 30', '60 in | 40 in | 30 in'],
    ['openings', '60\n40 ft', '60 ft | 40 ft'],
    ['openings', '60 & 40 ft', '60 ft | 40 ft'],
    ['openings', '60 ft, 40', '60 ft | 40 ft'],
    ['openings', '60 ft, 40, 300 cm, 2', '60 ft | 40 cm | 300 cm | 2 cm'],
    ['openings', '60', '60 in'],
    ['openings', '60, 40,', undefined],
    ['openings', ', 60', '60 in'],
    ['openings', '', undefined],
    ['openings', ',', undefined],
    ['openings', '60, soon', undefined],
    ['openings', '60, 40 lb', undefined],
    ['itemCounts', '3,4', '3 items | 4 items'],
    ['itemCounts', '3 and 4', '3 items | 4 items'],
    ['unitPrices', '$4,200', '$4,200.00'],
    ['unitPrices', '$4,200.50', '$4,200.50'],
    ['unitPrices', ' $4,200 ', '$4,200.00'],
    ['unitPrices', 'C$4,200', 'C$4,200.00'],
    ['unitPrices', '€1.250,50', '€1,250.50'],
    ['unitPrices', '€1,50', '€1.50'],
    ['unitPrices', '$4,20', '$4.20'],
    ['unitPrices', '$4,$20', '$4.00 | $20.00'],
    ['unitPrices', '60,40', '$60.00 | $40.00'],
  ])('%s of “%s” is %s', (word, text, shown) => expect(listed(word, text)).toBe(shown))

  it('in metres, where they are measured so', () => {
    expect(listed('pointsAcross', '0,6,-6', 'metric')).toBe('0 m | 6 m | −6 m')
  })
})

describe('one quantity and nothing else', () => {
  it.each([
    [' 5 ft ', '5 ft'],
    ['\t5 ft\n', '5 ft'],
    [' -5 ft', '−5 ft'],
    ['− 5 ft', '−5 ft'],
    ['-$5', '−$5.00'],
    ['-A$5', '−A$5.00'],
    ['-five ft', undefined],
    ['5 ft 40 lb', undefined],
    ['about', undefined],
    ['', undefined],
    ['the 5 ft', undefined],
    ['5 ft of', undefined],
    ['5 ft bags', undefined],
  ])('“%s” is %s', (text, shown) => {
    const read = readOne(text)
    expect(read?.quantity ? show(read.quantity) : undefined).toBe(shown)
  })

  it.each([
    ['23 bags', 23],
    ['23 gate posts', 23],
    ['23 oak gate posts', undefined],
    ['23 Bags', undefined],
    ['-23 bags', -23],
    ['23, bags', undefined],
  ])('“%s” counts %s', (text, count) => expect(readOne(text)?.bare?.valueOf()).toBe(count))
})
