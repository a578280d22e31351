import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact, isExact, type Amount } from '../../../engine/quantities/amount.ts'
import { equal, quantity } from '../../../engine/quantities/quantity.ts'
import { readOne, readQuantities } from '../../../engine/quantities/read.ts'
import type { Reading } from '../../../engine/quantities/reading.ts'
import { show } from '../../../engine/quantities/show.ts'

const fraction = (amount: Amount): string => (isExact(amount) ? amount.toFraction() : String(amount.value))

/** Every quantity as `amount unit` in the unit it was read in; a bare number alone; a section by its sizes. */
function written(reading: Reading): string {
  if (reading.section)
    return `${reading.section.name} ${show(reading.section.thickness)} × ${show(reading.section.width)}`
  if (!reading.quantity)
    return `${fraction(reading.bare as Amount)}${reading.bareHigh ? ` to ${fraction(reading.bareHigh)}` : ''}`
  return `${show(reading.quantity)}${reading.high ? ` to ${show(reading.high)}` : ''}`
}
const all = (text: string, habits = {}): string[] => readQuantities(text, habits).map(written)

// Each form is followed by what it means, exactly; compared as exact values, so the second column is itself read by `quantity`.
const lengths: [string, string | number, string][] = [
  ['93 in', 93, 'in'],
  ['93"', 93, 'in'],
  ['93 inches', 93, 'in'],
  ['93in', 93, 'in'],
  ['93 inch', 93, 'in'],
  ['93-inch', 93, 'in'],
  ['93 in.', 93, 'in'],
  ['93”', 93, 'in'],
  ["93''", 93, 'in'],
  ['93 inchs', 93, 'in'],
  ['93 inhces', 93, 'in'],
  ['7\' 10 3/8"', '755/8', 'in'],
  ['7\'10-3/8"', '755/8', 'in'],
  ['7’ 10 3/8”', '755/8', 'in'],
  ['7′10 3/8″', '755/8', 'in'],
  ['7-10 3/8', '755/8', 'in'],
  ['7 ft 10 3/8 in', '755/8', 'in'],
  ['7ft10', 94, 'in'],
  ['7 ft. 10 in.', 94, 'in'],
  ['7 feet 10 inches', 94, 'in'],
  ['7 feet, 10 inches', 94, 'in'],
  ['7 foot and 10 inches', 94, 'in'],
  ["7' 10", 94, 'in'],
  ['seven foot ten and three eighths', '755/8', 'in'],
  ['seven ten and 3/8', '755/8', 'in'],
  ['seven feet ten inches', 94, 'in'],
  ['seven foot ten', 94, 'in'],
  ['a foot and a half', 18, 'in'],
  ['foot and a half', 18, 'in'],
  ['half a foot', 6, 'in'],
  ['half an inch', '1/2', 'in'],
  ['an inch', 1, 'in'],
  ['a foot', 12, 'in'],
  ['an inch and a quarter', '5/4', 'in'],
  ['three quarters of an inch', '3/4', 'in'],
  ['three eighths of an inch', '3/8', 'in'],
  ['a quarter inch', '1/4', 'in'],
  ['a half inch', '1/2', 'in'],
  ['6 and a half feet', 78, 'in'],
  ['2 and a half inches', '5/2', 'in'],
  ['3 and three quarter inches', '15/4', 'in'],
  ["4'2", 50, 'in'],
  ['4\'2"', 50, 'in'],
  ["6'11", 83, 'in'],
  ['two and a half inches', '5/2', 'in'],
  ['two feet and a half', 30, 'in'],
  ['one and three quarter inches', '7/4', 'in'],
  ['twenty-four inches', 24, 'in'],
  ['twenty four inches', 24, 'in'],
  ['one hundred and five feet', 1260, 'in'],
  ['a hundred feet', 1200, 'in'],
  ['.25 inch', '1/4', 'in'],
  ['0.25 in', '1/4', 'in'],
  ["2.5'", 30, 'in'],
  ['3 1/2 in', '7/2', 'in'],
  ['3-1/2"', '7/2', 'in'],
  ['3½"', '7/2', 'in'],
  ['3 ½ in', '7/2', 'in'],
  ['3½ inches', '7/2', 'in'],
  ['5/8 in', '5/8', 'in'],
  ['⅝ in', '5/8', 'in'],
  ['70 5/8 in', '565/8', 'in'],
  ['3 1⁄2 in', '7/2', 'in'],
  ['2 21/104 in', '229/104', 'in'],
  ['5 and 1/2 inches', '11/2', 'in'],
  ['8 ft', 96, 'in'],
  ['8 foot', 96, 'in'],
  ['8-foot', 96, 'in'],
  ['8 footers', 96, 'in'],
  ['8 feets', 96, 'in'],
  ['6 ft.', 72, 'in'],
  ['40 yards', 1440, 'in'],
  ['2 yd', 72, 'in'],
  ['1,250 ft', 15000, 'in'],
  ['1,00,000 ft', 1200000, 'in'],
  ['1 m 80', '9/5', 'm'],
  ['1m80', '9/5', 'm'],
  ['1 m 80 cm', '9/5', 'm'],
  ['2.4 m', '12/5', 'm'],
  ['2,4 m', '12/5', 'm'],
  ['2 400 mm', 2400, 'mm'],
  ['2 400 mm', 2400, 'mm'],
  ['1,200 mm', 1200, 'mm'],
  ['1200mm', 1200, 'mm'],
  ['2.4 metres', '12/5', 'm'],
  ['2.4 meters', '12/5', 'm'],
  ['2.4 metre', '12/5', 'm'],
  ['45 cm', 45, 'cm'],
  ['45 centimetres', 45, 'cm'],
  ['28.8 mm', '144/5', 'mm'],
  ['28 4/17 mm', '480/17', 'mm'],
  ['9 millimetres', 9, 'mm'],
  ['9 milimetres', 9, 'mm'],
  ['１２ in', 12, 'in'],
  ['١٢ in', 12, 'in'],
  ['12 in', 12, 'in'],
]
const others: [string, string | number, string][] = [
  ['300 sq ft', 300, 'ft2'],
  ['300 square feet', 300, 'ft2'],
  ['300 ft2', 300, 'ft2'],
  ['300 ft²', 300, 'ft2'],
  ['300 sq. ft', 300, 'ft2'],
  ['12 m²', 12, 'm2'],
  ['12 sqm', 12, 'm2'],
  ['12 square metres', 12, 'm2'],
  ['0.45 ft3', '9/20', 'ft3'],
  ['0.45 ft³', '9/20', 'ft3'],
  ['.45 cu ft', '9/20', 'ft3'],
  ['0.45 cubic feet', '9/20', 'ft3'],
  ['0.45 cu. ft', '9/20', 'ft3'],
  ['2 cubic yards', 2, 'yd3'],
  ['half a yard of stone', '1/2', 'yd3'],
  ['2 yards of gravel', 2, 'yd3'],
  ['a yard of concrete', 1, 'yd3'],
  ['2 yd3', 2, 'yd3'],
  ['9.36 L', '234/25', 'L'],
  ['15 litres', 15, 'L'],
  ['15 liters', 15, 'L'],
  ['5 gal', 5, 'gal'],
  ['5-gallon', 5, 'gal'],
  ['5 gallons', 5, 'gal'],
  ['0.4 m3', '2/5', 'm3'],
  ['16 fl oz', 16, 'floz'],
  ['60 lb', 60, 'lb'],
  ['60-lb', 60, 'lb'],
  ['60lb', 60, 'lb'],
  ['60 lbs', 60, 'lb'],
  ['60 pounds', 60, 'lb'],
  ['80 pounders', 80, 'lb'],
  ['20 kg', 20, 'kg'],
  ['20kg', 20, 'kg'],
  ['20 kilos', 20, 'kg'],
  ['2 tons', 2, 'ton'],
  ['2 tonnes', 2, 'tonne'],
  ['1,380 lb', 1380, 'lb'],
  ['110 lb/ft3', 110, 'lb/ft3'],
  ['110 pcf', 110, 'lb/ft3'],
  ['133 1/3 lb/ft3', '400/3', 'lb/ft3'],
  ['110 lb/ft³', 110, 'lb/ft3'],
  ['1600 kg/m3', 1600, 'kg/m3'],
  ['110 pounds per cubic foot', 110, 'lb/ft3'],
  ['300 ft2/gal', 300, 'ft2/gal'],
  ['300 square feet a gallon', 300, 'ft2/gal'],
  ['300 square feet per gallon', 300, 'ft2/gal'],
  ['300 sq ft to the gallon', 300, 'ft2/gal'],
  ['8 m² a litre', 8, 'm2/L'],
  ['8 m2/L', 8, 'm2/L'],
  ['70 F', 70, 'F'],
  ['70 °F', 70, 'F'],
  ['70°F', 70, 'F'],
  ['70 degrees F', 70, 'F'],
  ['70f', 70, 'F'],
  ['1,400,000 psi', 1_400_000, 'psi'],
  ['1.4 million psi', 1_400_000, 'psi'],
  ['one million psi', 1_000_000, 'psi'],
  ['1.4e6 psi', 1_400_000, 'psi'],
  ['1500 lb/in2', 1500, 'psi'],
  ['1500 lb/in²', 1500, 'psi'],
  ['1500 pounds per square inch', 1500, 'psi'],
  ['1500 lbf/sq in', 1500, 'psi'],
  ['20 lb/ft2', 20, 'lb/ft2'],
  ['20 lb per square foot', 20, 'lb/ft2'],
  ['20 psf', 20, 'lb/ft2'],
  ['9.7 GPa', '9.7', 'GPa'],
  ['8 gpa', 8, 'GPa'],
  ['9,650 MPa', 9650, 'MPa'],
  ['10 000 N/mm²', 10_000, 'N/mm2'],
  ['10000 N/mm2', 10_000, 'N/mm2'],
  ['12 kPa', 12, 'kPa'],
  ['1.2 kN/m2', '1.2', 'kPa'],
  ['115 mph', 115, 'mph'],
  ['115 miles per hour', 115, 'mph'],
  ['115 miles an hour', 115, 'mph'],
  ['50 m/s', 50, 'm/s'],
  ['50 metres per second', 50, 'm/s'],
  ['50 meters a second', 50, 'm/s'],
  ['185 km/h', 185, 'km/h'],
  ['185 kph', 185, 'km/h'],
  ['185 kilometres per hour', 185, 'km/h'],
  ['100 knots', 100, 'knot'],
  ['100 kt', 100, 'knot'],
  ['150 psf/ft', 150, 'psf/ft'],
  ['150 psf per foot of depth', 150, 'psf/ft'],
  ['150 lb/ft2 per foot', 150, 'psf/ft'],
  ['31.4 kPa/m', '31.4', 'kPa/m'],
  ['31.4 kPa per metre', '31.4', 'kPa/m'],
  ['31.4 kN/m3', '31.4', 'kPa/m'],
  ['100 mm²', 100, 'mm2'],
  ['21 C', 21, 'C'],
  ['21°C', 21, 'C'],
  ['21 degrees celsius', 21, 'C'],
  ['-10 C', -10, 'C'],
  ['−5 °F', -5, 'F'],
  ['minus 10 °C', -10, 'C'],
  ['5 °F above dew point', 5, 'dF'],
  ['5 F warmer', 5, 'dF'],
  ['3 °C above the dew point', 3, 'dC'],
  ['9 F°', 9, 'dF'],
  ['14 %', 14, 'percent'],
  ['14%', 14, 'percent'],
  ['14 percent', 14, 'percent'],
  ['14 per cent', 14, 'percent'],
  ['14 pct', 14, 'percent'],
  ['66 2/3 %', '200/3', 'percent'],
  ['fourteen percent', 14, 'percent'],
  ['12.5 %', '25/2', 'percent'],
  ['2 days', 2, 'day'],
  ['eight months', 8, 'month'],
  ['8 mo', 8, 'month'],
  ['a year', 1, 'year'],
  ['a year and a half', '3/2', 'year'],
  ['6 weeks', 6, 'week'],
  ['48 h', 48, 'h'],
  ['48 hours', 48, 'h'],
  ['30 minutes', 30, 'min'],
  ['a week', 1, 'week'],
  ['a couple of weeks', 2, 'week'],
  ['$4.79', '479/100', 'USD'],
  ['4.79 dollars', '479/100', 'USD'],
  ['£3.50', '7/2', 'GBP'],
  ['€3,20', '16/5', 'EUR'],
  ['A$5', 5, 'AUD'],
  ['NZ$5', 5, 'NZD'],
  ['45 degree angle', 45, 'deg'],
]

