// The searches on jobs small enough to see through: what they find, what they say no plan can beat, and what they make of a solver that proves too much.
import Fraction from 'fraction.js'
import { beforeAll, describe, expect, it } from 'vitest'
import { generate } from '../../../engine/cutting/columns.ts'
import { costOf, firstPlan } from '../../../engine/cutting/first-fit.ts'
import { keyOf, type Pattern, type Totals, totalsOf } from '../../../engine/cutting/patterns.ts'
import type { Bench } from '../../../engine/cutting/problem.ts'
import { cheapest, fewest, type Hall, longestLeft } from '../../../engine/cutting/search.ts'
import type { Solved, Solver } from '../../../engine/cutting/solver.ts'
import { cutSolver } from '../../../src/solver/highs.ts'

let solver: Solver
beforeAll(async () => {
  solver = (await cutSolver()) as Solver
})

const bench = (change: Pick<Bench, 'widths' | 'demand' | 'rooms' | 'costs'> & Partial<Bench>): Bench => ({
  unit: new Fraction(1),
  kerf: 0,
  lengths: change.widths,
  step: 1,
  byPrice: true,
  limits: change.rooms.map(() => Number.POSITIVE_INFINITY),
  ...change,
})
const answering = (answer: Partial<Solved>): Solver => ({
  name: 'made up',
  solve: () => ({ status: 'failed', values: [], duals: [], bound: 0, nodes: 0, ...answer }),
})
function hallOf(job: Bench, by: Solver, start: readonly Pattern[]): Hall {
  const totals = totalsOf(job) as Totals
  return { bench: job, totals, solver: by, ...generate(job, totals, by, start) }
}
const one = (stock: number, ...counts: number[]): Pattern => ({ stock, counts })

describe('the patterns to begin with', () => {
  // Of 10: two of 5 or one of 7; 20 takes four and two, and no more are wanted; 4 takes none.
  it('are as many of each piece as a stick takes and as are wanted, one of them too', () => {
    const job = bench({ widths: [7, 5], demand: [2, 3], rooms: [10, 20, 4], costs: [10, 20, 4] })
    const { patterns } = generate(job, totalsOf(job) as Totals, answering({}), [])
    expect(patterns).toEqual([one(0, 1, 0), one(0, 0, 2), one(1, 2, 0), one(1, 0, 3)])
  })

  it('hold what there was before, once', () => {
    const job = bench({ widths: [5], demand: [2], rooms: [10], costs: [10] })
    const { patterns } = generate(job, totalsOf(job) as Totals, answering({}), [one(0, 1), one(0, 2)])
    expect(patterns.map(keyOf)).toEqual([one(0, 1), one(0, 2)].map(keyOf))
  })
})

describe('the fewest sticks', () => {
  // Two of 5 for 5 each cost what one of 10 costs.
  it('are one long one where two short ones cost as much', () => {
    const job = bench({ widths: [5], demand: [2], rooms: [5, 10], costs: [5, 10] })
    const short = [one(0, 1), one(0, 1)]
    const { sticks, bound } = fewest(hallOf(job, solver, short), short, 10)
    expect(sticks).toEqual([one(1, 2)])
    expect(bound).toBe(1)
  })

  // 9 + 9 + 4 + 4 = 26 of material: of 10 each that is three sticks, and so it takes three: 9, 9, 4 + 4.
  it('are known without a search where they are as few as the material takes', () => {
    const job = bench({ widths: [9, 4], demand: [2, 2], rooms: [10], costs: [10] })
    const three = [one(0, 1, 0), one(0, 1, 0), one(0, 0, 2)]
    expect(fewest(hallOf(job, solver, three), three, 30)).toEqual({ sticks: three, bound: 3, searches: [] })
  })

  it('from a solver that fails are those that there were, and so many as the price alone proves', () => {
    const job = bench({ widths: [5], demand: [2], rooms: [5, 10], costs: [5, 10] })
    const short = [one(0, 1), one(0, 1)]
    const { sticks, bound } = fewest(hallOf(job, answering({}), short), short, 10)
    expect(sticks).toEqual(short)
    expect(bound).toBe(1)
  })
})

describe('the longest offcut', () => {
  // One stick of 10 for 10 with 4 and 1 leaves 5. Two of 6 for 5 each would be 12 of wood at that price, but they are two.
  it('is known without a search where so many sticks cannot leave more', () => {
    const job = bench({ widths: [4, 1], demand: [1, 1], rooms: [10, 6], costs: [10, 5] })
    const long = [one(0, 1, 1)]
    expect(longestLeft(hallOf(job, solver, long), long)).toEqual({ sticks: long, bound: 5, searches: [] })
    // 6 + 3 + 1 fill one of 10, 1 + 1 leave 8 of another: 20 − 12. One of 10 and two of 6 would be 22 at that price, but they are three.
    const two = bench({ widths: [6, 3, 1], demand: [1, 1, 3], rooms: [10, 6], costs: [10, 5] })
    const full = [one(0, 1, 1, 1), one(0, 0, 0, 2)]
    expect(longestLeft(hallOf(two, solver, full), full)).toEqual({ sticks: full, bound: 8, searches: [] })
  })

  // 6 and 3, two of each, on two of 10: 6 + 3 leaves 1 twice; 6 alone leaves 4, and 6 + 3 + 3 is too much; 3 + 3 leaves 4, and 6 + 6 is too much.
  // 5 and 2, two of each: 5 + 2 leaves 3 twice; 5 + 5 and 2 + 2 leave 0 and 6.
  it('is found where the pieces are shared out otherwise', () => {
    const job = bench({ widths: [5, 2], demand: [2, 2], rooms: [10], costs: [10] })
    const alike = [one(0, 1, 1), one(0, 1, 1)]
    const { sticks, bound } = longestLeft(hallOf(job, solver, alike), alike)
    expect(sticks.map(keyOf).sort()).toEqual([one(0, 2, 0), one(0, 0, 2)].map(keyOf).sort())
    expect(bound).toBe(6)
    const tight = bench({ widths: [6, 3], demand: [2, 2], rooms: [10], costs: [10] })
    const even = [one(0, 1, 1), one(0, 1, 1)]
    expect(longestLeft(hallOf(tight, solver, even), even).sticks).toEqual(even)
  })
})

describe('a search over some of the patterns', () => {
  // Pieces of 31 to 48, two of each, from sticks of 200: more ways to fill one than are looked at. The last stick’s pieces have a stick each.
  const widths = Array.from({ length: 18 }, (_, i) => 48 - i)
  const many = bench({ widths, demand: widths.map(() => 2), rooms: [200], costs: [10] })

  it('proves no more than what was left out would cost, whatever the solver claims of the rest', () => {
    const good = firstPlan(many) as readonly Pattern[]
    const wasteful = [
      ...good.slice(0, -1),
      ...(good.at(-1) as Pattern).counts.flatMap((count, kind) =>
        Array.from({ length: count }, () => one(0, ...widths.map((_, i) => (i === kind ? 1 : 0)))),
      ),
    ]
    expect(costOf(many, wasteful)).toBeGreaterThan(costOf(many, good))
    const hall = { ...hallOf(many, answering({}), wasteful), solver: answering({ status: 'solved', bound: 1e9 }) }
    const { sticks, bound, searches } = cheapest(hall, wasteful)
    expect(searches.map((it) => it.all)).toEqual([false])
    expect(sticks).toEqual(wasteful)
    expect(bound).toBeLessThanOrEqual(costOf(many, good))
    // 2 × (31 + … + 48) = 1422 of material: 7.11 sticks, so no plan is cheaper than 80.
    expect(bound).toBe(80)
  })
})
