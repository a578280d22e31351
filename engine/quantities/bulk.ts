// This file is about stuff by the heap as it is carried and weighed: “the trailer takes a yard and a half”, “half a cube”, “1.5 t a cube”.
// A yard that a trailer holds is a cubic yard, and a cube a cubic metre.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { type NumberRead, spokenFractionAfter } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { unitAt } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const vessels =
  /^(trailers?|utes?|trucks?|pickups?|trays?|skips?|bins?|bed|box|barrows?|wheelbarrows?|dumpsters?|tippers?|lorry|lorries|vans?|wagons?|carts?|buckets?|loaders?|tractors?|load|loads)$/
const holds =
  /^(takes?|takin['’]?|holds?|holding|carry|carries|fits?|moves?|tips?|does|do|hauls?|is|of|good|for|about|around|only|just|maybe|roughly|up|to|at|most|a|an|it|,)$/
const heaped =
  /^(concrete|readymix|premix|soil|dirt|spoil|earth|muck|clay|gravel|stone|rock|sand|mulch|fill|loose|topsoil|aggregate|scoria|trailer|ute|skip|tipper|barrow|load|loads)$/

/** Whether a trailer, a barrow or the like is said to hold what stands there, or is called by it. */
function isHeld(tokens: readonly Scanned[], at: number, next: number): boolean {
  if ([0, 1].some((i) => vessels.test(lower(tokens[next + i])))) return true
  for (let i = at - 1; i >= Math.max(0, at - 6); i--) {
    if (vessels.test(lower(tokens[i])) || /^(holds?|holding)$/.test(lower(tokens[i]))) return true
    if (!holds.test(lower(tokens[i]))) return false
  }
  return false
}

/** “A cube”: of something that is heaped or poured, and no block of wood. */
const isOfHeap = (tokens: readonly Scanned[], at: number, next: number): boolean =>
  isHeld(tokens, at, next) || tokens.slice(Math.max(0, at - 40), next + 40).some((it) => heaped.test(lower(it)))

/** What a number says of a heap: how much of it there is, or what so much of it weighs. */
export const bulkAfter = (tokens: readonly Scanned[], at: number, number: NumberRead): Found | null =>
  densityAfter(tokens, number) ?? heapAfter(tokens, at, number)

const readAs = { yd3: 'a yard that is heaped is a cubic yard', m3: 'a cube is a cubic metre' } as const

/** The unit of a heap at a token: a yard that something holds, a cube of something heaped. */
function heapAt(tokens: readonly Scanned[], at: number, begin: number): keyof typeof readAs | null {
  const word = lower(tokens[at])
  if (/^cubes?$/.test(word) && isOfHeap(tokens, begin, at + 1)) return 'm3'
  // “1.5 yd3” says it itself.
  const isCubed = tokens[at + 1]?.glued && /^[3³]$/.test(lower(tokens[at + 1]))
  return /^(yards?|yds?)$/.test(word) && !isCubed && isHeld(tokens, begin, at + 1) ? 'yd3' : null
}

/** “Two and a half yards”, “half a cube”, “0.6 of a cube”. */
function heapAfter(tokens: readonly Scanned[], at: number, { value, next }: NumberRead): Found | null {
  const part = value.compare(1) < 0 && value.d !== 1n
  const from = part && lower(tokens[next]) === 'of' ? next + 1 : next
  const start = part && /^an?$/.test(lower(tokens[from])) ? from + 1 : next
  const unit = heapAt(tokens, start, at)
  return unit && heap(tokens, value, unit, start + 1)
}

/** “A yard and a half”, “a cube”: the article is the number. */
export function heapByArticle(tokens: readonly Scanned[], at: number): Found | null {
  const start = /^an?$/.test(lower(tokens[at])) ? at + 1 : at
  const unit = heapAt(tokens, start, at)
  if (!unit) return null
  const found = heap(tokens, new Fraction(1), unit, start + 1)
  // Without its article only “yard and a half”; “900 kg a cube”, “42 a yard”: what it is reckoned by.
  return (start === at && found.next === start + 1) ||
    /^(\d.*|kg|t|tonnes?|tons?|lbs?|pounds?|kilos?)$/.test(lower(tokens[at - 1]))
    ? null
    : found
}

function heap(tokens: readonly Scanned[], value: Fraction, unit: keyof typeof readAs, next: number): Found {
  const extra = value.d === 1n ? spokenFractionAfter(tokens, next) : null
  return {
    next: extra?.next ?? next,
    quantity: quantity(value.add(extra?.value ?? 0), unit),
    bare: null,
    note: readAs[unit],
  }
}

const densities: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  lb: { yd3: 'lb/yd3', ft3: 'lb/ft3' },
  ton: { yd3: 'ton/yd3' },
  kg: { m3: 'kg/m3' },
  tonne: { m3: 'tonne/m3' },
}

/** “1.5 t a cube”, “2,100 pounds a loose yard”, “1.4 tonnes per cubic metre”: what so much of it weighs. */
function densityAfter(tokens: readonly Scanned[], { value, next }: NumberRead): Found | null {
  const mass = lower(tokens[next]) === 't' ? { unit: 'tonne', next: next + 1 } : unitAt(tokens, next, false)
  const by = densities[mass?.unit ?? '']
  if (!mass || !by) return null
  let at = mass.next
  if (/^(per|to|for|in|\/)$/.test(lower(tokens[at]))) at++
  const isJoined = at > mass.next
  if (/^(a|an|the|each|every|one)$/.test(lower(tokens[at]))) at++
  else if (!isJoined) return null
  if (/^(loose|solid|heaped|bank)$/.test(lower(tokens[at]))) at++
  const named = unitAt(tokens, at, false)
  const under = /^cubes?$/.test(lower(tokens[at]))
    ? { unit: 'm3', next: at + 1 }
    : named && { unit: named.unit === 'yd' ? 'yd3' : named.unit, next: named.next }
  const unit = under && by[under.unit]
  return unit && under ? { next: under.next, quantity: quantity(value, unit), bare: null } : null
}
