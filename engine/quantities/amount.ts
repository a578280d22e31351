// This file is about numbers: exact ones (fractions, all the way) and approximate ones, which carry how far off they may be.
import Fraction from 'fraction.js'

/** A number that could not be exact (pi, a root, a published table): the true value is within `error` of `value`. */
export interface About {
  readonly value: number
  readonly error: number
}

/** Any number the engine works with. A Fraction is exact. */
export type Amount = Fraction | About

export const exact = (value: number | string | bigint | Fraction): Fraction => new Fraction(value)
export const about = (value: number, error = Math.abs(value) * 2 ** -50): About => ({ value, error })

/** Whether an amount is an exact fraction, and not an approximate value with its error. */
export const isExact = (a: Amount): a is Fraction => a instanceof Fraction

/** The nearest double. */
export const toNumber = (a: Amount): number => (isExact(a) ? a.valueOf() : a.value)

const errorOf = (a: Amount): number => (isExact(a) ? 0 : a.error)
// A double's own rounding, added at every approximate step, so that the carried error is a bound and not a hope.
const grain = (x: number): number => Math.abs(x) * 2 ** -52
const approximate = (value: number, error: number): About => ({ value, error: error + grain(value) })

export function add(a: Amount, b: Amount): Amount {
  if (isExact(a) && isExact(b)) return a.add(b)
  return approximate(toNumber(a) + toNumber(b), errorOf(a) + errorOf(b))
}

export const negative = (a: Amount): Amount => (isExact(a) ? a.neg() : { value: -a.value, error: a.error })
export const subtract = (a: Amount, b: Amount): Amount => add(a, negative(b))

export function times(a: Amount, b: Amount): Amount {
  if (isExact(a) && isExact(b)) return a.mul(b)
  const [x, y] = [toNumber(a), toNumber(b)]
  return approximate(x * y, Math.abs(x) * errorOf(b) + Math.abs(y) * errorOf(a) + errorOf(a) * errorOf(b))
}

/** Division. Throws on an exact zero below the line: whoever works a line checks first. */
export function over(a: Amount, b: Amount): Amount {
  if (isExact(a) && isExact(b)) return a.div(b)
  const [x, y] = [toNumber(a), toNumber(b)]
  if (Math.abs(y) <= errorOf(b)) throw new RangeError('division by something that may be zero')
  const quotient = x / y
  return approximate(quotient, (errorOf(a) + Math.abs(quotient) * errorOf(b)) / (Math.abs(y) - errorOf(b)))
}

/** Whole powers keep an exact number exact. */
export function power(a: Amount, exponent: number): Amount {
  if (!Number.isInteger(exponent) || exponent < 0) throw new RangeError(`only whole powers from 0 up, not ${exponent}`)
  if (exponent === 0) return exact(1)
  let result = a
  for (let i = 1; i < exponent; i++) result = times(result, a)
  return result
}

/** A square root is exact when both halves of the fraction are squares, else approximate. */
export function squareRoot(a: Amount): Amount {
  const value = toNumber(a)
  if (value < 0) throw new RangeError('the square root of less than nothing')
  const root = Math.sqrt(value)
  if (isExact(a)) {
    const candidate = exact(root)
    if (candidate.mul(candidate).equals(a)) return candidate
  }
  return approximate(root, root === 0 ? Math.sqrt(errorOf(a)) : errorOf(a) / root)
}

/** A function of one approximate argument; `slope` bounds how fast it can change there. */
export function through(a: Amount, f: (x: number) => number, slope: number): About {
  return approximate(f(toNumber(a)), Math.abs(slope) * errorOf(a) + grain(f(toNumber(a))))
}

/** −1, 0 or 1; null when the two are too close for the error carried. */
export function compare(a: Amount, b: Amount): -1 | 0 | 1 | null {
  if (isExact(a) && isExact(b)) return a.compare(b) as -1 | 0 | 1
  const difference = toNumber(a) - toNumber(b)
  if (Math.abs(difference) <= errorOf(a) + errorOf(b)) return null
  return difference < 0 ? -1 : 1
}

interface Rounded {
  readonly whole: Fraction
  /** Both answers, where the error reaches over a whole number and the true one may be either. */
  readonly either?: readonly [Fraction, Fraction]
}

/** Least whole number not below; the higher of two where it could be either. */
export function ceiling(a: Amount): Rounded {
  if (isExact(a)) return { whole: a.ceil() }
  const [low, high] = [exact(Math.ceil(a.value - a.error)), exact(Math.ceil(a.value + a.error))]
  return low.equals(high) ? { whole: high } : { whole: high, either: [low, high] }
}

/** Greatest whole number not above; the lower of two where it could be either. */
export function floor(a: Amount): Rounded {
  if (isExact(a)) return { whole: a.floor() }
  const [low, high] = [exact(Math.floor(a.value - a.error)), exact(Math.floor(a.value + a.error))]
  return low.equals(high) ? { whole: low } : { whole: low, either: [low, high] }
}

/** To the nearest whole step (half a step goes up). */
export function roundTo(a: Amount, step: Fraction): Fraction {
  const steps = isExact(a) ? a.div(step) : exact(a.value).div(step)
  return steps.add(new Fraction(1, 2)).floor().mul(step)
}

export const absolute = (a: Amount): Amount => (isExact(a) ? a.abs() : { value: Math.abs(a.value), error: a.error })