describe('one quantity', () => {
  it.each([...lengths, ...others])('“%s” is %s %s', (text, amount, unit) => {
    const [only, more] = readQuantities(text)
    expect(more).toBeUndefined()
    expect(only?.quantity, `read as ${only ? written(only) : 'nothing'}`).not.toBeNull()
    const expected = quantity(amount, unit)
    expect(only?.quantity?.kind).toBe(expected.kind)
    expect(equal(only?.quantity as typeof expected, expected), `read as ${only ? written(only) : 'nothing'}`).toBe(true)
  })

  it.each([
    ['11', '11'],
    ['eleven', '11'],
    ['twenty-one', '21'],
    ['twenty one', '21'],
    ['a dozen', '12'],
    ['two dozen', '24'],
    ['half a dozen', '6'],
    ['a couple', '2'],
    ['a pair of', '2'],
    ['a hundred and five', '105'],
    ['1,250', '1250'],
    ['70 5/8', '565/8'],
    ['3 1/2', '7/2'],
  ])('“%s” is the bare number %s', (text, value) => {
    const [only] = readQuantities(text)
    expect(only && { bare: only.bare?.toFraction(), quantity: only.quantity }).toEqual({ bare: value, quantity: null })
  })

  it.each([
    ['2x4', '2x4 1 1/2 in × 3 1/2 in'],
    ['4x4', '4x4 3 1/2 in × 3 1/2 in'],
    ['4 x 4', '4x4 3 1/2 in × 3 1/2 in'],
    ['4 by 4', '4x4 3 1/2 in × 3 1/2 in'],
    ['four by four', '4x4 3 1/2 in × 3 1/2 in'],
    ['1x6', '1x6 3/4 in × 5 1/2 in'],
    ['1×4', '1x4 3/4 in × 3 1/2 in'],
    ['5/4x6', '5/4x6 1 in × 5 1/2 in'],
    ['6x6', '6x6 5 1/2 in × 5 1/2 in'],
    ['1 by 4', '1x4 3/4 in × 3 1/2 in'],
    ['70x19', '70x19 19 mm × 70 mm'],
    ['90 x 45 mm', '90x45 45 mm × 90 mm'],
    ['100x100', '100x100 100 mm × 100 mm'],
  ])('“%s” is a stick, %s', (text, section) => expect(all(text)).toEqual([section]))
})

