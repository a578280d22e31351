// This file is about plans made by plain rules, longest pieces first: where a search begins, and what stands when there is no solver.
import { cheapestRoom } from './bounds.ts'
import { type Pattern, used } from './patterns.ts'
import type { Bench } from './problem.ts'

/** Longest pieces first, each on the first stick that has room; a new stick is of this stock, or, for a longer piece, the cheapest that holds it. */
export function firstFit(bench: Bench, preferred: number): Pattern[] | undefined {
  const sticks: { stock: number; left: number; counts: number[] }[] = []
  const taken = bench.rooms.map(() => 0)
  const isLeft = (stock: number): boolean => (taken[stock] as number) < (bench.limits[stock] as number)
  for (const [kind, width] of bench.widths.entries()) {
    let first = 0
    for (let piece = 0; piece < (bench.demand[kind] as number); piece++) {
      // Those of the same width found no room before `first`, so this one does not either.
      while (sticks[first] && (sticks[first] as { left: number }).left < width) first++
      let stick = sticks[first]
      if (!stick) {
        const stock =
          isLeft(preferred) && (bench.rooms[preferred] as number) >= width
            ? preferred
            : cheapestThatHolds(bench, width, isLeft)
        if (stock === undefined) return undefined
        taken[stock] = (taken[stock] as number) + 1
        stick = { stock, left: bench.rooms[stock] as number, counts: bench.widths.map(() => 0) }
        sticks.push(stick)
      }
      stick.left -= width
      stick.counts[kind] = (stick.counts[kind] as number) + 1
    }
  }
  return sticks
}

function cheapestThatHolds(bench: Bench, width: number, isLeft: (stock: number) => boolean): number | undefined {
  const fit = bench.rooms.flatMap((room, stock) => (room >= width && isLeft(stock) ? [stock] : []))
  return fit.reduce<number | undefined>(
    (best, stock) =>
      best === undefined || (bench.costs[stock] as number) < (bench.costs[best] as number) ? stock : best,
    undefined,
  )
}

/** Every stick becomes the cheapest that still holds what is cut from it. */
export function shrunk(bench: Bench, sticks: readonly Pattern[]): Pattern[] {
  const taken = bench.rooms.map((_, stock) => sticks.filter((it) => it.stock === stock).length)
  return sticks.map(({ stock, counts }) => {
    const isFree = (other: number): boolean =>
      other === stock || (taken[other] as number) < (bench.limits[other] as number)
    const best = cheapestThatHolds(bench, used(bench, counts), isFree) ?? stock
    if ((bench.costs[best] as number) >= (bench.costs[stock] as number)) return { stock, counts }
    taken[stock] = (taken[stock] as number) - 1
    taken[best] = (taken[best] as number) + 1
    return { stock: best, counts }
  })
}

export const costOf = (bench: Bench, sticks: readonly Pattern[]): number =>
  sticks.reduce((sum, { stock }) => sum + (bench.costs[stock] as number), 0)

/** The cheapest of those plans; of equally cheap ones, that of fewest sticks. Nothing where the sticks at hand do not reach that way. */
export function firstPlan(bench: Bench): Pattern[] | undefined {
  const order = [cheapestRoom(bench), ...bench.rooms.keys()]
  const plans = [...new Set(order)].flatMap((stock) => {
    const plan = firstFit(bench, stock)
    return plan ? [shrunk(bench, plan)] : []
  })
  return plans.reduce<Pattern[] | undefined>((best, plan) => {
    if (!best) return plan
    const [cost, known] = [costOf(bench, plan), costOf(bench, best)]
    return cost < known || (cost === known && plan.length < best.length) ? plan : best
  }, undefined)
}
