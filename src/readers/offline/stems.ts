// This file is about words as they are typed: cut into tokens, brought to one form, and forgiven a slip of the finger.

import { tableOf } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'

export interface Token {
  readonly text: string
  readonly stem: string
  readonly start: number
  readonly end: number
  /** The tag of the quantity it stands for; words have none. */
  readonly tag?: string
  /** The quantity itself. */
  readonly reading?: Tagged
  /** Whether that quantity is measured: a bare number may count what comes after it. */
  readonly measured?: boolean
}

const spellings = tableOf<string>({
  centre: 'center',
  metre: 'meter',
  litre: 'liter',
  colour: 'color',
  grey: 'gray',
  mould: 'mold',
  tyre: 'tire',
  aluminium: 'aluminum',
  ctr: 'center',
  ctrs: 'center',
  dia: 'diameter',
  diam: 'diameter',
  ø: 'diameter',
  φ: 'diameter',
  oc: 'o.c',
  postholes: 'posthole',
  feets: 'foot',
  feet: 'foot',
  cant: "can't",
  dont: "don't",
  doesnt: "doesn't",
  isnt: "isn't",
  wont: "won't",
  im: "i'm",
  "what's": "what's",
})

/** One form for singular and plural, British and American. */
export function stem(word: string): string {
  const known = stemmed.get(word)
  if (known !== undefined) return known
  const found = stemOf(word)
  if (stemmed.size < mostStemmed) stemmed.set(word, found)
  return found
}

/** Words that were brought to their form before: people use the same ones again and again. */
const stemmed = new Map<string, string>()
const mostStemmed = 10_000

function stemOf(word: string): string {
  const lower = word.toLowerCase().replace(/[’`]/g, "'")
  const known = spellings[lower]
  if (known) return known
  // "The kid's": whose it is, or that it is.
  if (lower.length > 4 && lower.endsWith("'s") && !/^(it|that|how|who|where|when|there|here|let)'s$/.test(lower))
    return stem(lower.slice(0, -2))
  const single =
    lower.length > 4 && lower.endsWith('ies')
      ? `${lower.slice(0, -3)}y`
      : /(ch|sh|ss|x|z)es$/.test(lower)
        ? lower.slice(0, -2)
        : lower.length > 3 && lower.endsWith('s') && !/(ss|us|is)$/.test(lower)
          ? lower.slice(0, -1)
          : lower
  return spellings[single] ?? single
}

/** Words, with where they stand. A sentence end or a comma is a token of its own. */
export function tokens(text: string): Token[] {
  return [...text.matchAll(/[\p{L}][\p{L}\p{M}'’.]*[\p{L}]|[\p{L}]|[,;:?!.\n]/gu)].map((match) => ({
    text: match[0],
    stem: stem(match[0]),
    start: match.index,
    end: match.index + match[0].length,
  }))
}

/** The message as tokens: its words, and one token for each quantity, in order. */
export function messageOf({ said, readings }: Heard): Token[] {
  // Both stand in order, so one look at each is enough.
  let at = 0
  const words = tokens(said).filter((token) => {
    while ((readings[at]?.end ?? Infinity) <= token.start) at++
    return token.end <= (readings[at]?.start ?? Infinity)
  })
  const quantities = readings.map((it) => ({
    text: it.said,
    stem: it.said.toLowerCase(),
    start: it.start,
    end: it.end,
    tag: it.tag,
    reading: it,
    measured: it.quantity !== null || it.section !== undefined,
  }))
  return [...words, ...quantities].sort((a, b) => a.start - b.start)
}

/** What the person said from one token to another, each word whole: the “m” of “m2” is none of theirs. */
export function quoted(said: string, message: readonly Token[], from: number, to: number): string {
  const end = (message[to - 1] as Token).end
  const [rest = ''] = /^[\p{M}\p{N}]+/u.exec(said.slice(end, end + 8)) ?? []
  return said.slice((message[from] as Token).start, end) + rest
}

/** Small words that carry no meaning of their own in a question. */
export const filler = new Set(
  'the a an my our i we you your do does should would will can could to me be is are am it this these those that of need must have got please just s there really actually about'.split(
    ' ',
  ),
)

/** A message cut at its stops. */
export function sentencesOf(message: readonly Token[]): Token[][] {
  const sentences: Token[][] = [[]]
  for (const token of message) {
    if (/^[.;?!\n]$/.test(token.text)) sentences.push([])
    else sentences.at(-1)?.push(token)
  }
  return sentences.filter((it) => it.length > 0)
}
