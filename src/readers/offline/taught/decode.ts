// This file is about the reading that the taught weights find: which calculation a message asks for, and which word each of its quantities is.
// Every likely calculation is tried on the whole message; what it binds speaks for it, what it leaves over and lacks speaks against it.
import {
  type Calculation,
  calculationNamed,
  type Job,
  sameValue,
  toNumber,
  vocabulary,
  type Word,
} from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import { countsList, type Fits, isHeightOfFence, isRate } from '../fits.ts'
import { canBe, isSmallWord } from './can-be.ts'
import { type Asked, askedFor } from './asks.ts'
import { assigned } from './assign.ts'
import { type Beside, owned, sharesOf, wordsBeside } from './belongs.ts'
import { likelihood } from '../likelihood.ts'
import { calculationsIn } from '../lexicon.ts'
import type { Token } from '../stems.ts'
import { knownIn } from '../feeds.ts'
import { cues, isLater, type Looked, type Sized, sizedAt } from './features.ts'
import { any, scoreOf, speaksOf } from './table.ts'
import { eachBehind, lackingFor, mustBeTold, takes } from './takes.ts'
import { talkedOf } from './talked.ts'
import { talkFeatures } from './told-before.ts'
import { cueFeatures, kindsOf, load, quantityFeatures, type Weights, wordLabel } from './weights.ts'

export interface Binding {
  readonly reading: Tagged
  readonly word: string
  /** Whether the vocabulary names it. */
  readonly named: boolean
  /** How much surer it is than that it means nothing, and than the next word: in logarithms. */
  readonly sure: number
  /** The word that it would be next. */
  readonly next?: string
}

export interface Reading {
  readonly calculation: Calculation
  readonly bound: readonly Binding[]
  /** Quantities that it has no place for. */
  readonly left: readonly Tagged[]
  readonly missing: readonly Word[]
  /** One size was measured more than once, and not alike. */
  readonly repeated: boolean
  readonly score: number
  /** What speaks for it and against it. */
  readonly features: readonly (readonly [string, number])[]
}

const weigh = {
  /** It answers a question of its own, and none of its own phrases is in the message: the plain one is meant. */
  uncalled: -0.8,
  /** A quantity that it binds counts by how surely, up to so sure. */
  mostSure: 3,
  /** A quantity that is so much surer to be a word than what is left for it says the same thing twice. */
  twice: 3,
  /** What a quantity is surer to be elsewhere counts against a reading up to so much. */
  mostRegret: 4,
  /** So many calculations are tried. */
  tried: 10,
} as const

let known: Weights | undefined
export const weights = (): Weights => {
  known ??= load()
  return known
}

const inAll = ({ counted, weighed }: Asked): number => counted + weighed / 2

/** The readings of a message, the best first. */
export function readingsOf(looked: Looked, by: Weights): Reading[] {
  const { now, before } = talkedOf(looked.heard.job)
  const scores = new Scores(looked, by)
  const likeliest = [...askedFor(by.asks, looked)].sort(([, a], [, b]) => inAll(b) - inAll(a))
  const tries = likeliest
    .filter(([name], i) => i < weigh.tried || now.includes(name) || before.has(name))
    .flatMap(([name, share]) => {
      const calculation = calculationNamed(name)
      return calculation ? [tried(looked, calculation, share, scores)] : []
    })
  return withRegret(tries, by)
}

/** Each quantity may be surer to be a word of another calculation than what this one makes of it: that speaks against this one. */
function withRegret(tries: readonly Tried[], by: Weights): Reading[] {
  const most = (tries[0]?.each ?? []).map((_, i) => Math.max(0, ...tries.map((it) => it.each[i] as number)))
  return tries
    .map(({ each, isUncalled, ...it }) => {
      const regret = each.reduce((sum, own, i) => sum + Math.min(weigh.mostRegret, (most[i] as number) - own), 0)
      const features: Reading['features'] = [...it.features, ['regret', regret]]
      return { ...it, features, score: scoreOf(by.readings, features) + (isUncalled ? weigh.uncalled : 0) }
    })
    .sort((a, b) => b.score - a.score)
}

