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
    // A gate and a hole are no sticks; timber of 70 × 35 mm is.
    ['the leaf is 57 by 39', ['57', '39']],
    ['holes 12 by 30', ['12', '30']],
    ['rails are 70 by 35', ['70x35 35 mm × 70 mm']],
    ['it is out five eighths', ['5/8']],
    ['a sixteenth each side', ['1/16']],
    ['an eighth of the bags', []],
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
    // 12 × 14 + 6
    ['she weighs 12 stone 6 lb', ['174 lb']],
    ['11 st 3 lbs', ['157 lb']],
    ['the driver is 15 stone and the van takes 620 kg', ['15 stone', '620 kg']],
    ['14 stone in pounds', ['14 stone']],
    ['lay 12 stone in the trench', ['12']],
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
