// This file is about learning what the words of a sentence weigh: logistic regression on contradictions of cautions beside harmless sentences.
import { featuresOf, measure, weigh } from '../../../src/guard/caution-sense.ts'

const rounds = 150
const rate = 0.2
/** What holds the weights small, so that no word is believed beyond the sentences that had it. */
const restraint = 0.3
/** A feature of one sentence alone teaches nothing of others. */
const leastSentences = 2

/** The weight of each feature, in tenths of logarithms; what weighs next to nothing is left out. */
export function weightsTaught(cautions: readonly string[], harmless: readonly string[]): Map<string, number> {
  const sentences = [...cautions, ...harmless].map((it, i) => ({
    features: featuresOf(withoutSlots(it)),
    isCaution: i < cautions.length ? 1 : 0,
  }))
  const seen = new Map<string, number>()
  for (const { features } of sentences) for (const it of features) seen.set(it, (seen.get(it) ?? 0) + 1)
  const learned = new Map([...seen].filter(([, times]) => times >= leastSentences).map(([it]) => [it, 0]))
  const pace = new Map([...learned].map(([it]) => [it, 1e-6]))
  for (let round = 0; round < rounds; round++) {
    const slopes = new Map([...learned].map(([it, weight]) => [it, -restraint * weight]))
    for (const { features, isCaution } of sentences) {
      const off = isCaution - 1 / (1 + Math.exp(-weigh(features, learned)))
      for (const it of features) {
        const slope = slopes.get(it)
        if (slope !== undefined) slopes.set(it, slope + off / measure(features))
      }
    }
    // Each weight has a pace of its own, slower the further it has gone (AdaGrad).
    for (const [it, slope] of slopes) {
      const gone = (pace.get(it) as number) + slope * slope
      pace.set(it, gone)
      learned.set(it, (learned.get(it) as number) + (rate * slope) / Math.sqrt(gone))
    }
  }
  return new Map(
    [...learned].map(([it, weight]) => [it, Math.round(weight * 10) / 10] as const).filter(([, it]) => it !== 0),
  )
}

const withoutSlots = (text: string): string => text.replace(/\{\{[^}]*\}\}/g, ' ')

const widest = 150

/** As it stands in caution-weights.ts: the heaviest first, what weighs the same in lines of its own. */
export function written(weights: ReadonlyMap<string, number>): string {
  const byWeight = new Map<number, string[]>()
  for (const [it, weight] of weights) byWeight.set(weight, [...(byWeight.get(weight) ?? []), it])
  return [...byWeight]
    .sort(([a], [b]) => b - a)
    .flatMap(([weight, features]) => {
      const lines: string[] = []
      for (const it of features.sort()) {
        const last = lines.at(-1)
        if (last !== undefined && last.length + it.length < widest) lines[lines.length - 1] = `${last}, ${it}`
        else lines.push(`  ${weight.toFixed(1)} ${it}`)
      }
      return lines
    })
    .join('\n')
}
