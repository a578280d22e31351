// This file is about patterns: what may be cut from one stick. The best one for given values, and all that are good enough.
import type { Bench } from './problem.ts'

/** So many of each kind from one stick of a stock. */
export interface Pattern {
  readonly stock: number
  readonly counts: readonly number[]
}

export const used = (bench: Bench, counts: readonly number[]): number =>
  counts.reduce((sum, count, kind) => sum + count * (bench.widths[kind] as number), 0)

/** What is left of a stick when the last cut is made; nothing where the last piece ends flush, or within a cut of the end. */
export const offcut = (bench: Bench, { stock, counts }: Pattern): number =>
  Math.max(0, (bench.rooms[stock] as number) - bench.kerf - used(bench, counts))

export const keyOf = ({ stock, counts }: Pattern): string => `${stock}:${counts.join()}`

/** Every total width that pieces of the job can add up to on one stick, smallest first; for each kind, where the total without one of it stands. */
export interface Totals {
  readonly at: Float64Array
  readonly without: readonly Int32Array[]
}

const mostCells = 6_000_000

/** Nothing where there are more than can be gone through. */
export function totalsOf(bench: Bench): Totals | undefined {
  const room = Math.max(...bench.rooms)
  let totals = new Set([0])
  for (const [kind, width] of bench.widths.entries()) {
    const next = new Set(totals)
    for (const total of totals) {
      let sum = total + width
      for (let count = 1; count <= (bench.demand[kind] as number) && sum <= room; count++, sum += width) next.add(sum)
    }
    totals = next
    if (totals.size * bench.widths.length > mostCells) return undefined
  }
  const at = Float64Array.from(totals).sort()
  const index = new Map(Array.from(at, (total, i) => [total, i]))
  return {
    at,
    without: bench.widths.map((width) => Int32Array.from(at, (total) => index.get(total - width) ?? -1)),
  }
}

/** For kinds from each one on: the most value that a total, or any total up to it, can hold. */
export interface Filled {
  readonly exactly: readonly Float64Array[]
  readonly upTo: readonly Float64Array[]
}

/** Values are whole numbers, so that sums of them are exact. */
export function fill(bench: Bench, { at, without }: Totals, values: readonly number[]): Filled {
  const kinds = bench.widths.length
  const exactly: Float64Array[] = new Array(kinds + 1)
  const upTo: Float64Array[] = new Array(kinds + 1)
  const last = new Float64Array(at.length).fill(Number.NEGATIVE_INFINITY)
  last[0] = 0
  exactly[kinds] = last
  upTo[kinds] = new Float64Array(at.length)
  for (let kind = kinds - 1; kind >= 0; kind--) {
    const behind = exactly[kind + 1] as Float64Array
    const less = without[kind] as Int32Array
    const value = values[kind] as number
    const most = bench.demand[kind] as number
    const own = new Float64Array(at.length)
    const best = new Float64Array(at.length)
    let soFar = Number.NEGATIVE_INFINITY
    for (let i = 0; i < at.length; i++) {
      let top = behind[i] as number
      let from = less[i] as number
      for (let count = 1; count <= most && from >= 0; count++) {
        const sum = (behind[from] as number) + count * value
        if (sum > top) top = sum
        from = less[from] as number
      }
      own[i] = top
      if (top > soFar) soFar = top
      best[i] = soFar
    }
    exactly[kind] = own
    upTo[kind] = best
  }
  return { exactly, upTo }
}

/** Where the greatest total that fits stands. */
function lastWithin(at: Float64Array, room: number): number {
  let [low, high] = [0, at.length - 1]
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((at[middle] as number) <= room) low = middle
    else high = middle - 1
  }
  return low
}

/** The pattern worth most on a stock, and its worth. */
export function bestPattern(
  bench: Bench,
  totals: Totals,
  values: readonly number[],
  { exactly, upTo }: Filled,
  stock: number,
): { pattern: Pattern; worth: number } {
  const room = bench.rooms[stock] as number
  const within = lastWithin(totals.at, room)
  const worth = (upTo[0] as Float64Array)[within] as number
  let at = (exactly[0] as Float64Array).indexOf(worth)
  const counts = bench.widths.map((_, kind) => {
    const behind = exactly[kind + 1] as Float64Array
    const target = (exactly[kind] as Float64Array)[at] as number
    let count = 0
    while ((behind[at] as number) + count * (values[kind] as number) !== target) {
      at = (totals.without[kind] as Int32Array)[at] as number
      count++
    }
    return count
  })
  return { pattern: { stock, counts }, worth }
}

export interface Wanted {
  /** The least worth on each stock. */
  readonly worth: readonly number[]
  /** Only those that take no further piece. */
  readonly full: boolean
  /** So much of the room must stay free. */
  readonly spared: number
  readonly most: number
}

const mostSteps = 600_000

/** Every pattern that is worth enough; nothing where there are more than `most`, or the search for them is too long. */
export function patternsWorth(
  bench: Bench,
  { at }: Totals,
  values: readonly number[],
  { upTo }: Filled,
  wanted: Wanted,
): Pattern[] | undefined {
  const kinds = bench.widths.length
  const found: Pattern[] = []
  const counts = new Array<number>(kinds).fill(0)
  let steps = 0
  const takesNoMore = (left: number): boolean =>
    counts.every((count, kind) => count >= (bench.demand[kind] as number) || (bench.widths[kind] as number) > left)
  const go = (stock: number, kind: number, left: number, worth: number, needed: number): boolean => {
    if (++steps > mostSteps) return false
    if (kind === kinds) {
      const whole = left + wanted.spared
      if (worth < needed || whole === bench.rooms[stock] || (wanted.full && !takesNoMore(whole))) return true
      found.push({ stock, counts: [...counts] })
      return found.length <= wanted.most
    }
    if (worth + ((upTo[kind] as Float64Array)[lastWithin(at, left)] as number) < needed) return true
    const width = bench.widths[kind] as number
    for (let count = Math.min(bench.demand[kind] as number, Math.floor(left / width)); count >= 0; count--) {
      counts[kind] = count
      const goesOn = go(stock, kind + 1, left - count * width, worth + count * (values[kind] as number), needed)
      if (!goesOn) return false
    }
    counts[kind] = 0
    return true
  }
  for (const [stock, room] of bench.rooms.entries()) {
    const left = room - wanted.spared
    if (left >= 0 && !go(stock, 0, left, 0, wanted.worth[stock] as number)) return undefined
  }
  return found
}
