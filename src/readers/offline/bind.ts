// This file is about binding: which word each quantity of a message belongs to, by kind, cue and nearness.
import {
  type Calculation,
  isQuantity,
  needsFor,
  sameValue,
  usualFor,
  vocabulary,
  type Word,
  yard,
} from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import { limits, type Owned, plainlyMeant, weight } from './cue-score.ts'
import { daysIn } from './days.ts'
import type { Bound } from './bound.ts'
import { thatGiveAny } from './calculations-by-word.ts'
import { neededBehind } from './feeds.ts'
import { fits } from './fits.ts'
import { likelihood } from './likelihood.ts'
import { pairsTold } from './pairs.ts'
import { placeFor } from './places.ts'
import { moneyIn } from './prices-said.ts'
import { saidOutright } from './said-outright.ts'
import { type Scene, type Sized, wordsFor } from './scene.ts'
import type { Token } from './stems.ts'

/** Binds the quantities of a message, the surest first; each word at a place takes one, and each quantity one word. */
export function bind(
  scene: Scene,
  wanted: readonly string[],
  asksNow: boolean,
  named?: Calculation,
): { bound: Bound[]; loose: Tagged[] } {
  const { heard, message, usable } = scene
  const answering = named ? [named] : thatGiveAny(wanted)
  const needed = new Set(answering.flatMap((calc) => Object.keys(calc.needs)))
  const behind = neededBehind(needed)
  const pairs = scene.sized.flatMap((it) => pairsOf(it, scene, needed, behind, asksNow))
  const holeAt = (spot: number): string => placeFor(vocabulary.get('holeDiameter') as Word, spot, scene.kinds, message)
  pairs.push(...pairsTold({ heard, message, hits: usable, needed, holeAt }))
  const inRows = [
    ...scene.inRows,
    ...daysIn(heard, message, needed),
    ...moneyIn(heard, message, needed),
    ...answering.flatMap((calc) => saidOutright(message, calc.needs, heard.job)),
  ]
  const idle = new Set(scene.idle)
  const placed = new Set([...inRows.map((it) => it.reading), ...scene.idle].map((it) => it.tag))
  pairs.splice(0, pairs.length, ...pairs.filter((it) => !placed.has(it.reading.tag)), ...inRows)
  pairs.splice(0, pairs.length, ...withoutStrays(pairs, needed, asksNow ? weight.stray : weight.strayInTalk))
  pairs.splice(0, pairs.length, ...withoutUnlikely(pairs, heard))
  pairs.sort((a, b) => b.score - a.score || a.reading.start - b.reading.start)

  const byTag = groupedByTag(pairs)
  const bound: Bound[] = []
  const takers = new Map<string, Bound>()
  const clashes = new Set<string>()
  const torn = new Set<string>()
  const settled = new Set<string>()
  for (const pair of pairs) {
    if (torn.has(pair.reading.tag) || settled.has(pair.reading.tag)) continue
    const place = `${pair.word}@${pair.at}`
    const taken = takers.get(place)
    if (!taken || vocabulary.get(pair.word)?.list) {
      bound.push(pair)
      takers.set(place, pair)
      settled.add(pair.reading.tag)
    } else if (isClash(pair, taken, byTag, heard)) {
      // Two sizes said of one thing, both in so many words: which of them holds is not for us to choose.
      clashes.add(pair.word)
      torn.add(pair.reading.tag)
    }
  }
  // "under 4 in" is less than a gap of 4 in, as a ball of 4 in has it that must not pass.
  const strict = (it: Bound): Bound =>
    it.word === 'widestGap' && it.reading.firmness === 'less-than' && needed.has('sphere')
      ? { ...it, word: 'sphere' }
      : it
  const sure = inOneRow([...bound, ...restOfLists(bound, heard, message)], heard, message)
    .filter((it) => !clashes.has(it.word) && !idle.has(it.reading))
    .map(strict)
  const loose = (): Tagged[] => {
    const taken = new Set(sure.map((it) => it.reading.tag))
    return heard.readings.filter(({ tag }) => !taken.has(tag))
  }
  // A quantity that some thing is named beside is that thing's, even where it is no word of ours: "the rails are 8 ft".
  const unnamed = (reading: Tagged): boolean =>
    !(scene.named.get(reading.tag) ?? []).some(
      (hit) => likelihood(vocabulary.get(hit.word) as Word, reading, heard) >= 0,
    )
  if (asksNow && clashes.size === 0) {
    // What went to a word that the question does not need counts as left over too: the question's own words come first.
    const stray = sure.filter((it) => !needed.has(it.word) && it.score < weight.strong)
    for (const it of onlyWordLeft(
      heard,
      sure,
      [...loose(), ...stray.map((it) => it.reading)].filter(unnamed),
      needed,
      wanted,
    ))
      sure.splice(0, sure.length, ...sure.filter((other) => other.reading.tag !== it.reading.tag), it)
  }
  // "Make that 7 ft at most", "and if I use 3 1/2 in ones?": what the talk is about is said anew, before anything it is not about.
  // "No, 14": the number said last is said anew, whatever is asked.
  const corrected = corrects(heard, message)
  if (corrected) return { bound: [corrected], loose: [] }
  if (!asksNow && heard.readings.length === 1 && sure.every((it) => !needed.has(it.word) && it.score < weight.strong)) {
    const again = sameAgain(heard, usable, new Set(behind.keys()))
    if (again.length > 0) return { bound: again, loose: [] }
  }
  // An answer to our own question may come in another coin: "60 lb" to "which bags?".
  if (!asksNow && sure.length === 0)
    sure.push(...(heard.job.asked.length > 0 ? onlyWordLeft(heard, sure, loose().filter(unnamed), needed, wanted) : []))
  return { bound: sure, loose: loose() }
}

