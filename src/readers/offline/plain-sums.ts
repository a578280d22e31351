// This file is about sums of any trade: "what is 8 ft in millimetres", "add 7 ft 3 1/2 in and 4 ft 9 in", "and in inches?".
// They are read apart from the trade, by the words of the plain calculations, and only where a message asks for nothing of the trade.
import {
  type Calculation,
  catalogue,
  isQuantity,
  type Quantity,
  vocabulary,
  type Word,
  yard,
} from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { type Owned, owners, withoutInner } from './cue-score.ts'
import { calculationsIn, type Hit } from './lexicon.ts'
import { filler, type Token, tokens } from './stems.ts'

type Kind = Quantity['kind']

/** A plain calculation: what it takes, and the unit it can give its answer in. */
interface Plain {
  readonly calc: Calculation
  readonly values: Word
  readonly unit: Word | undefined
  readonly converts: boolean
}

const plains: readonly Plain[] = catalogue
  .filter((calc) => calc.plain)
  .map((calc) => {
    const needs = Object.values(calc.needs)
    const values = needs.find((it) => it.kind !== 'choice' && it.kind !== 'count') as Word
    const unit = needs.find((it) => it.kind === 'choice')
    return { calc, values, unit, converts: !values.list && unit !== undefined }
  })

interface Phrase {
  readonly stems: readonly string[]
  readonly word: string
  readonly option?: string
}
const stemsOf = (text: string): string[] => tokens(text).map((token) => token.stem)
const asks: readonly Phrase[] = plains.flatMap(({ calc }) =>
  Object.values(calc.gives).flatMap((word) =>
    (word.called.asks ?? []).map((it) => ({ stems: stemsOf(it), word: word.name })),
  ),
)
const units: readonly Phrase[] = plains.flatMap(({ unit }) =>
  Object.entries(unit?.options ?? {}).flatMap(([option, { called }]) =>
    called.map((it) => ({ stems: stemsOf(it), word: unit?.name ?? '', option })),
  ),
)

interface Found extends Phrase {
  readonly from: number
  readonly to: number
}

/** Every phrase of the list in the message that no longer one covers, the longest first. */
function foundIn(message: readonly Token[], phrases: readonly Phrase[]): Found[] {
  const all = message.flatMap((_, from) =>
    phrases
      .filter(({ stems }) => stems.every((it, i) => message[from + i]?.stem === it))
      .map((phrase) => ({ ...phrase, from, to: from + phrase.stems.length })),
  )
  return all
    .filter(
      (it) => !all.some((other) => other.from <= it.from && other.to >= it.to && other.stems.length > it.stems.length),
    )
    .sort((a, b) => b.stems.length - a.stems.length)
}

const signs: Readonly<Record<string, string>> = {
  '+': 'plus',
  '-': 'minus',
  '−': 'minus',
  '–': 'minus',
  x: 'times',
  '×': 'times',
  '*': 'times',
  '/': 'divided by',
  '÷': 'divided by',
}

/** "90 in / 12", "14 × 8 ft": the same sign between all of them, read as its word. */
function bySigns({ said, readings }: Heard): Found[] {
  const between = readings.slice(1).map((it, i) => said.slice(readings[i]?.end, it.start).trim().toLowerCase())
  const word = between.length > 0 && between.every((it) => it === between[0]) ? signs[between[0] as string] : undefined
  const stems = word ? stemsOf(word).join(' ') : undefined
  return asks.filter((it) => it.stems.join(' ') === stems).map((it) => ({ ...it, from: -1, to: -1 }))
}

