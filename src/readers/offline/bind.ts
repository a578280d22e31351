// This file is about binding: which word each quantity of a message belongs to, by kind, cue and nearness.
// Every weight is here, in one table, so that it can be read and argued with.
import {
  catalogue,
  fitted,
  isQuantity,
  needsFor,
  parseValue,
  systemOf,
  toNumber,
  usualFor,
  vocabulary,
  type Word,
  yard,
} from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Hit } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import type { Token } from './stems.ts'

export interface Bound {
  readonly reading: Tagged
  readonly word: string
  readonly at: string
  readonly score: number
}

const weight = {
  name: 3.2,
  side: 2.4,
  thing: 2,
  /** The cue stands right behind the quantity, "10 in holes", or right before it, "gaps at most 2 in": it is as good as said. */
  touching: 3,
  leading: 2.2,
  /** What each step away takes off. */
  step: 0.25,
  /** What stands between them. */
  overQuantity: 0.5,
  overComma: 0.85,
  overSentence: 0.3,
  /** A cue that touches another quantity speaks for that one. */
  owned: 0.2,
  ledTo: 0.4,
  /** It stands ahead of the quantity without touching it. */
  ahead: 0.75,
  /** A side touches the quantity, and the word has no such side. */
  otherSide: 0.35,
  /** A name stands right behind the quantity, "12 % at depth", and it is another word's. */
  otherName: 0.6,
  /** The wanted calculation needs it. */
  needed: 0.9,
  /** Something is asked, and this has nothing to do with it. */
  unneeded: -0.8,
  /** It was just asked for, and the message says nothing against it. */
  asked: 4,
  /** The size is a limit and the word is one. */
  limit: 2.2,
  /** The size is one that the word can well have, or cannot. Narrow words say more. */
  likely: 0.6,
  unlikely: -3.2,
  least: 1.7,
} as const

const limits = new Set(['widestGap', 'widestBay', 'moistureLimit'])

/** Binds the quantities of a message, the surest first; each word at a place takes one, and each quantity one word. */
export function bind(
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  places: readonly PlaceSaid[],
  wanted: readonly string[],
  asksNow: boolean,
): { bound: Bound[]; loose: Tagged[] } {
  const spots = heard.readings.map((reading) => spotOf(reading, message))
  const needed = new Set(
    catalogue.filter((calc) => wanted.some((word) => calc.gives[word])).flatMap((calc) => Object.keys(calc.needs)),
  )
  const askable = new Set(heard.job.asked.map((it) => it.word))
  const told = [...vocabulary.values()].filter(
    (word) => word.kind !== 'choice' && word.kind !== 'verdict' && isInput(word),
  )
  const insidePlace = (hit: Hit): boolean =>
    places.some((it) => hit.from < it.to - 1 && hit.to > it.from && hit.to <= it.to - 1)
  const usable = owners(
    hits.filter((hit) => !insidePlace(hit) && !insideLonger(hit, hits, message)),
    message,
    places,
  )

  const pairs: Bound[] = []
  heard.readings.forEach((reading, i) => {
    const spot = spots[i] as number
    const alone = heard.readings.length === 1 && usable.every((hit) => hit.sort !== 'thing' && hit.sort !== 'name')
    for (const word of told) {
      if (!fits(word, reading, heard, needed)) continue
      // "between two posts" counts nothing.
      if (word.kind === 'count' && message[spot - 1]?.stem === 'between') continue
      let score = cueScore(word, reading, spot, usable, message, plainlyMeant(word, needed))
      if (score > 0) score += likelihood(word, reading, heard)
      if (score > 0 && needed.has(word.name)) score += weight.needed
      if (askable.has(word.name))
        score += alone || heard.readings.length <= askable.size ? weight.asked : score > 0 ? weight.needed : 0
      const firm = reading.firmness === 'at-most' || reading.firmness === 'less-than'
      if (firm && limits.has(word.name) && score > 0 && (!asksNow || needed.has(word.name))) score += weight.limit
      // "…at most 2 in" in a question about pickets limits the gap, whether or not the gap is named beside it.
      if (
        score === 0 &&
        asksNow &&
        needed.has(word.name) &&
        ((firm && limits.has(word.name)) || (reading.firmness === 'about' && word.name === 'wantedGap'))
      )
        score = weight.least + 0.1
      if (score > 0 && asksNow && !needed.has(word.name)) score += weight.unneeded
      if (firm && word.name === 'wantedGap') score -= weight.limit
      if (!firm && word.name === 'widestGap') score -= 1
      if (reading.section && isSectionOf(word)(reading.section)) score += weight.needed
      if (score >= weight.least)
        pairs.push({ reading, word: word.name, at: placeFor(word, spot, places, message), score })
    }
  })
  pairs.sort((a, b) => b.score - a.score || a.reading.start - b.reading.start)
  const bound: Bound[] = []
  for (const pair of pairs) {
    if (bound.some((it) => it.reading.tag === pair.reading.tag || (it.word === pair.word && it.at === pair.at)))
      continue
    bound.push(pair)
  }
  const loose = (): Tagged[] => heard.readings.filter((reading) => !bound.some((it) => it.reading.tag === reading.tag))
  if (asksNow) {
    // What went to a word that the question does not need counts as left over too: the question's own words come first.
    const stray = bound.filter((it) => !needed.has(it.word))
    const last = onlyWordLeft(heard, bound, [...loose(), ...stray.map((it) => it.reading)], needed, wanted)
    for (const it of last)
      bound.splice(0, bound.length, ...bound.filter((other) => other.reading.tag !== it.reading.tag), it)
  }
  return { bound, loose: loose() }
}

