// This file is about binding: which word each quantity of a message belongs to, by kind, cue and nearness.
// Every weight is here, in one table, so that it can be read and argued with.
import { catalogue, fitted, systemOf, vocabulary, type Word, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Hit } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import type { Token } from './stems.ts'

export interface Bound { readonly reading: Tagged; readonly word: string; readonly at: string; readonly score: number }

const weight = {
  name: 5,
  side: 2.6,
  thing: 2,
  /** A cue that touches the quantity on its right says more: "10 in holes", "30 in deep". */
  touching: 1.5,
  /** What each step away takes off. */
  step: 0.28,
  /** What stands between them. */
  overQuantity: 0.45,
  overComma: 0.8,
  overSentence: 0.3,
  /** The wanted calculation needs it. */
  needed: 0.9,
  /** It was just asked for, and the message says nothing against it. */
  asked: 4,
  /** The size is a limit and the word is one. */
  limit: 2.2,
  least: 1.7,
} as const

const limits = new Set(['widestGap', 'widestBay', 'moistureLimit'])

/** Binds the quantities of a message, the surest first; each word at a place takes one, and each quantity one word. */
export function bind(heard: Heard, message: readonly Token[], hits: readonly Hit[], places: readonly PlaceSaid[], wanted: readonly string[]): { bound: Bound[]; loose: Tagged[] } {
  const spots = heard.readings.map((reading) => spotOf(reading, message))
  const needed = new Set(catalogue.filter((calc) => wanted.some((word) => calc.gives[word])).flatMap((calc) => Object.keys(calc.needs)))
  const askable = new Set(heard.job.asked.map((it) => it.word))
  const told = [...vocabulary.values()].filter((word) => word.kind !== 'choice' && word.kind !== 'verdict' && isInput(word))
  const insidePlace = (hit: Hit): boolean => places.some((it) => hit.from < it.to - 1 && hit.to > it.from && hit.to <= it.to - 1)
  const usable = hits.filter((hit) => !insidePlace(hit))

  const pairs: Bound[] = []
  heard.readings.forEach((reading, i) => {
    const spot = spots[i] as Spot
    const alone = heard.readings.length === 1 && usable.every((hit) => hit.sort !== 'thing' && hit.sort !== 'name')
    for (const word of told) {
      if (!fits(word, reading, heard)) continue
      let score = cueScore(word, reading, spot, usable, spots, message)
      if (score > 0 && needed.has(word.name)) score += weight.needed
      if (score === 0 && needed.has(word.name) && onlyOneNeeds(word, reading, heard, needed)) score = weight.needed + 0.9
      if (askable.has(word.name)) score += alone || heard.readings.length <= askable.size ? weight.asked : score > 0 ? weight.needed : 0
      const firm = reading.firmness === 'at-most' || reading.firmness === 'less-than'
      if (firm && limits.has(word.name) && score > 0) score += weight.limit
      if (firm && word.name === 'wantedGap') score -= weight.limit
      if (!firm && word.name === 'widestGap') score -= 1
      if (reading.section && isSectionOf(word)(reading.section)) score += weight.needed
      if (score >= weight.least) pairs.push({ reading, word: word.name, at: placeFor(word, spot, places), score })
    }
  })
  pairs.sort((a, b) => b.score - a.score || a.reading.start - b.reading.start)
  const bound: Bound[] = []
  for (const pair of pairs) {
    if (bound.some((it) => it.reading.tag === pair.reading.tag || (it.word === pair.word && it.at === pair.at))) continue
    bound.push(pair)
  }
  return { bound, loose: heard.readings.filter((reading) => !bound.some((it) => it.reading.tag === reading.tag)) }
}

const inputs = new Set(catalogue.flatMap((calc) => Object.keys(calc.needs)))
const isInput = (word: Word): boolean => inputs.has(word.name)

interface Spot { readonly before: number; readonly after: number }

/** The token just before a quantity and the one just after it. */
function spotOf(reading: Tagged, message: readonly Token[]): Spot {
  let before = -1
  while (before + 1 < message.length && (message[before + 1] as Token).end <= reading.start) before++
  let after = before + 1
  while (after < message.length && (message[after] as Token).start < reading.end) after++
  return { before, after }
}

