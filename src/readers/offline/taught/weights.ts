// This file is about the weights: how much each thing that is seen speaks for a calculation, or for a word. They can be read in weights.json.
import { existsSync, readFileSync } from 'node:fs'
import { type Calculation, needsFor, usualFor, type Word } from '../../../../engine/index.ts'
import { contextOf, cues, everyWordOf, type Looked, shapeOf, unitOf, wordsOf } from './features.ts'
import type { Tagged } from '../../reader.ts'

/** Hundredths, so that the file can be read and compared. */
export interface Weights {
  readonly calculations: readonly string[]
  /** How many sentences of each calculation there were, in the order of their names. */
  readonly sentences: readonly number[]
  /** For each feature of a message: pairs of a calculation’s number and how many of its sentences had it. */
  readonly asks: Readonly<Record<string, readonly (readonly [number, number])[]>>
  /** For each `word feature` of a quantity. */
  readonly binds: Readonly<Record<string, number>>
  /** For each `result feature` of a message; `-` where it asks for nothing, and only tells. */
  readonly results: Readonly<Record<string, number>>
  /** For each `word:option feature` of a message; `word:-` where it does not say. */
  readonly choices: Readonly<Record<string, number>>
  /** For each `kind feature` of a message. */
  readonly kinds: Readonly<Record<string, number>>
}

/** What a message wants: a sum, to tell something, advice, or what must be declined. */
export const kinds = ['sum', 'told', 'advice', 'off-trade', 'danger'] as const
export type MessageKind = (typeof kinds)[number]

const none = '-'

// Beside this file in the sources; a bundle stands in dist/, or in a folder of it, and finds them from there.
const places = ['weights.json', ...['..', '../..'].map((it) => `${it}/src/readers/offline/taught/weights.json`)]

/** Reads the weights. Their tables hold what was taught and nothing else: “constructor” is a word like any other. */
export function load(): Weights {
  const weights = JSON.parse(readFileSync(found(), 'utf8')) as Weights
  for (const table of Object.values(weights)) if (!Array.isArray(table)) Object.setPrototypeOf(table, null)
  return weights
}

// As if every feature had been seen so often more, in every calculation and outside it.
const unseen = 0.05

function found(): URL {
  const file = places.map((it) => new URL(it, import.meta.url)).find((it) => existsSync(it))
  if (!file) throw new Error('weights.json is missing: run `npm run teach`')
  return file
}

/**
 * How much the words of a message speak for each calculation: logarithms of shares that add up to one.
 * Each word counts by how much oftener it stands in the sentences of that calculation than in all others.
 */
export function askedFor(weights: Weights, looked: Looked): Map<string, number> {
  const { sentences, calculations, asks } = weights
  const all = sentences.reduce((sum, it) => sum + it, 0)
  const features = askFeatures(looked).filter((it) => asks[it])
  const scores = calculations.map(() => 0)
  for (const feature of features) {
    const seen = new Map(asks[feature])
    const everywhere = [...seen.values()].reduce((sum, it) => sum + it, 0)
    calculations.forEach((_, at) => {
      const own = seen.get(at) ?? 0
      const size = sentences[at] as number
      const here = (own + unseen) / (size + 2 * unseen)
      const elsewhere = (everywhere - own + unseen) / (all - size + 2 * unseen)
      scores[at] = (scores[at] as number) + Math.log(here / elsewhere)
    })
  }
  // Words that follow one another say much the same: together they count less than one by one.
  const scaled = scores.map((it) => it / Math.sqrt(Math.max(1, features.length)))
  const most = Math.max(...scaled)
  const sum = Math.log(scaled.reduce((total, it) => total + Math.exp(it - most), 0)) + most
  return new Map(calculations.map((name, at) => [name, (scaled[at] as number) - sum]))
}

