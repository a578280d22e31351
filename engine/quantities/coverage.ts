// This file is about how far a can goes where the can is named first: "a gallon does 300 sq ft", "one litre covers 12 m²".
import { tableOf } from './table-of.ts'
import type Fraction from 'fraction.js'
import { type Quantity, quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'

const cans = tableOf<string>({ gallon: 'gal', gal: 'gal', litre: 'L', liter: 'L', l: 'L' })
const spreads = new Set(['ft2/gal', 'm2/L'])
const goes = /^(does|do|covers?|coats?|goes|spreads?|paints?|stains?|good|enough)$/
const small = /^(will|can|should|only|is|for|over|about|around|roughly|some|up|to|at|least|most|says|it|out|,)$/

/** An area as the spread of a can, where “a gallon does” or the like leads up to it; undefined where nothing does. */
export function spreadOf(tokens: readonly Scanned[], at: number, area: Fraction, unit: string): Quantity | undefined {
  let verb = false
  for (let i = at - 1; i >= Math.max(0, at - 7); i--) {
    const word = (tokens[i] as Scanned).text.toLowerCase()
    if (goes.test(word)) verb = true
    else if (verb && cans[word]) {
      const spread = `${unit}/${cans[word]}`
      return spreads.has(spread) ? quantity(area, spread) : undefined
    } else if (!small.test(word)) return undefined
  }
  return undefined
}