const isSectionOf = (word: Word) => (section: NonNullable<Tagged['section']>): boolean => {
  const square = section.thickness.amount.valueOf() === section.width.amount.valueOf()
  if (word.name === 'postWidth') return square
  if (word.name === 'picketWidth') return !square && section.thickness.amount.valueOf() as number <= 1.05
  return false
}

function fits(word: Word, reading: Tagged, heard: Heard): boolean {
  if (reading.section) return isSectionOf(word)(reading.section)
  if (word.kind === 'count') return reading.bare !== null
  return fitted(word, reading.quantity, reading.bare, systemOf(heard.job)) !== undefined
}

/** How strongly the words around speak for it: the best name, the best thing and the best side, each by how near it stands. */
function cueScore(word: Word, reading: Tagged, spot: Spot, hits: readonly Hit[], spots: readonly Spot[], message: readonly Token[]): number {
  const best = { name: 0, thing: 0, side: 0 }
  for (const hit of hits) {
    if (hit.word !== word.name || hit.sort === 'ask' || hit.sort === 'option') continue
    const near = nearness(hit, spot, spots, message)
    const value = weight[hit.sort] * near * (hit.sort === 'name' ? 1 + 0.08 * (hit.length - 1) : 1)
    if (value > best[hit.sort]) best[hit.sort] = value
  }
  // A count belongs to what is counted, and nothing else makes it one.
  if (reading.bare !== null && word.kind === 'count') return Math.max(best.thing, best.name * 0.8)
  // A bare number measures only where its side is said: "holes 10 wide".
  if (reading.bare !== null && word.kind !== 'percent' && best.side === 0 && best.name < 3) return 0
  if (best.name === 0 && best.side === 0 && !word.called.plainly) return 0
  if (best.name === 0 && best.thing === 0) return best.side * 0.55
  return best.name + best.thing + best.side
}

function nearness(hit: Hit, spot: Spot, spots: readonly Spot[], message: readonly Token[]): number {
  const onRight = hit.from >= spot.after
  const [from, to] = onRight ? [spot.after, hit.from] : [hit.to, spot.before + 1]
  const between = Math.max(0, to - from)
  let near = (onRight && between === 0 ? weight.touching : 1) / (1 + weight.step * between)
  for (let i = from; i < to; i++) {
    const text = message[i]?.text
    if (text === ',') near *= weight.overComma
    else if (text !== undefined && /^[.;?!\n]$/.test(text)) near *= weight.overSentence
  }
  for (const other of spots) if (other !== spot && other.before >= from - 1 && other.after <= to + 1 && (onRight ? other.after <= hit.from && other.before >= spot.before : other.before >= hit.to - 1 && other.after <= spot.after)) near *= weight.overQuantity
  return near
}

/** Nothing was said of the quantity, but the wanted calculation lacks just one word of its kind. */
function onlyOneNeeds(word: Word, reading: Tagged, heard: Heard, needed: ReadonlySet<string>): boolean {
  if (reading.bare !== null) return false
  const open = [...needed].map((name) => vocabulary.get(name) as Word).filter((it) => fits(it, reading, heard) && !it.usual && !heard.job.decisions.some((d) => d.word === it.name))
  return open.length === 1 && open[0] === word
}

/** Which kind of post it is said of: the nearest run of kinds that touches it, for numbers of posts and sizes of holes. */
function placeFor(word: Word, spot: Spot, places: readonly PlaceSaid[]): string {
  const touching = places.filter((it) => (it.from >= spot.after ? it.from - spot.after <= 2 : spot.before + 1 - it.to <= 3))
  const nearest = touching.sort((a, b) => distance(a, spot) - distance(b, spot))[0]
  if (!nearest) return yard
  if (word.name === 'posts') return nearest.place
  return nearest.of === 'hole' && ['holeDiameter', 'holeDepth', 'stoneDepth', 'concreteBelowGrade'].includes(word.name) ? nearest.place : yard
}

const distance = (it: PlaceSaid, spot: Spot): number => (it.from >= spot.after ? it.from - spot.after : spot.before + 1 - it.to)