describe('in a sentence', () => {
  it.each([
    ['6 to 8 ft', ['6 ft to 8 ft']],
    ['6-8 ft', ['6 ft to 8 ft']],
    ['between 6 and 8 ft', ['6 ft to 8 ft']],
    ['6 or 7 ft', ['6 ft to 7 ft']],
    ['10–12 %', ['10 % to 12 %']],
    ['6 ft to 8 ft', ['6 ft to 8 ft']],
    ['24 to 30 inches', ['24 in to 30 in']],
    ['27 posts 10in holes 3ft deep bags?', ['27', '10 in', '3 ft']],
    ['11 ft wide hole', ['11 ft']],
    ['12 in by 36 in', ['12 in', '36 in']],
    ['posts are 4x4, actual 3 1/2 in', ['4x4 3 1/2 in × 3 1/2 in', '3 1/2 in']],
    ['24 on center', ['24']],
    ['600 dia', ['600']],
    ['93 in the opening', ['93']],
    ['one in side 1', ['1']],
    ['put 3 in each hole', ['3']],
    ['5 in all', ['5']],
    ['3 in a row', ['3']],
    ['6 in of gravel', ['6 in']],
    ['70 5/8 in between the posts', ['70 5/8 in']],
    ['10 in holes, 24 in deep', ['10 in', '24 in']],
    ['12 in. the', ['12 in']],
    ['with a 4x4 in it', ['4x4 3 1/2 in × 3 1/2 in']],
    ['a 4 x 8 ft sheet', ['4', '8 ft']],
    ['fence 4 ft, 6 in gravel', ['4 ft', '6 in']],
    ['opening 7 feet, 10 inches wide', ['7 ft 10 in']],
    ['two gates 42 inches wide', ['2', '42 in']],
    ['one gate', ['1']],
    ['I need 20 bags of 60 lb', ['20', '60 lb']],
    ['48 h after', ['48 hours']],
    ['in 300 mm holes 600 deep on 100 mm', ['300 mm', '600', '100 mm']],
    ['7 posts, 8 ft apart', ['7', '8 ft']],
    ['20 kg bags at 9.36 L', ['20 kg', '9.36 L']],
  ] as [string, string[]][])('“%s” holds %j', (text, expected) => expect(all(text)).toEqual(expected))

  it.each([
    'one of the posts',
    'which one is it',
    'the one-third rule',
    'one another',
    'R403.1',
    'ASTM A153',
    '#8 screws',
    'the 2nd post',
    'the 3rd one',
    'in November 2026',
    'on Nov 25',
    'a slope of 1:12',
    'no 2 southern pine',
    'No. 1 grade, doug fir no 2, stamped',
    'at 10:30:15',
    'a fence around a yard',
    "isn't it",
    "the posts' tops",
    'half of the posts',
    'a third of the post',
    'a bag',
    'no gravel',
    'in the ground',
    'I am here',
    'second coat',
    'put it in',
    'foot of the post',
    'to and fro',
  ])('“%s” holds none', (text) => expect(all(text)).toEqual([]))

  it.each([
    ['at most 2 1/2 in', 'at-most'],
    ['no more than 8 ft', 'at-most'],
    ['no wider than 2 in', 'at-most'],
    ['gaps of at most 2 in', 'at-most'],
    ['2 in max', 'at-most'],
    ['max 3 in', 'at-most'],
    ['up to 8 ft', 'at-most'],
    ['12% or less', 'at-most'],
    ["don't want to go over 8 feet", 'at-most'],
    ['not over 8 ft', 'at-most'],
    ['no bigger than 20 mm', 'at-most'],
    ['at least 2 ft', 'at-least'],
    ['no less than 2 ft', 'at-least'],
    ['2 ft or more', 'at-least'],
    ['about 5 ft', 'about'],
    ['around 2 inches', 'about'],
    ['roughly 2 in', 'about'],
    ['5 ft or so', 'about'],
    ['~5 ft', 'about'],
    ['under 4 in', 'less-than'],
    ['less than 4 in', 'less-than'],
    ['over 4 ft', 'more-than'],
    ['more than 4 ft', 'more-than'],
    ['4 ft above ground', 'exactly'],
    ['just 4 ft', 'exactly'],
  ])('“%s” is said %s', (text, firmness) => expect(readQuantities(text)[0]?.firmness).toBe(firmness))

  it('offsets are those of the message as typed', () => {
    const message = '　holes are １２ in wide – and 3½″ posts'
    for (const reading of readQuantities(message)) expect(message.slice(reading.start, reading.end)).toBe(reading.said)
    expect(all(message)).toEqual(['12 in', '3 1/2 in'])
  })

  it('metric habits read a cube as a cubic metre and degrees as °C; with no habits both scales are offered', () => {
    expect(all('2 cube of gravel', { system: 'metric' })).toEqual(['2 m³'])
    expect(all('20 degrees', { system: 'metric' })).toEqual(['20 °C'])
    expect(readQuantities('70 degrees')[0]?.rivals.map(show)).toEqual(['70 °C', '70°'])
  })

  it('a temperature below nought keeps its sign, and a dash between two numbers is none', () => {
    expect(all('it is -5 C here')).toEqual(['−5 °C'])
    expect(all('tonight (-4C), tomorrow minus 2 °C')).toEqual(['−4 °C', '−2 °C'])
    expect(all('5 °C below zero')).toEqual(['−5 °C'])
    // 32 − 3 = 29
    expect(all('3 degrees F below freezing')).toEqual(['29 °F'])
    expect(all('5 °F below dew point')).toEqual(['5 °F difference'])
    expect(all('70 F - 50 F')).toEqual(['70 °F', '50 °F'])
  })

  it('a pound is a weight, and only over a square foot or inch a pressure', () => {
    expect(all('60 lb bags, a 200 lb person')).toEqual(['60 lb', '200 lb'])
    expect(all('80 lb a bag, 2 lb/ft of pickets')).toEqual(['80 lb', '2 lb/ft'])
    expect(all('35 lb/ft3 and 35 lb/ft2')).toEqual(['35 lb/ft³', '35 lb/ft²'])
  })

  it('minutes and hours by the piece or the day are read as times, and “a day” as none', () => {
    expect(all('40 min a hole')).toEqual(['40 minutes'])
    expect(all('dig 6 hours a day')).toEqual(['6 hours'])
    expect(all('gaps 2 in min')).toEqual(['2 in'])
  })
})

