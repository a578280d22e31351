// This file is about running marks: where each picket starts, measured from one end, at the nearest mark on the tape.
import Fraction from 'fraction.js'
import type { Table } from './outcome.ts'
import { numberIn, type System } from './quantities/quantity.ts'
import { decimal, show } from './quantities/show.ts'

export interface Mark {
  readonly at: Fraction
  /** How far the mark is from the exact place: never more than half a mark. */
  readonly off: Fraction
}

/** The left edge of each picket, with a gap against both posts. Inches, as all lengths are kept; one gap more than pickets. */
export function runningMarks(opening: Fraction, width: Fraction, count: Fraction, mark: Fraction): Mark[] {
  const gap = opening.sub(count.mul(width)).div(count.add(1))
  return evenMarks(gap, gap.add(width), count, mark)
}

/** Marks a pitch apart, from the first one on, each at the nearest mark on the tape. All in inches. */
export function evenMarks(first: Fraction, pitch: Fraction, count: Fraction, mark: Fraction): Mark[] {
  // All places stand over one common denominator, so that ten thousand pickets are whole numbers and no fractions.
  const whole = first.d * pitch.d * mark.d
  const [start, step, tick] = [first, pitch, mark].map((it) => (it.s * it.n * whole) / it.d) as [bigint, bigint, bigint]
  return Array.from({ length: Number(count.n) }, (_, i) => {
    const place = start + step * BigInt(i)
    const at = floorOver(2n * place + tick, 2n * tick) * tick
    return { at: new Fraction(at, whole), off: new Fraction(at - place, whole) }
  })
}

const floorOver = (a: bigint, b: bigint): bigint => (a >= 0n ? a / b : -((-a + b - 1n) / b))

/** A bay may hold at most so many pickets: more are a slip of the unit, or several bays at once. */
export const mostPickets = new Fraction(20_000)

// A table longer than this is read by nobody: its beginning and its end stand for it.
const longestTable = 500
const shownAtEnds = 20

export function marksTable(marks: readonly Mark[], system: System, from = 'the face of the left post'): Table {
  const unit = system === 'metric' ? 'mm' : 'in'
  return {
    title: `Running marks: left edge of each picket, from ${from}${marks.length > longestTable ? ' (the first and the last; the rest follow the same step)' : ''}`,
    columns: [
      { label: 'picket', unit: '' },
      { label: `mark (${unit})`, unit },
      { label: `off by (${unit})`, unit },
    ],
    rows: marks
      .map((mark, i) => [mark, i] as const)
      .filter(([, i]) => marks.length <= longestTable || i < shownAtEnds || i >= marks.length - shownAtEnds)
      .map(([{ at, off }, i]) => [
        i + 1,
        show({ kind: 'length', amount: at, unit }).replace(` ${unit}`, ''),
        decimal(numberIn({ kind: 'length', amount: off, unit }, unit), 3),
      ]),
  }
}

export const markFromOneEnd =
  'Mark every picket from one end. Stepping a spacer along adds its error up; these marks are never off by more than half a mark.'
