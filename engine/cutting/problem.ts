// This file is about a cutting job: what is needed, what is sold, and what each cut takes; and the same in whole numbers.
//
//   ├trim┤███ piece ███┊kerf┊██ piece ██┊kerf┊── offcut ──┤
//
// m pieces take m − 1 cuts between them; what is left past the last is the offcut, less one cut. So they fit where
//   pieces + (m − 1) × kerf ≤ length − trim,   which is   Σ (piece + kerf) ≤ length − trim + kerf.
import Fraction from 'fraction.js'

export interface CutProblem {
  readonly pieces: readonly { readonly length: Fraction; readonly count: number }[]
  /** `price` is in whole cents, for one. Either all have one or none; without, the fewest feet are bought. */
  readonly stocks: readonly {
    readonly length: Fraction
    readonly price?: number
    /** How many there are at most; without it, as many as are wanted. */
    readonly onHand?: number
  }[]
  readonly kerf: Fraction
  /** What comes off every stick once, to square one end, the cut for it included. */
  readonly endTrim: Fraction
  /** An offcut shorter than this is waste. */
  readonly leastOffcut: Fraction
}

/** The job in whole numbers. A `kind` is a length of piece, the longest first; equal ones are one kind. */
export interface Bench {
  /** The length that one whole number stands for. */
  readonly unit: Fraction
  readonly kerf: number
  readonly lengths: readonly number[]
  /** Each with the cut beside it. */
  readonly widths: readonly number[]
  readonly demand: readonly number[]
  /** What each stock has room for: its length, less the trim, and one cut more. */
  readonly rooms: readonly number[]
  /** What one of each stock costs, in steps. */
  readonly costs: readonly number[]
  /** A step is so many cents, or so many units of length where nothing has a price. */
  readonly step: number
  readonly byPrice: boolean
  readonly limits: readonly number[]
}

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b))

// Whole numbers stay exact in a double far beyond this; a length that needs more is no measurement.
const finest = 1e9

/** The job in whole numbers, or why it is none. */
export function benchFor(problem: CutProblem): Bench | 'too fine' | { readonly tooLong: Fraction } {
  const { kerf, endTrim } = problem
  const all = [kerf, endTrim, ...problem.pieces.map((it) => it.length), ...problem.stocks.map((it) => it.length)]
  const denominator = all.reduce((least, { d }) => (least * d) / bigCommon(least, d), 1n)
  const inParts = (it: Fraction): bigint => it.s * it.n * (denominator / it.d)
  const numerator = all.reduce((common, it) => bigCommon(common, inParts(it)), 0n) || 1n
  const whole = (it: Fraction): number => Number(inParts(it) / numerator)
  if (all.some((it) => whole(it) > finest)) return 'too fine'

  const counts = new Map<number, number>()
  for (const { length, count } of problem.pieces)
    if (count > 0) counts.set(whole(length), (counts.get(whole(length)) ?? 0) + count)
  const lengths = [...counts.keys()].sort((a, b) => b - a)
  const rooms = problem.stocks.map(({ length }) => whole(length) - whole(endTrim) + whole(kerf))
  const unit = new Fraction(numerator, denominator)
  const [longest = 0] = lengths
  if (longest + whole(kerf) > Math.max(0, ...rooms)) return { tooLong: unit.mul(longest) }
  const byPrice = problem.stocks.every((it) => it.price !== undefined)
  const prices = problem.stocks.map((it) => (byPrice ? (it.price as number) : whole(it.length)))
  const step = prices.reduce(greatestCommon, 0) || 1
  return {
    unit,
    kerf: whole(kerf),
    lengths,
    widths: lengths.map((it) => it + whole(kerf)),
    demand: lengths.map((it) => counts.get(it) as number),
    rooms,
    costs: prices.map((it) => it / step),
    step,
    byPrice,
    limits: problem.stocks.map((it) => it.onHand ?? Number.POSITIVE_INFINITY),
  }
}

const bigCommon = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : bigCommon(b, a % b))
