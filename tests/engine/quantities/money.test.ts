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
    // Where these are paid a point or a space parts the thousands, and a comma the cents.
    ['1.480 €', '€1,480.00', 'EUR'],
    ['€2.500', '€2,500.00', 'EUR'],
    ['1.250,00 €', '€1,250.00', 'EUR'],
    ['18,50 €', '€18.50', 'EUR'],
    ['€5,200', '€5,200.00', 'EUR'],
    ['1.250.000 €', '€1,250,000.00', 'EUR'],
    ['1 250 Kč', '1,250.00 Kč', 'CZK'],
    ['89 Kč', '89.00 Kč', 'CZK'],
    ['12 500,50 zł', '12,500.50 zł', 'PLN'],
    ['1.250,- kr', '1,250.00 kr', 'kr'],
    ['kr 89,90', '89.90 kr', 'kr'],
    ['£1,250', '£1,250.00', 'GBP'],
    ['5.98$', '$5.98', 'USD'],
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
    // The sign belongs to what it is glued to.
    ['12 $5 packs', ['12', '$5.00']],
    ['160 pickets at 2.85', ['160', '2.85']],
    ['12 bags @ 5.98 each', ['12', '5.98']],
    // A spacing, and no price.
    ['10 posts at 2.40', ['10', '12/5']],
    ['pickets at 2.5 in', ['2 1/2 in']],
    // A 50 lb bag, and five US gallons: no pound sterling, no dollar.
    ['a 50 pound bag', ['50 lb']],
    ['5 US gallons', ['5 gal']],
  ])('in “%s” stand %j', (text, expected) => {
    const found = readQuantities(text).map((it) => (it.quantity ? show(it.quantity) : it.bare?.toFraction()))
    expect(found.slice(0, expected.length)).toEqual(expected)
  })
})

describe('what may be read in two ways', () => {
  const ways = (text: string): string[] => {
    const [only] = readQuantities(text)
    return [only?.quantity, ...(only?.rivals ?? [])].flatMap((it) => (it ? [show(it)] : []))
  }
  it.each([
    // Nobody writes a tenth of a cent as a nought: it may be a thousand.
    ['$1.480', ['$1.48', '$1,480.00']],
    ['£1.250', ['£1.25', '£1,250.00']],
    // The price of fuel, and nothing else.
    ['$3.459', ['$3.459']],
    ['1.480 €', ['€1,480.00']],
    ['$1,480', ['$1,480.00']],
  ])('%s: %j', (text, expected) => expect(ways(text)).toEqual(expected))
})

describe('the price of a measure', () => {
  const per = (text: string): string | undefined => readQuantities(text).find((it) => it.per)?.per
  it.each([
    ['28 dollars a foot', 'ft'],
    ['$28/ft', 'ft'],
    ['$31 per linear foot', 'ft'],
    ['42 € per m²', 'm2'],
    ['£38 by the yard', 'yd'],
    ['$1.20 a board foot', 'board foot'],
    ['$85 a day', undefined],
    ['$5 a bag', undefined],
  ])('%s is for one %s', (text, expected) => expect(per(text)).toBe(expected))

  it.each([
    // 1450 / 1000
    ['$1450 per thousand board feet', '$1.45'],
    ['$847/MBF', '$0.847'],
    ['$1,450.00 per 1,000 board feet', '$1.45'],
  ])('%s is %s for one', (text, shown) => {
    const [only, more] = readQuantities(text)
    expect(more).toBeUndefined()
    expect([only?.per, only?.quantity && show(only.quantity)]).toEqual(['board foot', shown])
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
