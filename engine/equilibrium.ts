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
const halvings = 60

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
  if (at(1) < moisture) return undefined
  // The more humid the air, the wetter the wood: halved again and again between bone-dry air and saturated.
  let [low, high] = [0, 1]
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2
    if (at(middle) < moisture) low = middle
    else high = middle
  }
  return about((low + high) / 2, 1e-12)
}
