// This file is about stuff that is sold by the heap: a yard of it is a cubic yard.
import type Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import type { UnitRead } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** Whether a token names such stuff. */
export const isLoose = (token: Scanned | undefined): boolean => loose.has(lower(token))

/** A yard of loose material is a cubic yard; a yard of anything else is three feet. */
export function looseYard(tokens: readonly Scanned[], value: Fraction, unit: UnitRead): Found | null {
  if (unit.unit !== 'yd') return null
  const of = [tokens[unit.next + 1], tokens[unit.next + 2], tokens[unit.next + 3]]
  const isOf = lower(tokens[unit.next]) === 'of' && of.some(isLoose)
  return isOf || holds.test(lower(tokens[unit.next]))
    ? {
        next: unit.next,
        quantity: quantity(value, 'yd3'),
        bare: null,
        note: 'a yard of loose material is a cubic yard',
      }
    : null
}
// “A 10 yard dumpster”, “a six yard skip”.
const holds = /^(dumpsters?|skips?|rolloffs?)$/
const loose = new Set([
  'stone',
  'gravel',
  'concrete',
  'mulch',
  'soil',
  'topsoil',
  'dirt',
  'sand',
  'rock',
  'fill',
  'ballast',
  'compost',
  'chips',
  'readymix',
  'mix',
  'base',
  'shingle',
  'aggregate',
])
