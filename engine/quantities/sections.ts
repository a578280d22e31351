// This file is about sticks called by their size: "2x4", "four by four", "5/4x6", "90x45".
import { tableOf } from './table-of.ts'
import Fraction from 'fraction.js'
import { dressedLumber } from '../tables/dressed-lumber.ts'
import { quantity } from './quantity.ts'
import type { Reading } from './reading.ts'
import type { Scanned } from './scan.ts'
import { unitAt } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

export interface SectionRead {
  readonly section: NonNullable<Reading['section']>
  readonly next: number
}

const spoken = tableOf<string>({
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  six: '6',
  eight: '8',
  ten: '10',
  twelve: '12',
  fours: '4',
  sixes: '6',
  eights: '8',
  tens: '10',
  twelves: '12',
})

const afterHyphen = (tokens: readonly Scanned[], at: number): number =>
  tokens[at]?.text === '-' && tokens[at]?.glued && tokens[at + 1]?.glued ? at + 1 : at

/** The section that begins at a token. A nominal size is a name: its actual size comes from the dressed-lumber table. */
export function sectionAt(tokens: readonly Scanned[], at: number): SectionRead | null {
  const first = sideAt(tokens, at)
  if (!first) return null
  // "two-by-four".
  const from = afterHyphen(tokens, first.next)
  const joint = tokens[from]?.text.toLowerCase()
  if (joint !== 'x' && joint !== 'by') return null
  const second = sideAt(tokens, joint === 'by' ? afterHyphen(tokens, from + 1) : from + 1)
  if (!second) return null
  const [a, b] = [first.name, second.name]
  const [small, large] = [dressedLumber[a], dressedLumber[b]]
  // "10 x 12 ft", "12 by 36 inches": a size with a unit is two lengths, not a name; "2x4x8" carries its length on.
  const unit = unitAt(tokens, second.next, false)
  // "a 4x4 in it": written together it is the stick, and "in" is only a small word.
  const together = tokens[from]?.glued === true && tokens[from + 1]?.glued === true
  const hasUnit = unit !== null && !(unit.doubtful === true && (unit.unit !== 'in' || together))
  if (small && large && Number(b) <= 12 && !hasUnit && isStick(a, b)) {
    const fullAfter = fullSize.test(tokens[second.next]?.text ?? '')
    if (fullAfter || fullSize.test(tokens[at - 1]?.text ?? ''))
      return {
        next: fullAfter ? second.next + 1 : second.next,
        section: {
          name: `${a}x${b}`,
          thickness: quantity(new Fraction(a), 'in'),
          width: quantity(new Fraction(b), 'in'),
          nominal: false,
        },
      }
    return {
      next: second.next,
      section: { name: `${a}x${b}`, thickness: quantity(small, 'in'), width: quantity(large, 'in'), nominal: true },
    }
  }
  // “9 x 9 cm” is as much a post as “90x90”.
  const isInCentimetres = unit?.unit === 'cm' && a === b
  const sizes = [a, b].map((it) => Number(it) * (isInCentimetres ? 10 : 1))
  if (!/^\d+$/.test(a) || !/^\d+$/.test(b) || !sizes.every((it) => sawnSizes.has(it)) || Math.max(...sizes) < 32)
    return null
  if (unit && unit.unit !== 'mm' && !isInCentimetres) return null
  const isApart = tokens[from]?.glued !== true
  if (!unit && isApart && isOfGround(tokens, at, second.next)) return null
  const [thin, wide] = [...sizes].sort((one, other) => one - other)
  return {
    next: unit ? unit.next : second.next,
    section: {
      name: `${a}x${b}`,
      thickness: quantity(thin as number, 'mm'),
      width: quantity(wide as number, 'mm'),
      nominal: false,
    },
  }
}

const ground = /^(yard|garden|rectangle|rectangular|oblong|lot|plot|paddock|pen|patch|enclosure|allotment|lawn)$/
const sticks = /^(post|rail|picket|timber|stringer|frame|board|stock)s?$/
/** “Yard is 60 by 40, closed”: ground is spoken of, and no timber. */
const isOfGround = (tokens: readonly Scanned[], from: number, to: number): boolean => {
  const near = [...tokens.slice(Math.max(0, from - 4), from), ...tokens.slice(to, to + 3)].map(lower)
  return near.some((it) => ground.test(it)) && !near.some((it) => sticks.test(it))
}

/** Millimetres that timber is sawn or planed to, common practice, no source. “57 by 39” is a gate, “12 by 30” a hole. */
const sawnSizes = new Set(
  [
    [12, 13, 15, 16, 18, 19, 20, 21, 22, 25, 27, 28, 30, 32, 33, 35, 38],
    [40, 42, 44, 45, 47, 48, 50, 55, 58, 60, 63, 65, 66, 68, 69, 70, 72, 75],
    [80, 85, 88, 89, 90, 94, 95, 96, 97, 98, 100, 110, 114, 115, 119, 120, 125],
    [130, 138, 140, 144, 145, 147, 150, 160, 169, 170, 175, 180, 184, 190, 194, 195],
    [200, 219, 220, 225, 235, 240, 245, 250, 285, 290, 295, 300],
  ].flat(),
)

/** "6x6 actual", "rough sawn 6x6", "a full 6x6": it measures what it is called. */
const fullSize = /^(actual|full|true|rough|sawn|roughsawn)$/i

/** Sizes that sticks are sold in: no wider than a 12, no thicker than it is wide. A 10x12 is a shed, an 8x10 a rug. */
const isStick = (a: string, b: string): boolean =>
  new Fraction(a).compare(new Fraction(b)) <= 0 && new Fraction(a).compare(8) < 0

function sideAt(tokens: readonly Scanned[], at: number): { name: string; next: number } | null {
  const token = tokens[at]
  if (!token) return null
  if (token.text === '5' && tokens[at + 1]?.text === '/' && tokens[at + 2]?.text === '4')
    return { name: '5/4', next: at + 3 }
  const quarter = afterHyphen(tokens, at + 1)
  if (/^five$/i.test(token.text) && /^quarter$/i.test(tokens[quarter]?.text ?? ''))
    return { name: '5/4', next: quarter + 1 }
  if (token.sort === 'digits' && /^\d+$/.test(token.text)) return { name: token.text, next: at + 1 }
  const word = /^hundred$/i.test(tokens[at + 1]?.text ?? '') ? undefined : spoken[token.text.toLowerCase()]
  if (word) return { name: word, next: at + 1 }
  // “A hundred by a hundred”.
  const from = /^(a|one)$/i.test(token.text) ? at + 1 : at
  return /^hundred$/i.test(tokens[from]?.text ?? '') && from > at ? { name: '100', next: from + 1 } : null
}

/** “2x4x8” carries its length on, in feet; from 36 up in inches: “2x4x96”. */
export function lengthOfStick(tokens: readonly Scanned[], at: number): Pick<Reading, 'quantity' | 'bare'> | null {
  const [joint, length] = [tokens[at], tokens[at + 1]]
  if (lower(joint) !== 'x' || !joint?.glued || !/^\d{1,3}$/.test(length?.text ?? '') || !length?.glued) return null
  const long = Number(length.text)
  if (
    long < 3 ||
    (long > 24 && long < 36) ||
    long > 300 ||
    (tokens[at + 2]?.glued && /^[\dx'"/.-]/.test(lower(tokens[at + 2])))
  )
    return null
  return { quantity: quantity(long, long < 36 ? 'ft' : 'in'), bare: null }
}
