// This file is about running marks: where each picket starts, measured from one end, at the nearest mark on the tape.
import type Fraction from 'fraction.js'
import type { Table } from './outcome.ts'
import { numberIn, type System } from './quantities/quantity.ts'
import { atMark, decimal, show } from './quantities/show.ts'

export interface Mark {
  readonly at: Fraction
  /** How far the mark is from the exact place: never more than half a mark. */
  readonly off: Fraction
}

/** The left edge of each picket. Inches, as all lengths are kept; one gap more than pickets. */
export function runningMarks(opening: Fraction, width: Fraction, count: Fraction, mark: Fraction): Mark[] {
  const gap = opening.sub(count.mul(width)).div(count.add(1))
  return Array.from({ length: Number(count.n) }, (_, i) => {
    const place = gap.add(gap.add(width).mul(i))
    const at = atMark({ kind: 'length', amount: place, unit: 'in' }, mark)
    return { at, off: at.sub(place) }
  })
}

export function marksTable(marks: readonly Mark[], system: System): Table {
  const unit = system === 'metric' ? 'mm' : 'in'
  return {
    title: 'Running marks: left edge of each picket, from the face of the left post',
    columns: [
      { label: 'picket', unit: '' },
      { label: `mark (${unit})`, unit },
      { label: `off by (${unit})`, unit },
    ],
    rows: marks.map(({ at, off }, i) => [
      i + 1,
      show({ kind: 'length', amount: at, unit }).replace(` ${unit}`, ''),
      decimal(numberIn({ kind: 'length', amount: off, unit }, unit), 3),
    ]),
  }
}

export const markFromOneEnd =
  'Mark every picket from one end. Stepping a spacer along adds its error up; these marks are never off by more than half a mark.'