describe('laws', () => {
  const inches = fc.integer({ min: 1, max: 16 * 600 })
  it('a length in sixteenths reads back from every style it is written in', () => {
    fc.assert(
      fc.property(inches, (sixteenths) => {
        const expected = quantity(exact(sixteenths).div(16), 'in')
        const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16]
        const part = rest === 0 ? '' : exact(rest).div(16).toFraction()
        const mixed = part === '' ? String(whole) : whole === 0 ? part : `${whole} ${part}`
        const hyphened = mixed.replace(' ', '-')
        const [feet, over] = [Math.floor(whole / 12), whole % 12]
        const overMixed = part === '' ? String(over) : over === 0 ? part : `${over} ${part}`
        for (const text of [
          `${mixed} in`,
          `${mixed}"`,
          `${hyphened} inches`,
          `${sixteenths / 16} in`,
          `${feet} ft ${overMixed} in`,
          `${feet}' ${overMixed}"`,
          show(expected),
          show({ ...expected, unit: 'ft' }),
        ]) {
          const q = readOne(text)?.quantity
          expect(q && equal(q, expected), text).toBe(true)
        }
      }),
      { numRuns: 600, seed: 1 },
    )
  })

  it('what is shown reads back as the same quantity, in every unit', () => {
    const units = [
      'in',
      'ft',
      'mm',
      'cm',
      'm',
      'in2',
      'ft2',
      'mm2',
      'cm2',
      'm2',
      'ft3',
      'yd3',
      'L',
      'm3',
      'gal',
      'lb',
      'kg',
      'lb/ft3',
      'kg/m3',
      'psi',
      'lb/ft2',
      'kPa',
      'MPa',
      'N/mm2',
      'GPa',
      'psf/ft',
      'kPa/m',
      'mph',
      'km/h',
      'm/s',
      'knot',
      'ft2/gal',
      'm2/L',
      'percent',
      'F',
      'C',
      'dF',
      'day',
      'week',
      'month',
      'year',
      'h',
      'min',
      'ton',
      'tonne',
      'USD',
      'GBP',
    ]
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.integer({ min: 1, max: 50_000 }),
        fc.constantFrom(1, 2, 4, 5, 8, 10, 16),
        (unit, top, bottom) => {
          const q = quantity(exact(top).div(unit === 'USD' || unit === 'GBP' ? 1 : bottom), unit)
          const text = show(q)
          const back = readOne(text)
          expect(
            back?.quantity && equal(back.quantity, q),
            `${text} → ${back?.quantity ? show(back.quantity) : 'nothing'}`,
          ).toBe(true)
        },
      ),
      { numRuns: 2000, seed: 2 },
    )
  })

  it('hostile messages are read to their end', () => {
    for (const text of [
      '9'.repeat(100_000),
      '1 '.repeat(50_000),
      '1/'.repeat(50_000),
      'a and a half '.repeat(8_000),
      '1-'.repeat(50_000),
      '3 to '.repeat(20_000),
      "'".repeat(100_000),
      'twenty '.repeat(15_000),
      '.'.repeat(100_000),
      '1,'.repeat(50_000),
      '½'.repeat(50_000),
    ]) {
      const readings = readQuantities(text)
      expect(Array.isArray(readings)).toBe(true)
    }
  })
})

