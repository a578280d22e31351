// This file is about tables of weights: what each feature of a message speaks for, and what several come to together.

/** How much each feature speaks for a label, in hundredths. */
export type Speaking = Readonly<Record<string, number>>
export type Table = Readonly<Record<string, Speaking>>
/** The label of what speaks for all of them alike: none is called so. */
export const any = '*'

/** What features come to that are there or not, on top of what is known already. */
export function speaksOf(speaking: Speaking | undefined, features: readonly string[], so = 0): number {
  let sum = so
  if (speaking) for (const it of features) sum += (speaking[it] ?? 0) / 100
  return sum
}

/** What features come to that have a measure. */
export const scoreOf = (
  speaking: Speaking | undefined,
  features: readonly (readonly [string, number])[],
  so = 0,
): number => features.reduce((sum, [name, value]) => sum + ((speaking?.[name] ?? 0) / 100) * value, so)

/** Logarithms of shares that add up to one. */
export function normal(scores: readonly number[]): number[] {
  const most = Math.max(...scores)
  const sum = Math.log(scores.reduce((total, it) => total + Math.exp(it - most), 0)) + most
  return scores.map((it) => it - sum)
}

/** Scores turned into shares that add up to one, where they stand: as `normal`, and its exponents. */
export function toShares(scores: Float64Array, from = 0, to = scores.length): void {
  let most = Number.NEGATIVE_INFINITY
  for (let i = from; i < to; i++) most = Math.max(most, scores[i] as number)
  let sum = 0
  for (let i = from; i < to; i++) sum += Math.exp((scores[i] as number) - most)
  const whole = Math.log(sum) + most
  for (let i = from; i < to; i++) scores[i] = Math.exp((scores[i] as number) - whole)
}