/** "humidities 90, 85, 80 %; chance of rain 0, 10 %": what stands between commas belongs to the list that most of its row is bound to, however near another list's name stands. */
function inOneRow(bound: readonly Bound[], heard: Heard, message: readonly Token[]): Bound[] {
  const words = new Map(bound.map((it) => [it.reading.tag, it.word]))
  const mostOf = new Map<string, string | undefined>()
  let row: string[] = []
  const endRow = (): void => {
    const counts = new Map<string, number>()
    for (const word of row.flatMap((tag) => words.get(tag) ?? [])) counts.set(word, (counts.get(word) ?? 0) + 1)
    const most = [...counts].find(([, count]) => count * 2 > row.length)?.[0]
    for (const tag of row) mostOf.set(tag, most)
    row = []
  }
  for (const token of message)
    if (token.tag) row.push(token.tag)
    else if (!/^(,|and|&)$/.test(token.text)) endRow()
  endRow()
  return bound.map((it) => {
    if (!vocabulary.get(it.word)?.list) return it
    const most = mostOf.get(it.reading.tag)
    const word = most === undefined ? undefined : vocabulary.get(most)
    return word?.list && fits(word, it.reading, heard, new Set([word.name])) ? { ...it, word: word.name } : it
  })
}

/** "sides 60 ft, 40 ft, 59.7 ft and 39.8 ft": what stands in one row with a value of a list, and is nothing else, is of the list too. */
function restOfLists(bound: readonly Bound[], heard: Heard, message: readonly Token[]): Bound[] {
  const more: Bound[] = []
  const taken = new Set(bound.map((it) => it.reading.tag))
  const spots = new Map(message.map((token, i) => [token.tag, i]))
  for (const it of bound) {
    const word = vocabulary.get(it.word) as Word
    if (!word.list) continue
    for (const step of [1, -1]) {
      let at = (spots.get(it.reading.tag) ?? -1) + step
      while (message[at] && (message[at]?.tag || /^(,|;|and|then|&|\n)$/.test((message[at] as Token).text))) {
        const { reading } = message[at] as Token
        at += step
        if (!reading) continue
        if (taken.has(reading.tag) || !fits(word, reading, heard, new Set([word.name])) || /^\p{L}/u.test(reading.said))
          break
        more.push({ ...it, reading })
        taken.add(reading.tag)
      }
    }
  }
  return more
}

/** A word that the question does not need is left aside where one that it needs does well enough for the same quantity. */
function withoutStrays(pairs: readonly Bound[], needed: ReadonlySet<string>, enough: number): Bound[] {
  const best = new Map<string, number>()
  for (const it of pairs)
    if (needed.has(it.word)) best.set(it.reading.tag, Math.max(best.get(it.reading.tag) ?? 0, it.score))
  // A stick called by its name is whatever stick the question needs.
  return pairs.filter(
    (it) =>
      needed.has(it.word) ||
      (it.reading.section ? !best.has(it.reading.tag) : (best.get(it.reading.tag) ?? 0) < it.score * enough),
  )
}

