// This file is about which calculation the words of a message ask for. Two ways are held side by side, since each is right where the other is not:
// how often a word was said where a calculation was asked for, and how much it speaks for it beside all other words.
import { everyWordOf, type Looked, standOf, unitOf, wordsOf } from './features.ts'
import { normal } from './table.ts'

export interface Asks {
  readonly labels: readonly string[]
  /** How many sentences of each label there were, in their order. */
  readonly sentences: readonly number[]
  /** For each feature, in turn: a label’s number, how many of its sentences had it, and how much it speaks for it, in hundredths. */
  readonly seen: Readonly<Record<string, readonly number[]>>
}

/** Its words, where it stands in the talk, what it measures, and what is asked for by the vocabulary’s own phrases. */
export const askFeatures = (looked: Looked): string[] => [
  ...new Set([
    ...wordsOf(looked),
    ...everyWordOf(looked),
    ...standOf(looked),
    ...looked.heard.readings.map((it) => `u:${unitOf(it)}`),
    ...looked.hits.filter((it) => it.sort === 'ask').map((it) => `ask:${it.word}`),
  ]),
]

// As if every feature had been seen so often more in every calculation (Lidstone’s rule): little, since what a calculation never had speaks against it.
const unseen = 0.01

/** How much it speaks for a calculation that a feature was seen so often in it: the same few numbers come again and again. */
const seenSo = (times: number): number => {
  logarithms[times] ??= Math.log((times + unseen) / unseen)
  return logarithms[times]
}
const logarithms: number[] = []

interface Sizes {
  /** How many features the sentences of each label had in all. */
  readonly each: readonly number[]
  /** How many different features there are. */
  readonly all: number
}

const sizes = new WeakMap<Asks, Sizes>()
function sizesOf(asks: Asks): Sizes {
  const known = sizes.get(asks)
  if (known) return known
  const each = asks.labels.map(() => 0)
  const features = Object.values(asks.seen)
  for (const row of features)
    for (let i = 0; i < row.length; i += 3)
      each[row[i] as number] = (each[row[i] as number] as number) + (row[i + 1] as number)
  const found = { each, all: features.length }
  sizes.set(asks, found)
  return found
}

/** How likely a message asks for a calculation, in logarithms: by the counts of its words (naive Bayes), and by their weights (log-linear). */
export interface Asked {
  readonly counted: number
  readonly weighed: number
}

export function askedFor(asks: Asks, looked: Looked): Map<string, Asked> {
  const known = askFeatures(looked).flatMap((it) => {
    const row = asks.seen[it]
    return row ? [row] : []
  })
  const many = known.length
  const { each, all } = sizesOf(asks)
  const counted = each.map((size) => many * Math.log(unseen / (size + unseen * all)))
  const weighed = each.map(() => 0)
  for (const row of known)
    for (let i = 0; i < row.length; i += 3) {
      const at = row[i] as number
      counted[at] = (counted[at] as number) + seenSo(row[i + 1] as number)
      weighed[at] = (weighed[at] as number) + (row[i + 2] as number) / 100
    }
  // Words that follow one another say much the same: together they count less than one by one.
  const byCount = normal(counted.map((it) => it / Math.sqrt(Math.max(1, many))))
  const byWeight = normal(weighed)
  return new Map(
    asks.labels.map((name, at) => [name, { counted: byCount[at] as number, weighed: byWeight[at] as number }]),
  )
}
