// This file is about the bound that dual prices give: each kind of piece gets a price, such that no pattern holds pieces worth more than its stick costs.
// Then no plan costs less than all the pieces at those prices. The best such prices come from column generation
// (P. C. Gilmore and R. E. Gomory): solve for the patterns known, look for one that its prices make worth more than its stick, add it, again.
import { cheapestRoom } from './bounds.ts'
import { bestPattern, fill, keyOf, type Pattern, type Totals } from './patterns.ts'
import type { Bench } from './problem.ts'
import type { Model, Solver } from './solver.ts'

/** Prices are whole numbers of this part of a step, so that sums of them are exact. */
export const part = 1_000_000

export interface Duals {
  /** What one of each kind is worth, in parts. */
  readonly values: readonly number[]
  /** What each stock's scarcity adds to one of it, in parts: nought unless it is at hand only in part. */
  readonly charges: readonly number[]
}

/** What no plan costs less than, in parts. */
export const boundOf = (bench: Bench, { values, charges }: Duals): number =>
  values.reduce((sum, value, kind) => sum + value * (bench.demand[kind] as number), 0) -
  charges.reduce((sum, charge, stock) => sum + (charge === 0 ? 0 : charge * (bench.limits[stock] as number)), 0)

/** Prices by the material alone: each piece at what its room costs where room is cheapest. */
export function materialDuals(bench: Bench): Duals {
  const stock = cheapestRoom(bench)
  const [cost, room] = [bench.costs[stock] as number, bench.rooms[stock] as number]
  return {
    values: bench.widths.map((width) => Number((BigInt(width) * BigInt(cost) * BigInt(part)) / BigInt(room))),
    charges: bench.rooms.map(() => 0),
  }
}

/** Rows: at least so many of each kind; at most so many of each stock that is limited. */
export function patternModel(bench: Bench, patterns: readonly Pattern[], whole: boolean, nodeLimit: number): Model {
  const limited = limitedStocks(bench)
  return {
    costs: patterns.map(({ stock }) => bench.costs[stock] as number),
    entries: patterns.map(({ stock, counts }) => {
      const row = limited.indexOf(stock)
      const own = counts.flatMap((count, kind) => (count > 0 ? [[kind, count] as const] : []))
      return row < 0 ? own : [...own, [counts.length + row, 1] as const]
    }),
    rows: [
      ...bench.demand.map((least) => ({ least })),
      ...limited.map((stock) => ({ most: bench.limits[stock] as number })),
    ],
    whole,
    nodeLimit,
  }
}

export const limitedStocks = (bench: Bench): number[] =>
  bench.limits.flatMap((limit, stock) => (Number.isFinite(limit) ? [stock] : []))

const mostRounds = 400

/** The best dual prices, made exact, and the patterns that were found on the way. Without an answer from the solver, prices by the material. */
export function generate(
  bench: Bench,
  totals: Totals,
  solver: Solver,
  start: readonly Pattern[],
): { duals: Duals; patterns: Pattern[] } {
  const known = new Map(start.map((it) => [keyOf(it), it]))
  for (const [stock, room] of bench.rooms.entries())
    for (const [kind, width] of bench.widths.entries()) {
      const count = Math.min(Math.floor(room / width), bench.demand[kind] as number)
      if (count < 1) continue
      const pattern = { stock, counts: bench.widths.map((_, other) => (other === kind ? count : 0)) }
      known.set(keyOf(pattern), pattern)
    }
  const plain = materialDuals(bench)
  const limited = limitedStocks(bench)
  let best = plain
  for (let round = 0; round < mostRounds; round++) {
    const patterns = [...known.values()]
    const solved = solver.solve(patternModel(bench, patterns, false, 0))
    if (solved.status !== 'solved' || !solved.duals.every(Number.isFinite)) break
    // Rounded down, so that pieces are not worth more than they are; a hair is the solver's own.
    const inParts = (dual: number): number => Math.max(0, Math.floor(dual * part + 0.001))
    const values = bench.widths.map((_, kind) => inParts(solved.duals[kind] ?? 0))
    const charges = bench.rooms.map((_, stock) => {
      const row = limited.indexOf(stock)
      return row < 0 ? 0 : inParts(-(solved.duals[bench.widths.length + row] ?? 0))
    })
    const filled = fill(bench, totals, values)
    const found = bench.rooms.map((_, stock) => bestPattern(bench, totals, values, filled, stock))
    const candidate = madeSafe(
      bench,
      { values, charges },
      found.map((it) => it.worth),
    )
    if (boundOf(bench, candidate) > boundOf(bench, best)) best = candidate
    const better = found.filter(({ pattern, worth }) => {
      const cost = (bench.costs[pattern.stock] as number) * part + (charges[pattern.stock] as number)
      return worth > cost + tolerance && !known.has(keyOf(pattern))
    })
    if (better.length === 0) break
    for (const { pattern } of better) known.set(keyOf(pattern), pattern)
  }
  return { duals: best, patterns: [...known.values()] }
}

// The solver's own rounding, in parts.
const tolerance = 3

/** Prices lowered together until no stick's pieces are worth more than the stick. */
function madeSafe(bench: Bench, { values, charges }: Duals, worth: readonly number[]): Duals {
  let [most, cost] = [1, 1]
  for (const [stock, top] of worth.entries()) {
    const own = (bench.costs[stock] as number) * part + (charges[stock] as number)
    if (top > own && top * cost > most * own) [most, cost] = [top, own]
  }
  return most === cost ? { values, charges } : { values: values.map((it) => Math.floor(it * (cost / most))), charges }
}
