// This file is about the cut plan: the least price, then the fewest sticks, then the longest single offcut, each with what is proved of it.
import { fewestSticks, leastSum, material } from './bounds.ts'
import { boundOf, generate, materialDuals, part } from './columns.ts'
import { costOf, firstPlan } from './first-fit.ts'
import { keyOf, offcut, type Pattern, totalsOf } from './patterns.ts'
import { type Bench, benchFor, type CutProblem } from './problem.ts'
import { cheapest, type Found, fewest, type Hall, longestLeft, type Search } from './search.ts'
import type { Solver } from './solver.ts'
import Fraction from 'fraction.js'

/** What was reached, and what no plan can better. */
export interface Statement {
  readonly value: number
  readonly bound: number
  readonly proved: boolean
}

export interface Stick {
  readonly stock: number
  /** How many of each length, in the order of the plan's `lengths`. */
  readonly counts: readonly number[]
  /** How many sticks are cut alike. */
  readonly times: number
  readonly offcut: Fraction
}

export interface CutPlan {
  /** The lengths that are cut, the longest first, and how many of each. */
  readonly lengths: readonly Fraction[]
  readonly demand: readonly number[]
  readonly sticks: readonly Stick[]
  /** In cents; in units of length, as `unit` has it, where nothing has a price. */
  readonly price: Statement
  readonly byPrice: boolean
  readonly boards: Statement
  /** In units of length, as `unit` has it. */
  readonly longest: Statement
  readonly unit: Fraction
  readonly proof: Proof
}

/** What shows that no plan is cheaper. `duals`: the prices below suffice. `sticks`: the count of sticks that cannot be shared does. */
export interface Proof {
  readonly by: 'duals' | 'sticks' | 'search' | 'none'
  /** What each length is worth, in cents or units of length: no stick holds pieces worth more than it costs. */
  readonly worth: readonly Fraction[]
  /** What the scarcity of each stock adds to its price. */
  readonly charges: readonly Fraction[]
  readonly searches: readonly Search[]
  readonly solver: string | undefined
}

export type Planned =
  | { readonly ok: true; readonly plan: CutPlan }
  | { readonly ok: false; readonly why: 'too long'; readonly length: Fraction }
  // `too few`: plain rules find no plan with the sticks at hand. There may be one still.
  | { readonly ok: false; readonly why: 'too fine' | 'too few' }

/** The plan for a job; without a solver by plain rules, with what little is proved of them. */
export function planCuts(problem: CutProblem, solver: Solver | undefined): Planned {
  const bench = benchFor(problem)
  if (bench === 'too fine') return { ok: false, why: bench }
  if ('tooLong' in bench) return { ok: false, why: 'too long', length: bench.tooLong }
  const first = firstPlan(bench)
  if (!first) return { ok: false, why: 'too few' }
  const hall = solver && hallFor(bench, solver, first)
  const duals = hall?.duals ?? materialDuals(bench)
  const plain = leastSum(bench, Math.max(boundOf(bench, duals) / part, sticksBound(bench)))

  const price: Found = hall
    ? cheapest(hall, first)
    : { sticks: first, bound: Math.min(plain, costOf(bench, first)), searches: [] }
  const boards: Found = hall ? fewest(hall, price.sticks, price.bound) : plainBoards(bench, price.sticks)
  const longest: Found = hall ? longestLeft(hall, boards.sticks) : plainOffcut(bench, boards.sticks)
  const { sticks } = longest
  const cost = costOf(bench, sticks)
  const longestLength = Math.max(0, ...sticks.map((it) => offcut(bench, it)))
  const searches = [...price.searches, ...boards.searches, ...longest.searches]
  const by =
    leastSum(bench, boundOf(bench, duals) / part) >= cost
      ? 'duals'
      : leastSum(bench, sticksBound(bench)) >= cost
        ? 'sticks'
        : price.bound >= cost
          ? 'search'
          : 'none'
  const bound = by === 'sticks' ? cost : Math.min(cost, Math.max(price.bound, plain))
  return {
    ok: true,
    plan: {
      lengths: bench.lengths.map((it) => bench.unit.mul(it)),
      demand: bench.demand,
      sticks: alike(bench, sticks),
      price: { value: cost * bench.step, bound: bound * bench.step, proved: bound >= cost },
      byPrice: bench.byPrice,
      boards: { value: sticks.length, bound: boards.bound, proved: boards.bound >= sticks.length },
      longest: { value: longestLength, bound: longest.bound, proved: longest.bound <= longestLength },
      unit: bench.unit,
      proof: {
        by,
        worth: duals.values.map((it) => new Fraction(it, part).mul(bench.step)),
        charges: duals.charges.map((it) => new Fraction(it, part).mul(bench.step)),
        searches,
        solver: solver?.name,
      },
    },
  }
}

function hallFor(bench: Bench, solver: Solver, first: readonly Pattern[]): Hall | undefined {
  const totals = totalsOf(bench)
  return totals && { bench, totals, solver, ...generate(bench, totals, solver, first) }
}

/** What so many sticks cost at least; nothing to say where there are several stocks. */
function sticksBound(bench: Bench): number {
  const [room, ...others] = bench.rooms
  return others.length > 0 ? 0 : fewestSticks(bench, room as number) * (bench.costs[0] as number)
}

function plainBoards(bench: Bench, sticks: readonly Pattern[]): Found {
  const bound = fewestSticks(bench, Math.max(...bench.rooms))
  return { sticks, bound, searches: [] }
}

/** The longest offcut there could be of so many sticks: all that could be left of them in one piece, and no more than one stick with the shortest piece leaves. */
function plainOffcut(bench: Bench, sticks: readonly Pattern[]): Found {
  const room = Math.max(...bench.rooms)
  const left = Math.min(sticks.length * room - material(bench), room - (bench.widths.at(-1) as number))
  return { sticks, bound: Math.max(0, left - bench.kerf), searches: [] }
}

/** Sticks that are cut alike, together: of the longest pieces first. */
function alike(bench: Bench, sticks: readonly Pattern[]): Stick[] {
  const groups = new Map<string, { pattern: Pattern; times: number }>()
  for (const pattern of sticks) {
    const group = groups.get(keyOf(pattern)) ?? { pattern, times: 0 }
    groups.set(keyOf(pattern), { pattern, times: group.times + 1 })
  }
  const byPieces = (a: Pattern, b: Pattern): number => {
    const kind = a.counts.findIndex((count, i) => count !== b.counts[i])
    return kind < 0 ? a.stock - b.stock : (b.counts[kind] as number) - (a.counts[kind] as number)
  }
  return [...groups.values()]
    .sort((a, b) => byPieces(a.pattern, b.pattern))
    .map(({ pattern: { stock, counts }, times }) => ({
      stock,
      counts,
      times,
      offcut: bench.unit.mul(offcut(bench, { stock, counts })),
    }))
}
