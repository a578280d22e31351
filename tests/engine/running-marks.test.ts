// Running marks: each place worked by itself in exact fractions, and the table that shows them.
import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { evenMarks, marksTable, runningMarks } from '../../engine/running-marks.ts'

const fraction = (most: number) =>
  fc
    .tuple(fc.integer({ min: -most, max: most }), fc.constantFrom(1, 2, 3, 7, 8, 16, 127))
    .map(([top, bottom]) => new Fraction(top, bottom))

describe('marks', () => {
  it('stand at the nearest mark of the tape, half a mark up, before nought too', () => {
    fc.assert(
      fc.property(
        fraction(400),
        fraction(90),
        fc.integer({ min: 0, max: 12 }),
        fc.constantFrom('1/16', '1/8', '5/127', '1'),
        (first, pitch, count, tick) => {
          const mark = new Fraction(tick)
          const marks = evenMarks(first, pitch, new Fraction(count), mark)
          expect(marks.length).toBe(count)
          for (const [i, { at, off }] of marks.entries()) {
            const place = first.add(pitch.mul(i))
            const nearest = place.div(mark).add(new Fraction(1, 2)).floor().mul(mark)
            expect([at.toFraction(), off.toFraction()]).toEqual([nearest.toFraction(), nearest.sub(place).toFraction()])
          }
        },
      ),
      { seed: 20_261_128, numRuns: 200 },
    )
  })

  // 93 in, 15 pickets of 3 1/2 in: 40 1/2 in over 16 gaps are 2 17/32 in each; a picket every 6 1/32 in.
  it('of an opening begin a gap from the post', () => {
    const marks = runningMarks(new Fraction(93), new Fraction('7/2'), new Fraction(15), new Fraction('1/16'))
    expect(marks.slice(0, 3).map((it) => it.at.toFraction(true))).toEqual(['2 9/16', '8 9/16', '14 5/8'])
    expect(marks[0]?.off.toFraction()).toBe('1/32')
    expect(marks.at(-1)?.at.toFraction(true)).toBe('87')
  })
})

describe('the table of marks', () => {
  const marks = (count: number) =>
    evenMarks(new Fraction(2), new Fraction('25/4'), new Fraction(count), new Fraction('1/8'))

  it('has a row for each of 500, and only the first and last 20 of more', () => {
    expect(marksTable(marks(500), 'imperial').rows.length).toBe(500)
    expect(marksTable(marks(500), 'imperial').title).toBe(
      'Running marks: left edge of each picket, from the face of the left post',
    )
    const long = marksTable(marks(501), 'imperial', 'the wall')
    expect(long.rows.map(([picket]) => picket)).toEqual([
      ...Array.from({ length: 20 }, (_, i) => i + 1),
      ...Array.from({ length: 20 }, (_, i) => 482 + i),
    ])
    expect(long.title).toBe(
      'Running marks: left edge of each picket, from the wall (the first and the last; the rest follow the same step)',
    )
  })

  it('is in inches or in millimetres, with how far off each mark is', () => {
    const marks = evenMarks(new Fraction('33/16'), new Fraction(6), new Fraction(2), new Fraction('1/8'))
    expect(marksTable(marks, 'imperial')).toMatchObject({
      columns: [{ label: 'picket' }, { label: 'mark (in)', unit: 'in' }, { label: 'off by (in)', unit: 'in' }],
      rows: [
        [1, '2 1/8', '0.063'],
        [2, '8 1/8', '0.063'],
      ],
    })
    // 1 mm is 5/127 in: 50 and 202.4 mm.
    const metric = evenMarks(new Fraction('250/127'), new Fraction(6), new Fraction(2), new Fraction('5/127'))
    expect(marksTable(metric, 'metric')).toMatchObject({
      columns: [{ label: 'picket' }, { label: 'mark (mm)' }, { label: 'off by (mm)' }],
      rows: [
        [1, '50', '0'],
        [2, '202', '−0.4'],
      ],
    })
  })
})
