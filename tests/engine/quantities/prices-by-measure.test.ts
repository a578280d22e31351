// Money said without its sign, where a talk of money makes it plain; and yards that are cubic ones.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'

const read = (text: string): string[] =>
  readQuantities(text, {}).map(
    (it) => `${it.quantity ? show(it.quantity) : `${it.bare}`}${it.per ? ` a ${it.per}` : ''}`,
  )

describe('prices by the measure', () => {
  it.each([
    ['it works out at 17 a foot, how much', ['17.00 a ft']],
    ['they charge 40 per cubic yard', ['40.00 a yd3']],
    ['stone costs 33 a cube', ['33.00 a m3']],
    // Nothing is said of money.
    ['screws 8 a foot', ['8', '1 ft']],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected))
})

describe('rates of tax', () => {
  it.each([
    ['6.5 tax', ['6.5 %']],
    ['plus vat at 20', ['20 %']],
    ['gst is fifteen', ['15 %']],
    // An amount that holds it, and none that is larger than any rate.
    ['14 tax included', ['14']],
    ['the tax is 45', ['45']],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected))
})

describe('yards of stuff', () => {
  it.each([
    ['is that a yard?', ['1 yd³']],
    ['is it more than a ton', ['1 ton']],
    ['is that over half a yard', ['0.5 yd³']],
    ['60 a yd with a 2 yd minimum, what does a truck cost', ['60.00 a yd', '2 yd³']],
    // Nobody speaks of stuff here.
    ['is the fence a yard tall', []],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected))
})