/** The request of a message that is a plain sum and nothing else; undefined for every other one, and where something of the trade is asked. */
export function plainSumIn(
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  asksOfTrade: boolean,
): Request | undefined {
  const [asked, inUnits] = [[...foundIn(message, asks), ...bySigns(heard)], foundIn(message, units)]
  if (asked.length === 0 && inUnits.length === 0) return undefined
  // "How many litres are 5 gallons?": where no word is left over, nothing of the trade is in it, whatever its words may mean there.
  if (asksOfTrade && !saysNothingElse(message, [...asked, ...inUnits])) return undefined
  if (heard.readings.length === 0) return ofEarlier(heard, message, asked, inUnits)
  const begins = beginsOutright(message, heard)
  const explicit = begins || message.at(-1)?.text === '?'
  if (heard.job.asked.length > 0 && !explicit) return undefined
  // What the trade has a word for, right beside it, is of the trade where the talk is about it or nothing is asked outright.
  if ((heard.job.decisions.length > 0 || !begins) && isClaimed(message, hits, heard)) return undefined
  const measured = heard.readings.filter((it) => it.quantity !== null && it.firmness !== 'range')
  const bare = heard.readings.filter((it) => it.bare !== null && !it.proportion && it.firmness !== 'range')
  if (measured.length + bare.length < heard.readings.length) return undefined
  if (measured.length === 0) return ofNumbers(bare, asked, heard, message)
  const kinds = new Set(measured.map((it) => it.quantity?.kind as Kind))
  if (kinds.has('percent')) return byPercent(measured, bare, asked)
  if (kinds.size > 1)
    return explicit && calculationsIn(message).length === 0 ? unlike(measured, bare, asked, heard) : undefined
  const [kind] = kinds as ReadonlySet<Kind> & Iterable<Kind>
  const ofKind = plains.filter(({ values }) => values.kind === kind)
  // The first result that is asked for and can be had from what was given.
  for (const { word } of asked) {
    const plain = ofKind.find(({ calc, values }) => values.list && calc.gives[word])
    if (plain && isEnough(word, measured, bare))
      return requestOf(plain, word, [...measured, ...bare], inUnits, heard, message)
  }
  const conversion = ofKind.find(({ converts }) => converts)
  const unit = inUnits.find((it) => it.word === conversion?.unit?.name)
  if (!conversion || !unit || measured.length !== 1 || bare.length > 0 || !explicit) return undefined
  return requestOf(conversion, resultOf(conversion), measured, [unit], heard, message)
}

