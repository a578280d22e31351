// This file is about the search: whole-number programs over patterns, for the least price, then the fewest sticks, then the longest offcut.
//
// A plan that costs no more than some sum holds no pattern whose stick costs more than its pieces are worth (at the dual prices) by more than
// that sum lies above the bound. So the patterns within that gap are all that need be looked at, and what is proved of them is proved of all.
import { leastSum, material } from './bounds.ts'
import { boundOf, type Duals, part, patternModel } from './columns.ts'
import { costOf } from './first-fit.ts'
import { fill, keyOf, offcut, type Pattern, patternsWorth, type Totals, used } from './patterns.ts'
import type { Bench } from './problem.ts'
import type { Model, Solved, Solver } from './solver.ts'

/** What the searches work on. */
export interface Hall {
  readonly bench: Bench
  readonly totals: Totals
  readonly solver: Solver
  readonly duals: Duals
  /** The patterns that led to the dual prices. */
  readonly patterns: readonly Pattern[]
}

/** One search, so that it can be repeated. */
export interface Search {
  readonly after: 'price' | 'boards' | 'offcut'
  readonly patterns: number
  /** Whether those are all that could matter. */
  readonly all: boolean
  readonly nodeLimit: number
  readonly nodes: number
}

export interface Found {
  readonly sticks: readonly Pattern[]
  /** No plan does better than this: in steps, sticks, or units of length. */
  readonly bound: number
  readonly searches: readonly Search[]
}

/** Where each search stops. By nodes, never by the clock: a plan is the same wherever it is made. */
const nodeLimits = { sketch: 60, price: 600, boards: 200, offcut: 200 } as const
const mostPatterns = 6_000
const mostForOffcut = 2_400
// A node over more patterns takes longer: so many patterns are looked at in all.
const mostWork = 60_000

const nodesFor = (after: keyof typeof nodeLimits, patterns: number): number =>
  Math.max(1, Math.min(nodeLimits[after], Math.floor(mostWork / Math.max(1, patterns))))

/** The least price, from a plan that stands already. */
export function cheapest(hall: Hall, first: readonly Pattern[]): Found {
  const { bench, duals } = hall
  const lower = leastSum(bench, boundOf(bench, duals) / part)
  const searches: Search[] = []
  let sticks = first
  let bound = lower
  if (costOf(bench, sticks) > lower) sticks = sketched(hall, sticks)
  for (let round = 0; round < 3 && costOf(bench, sticks) > bound; round++) {
    const cost = costOf(bench, sticks)
    const within = patternsWithin(hall, (cost - 1) * part - boundOf(bench, duals))
    if (!within) break
    const { solved, found, search } = searched(hall, 'price', within, sticks, (stock) => bench.costs[stock] as number)
    searches.push(search)
    if (found && costOf(bench, found) < cost) sticks = found
    // Whatever uses a pattern that was left out costs more than the bound by more than the gap.
    const beyond = within.all ? cost : Math.ceil((boundOf(bench, duals) + within.gap + 1) / part)
    bound = Math.max(bound, Math.min(costOf(bench, sticks), leastSum(bench, Math.min(lowerOf(solved), beyond))))
    if (within.all || costOf(bench, sticks) === cost) break
  }
  return { sticks, bound, searches }
}

/** A better plan of the patterns at hand, if there is one: no proof, but a good beginning. */
function sketched(hall: Hall, sticks: readonly Pattern[]): readonly Pattern[] {
  const { bench, patterns } = hall
  const pool = merged(patterns, sticks)
  const solved = hall.solver.solve({
    ...patternModel(bench, pool, true, nodesFor('sketch', pool.length)),
    start: timesOf(pool, sticks),
  })
  const found = sticksFrom(bench, pool, solved.values)
  return found && costOf(bench, found) < costOf(bench, sticks) ? found : sticks
}

/** The fewest sticks at that price. */
export function fewest(hall: Hall, sticks: readonly Pattern[], leastCost: number): Found {
  const { bench } = hall
  const cost = costOf(bench, sticks)
  // So many of the dearest stick come to the least price at least.
  const byPrice = Math.ceil(leastCost / Math.max(1, ...bench.costs))
  const bound = Math.max(1, byPrice, Math.ceil(bestMix(hall, cost, undefined, () => 1) - tiny))
  if (sticks.length <= bound) return { sticks, bound: sticks.length, searches: [] }
  const within = patternsWithin(hall, cost * part - boundOf(bench, hall.duals))
  if (!within) return { sticks, bound, searches: [] }
  const { solved, found, search } = searched(hall, 'boards', within, sticks, () => 1, [
    { of: (stock) => bench.costs[stock] as number, most: cost },
  ])
  const best = found && found.length < sticks.length && costOf(bench, found) <= cost ? found : sticks
  const proved = within.all ? Math.min(best.length, lowerOf(solved)) : bound
  return { sticks: best, bound: Math.max(bound, proved), searches: [search] }
}

