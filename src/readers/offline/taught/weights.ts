// This file is about the weights: how much each thing that is seen speaks for a calculation, or for a word. They can be read in weights.json.
import { existsSync, readFileSync } from 'node:fs'
import {
  amountIn,
  type Calculation,
  isQuantity,
  needsFor,
  type Quantity,
  toNumber,
  usualFor,
  type Word,
} from '../../../../engine/index.ts'
import { contextOf, cues, everyWordOf, type Looked, phrasesOf, shapeOf, standOf, unitOf, wordsOf } from './features.ts'
import { kinds, type MessageKind } from './kinds.ts'
import type { Tagged } from '../../reader.ts'
import type { WalkWeights } from '../walk/walk-weights.ts'

/** How often each feature of a message was seen with each label. */
export interface Counts {
  readonly labels: readonly string[]
  /** How many sentences of each label there were, in their order. */
  readonly sentences: readonly number[]
  /** For each feature: pairs of a label’s number and how many of its sentences had it. */
  readonly seen: Readonly<Record<string, readonly (readonly [number, number])[]>>
}

/** Hundredths, so that the file can be read and compared. */
export interface Weights {
  /** Which calculation a message asks for. */
  readonly asks: Counts
  /** And for which of its results. */
  readonly results: Counts
  /** For each `word feature` of a quantity. */
  readonly binds: Readonly<Record<string, number>>
  /** For each `word:option feature` of a message; `word:-` where it does not say. */
  readonly choices: Readonly<Record<string, number>>
  /** For each `kind feature` of a message. */
  readonly kinds: Readonly<Record<string, number>>
  /** What speaks for one reading of a message beside others. */
  readonly readings: Readonly<Record<string, number>>
  /** What each token is where a fence is told side by side. */
  readonly walks: WalkWeights
}

const none = '-'

// Beside this file in the sources; a bundle stands in dist/, or in a folder of it, and finds them from there.
const places = ['weights.json', ...['..', '../..'].map((it) => `${it}/src/readers/offline/taught/weights.json`)]

/** Reads the weights. Their tables hold what was taught and nothing else: “constructor” is a word like any other. */
export function load(): Weights {
  const weights = JSON.parse(readFileSync(found(), 'utf8')) as Weights
  const { asks, results, walks, ...others } = weights
  for (const table of [asks.seen, results.seen, ...Object.values(walks), ...Object.values(others)])
    Object.setPrototypeOf(table, null)
  return weights
}

// As if every feature had been seen so often more in every calculation (Lidstone’s rule): little, since what a calculation never had speaks against it.
const unseen = 0.01

function found(): URL {
  const file = places.map((it) => new URL(it, import.meta.url)).find((it) => existsSync(it))
  if (!file) throw new Error('weights.json is missing: run `npm run teach`')
  return file
}

const sizes = new WeakMap<Counts, readonly number[]>()
/** How many features the sentences of each label had in all. */
function sizesOf(counts: Counts): readonly number[] {
  const known = sizes.get(counts)
  if (known) return known
  const found = counts.labels.map(() => 0)
  for (const pairs of Object.values(counts.seen))
    for (const [at, count] of pairs) found[at] = (found[at] as number) + count
  sizes.set(counts, found)
  return found
}

/** How much the features of a message speak for each label, by its share of them (naive Bayes): in logarithms, in the order of the labels. */
function speaksFor(counts: Counts, features: readonly string[]): number[] {
  const known = features.flatMap((it) => counts.seen[it] ?? [])
  const [all, many] = [Object.keys(counts.seen).length, features.filter((it) => counts.seen[it]).length]
  const scores = sizesOf(counts).map((size) => many * Math.log(unseen / (size + unseen * all)))
  for (const [at, count] of known) scores[at] = (scores[at] as number) + Math.log((count + unseen) / unseen)
  // Words that follow one another say much the same: together they count less than one by one.
  return scores.map((it) => it / Math.sqrt(Math.max(1, many)))
}

/** Logarithms of shares that add up to one. */
export function normal(scores: readonly number[]): number[] {
  const most = Math.max(...scores)
  const sum = Math.log(scores.reduce((total, it) => total + Math.exp(it - most), 0)) + most
  return scores.map((it) => it - sum)
}

/** How likely a message asks for each calculation, in logarithms. */
export function askedFor({ asks }: Weights, looked: Looked): Map<string, number> {
  const scores = normal(speaksFor(asks, askFeatures(looked)))
  return new Map(asks.labels.map((name, at) => [name, scores[at] as number]))
}

// How often a result was asked for at all counts so much beside the words.
const custom = 0.3
// And that the vocabulary’s own words for it stand in the message, so much.
const named = 2

/** Which of its results a calculation is asked for, where it is asked for any: the likeliest first, with its share. */
export function resultsAsked(
  { results }: Weights,
  looked: Looked,
  calc: Calculation,
): { result: string; share: number }[] {
  const scores = speaksFor(results, askFeatures(looked))
  const isNamed = (result: string): boolean => looked.hits.some((it) => it.sort === 'ask' && it.word === result)
  const own = Object.keys(calc.gives).flatMap((result) => {
    const at = results.labels.indexOf(result)
    return at < 0
      ? []
      : [
          {
            result,
            score:
              (scores[at] as number) +
              custom * Math.log(results.sentences[at] as number) +
              (isNamed(result) ? named : 0),
          },
        ]
  })
  const shares = normal(own.map((it) => it.score))
  return own
    .map(({ result }, i) => ({ result, share: Math.exp(shares[i] as number) }))
    .sort((a, b) => b.share - a.share)
}