const inputs = new Set(catalogue.flatMap((calc) => Object.keys(calc.needs)))
const isInput = (word: Word): boolean => inputs.has(word.name)

/** "deep reading" names one thing: the "reading" in it names nothing else. */
const insideLonger = (hit: Hit, hits: readonly Hit[], message: readonly Token[]): boolean =>
  hit.sort !== 'ask' &&
  !message[hit.from - 1]?.tag &&
  hits.some(
    (other) =>
      other.sort === 'name' &&
      other.length > hit.length &&
      other.from <= hit.from &&
      other.to >= hit.to &&
      other.word !== hit.word,
  )

/** The token a quantity is. */
const spotOf = (reading: Tagged, message: readonly Token[]): number =>
  message.findIndex((token) => token.tag === reading.tag)

const isSectionOf =
  (word: Word) =>
  (section: NonNullable<Tagged['section']>): boolean => {
    const square = section.thickness.amount.valueOf() === section.width.amount.valueOf()
    if (word.name === 'postWidth') return square
    if (word.name === 'picketWidth') return !square && (section.thickness.amount.valueOf() as number) <= 1.05
    return false
  }

function fits(word: Word, reading: Tagged, heard: Heard, needed: ReadonlySet<string>): boolean {
  if (reading.section) return isSectionOf(word)(reading.section)
  if (word.kind === 'count') return reading.bare !== null && (!word.whole || reading.bare.d === 1n)
  // A bare number is a length where its side is said; nothing else guesses at a unit unless it was asked for.
  if (
    reading.bare !== null &&
    word.kind !== 'length' &&
    !(word.kind === 'percent' && needed.has(word.name)) &&
    !heard.job.asked.some((it) => it.word === word.name)
  )
    return false
  return fitted(word, reading.quantity, reading.bare, systemOf(heard.job)) !== undefined
}

