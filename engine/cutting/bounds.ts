// This file is about what no plan can beat, found without a search: by the material, by which pieces share no stick, and by what prices can add up to.
import type { Bench } from './problem.ts'

/** All the pieces, each with its cut. */
export const material = (bench: Bench): number =>
  bench.widths.reduce((sum, width, kind) => sum + width * (bench.demand[kind] as number), 0)

/** The stock whose room costs least: no plan pays less for room than this. Sticks that are at hand only in part count as if there were more. */
export function cheapestRoom(bench: Bench): number {
  let best = -1
  for (const [stock, room] of bench.rooms.entries()) {
    if (room <= bench.kerf) continue
    const [cost, known] = [bench.costs[stock] as number, bench.rooms[best] as number]
    if (best < 0 || cost * known < (bench.costs[best] as number) * room) best = stock
  }
  return best
}

/**
 * How many sticks of one room the pieces take at least (S. Martello and P. Toth): for each small width, pieces that leave less than that on a
 * stick of their own, pieces over half a stick, which share none, and what of the middling ones does not fit beside those.
 */
export function fewestSticks(bench: Bench, room: number): number {
  const { widths, demand } = bench
  const smalls = [0, ...widths.filter((it) => it * 2 <= room)]
  const total = (is: (width: number) => boolean, of: (width: number) => number): number =>
    widths.reduce((sum, width, kind) => sum + (is(width) ? of(width) * (demand[kind] as number) : 0), 0)
  return Math.max(
    ...smalls.map((small) => {
      const isAlone = (it: number): boolean => it > room - small
      const isOverHalf = (it: number): boolean => !isAlone(it) && it * 2 > room
      const isMiddling = (it: number): boolean => it * 2 <= room && it >= small
      const one = (): number => 1
      const self = (it: number): number => it
      const overHalf = total(isOverHalf, one)
      const beside = overHalf * room - total(isOverHalf, self)
      return total(isAlone, one) + overHalf + Math.max(0, Math.ceil((total(isMiddling, self) - beside) / room))
    }),
  )
}

const mostSteps = 4_000_000

/** The least sum of prices that is no less than the bound: no plan costs anything between. */
export function leastSum(bench: Bench, bound: number): number {
  const costs = [...new Set(bench.costs)].filter((it) => it > 0).sort((a, b) => a - b)
  const [least] = costs
  const from = Math.max(0, Math.ceil(bound))
  if (least === undefined || from > mostSteps) return from
  const most = from + least
  const reached = new Uint8Array(most + 1)
  reached[0] = 1
  for (let sum = 1; sum <= most; sum++)
    if (costs.some((cost) => cost <= sum && reached[sum - cost] === 1)) reached[sum] = 1
  return Math.max(from, reached.indexOf(1, from))
}
