// This file is about the things that the tags of a walk make out: sides, their names, gates and corners, each with its tokens.
import { amountIn, landmarks, runNames, sameValue, toNumber } from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import { stem, type Token } from '../stems.ts'
import { untagged } from './tags.ts'

/** Tokens that stand for one thing. */
export interface Item {
  readonly tag: string
  readonly from: number
  readonly to: number
  readonly reading: Tagged | undefined
}

export interface Side {
  item: Item
  /** Its length; where it was told in pieces, one before each gate and one behind the last. */
  pieces: Tagged[]
  isInPieces: boolean
  places: readonly string[]
  isNamed?: true
  /** Where its gate begins, as the piece before the gate says it, where the whole side is told as well; and where it was told. */
  gateStart?: { readonly reading: Tagged; readonly from: number }
  /** How many sides a length is told of: “both”. */
  times: number
}

const ofWalks = new Set([
  'runLength',
  'stretch',
  'ref',
  'fall',
  'again',
  'gateOpening',
  'gateBare',
  'gates',
  'gateStart',
  'noGates',
  'times',
])
/** Whether a tag is of the sides and gates themselves, and not of what stands in them. */
export const isOfWalk = (tag: string): boolean => ofWalks.has(tag) || tag.startsWith('gateAt:')

export function itemsIn(message: readonly Token[], tags: readonly string[]): Item[] {
  const items: Item[] = []
  message.forEach((token, at) => {
    const tag = tags[at] as string
    if (tag === untagged) return
    const last = items.at(-1)
    const isMore = last?.to === at && last.tag === tag && !/^(runLength|stretch|gateOpening|gateStart|gates)$/.test(tag)
    if (isMore && !(last.reading && token.reading)) {
      items[items.length - 1] = { ...last, to: at + 1, reading: last.reading ?? token.reading }
    } else items.push({ tag, from: at, to: at + 1, reading: token.reading })
  })
  return items
}

