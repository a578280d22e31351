// Quantities within messages: all that is read of each, in order, worked out by hand. What stands close to a quantity and is none is left alone.
import { describe, expect, it } from 'vitest'
import { isExact, squareRoot, exact, toNumber, power, over, times, about } from '../../../engine/quantities/amount.ts'
import { readQuantities } from '../../../engine/quantities/read.ts'
import type { Reading } from '../../../engine/quantities/reading.ts'
import { show } from '../../../engine/quantities/show.ts'

const inShort = (it: Reading): string => {
  if (it.section) return it.section.name
  const [low, high] = it.quantity
    ? [show(it.quantity), it.high && show(it.high)]
    : [it.bare?.toFraction(true), it.bareHigh?.toFraction(true)]
  const firm = it.firmness === 'exactly' || it.firmness === 'range' ? '' : `${it.firmness} `
  return `${firm}${low}${high ? ` .. ${high}` : ''}`
}

describe('in a message', () => {
  it.each<[string, readonly string[]]>([
    // How far a can goes: only where the can leads up to the area, and only in its own system.
    ['a gallon does 300 sq ft', ['1 gal', '300 ft²/gal']],
    ['one litre covers about 12 m²', ['1 L', 'about 12 m²/L']],
    ['a gallon will do up to 350 sq ft', ['1 gal', 'at-most 350 ft²/gal']],
    ['a gallon for 300 sq ft', ['1 gal', '300 ft²']],
    ['the fence covers 300 sq ft', ['300 ft²']],
    ['a gallon of red stain does 300 sq ft', ['1 gal', '300 ft²']],
    ['a litre does 300 sq ft', ['1 L', '300 ft²']],
    // Names of nails, wire, codes and grades.
    ['3 in of 16d nails', ['3 in']],
    ['10-penny nails, 3 in long', ['3 in']],
    ['9 gauge wire, 4 ft high', ['4 ft']],
    ['12 ga mesh', []],
    ['16 d nails', ['16']],
    ['7 penny nails', ['7']],
    ['120 gauge', ['120']],
    ['M10 bolts, 6 in long', ['6 in']],
    ['code R403 says 36 in', ['36 in']],
    ['No. 2 pine, 4 ft', ['4 ft']],
    ['12 yd² in m2', ['12 yd²']],
    ['3 ft2 of it', ['3 ft²']],
    // Feet with their inches, and what only stands beside them.
    ['7 feet, 10 inches wide', ['7 ft 10 in']],
    ['7 feet, 10 inches.', ['7 ft 10 in']],
    ['fence 4 ft, 6 in of gravel', ['4 ft', '6 in']],
    ['3 in and 1/2', ['3 1/2 in']],
    ['3 in and 1/2 in', ['3 in', '1/2 in']],
    ['3 in & 1/2', ['3 1/2 in']],
    ['5 foot 8 high', ['5 ft 8 in']],
    ['40 ft 6 posts', ['40 ft', '6']],
    // Metres with their centimetres, hours with their minutes.
    ['1 m 80', ['1.8 m']],
    ['1m805', ['1.805 m']],
    ['two metres and 40 cm', ['2.4 m']],
    ['rails 2 m and 40 cm', ['2 m', '40 cm']],
    ['2h45', ['2.75 hours']],
    ['2 h 45 min', ['2.75 hours']],
    ['2 hours and forty-five minutes', ['2.75 hours']],
    ['2 hours and 20 pickets', ['2 hours', '20']],
    ['8 h 20 pickets', ['8 hours', '20']],
    // Prices.
    ['4 dollars and 79 cents', ['$4.79']],
    ['three euros twenty each', ['€3.20']],
    ['three euros twenty posts', ['€3.00', '20']],
    ['4 dollars 79', ['$4.79']],
    ['4.50 dollars 20 posts', ['$4.50', '20']],
    ['4.50 dollars 20', ['$4.50', '20']],
    ['20 new zealand dollars', ['NZ$20.00']],
    ['20 new dollars', ['20']],
    ['£3 50p', ['£3.50']],
    ['50p each', ['£0.50']],
    ['50 p each', ['50']],
    ['79c each', ['$0.79']],
    // Money without its currency has its cents; a plain number is a fraction.
    ['160 pickets at 2.85', ['160', '2.85']],
    ['12 bags @ 5.98 each', ['12', '5.98']],
    ['bags at 6 each', ['6.00']],
    ['bags at 6 a bag', ['6.00']],
    ['bags at 6 a week', ['6', '1 week']],
    ['posts at 8', ['8']],
    ['7 posts at 8.50', ['7', '8 1/2']],
    ['7 posts at 8.50 apiece', ['7', '8.50']],
    ['pickets at 3 in', ['3 in']],
    // Powers of ten and large numbers in words.
    ['2.5k of it', ['2500']],
    ['1e3 of it', ['1000']],
    ['one hundred and twenty inches', ['120 in']],
    ['a hundred and the rest', ['100']],
    ['two thousand and five', ['2005']],
    // Firm and not so firm.
    ['max. 5 ft', ['at-most 5 ft']],
    ['min. 5 ft', ['at-least 5 ft']],
    ['8 ft max. 5 posts', ['at-most 8 ft', '5']],
    ['< 5 ft', ['less-than 5 ft']],
    ['> 5 ft', ['more-than 5 ft']],
    // Ranges.
    ['6 to 8 ft', ['6 ft .. 8 ft']],
    ['8 to 6 ft', ['8 ft', '6 ft']],
    ['from 40 °F to 50 °F', ['40 °F', '50 °F']],
    ['6 ft to 8 lb', ['6 ft', '8 lb']],
    // Shares and single ones.
    ['half of that 94', ['1/2', '94']],
    ['a third of 94', ['1/3', '94']],
    ['a third of the post', []],
    ['five eighths', ['5/8']],
    ['one of the posts', []],
    ['which one', []],
    ['that one is 3 ft', ['3 ft']],
    // Thousands in groups of three.
    ['2 400 mm', ['2,400 mm']],
    ['2 40 mm', ['2', '40 mm']],
    ['rails 2 400 posts', ['2', '400']],
    // Sticks, and what is too big to be one.
    ['2x6 rails', ['2x6']],
    ['an 8x10 shed', ['8', '10']],
    ['6x4 posts', ['6', '4']],
    // A moment and its two ways of writing.
    ['120 ft-lb', ['120 lbf-ft']],
    ['120 foot-pounds', ['120 lbf-ft']],
    ['120 Nm', ['120 N-m']],
    ['2.5 t of stone', ['2.5 tonnes']],
    ['4 t hinges', ['4']],
    // Dates with and without their parts.
    ['on 3 June 2026', ['Wednesday 3 June 2026']],
    ['on Wed, 3 June 2026', ['Wednesday 3 June 2026']],
    ['Wednesday the 3rd of June 2026', ['Wednesday 3 June 2026']],
    ['3 and 5 June 2026', ['Wednesday 3 June 2026', 'Friday 5 June 2026']],
    ['3, and 5 June 2026', ['Wednesday 3 June 2026', 'Friday 5 June 2026']],
    ['2026-06-03', ['Wednesday 3 June 2026']],
    ['in 2026', []],
    ['in 2026 ft', ['2,026 ft']],
    ['June 2026', []],
    ['at 10:31', []],
  ])('%s', (message, expected) => {
    expect(readQuantities(message).map(inShort)).toEqual(expected)
  })
})

