// This file is about offcuts offered to smaller pieces: caps and blocks out of what is left of the rails, with nothing more bought.
import type { CutPlan, Stick } from './plan.ts'
import type { CutProblem } from './problem.ts'
import type Fraction from 'fraction.js'

export interface Offered {
  /** How many there are in all, of how many that were asked for. */
  readonly fit: number
  readonly wanted: number
  /** What comes from which offcut: the pieces, and from how many sticks alike. */
  readonly from: readonly { readonly stick: Stick; readonly pieces: readonly Fraction[]; readonly times: number }[]
}

/** As many of the smaller pieces as plain packing gets out of the offcuts: where not all go in, the shortest go first, since most of them do. */
export function offered(problem: CutProblem, plan: CutPlan, smaller: CutProblem['pieces']): Offered {
  const wanted = smaller.flatMap(({ length, count }) => Array.from({ length: count }, () => length))
  wanted.sort((a, b) => a.compare(b))
  const { kerf } = problem
  const offcuts = plan.sticks.flatMap((stick) => Array.from({ length: stick.times }, () => stick))
  offcuts.sort((a, b) => a.offcut.compare(b.offcut))
  let fit = wanted.length
  let packed = packedInto(offcuts, wanted, kerf)
  // Halving finds the greatest number of the shortest that go in; a packing that fails at one number does not succeed at a greater, or hardly.
  let [low, high] = [0, fit]
  if (!packed) {
    while (high - low > 1) {
      const middle = (low + high) >> 1
      const tried = packedInto(offcuts, wanted.slice(0, middle), kerf)
      if (tried) [low, packed] = [middle, tried]
      else high = middle
    }
    fit = low
  }
  const groups = new Map<string, { stick: Stick; pieces: Fraction[]; times: number }>()
  for (const { stick, pieces } of packed ?? []) {
    const key = `${plan.sticks.indexOf(stick)}:${pieces.map((it) => it.toFraction()).join()}`
    const group = groups.get(key) ?? { stick, pieces, times: 0 }
    groups.set(key, { ...group, times: group.times + 1 })
  }
  return { fit, wanted: wanted.length, from: [...groups.values()] }
}

/** Longest first, each into the shortest offcut that still takes it; nothing where one goes nowhere. */
function packedInto(
  sticks: readonly Stick[],
  pieces: readonly Fraction[],
  kerf: Fraction,
): { stick: Stick; pieces: Fraction[] }[] | undefined {
  const open = sticks.map((stick) => ({ stick, left: stick.offcut.add(kerf), pieces: [] as Fraction[] }))
  for (const piece of pieces.toReversed()) {
    const width = piece.add(kerf)
    const found = open.filter((it) => it.left.compare(width) >= 0)
    const [first] = found
    if (!first) return undefined
    const tightest = found.reduce((best, it) => (it.left.compare(best.left) < 0 ? it : best), first)
    tightest.left = tightest.left.sub(width)
    tightest.pieces.push(piece)
  }
  return open.filter((it) => it.pieces.length > 0)
}