/** A reading before it is held against the others. */
interface Tried extends Omit<Reading, 'score'> {
  readonly isUncalled: boolean
  /** How sure each quantity is of what it was taken for. */
  readonly each: readonly number[]
}

/** A quantity, what it looks like to the weights, and which words it can be. */
interface Read extends Sized {
  readonly features: readonly string[]
  readonly canBe: Fits
}

/** The same, worked once for each word of those that are needed; a stick may be one word or another, as it is needed. */
function oncePerWord({ section }: Tagged, canBe: Fits): Fits {
  if (section) return canBe
  const known = new Map<Word, boolean>()
  return (word, needed) => {
    const does = known.get(word) ?? canBe(word, needed)
    known.set(word, does)
    return does
  }
}

/** How well each quantity of a message goes with a word, worked once for all calculations. */
class Scores {
  readonly quantities: readonly Read[]
  /** The words that may belong to a quantity, by the names they have there, and the share of each that is every quantity's. */
  private readonly beside: readonly { readonly names: readonly string[]; readonly shares: readonly number[] }[]
  private readonly known = new Map<string, (number | undefined)[]>()
  private readonly spoken = new Map<string, readonly number[]>()
  private told: number | undefined
  readonly called: ReadonlySet<string>
  constructor(
    private readonly looked: Looked,
    readonly by: Weights,
  ) {
    this.called = new Set(calculationsIn(looked.message))
    this.quantities = looked.message.flatMap(({ reading }, spot) =>
      reading
        ? [
            {
              ...sizedAt(looked, reading, spot),
              features: quantityFeatures(looked, reading, spot),
              canBe: oncePerWord(reading, canBe(looked, reading)),
            },
          ]
        : [],
    )
    const spots = this.quantities.map((it) => it.spot)
    this.beside = wordsBeside(looked, spots).map((it: Beside) => ({
      names: it.names.map(owned),
      shares: sharesOf(by.belongs, it),
    }))
  }
  /** How likely the message only tells. */
  get tells(): number {
    this.told ??= kindsOf(this.by, this.looked).get('told') ?? 0
    return this.told
  }
  /** How well the quantity of that place goes with a word; with none, how well it means nothing. */
  of(word: Word | undefined, i: number): number {
    const name = wordLabel(word)
    const own = this.known.get(name) ?? []
    this.known.set(name, own)
    own[i] ??= this.worked(word, name, i)
    return own[i] as number
  }
  /** How much each word of the message speaks for that label, where it belongs to a quantity. */
  private besideOf(name: string): readonly number[] {
    const known = this.spoken.get(name)
    if (known) return known
    const speaking = this.by.binds[name]
    const found = this.beside.map(({ names }) => speaksOf(speaking, names))
    this.spoken.set(name, found)
    return found
  }
  private worked(word: Word | undefined, name: string, i: number): number {
    const { binds } = this.by
    const size = this.quantities[i] as Read
    const ofWords = this.besideOf(name)
    const own = this.beside.reduce(
      (sum, { shares }, at) => sum + (shares[i] as number) * (ofWords[at] as number),
      speaksOf(binds[name], size.features),
    )
    if (!word) return own
    const ofAny = [...cueFeatures(this.looked, size, word), ...talkFeatures(this.looked, size, word)]
    return scoreOf(binds[any], ofAny, own)
  }
}

/** What the quantities of a message are among the words of one calculation, but for those that are spent. */
export const boundTo = (
  looked: Looked,
  calculation: Calculation,
  spent: ReadonlySet<string>,
  by: Weights,
): readonly Binding[] =>
  tried(looked, calculation, { counted: 0, weighed: 0 }, new Scores(looked, by), spent).bound.filter(
    ({ sure }) => sure >= hardly,
  )

// Less sure than that, a quantity is left for a question.
const hardly = 0.5

