// This file is about the reading that the taught weights find: which calculation a message asks for, and which word each of its quantities is.
// Every likely calculation is tried on the whole message; what it binds speaks for it, what it leaves over and lacks speaks against it.
import {
  type Calculation,
  calculationNamed,
  fittedReading,
  needsFor,
  sameValue,
  systemOf,
  toNumber,
  usualFor,
  vocabulary,
  type Word,
} from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import { fits } from '../fits.ts'
import { bestAssignment } from './assign.ts'
import { likelihood } from '../cue-score.ts'
import { calculationsIn } from '../lexicon.ts'
import { isFed } from '../senses.ts'
import { cues, type Looked } from './features.ts'
import { askedFor, bindFeatures, load, scoreOf, type Weights } from './weights.ts'

export interface Binding {
  readonly reading: Tagged
  readonly word: string
  /** Whether the vocabulary names it. */
  readonly named: boolean
  /** How much surer it is than that it means nothing, and than the next word: in logarithms. */
  readonly sure: number
}

export interface Reading {
  readonly calculation: Calculation
  readonly bound: readonly Binding[]
  /** Quantities that it has no place for. */
  readonly left: readonly Tagged[]
  readonly missing: readonly Word[]
  readonly score: number
  /** Two different sizes are said of one word. */
  readonly clashes: boolean
  /** How much the words of the message alone speak for it. */
  readonly asked: number
}

const weigh = {
  asked: 1,
  /** What the talk was about goes on, where nothing else is asked. */
  talk: 2.5,
  talkOpen: 2.5,
  strength: 0.5,
  cap: 3,
  left: -1.6,
  missing: -1.2,
  /** The program has just asked for it. */
  answers: 3,
  allAnswers: 2,
  someAnswers: 0,
  /** It was told before, and something else is lacking. */
  again: -0.8,
  /** It answers a question of its own, and none of its own phrases is in the message: the plain one is meant. */
  uncalled: -0.8,
  /** A quantity that is so much surer to be a word than what is left for it says the same thing twice. */
  twice: 3,
  /** So many calculations are tried. */
  tried: 10,
} as const

let known: Weights | undefined
export const weights = (): Weights => {
  known ??= load()
  return known
}

/** The readings of a message, the best first. `talk` are the calculations that the talk was about, `told` what was told before. */
export function readingsOf(looked: Looked, talk: readonly string[], told: ReadonlySet<string>): Reading[] {
  const asked = askedFor(weights(), looked)
  const called = new Set(calculationsIn(looked.message))
  const isUncalled = (name: string): boolean =>
    calculationNamed(name)?.called !== undefined && !called.has(name) && !talk.includes(name)
  const isTalk = (name: string): boolean => talk.includes(name)
  return [...asked]
    .map(([name, share]) => ({
      name,
      share:
        (isUncalled(name) ? weigh.uncalled : 0) +
        share * weigh.asked +
        (isTalk(name) ? weigh.talk + (looked.heard.job.asked.length > 0 ? weigh.talkOpen : 0) : 0),
    }))
    .sort((a, b) => b.share - a.share)
    .filter(({ name }, i) => i < weigh.tried || isTalk(name))
    .flatMap(({ name, share }) => {
      const calculation = calculationNamed(name)
      return calculation ? [tried(looked, calculation, share, told)] : []
    })
    .sort((a, b) => b.score - a.score)
}

function tried(looked: Looked, calculation: Calculation, asked: number, told: ReadonlySet<string>): Reading {
  const words = Object.values(calculation.needs).filter(
    (it) => it.kind !== 'choice' && it.kind !== 'verdict' && !it.unsaid,
  )
  const needed = new Set(words.map((it) => it.name))
  const quantities = looked.message.flatMap((token, spot) => (token.reading ? [{ reading: token.reading, spot }] : []))
  const { binds } = weights()
  const open = new Set(looked.heard.job.asked.map((it) => it.word))
  const scores = quantities.map(({ reading, spot }) => {
    const nothing = scoreOf(binds, bindFeatures(looked, reading, spot, undefined, calculation))
    return words.map((word) =>
      canBe(word, reading, looked, needed)
        ? scoreOf(binds, bindFeatures(looked, reading, spot, word, calculation)) -
          nothing +
          (open.has(word.name) ? weigh.answers : told.has(word.name) ? weigh.again : 0)
        : Number.NEGATIVE_INFINITY,
    )
  })
  const cueOf = (i: number, word: Word): number => {
    const { reading, spot } = quantities[i] as { reading: Tagged; spot: number }
    return cues(looked, reading, spot, word).cue
  }
  const chosen = assigned(scores, words, (i, j) => {
    const [a, b] = [quantities[i]?.reading, quantities[j]?.reading]
    if (a?.quantity && b?.quantity) return sameValue(a.quantity, b.quantity)
    return a?.bare != null && b?.bare != null && a.bare.equals(b.bare)
  })
  const clashes = scores.some((own, i) => {
    const best = own.indexOf(Math.max(...own))
    const [mine, at] = [own[best] ?? 0, chosen[i]]
    const held = at === undefined ? 0 : (own[at] as number)
    return !words[best]?.list && at !== best && mine > weigh.twice && mine - held > weigh.twice && chosen.includes(best)
  })
  const bound = chosen.flatMap((at, i): Binding[] => {
    if (at === undefined) return []
    const own = scores[i] as number[]
    const score = own[at] as number
    const next = Math.max(0, ...own.filter((_, other) => other !== at && !chosen.includes(other)))
    return [
      {
        reading: (quantities[i] as { reading: Tagged }).reading,
        word: (words[at] as Word).name,
        named: cueOf(i, words[at] as Word) > 0,
        sure: score - next,
      },
    ]
  })
  const left = quantities
    .filter(
      (_, i) =>
        chosen[i] === undefined &&
        !isRate((quantities[i] as { reading: Tagged }).reading) &&
        !isSmallWord((quantities[i] as { reading: Tagged }).reading),
    )
    .map((it) => it.reading)
  const has = new Set([...told, ...bound.flatMap((it) => [it.word, vocabulary.get(it.word)?.otherSide ?? it.word])])
  const missing = needsFor(calculation, calculation.headlines).filter(
    (it) => !has.has(it.name) && !usualFor(calculation, it) && it.kind !== 'choice' && !isFed(it.name, has),
  )
  // One is lacking, one is left over, and it can be that: what nothing names is taken for it.
  const [lacking, more] = missing
  const able = lacking
    ? left.filter((it) => canBe(lacking, it, looked, needed) && likelihood(lacking, it, looked.heard) > 0)
    : []
  if (lacking && !more && able.length === 1) {
    const [only] = able as [Tagged]
    bound.push({ reading: only, word: lacking.name, named: false, sure: 0 })
    left.splice(left.indexOf(only), 1)
    missing.pop()
  }
  // It tells just what was asked for, and nothing else: the talk goes on.
  const isAnswer = bound.length > 0 && left.length === 0 && bound.some((it) => open.has(it.word))
  const answering = isAnswer ? (bound.every((it) => open.has(it.word)) ? weigh.allAnswers : weigh.someAnswers) : 0
  const strength = chosen.reduce<number>(
    (sum, at, i) => sum + (at === undefined ? 0 : Math.min(weigh.cap, (scores[i] as number[])[at] as number)),
    0,
  )
  return {
    calculation,
    bound,
    left,
    missing,
    clashes,
    asked,
    score: asked + answering + weigh.strength * strength + weigh.left * left.length + weigh.missing * missing.length,
  }
}

