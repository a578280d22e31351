// What is shown can be read: no parts of 127, no degrees that look like a temperature. The exact value stays beside it.
import { describe, expect, it } from 'vitest'
import { type Quantity, quantity } from '../../../engine/quantities/quantity.ts'
import { readOne } from '../../../engine/quantities/read.ts'
import { exactText, show } from '../../../engine/quantities/show.ts'

const as = (text: string, unit: string): Quantity => ({ ...(readOne(text)?.quantity as Quantity), unit })

describe('millimetres in inches', () => {
  it.each([
    // 28 / 25.4 = 1 13/127 = 1.10236…
    ['28 mm', 'in', '1.102 in', '140/127'],
    // 2400 / 25.4 = 94 62/127 in, less 84: 10.488…
    ['2.4 m', 'ft', '7 ft 10.49 in', '1000/127'],
    // What comes out even keeps its fraction.
    ['6.35 mm', 'in', '1/4 in', '1/4'],
    ['2 3/17 in', 'in', '2 3/17 in', '37/17'],
  ])('%s in %s is %s, exactly %s', (text, unit, shown, exact) => {
    expect(show(as(text, unit))).toBe(shown)
    expect(exactText(as(text, unit))).toBe(exact)
  })
})

it.each([
  [quantity(5, 'dF'), '5 °F difference'],
  [quantity('0.5', 'dC'), '0.5 °C difference'],
  // A worked one is no finer than a tenth.
  [{ ...quantity(1, 'dC'), amount: { value: 0.9238 * 1.8, error: 1e-9 } }, '0.9 °C difference'],
])('a difference of temperatures says that it is one', (q, shown) => {
  expect(show(q)).toBe(shown)
  expect(readOne(shown)?.quantity?.kind).toBe('temperatureDifference')
})
