// This file is about which words of a message belong to which of its quantities: in “16 surface and 25 at depth” the surface is the first one's.
import type { Token } from '../stems.ts'
import { type Looked, namesOf } from './features.ts'
import { any, type Speaking, speaksOf, type Table } from './table.ts'

/** A word of a message, by its names, and how it stands to each quantity. */
export interface Beside {
  readonly names: readonly string[]
  readonly links: readonly (readonly string[])[]
}

/** What may keep a word from belonging to any quantity. */
export const nobodys = (names: readonly string[]): string[] => [
  'nobody’s',
  ...names.slice(0, 1).map((it) => `nobody’s ${it}`),
]

/** The words of a message that are no quantities, each with how it stands to the quantities at these places. */
export function wordsBeside({ message }: Looked, spots: readonly number[]): Beside[] {
  const counts = countsAt(message)
  return message.flatMap((token, at) =>
    token.reading || isSign(token)
      ? []
      : [{ names: namesOf(token), links: spots.map((spot) => linkOf(counts, at, spot)) }],
  )
}

const isSign = ({ text }: Token): boolean => /^[.,;:?!\n]$/.test(text)
const joins = /^(and|&|plus|with|on|by|in|then|x)$/

/** What may stand between a word and a quantity, each with whether a token is one. */
const sorts = {
  words: (it: Token) => !isSign(it),
  quantities: ({ reading }: Token) => reading !== undefined,
  joints: (it: Token) => !isSign(it) && joins.test(it.stem),
  commas: ({ text }: Token) => text === ',',
  colons: ({ text }: Token) => text === ':',
  stops: (it: Token) => isSign(it) && it.text !== ',' && it.text !== ':',
} as const
type Counts = Readonly<Record<keyof typeof sorts, Uint32Array>>

/** How many of each sort stand before each place: those between two places are the difference, however long the message is. */
function countsAt(message: readonly Token[]): Counts {
  const counts = Object.fromEntries(Object.keys(sorts).map((it) => [it, new Uint32Array(message.length + 1)]))
  for (const [sort, is] of Object.entries(sorts)) {
    const own = counts[sort] as Uint32Array
    for (const [at, token] of message.entries()) own[at + 1] = (own[at] ?? 0) + (is(token) ? 1 : 0)
  }
  return counts as Counts
}

/** How a word stands to a quantity: before or after it, how near, and what stands between them. */
function linkOf(counts: Counts, at: number, spot: number): string[] {
  const side = at < spot ? 'before' : 'after'
  const between = (sort: keyof typeof sorts): number =>
    (counts[sort][Math.max(at, spot)] ?? 0) - (counts[sort][Math.min(at, spot) + 1] ?? 0)
  const past = Math.min(3, between('quantities'))
  const far = between('words') + 1
  const [hasComma, hasStop] = [between('commas') > 0, between('stops') > 0]
  const near = far <= 3 ? String(far) : far <= 5 ? '5' : far <= 8 ? '8' : 'far'
  return [
    `${side} ${near}`,
    `${side}, past ${past}`,
    ...(hasComma ? [`${side}, comma`] : []),
    ...(hasStop ? [`${side}, stop`] : []),
    ...(between('colons') > 0 ? [`${side}, colon`] : []),
    ...(between('joints') > 0 ? [`${side}, joined`] : []),
    `${side} ${far === 1 ? 'next' : 'off'}, past ${past}${hasComma ? ', comma' : ''}${hasStop ? ', stop' : ''}`,
  ]
}

/** The share of a word that belongs to each quantity; what is left of one belongs to none. */
export function sharesOf(belongs: Speaking | undefined, { names, links }: Beside): number[] {
  const own = links.map((it) => Math.exp(speaksOf(belongs, it)))
  const all = own.reduce((sum, it) => sum + it, Math.exp(speaksOf(belongs, nobodys(names))))
  return own.map((it) => it / all)
}

/** What a word is called where it speaks for a label because it belongs to the quantity. */
export const owned = (name: string): string => `of ${name}`

/** How much it speaks for a word of the vocabulary that another one was said before it. */
export const followsOf = (follows: Table, before: string, after: string): number =>
  (follows[before]?.[after] ?? follows[any]?.[any] ?? 0) / 100

/** Where the quantities of a message begin and end. */
export const ends = { first: '^', last: '$' } as const