/** The longest single offcut at that price and of so many sticks. */
export function longestLeft(hall: Hall, sticks: readonly Pattern[]): Found {
  const { bench } = hall
  const [cost, boards] = [costOf(bench, sticks), sticks.length]
  const roomBought = -bestMix(hall, cost, boards, (stock) => -(bench.rooms[stock] as number))
  const shortest = bench.widths.at(-1) as number
  const bound = Math.max(
    0,
    Math.min(
      Math.floor(roomBought + tiny) - material(bench) - bench.kerf,
      Math.max(...bench.rooms) - bench.kerf - shortest,
    ),
  )
  const known = longestOf(bench, sticks)
  if (known >= bound) return { sticks, bound: known, searches: [] }
  const gap = cost * part - boundOf(bench, hall.duals)
  const within = patternsWithin(hall, gap, 0, mostForOffcut)
  if (!within) return { sticks, bound, searches: [] }
  // One stick is singled out for the offcut: it may hold fewer pieces than it could.
  const single = patternsWithin(hall, gap, bench.kerf + known + 1, mostForOffcut)
  if (!single) return { sticks, bound, searches: [] }
  const pool = merged(within.patterns, sticks)
  const nodeLimit = nodesFor('offcut', pool.length + single.patterns.length)
  const model = patternModel(bench, [...pool, ...single.patterns], true, nodeLimit)
  const [priceRow, boardsRow, oneRow] = [0, 1, 2].map((it) => model.rows.length + it) as [number, number, number]
  const solved = hall.solver.solve({
    ...model,
    costs: [...pool.map(() => 0), ...single.patterns.map((it) => -offcut(bench, it))],
    entries: model.entries.map((own, i) => [
      ...own,
      [priceRow, model.costs[i] as number] as const,
      [boardsRow, 1] as const,
      ...(i >= pool.length ? [[oneRow, 1] as const] : []),
    ]),
    rows: [...model.rows, { most: cost }, { most: boards }, { most: 1 }],
    start: [...timesOf(pool, sticks), ...single.patterns.map(() => 0)],
  })
  const found = sticksFrom(bench, [...pool, ...single.patterns], solved.values)
  const isBetter = found && found.length <= boards && costOf(bench, found) <= cost && longestOf(bench, found) > known
  const best = isBetter ? found : sticks
  const isAll = within.all && single.all
  const proved =
    isAll && solved.status !== 'failed' ? Math.max(longestOf(bench, best), Math.floor(tiny - solved.bound)) : bound
  return {
    sticks: best,
    bound: Math.min(bound, proved),
    searches: [
      {
        after: 'offcut',
        patterns: pool.length + single.patterns.length,
        all: isAll,
        nodeLimit,
        nodes: Math.max(0, solved.nodes),
      },
    ],
  }
}

const tiny = 1e-6

const longestOf = (bench: Bench, sticks: readonly Pattern[]): number =>
  Math.max(0, ...sticks.map((it) => offcut(bench, it)))

const lowerOf = ({ status, bound }: Solved): number =>
  status === 'failed' || status === 'none' || !Number.isFinite(bound) ? 0 : Math.ceil(bound - tiny)

/** The least sum over any mix of sticks that costs no more and has room for all the material, however the pieces lie: a bound. */
function bestMix(
  { bench, solver }: Hall,
  cost: number,
  boards: number | undefined,
  of: (stock: number) => number,
): number {
  const stocks = [...bench.rooms.keys()].filter((stock) => (bench.rooms[stock] as number) > bench.kerf)
  const solved = solver.solve({
    costs: stocks.map(of),
    entries: stocks.map((stock) => [
      [0, bench.rooms[stock] as number],
      [1, bench.costs[stock] as number],
      [2, 1],
    ]),
    most: stocks.map((stock) => Math.min(bench.limits[stock] as number, boards ?? Number.POSITIVE_INFINITY)),
    rows: [{ least: material(bench) }, { most: cost }, boards === undefined ? {} : { most: boards }],
    whole: true,
    nodeLimit: 500,
  })
  return solved.status === 'failed' || !Number.isFinite(solved.bound) ? Number.NEGATIVE_INFINITY : solved.bound
}

interface Within {
  readonly patterns: readonly Pattern[]
  readonly gap: number
  readonly all: boolean
}