/** How strongly the words around speak for it: the best name, the best thing and the best side, each by how near it stands. */
function cueScore(
  word: Word,
  reading: Tagged,
  spot: number,
  hits: readonly Owned[],
  message: readonly Token[],
  plainly: boolean,
): number {
  const best = { name: 0, thing: 0, side: 0 }
  for (const hit of hits) {
    if (hit.word !== word.name || hit.sort === 'ask' || hit.sort === 'option') continue
    const value =
      (weight[hit.sort] + bonus(word, hit, spot, plainly)) *
      nearness(hit, spot, message) *
      (1 + 0.08 * (hit.length - 1))
    if (value > best[hit.sort]) best[hit.sort] = value
  }
  // A count belongs to what is counted, and nothing else makes it one.
  if (reading.bare !== null && word.kind === 'count')
    return Math.max(best.thing, best.name) > weight.thing + 1 ? Math.max(best.thing, best.name * 0.8) : 0
  // A bare number measures only where its side touches it ("holes 10 wide"), or, for a percentage, where the meter is named.
  if (
    reading.bare !== null &&
    !(word.kind === 'percent'
      ? best.name > 2
      : word.kind === 'length' &&
        (best.side > weight.side || best.name > weight.name || (best.thing > weight.thing && reading.bare.d !== 1n)))
  )
    return 0
  if (best.name < 1 && best.side < 1 && !plainly) return 0
  const spoken =
    best.name === 0 && best.thing === 0
      ? best.side * 0.55
      : Math.max(best.name, best.thing) + 0.5 * Math.min(best.name, best.thing) + best.side
  // "30 in deep" is a depth: a word that has no such side is hardly meant, however near its thing stands.
  const sideSaid = hits.some((hit) => hit.sort === 'side' && hit.owner === spot && hit.behind)
  const sideMine = hits.some(
    (hit) => hit.word === word.name && hit.sort !== 'thing' && hit.owner === spot && hit.behind,
  )
  if (sideSaid && !sideMine) return spoken * weight.otherSide
  const nameSaid = hits.some((hit) => hit.sort === 'name' && hit.owner === spot && hit.behind)
  return nameSaid && !sideMine && !(word.kind === 'count') ? spoken * weight.otherName : spoken
}

/** Whether a size beside the thing alone means this word: always, or because the question needs it and no plainer word of that thing. */
function plainlyMeant(word: Word, needed: ReadonlySet<string>): boolean {
  if (word.called.plainly) return true
  if (!needed.has(word.name) || limits.has(word.name)) return false
  const things = word.called.things ?? []
  return ![...needed].some((name) => {
    const other = vocabulary.get(name)
    return (
      other !== word &&
      other?.kind === word.kind &&
      other.called.plainly &&
      other.called.things?.some((thing) => things.includes(thing))
    )
  })
}

/** A cue, and the quantity that it touches, if it touches one. */
interface Owned extends Hit {
  readonly owner: number | null
  readonly behind: boolean
}

const between = new Set([
  'is',
  'are',
  'of',
  'at',
  'most',
  'about',
  'around',
  'no',
  'more',
  'than',
  'wide',
  'wider',
  'exactly',
  'only',
  'a',
  'the',
  '=',
  ':',
  'max',
  'maximum',
  'measure',
  'be',
  'was',
  'were',
  'to',
  'within',
  'under',
  'over',
  'not',
  'roughly',
  'came',
  'out',
  'read',
  'say',
  'said',
  'bigger',
  'larger',
  'less',
  'up',
  'should',
  'can',
  'may',
  'must',
  'will',
  'would',
  'could',
  'have',
  'has',
  'it',
  'i',
  'want',
  'like',
  'allow',
  'keep',
])

// Words that end a phrase: what stands behind them does not touch the quantity before them.
const phraseEnds = new Set([
  'of',
  'in',
  'with',
  'on',
  'and',
  'at',
  'for',
  'is',
  'are',
  'between',
  'to',
  'from',
  'by',
  'or',
  'per',
  'each',
  'than',
  'the',
  'a',
  'an',
  'if',
  'but',
  'so',
  'that',
  'my',
  'our',
  'then',
  'into',
  'under',
])

/** Which quantity each cue touches: the one right before it, "10 in holes", "11 cedar posts"; else the one it leads up to, "gaps of at most 2 in". */
function owners(hits: readonly Hit[], message: readonly Token[], places: readonly PlaceSaid[]): Owned[] {
  return hits.map((hit) => {
    const kinds = places.find((it) => it.to === hit.to && it.from < hit.from)
    const start = kinds ? kinds.from : hit.from
    const [one, two] = [message[start - 1], message[start - 2]]
    // "picket width: 3 1/2 in": a colon gives what follows, whatever stood before.
    if (message[hit.to]?.text === ':' && message[hit.to + 1]?.tag)
      return { ...hit, from: start, owner: hit.to + 1, behind: false }
    if (one?.tag) return { ...hit, from: start, owner: start - 1, behind: true }
    if (two?.tag && one && /^[\p{L}]/u.test(one.text) && !phraseEnds.has(one.stem) && hit.sort !== 'side')
      return { ...hit, from: start, owner: start - 2, behind: true }
    let at = hit.to
    while (message[at] && !message[at]?.tag && between.has((message[at] as Token).stem)) at++
    return { ...hit, from: start, owner: message[at]?.tag ? at : null, behind: false }
  })
}

