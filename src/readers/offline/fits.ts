// This file is about which words a quantity can be at all, before anything says which it is.
import {
  fittedReading,
  quantity,
  type Quantity,
  systemOf,
  toNumber,
  valueAfter,
  vocabulary,
  type Word,
  yard,
} from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import { knownIn } from './feeds.ts'
import { ofInsides, tellsOutside } from './frame-told.ts'
import { messageOf, stem } from './stems.ts'

/** “1:2:3” tells how many parts there are of each thing, in order. */
export const isOfParts = (word: Word): boolean => word.list === true && word.noun === 'part'

/** Whether a stick of that section is the thing: a post is as wide as it is thick, a picket is thin. Nothing for words of no one thing. */
export function isOfSection(word: Word, { thickness, width }: NonNullable<Tagged['section']>): boolean | undefined {
  const isSquare = thickness.amount.valueOf() === width.amount.valueOf()
  const isThin = (thickness.amount.valueOf() as number) <= 1.05
  if (word.name === 'postWidth') return isSquare
  if (word.name === 'railDepth') return !isSquare && !isThin
  if (word.name === 'picketWidth') return !isSquare && isThin
  return undefined
}

/** "At £42", "@ 28", "each": a price of one of what is measured. */
const isPriceAt = ({ start, end }: Tagged, { said }: Heard): boolean =>
  /(\bat|@|price(?: is| of)?|costs?|rate(?: is| of)?)\s*$/i.test(said.slice(Math.max(0, start - 20), start)) ||
  /^\s*(each|a|per|\/)/i.test(said.slice(end))

/** What a price is for, where it is for no whole thing: a board foot, or a measure. */
export const pricedPer = ({ per }: Tagged): Word['per'] =>
  per === undefined ? undefined : per === 'board foot' ? 'board foot' : 'measure'

const nouns = new Set([...vocabulary.values()].flatMap((it) => (it.kind === 'count' && it.noun ? [stem(it.noun)] : [])))
/** “14 posts, how much moulding”: a whole number right before things counts them, and is no size of anything. */
export function countsThings({ bare, end, change }: Tagged, { said }: Heard): boolean {
  // “One picket less”.
  if (bare && change && /^\s+\p{L}+\s/u.test(said.slice(end, change.end))) return true
  const [, next = ''] = /^\s+(\p{L}+s)\b/u.exec(said.slice(end, end + 20)) ?? []
  return bare?.d === 1n && nouns.has(stem(next))
}

/** “A 4 ft white picket fence”: how tall the fence is, and no side or gate of it. A fence of so many metres is as long, and “6 ft fence panels” are as wide. */
export const isHeightOfFence = ({ quantity: size, end }: Tagged, { said }: Pick<Heard, 'said'>): boolean =>
  size?.kind === 'length' && toNumber(size.amount) <= tallestFence && ofFence.test(said.slice(end, end + 60))
const tallestFence = toNumber(quantity(8, 'ft').amount)
const ofFence =
  /^[-\s]+(?:(?:tall|high|white|picket|wood|wooden|timber|cedar|pine|privacy|garden|front|classic|traditional|new|nice|little|simple|plain),?\s+){0,4}fence\b(?!\s+(?:panel|section|post|board|picket|paling|slat|rail|bay|gate|line|run|side))/i
/** “Twelves”, “8 footers”, “2400s”: a length by which sticks are called, and nothing that was measured. */
export const isStickLength = ({ said, quantity: size }: Pick<Tagged, 'said' | 'quantity'>): boolean =>
  size?.kind === 'length' && stickSaid.test(said)
const stickSaid = /\bfooters?$|^(?:eights|tens|twelves|fourteens|sixteens)$|^\d+s$/i
const neverSticks = new Set(['postAbove', 'groundReadings', 'embedment', 'holeDepth', 'frostDepth', 'runLength'])

/** What such a height may be. */
export const heights: ReadonlySet<string> = new Set([
  'fenceHeight',
  'postAbove',
  'heightLimit',
  'heightOtherSide',
  'barrierHeight',
  'picketLength',
])

/** Whether it counts all who work, whoever asks among them. */
export const isOfPeople = (word: Word): boolean =>
  word.kind === 'count' && word.called.things?.includes('people') === true

/** Whether a quantity can be a value of a word, where a question needs some. */
export type Fits = (word: Word, needed: ReadonlySet<string>) => boolean

