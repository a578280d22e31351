// This file is about teaching which calculation the words of a message ask for.
import { askFeatures, type Asks } from './asks.ts'
import type { Looked } from './features.ts'
import { mixed, mixedBy } from './mixed.ts'
import { toShares } from './table.ts'

/** A message and the calculation that it asks for. */
interface Sentence {
  readonly looked: Looked
  readonly label: string
}

// How often all sentences are gone through; the weights are the mean of those after so many rounds.
const rounds = { all: 10, before: 4 } as const
// The first step of a weight, and how strongly it is drawn back towards nothing.
const rate = 0.25
const draw = 0.03
// So many of the words of a sentence are covered up while it is learned from, so that none is leaned on alone.
const covered = 0.3

/** Features with the labels that they were seen with, one behind the other. */
interface Rows {
  /** Where each feature’s labels begin; where the last one’s end. */
  readonly from: Int32Array
  readonly labels: Int32Array
}

/** A message as it is learned from: the numbers of its features, and of the calculation that it asks for. */
interface Said {
  readonly features: Int32Array
  readonly right: number
}

export function taughtAsks(sentences: readonly Sentence[]): Asks {
  const labels = [...new Set(sentences.map((it) => it.label))].sort()
  const numbers = new Map(labels.map((it, at) => [it, at]))
  const many = labels.map(() => 0)
  const counts = new Map<string, Map<number, number>>()
  for (const { looked, label } of sentences) {
    const right = numbers.get(label) as number
    many[right] = (many[right] as number) + 1
    for (const it of askFeatures(looked)) {
      const own = counts.get(it) ?? new Map<number, number>()
      counts.set(it, own.set(right, (own.get(right) ?? 0) + 1))
    }
  }
  const known = [...counts]
    .filter(([, own]) => [...own.values()].reduce((sum, it) => sum + it, 0) >= 2)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, own]) => ({ name, own: [...own].sort(([a], [b]) => a - b) }))
  const places = new Map(known.map(({ name }, at) => [name, at]))
  const from = new Int32Array(known.length + 1)
  for (const [at, { own }] of known.entries()) from[at + 1] = (from[at] as number) + own.length
  const rows: Rows = {
    from,
    labels: Int32Array.from(known.flatMap(({ own }) => own.map(([label]) => label))),
  }
  const said = sentences.map(({ looked, label }) => ({
    features: Int32Array.from(askFeatures(looked).flatMap((it) => places.get(it) ?? [])),
    right: numbers.get(label) as number,
  }))
  const weights = weighed(said, rows, labels.length)
  const seen = Object.fromEntries(
    known.map(({ name, own }, at) => [
      name,
      own.flatMap(([label, times], i) => [
        label,
        times,
        Math.round((weights[(from[at] as number) + i] as number) * 100),
      ]),
    ]),
  )
  return { labels, sentences: many, seen }
}

/** The weights of all features, in their order (log-linear, by Adagrad). */
function weighed(sentences: readonly Said[], { from, labels }: Rows, many: number): Float64Array {
  const { length } = labels
  const [weights, squares, sums] = [new Float64Array(length), new Float64Array(length), new Float64Array(length)]
  const shares = new Float64Array(many)
  const open = new Int32Array(Math.max(0, ...sentences.map((it) => it.features.length)))
  for (let round = 0; round < rounds.all; round++) {
    const cover = mixedBy(round)
    for (const at of mixed(sentences.length, round)) {
      const { right, features } = sentences[at] as Said
      let count = 0
      for (const it of features) if (cover() >= covered) open[count++] = it
      shares.fill(0)
      for (let i = 0; i < count; i++) {
        const end = from[(open[i] as number) + 1] as number
        for (let it = from[open[i] as number] as number; it < end; it++) {
          const label = labels[it] as number
          shares[label] = (shares[label] as number) + (weights[it] as number)
        }
      }
      toShares(shares)
      for (let i = 0; i < count; i++) {
        const end = from[(open[i] as number) + 1] as number
        for (let it = from[open[i] as number] as number; it < end; it++) {
          const label = labels[it] as number
          const error = (label === right ? 1 : 0) - (shares[label] as number)
          if (Math.abs(error) < 1e-4) continue
          const gradient = error - draw * (weights[it] as number)
          squares[it] = (squares[it] as number) + gradient * gradient
          weights[it] = (weights[it] as number) + (rate * gradient) / Math.sqrt((squares[it] as number) + 1e-6)
        }
      }
    }
    if (round >= rounds.before) for (let i = 0; i < length; i++) sums[i] = (sums[i] as number) + (weights[i] as number)
  }
  return sums.map((it) => it / (rounds.all - rounds.before))
}