describe('in a row', () => {
  const row = (text: string): string[] =>
    readQuantities(text).map((it) => (it.quantity ? show(it.quantity) : String(it.bare)))

  it('three or more bare numbers have the unit of the last', () => {
    expect(row('sides 60, 40, 59.7 and 39.8 ft')).toEqual(['60 ft', '40 ft', '59 ft 8 2/5 in', '39 ft 9 3/5 in'])
    expect(row('readings of 100, 150; 230, and 310 mm')).toEqual(['100 mm', '150 mm', '230 mm', '310 mm'])
  })

  it('two numbers keep to themselves: "4, 60 lb bags" are four bags', () => {
    expect(row('I have 4, 60 lb bags')).toEqual(['4', '60 lb'])
    expect(row('12 posts, 3 gates, 10 in holes')).toEqual(['12', '3', '10 in'])
  })
})

describe('feet with a number behind them and no inch mark', () => {
  it.each([
    ['fence is 5 foot 8 high, frost 3 ft 4.', ['5 ft 8 in', '3 ft 4 in']],
    ['opening is 7 foot 8 wide, 3 1/2 in pickets', ['7 ft 8 in', '3 1/2 in']],
    ['a 6 ft 3 opening', ['6 ft 3 in']],
    ['hole 3 ft 6 deep and 12 in wide', ['3 ft 6 in', '12 in']],
    ['4 ft each way and 5 ft 2 across', ['4 ft', '5 ft 2 in']],
    ['boards of 6 ft 8 and 10 ft', ['6 ft 8 in', '10 ft']],
    ["openings 7'2, 7'4 and 6'11", ['7 ft 2 in', '7 ft 4 in', '6 ft 11 in']],
    ['opening one metre eighty, 70mm pickets', ['1.8 m', '70 mm']],
  ])('%s', (text, expected) => expect(all(text)).toEqual(expected))

  it('a stick said to be full size measures what it is called', () => {
    expect(all('posts are rough sawn 6x6')).toEqual(['6x6 6 in × 6 in'])
    expect(all('a 4x4 post')).toEqual(['4x4 3 1/2 in × 3 1/2 in'])
  })

  it('what counts something is no inches', () => {
    expect(all('run of 40 ft 6 posts')).toEqual(['40 ft', '6'])
    expect(all('8 foot 4x4 posts')).toEqual(['8 ft', '4x4 3 1/2 in × 3 1/2 in'])
    expect(all('a 6 ft 2 rail fence')).toEqual(['6 ft', '2'])
    expect(all('fence 4 ft 6 in of gravel')).toEqual(['4 ft', '6 in'])
    expect(all('10 ft 12 wide')).toEqual(['10 ft', '12'])
  })
})