describe('exact numbers', () => {
  it('stay exact through products, quotients, powers, and roots of squares', () => {
    for (const [got, fraction] of [
      [times(exact('2/3'), exact('9/4')), '3/2'],
      [over(exact('2/3'), exact('4/9')), '3/2'],
      [power(exact('2/3'), 0), '1'],
      [power(exact('2/3'), 3), '8/27'],
      [squareRoot(exact('9/4')), '3/2'],
      [squareRoot(exact('0')), '0'],
      [squareRoot(exact('144')), '12'],
    ] as const) {
      expect(isExact(got)).toBe(true)
      expect(isExact(got) && got.toFraction()).toBe(fraction)
    }
  })

  it('that have no exact root carry how far off it may be', () => {
    for (const q of [squareRoot(exact('2')), squareRoot(exact('9/2')), squareRoot(about(4, 0))]) {
      expect(isExact(q)).toBe(false)
      expect(!isExact(q) && q.error > 0 && q.error < 1e-12).toBe(true)
    }
    expect(toNumber(squareRoot(exact('2')))).toBeCloseTo(Math.SQRT2, 14)
    expect(() => squareRoot(exact('-1'))).toThrow()
    expect(() => power(exact('2'), 1.5)).toThrow('only whole powers')
    expect(() => over(about(1), about(1e-20, 1))).toThrow('division by something that may be zero')
  })
})
