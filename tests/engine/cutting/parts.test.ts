// The parts that a cut plan is made of, each against another way to work it: bounds by counting everything out, first fit by laying every piece in turn,
// patterns by listing all of them, and a solver that lies.
import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { cheapestRoom, fewestSticks, leastSum, material } from '../../../engine/cutting/bounds.ts'
import { boundOf, generate, limitedStocks, materialDuals, part, patternModel } from '../../../engine/cutting/columns.ts'
import { costOf, firstFit, firstPlan, shrunk } from '../../../engine/cutting/first-fit.ts'
import {
  bestPattern,
  fill,
  keyOf,
  offcut,
  type Pattern,
  patternsWorth,
  totalsOf,
  used,
} from '../../../engine/cutting/patterns.ts'
import { planCuts } from '../../../engine/cutting/plan.ts'
import { type Bench, benchFor, type CutProblem } from '../../../engine/cutting/problem.ts'
import { checkPlan } from '../../../engine/cutting/proof.ts'
import type { Solved } from '../../../engine/cutting/solver.ts'
import { bestOfAll } from './exhaustive.ts'
import { chance } from './generated-jobs.ts'
import { plainProblem } from './published.ts'

const plenty = Number.POSITIVE_INFINITY
const bench = (change: Partial<Bench>): Bench => ({
  unit: new Fraction(1),
  kerf: 0,
  lengths: change.widths ?? [5],
  widths: [5],
  demand: [4],
  rooms: [10],
  costs: [100],
  step: 1,
  byPrice: true,
  limits: (change.rooms ?? [10]).map(() => plenty),
  ...change,
})

/** Up to three kinds of piece and three stocks, some of them scarce. */
const anyBench: fc.Arbitrary<Bench> = fc
  .record({
    widths: fc.uniqueArray(fc.integer({ min: 2, max: 20 }), { minLength: 1, maxLength: 3 }),
    demand: fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 1, max: 4 }))),
    stocks: fc.array(
      fc.record({
        room: fc.integer({ min: 1, max: 40 }),
        cost: fc.integer({ min: 1, max: 12 }),
        limit: fc.option(fc.integer({ min: 0, max: 3 }), { nil: plenty, freq: 2 }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    kerf: fc.integer({ min: 0, max: 1 }),
  })
  .map(({ widths, demand, stocks, kerf }) => {
    const longestFirst = [...widths].sort((a, b) => b - a)
    return bench({
      kerf,
      widths: longestFirst,
      lengths: longestFirst.map((it) => it - kerf),
      demand: longestFirst.map((_, i) => demand[i] as number),
      // One that takes every piece.
      rooms: [20, ...stocks.map((it) => it.room)],
      costs: [10, ...stocks.map((it) => it.cost)],
      limits: [plenty, ...stocks.map((it) => it.limit)],
    })
  })

const seed = 20_261_128

/** Every pattern of a stock, by going through all counts. */
function allPatterns({ widths, demand, rooms }: Bench, stock: number): Pattern[] {
  const room = rooms[stock] as number
  const lay = (kind: number, left: number): number[][] =>
    kind === widths.length
      ? [[]]
      : Array.from({ length: (demand[kind] as number) + 1 }, (_, count) => count)
          .filter((count) => count * (widths[kind] as number) <= left)
          .flatMap((count) => lay(kind + 1, left - count * (widths[kind] as number)).map((rest) => [count, ...rest]))
  return lay(0, room).map((counts) => ({ stock, counts }))
}

describe('the least sum of prices', () => {
  it.each([
    // 5 and 7: 0 5 7 10 12 14 15 17 …; no sum between 7 and 10, none is 11 or 13.
    [[5, 7], 8, 10],
    [[5, 7], 11, 12],
    [[5, 7], 13, 14],
    [[5, 7], 14, 14],
    [[7, 5, 5], 1, 5],
    [[5, 7], 0, 0],
    [[5, 7], -3, 0],
    [[5, 7], 9.2, 10],
    [[4], 9, 12],
    // What costs nothing adds nothing.
    [[0, 4], 9, 12],
    [[0], 9, 9],
  ])('of %j from %d on is %d', (costs, from, sum) => {
    expect(leastSum(bench({ costs, rooms: costs.map(() => 10) }), from)).toBe(sum)
  })

  it('is what adding them up in every way gives', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 2, max: 15 }), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 0, max: 60 }),
        (costs, from) => {
          const [a = 1, b = 0, c = 0] = costs
          const sums: number[] = []
          for (let i = 0; i * a <= 80; i++)
            for (let j = 0; j * b <= 80 && (b > 0 || j === 0); j++)
              for (let k = 0; k * c <= 80 && (c > 0 || k === 0); k++) sums.push(i * a + j * b + k * c)
          const least = Math.min(...sums.filter((it) => it >= from))
          expect(leastSum(bench({ costs, rooms: costs.map(() => 10) }), from)).toBe(least)
        },
      ),
      { seed, numRuns: 200 },
    )
  })

  it('is the bound itself where the sums would take too long to add up', () => {
    expect(leastSum(bench({ costs: [7] }), 4_000_001.5)).toBe(4_000_002)
  })
})