/** "2.35 m gap": where a size can hardly be what it is named, and may well be something else of that name, it is the other. */
function withoutUnlikely(pairs: readonly Bound[], heard: Heard): Bound[] {
  const isLikely = (it: Bound): boolean => likelihood(vocabulary.get(it.word) as Word, it.reading, heard) >= 0
  const best = new Map<string, number>()
  for (const it of pairs.filter(isLikely)) best.set(it.reading.tag, Math.max(best.get(it.reading.tag) ?? 0, it.score))
  return pairs.filter((it) => isLikely(it) || (best.get(it.reading.tag) ?? 0) < it.score * weight.likelier)
}

/** The pairs of each quantity, in the order they came. */
function groupedByTag(pairs: readonly Bound[]): Map<string, Bound[]> {
  const groups = new Map<string, Bound[]>()
  for (const pair of pairs) {
    const own = groups.get(pair.reading.tag)
    if (own) own.push(pair)
    else groups.set(pair.reading.tag, [pair])
  }
  return groups
}

/** Whether a quantity can hardly mean anything but a word that another quantity already is. */
function isClash(pair: Bound, taken: Bound, pairs: ReadonlyMap<string, readonly Bound[]>, heard: Heard): boolean {
  const own = pairs.get(pair.reading.tag) ?? []
  const likely = (it: Bound): boolean => likelihood(vocabulary.get(it.word) as Word, it.reading, heard) >= 0
  return (
    pair.score >= weight.clash &&
    own[0] === pair &&
    !own.some((it) => it.word !== pair.word && it.score >= pair.score * weight.rival) &&
    likely(pair) &&
    likely(taken) &&
    !sameReading(pair.reading, taken.reading)
  )
}
const sameReading = (a: Tagged, b: Tagged): boolean =>
  a.quantity !== null && b.quantity !== null
    ? sameValue(a.quantity, b.quantity)
    : a.bare !== null && b.bare !== null && a.bare.equals(b.bare)

/** Every word that a quantity could be, each with its score. */
function pairsOf(
  size: Sized,
  { heard, message, usable, kinds }: Scene,
  needed: ReadonlySet<string>,
  behind: ReadonlyMap<string, number>,
  asksNow: boolean,
): Bound[] {
  const { reading, spot, near, firm, sticksAhead, ofAir } = size
  const askable = new Set(heard.job.asked.map((it) => it.word))
  const alone = heard.readings.length === 1 && usable.every((hit) => hit.sort !== 'thing' && hit.sort !== 'name')
  const kind = reading.quantity?.kind
  const pairs: Bound[] = []
  for (const word of wordsFor(size, needed)) {
    if (!size.fits(word, needed)) continue
    // "between two posts" counts nothing.
    if (word.kind === 'count' && message[spot - 1]?.stem === 'between') continue
    const isNeeded = needed.has(word.name)
    let score = near.byWord.has(word.name)
      ? size.speaksFor(word, plainlyMeant(word, needed, reading.section !== undefined))
      : 0
    if (score > 0)
      score +=
        likelihood(word, reading, heard) +
        (isNeeded
          ? weight.needed
          : asksNow && !behind.has(word.name)
            ? weight.unneeded
            : weight.behind * (behind.get(word.name) ?? 0))
    if (ofAir && word.kind === kind && !word.list) score += isOfAir(word) ? weight.touching : -weight.touching
    if (askable.has(word.name))
      score += alone || heard.readings.length <= askable.size ? weight.asked : score > 0 ? weight.needed : 0
    if (firm && limits.has(word.name) && score > 0 && (!asksNow || behind.has(word.name))) score += weight.limit
    if (firm && word.name === 'wantedGap') score -= weight.limit
    if (!firm && (word.name === 'widestGap' || word.name === 'widestBay')) score -= 1
    // "…at most 2 in" in a question about pickets limits the gap, whether or not the gap is named beside it; "about 2 in" wishes for it.
    const onlyFirmness = (firm && limits.has(word.name)) || (reading.firmness === 'about' && word.name === 'wantedGap')
    if (score < weight.least && asksNow && isNeeded && onlyFirmness && likelihood(word, reading, heard) > 0)
      score = weight.least + 0.1
    if (
      score < weight.least &&
      (asksNow || heard.job.wanted.length > 0) &&
      isNeeded &&
      word.called.byDefault &&
      reading.bare === null
    )
      score = weight.least
    // "26 2x4s", "18 southern pine 4x4 posts": so many sticks of that name.
    if (sticksAhead && word.kind === 'count' && word.called.things?.includes('stick')) score += weight.section
    // A stick called by its name has no other meaning: "6x6" is the post.
    if (reading.section) score += weight.section
    // Nor has an hour of the clock, or who works along, or a rail in the middle.
    if (reading.clock || reading.people || reading.rails) score += weight.section
    // Nor has a proportion: its terms are the parts of a mix.
    if (reading.proportion) score += weight.section
    if (score >= weight.least) pairs.push({ reading, word: word.name, at: placeFor(word, spot, kinds, message), score })
  }
  return pairs
}

