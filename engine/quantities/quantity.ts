// This file is about quantities: an amount of some kind, and the unit people would say it in.
import Fraction from 'fraction.js'
import { add, type Amount, compare, exact, isExact, over, times, toNumber } from './amount.ts'
import { type Kind, unitNamed } from './units.ts'

/** `amount` is in the kind's base unit (inch, pound, °F, day, one); `unit` is the one it was said in or is best shown in. */
export interface Quantity {
  readonly kind: Kind
  readonly amount: Amount
  readonly unit: string
}

/** What a word can hold: a quantity, one for each place, an option of a choice, or a verdict (null: cannot say). */
export type Value = Quantity | readonly Quantity[] | string | boolean | null

/** The units that results are shown in where nobody said one. */
export type System = 'imperial' | 'metric'

/** So much of a unit: `quantity('93', 'in')`, `quantity(11, 'post')`. */
export function quantity(amount: number | string | Amount, unitName: string): Quantity {
  const unit = unitNamed(unitName)
  const number: Amount = typeof amount === 'number' || typeof amount === 'string' ? exact(amount) : amount
  const scaled = times(number, unit.size)
  return { kind: unit.kind, amount: unit.zero ? add(scaled, unit.zero) : scaled, unit: unitName }
}

/** The amount in a unit of the same kind. */
export function amountIn(q: Quantity, unitName: string): Amount {
  const unit = unitNamed(unitName)
  if (unit.kind !== q.kind) throw new Error(`“${unitName}” measures ${unit.kind}, not ${q.kind}`)
  const above = unit.zero ? add(q.amount, unit.zero.neg()) : q.amount
  return over(above, unit.size)
}

/** The nearest double in a unit: for JSON and drawings, never for working. */
export const numberIn = (q: Quantity, unitName: string): number => toNumber(amountIn(q, unitName))

/** The exact number of a quantity, in its base unit. Throws for one that is only approximate: whoever works by it needs all of it. */
export function exactly(q: Quantity): Fraction {
  if (!isExact(q.amount)) throw new Error(`${numberIn(q, q.unit)} ${q.unit} is not exact`)
  return q.amount
}

/** Whether a value is one quantity: no list, no choice, no verdict. */
export const isQuantity = (value: Value | undefined): value is Quantity =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
/** Whether a value is a list of quantities, one for each place or in the order they were told. */
export const isList = (value: Value | undefined): value is readonly Quantity[] => Array.isArray(value)

/** Whether a is surely less than b. */
export const less = (a: Quantity, b: Quantity): boolean => compare(a.amount, b.amount) === -1
export const equal = (a: Quantity, b: Quantity): boolean => a.kind === b.kind && compare(a.amount, b.amount) === 0

/** Whether it holds that part more than so many times: more than anybody sets out at once, most likely a slip of units. */
export const holdsMoreThan = (most: number, part: Quantity, whole: Quantity): boolean =>
  less({ ...part, amount: times(part.amount, exact(most)) }, whole)

export const zero = (kind: Kind, unit: string): Quantity => ({ kind, amount: new Fraction(0), unit })