describe('counting sticks', () => {
  it('is by all the pieces with their cuts', () => expect(material(bench({ widths: [6, 3], demand: [2, 5] }))).toBe(27))

  it.each([
    // Over half each: one to a stick.
    [[6], [3], 10, 3],
    // Half and half: two to a stick.
    [[5], [4], 10, 2],
    [[5], [5], 10, 3],
    // Three of 7 stand alone; the 4s fit beside none of them, and two go to a stick.
    [[7, 4], [3, 4], 10, 5],
    // 3s fit beside the 7s: 3 sticks, and one more for the three that are left.
    [[7, 3], [3, 6], 10, 4],
    // By material alone: 9 × 3 = 27.
    [[3], [9], 10, 3],
  ])('of %j, %j of each, takes at least so many of %d: %d', (widths, demand, room, sticks) => {
    expect(fewestSticks(bench({ widths, demand }), room)).toBe(sticks)
  })

  it('never says more than it takes by going through everything', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 1, max: 3 })), {
          minLength: 1,
          maxLength: 3,
        }),
        (pieces) => {
          const problem = plainProblem(12, pieces)
          expect(
            fewestSticks(benchFor(problem) as Bench, (benchFor(problem) as Bench).rooms[0] as number),
          ).toBeLessThanOrEqual(bestOfAll(problem)?.boards ?? 0)
        },
      ),
      { seed, numRuns: 100 },
    )
  })

  it('finds the cheapest room: 10 for 100 is dearer than 12 for 110, and room for a cut alone is none', () => {
    expect(cheapestRoom(bench({ rooms: [10, 12], costs: [100, 110] }))).toBe(1)
    expect(cheapestRoom(bench({ rooms: [12, 10], costs: [110, 100] }))).toBe(0)
    // As dear as each other: the first.
    expect(cheapestRoom(bench({ rooms: [10, 20], costs: [100, 200] }))).toBe(0)
    expect(cheapestRoom(bench({ rooms: [1, 10], costs: [0, 100], kerf: 1 }))).toBe(1)
  })
})

