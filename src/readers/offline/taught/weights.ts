// This file is about the weights: how much each thing that is seen speaks for a calculation, or for a word. They can be read in weights.json.
import { existsSync, readFileSync } from 'node:fs'
import { type Calculation, needsFor, usualFor, type Word } from '../../../../engine/index.ts'
import {
  contextOf,
  cues,
  everyWordOf,
  type Looked,
  type Sized,
  phrasesOf,
  shapeOf,
  sizeOf,
  standOf,
  unitOf,
  wordsOf,
} from './features.ts'
import { kinds, type MessageKind } from './kinds.ts'
import type { Tagged } from '../../reader.ts'
import { any, normal, scoreOf, type Speaking, speaksOf, type Table } from './table.ts'
import type { Asks } from './asks.ts'
import type { WalkWeights } from '../walk/walk-weights.ts'

/** Hundredths, so that the file can be read and compared. */
export interface Weights {
  /** Which calculation a message asks for. */
  readonly asks: Asks
  /** And for which of its results, by its features; `-` where it goes on with what was asked before. */
  readonly results: Table
  /** For each word, by the features of a quantity and by the words that belong to it. */
  readonly binds: Table
  /** How surely a word of a message belongs to a quantity, by how it stands to it. */
  readonly belongs: Speaking
  /** How well each word of the vocabulary follows another in a message. */
  readonly follows: Table
  /** For each `word:option`, by the features of a message; `word:-` where it does not say. */
  readonly choices: Table
  /** For each kind of message, by its features. */
  readonly kinds: Table
  /** What speaks for one reading of a message beside others. */
  readonly readings: Speaking
  /** What each token is where a fence is told side by side. */
  readonly walks: WalkWeights
}

const none = '-'

// Beside this file in the sources; a bundle stands in dist/, or in a folder of it, and finds them from there.
const places = ['weights.json', ...['..', '../..'].map((it) => `${it}/src/readers/offline/taught/weights.json`)]

/** Reads the weights. Their tables hold what was taught and nothing else: “constructor” is a word like any other. */
export function load(): Weights {
  const weights = JSON.parse(readFileSync(found(), 'utf8')) as Weights
  const { asks, results, walks, binds, belongs, follows, choices, kinds, readings } = weights
  const tables = [results, binds, follows, choices, kinds, walks.tags, walks.asks]
  for (const it of [asks.seen, walks.seen, belongs, readings, ...tables, ...tables.flatMap(Object.values)])
    Object.setPrototypeOf(it, null)
  return weights
}

function found(): URL {
  const file = places.map((it) => new URL(it, import.meta.url)).find((it) => existsSync(it))
  if (!file) throw new Error('weights.json is missing: run `npm run teach`')
  return file
}

/** What speaks for each result of a calculation, or for none: the words of the message, by the result and by its kind of measure. */
export const resultWords = (looked: Looked): string[] => [
  '*',
  ...standOf(looked),
  ...new Set([...everyWordOf(looked), ...wordsOf(looked)]),
]

/** The labels of a result in the weights; of none where the talk goes on with what was asked before. */
export const resultLabels = (result: Word | undefined): readonly string[] =>
  result ? [result.name, `·${result.kind}`] : [none]

/** The features of a result that speak for any alike: whether it is named, comes first, and was asked for before. */
export function resultFeatures(
  { hits, heard: { job, readings } }: Looked,
  calc: Calculation,
  result: Word | undefined,
): [string, number][] {
  const tells = readings.length > 0 ? 'tells' : 'idle'
  if (!result) {
    const goesOn = job.wanted.some((it) => calc.gives[it.word]) ? 'goes on' : 'new'
    return [
      [`none ${goesOn}`, 1],
      [`none ${goesOn} ${tells}`, 1],
    ]
  }
  const found: [string, number][] = []
  const { name } = result
  if (hits.some((it) => it.word === name)) found.push(['named', 1])
  if (hits.some((it) => it.sort === 'ask' && it.word === name)) found.push(['asked', 1])
  if (calc.headlines[0] === name) found.push(['first', 1])
  if (calc.headlines.includes(name)) found.push(['headline', 1])
  if (job.wanted.some((it) => it.word === name)) found.push([`wanted ${tells}`, 1])
  else if (job.results.some((it) => it.word === name)) found.push([`answered ${tells}`, 1])
  return found
}

