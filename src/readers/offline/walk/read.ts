// This file is about when a message tells a fence side by side, and what that hands to the offline reader.
import {
  type Calculation,
  looksAt,
  runPlaces,
  toNumber,
  vocabulary,
  type Wanted,
  wholeFence,
  yard,
} from '../../../../engine/index.ts'
import { boundTo, weights } from '../taught/decode.ts'
import type { Tagged } from '../../reader.ts'
import { bareWants, isAsked } from '../asked-of-fence.ts'
import { sizesOfRuns } from '../bind-by-runs.ts'
import type { Bound } from '../bound.ts'
import type { RunSaid } from '../runs.ts'
import { calculationsIn } from '../lexicon.ts'
import { stem, type Token } from '../stems.ts'
import type { Looked } from '../taught/features.ts'
import { asksOf, looksLikeFence, type Tagging, taggings, untagged } from './tags.ts'
import type { WalkWeights } from './walk-weights.ts'
import { isOfWalk } from './items.ts'
import { type Walked, walked } from './walk.ts'

export interface Walking extends Walked {
  /** What it asks for, where the vocabulary hears nothing. */
  readonly asks: readonly Wanted[]
}

// “Two fences that do not touch”: how they stand to one another is not told here.
const apart = /\b(separate|(not|\w+n['’]?t) (touch|join|meet|connect))/i
// “It has a post already”, “the 8 m side is not needed”: what is built then is not told here.
const changesSides =
  /\b(?:has|have|had|got|is|there(?:'|’)?s) an? (?:\w+ )?post (?:there )?already\b|\bexisting posts?\b|\bnot need(?:ed)?\b|\bis(?:n['’]t| not) needed\b|\b(?:do not|don['’]t) fence\b/i

/**
 * What a message tells of a fence side by side; nothing where it tells none so.
 * `torn` where it tells one and it does not come out. `asksSum` is whether the vocabulary hears a question,
 * and `byRules` are the runs that its rules make out: sides that they size by themselves need no walk.
 */
export function walkReading(
  looked: Looked,
  asksSum: boolean,
  byRules: readonly RunSaid[],
): Walking | 'torn' | undefined {
  const by = weights().walks
  // “Bay 3”; “bays 2.4 tops” is how wide they may be.
  const isOfBay = looked.message.some(
    (it, at) => /^bay$/i.test(it.text) && looked.message[at + 1]?.reading?.bare?.d === 1n,
  )
  if (looked.message.length > longest || isOfBay) return undefined
  const { job, said } = looked.heard
  const isKnown = runPlaces(job).length > 0
  // How many sides it must tell is known before its tags are, which take far longer to find.
  if (!isKnown && sidesToTell(looked) === undefined) return undefined
  const ways = taggings(looked, by)
  const [best] = ways
  if (!best || !isTold(looked, best, isKnown)) return undefined
  const sides = best.tags.filter((tag, at) => isSideOf(tag) && (best.shares[at] as number) >= clear)
  // In the midst of a fence the rules go on, but where a gate or a side is spoken of that they do not make out.
  const namesRuns = byRules.length > 0
  const byTheRules = sizesOfRuns({ message: looked.message, runs: byRules, stretches: [] }, runPlaces(job))
  const sized = new Set(byTheRules.map((it) => it.at))
  const isSized = (reading: Tagged): boolean => byTheRules.some((it) => it.reading.tag === reading.tag)
  const isOfGates = best.tags.some((it) => /^(ref|noGates|gateOpening|gateBare)$/.test(it)) && !namesRuns
  const isAllClear = looked.message.every(
    ({ reading }, at) => !reading || (best.tags[at] !== untagged && (best.shares[at] as number) >= clear),
  )
  // Of a side that is named the rules tell more, but for its gate.
  const hasGate = best.tags.includes('gateOpening')
  const tellsParts = isKnown && isAllClear && (!namesRuns || hasGate) && looked.heard.readings.length > 0
  const goesOn = isKnown && (isOfGates || tellsParts || (!namesRuns && best.tags.every((it) => !isOfWalk(it))))
  // What the rules size is sized by the walk as well, and more: the rules left a side out.
  const hasMore =
    namesRuns &&
    sides.length > sized.size &&
    looked.message.every((it, at) => !it.reading || !isSized(it.reading) || isSideOf(best.tags[at]))
  // “Tight to the left front corner” is of two sides, and “after 3.1 m is a gate” begins before it: the rules cannot tell either.
  const isClear = (tag: string): boolean =>
    best.tags.some((it, at) => it === tag && (best.shares[at] as number) >= clear)
  const clearGates = best.tags.filter((tag, at) => tag === 'gateOpening' && (best.shares[at] as number) >= clear).length
  const placesGate =
    !isKnown &&
    sides.length === sized.size &&
    (ofTwoSides.test(said) || (isClear('gateStart') && isClear('gateOpening')) || clearGates > 1)
  if (sides.length > 0 ? sides.length <= sized.size && !hasMore && !placesGate : !goesOn) return undefined
  for (const way of ways) {
    const found = walked(looked, isKnown ? surely(looked, way) : way.tags)
    if (!found) continue
    const isEmpty = found.bound.length + found.chosen.length === 0
    if (isEmpty && !(tellsParts && sides.length === 0 && !way.tags.includes('ref')))
      return way.tags.includes('ref') ? 'torn' : undefined
    if (!isKnown && !isFence(found, way.tags, asksSum)) return undefined
    if ((found.sides > 1 && apart.test(said)) || changesSides.test(said)) return 'torn'
    const named = looked.message.flatMap(({ reading }, at): Bound[] => {
      const word = way.tags[at] as string
      const isPart = reading && word !== untagged && !isOfWalk(word) && (way.shares[at] as number) >= clear
      return isPart && vocabulary.has(word) ? [{ reading, word: ofGap(word, said), at: yard, score: 1 }] : []
    })
    const spent = new Set([
      ...[...found.bound, ...named].map((it) => it.reading.tag),
      ...looked.message.flatMap((it, at) => (it.tag && isOfWalk(way.tags[at] as string) ? [it.tag] : [])),
    ])
    const others = [
      ...named,
      ...boundTo(looked, partsOf(by), spent, weights())
        .filter(
          ({ word, sure }) => sure >= (found.sides > 0 ? besideSides : 0) && !named.some((it) => it.word === word),
        )
        .map(({ reading, word, sure: score }) => ({ reading, word, at: yard, score })),
    ]
    if (!isKnown && isNoSide([...found.bound, ...others])) return undefined
    const bound = new Set([...found.bound, ...others].map((it) => it.reading))
    const isLost = ({ reading }: Token, at: number): boolean =>
      reading !== undefined &&
      !bound.has(reading) &&
      isLength(reading) &&
      !/^(ref|gates)$/.test(way.tags[at] as string) &&
      !/^(st|nd|rd|th)$/.test(looked.message[at + 1]?.text ?? '') &&
      !(way.tags[at] === untagged && (way.shares[at] as number) > nothing)
    const tellsGate = found.bound.some((it) => it.word === 'gateOpening')
    if ((found.sides > 0 || tellsGate) && looked.message.some(isLost)) return 'torn'
    return {
      ...found,
      bound: [...found.bound, ...others],
      asks: asksOf(looked, by).map((word) => ({ word: word === 'total' ? 'takeOffCost' : word, at: yard })),
    }
  }
  return 'torn'
}

/** Whether a message tells of sides, or, where a fence is known, of what belongs to it. */
function isTold(looked: Looked, { tags, shares }: Tagging, isKnown: boolean): boolean {
  if (!isKnown) {
    const sides = tags.filter((tag) => /^(runLength|stretch|again|times)$/.test(tag)).length
    const least = sidesToTell(looked)
    if (least !== 'sure') return sides >= (least ?? Number.POSITIVE_INFINITY)
    const isSure = tags.every(
      (tag, at) => !isSideOf(tag) || !looked.message[at]?.reading || (shares[at] as number) >= sure,
    )
    return sides >= 2 && isSure && tags.includes('widestBay')
  }
  const isOfSizes = looked.message.some((it, at) => it.reading && tags[at] !== untagged) && !tags.includes('name')
  return isOfSizes || tags.some(isOfWalk)
}

const isSideOf = (tag: string | undefined): boolean => /^(runLength|stretch|again)$/.test(tag ?? '')

/** How many sides a message must tell, of a fence that is not known yet, to be taken for one, or that they must be sure; undefined where it is none by its words. */
function sidesToTell(looked: Looked): 1 | 2 | 'sure' | undefined {
  const like = looksLikeFence(looked, weights().walks)
  if (like > 0) return 1
  // Several sides, and posts or bays asked for: much else may be said beside.
  const asksPosts =
    (isAsked(looked.message) || bareWants(lastClause(looked.message), []).length > 0) &&
    looked.message.some((it) => /^(post|bay|section|panel|span)$/.test(it.stem))
  if (!asksPosts) return undefined
  return like > hardlyFence && calculationsIn(looked.message).length === 0 ? 2 : 'sure'
}

let ofFence: Calculation | undefined
/** What stands in the sides, as the needs of one calculation: posts, bays, pickets, holes. */
function partsOf({ seen }: WalkWeights): Calculation {
  const names = new Set(Object.values(seen).flat())
  const words = [...vocabulary.values()].filter((it) => names.has(it.name) && !isOfWalk(it.name))
  ofFence ??= { ...wholeFence, name: 'parts-of-fence', needs: Object.fromEntries(words.map((it) => [it.name, it])) }
  return ofFence
}

const hardlyFence = -8
// Where sides are told, so sure must be what else a size is.
const besideSides = 2

/** “A 45 gap” is wanted so; “45 or less” is a limit. */
const ofGap = (word: string, said: string): string => (word === 'widestGap' && !limits.test(said) ? 'wantedGap' : word)
const limits =
  /\b(?:max|maximum|most|tops|biggest|largest|widest|limit|less|under|below|over|than|exceed|smaller|up to|within|wider|never)\b/i

// A length that is not so sure to mean nothing may be a side: without it the fence would be another.
const nothing = 0.85
const isLength = ({ quantity, bare, section, said }: Tagged): boolean =>
  quantity?.kind === 'length' || (bare !== null && !section && !/^\p{L}/u.test(said))

// A tag that is so sure is taken for what stands in the sides; another is held against all that it could be.
const clear = 0.7
const ofTwoSides =
  /\bgate\b[^.;?!]*\b(?:left|right|front|back|rear|north|south|east|west)[ -](?:left|right|front|back|rear|east|west) corner\b/i

// A table of figures is no walk.
const longest = 400

/** A side that nothing names and that is no bay long: “frost 1.2 m, posts 2.4 m on centre”. */
function isNoSide(bound: readonly Bound[]): boolean {
  const sizes = (word: string): number[] =>
    bound.flatMap((it) => (it.word === word && it.reading.quantity ? [toNumber(it.reading.quantity.amount)] : []))
  const [bay] = sizes('widestBay')
  const isNamed = bound.some((it) => it.word === 'runLength' && !/^run-/.test(it.at))
  return bay !== undefined && !isNamed && sizes('runLength').some((it) => it < bay)
}

// In the midst of a talk a size may be of anything.
const sure = 0.7
const surely = ({ message }: Looked, { tags, shares }: Tagging): string[] =>
  tags.map((tag, at) => {
    const isUnsure = message[at]?.reading && (shares[at] as number) < sure
    const isOfNoGate = tag === 'gateOpening' && !message.some((it) => it.stem === 'gate')
    return isUnsure || isOfNoGate ? untagged : tag
  })

/** One side alone is a fence of several where it has a name and nothing is asked yet. */
const isFence = ({ sides, isNamed, isInPieces }: Walked, tags: readonly string[], asksSum: boolean): boolean =>
  sides > 1
    ? isNamed || tags.some((it) => /^(corner|stretch|again|closed|open|times)$/.test(it))
    : sides === 1 && (tags.includes('corner') || isInPieces || (isNamed && !asksSum))

const following = new Set(['railsInAll', 'picketsHung', 'picketsToBuy'])
// So much likelier than not.
const surelyAsked = 1
/** “And rails, two a span”: what stands in a fence that is known is told, and its number is what is wanted. */
export function asksThatFollow(looked: Looked): Wanted[] {
  const tells = looked.message.some((it) => it.reading && !it.reading.change)
  const speaks = looked.message.some((it) => /^(rail|picket|pale|paling|slat)$/.test(it.stem))
  if (!tells || !speaks) return []
  return asksOf(looked, weights().walks, surelyAsked)
    .filter((it) => following.has(it))
    .slice(0, 1)
    .map((word) => ({ word, at: yard }))
}

/** What a fence is asked for: what the vocabulary hears of its parts, and what was learned. */
export function wantsOfWalk({ asks }: Walking, heard: readonly Wanted[], message: readonly Token[]): readonly Wanted[] {
  const ofFence = heard.filter(({ word }) => parts.has(word))
  const isSaid = (word: string): boolean => {
    const noun = stem(vocabulary.get(word)?.noun ?? '')
    return message.some((it) => it.stem === noun)
  }
  const last = lastClause(message)
  const bare = ofFence.length === 0 ? bareWants(last, []) : []
  if (bare.length > 0) return bare
  const more = asks.filter(({ word }) => !ofFence.some((it) => it.word === word))
  return [...ofFence, ...(ofFence.length > 0 ? more.filter(({ word }) => isSaid(word)) : more)]
}

/** “…, bags for all of them”: the last clause, where it measures nothing. */
function lastClause(message: readonly Token[]): readonly Token[] {
  const end = message.findLastIndex((it) => /\p{L}/u.test(it.text)) + 1
  const start = message.slice(0, end).findLastIndex((it) => /^[.,;?!\n]$/.test(it.text) || it.reading !== undefined) + 1
  const clause = message.slice(start, end)
  return clause.length <= 5 && !clause.some((it) => /^(no|not|max|most|apart|between|deep|wide|each)$/.test(it.stem))
    ? clause
    : []
}

const parts = new Set([
  ...looksAt,
  'pickets',
  'picketsHung',
  'gap',
  'opening',
  'bayCentres',
  'takeOffLines',
  'takeOffCost',
])