describe('plain rules', () => {
  /** Longest first, each on the first stick with room, looked at from the beginning. */
  function laidInTurn({ widths, demand, rooms, costs, limits }: Bench, preferred: number): Pattern[] | undefined {
    const sticks: { stock: number; left: number; counts: number[] }[] = []
    const pieces = widths.flatMap((width, kind) =>
      Array.from({ length: demand[kind] as number }, () => ({ width, kind })),
    )
    for (const { width, kind } of pieces) {
      const open = sticks.find((it) => it.left >= width)
      const stocks = [...rooms.keys()].filter(
        (it) =>
          (rooms[it] as number) >= width && sticks.filter((one) => one.stock === it).length < (limits[it] as number),
      )
      const [cheapest] = [...stocks].sort((a, b) => (costs[a] as number) - (costs[b] as number) || a - b)
      const stock = stocks.includes(preferred) ? preferred : cheapest
      if (!open && stock === undefined) return undefined
      const stick = open ?? {
        stock: stock as number,
        left: rooms[stock as number] as number,
        counts: widths.map(() => 0),
      }
      if (!open) sticks.push(stick)
      stick.left -= width
      stick.counts[kind] = (stick.counts[kind] as number) + 1
    }
    return sticks.map(({ stock, counts }) => ({ stock, counts }))
  }
  const bare = (sticks: readonly Pattern[] | undefined) => sticks?.map(({ stock, counts }) => ({ stock, counts }))

  it('lay each piece on the first stick with room', () => {
    fc.assert(
      fc.property(anyBench, (job) => {
        for (const stock of job.rooms.keys()) expect(bare(firstFit(job, stock))).toEqual(laidInTurn(job, stock))
      }),
      { seed, numRuns: 200 },
    )
  })

  it('begin with the cheapest of those plans, its sticks as short as they may be', () => {
    fc.assert(
      fc.property(anyBench, (job) => {
        const plans = [...job.rooms.keys()].flatMap((stock) => {
          const plan = laidInTurn(job, stock)
          return plan ? [shrunk(job, plan)] : []
        })
        const first = firstPlan(job)
        if (!first) return expect(plans).toEqual([])
        const least = Math.min(...plans.map((it) => costOf(job, it)))
        expect(costOf(job, first)).toBe(least)
        expect(first.length).toBe(Math.min(...plans.filter((it) => costOf(job, it) === least).map((it) => it.length)))
      }),
      { seed, numRuns: 200 },
    )
  })

  it('give a stick for a cheaper one that still holds its pieces, as long as there is one', () => {
    const sticks = [4, 4, 9].map((width) => ({ stock: 0, counts: width === 9 ? [1, 0] : [0, 1] }))
    const job = bench({ widths: [9, 4], demand: [1, 2], rooms: [10, 5], costs: [100, 60] })
    expect(shrunk(job, sticks).map((it) => it.stock)).toEqual([1, 1, 0])
    expect(shrunk({ ...job, limits: [plenty, 1] }, sticks).map((it) => it.stock)).toEqual([1, 0, 0])
    expect(shrunk({ ...job, limits: [plenty, 0] }, sticks).map((it) => it.stock)).toEqual([0, 0, 0])
    // As dear as the other: it stays what it is.
    expect(shrunk({ ...job, costs: [60, 60] }, sticks).map((it) => it.stock)).toEqual([0, 0, 0])
    // One that is given back may be taken again: the second long one goes to the stick that held a short one.
    const three = bench({
      widths: [9, 4],
      demand: [1, 1],
      rooms: [12, 10, 5],
      costs: [100, 80, 50],
      limits: [plenty, 1, plenty],
    })
    const swapped = shrunk(three, [
      { stock: 1, counts: [0, 1] },
      { stock: 0, counts: [1, 0] },
    ])
    expect(swapped.map((it) => it.stock)).toEqual([2, 1])
  })
})

describe('patterns', () => {
  it('have their best found, and all that are worth enough, as by listing every one', () => {
    fc.assert(
      fc.property(anyBench, fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 3, maxLength: 3 }), (job, worths) => {
        const values = job.widths.map((_, kind) => worths[kind] as number)
        const worthOf = ({ counts }: Pattern): number =>
          counts.reduce((sum, it, kind) => sum + it * (values[kind] as number), 0)
        const totals = totalsOf(job)
        if (!totals) throw new Error('too many totals')
        const filled = fill(job, totals, values)
        const every = [...job.rooms.keys()].flatMap((stock) => allPatterns(job, stock))
        for (const stock of job.rooms.keys()) {
          const { pattern, worth } = bestPattern(job, totals, values, filled, stock)
          expect(worth).toBe(Math.max(...every.filter((it) => it.stock === stock).map(worthOf)))
          expect(worthOf(pattern)).toBe(worth)
          expect(used(job, pattern.counts)).toBeLessThanOrEqual(job.rooms[stock] as number)
        }
        const isFull = (it: Pattern): boolean =>
          job.widths.every(
            (width, kind) =>
              it.counts[kind] === job.demand[kind] || used(job, it.counts) + width > (job.rooms[it.stock] as number),
          )
        for (const [full, spared, least] of [
          [false, 0, 4],
          [true, 0, 0],
          [false, 3, 2],
        ] as const) {
          const wanted = { worth: job.rooms.map(() => least), full, spared, most: 10_000 }
          const expected = every.filter(
            (it) =>
              worthOf(it) >= least &&
              used(job, it.counts) > 0 &&
              used(job, it.counts) <= (job.rooms[it.stock] as number) - spared &&
              (!full || isFull(it)),
          )
          const found = patternsWorth(job, totals, values, filled, wanted) ?? []
          expect(found.map(keyOf).sort()).toEqual(expected.map(keyOf).sort())
          if (expected.length > 0)
            expect(patternsWorth(job, totals, values, filled, { ...wanted, most: expected.length - 1 })).toBeUndefined()
        }
      }),
      { seed, numRuns: 100 },
    )
  })

  it('leave what is past their last cut, and nothing where that is no more than a cut', () => {
    const job = bench({ widths: [5], rooms: [12], kerf: 1 })
    expect([0, 1, 2].map((count) => offcut(job, { stock: 0, counts: [count] }))).toEqual([11, 6, 1])
    expect(offcut(bench({ widths: [6], rooms: [12], kerf: 1 }), { stock: 0, counts: [2] })).toBe(0)
  })
})

