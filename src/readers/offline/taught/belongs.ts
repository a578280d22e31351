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
  return message.flatMap((token, at) =>
    token.reading || isSign(token)
      ? []
      : [{ names: namesOf(token), links: spots.map((spot) => linkOf(message, at, spot)) }],
  )
}

const isSign = ({ text }: Token): boolean => /^[.,;:?!\n]$/.test(text)

/** How a word stands to a quantity: before or after it, how near, and what stands between them. */
function linkOf(message: readonly Token[], at: number, spot: number): string[] {
  const side = at < spot ? 'before' : 'after'
  const between = message.slice(Math.min(at, spot) + 1, Math.max(at, spot))
  const words = between.filter((it) => !isSign(it))
  const others = words.filter((it) => it.reading).length
  const far = words.length + 1
  const hasComma = between.some((it) => it.text === ',')
  const hasStop = between.some((it) => isSign(it) && it.text !== ',' && it.text !== ':')
  const near = far <= 3 ? String(far) : far <= 5 ? '5' : far <= 8 ? '8' : 'far'
  return [
    `${side} ${near}`,
    `${side}, past ${Math.min(3, others)}`,
    ...(hasComma ? [`${side}, comma`] : []),
    ...(hasStop ? [`${side}, stop`] : []),
    ...(between.some((it) => it.text === ':') ? [`${side}, colon`] : []),
    ...(words.some((it) => /^(and|&|plus|with|on|by|in|then|x)$/.test(it.stem)) ? [`${side}, joined`] : []),
    `${side} ${far === 1 ? 'next' : 'off'}, past ${Math.min(3, others)}${hasComma ? ', comma' : ''}${hasStop ? ', stop' : ''}`,
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