describe('numbers as they are said aloud', () => {
  it.each([
    ['bags make point six cubic feet', ['0.6 ft³']],
    ['zero point six', ['3/5']],
    ['nought point four five', ['9/20']],
    ['one point two five', ['5/4']],
    ['point forty five', ['9/20']],
    ['at that point six posts stood', ['6']],
    ['15 and half, 30 and quarter', ['31/2', '121/4']],
    ['12 hundred and 3 thousand', ['1200', '3000']],
    ['2 hundred feet', ['200 ft']],
    ['it drops 4 ft 2 over 56 ft', ['4 ft 2 in', '56 ft']],
  ])('%s', (text, expected) => {
    expect(all(text)).toEqual(expected)
  })
})

describe('units that are also something else', () => {
  it.each([
    // A US gallon is 4 quarts, an imperial one 277.42 cubic inches (from memory).
    ['3 quarts of water', ['3 qt']],
    // Fourteen pounds to a stone (from memory).
    ['he weighs 13 stone', ['13 stone']],
    ['gravel weighs more, so 6 stone blocks', ['6']],
    ['12 stone under the posts', ['12']],
    ['a gate takes 90 min', ['90 minutes']],
    ['90 min', ['90 minutes']],
    ['depth 600 min', ['600']],
  ])('%s', (text, expected) => {
    expect(all(text)).toEqual(expected)
  })

  it('stand for as much as they should', () => {
    expect(equal(readOne('4 qt')?.quantity as never, quantity(1, 'gal'))).toBe(true)
    expect(equal(readOne('13 stone')?.quantity as never, quantity(182, 'lb'))).toBe(true)
    expect(equal(readOne('2 UK gal')?.quantity as never, quantity(2, 'galUK'))).toBe(true)
  })
})
