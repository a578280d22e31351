// This file is about teaching which calculation the words of a message ask for.
import { askFeatures, type Asks } from './asks.ts'
import type { Looked } from './features.ts'
import { mixed, mixedBy } from './mixed.ts'
import { normal } from './table.ts'

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

/** Which label each feature speaks for: those that it was seen with. */
interface Row {
  readonly labels: number[]
  readonly times: number[]
  /** Where its weights begin. */
  readonly from: number
}

export function taughtAsks(sentences: readonly Sentence[]): Asks {
  const labels = [...new Set(sentences.map((it) => it.label))].sort()
  const numbers = new Map(labels.map((it, at) => [it, at]))
  const many = labels.map(() => 0)
  const counts = new Map<string, Map<number, number>>()
  const said = sentences.map(({ looked, label }) => ({
    features: askFeatures(looked),
    right: numbers.get(label) as number,
  }))
  for (const { features, right } of said) {
    many[right] = (many[right] as number) + 1
    for (const it of features) {
      const own = counts.get(it) ?? new Map<number, number>()
      counts.set(it, own.set(right, (own.get(right) ?? 0) + 1))
    }
  }
  let length = 0
  const rows = new Map<string, Row>()
  for (const [name, own] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const times = [...own].sort(([a], [b]) => a - b)
    if (times.reduce((sum, [, it]) => sum + it, 0) < 2) continue
    rows.set(name, { labels: times.map(([it]) => it), times: times.map(([, it]) => it), from: length })
    length += times.length
  }
  const weights = weighed(
    said.map(({ features, right }) => ({ right, rows: features.flatMap((it) => rows.get(it) ?? []) })),
    labels.length,
    length,
  )
  const seen = Object.fromEntries(
    [...rows].map(([name, row]) => [
      name,
      row.labels.flatMap((label, i) => [
        label,
        row.times[i] as number,
        Math.round((weights[row.from + i] as number) * 100),
      ]),
    ]),
  )
  return { labels, sentences: many, seen }
}

/** The weights of all features, in their order (log-linear, by Adagrad). */
function weighed(
  sentences: readonly { readonly right: number; readonly rows: readonly Row[] }[],
  labels: number,
  length: number,
): Float64Array {
  const [weights, squares, sums] = [new Float64Array(length), new Float64Array(length), new Float64Array(length)]
  for (let round = 0; round < rounds.all; round++) {
    const cover = mixedBy(round)
    for (const at of mixed(sentences.length, round)) {
      const { right, rows } = sentences[at] as (typeof sentences)[number]
      const open = rows.filter(() => cover() >= covered)
      const scores: number[] = Array(labels).fill(0)
      for (const row of open)
        for (const [i, label] of row.labels.entries())
          scores[label] = (scores[label] as number) + (weights[row.from + i] as number)
      const shares = normal(scores).map(Math.exp)
      for (const row of open)
        for (const [i, label] of row.labels.entries()) {
          const error = (label === right ? 1 : 0) - (shares[label] as number)
          if (Math.abs(error) < 1e-4) continue
          const it = row.from + i
          const gradient = error - draw * (weights[it] as number)
          squares[it] = (squares[it] as number) + gradient * gradient
          weights[it] = (weights[it] as number) + (rate * gradient) / Math.sqrt((squares[it] as number) + 1e-6)
        }
    }
    if (round >= rounds.before) for (let i = 0; i < length; i++) sums[i] = (sums[i] as number) + (weights[i] as number)
  }
  return sums.map((it) => it / (rounds.all - rounds.before))
}
