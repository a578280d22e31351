// The hour of the clock in a message. Twelve at noon is 12 pm and at midnight 12 am: NIST, "Times of Day FAQs", says both are best avoided; read here as most clocks show them.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'

const hours = (text: string): (number | undefined)[] =>
  readQuantities(text)
    .filter((it) => it.clock)
    .map((it) => it.bare?.valueOf())

describe('hours of the clock', () => {
  it.each([
    ['8 am', 8],
    ['8am', 8],
    ['8 a.m.', 8],
    ['8 p.m. sharp', 20],
    ['12 pm', 12],
    ['12 am', 0],
    ['7:30 pm', 19.5],
    ['18:00', 18],
    // A slope of 1:30 is none; but what falls due may well be at half past one.
    ['the delivery is at 1:30', 1.5],
    ['06:45', 6.75],
    ["7 o'clock in the evening", 19],
    ['7 in the morning', 7],
    ['9 at night', 21],
    ['12 at night', 0],
    ['2 at night', 2],
  ])('“%s” is %d hours from midnight', (text, expected) => expect(hours(text)).toEqual([expected]))

  it.each([
    'slope 1:12',
    'scale 1:20',
    'mix 1:2:3',
    '13 pm',
    '12 in the evening',
    '0 am',
    'at 10:30:15',
    '25:00',
    '8 amps',
    '10 in the ground',
  ])('“%s” tells none', (text) => expect(hours(text)).toEqual([]))

  it('from one to another is two hours, and no quantity of anything else', () => {
    expect(readQuantities('from 8 am to 6 pm').map((it) => [it.clock, it.bare?.valueOf(), it.quantity])).toEqual([
      [true, 8, null],
      [true, 18, null],
    ])
  })
})
