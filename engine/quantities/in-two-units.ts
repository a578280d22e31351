// This file is about a measure told in two units, other than feet and inches: metres with centimetres, hours with minutes.
import Fraction from 'fraction.js'
import { endsMeasure } from './feet-and-inches.ts'
import type { Found } from './found.ts'
import { numberAt } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { unitAt, type UnitRead } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** "1 m 80", "1m80 cm", "2 m 5 cm", "1m800", "one metre eighty", "two metres and forty centimetres". */
export function centimetresAfter(
  tokens: readonly Scanned[],
  metres: Fraction,
  unit: UnitRead,
  spoken: boolean,
): Found | null {
  if (metres.d !== 1n) return null
  const total = (size: number | Fraction, parts: number, next: number): Found => ({
    next,
    quantity: quantity(metres.add(new Fraction(size).div(parts)), 'm'),
    bare: null,
  })
  const small = tokens[unit.next]
  if (small?.sort === 'digits' && /^\d\d$/.test(small.text) && !unitAt(tokens, unit.next + 1, true))
    return total(Number(small.text), 100, unit.next + 1)
  if (small?.glued && /^\d{3}$/.test(small.text) && !tokens[unit.next + 1]?.glued)
    return total(Number(small.text), 1000, unit.next + 1)
  // "Rails 2 m and 40 cm" may be two sizes: only in full words is it one.
  const hasAnd = lower(small) === 'and'
  if (hasAnd && !/^(metre|meter)s?$/.test(lower(tokens[unit.next - 1]))) return null
  const number = numberAt(tokens, hasAnd ? unit.next + 1 : unit.next, false)
  if (!number || number.feet || number.value.compare(100) >= 0 || number.value.compare(1) < 0) return null
  const named = unitAt(tokens, number.next, true)
  if (named?.unit === 'cm' && !(hasAnd && named.next !== number.next + 1)) return total(number.value, 100, named.next)
  const isSaid = spoken && number.spoken && !hasAnd && number.value.compare(10) >= 0 && number.value.d === 1n
  return isSaid && !named && endsMeasure(tokens[number.next]) ? total(number.value, 100, number.next) : null
}

/** "2 h 45 min", "2 hours and 45 minutes", "2h45": hours with their minutes. */
export function minutesAfter(tokens: readonly Scanned[], hours: Fraction, at: number): Found | null {
  const from = lower(tokens[at]) === 'and' ? at + 1 : at
  const minutes = tokens[from]
  const spoken = minutes?.sort === 'word' ? numberAt(tokens, from, false) : null
  if (
    spoken &&
    spoken.value.d === 1n &&
    spoken.value.compare(60) < 0 &&
    /^min(ute)?s?$/.test(lower(tokens[spoken.next]))
  )
    return { next: spoken.next + 1, quantity: quantity(hours.add(spoken.value.div(60)), 'h'), bare: null }
  if (minutes?.sort !== 'digits' || !/^[0-5]?\d$/.test(minutes.text)) return null
  const isSaid = /^(min|mins|minutes?|m)$/.test(lower(tokens[from + 1])) && lower(tokens[from + 2]) !== '/'
  // "2h45" alone is written together; "8 h 20 pickets" are two things.
  const isTogether = from === at && minutes.glued && /^\d\d$/.test(minutes.text) && tokens[from + 1]?.glued !== true
  if (!isSaid && !isTogether) return null
  const total = hours.add(new Fraction(minutes.text).div(60))
  return { next: isSaid ? from + 2 : from + 1, quantity: quantity(total, 'h'), bare: null }
}