export const kindFeatures = (looked: Looked, kind: MessageKind): [string, number][] =>
  ['*', ...standOf(looked), ...everyWordOf(looked)].map((it) => [`${kind} ${it}`, 1])

/** The share of each kind that a message may be. */
export function kindsOf(weights: Weights, looked: Looked): ReadonlyMap<MessageKind, number> {
  const scores = kinds.map((it) => scoreOf(weights.kinds, kindFeatures(looked, it)))
  const shares = normal(scores)
  return new Map(kinds.map((it, i) => [it, Math.exp(shares[i] as number)]))
}

/** `saying` are the words that may speak for an option, while it is learned; afterwards the weights know them. */
export function choiceFeatures(
  looked: Looked,
  word: Word,
  option: string | undefined,
  saying?: ReadonlySet<string>,
): [string, number][] {
  const name = `${word.name}:${option ?? none}`
  const words = phrasesOf(looked).map((it) => it.words)
  const found: [string, number][] = [
    '*',
    ...new Set(saying ? words.filter((it) => saying.has(`${word.name} ${it}`)) : words),
  ].map((it) => [`${name} ${it}`, 1])
  if (option && looked.hits.some((it) => it.sort === 'option' && it.word === word.name && it.option === option))
    found.push(['option', 1])
  return found
}

/** The option that a message says of a choice, its share, and the words that say so most; nothing where none says it. */
export function optionSaid(
  weights: Weights,
  looked: Looked,
  word: Word,
): { option: string; share: number; from: number; to: number } | undefined {
  const options = [undefined, ...Object.keys(word.options ?? {})]
  const scores = options.map((it) => scoreOf(weights.choices, choiceFeatures(looked, word, it)))
  const likeliest = Math.max(...normal(scores))
  const option = options[normal(scores).indexOf(likeliest)]
  if (option === undefined) return undefined
  const [best] = phrasesOf(looked)
    .map((it) => ({ ...it, weight: weights.choices[`${word.name}:${option} ${it.words}`] ?? 0 }))
    .filter((it) => it.weight > 0)
    .sort((a, b) => b.weight - a.weight)
  return best && { option, share: Math.exp(likeliest), from: best.from, to: best.to }
}

/** Its words, and what is asked for by the vocabulary’s own phrases. */
export const askFeatures = (looked: Looked): string[] => [
  ...wordsOf(looked),
  ...new Set(looked.hits.filter((it) => it.sort === 'ask').map((it) => `ask:${it.word}`)),
]

/** The features of a quantity and a word, or of a quantity that means nothing (`undefined`). */
export function bindFeatures(
  looked: Looked,
  reading: Tagged,
  spot: number,
  word: Word | undefined,
): [string, number][] {
  const name = word?.name ?? none
  const found: [string, number][] = [
    [`${name} *`, 1],
    [`${name} u:${unitOf(reading)}`, 1],
  ]
  for (const it of [...contextOf(looked, spot), `n:${shapeOf(reading)}`]) found.push([`${name} ${it}`, 1])
  if (!word) return found
  const { cue, likely } = cues(looked, reading, spot, word)
  found.push(['cue', cue], ['likely', Math.max(0, likely)], ['unlikely', Math.min(0, likely)])
  return found
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

/** The features of a quantity and a word that the talk knows already: asked for, or told before, and what was told. */
export function talkFeatures({ heard: { job } }: Looked, reading: Tagged, word: Word): [string, number][] {
  if (job.asked.some((it) => it.word === word.name)) return [['open', 1]]
  const before = job.decisions.findLast((it) => it.word === word.name)
  if (!before) return job.decisions.length > 0 ? [['new', 1]] : []
  const isLast = before.turn === job.moves.at(-1)?.turn
  const found: [string, number][] = [['again', 1]]
  if (isLast) found.push(['again last', 1])
  const ratio = isQuantity(before.value) ? ratioOf(reading, before.value) : undefined
  if (ratio === undefined) return found
  // A size is put right by one not far from it.
  found.push([ratio === 1 ? 'again same' : ratio < 2 ? 'again near' : ratio < 4 ? 'again off' : 'again far', 1])
  return found
}

/** How many times larger one is than the other; a bare number is held against the number that was said before. */
function ratioOf({ quantity: now, bare }: Tagged, before: Quantity): number | undefined {
  if (now && now.kind !== before.kind) return undefined
  const [a, b] = now
    ? [toNumber(now.amount), toNumber(before.amount)]
    : [bare?.valueOf() ?? 0, toNumber(amountIn(before, before.unit))]
  return a > 0 && b > 0 ? Math.max(a / b, b / a) : undefined
}

export const scoreOf = (binds: Weights['binds'], features: readonly (readonly [string, number])[]): number =>
  features.reduce((sum, [name, value]) => sum + ((binds[name] ?? 0) / 100) * value, 0)