const named = (names: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, string> =>
  new Map(Object.entries(names).flatMap(([name, called]) => [name, ...called].map((it) => [stem(it), name] as const)))
export const byName = named(runNames)
/** What a side goes along. “By the barn” may also say where a gate is: only a name of a side is looked up here. */
export const byLandmark = named(landmarks)
export const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth']
export const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight']
export const isStop = (token: Token | undefined): boolean => /^[.;?!\n]$/.test(token?.text ?? '')

export const isSame = (one: Tagged, other: Tagged): boolean =>
  one.quantity && other.quantity ? sameValue(one.quantity, other.quantity) : sizeOf(one) === sizeOf(other)

/** Feet, or whatever bare numbers are in. */
export const sizeOf = ({ quantity, bare }: Tagged): number =>
  quantity ? toNumber(amountIn(quantity, quantity.kind === 'length' ? 'ft' : quantity.unit)) : (bare?.valueOf() ?? 0)

/** “Side 2”, “run three”: a number behind the noun. “Five sides” is no name. */
export function sideNumber(said: readonly Token[]): number {
  const noun = said.findIndex((it) => /^(side|run|leg|stretch|length)$/.test(it.stem))
  const next = noun < 0 ? undefined : said[noun + 1]
  return next?.reading?.bare?.valueOf() ?? numbers.indexOf(next?.stem ?? '-') + 1
}

export const ofNames = /^(the|my|our|along|down|across|up|by|on|at|side|run|line|one|of|stretch|bit|fence)$/

export const isGate = (tag: string): boolean => tag === 'gateOpening' || tag === 'gateBare'

/** “Two sides of 8.4 m, two of 6”: how many stands before its length, or right behind it. */
const nearest = (sides: readonly Side[], { from }: Item): Side | undefined => {
  const far = ({ item }: Side): number => (item.from > from ? item.from - from : 2 * (from - item.from))
  return sides.filter((it) => it.times === 1).sort((a, b) => far(a) - far(b))[0]
}

/** “21 ft, then a gate 3 ft, and the back is 45 ft in all”. */
export function isTotal(message: readonly Token[], { to }: Item): boolean {
  const behind = message.slice(to, to + 4)
  const stop = behind.findIndex(isStop)
  return behind
    .slice(0, stop < 0 ? behind.length : stop)
    .some((it) => /^(all|altogether|total|overall|counting|count|including|include|whole)$/.test(it.stem))
}

const betweenThem =
  /\bgate\b[^.;?!]{0,40}\bbetween\b(?: (?:them|the two|both|the (?:runs|pieces|lengths|stretches|halves)))?(?=$|[,.;:?!]| \d)/i
/** “Two 12 ft runs and a gate between them”: one line, with the gate in it. */
export function aroundOneGate(sides: Side[], said: string): Side[] {
  const [only, another] = sides
  const [piece] = only?.pieces ?? []
  if (!only || another || !piece || only.times !== 2 || !betweenThem.test(said)) return sides
  return [{ ...only, pieces: [piece, piece], isInPieces: true, times: 1 }]
}

export const isSaidLast = (message: readonly Token[]): boolean => message.some((it) => it.stem === 'last')

/** The middle one of so many; none where there is no middle. */
export const middleOf = (places: readonly string[]): string[] =>
  places.length % 2 === 1 && places.length > 1 ? places.slice((places.length - 1) / 2, (places.length + 1) / 2) : []

/** “On that last side”, “in the second run”, “in the middle stretch”, of a fence that is known. */
export function sideSpokenOf(message: readonly Token[], known: readonly string[]): string | undefined {
  if (known.length < 2) return undefined
  const found = message.flatMap(({ stem: it }, at) => {
    const next = message[at + 1]
    const isAlone =
      message[at - 1]?.stem === 'the' && (next === undefined || isStop(next) || /^(is|are)$/.test(next.stem))
    if (!isAlone && !/^(side|run|stretch|leg|length|bit|piece|one)$/.test(next?.stem ?? '')) return []
    const name = byName.get(it)
    if (name && known.includes(name)) return [name]
    if (it === 'last') return known.slice(-1)
    if (it === 'middle') return middleOf(known)
    const nth = ordinals.indexOf(it)
    return nth < 0 ? [] : known.slice(nth, nth + 1)
  })
  return new Set(found).size === 1 ? found[0] : undefined
}

/** “… and the back is 45 ft in all” tells the whole side, though a gate was told right before. */
export const isWholeSide = (message: readonly Token[], item: Item): boolean =>
  item.tag === 'gateStart' && item.reading !== undefined && isTotal(message, item)

/** The longest of the sides, or the shortest; the first of those where several are. */
export function byLength(sides: readonly Side[], sign: 1 | -1): string[] {
  const told = sides.flatMap(({ places, pieces }) => {
    const [only, more] = pieces
    return only && !more ? places.map((place) => ({ place, size: sizeOf(only) })) : []
  })
  const best = Math.max(...told.map((it) => sign * it.size))
  return told
    .filter((it) => sign * it.size === best)
    .map((it) => it.place)
    .slice(0, 1)
}

/** “Two short ones 35 ft”, “both ends 20 ft”: several sides of one length, where it is not how many there are in all. */
function severalIn(
  message: readonly Token[],
  sides: readonly Side[],
): { readonly item: Item; readonly many: number }[] {
  return message.flatMap((token, at) => {
    const many = token.stem === 'both' ? 2 : (token.reading?.bare?.valueOf() ?? numbers.indexOf(token.stem) + 1)
    if (many < 2 || many > 4 || !Number.isInteger(many)) return []
    const isPlain = /^(side|end|return|leg)$/.test(message[at + 1]?.stem ?? '')
    const isLike =
      /^(long|short|equal|other|same|matching)$/.test(message[at + 1]?.stem ?? '') &&
      /^(one|side|end|return|leg|run|length|piece)$/.test(message[at + 2]?.stem ?? '')
    if (!isLike && !(isPlain && many !== sides.length && token.stem === 'both')) return []
    return [{ item: { tag: 'times', from: at, to: at + 2, reading: token.reading }, many }]
  })
}

/** Says of each side how many there are of its length: “both returns are 5 m”, “41 feet each”. */
export function countSides(message: readonly Token[], items: readonly Item[], sides: readonly Side[]): void {
  for (const item of items) {
    const words = message.slice(item.from, item.to)
    const isMany = words.some(
      (it) => it.reading || /^(both|each|either|couple|pair|two|three|four)$/.test(it.stem) || it.text === 'sides',
    )
    // “Post hard against each” is of no sides.
    const isEach =
      words.every((it) => it.stem === 'each') &&
      !/^(side|way|end|one)$/.test(message[item.to]?.stem ?? '') &&
      !message[item.from - 1]?.reading
    const side = item.tag === 'times' && isMany && !isEach ? nearest(sides, item) : undefined
    if (side) side.times = numberIn(message, item) ?? 2
  }
  const isSaid = (at: number): boolean => items.some((it) => it.from <= at && at < it.to && it.tag !== 'name')
  for (const { item, many } of severalIn(message, sides)) {
    const side = isSaid(item.from) ? undefined : nearest(sides, item)
    if (side) side.times = many
  }
}

/** The number that a thing is said with; undefined where none is. */
export function numberIn(message: readonly Token[], { from, to, reading }: Item): number | undefined {
  if (reading?.bare) return Number(reading.bare.valueOf())
  const said = message.slice(from, to).map((it) => numbers.indexOf(it.stem) + 1)
  return said.find((it) => it > 0)
}
