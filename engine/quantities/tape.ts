// This file is about the tape: the mark that stands nearest to a length.
import { tableOf } from './table-of.ts'
import Fraction from 'fraction.js'
import { isExact, roundTo, toNumber } from './amount.ts'
import type { Quantity } from './quantity.ts'
import { show } from './show.ts'

interface Tape {
  /** Inches, as all lengths are kept. */
  readonly mark: Fraction
  /** From here up half a mark is a small part of the length. */
  readonly least: number
}

const sixteenths: Tape = { mark: new Fraction(1, 16), least: 1 / 4 }
const millimetres: Tape = { mark: new Fraction(5, 127), least: 5 / 25.4 }
const tapes = tableOf<Tape>({
  in: sixteenths,
  ft: sixteenths,
  mm: millimetres,
  cm: millimetres,
  m: millimetres,
})

/**
 * The length at the nearest mark of a common tape: a sixteenth of an inch, a millimetre.
 * Nothing where it can be set by eye as it is (on a mark or halfway between two), or is so small that rounding would change what it is.
 */
export function atNearestMark(q: Quantity): Quantity | undefined {
  const tape = q.kind === 'length' ? tapes[q.unit] : undefined
  if (!tape || Math.abs(toNumber(q.amount)) < tape.least) return undefined
  if (isExact(q.amount) && q.amount.div(tape.mark).mul(2).d === 1n) return undefined
  const marked: Quantity = { ...q, amount: roundTo(q.amount, tape.mark) }
  return show(marked) === show(q) ? undefined : marked
}

/** As it is read off a tape: the nearest mark, or the length itself where it is on one. */
export const byTape = (q: Quantity): string => show(atNearestMark(q) ?? q)