const isOfAir = (word: Word): boolean => word.called.things?.includes('air') ?? false

/** "No, 14", "sorry, 14": a number alone, where the turn before told one number. */
function corrects({ readings, job }: Heard, message: readonly Token[]): Bound | undefined {
  const [only] = readings
  const words = message.filter((token) => !token.tag && /^\p{L}/u.test(token.text))
  const isCorrection =
    /^(no|sorry|wrong|correction|oops|rather)$/.test(words[0]?.stem ?? '') &&
    words.every(({ stem: it }) => correcting.has(it))
  if (!only?.bare || readings.length !== 1 || !isCorrection) return undefined
  const last = Math.max(...job.decisions.map((it) => it.turn))
  const counts = job.decisions.filter((it) => it.turn === last && isQuantity(it.value) && it.value.kind === 'count')
  const [one, more] = counts
  return one && !more ? { reading: only, word: one.word, at: one.at, score: weight.byPlace } : undefined
}
const correcting = new Set(
  'no sorry wrong correction oops rather i it mean meant make that is should be not'.split(' '),
)

/** "What about 6 ft?": the one thing of that kind that was said before is said again. */
function sameAgain(heard: Heard, usable: readonly Owned[], needed: ReadonlySet<string>): Bound[] {
  const [only] = heard.readings
  if (
    !only ||
    only.bare !== null ||
    usable.some((hit) => hit.sort === 'name' && hit.owner !== null && needed.has(hit.word))
  )
    return []
  const isLimit = only.firmness === 'at-most' || only.firmness === 'less-than'
  const things = new Set(usable.filter((hit) => hit.sort === 'thing').map((hit) => hit.word))
  const open = heard.job.decisions
    .filter((it) => it.at === yard)
    .map((it) => vocabulary.get(it.word) as Word)
    .filter(
      (word) =>
        needed.has(word.name) &&
        limits.has(word.name) === isLimit &&
        fits(word, only, heard, needed) &&
        likelihood(word, only, heard) > 0,
    )
  // A thing that is named decides between them; where none is, only one can be meant.
  const named = open.filter((word) => things.has(word.name))
  const [word] = named.length > 0 ? named : things.size === 0 || isLimit ? open : []
  const several = named.length > 0 ? named.length : open.length
  return word && several === 1 ? [{ reading: only, word: word.name, at: yard, score: weight.least }] : []
}

/** Nothing was said of a quantity, and the question lacks just one word of its kind: that is what it is. */
function onlyWordLeft(
  heard: Heard,
  bound: readonly Bound[],
  loose: readonly Tagged[],
  needed: ReadonlySet<string>,
  wanted: readonly string[],
): Bound[] {
  const [only] = loose
  if (!only || loose.length !== 1 || only.bare !== null) return []
  const open = (names: Iterable<string>): Word[] =>
    [...names]
      .map((name) => vocabulary.get(name) as Word)
      .filter(
        (word) =>
          fits(word, only, heard, needed) &&
          !bound.some((it) => it.word === word.name) &&
          !heard.job.decisions.some((it) => it.word === word.name),
      )
  const required = thatGiveAny(wanted)
    .slice(0, 1)
    .flatMap((calc) =>
      needsFor(calc, wanted)
        .filter((word) => !usualFor(calc, word))
        .map((word) => word.name),
    )
  // Beyond what must be known only a kind that stands for one thing is safe to guess by: a weight is the bag's, a length may be anything.
  const optional = only.quantity?.kind === 'length' ? [] : open(needed).filter((word) => !word.usual)
  const candidates = [open(required), optional].find((it) => it.length === 1) ?? []
  const [word] = candidates
  return word && likelihood(word, only, heard) > 0
    ? [{ reading: only, word: word.name, at: yard, score: weight.least }]
    : []
}