/** Which of its results a calculation is asked for, the likeliest first, with its share; nothing asked is `undefined`. */
export function resultsAsked(
  weights: Weights,
  looked: Looked,
  calc: Calculation,
): { result: string | undefined; share: number }[] {
  const names = [undefined, ...Object.keys(calc.gives)]
  const scores = names.map((it) => scoreOf(weights.results, resultFeatures(looked, it, calc)))
  const most = Math.max(...scores)
  const sum = scores.reduce((all, it) => all + Math.exp(it - most), 0)
  return names
    .map((result, i) => ({ result, share: Math.exp((scores[i] as number) - most) / sum }))
    .sort((a, b) => b.share - a.share)
}

export function resultFeatures(looked: Looked, result: string | undefined, calc: Calculation): [string, number][] {
  const name = result ?? none
  const found: [string, number][] = [`${name} *`, ...wordsOf(looked).map((it) => `${name} ${it}`)].map((it) => [it, 1])
  if (!result) return found
  if (calc.headlines[0] === result) found.push(['first', 1])
  if (looked.hits.some((it) => it.sort === 'ask' && it.word === result)) found.push(['ask', 1])
  return found
}

export const kindFeatures = (looked: Looked, kind: MessageKind): [string, number][] =>
  [`${kind} *`, ...everyWordOf(looked).map((it) => `${kind} ${it}`)].map((it) => [it, 1])

/** The share of each kind that a message may be. */
export function kindsOf(weights: Weights, looked: Looked): ReadonlyMap<MessageKind, number> {
  const scores = kinds.map((it) => scoreOf(weights.kinds, kindFeatures(looked, it)))
  const most = Math.max(...scores)
  const each = scores.map((it) => Math.exp(it - most))
  const sum = each.reduce((a, b) => a + b, 0)
  return new Map(kinds.map((it, i) => [it, (each[i] as number) / sum]))
}

export function choiceFeatures(looked: Looked, word: Word, option: string | undefined): [string, number][] {
  const name = `${word.name}:${option ?? none}`
  const found: [string, number][] = [`${name} *`, ...wordsOf(looked).map((it) => `${name} ${it}`)].map((it) => [it, 1])
  if (option && looked.hits.some((it) => it.sort === 'option' && it.word === word.name && it.option === option))
    found.push(['option', 1])
  return found
}

/** The option that a message says of a choice, its share, and the words that say so; nothing where it does not say. */
export function optionSaid(
  weights: Weights,
  looked: Looked,
  word: Word,
): { option: string; share: number; by: string } | undefined {
  const options = [undefined, ...Object.keys(word.options ?? {})]
  const scores = options.map((it) => scoreOf(weights.choices, choiceFeatures(looked, word, it)))
  const most = Math.max(...scores)
  const option = options[scores.indexOf(most)]
  if (option === undefined) return undefined
  const share = 1 / scores.reduce((all, it) => all + Math.exp(it - most), 0)
  const name = `${word.name}:${option} `
  const by = wordsOf(looked)
    .map((it) => ({ it, weight: weights.choices[name + it] ?? 0 }))
    .sort((a, b) => b.weight - a.weight || b.it.length - a.it.length)[0]
  return by && by.weight > 0 ? { option, share, by: by.it } : undefined
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
  calc: Calculation,
): [string, number][] {
  const name = word?.name ?? none
  const found: [string, number][] = [
    [`${name} *`, 1],
    [`${name} u:${unitOf(reading)}`, 1],
  ]
  for (const it of [...contextOf(looked, spot), `n:${shapeOf(reading)}`]) found.push([`${name} ${it}`, 1])
  if (!word) return found
  const { cue, likely } = cues(looked, reading, spot, word)
  const isUsual = usualFor(calc, word) !== undefined
  const isMay = calc.may?.includes(word.name) ?? false
  found.push(
    ['cue', cue],
    ['likely', Math.max(0, likely)],
    ['unlikely', Math.min(0, likely)],
    [isUsual ? 'usual' : isMay ? 'may' : 'must', 1],
    [needsFor(calc, calc.headlines).includes(word) ? 'headline' : 'aside', 1],
  )
  return found
}

export const scoreOf = (binds: Weights['binds'], features: readonly (readonly [string, number])[]): number =>
  features.reduce((sum, [name, value]) => sum + ((binds[name] ?? 0) / 100) * value, 0)
