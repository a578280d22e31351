// This file is about marks on a tape told without a unit: “to a 16th”, “the nearest eighth” are fractions of an inch.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'

const parts: Readonly<Record<string, number>> = {
  eighth: 8,
  sixteenth: 16,
  '8': 8,
  '16': 16,
  '32': 32,
  '64': 64,
}

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** A mark of the inch; null where the place names none. “To the 16th” is a day. */
export function tapeMarkAt(tokens: readonly Scanned[], at: number): Found | null {
  const part = parts[lower(tokens[at])]
  const [before, twoBefore] = [lower(tokens[at - 1]), lower(tokens[at - 2])]
  const isMark = before === 'nearest' || (/^an?$/.test(before) && twoBefore === 'to')
  if (!part || !isMark) return null
  // “16th” is two pieces.
  const isInFigures = /^\d/.test(lower(tokens[at]))
  if (isInFigures && !/^(th|nd)$/.test(lower(tokens[at + 1]))) return null
  let next = at + (isInFigures ? 2 : 1)
  if (lower(tokens[next]) === 'of' && lower(tokens[next + 1]) === 'an') next += 2
  if (lower(tokens[next]) === 'inch') next++
  return { next, quantity: quantity(new Fraction(1, part), 'in'), bare: null }
}