const small = /^(what'?|how|much|many|which|and|of|in|into|to|from|by|for|with|or|come|make|equal|doe|go|off)$/

/** Whether the message holds its quantities, the phrases of a plain sum, and small words between them. */
const saysNothingElse = (message: readonly Token[], found: readonly Found[]): boolean =>
  message.every(
    (token, i) =>
      token.tag !== undefined ||
      !/\p{L}/u.test(token.text) ||
      filler.has(token.stem) ||
      small.test(token.stem) ||
      found.some((it) => i >= it.from && i < it.to),
  )

/** "$3,200 plus 10 %": so much of it more or less. */
function byPercent(measured: readonly Tagged[], bare: readonly Tagged[], asked: readonly Found[]): Request | undefined {
  const percents = measured.filter((it) => it.quantity?.kind === 'percent')
  const [base] = measured.filter((it) => it.quantity?.kind !== 'percent')
  const [percent] = percents
  if (!base || !percent || measured.length !== 2 || bare.length > 0) return undefined
  for (const { word } of asked) {
    const plain = plains.find(({ calc, values }) => values.kind === base.quantity?.kind && calc.gives[word])
    const share = Object.values(plain?.calc.needs ?? {}).find((it) => it.kind === 'percent')
    if (!plain || !share) continue
    const told = [
      { word: plain.values.name, at: yard, from: from(base.tag) },
      { word: share.name, at: yard, from: from(percent.tag) },
    ]
    return { ...empty, told, wants: [{ word, at: yard }], calculation: plain.calc.name }
  }
  return undefined
}

/** "93 3/4 minus 3 1/2": numbers without a unit, where nothing else is said. */
function ofNumbers(
  bare: readonly Tagged[],
  asked: readonly Found[],
  heard: Heard,
  message: readonly Token[],
): Request | undefined {
  if (bare.length < 2 || !saysNothingElse(message, asked)) return undefined
  for (const { word } of asked) {
    const plain = plains.find(({ calc, values }) => values.kind === 'number' && calc.gives[word])
    if (plain && (bare.length === 2 || !/(Product|Quotient)$/.test(word)))
      return requestOf(plain, word, bare, [], heard, message)
  }
  return undefined
}

/** Begins with a question word, with what is to be done, or with a quantity that answers no question of ours. */
const beginsOutright = (message: readonly Token[], { job }: Heard): boolean =>
  /^(what'?|how|which|convert|add|sum|subtract|take|deduct|multiply|divide|split|total|average|mean)$/.test(
    message[0]?.stem ?? '',
  ) ||
  (message[0]?.tag !== undefined && job.asked.length === 0)

/** Whether a thing or a name of the trade stands right beside a quantity that it could be. */
function isClaimed(message: readonly Token[], hits: readonly Hit[], { readings }: Heard): boolean {
  const couldBe = (hit: Owned): boolean => {
    const reading = readings.find((it) => it.tag === message[hit.owner ?? -1]?.tag)
    return reading !== undefined && vocabulary.get(hit.word)?.kind === (reading.quantity?.kind ?? 'count')
  }
  return owners(withoutInner(hits, message), message, []).some(
    (hit) => (hit.sort === 'thing' || (hit.sort === 'name' && hit.length >= 2)) && hit.owner !== null && couldBe(hit),
  )
}

/** Whether what was given is just enough for that result: two values or more, or one and a plain number. */
function isEnough(word: string, measured: readonly Tagged[], bare: readonly Tagged[]): boolean {
  if (/(Multiple|Share)$/.test(word)) return bare.length === 1 && measured.length === 1
  if (/Product$/.test(word)) return bare.length === 0 && measured.length === 2
  return bare.length === 0 && measured.length >= 2
}

const resultOf = ({ calc }: Plain): string => calc.headlines[0] as string

const from = (tag: string): Told['from'] => ({ tag, quote: null, option: null, usual: null })

function requestOf(
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

const empty = { told: [], wants: [], calculation: null, confirms: [], notes: [], declines: [] } satisfies Request

function unitTold({ unit }: Plain, inUnits: readonly Found[], heard: Heard, message: readonly Token[]): Told[] {
  const found = inUnits.find((it) => it.word === unit?.name)
  if (!unit || !found?.option) return []
  const quote = heard.said.slice((message[found.from] as Token).start, (message[found.to - 1] as Token).end)
  return [{ word: unit.name, at: yard, from: { tag: null, quote, option: found.option, usual: null } }]
}

/** "Add 5 ft and 3 lb": one of them is told, and the engine says why the other does not go with it. */
function unlike(
  measured: readonly Tagged[],
  bare: readonly Tagged[],
  asked: readonly Found[],
  heard: Heard,
): Request | undefined {
  const [first] = measured
  const of = asked.flatMap(({ word }) =>
    plains
      .filter(({ calc, values }) => values.list && values.kind === first?.quantity?.kind && calc.gives[word])
      .map((plain) => ({ plain, word })),
  )[0]
  if (!first || !of || bare.length > 0 || /(Multiple|Share|Product)$/.test(of.word)) return undefined
  return requestOf(of.plain, of.word, [first], [], heard, [])
}

/** What a list of prices and numbers is worked by. */
const bill = catalogue
  .map((calc) => {
    const lists = Object.values(calc.needs).filter((it) => it.list)
    return {
      calc,
      prices: lists.find((it) => it.kind === 'money'),
      counts: lists.find((it) => it.kind === 'count'),
    }
  })
  .find((it) => it.prices && it.counts)

/** "What do they cost at $5.98 each?": the bags or pickets just counted, at that price. */
export function costOfEarlier(heard: Heard, message: readonly Token[]): Request | undefined {
  const [price] = heard.readings
  const pointed = message.some(({ stem }) => /^(they|them|those|these)$/.test(stem))
  if (!bill?.prices || !bill.counts || !pointed || heard.readings.length !== 1) return undefined
  if (price?.quantity?.kind !== 'money' || heard.job.asked.length > 0) return undefined
  const counted = resultsWanted(heard).find((it) => (it.value as Quantity).kind === 'count')
  if (!counted) return undefined
  const told = [
    { word: bill.counts.name, at: yard, from: from(counted.ref) },
    { word: bill.prices.name, at: yard, from: from(price.tag) },
  ]
  return { ...empty, told, wants: [{ word: bill.calc.headlines[0] as string, at: yard }], calculation: bill.calc.name }
}

/** The quantities that were asked for and worked last. */
const resultsWanted = ({ job }: Heard) =>
  job.wanted.flatMap((want) =>
    job.results.filter((it) => it.word === want.word && it.at === want.at && isQuantity(it.value)),
  )

/** "And in inches?", "what is that in mm?", "add those two": of what was worked before. */
function ofEarlier(
  heard: Heard,
  message: readonly Token[],
  asked: readonly Found[],
  inUnits: readonly Found[],
): Request | undefined {
  const words = message.filter((token) => /\p{L}/u.test(token.text))
  if (words.length > 8 || heard.job.asked.length > 0) return undefined
  const earlier = resultsWanted(heard)
  const pointed = words.some(({ stem }) => /^(that|it|those|them|these|both|two)$/.test(stem))
  for (const unit of inUnits) {
    const plain = plains.find((it) => it.converts && it.unit?.name === unit.word)
    const result = earlier.find((it) => (it.value as Quantity).kind === plain?.values.kind)
    if (!plain || !result || !(pointed || unit.from <= 2)) continue
    const told: Told[] = [
      { word: plain.values.name, at: yard, from: from(result.ref) },
      ...unitTold(plain, [unit], heard, message),
    ]
    return { ...empty, told, wants: [{ word: resultOf(plain), at: yard }], calculation: plain.calc.name }
  }
  for (const { word } of pointed ? asked : []) {
    const plain = plains.find(({ calc, values }) => values.list && calc.gives[word])
    const results = earlier.filter((it) => (it.value as Quantity).kind === plain?.values.kind)
    if (!plain || results.length < 2 || /(Multiple|Share|Product)$/.test(word)) continue
    const told = results.map((it) => ({ word: plain.values.name, at: yard, from: from(it.ref) }))
    return { ...empty, told, wants: [{ word, at: yard }], calculation: plain.calc.name }
  }
  return undefined
}
