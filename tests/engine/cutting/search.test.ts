// How far the searches look: at every pattern that could matter and at no other, counted by going through all of them, and no longer than they say.
import fc from 'fast-check'
import Fraction from 'fraction.js'
import { beforeAll, describe, expect, it } from 'vitest'
import { boundOf, generate, part } from '../../../engine/cutting/columns.ts'
import { costOf, firstPlan } from '../../../engine/cutting/first-fit.ts'
import { keyOf, offcut, type Pattern, totalsOf } from '../../../engine/cutting/patterns.ts'
import type { Bench } from '../../../engine/cutting/problem.ts'
import { cheapest, fewest, type Found, type Hall, longestLeft } from '../../../engine/cutting/search.ts'
import type { Solver } from '../../../engine/cutting/solver.ts'
import { cutSolver } from '../../../src/solver/highs.ts'

let solver: Solver
beforeAll(async () => {
  solver = (await cutSolver()) as Solver
})

const anyBench: fc.Arbitrary<Bench> = fc
  .record({
    widths: fc.uniqueArray(fc.integer({ min: 3, max: 19 }), { minLength: 2, maxLength: 3 }),
    demand: fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 1, max: 4 }))),
    rooms: fc.uniqueArray(fc.integer({ min: 21, max: 40 }), { minLength: 1, maxLength: 2 }),
    cost: fc.integer({ min: 4, max: 9 }),
    kerf: fc.integer({ min: 0, max: 1 }),
  })
  .map(({ widths, demand, rooms, cost, kerf }) =>
    benchOf(
      widths.toSorted((a, b) => b - a),
      demand,
      rooms,
      rooms.map((_, i) => cost + 2 * i),
      kerf,
    ),
  )

function benchOf(
  widths: readonly number[],
  demand: readonly number[],
  rooms: readonly number[],
  costs: readonly number[],
  kerf: number,
): Bench {
  return {
    unit: new Fraction(1),
    kerf,
    widths,
    lengths: widths.map((it) => it - kerf),
    demand: demand.slice(0, widths.length),
    rooms,
    costs,
    step: 1,
    byPrice: true,
    limits: rooms.map(() => Number.POSITIVE_INFINITY),
  }
}

/** What all is worth says less than the cheapest plan costs: only a search can tell. */
const open = [
  benchOf([19, 13, 10], [2, 2, 2], [37, 27], [5, 7], 1),
  benchOf([19, 11], [3, 3], [38, 28], [4, 6], 0),
  benchOf([16, 4, 3], [1, 4, 4], [21, 31], [7, 9], 1),
  benchOf([13, 5, 4], [4, 1, 4], [37, 31], [7, 9], 1),
  benchOf([12, 8], [3, 4], [29, 28], [7, 9], 1),
  benchOf([8, 3], [4, 2], [32, 26], [6, 8], 0),
]

/** Every way of cutting some of the pieces from one stick. */
const allPatterns = ({ widths, demand, rooms }: Bench): Pattern[] =>
  rooms.flatMap((room, stock) =>
    widths
      .reduce<number[][]>(
        (all, _, kind) =>
          all.flatMap((it) => Array.from({ length: (demand[kind] as number) + 1 }, (__, count) => [...it, count])),
        [[]],
      )
      .filter((counts) => counts.reduce((sum, count, kind) => sum + count * (widths[kind] as number), 0) <= room)
      .map((counts) => ({ stock, counts })),
  )
const usedOf = ({ widths }: Bench, { counts }: Pattern): number =>
  counts.reduce((sum, count, kind) => sum + count * (widths[kind] as number), 0)
/** No further piece that is still wanted has room on it. */
const isFull = (bench: Bench, it: Pattern): boolean =>
  bench.widths.every(
    (width, kind) =>
      (it.counts[kind] as number) >= (bench.demand[kind] as number) ||
      usedOf(bench, it) + width > (bench.rooms[it.stock] as number),
  )
/** So much more the stick costs than what is cut from it is worth. */
const lostBy = ({ bench, duals }: Hall, { stock, counts }: Pattern): number =>
  (bench.costs[stock] as number) * part +
  (duals.charges[stock] as number) -
  counts.reduce((sum, count, kind) => sum + count * (duals.values[kind] as number), 0)

const together = (...all: readonly (readonly Pattern[])[]): number => new Set(all.flat().map(keyOf)).size
const limits = { price: 600, boards: 200, offcut: 200 } as const

/** What was searched is as it should be; how many searches there were. */
function looked({ searches }: Found, after: keyof typeof limits, patterns: number): number {
  for (const it of searches.slice(0, 1)) {
    expect(it.patterns).toBe(patterns)
    expect(it.all).toBe(true)
  }
  for (const it of searches) {
    expect(it.after).toBe(after)
    expect(it.nodeLimit).toBe(Math.max(1, Math.min(limits[after], Math.floor(60_000 / it.patterns))))
  }
  return searches.length
}

describe('a search', () => {
  it('looks at every pattern within the gap, at no other, and stops in time', () => {
    const searched = { price: 0, boards: 0, offcut: 0 }
    fc.assert(
      fc.property(anyBench, (bench) => {
        const [first, totals] = [firstPlan(bench), totalsOf(bench)]
        fc.pre(first !== undefined && totals !== undefined)
        if (!first || !totals) return
        const hall: Hall = { bench, totals, solver, ...generate(bench, totals, solver, first) }
        const { sticks } = cheapest(hall, first)
        const cost = costOf(bench, sticks)
        const bound = boundOf(bench, hall.duals)
        const every = allPatterns(bench)
        const full = every.filter((it) => isFull(bench, it))
        const within = (gap: number): Pattern[] => full.filter((it) => lostBy(hall, it) <= gap)
        // Nothing is cheaper than this plan, so only what would cost a whole step less is looked for.
        searched.price += looked(cheapest(hall, sticks), 'price', together(within((cost - 1) * part - bound), sticks))
        const few = fewest(hall, sticks, cost)
        searched.boards += looked(few, 'boards', together(within(cost * part - bound), sticks))
        const known = Math.max(0, ...few.sticks.map((it) => offcut(bench, it)))
        const gap = cost * part - bound
        const single = every.filter(
          (it) =>
            lostBy(hall, it) <= gap && usedOf(bench, it) + bench.kerf + known + 1 <= (bench.rooms[it.stock] as number),
        )
        searched.offcut += looked(
          longestLeft(hall, few.sticks),
          'offcut',
          together(within(gap), few.sticks) + together(single),
        )
      }),
      { numRuns: 10, seed: 20_260_601, examples: open.map((it): [Bench] => [it]) },
    )
    expect(searched.price).toBeGreaterThan(0)
    expect(searched.offcut).toBeGreaterThan(0)
  })
})
