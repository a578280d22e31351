// This file is about which words a quantity can be at all, before anything says which it is.
import { fittedReading, systemOf, vocabulary, type Word } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import { stem } from './stems.ts'

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
export function countsThings({ bare, end }: Tagged, { said }: Heard): boolean {
  const [, next = ''] = /^\s+(\p{L}+s)\b/u.exec(said.slice(end, end + 20)) ?? []
  return bare?.d === 1n && nouns.has(stem(next))
}

/** Whether it counts all who work, whoever asks among them. */
export const isOfPeople = (word: Word): boolean =>
  word.kind === 'count' && word.called.things?.includes('people') === true

/** Whether a quantity can be a value of a word, where a question needs some. */
export type Fits = (word: Word, needed: ReadonlySet<string>) => boolean

/** Which words a quantity can be a value of: by its kind, its unit, and what stands around it. */
export function fitting(reading: Tagged, heard: Heard): Fits {
  const { section, bare } = reading
  if (section)
    return (word, needed) =>
      (word.otherSide !== undefined && needed.has(word.name)) || isOfSection(word, section) === true
  if (reading.proportion) return isOfParts
  const counts = countsThings(reading, heard)
  const per = pricedPer(reading)
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
    if (reading.people && !isOfPeople(word)) return false
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
  /^an? (second|minute|hour|day|week|month|year|foot|meter|metre|yard|bag|gallon|litre|liter|can)$/i.test(reading.said)
