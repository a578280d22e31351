// This file is about how far a can goes where no unit says it whole: "a gallon does 300 sq ft", "one litre covers 12 m²", "350 to the gallon".
import { tableOf } from './table-of.ts'
import type Fraction from 'fraction.js'
import type { Found } from './found.ts'
import type { NumberRead } from './numbers.ts'
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

const areas = { gal: 'ft2', L: 'm2' } as const
// What a gallon and a litre of paint, stain or primer may cover, in square feet and square metres: common practice, no source. Fewer a gallon is a price.
const plausible = { gal: [100, 1000], L: [2, 30] } as const
const covers = /^(cover(s|age|ing)?|does|do|goes|spreads?|coats?|rate|first|second|third|both|one)$/
const priced = /^(costs?|price[sd]?|pay|paid|paying|bucks?|dollars?|quid|pounds?|euros?|at|@|\$|£|€)$/
const ends = /^(and|but|so|on|or|then|if|for|in|with|how|what|first|second|the|per)$/

/** “350 a gallon”, “12 to the litre”, “a gallon covers 350”: a number that is an area for a can, though nobody names the area; undefined where it may be a price. */
export function bareSpread(tokens: readonly Scanned[], at: number, { value, next }: NumberRead): Found | undefined {
  const word = (i: number): string => tokens[i]?.text.toLowerCase() ?? ''
  const before = [...Array(6).keys()].map((i) => word(at - 1 - i))
  const spread = (can: string | undefined, end: number) => {
    const [least, most] = plausible[can as keyof typeof areas] ?? [1, 0]
    const fits = value.compare(least) >= 0 && value.compare(most) <= 0
    return fits
      ? { quantity: quantity(value, `${areas[can as keyof typeof areas]}/${can}`), bare: null, next: end }
      : undefined
  }
  const isTo = word(next) === 'to' && /^(the|a|each|every)$/.test(word(next + 1))
  const from = isTo ? next + 2 : /^(a|per|\/|each|every)$/.test(word(next)) ? next + 1 : undefined
  if (from !== undefined) {
    const can = cans[word(from)]
    const isPlain = isTo || before.some((it) => covers.test(it)) || can === 'gal'
    return isPlain && !priced.test(before[0] as string) && !before.some((it) => /^(costs?|price)$/.test(it))
      ? spread(can, from + 1)
      : undefined
  }
  if (tokens[next]?.sort === 'word' && !ends.test(word(next))) return undefined
  const can = (['gal', 'L'] as const).find(
    (it) => spreadOf(tokens, at, value, areas[it])?.unit === `${areas[it]}/${it}`,
  )
  return spread(can, next)
}
