// This file is about the tape: which mark a length is set at, and which lengths need none said.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { atNearestMark, isQuantity, type Quantity, show } from '../../../engine/index.ts'
import { about } from '../../../engine/quantities/amount.ts'
import { numberIn } from '../../../engine/quantities/quantity.ts'
import { parseValue } from '../../../engine/words/value.ts'
import { vocabulary } from '../../../engine/catalogue.ts'

const length = (text: string): Quantity => {
  const read = parseValue(vocabulary.get('opening') as never, text, 'imperial')
  if (!isQuantity(read)) throw new Error(`“${text}” is no length`)
  return read
}
const marked = (text: string): string | undefined => {
  const at = atNearestMark(length(text))
  return at && show(at)
}

describe('a length at the nearest mark of the tape', () => {
  // 21/26 in = 0.8077, 13/16 = 0.8125; 13/20 in = 0.65, 5/8 = 0.625, 11/16 = 0.6875
  it.each([
    ['88 21/26 in', '88 13/16 in'],
    ['7 ft 3 13/20 in', '7 ft 3 5/8 in'],
    ['22 ft 1/3 in', '22 ft 0 5/16 in'],
    ['28 4/17 mm', '28 mm'],
    ['2.3456 m', '2.346 m'],
  ])('%s is %s', (text, expected) => {
    expect(marked(text)).toBe(expected)
  })

  it.each(['2 3/16 in', '2 7/32 in', '8 ft', '1200 mm', '12.5 mm', '0.1 in', '2 mm'])('%s is left as it is', (text) => {
    expect(marked(text)).toBeUndefined()
  })

  it('a rounded working is read off the tape too: 1.4142 in is 1 7/16', () => {
    const at = atNearestMark({ kind: 'length', amount: about(Math.SQRT2), unit: 'in' })
    expect(at && show(at)).toBe('1 7/16 in')
  })

  it('is never more than half a mark away', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 999 }), (n, d) => {
        const q = length(`${n}/${d} in`)
        const at = atNearestMark(q)
        if (at) expect(Math.abs(numberIn(at, 'in') - n / d)).toBeLessThanOrEqual(1 / 32 + 1e-12)
      }),
    )
  })
})