describe('dual prices', () => {
  it('give a bound: the pieces at their worth, less what is scarce at its charge', () => {
    const job = bench({ widths: [5, 3], demand: [4, 2], rooms: [10, 6], costs: [100, 70], limits: [3, plenty] })
    expect(boundOf(job, { values: [70, 40], charges: [40, 0] })).toBe(4 * 70 + 2 * 40 - 3 * 40)
    expect(limitedStocks(job)).toEqual([0])
  })

  it('by the material are each width’s share of the cheapest room, rounded down', () => {
    expect(materialDuals(bench({ widths: [5, 3], demand: [1, 1], rooms: [9, 7], costs: [90, 71] }))).toEqual({
      values: [50 * part, 30 * part],
      charges: [0, 0],
    })
    // 100 / 3 of a step, in millionths.
    expect(materialDuals(bench({ widths: [1], rooms: [3] })).values).toEqual([33_333_333])
  })

  it('have a row for each kind, and one for each stock that is scarce', () => {
    const job = bench({ widths: [5, 3], demand: [4, 2], rooms: [10, 6], costs: [100, 70], limits: [plenty, 3] })
    const patterns = [
      { stock: 0, counts: [2, 0] },
      { stock: 1, counts: [0, 2] },
    ]
    expect(patternModel(job, patterns, true, 7)).toEqual({
      costs: [100, 70],
      entries: [
        [[0, 2]],
        [
          [1, 2],
          [2, 1],
        ],
      ],
      rows: [{ least: 4 }, { least: 2 }, { most: 3 }],
      whole: true,
      nodeLimit: 7,
    })
  })

  it.each<[string, Partial<Solved>]>([
    ['fails', { status: 'failed', duals: [9e9, 9e9] }],
    ['gives one price that is no number', { duals: [50, Number.NaN] }],
    ['gives one price without end', { duals: [Number.POSITIVE_INFINITY, 1] }],
    ['gives too few prices', { duals: [] }],
    ['gives prices below nought', { duals: [-5, -5] }],
    ['gives prices far too high', { duals: [900, 1] }],
  ])('from a solver that %s prove no more than is so', (_, answer) => {
    const job = bench({ widths: [5, 3], demand: [4, 2], rooms: [10, 6], costs: [100, 70] })
    const solve = (): Solved => ({ status: 'solved', values: [], duals: [], bound: 0, nodes: 0, ...answer })
    const { duals } = generate(
      job,
      totalsOf(job) as NonNullable<ReturnType<typeof totalsOf>>,
      { name: 'liar', solve },
      [],
    )
    // Two sticks of 10 for the 5s and one of 6 for the 3s are 270, and no prices may say more.
    expect(boundOf(job, duals) / part).toBeLessThanOrEqual(270)
    expect(boundOf(job, duals)).toBeGreaterThanOrEqual(boundOf(job, materialDuals(job)))
    for (const [stock, cost] of job.costs.entries())
      for (const { counts } of allPatterns(job, stock))
        expect(counts.reduce((sum, it, kind) => sum + it * (duals.values[kind] as number), 0)).toBeLessThanOrEqual(
          cost * part,
        )
  })
})

