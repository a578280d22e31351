// This file is about the Wood Handbook's equation for the moisture that wood settles at, forwards and backwards: one text of it for both.
import { type Amount, about, toNumber } from './quantities/amount.ts'
import { readLine, workLine } from './formula.ts'

/** Needs T, the temperature in °F. */
export const equilibriumLines = {
  W: ['330 + 0.452 * T + 0.00415 * T ^ 2', 'the handbook’s fit'],
  K: ['0.791 + 0.000463 * T - 0.000000844 * T ^ 2', 'the handbook’s fit'],
  K1: ['6.34 + 0.000775 * T - 0.0000935 * T ^ 2', 'the handbook’s fit'],
  K2: ['1.09 + 0.0284 * T - 0.0000904 * T ^ 2', 'the handbook’s fit'],
} as const

/** Needs those, and Kh: K times the humidity as a share of one. */
export const settlesAt =
  '18 / W * (Kh / (1 - Kh) + (K1 * Kh + 2 * K1 * K2 * Kh ^ 2) / (1 + K1 * Kh + K1 * K2 * Kh ^ 2))'

const line = readLine(settlesAt)
const close = 1e-14

/** The humidity, as a share of one, in which wood settles at that moisture; undefined where even saturated air leaves it drier. */
export function humidityFor(
  moisture: number,
  fit: Readonly<Record<'W' | 'K' | 'K1' | 'K2', Amount>>,
): Amount | undefined {
  const at = (humidity: number): number => {
    const known: Readonly<Record<string, Amount>> = { ...fit, Kh: about(toNumber(fit.K) * humidity) }
    const worked = workLine(
      line,
      (name) => known[name] as Amount,
      () => {},
    )
    return toNumber(worked as Amount)
  }
  let [low, high] = [0, 1]
  let [under, over] = [at(low) - moisture, at(high) - moisture]
  if (over < 0) return undefined
  if (under >= 0) return about(low, 1e-12)
  // The more humid the air, the wetter the wood: between bone-dry air and saturated it crosses the wanted moisture once.
  // False position; an end that stands still counts half (the Illinois rule), so that both ends close in.
  let stood = 0
  while (high - low > close) {
    const next = Math.min(high, Math.max(low, low - (under * (high - low)) / (over - under)))
    const off = at(next) - moisture
    if (off < 0) {
      ;[low, under] = [next, off]
      if (stood === -1) over /= 2
      stood = -1
    } else {
      ;[high, over] = [next, off]
      if (stood === 1) under /= 2
      stood = 1
    }
    if (Math.abs(off) < close) return about(next, 1e-12)
  }
  return about((low + high) / 2, 1e-12)
}