/** “85 a day”, “once a year”: what stands for each of something measures nothing by itself. */
const isRate = (reading: Tagged): boolean =>
  /^an? (second|minute|hour|day|week|month|year|foot|meter|metre|yard|bag|gallon|litre|liter|can)$/i.test(reading.said)

/** Whether a quantity can be that word: by its kind, or as a bare number that only the words around it give a unit. */
export const canBe = (word: Word, reading: Tagged, looked: Looked, needed: ReadonlySet<string>): boolean =>
  !isIdleNumber(word, reading, looked) &&
  (fits(word, reading, looked.heard, needed) ||
    // A stick called by its size is any of its sides, where it has such a side.
    (reading.section !== undefined && word.ofStick !== undefined && hasSide(word, reading.section, needed)) ||
    (reading.bare !== null &&
      !reading.section &&
      !reading.clock &&
      !reading.proportion &&
      word.kind !== 'count' &&
      fittedReading(word, reading, systemOf(looked.heard.job)) !== undefined))

const isSmallWord = ({ bare, said }: Tagged): boolean =>
  bare !== null && bare.d === 1n && bare.compare(10) < 0 && /^\p{L}/u.test(said)

/** “One number”, “two stakes”: a small number in words measures nothing, unless a dimension stands behind it. */
const isIdleNumber = (word: Word, reading: Tagged, { message }: Looked): boolean =>
  word.kind !== 'count' &&
  isSmallWord(reading) &&
  !/^(wide|deep|across|tall|high|long|thick|apart|by|percent|coat)$/.test(
    message[message.findIndex((it) => it.tag === reading.tag) + 1]?.stem ?? '',
  )

/** A post is as wide as it is thick, and a picket is thin. */
const hasSide = (
  word: Word,
  { thickness, width }: NonNullable<Tagged['section']>,
  needed: ReadonlySet<string>,
): boolean =>
  // Where one name tells both sides, the word that brings the other along takes it.
  [...needed].some((it) => vocabulary.get(it)?.otherSide === word.name)
    ? false
    : word.name === 'postWidth'
      ? sameValue(thickness, width)
      : word.name === 'picketWidth'
        ? toNumber(thickness.amount) < 1.3 && !sameValue(thickness, width)
        : true

/** Each quantity and the number of its word: all together as sure as can be, and every word that is no list once. */
function assigned(
  scores: readonly (readonly number[])[],
  words: readonly Word[],
  isSame: (i: number, j: number) => boolean,
): (number | undefined)[] {
  const impossible = -1e6
  // A list takes as many as there are; whoever takes no word has a place of their own.
  const columns = words.flatMap((word, at) => (word.list ? scores.map(() => at) : [at]))
  const gain = scores.map((row, i) => [
    ...columns.map((at) => Math.max(impossible, row[at] as number)),
    ...scores.map((_, j) => (i === j ? 0 : impossible)),
  ])
  const chosen = bestAssignment(gain).map((column, i) => {
    const at = columns[column]
    return at !== undefined && ((scores[i] as number[])[at] as number) > 0 ? at : undefined
  })
  // “9 cm by 9 cm” says one thing twice.
  return chosen.map((at, i) => {
    const own = scores[i] as number[]
    const twice = chosen.find(
      (other, j) =>
        i !== j &&
        other !== undefined &&
        isSame(i, j) &&
        (own[other] as number) > (at === undefined ? 0 : (own[at] as number)),
    )
    return twice ?? at
  })
}