describe('a job in whole numbers', () => {
  it('is counted in the largest length that measures all of it, equal pieces together, the longest first', () => {
    const problem: CutProblem = {
      pieces: [
        { length: new Fraction('3/2'), count: 2 },
        { length: new Fraction(4), count: 1 },
        { length: new Fraction('3/2'), count: 3 },
        { length: new Fraction(9), count: 0 },
      ],
      stocks: [
        { length: new Fraction(8), price: 680 },
        { length: new Fraction(10), price: 920, onHand: 2 },
      ],
      kerf: new Fraction('1/4'),
      endTrim: new Fraction('1/2'),
      leastOffcut: new Fraction(1),
    }
    expect(benchFor(problem)).toEqual({
      unit: new Fraction('1/4'),
      kerf: 1,
      lengths: [16, 6],
      widths: [17, 7],
      demand: [1, 5],
      rooms: [31, 39],
      costs: [17, 23],
      step: 40,
      byPrice: true,
      limits: [plenty, 2],
    })
    // One without a price: all by their lengths, 32 and 40 quarters, in steps of 8.
    const unpriced = { ...problem, stocks: [{ length: new Fraction(8) }, { length: new Fraction(10), price: 920 }] }
    expect(benchFor(unpriced)).toMatchObject({ byPrice: false, costs: [4, 5], step: 8 })
  })

  it('is none where a piece is longer than every stick, or the lengths are too fine to be measured', () => {
    expect(benchFor(plainProblem(96, [[97, 1]]))).toEqual({ tooLong: new Fraction(97) })
    expect(benchFor({ ...plainProblem(96, [[96, 1]]), endTrim: new Fraction('1/8') })).toEqual({
      tooLong: new Fraction(96),
    })
    expect(benchFor({ ...plainProblem(96, [[96, 1]]), kerf: new Fraction('1/8') })).toMatchObject({
      widths: [769],
      rooms: [769],
    })
    expect(benchFor({ ...plainProblem(96, [[1, 1]]), kerf: new Fraction('1/1000000007') })).toBe('too fine')
  })
})

describe('a solver that lies', () => {
  const jobs = Array.from({ length: 30 }, (_, i): CutProblem => {
    const next = chance(i + 1)
    const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1))
    return {
      pieces: Array.from({ length: 3 }, () => ({ length: new Fraction(whole(3, 24)), count: whole(1, 4) })),
      stocks: [
        { length: new Fraction(26), price: whole(5, 20) },
        { length: new Fraction(36), price: whole(5, 30), onHand: 2 },
      ],
      kerf: new Fraction(whole(0, 1)),
      endTrim: new Fraction(0),
      leastOffcut: new Fraction(0),
    }
  })

  it('makes no plan that cannot be cut, nor one that costs more than plain rules do', () => {
    let planned = 0
    for (const [i, problem] of jobs.entries())
      for (const status of ['solved', 'stopped', 'none', 'failed'] as const) {
        const next = chance(1000 + i)
        const solve = ({ costs, rows }: { costs: readonly number[]; rows: readonly unknown[] }): Solved => ({
          status,
          values: costs.map(() => Math.floor(next() * 3)),
          duals: rows.map(() => next() * 20 - 5),
          // It claims that nothing is known.
          bound: Number.NEGATIVE_INFINITY,
          nodes: 3,
        })
        const [plain, lied] = [planCuts(problem, undefined), planCuts(problem, { name: 'liar', solve })]
        expect(lied.ok).toBe(plain.ok)
        if (!plain.ok || !lied.ok) continue
        planned++
        expect(checkPlan(problem, lied.plan)).toEqual([])
        expect(lied.plan.price.value).toBeLessThanOrEqual(plain.plan.price.value)
        if (lied.plan.price.value === plain.plan.price.value)
          expect(lied.plan.boards.value).toBeLessThanOrEqual(plain.plan.boards.value)
      }
    expect(planned).toBeGreaterThan(60)
  })
})