/** Which of its results a calculation is asked for, the likeliest first with its share where any is asked for, and how likely none is. */
export function resultsAsked(
  { results }: Weights,
  looked: Looked,
  calc: Calculation,
): { likely: { result: string; share: number }[]; none: number } {
  const words = resultWords(looked)
  const options = [undefined, ...Object.values(calc.gives)]
  const scores = options.map((it) =>
    resultLabels(it).reduce(
      (sum, label) => speaksOf(results[label], words, sum),
      scoreOf(results[any], resultFeatures(looked, calc, it)),
    ),
  )
  const [nothing, ...shares] = normal(scores)
  const asked = normal(shares)
  const likely = Object.keys(calc.gives)
    .map((result, i) => ({ result, share: Math.exp(asked[i] as number) }))
    .sort((a, b) => b.share - a.share)
  return { likely, none: Math.exp(nothing as number) }
}

export const kindFeatures = (looked: Looked): string[] => ['*', ...standOf(looked), ...everyWordOf(looked)]

/** The share of each kind that a message may be. */
export function kindsOf(weights: Weights, looked: Looked): ReadonlyMap<MessageKind, number> {
  const features = kindFeatures(looked)
  const scores = kinds.map((it) => speaksOf(weights.kinds[it], features))
  const shares = normal(scores)
  return new Map(kinds.map((it, i) => [it, Math.exp(shares[i] as number)]))
}

/** `saying` are the words that may speak for an option, while it is learned; afterwards the weights know them. */
export function choiceFeatures(looked: Looked, word: Word, saying?: ReadonlySet<string>): string[] {
  const words = phrasesOf(looked).map((it) => it.words)
  return ['*', ...new Set(saying ? words.filter((it) => saying.has(`${word.name} ${it}`)) : words)]
}

/** The label of an option in the weights. */
export const optionLabel = (word: Word, option: string | undefined): string => `${word.name}:${option ?? none}`

/** Whether the vocabulary’s own words for an option stand in the message. */
export const namesOption = ({ hits }: Looked, word: Word, option: string | undefined): boolean =>
  option !== undefined && hits.some((it) => it.sort === 'option' && it.word === word.name && it.option === option)

/** The option that a message says of a choice, its share, and the words that say so most; nothing where none says it. */
export function optionSaid(
  weights: Weights,
  looked: Looked,
  word: Word,
): { option: string; share: number; from: number; to: number } | undefined {
  const options = [undefined, ...Object.keys(word.options ?? {})]
  const features = choiceFeatures(looked, word)
  const byName = (weights.choices[any]?.option ?? 0) / 100
  const shares = normal(
    options.map(
      (it) => speaksOf(weights.choices[optionLabel(word, it)], features) + (namesOption(looked, word, it) ? byName : 0),
    ),
  )
  const likeliest = Math.max(...shares)
  const option = options[shares.indexOf(likeliest)]
  if (option === undefined) return undefined
  const speaking = weights.choices[optionLabel(word, option)]
  const [best] = phrasesOf(looked)
    .map((it) => ({ ...it, weight: speaking?.[it.words] ?? 0 }))
    .filter((it) => it.weight > 0)
    .sort((a, b) => b.weight - a.weight)
  return best && { option, share: Math.exp(likeliest), from: best.from, to: best.to }
}

/** The label of a word in the weights, or of a quantity that means nothing (`undefined`). */
export const wordLabel = (word: Word | undefined): string => word?.name ?? none

/** The features of a quantity, which speak for each word in its own measure. */
export const quantityFeatures = (looked: Looked, reading: Tagged, spot: number): string[] => [
  '*',
  `u:${unitOf(reading)}`,
  ...contextOf(looked, spot, false),
  // An amount by which something changes is of any size.
  ...(reading.change
    ? [`change ${reading.change.way}`]
    : [`n:${shapeOf(reading)}`, ...sizeOf(reading, looked.heard.readings)]),
]

/** The features of a quantity and a word that speak for any word alike. */
export function cueFeatures(looked: Looked, size: Sized, word: Word): [string, number][] {
  const { cue, likely } = cues(looked, size, word)
  return [
    ['cue', cue],
    ['likely', Math.max(0, likely)],
    ['unlikely', Math.min(0, likely)],
  ]
}

/** The features of a word in a calculation: whether it must be told, and whether what is asked for first hangs on it. */
export function standingFeatures(word: Word, calc: Calculation): [string, number][] {
  const isUsual = usualFor(calc, word) !== undefined
  const isMay = calc.may?.includes(word.name) ?? false
  return [
    [isUsual ? 'usual' : isMay ? 'may' : 'must', 1],
    [needsFor(calc, calc.headlines).includes(word) ? 'headline' : 'aside', 1],
  ]
}
