// Money as it is written and shown: exact from the first character to the last, in the person's own currency.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact } from '../../../engine/quantities/amount.ts'
import { equal, quantity } from '../../../engine/quantities/quantity.ts'
import { readOne, readQuantities } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'

describe('reading money', () => {
  it.each([
    ['$4.79', '$4.79', 'USD'],
    ['4.79 dollars', '$4.79', 'USD'],
    ['USD 4.79', '$4.79', 'USD'],
    ['$1,234.50', '$1,234.50', 'USD'],
    ['£3.50', '£3.50', 'GBP'],
    ['50p', '£0.50', 'GBP'],
    ['€3,50', '€3.50', 'EUR'],
    ['20 €', '€20.00', 'EUR'],
    ['20 euros', '€20.00', 'EUR'],
    ['C$12', 'C$12.00', 'CAD'],
    ['12 CAD', 'C$12.00', 'CAD'],
    ['CAD 12', 'C$12.00', 'CAD'],
    ['$12 CAD', 'C$12.00', 'CAD'],
    ['12 Canadian dollars', 'C$12.00', 'CAD'],
    ['A$9.95', 'A$9.95', 'AUD'],
    ['9.95 AUD', 'A$9.95', 'AUD'],
    ['NZ$5', 'NZ$5.00', 'NZD'],
    ['5 New Zealand dollars', 'NZ$5.00', 'NZD'],
    ['79 cents', '$0.79', 'USD'],
  ])('%s is %s', (text, shown, unit) => {
    const read = readOne(text)?.quantity
    expect(read && [show(read), read.unit]).toEqual([shown, unit])
  })

  it.each([
    ['12 bags at $5.98', ['12', '$5.98']],
    ['£3.50 each', ['£3.50']],
    ['60 ft at $1.85 a foot', ['60 ft', '$1.85']],
    ['2 m³ at £42 a cubic metre', ['2 m³', '£42.00']],
    ['50p a metre', ['£0.50']],
    ['$85 a day and $20 an hour', ['$85.00', '$20.00']],
    // A 50 lb bag, and five US gallons: no pound sterling, no dollar.
    ['a 50 pound bag', ['50 lb']],
    ['5 US gallons', ['5']],
  ])('in “%s” stand %j', (text, expected) => {
    const found = readQuantities(text).map((it) => (it.quantity ? show(it.quantity) : it.bare?.toFraction()))
    expect(found.slice(0, expected.length)).toEqual(expected)
  })
})

describe('showing money', () => {
  it.each([
    ['57.48', '$57.48'],
    ['5.5', '$5.50'],
    ['1234567.8', '$1,234,567.80'],
    // What ends in a few more places is shown as it is, what does not is rounded, half a cent up.
    ['0.045', '$0.045'],
    ['1.005', '$1.005'],
    ['100/3', '$33.33'],
    ['200/3', '$66.67'],
    ['0.99999', '$1.00'],
    ['-2.5', '−$2.50'],
  ])('%s dollars are %s', (amount, shown) => {
    expect(show(quantity(exact(amount), 'USD'))).toBe(shown)
  })

  it('reads back as it was shown, to the cent, in every currency', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('USD', 'CAD', 'GBP', 'AUD', 'NZD', 'EUR'),
        fc.integer({ min: 0, max: 1e9 }),
        (unit, cents) => {
          const q = quantity(exact(cents).div(100), unit)
          const back = readOne(show(q))?.quantity
          expect(back && back.unit === unit && equal(back, q), show(q)).toBe(true)
        },
      ),
      { numRuns: 1000, seed: 4 },
    )
  })
})
