// This file is about bare numbers that can only be millimetres, inches behind feet that nothing counts, sticks called by their length, and shares of a post.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'

const all = (said: string): string[] =>
  readQuantities(said).map((it) => (it.quantity ? show(it.quantity) : String(it.bare?.toFraction())))

describe('quantities without their unit', () => {
  it.each([
    ['gates in a 3600 opening', ['3,600 mm']],
    ['bays 1800, how many', ['1,800 mm']],
    ['posts at 2700', ['2,700 mm']],
    ['2400 bays along 30 m', ['2,400 mm', '30 m']],
    ['900 gap, 15 in the middle', ['900 mm', '15']],
    ['palings 1500 high, 12 off the ground', ['1,500 mm', '12']],
    ['picket 1050 long, 550 in ground', ['1,050 mm', '550 mm']],
    ['it drops 1500 in 9000', ['1,500 mm', '9,000 mm']],
    ['the merchant sells 1500, 1800 and 2700', ['1,500 mm', '1,800 mm', '2,700 mm']],
    ['14500 run, 70 wide palings', ['14,500 mm', '70']],
  ] as [string, string[]][])('of 300 and more are millimetres for a part of a fence: %s', (said, expected) =>
    expect(all(said)).toEqual(expected),
  )

  it.each([
    ['400 pickets and 300 screws', ['400', '300']],
    ['my line is 350 long, posts every 8', ['350', '8']],
    ['1200 palings', ['1200']],
    ['the run is 500, bays 8 ft', ['500', '8 ft']],
    ['they have 1800 palings and 2100 screws', ['1800', '2100']],
    ['it falls 30 in 300 ft', ['30 in', '300 ft']],
  ] as [string, string[]][])('are counted, or along the whole fence: %s', (said, expected) =>
    expect(all(said)).toEqual(expected),
  )

  it.each([
    ['21 ft 9 left of the drive', ['21 ft 9 in']],
    ['at 6 ft 8 spacing', ['6 ft 8 in']],
    ['35 ft 4 overall', ['35 ft 4 in']],
    ['2 ft 6 into the ground', ['2 ft 6 in']],
    ['9 feet one side', ['9 ft']],
    ['30 ft 2 side gates', ['30 ft', '2']],
    ['40 ft 6 posts', ['40 ft', '6']],
  ] as [string, string[]][])('behind feet are inches where they count nothing: %s', (said, expected) =>
    expect(all(said)).toEqual(expected),
  )

  it.each([
    ['or in tens', ['10 ft']],
    ['and sixteens?', ['16 ft']],
    ['what about 14s', ['14 ft']],
    ['got 3000s', ['3,000 mm']],
    ['tens of posts', []],
  ] as [string, string[]][])('call sticks by their length: %s', (said, expected) => expect(all(said)).toEqual(expected))

  it.each([
    ['saw every board in half', []],
    ['cut 6 in half and 2 in quarters', ['6', '2']],
    ['2 in half-round rails', ['2 in']],
    ['a 5 in ground clearance', ['5 in']],
  ] as [string, string[]][])('“in” is no inch before parts and places: %s', (said, expected) =>
    expect(all(said)).toEqual(expected),
  )

  it.each(['1/3 in the ground', 'the 1/3 rule', '1/3 of the post', '2/3 out of the ground'])(
    'are shares of the post: %s',
    (said) => expect(all(said)).toEqual([]),
  )
})
