// This file is about cutting jobs made up from a seed: the size of a house's fence, in feet and inches or in millimetres.
import Fraction from 'fraction.js'
import type { CutProblem } from '../../../engine/cutting/problem.ts'

/** Numbers from 0 to 1 that are the same for the same seed (T. Schulze's mulberry32). */
export function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** Up to 400 pieces of up to 12 lengths from up to 5 stock lengths, each with its price. */
export function generatedJob(seed: number): CutProblem {
  const next = chance(seed)
  const from = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1))
  const isMetric = next() < 0.3
  const inches = (mm: number): Fraction => new Fraction(mm * 5, 127)
  const stockCount = from(1, 5)
  const offered = isMetric ? [2400, 3000, 3600, 4200, 4800] : [96, 120, 144, 168, 192]
  const stockLengths = offered
    .map((length) => ({ length, order: next() }))
    .sort((a, b) => a.order - b.order)
    .slice(0, stockCount)
    .map(({ length }) => length)
    .sort((a, b) => a - b)
  // So many cents for a foot or so, a little more or less for each length, as yards have it.
  const each = from(55, 220)
  const hasPrices = next() < 0.9
  const stocks = stockLengths.map((length) => ({
    length: isMetric ? inches(length) : new Fraction(length),
    ...(hasPrices ? { price: Math.round((length / (isMetric ? 300 : 12)) * each * (0.88 + 0.24 * next())) } : {}),
  }))
  const longest = stockLengths.at(-1) as number
  const kinds = from(1, 12)
  const most = from(kinds, 400)
  const pieces = Array.from({ length: kinds }, () => {
    const share = 0.06 + next() ** 1.4 * 0.9
    const length = isMetric ? inches(Math.floor(longest * share)) : new Fraction(Math.floor(longest * share * 16), 16)
    return { length, count: from(1, Math.max(1, Math.floor((2 * most) / kinds) - 1)) }
  })
  const whole = pieces.reduce((sum, it) => sum + it.count, 0)
  const scale = Math.min(1, 400 / whole)
  return {
    pieces: pieces.map((it) => ({ ...it, count: Math.max(1, Math.floor(it.count * scale)) })),
    stocks,
    kerf: isMetric ? inches(from(0, 3)) : new Fraction(from(0, 2), 16),
    endTrim: next() < 0.3 ? (isMetric ? inches(10) : new Fraction(1, 2)) : new Fraction(0),
    leastOffcut: new Fraction(12),
  }
}
