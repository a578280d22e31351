// This file is about the things that the tags of a walk make out: sides, their names, gates and corners, each with its tokens.
import { amountIn, runNames, sameValue, toNumber } from '../../../../engine/index.ts'
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
  readonly item: Item
  /** Its length; where it was told in pieces, one before each gate and one behind the last. */
  readonly pieces: Tagged[]
  readonly isInPieces: boolean
  places: readonly string[]
  isNamed?: true
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

export const byName = new Map(
  Object.entries(runNames).flatMap(([name, called]) => [name, ...called].map((it) => [stem(it), name] as const)),
)
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
export const nearest = (sides: readonly Side[], { from }: Item): Side | undefined => {
  const far = ({ item }: Side): number => (item.from > from ? item.from - from : 2 * (from - item.from))
  return sides.filter((it) => it.times === 1).sort((a, b) => far(a) - far(b))[0]
}
