// This file is about the two diagonals of a leaf: “bottom hinge to top latch 51 1/4, the other way 52 1/8”.
// The corner at the hinges says which it is: from its bottom runs a strut, from its top a tie.
import { toNumber, yard } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

interface Mention {
  readonly word: string
  /** The tokens that name it, without the one behind the last. */
  readonly from: number
  readonly to: number
  /** A corner at the hinges alone may be that of a gap there. */
  readonly hasBoth: boolean
}

const words = { bottom: 'strutDiagonal', top: 'tieDiagonal' } as const
type End = keyof typeof words
const other = { bottom: 'top', top: 'bottom' } as const
const ends: Readonly<Record<string, End>> = { top: 'top', upper: 'top', bottom: 'bottom', lower: 'bottom' }

/** “bottom hinge corner”, “the hinge side’s bottom corner”, “top latch”: which end of which side, with no quantity and no other side between. */
function endBeside(message: readonly Token[], at: number): End | undefined {
  for (const step of [-1, 1])
    for (let near = at + step; Math.abs(near - at) <= 3; near += step) {
      const { tag, stem = '' } = message[near] ?? {}
      if (tag || /^(hinge|latch|to|from|up|down|,)$/.test(stem) || !message[near]) break
      const end = ends[stem]
      if (end) return end
    }
  return undefined
}

/** Every naming of a diagonal, in order; both its corners are one naming. */
function mentionsIn(message: readonly Token[]): Mention[] {
  const mentions: Mention[] = []
  for (const [at, { stem }] of message.entries()) {
    const last = mentions.at(-1)
    const end = stem === 'hinge' || stem === 'latch' ? endBeside(message, at) : undefined
    const word = end && words[stem === 'hinge' ? end : other[end]]
    const isAnother =
      stem === 'other' && last !== undefined && /^(way|one|diagonal|,|is|:)$/.test(message[at + 1]?.stem ?? '')
    const said = word ?? (isAnother ? (last.word === words.top ? words.bottom : words.top) : undefined)
    if (!said) continue
    const goesOn = last && last.word === said && message.slice(last.to, at).every((it) => !it.tag)
    if (goesOn) mentions.splice(-1, 1, { ...last, to: at + 1, hasBoth: message[last.from]?.stem !== stem })
    else mentions.push({ word: said, from: at, to: at + 1, hasBoth: stem === 'other' })
  }
  return mentions.filter((it) => it.hasBoth)
}

/** The sizes of both diagonals, each behind its naming, or before it: “51 1/4 from the bottom hinge to the top latch”. */
export function diagonalsIn(message: readonly Token[], needed: ReadonlySet<string>): Bound[] {
  if (!needed.has(words.top) || !needed.has(words.bottom)) return []
  const mentions = mentionsIn(message)
  if (mentions.length === 0) return diagonalsOfSag(message)
  const within = (from: number, to: number) =>
    message.slice(Math.max(0, from), to).filter(({ reading }) => reading && isSize(reading))
  return mentions.flatMap(({ word, from, to }, i) => {
    const behind = within(to, Math.min(mentions[i + 1]?.from ?? message.length, to + farthest))[0]
    const before = within(Math.max(mentions[i - 1]?.to ?? 0, from - farthest), from).at(-1)
    // Whichever way the last one has it, all have it.
    const { from: lastFrom, to: lastTo } = mentions.at(-1) as Mention
    const leads = within(lastTo, lastTo + farthest).length > 0 || within(lastFrom - farthest, lastFrom).length === 0
    const reading = (leads ? behind : before)?.reading
    return reading ? [{ reading, word, at: yard, score: weight.byPlace }] : []
  })
}

/** “My gate sags: diagonals 1420 and 1436”: which is which nobody says, but that it sags does. The one from the top at the hinges has grown. */
function diagonalsOfSag(message: readonly Token[]): Bound[] {
  const sags = message.some((it) => /^(sag|drop|droop)/.test(it.stem))
  const from = message.findIndex((it) => /^diagonal/.test(it.stem))
  const [one, two] = message
    .slice(Math.max(0, from))
    .flatMap(({ reading }) => (reading && isSize(reading) ? [reading] : []))
  if (!sags || from < 0 || !one || !two || one.quantity?.unit !== two.quantity?.unit) return []
  const [a, b] = [sizeOf(one), sizeOf(two)]
  if (a === b || Math.max(a, b) > alike * Math.min(a, b)) return []
  const [long, short] = a > b ? [one, two] : [two, one]
  return [
    { reading: long, word: words.top, at: yard, score: weight.byPlace },
    { reading: short, word: words.bottom, at: yard, score: weight.byPlace },
  ]
}
// No leaf sags so far that one diagonal is a tenth longer than the other.
const alike = 1.1
const sizeOf = ({ bare, quantity }: Bound['reading']): number =>
  bare?.valueOf() ?? (quantity ? toNumber(quantity.amount) : 0)

const farthest = 8
const isSize = ({ bare, quantity }: Bound['reading']): boolean => bare !== null || quantity?.kind === 'length'