function tried(
  looked: Looked,
  calculation: Calculation,
  asked: Asked,
  known: Scores,
  spent: ReadonlySet<string> = new Set(),
): Tried {
  const { job } = looked.heard
  const { words, names: needed, isList, behind, standing, after } = takes(calculation, known.by)
  const { quantities } = known
  // “Half that gap” is of what it names, whatever the weights say.
  const alone = quantities.map(({ reading, canBe }, i) => {
    const idle = known.of(undefined, i)
    return words.map((word, j) =>
      !spent.has(reading.tag) && canBe(word, needed) && reading.change?.way !== 'times'
        ? known.of(word, i) - idle + (standing[j] as number)
        : Number.NEGATIVE_INFINITY,
    )
  })
  const cueOf = (i: number, word: Word): number => cues(looked, quantities[i] as Sized, word).cue
  const { chosen, scores } = assigned(alone, isList, after, (i, j) => {
    if (!isBy(looked.message, quantities[i]?.spot, quantities[j]?.spot)) return false
    const [a, b] = [quantities[i]?.reading, quantities[j]?.reading]
    if (a?.quantity && b?.quantity) return sameValue(a.quantity, b.quantity)
    return a?.bare != null && b?.bare != null && a.bare.equals(b.bare)
  })
  const clashes = scores.map((own, i) => {
    const best = own.indexOf(Math.max(...own))
    const [mine, at] = [own[best] ?? 0, chosen[i]]
    const held = at === undefined ? 0 : (own[at] as number)
    return !words[best]?.list && at !== best && mine > weigh.twice && mine - held > weigh.twice && chosen.includes(best)
  })
  const repeated = quantities.some(
    ({ reading }, i) =>
      (chosen[i] === undefined || clashes[i]) && quantities.some((other) => isAlmost(reading, other.reading)),
  )
  const bound = chosen.flatMap((at, i): Binding[] => {
    if (at === undefined || clashes[i]) return []
    const own = scores[i] as number[]
    const score = own[at] as number
    const others = own.map((it, other) => (other !== at && !chosen.includes(other) && behind[other] === 0 ? it : 0))
    const next = Math.max(0, ...others)
    const word = words[others.indexOf(next)]
    return [
      {
        reading: (quantities[i] as { reading: Tagged }).reading,
        word: (words[at] as Word).name,
        named: cueOf(i, words[at] as Word) > 0,
        // How far it stands behind the sum is against the reading, and says nothing of what the quantity is.
        sure: score - next - (behind[at] ?? 0) * eachBehind,
        ...(next > 0 && word ? { next: word.name } : {}),
      },
    ]
  })
  const left = quantities
    .filter(
      (_, i) =>
        (chosen[i] === undefined || clashes[i]) &&
        !isRate((quantities[i] as { reading: Tagged }).reading) &&
        !isHeightOfFence((quantities[i] as { reading: Tagged }).reading, looked.heard) &&
        !isSmallWord((quantities[i] as { reading: Tagged }).reading) &&
        !countsRow((quantities[i] as { reading: Tagged }).reading, bound, looked),
    )
    .map((it) => it.reading)
  const has = new Set([
    ...knownIn(job),
    ...bound.flatMap((it) => [it.word, vocabulary.get(it.word)?.otherSide ?? it.word]),
  ])
  const missing = lackingFor(calculation, has)
  // One is lacking, one is left over, and it can be that: what nothing names is taken for it.
  const [lacking, more] = missing
  const able = lacking
    ? left.filter((it) => canBe(looked, it)(lacking, needed) && likelihood(lacking, it, looked.heard) > 0)
    : []
  if (lacking && !more && able.length === 1) {
    const [only] = able as [Tagged]
    bound.push({ reading: only, word: lacking.name, named: false, sure: 0 })
    left.splice(left.indexOf(only), 1)
    missing.pop()
  }
  const each = chosen.map((at, i) => (at === undefined ? 0 : ((scores[i] as number[])[at] as number)))
  return {
    calculation,
    bound,
    left,
    missing,
    repeated,
    features: speaking({ calculation, asked, bound, left, missing, each }, job, known),
    isUncalled: isUncalled(calculation, job, known),
    each,
  }
}

const isUncalled = ({ called, name }: Calculation, job: Job, known: Scores): boolean =>
  called !== undefined && !known.called.has(name) && !talkedOf(job).now.includes(name)