/** What a word comes to by a change, “2 in wider”: as it was told or worked last, else as the question at hand takes it. */
export function changedTo(
  word: Word,
  reading: Tagged,
  { job }: Pick<Heard, 'job'>,
  needed?: ReadonlySet<string>,
): Quantity | undefined {
  const told = [...job.decisions, ...job.results].findLast((it) => it.word === word.name)
  return told || needed?.has(word.name) ? valueAfter(job, word, told?.at ?? yard, reading) : undefined
}

/** Which words a quantity can be a value of: by its kind, its unit, and what stands around it. What says by how much something changes can be of what was told; what was not is told by it. */
export function fitting(reading: Tagged, heard: Heard): Fits {
  const plain = fittingAsSaid(reading, heard)
  if (!reading.change) return plain
  const isTimes = reading.change.way === 'times'
  const told = knownIn(heard.job)
  return (word, needed) =>
    (isTimes || plain(word, needed)) &&
    (changedTo(word, reading, heard, needed) !== undefined ||
      (!isTimes && (!told.has(word.name) || word.list || word.difference === true)))
}

const toldOutside = new WeakMap<Heard, boolean>()
/** Looked at once for each message: a table of hundreds of readings asks it for every one. */
function isToldOutside(heard: Heard): boolean {
  const known = toldOutside.get(heard) ?? tellsOutside(messageOf(heard))
  toldOutside.set(heard, known)
  return known
}

function fittingAsSaid(reading: Tagged, heard: Heard): Fits {
  const { section, bare } = reading
  if (section)
    return (word, needed) =>
      (word.otherSide !== undefined && needed.has(word.name)) || isOfSection(word, section) === true
  if (reading.proportion) return isOfParts
  const counts = countsThings(reading, heard)
  const per = pricedPer(reading)
  const isHeight = isHeightOfFence(reading, heard)
  const isStick = isStickLength(reading)
  const system = systemOf(heard.job)
  const held = new Map<Word, boolean>()
  const holds = (word: Word): boolean => {
    const does = held.get(word) ?? fittedReading(word, reading, system) !== undefined
    held.set(word, does)
    return does
  }
  return (word, needed) => {
    const isAsked = (): boolean => heard.job.asked.some((it) => it.word === word.name)
    if (word.kind !== 'count' && counts) return false
    if (isHeight && !heights.has(word.name)) return false
    if (isStick && neverSticks.has(word.name)) return false
    if (ofInsides.has(word.name) && isToldOutside(heard)) return false
    // “8 ft fence posts” are as long, and not so high above the ground.
    if (word.name === 'postAbove' && /^\s+(?:long\s+)?(?:fence\s+)?posts?\b/i.test(heard.said.slice(reading.end)))
      return false
    if (reading.people && !isOfPeople(word)) return false
    if (reading.rails && word.name !== 'rails') return false
    if (reading.clock && word.noun !== 'o’clock') return false
    // "28 dollars a foot" is the price of a foot, and of nothing whole.
    if (word.per === 'board foot' && per !== word.per && !isAsked()) return false
    // "$2,860 for 26 m" is no price of a metre.
    if (word.per === 'measure' && !reading.per && !isAsked() && !isPriceAt(reading, heard)) return false
    if (per && word.per !== per) return false
    if (word.kind === 'count') return bare !== null && (!word.whole || bare.d === 1n)
    // A bare number is a length where its side is said; nothing else guesses at a unit unless it was asked for.
    if (bare !== null && word.kind !== 'length' && !(word.kind === 'percent' && needed.has(word.name)) && !isAsked())
      return false
    return holds(word)
  }
}

/** The same of one word. */
export const fits = (word: Word, reading: Tagged, heard: Heard, needed: ReadonlySet<string>): boolean =>
  fitting(reading, heard)(word, needed)

/** “85 a day”, “once a year”: what stands for each of something measures nothing by itself. */
export const isRate = (reading: Tagged): boolean =>
  /^an? (second|minute|hour|hr|day|week|month|year|foot|meter|metre|yard|bag|gallon|litre|liter|can)$/i.test(
    reading.said,
  )

/** Whether a number says how many values one list has, of the words that quantities were taken for: “three sides: 40 ft, 60 ft and 40 ft”. */
export const countsList = ({ bare }: Tagged, words: readonly string[]): boolean =>
  words.some((it) => vocabulary.get(it)?.list && bare?.equals(words.filter((other) => other === it).length))
