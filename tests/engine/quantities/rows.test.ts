// Pasted tables: a unit said once over its column.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { tablesIn } from '../../../engine/quantities/rows.ts'
import { show } from '../../../engine/quantities/show.ts'

const all = (text: string): string[] =>
  readQuantities(text).map((it) =>
    it.quantity ? show(it.quantity) : it.clock ? `${it.bare?.valueOf()} h` : `${it.bare?.valueOf()}`,
  )

describe('numbers under their heads', () => {
  it.each([
    ['tabs', 'time\ttemp (°F)\tRH %\n6 am\t48\t92\n7 am\t52\t88', ['6 h', '48 °F', '92 %', '7 h', '52 °F', '88 %']],
    ['spaces', 'time temp(C) humidity(%)\n06:00 8 92\n07:00 9 90', ['6 h', '8 °C', '92 %', '7 h', '9 °C', '90 %']],
    ['bars', 'post | depth (in)\n1 | 36\n2 | 42', ['1', '36 in', '2', '42 in']],
    ['its own unit before the head’s', 'a (in)  b (in)\n1  2 mm\n3  4', ['1 in', '2 mm', '3 in', '4 in']],
    ['no unit in the heads', 'time  temp  RH\n06:00  8  92\n07:00  9  90', ['6 h', '8', '92', '7 h', '9', '90']],
    ['heads that are not as many as the columns', 'temp (C)\n06:00  8\n07:00  9', ['6 h', '8', '7 h', '9']],
    ['one line alone is no table', 'a (in)  b (in)\n1  2', ['1', '2']],
  ])('%s', (_, text, expected) => expect(all(text)).toEqual(expected))

  it('a table ends where a line holds another number of quantities', () => {
    const text = '1 2\n3 4\n5 6 7\n8 9'
    expect(tablesIn(readQuantities(text), text).map(({ rows }) => rows.length)).toEqual([2])
  })
})

describe('numbers in a sum', () => {
  it.each([
    ['7/8 minus 3/16 inches', ['7/8 in', '3/16 in']],
    ['94 minus 3 1/2 minus 3 1/2 inches', ['94 in', '3 1/2 in', '3 1/2 in']],
    ['2.4 + 3.6 m', ['2.4 m', '3.6 m']],
    ['5 ft 4 plus 3 ft 9', ['5 ft 4 in', '3 ft 9 in']],
    ['57 & 58 in', ['57 in', '58 in']],
    ['posts 5 and 6 in a row', ['5', '6']],
  ])('%s', (text, expected) => expect(all(text)).toEqual(expected))
})