interface Found extends Pick<Tried, 'calculation' | 'bound' | 'left' | 'missing' | 'each'> {
  /** How much the words of the message alone speak for the calculation. */
  readonly asked: Asked
}

/** What speaks for a reading and against it: its words, what it binds, leaves over and lacks, and what the talk has to do with it. */
function speaking(
  { calculation, asked, bound, left, missing, each }: Found,
  job: Job,
  scores: Scores,
): [string, number][] {
  const told = new Set(job.decisions.map((it) => it.word))
  const open = new Set(job.asked.map((it) => it.word))
  const strength = each.reduce((sum, it) => sum + Math.min(weigh.mostSure, it), 0)
  const features: [string, number][] = [
    ['asked', asked.counted],
    ['asked, weighed', asked.weighed],
    ['strength', strength],
    ['left', left.length],
    ['missing', missing.length],
    ['missing any', missing.length > 0 ? 1 : 0],
    // A list of sizes with one size in it.
    ['lone', bound.filter((it) => isAlone(it, bound) && !told.has(it.word)).length],
    ['behind', bound.filter((it) => !calculation.needs[it.word]).length],
  ]
  const { now, before } = talkedOf(job)
  const isTalk = now.includes(calculation.name)
  if (isLater(job)) {
    const { tells } = scores
    const isBefore = !isTalk && before.has(calculation.name)
    const must = mustBeTold(calculation)
    const heldNow = knownIn(job)
    const known = must.filter((it) => heldNow.has(it.name)).length
    const again = bound.filter((it) => told.has(it.word)).length
    features.push(
      ['later asked', asked.counted],
      ['later asked, weighed', asked.weighed],
      ['later strength', strength],
      ['later left', left.length],
      ['later missing', missing.length],
      ['talk', isTalk ? 1 : 0],
      ['talk, tells', isTalk ? tells : 0],
      ['talk before', isBefore ? 1 : 0],
      ['talk before, tells', isBefore ? tells : 0],
      ['again in talk', isTalk ? again : 0],
      ['again elsewhere', isTalk ? 0 : again],
      ['known', known / Math.max(1, must.length)],
      ['known all', missing.length === 0 && bound.length === 0 ? 1 : 0],
      ['nothing known', !isTalk && must.length > 0 && known === 0 ? 1 : 0],
    )
  }
  if (open.size > 0) {
    const answers = bound.filter((it) => open.has(it.word)).length
    features.push(
      ['answers', answers],
      // It tells just what was asked for, and nothing else: the talk goes on.
      ['answers all', answers > 0 && answers === each.length ? 1 : 0],
      ['talk open', isTalk ? 1 : 0],
    )
  }
  return features
}

/** “3 sides 40 ft, 40 ft, 40 ft”: how many there are of what follows. */
function countsRow(reading: Tagged, bound: readonly Binding[], { message }: Looked): boolean {
  const { tag, bare } = reading
  const next = message[message.findIndex((it) => it.tag === tag) + 1]
  if (bare === null || !/^\p{L}{3,}s$/u.test(next?.text ?? '')) return false
  return countsList(
    reading,
    bound.map((it) => it.word),
  )
}

const isAlone = ({ word: name }: Binding, bound: readonly Binding[]): boolean => {
  const word = vocabulary.get(name)
  return word?.list === true && word.kind === 'length' && bound.filter((it) => it.word === name).length === 1
}

/** “93 in, 93 1/8 in”: two measures of one length. */
function isAlmost({ quantity: one }: Tagged, { quantity: other }: Tagged): boolean {
  if (one?.kind !== 'length' || other?.kind !== 'length') return false
  const [a, b] = [toNumber(one.amount), toNumber(other.amount)]
  return a !== b && Math.max(a, b) < 1.05 * Math.min(a, b)
}

/** “9 cm by 9 cm”, “90 x 90”: what stands so beside one another is one thing. */
function isBy(message: readonly Token[], one = 0, other = 0): boolean {
  const between = message.slice(Math.min(one, other) + 1, Math.max(one, other))
  return between.length <= 1 && between.every(({ text }) => /^(by|x|×)$/i.test(text))
}
