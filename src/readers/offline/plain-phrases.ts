// This file is about the words of the plain calculations: what asks for each result, the units that are wanted, and how a request is made of them.
import { tableOf } from '../../../engine/index.ts'
import { type Calculation, askable, isQuantity, type Quantity, type Word, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { groupedBy } from './phrases.ts'
import { filler, quoted, type Token, tokens } from './stems.ts'

export type Kind = Quantity['kind']

/** A plain calculation: what it takes, and the unit it can give its answer in. */
interface Plain {
  readonly calc: Calculation
  readonly values: Word
  readonly unit: Word | undefined
  readonly converts: boolean
}

/** Any values of a kind, whatever they are of: a sum of a budget, or of a load, says what each of its values is. */
const isOfValues = (first: Word | undefined): boolean =>
  first !== undefined && (first.list === true || first.called.byDefault === true || first.kind === 'date')

export const plains: readonly Plain[] = askable
  .filter((calc) => calc.plain && isOfValues(Object.values(calc.needs)[0]))
  .map((calc) => {
    const needs = Object.values(calc.needs)
    const values = needs.find((it) => it.kind !== 'choice' && it.kind !== 'count') as Word
    const unit = needs.find((it) => it.kind === 'choice')
    return { calc, values, unit, converts: unit !== undefined && Object.keys(calc.gives).length === 1 }
  })

interface Phrase {
  readonly stems: readonly string[]
  readonly word: string
  readonly option?: string
}

const stemsOf = (text: string): string[] => tokens(text).map((token) => token.stem)

/** Phrases by their first word. */
type Phrases = ReadonlyMap<string, readonly Phrase[]>
const byFirst = (phrases: readonly Phrase[]): Phrases => groupedBy(phrases, ({ stems }) => stems.slice(0, 1))

export const asks = byFirst(
  plains.flatMap(({ calc }) =>
    Object.values(calc.gives).flatMap((word) =>
      (word.called.asks ?? []).map((it) => ({ stems: stemsOf(it), word: word.name })),
    ),
  ),
)

export const units = byFirst(
  plains.flatMap(({ unit }) =>
    Object.entries(unit?.options ?? {}).flatMap(([option, { called }]) =>
      called.map((it) => ({ stems: stemsOf(it), word: unit?.name ?? '', option })),
    ),
  ),
)

export interface Found extends Phrase {
  readonly from: number
  readonly to: number
}

/** Every phrase of the list in the message that no longer one covers, the longest first. */
export function foundIn(message: readonly Token[], phrases: Phrases): Found[] {
  const all = message.flatMap((token, from) =>
    (phrases.get(token.stem) ?? [])
      .filter(({ stems }) => stems.every((it, i) => message[from + i]?.stem === it))
      .map((phrase) => ({ ...phrase, from, to: from + phrase.stems.length })),
  )
  // A longer one that covers it begins there, or a few words before.
  const ends = new Map<number, number>()
  for (const { from, to } of all) ends.set(from, Math.max(to, ends.get(from) ?? 0))
  const isCovered = ({ from, to }: Found): boolean =>
    Array.from({ length: longest }, (_, i) => from - i).some(
      (at) => (ends.get(at) ?? 0) >= to && (ends.get(at) as number) - at > to - from,
    )
  return all.filter((it) => !isCovered(it)).sort((a, b) => b.stems.length - a.stems.length)
}

const longest = Math.max(...[...asks.values(), ...units.values()].flat().map((it) => it.stems.length))

const signs = tableOf<string>({
  '+': 'plus',
  '-': 'minus',
  '−': 'minus',
  '–': 'minus',
  x: 'times',
  '×': 'times',
  '*': 'times',
  '/': 'divided by',
  '÷': 'divided by',
})

/** "90 in / 12", "14 × 8 ft": the same sign between all of them, read as its word. */
export function bySigns({ said, readings }: Heard): Found[] {
  const between = readings.slice(1).map((it, i) => said.slice(readings[i]?.end, it.start).trim().toLowerCase())
  const word = between.length > 0 && between.every((it) => it === between[0]) ? signs[between[0] as string] : undefined
  const stems = word ? stemsOf(word) : []
  return (asks.get(stems[0] ?? '') ?? [])
    .filter((it) => it.stems.join(' ') === stems.join(' '))
    .map((it) => ({ ...it, from: -1, to: -1 }))
}

export const small =
  /^(what'?|what's|whats|how|much|many|which|and|of|in|into|to|from|by|for|with|or|come|make|equal|doe|go|off|out|take|get|so|then|now|all|up|ok|okay|work|find|result|answer|i|me|give|tell|both|two|each|on|at|sum|value|number|length|figure)$/

/** Whether the message holds its quantities, the phrases of a plain sum, and small words between them. */
export const saysNothingElse = (message: readonly Token[], found: readonly Found[]): boolean =>
  message.every(
    (token, i) =>
      token.tag !== undefined ||
      !/\p{L}/u.test(token.text) ||
      filler.has(token.stem) ||
      small.test(token.stem) ||
      found.some((it) => i >= it.from && i < it.to),
  )

export const resultOf = ({ calc }: Plain): string => calc.headlines[0] as string

export const from = (tag: string): Told['from'] => ({ tag, quote: null, option: null, usual: null })

/** The request for that result of a plain sum, with its quantities in their order and the unit it is wanted in. */
export function requestOf(
  plain: Plain,
  wanted: string,
  readings: readonly Tagged[],
  inUnits: readonly Found[],
  heard: Heard,
  message: readonly Token[],
): Request {
  const number = Object.values(plain.calc.needs).find((it) => it.kind === 'count')
  const ordered = [...readings].sort((a, b) => a.start - b.start)
  const told: Told[] = ordered.map((it) => ({
    word: it.bare !== null && number ? number.name : plain.values.name,
    at: yard,
    from: from(it.tag),
  }))
  return {
    ...empty,
    told: [...told, ...unitTold(plain, inUnits, heard, message)],
    wants: [{ word: wanted, at: yard }],
    calculation: plain.calc.name,
  }
}

export const empty = { told: [], wants: [], calculation: null, confirms: [], notes: [], declines: [] } satisfies Request

/** The unit that the person wants the result in, as a choice told; nothing where they named none. */
export function unitTold({ unit }: Plain, inUnits: readonly Found[], heard: Heard, message: readonly Token[]): Told[] {
  const found = inUnits.find((it) => it.word === unit?.name)
  if (!unit || !found?.option) return []
  const quote = quoted(heard.said, message, found.from, found.to)
  return [{ word: unit.name, at: yard, from: { tag: null, quote, option: found.option, usual: null } }]
}

/** The quantities that were asked for and worked last. */
export const resultsWanted = ({ job }: Heard) =>
  job.wanted.flatMap((want) =>
    job.results.filter((it) => it.word === want.word && it.at === want.at && isQuantity(it.value)),
  )
