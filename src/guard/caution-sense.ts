// This file is about how a sentence sounds: how much its words, and each two of them, speak for what only the program says.
// The rules of caution-subjects.ts know subjects by name; this hears the many ways to talk round them. What the words weigh was learned from
// sentences of both kinds (`npm run teach -- guard`) and stands in caution-weights.ts, to be read and argued with.
import { cautionWeights } from './caution-weights.ts'
import { folded } from './form.ts'

let known: ReadonlyMap<string, number> | undefined
const weights = (): ReadonlyMap<string, number> => {
  known ??= weightsIn(cautionWeights)
  return known
}

/** A line each: `1.7 wir, that $` is a weight, and what weighs so. */
export const weightsIn = (text: string): Map<string, number> =>
  new Map(
    text
      .trim()
      .split('\n')
      .flatMap((line) => {
        const [, weight = '', features = ''] = /^\s*(\S+) (.*)$/.exec(line) ?? []
        return features.split(', ').map((it) => [it, Number(weight)] as const)
      }),
  )

/** From so much on a sentence is refused. Of sentences that were held back it refuses three in five contradictions and one harmless in sixty. */
const least = 1.4

export const soundsLikeCaution = (piece: string): boolean => weigh(featuresOf(piece), weights()) > least

/** What some features weigh together: 0 where they say nothing, more where they speak for a caution, less where for plain work. */
export function weigh(features: readonly string[], by: ReadonlyMap<string, number>): number {
  let sum = 0
  for (const it of features) sum += by.get(it) ?? 0
  // Long sentences say the same thing more than once, and short ones say little.
  return sum / measure(features)
}

/** So many features has a sentence of seven words. */
const fewest = 16

/** What the sum of some features is divided by. */
export const measure = (features: readonly string[]): number => Math.sqrt(Math.max(fewest, features.length)) / 2

/** Its words in one form each, and each two that follow one another, the beginning and the end among them. */
export function featuresOf(piece: string): string[] {
  const words = (folded(piece).match(/[a-z']+/g) ?? []).flatMap((it) =>
    it === 'cannot' || it === "can't" ? ['can', 'not'] : it.endsWith("n't") ? [stem(it), 'not'] : [stem(it)],
  )
  const all = ['^', ...words, '$']
  return [...new Set(['*', ...words, ...all.slice(1).map((it, i) => `${all[i]} ${it}`)])]
}

/** Words brought to their form before: a model uses the same ones again and again. */
const stems = new Map<string, string>()
const mostStems = 5000

function stem(word: string): string {
  const known = stems.get(word)
  if (known !== undefined) return known
  const bare = word
    .replace(/n't$/, '')
    .replace(/'(?:s|re|ll|ve|d|m)?$/, '')
    .replace(/ies$/, 'y')
    .replace(/(?<=[a-z]{3})(?:ing|ed|es|s|ly|er)$/, '')
    .replace(/(.)\1$/, '$1')
    .replace(/(?<=..)e$/, '')
  if (stems.size < mostStems) stems.set(word, bare)
  return bare
}