function bonus(word: Word, hit: Owned, spot: number, plainly: boolean): number {
  // A thing alone says which word is meant only where that word is its plain measure: pickets have a width before they have a gap.
  if (hit.owner !== spot || (hit.sort === 'thing' && !plainly && word.kind !== 'count')) return 0
  return (hit.behind ? weight.touching : weight.leading) * (hit.sort === 'side' ? 0.5 : 1)
}

function nearness(hit: Owned, spot: number, message: readonly Token[]): number {
  const [from, to] = hit.from > spot ? [spot + 1, hit.from] : [hit.to, spot]
  let near = 1 / (1 + weight.step * Math.max(0, to - from))
  for (let i = from; i < to; i++) {
    const token = message[i] as Token
    if (token.tag) near *= weight.overQuantity
    else if (token.text === ',') near *= weight.overComma
    else if (/^[.;?!\n]$/.test(token.text)) near *= weight.overSentence
  }
  // What was spoken of before goes on being spoken of: "holes 30 in deep, 10 in across".
  if (hit.from > spot && hit.owner !== spot) near *= weight.ahead
  if (hit.owner === null || hit.owner === spot) return near
  return near * (hit.behind ? weight.owned : hit.sort === 'thing' ? 1 : weight.ledTo)
}

/** Whether the size is one the word can well have. */
function likelihood(word: Word, reading: Tagged, heard: Heard): number {
  const value = reading.section
    ? reading.section.width
    : fitted(word, reading.quantity, reading.bare, systemOf(heard.job))
  if (!value || !word.plausible) return 0
  const [from, to] = [word.plausible.from, word.plausible.to].map((text) => parseValue(word, text, systemOf(heard.job)))
  if (!isQuantity(from) || !isQuantity(to)) return 0
  const size = toNumber(value.amount)
  const [low, high] = [toNumber(from.amount), toNumber(to.amount)]
  if (size < low || size > high) return weight.unlikely
  return weight.likely / Math.max(1, Math.log10(high / Math.max(low, high / 1000)))
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
  const required = catalogue
    .filter((calc) => wanted.some((word) => calc.gives[word]))
    .slice(0, 1)
    .flatMap((calc) =>
      needsFor(calc, wanted)
        .filter((word) => !usualFor(calc, word))
        .map((word) => word.name),
    )
  const candidates = [open(required), open(needed).filter((word) => !word.usual)].find((it) => it.length === 1) ?? []
  const [word] = candidates
  return word && likelihood(word, only, heard) > 0
    ? [{ reading: only, word: word.name, at: yard, score: weight.least }]
    : []
}

/** Which kind of post it is said of: the run of kinds that stands nearest, for numbers of posts and sizes of holes. */
function placeFor(word: Word, spot: number, places: readonly PlaceSaid[], message: readonly Token[]): string {
  const distance = (it: PlaceSaid): number => (it.from > spot ? it.from - spot - 1 : spot - it.to)
  const apart = (it: PlaceSaid): boolean =>
    message
      .slice(...(it.from > spot ? [spot + 1, it.from] : [it.to, spot]))
      .some((token) => token.tag !== undefined || /^[,.;?!\n]$/.test(token.text))
  const nearest = places.filter((it) => distance(it) <= 3 && !apart(it)).sort((a, b) => distance(a) - distance(b))[0]
  if (!nearest) return yard
  if (word.name === 'posts') return nearest.place
  return nearest.of === 'hole' && ['holeDiameter', 'holeDepth', 'stoneDepth', 'concreteBelowGrade'].includes(word.name)
    ? nearest.place
    : yard
}