/** The patterns whose sticks cost no more than their pieces are worth by more than the gap; where those are too many, of a smaller gap. */
function patternsWithin(
  { bench, totals, duals }: Hall,
  gap: number,
  spared = 0,
  most = mostPatterns,
): Within | undefined {
  const filled = fill(bench, totals, duals.values)
  let own = gap
  for (let tries = 0; tries < 8 && own >= 0; tries++) {
    const patterns = patternsWorth(bench, totals, duals.values, filled, {
      worth: bench.costs.map((cost, stock) => cost * part + (duals.charges[stock] as number) - own),
      full: spared === 0,
      spared,
      most,
    })
    if (patterns) return { patterns, gap: own, all: own === gap }
    own = Math.floor(own / 2)
  }
  return undefined
}

/** A search over patterns for the least sum of something, under further limits. */
function searched(
  hall: Hall,
  after: 'price' | 'boards',
  within: Within,
  sticks: readonly Pattern[],
  of: (stock: number) => number,
  limits: readonly { readonly of: (stock: number) => number; readonly most: number }[] = [],
): { solved: Solved; found: Pattern[] | undefined; search: Search } {
  const pool = merged(within.patterns, sticks)
  const nodeLimit = nodesFor(after, pool.length)
  const model = patternModel(hall.bench, pool, true, nodeLimit)
  const stocks = hall.bench.rooms.map((_, stock) => stock)
  const start = timesOf(pool, sticks)
  const firstRow = model.rows.length + limits.length
  // How many of each stock there are is a whole number of its own: a search that may settle it first ends sooner.
  const whole: Model = {
    ...model,
    costs: [...pool.map(() => 0), ...stocks.map(of)],
    entries: [
      ...model.entries.map((own, i) => [...own, [firstRow + (pool[i] as Pattern).stock, 1] as const]),
      ...stocks.map((stock) => [
        ...limits.map((it, row) => [model.rows.length + row, it.of(stock)] as const),
        [firstRow + stock, -1] as const,
      ]),
    ],
    rows: [...model.rows, ...limits.map(({ most }) => ({ most })), ...stocks.map(() => ({ least: 0, most: 0 }))],
    start: [...start, ...stocks.map((stock) => sticks.filter((it) => it.stock === stock).length)],
  }
  const solved = hall.solver.solve(whole)
  return {
    solved,
    found: sticksFrom(hall.bench, pool, solved.values.slice(0, pool.length)),
    search: { after, patterns: pool.length, all: within.all, nodeLimit, nodes: Math.max(0, solved.nodes) },
  }
}

function merged(patterns: readonly Pattern[], sticks: readonly Pattern[]): Pattern[] {
  return [...new Map([...patterns, ...sticks].map((it) => [keyOf(it), it])).values()]
}

function timesOf(pool: readonly Pattern[], sticks: readonly Pattern[]): number[] {
  const times = new Map<string, number>()
  for (const it of sticks) times.set(keyOf(it), (times.get(keyOf(it)) ?? 0) + 1)
  return pool.map((it) => times.get(keyOf(it)) ?? 0)
}

/** The sticks that a solver's values stand for, when they do cut everything from sticks that are there. */
function sticksFrom(bench: Bench, pool: readonly Pattern[], values: readonly number[]): Pattern[] | undefined {
  const pieces = bench.demand.reduce((sum, it) => sum + it, 0)
  const isTimes = (it: number): boolean => Number.isFinite(it) && it <= pieces
  if (values.length !== pool.length || !values.every(isTimes)) return undefined
  const sticks = pool.flatMap((pattern, i) =>
    Array.from({ length: Math.max(0, Math.round(values[i] as number)) }, () => pattern),
  )
  const cut = bench.demand.map((_, kind) => sticks.reduce((sum, it) => sum + (it.counts[kind] as number), 0))
  const isAll = cut.every((count, kind) => count >= (bench.demand[kind] as number))
  const isThere = bench.limits.every((limit, stock) => sticks.filter((it) => it.stock === stock).length <= limit)
  return isAll && isThere ? withoutSurplus(bench, sticks, cut) : undefined
}

/** More cut than is needed is left uncut: on the stick that then keeps the longest offcut. */
function withoutSurplus(bench: Bench, sticks: readonly Pattern[], cut: readonly number[]): Pattern[] {
  const own = sticks.map(({ stock, counts }) => ({ stock, counts: [...counts] }))
  for (const [kind, count] of cut.entries()) {
    for (let surplus = count - (bench.demand[kind] as number); surplus > 0; surplus--) {
      const holders = own.filter((it) => (it.counts[kind] as number) > 0)
      const left = (it: Pattern): number => (bench.rooms[it.stock] as number) - bench.kerf - used(bench, it.counts)
      const stick = holders.reduce((best, it) => (left(it) > left(best) ? it : best))
      stick.counts[kind] = (stick.counts[kind] as number) - 1
    }
  }
  return own.filter((it) => it.counts.some((count) => count > 0))
}
