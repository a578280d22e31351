// This file is about sums of any trade: "what is 8 ft in millimetres", "add 7 ft 3 1/2 in and 4 ft 9 in", "and in inches?".
// They are read apart from the trade, by the words of the plain calculations, and only where a message asks for nothing of the trade.
import { vocabulary, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { type Owned, owners, withoutInner } from './cue-score.ts'
import { calculationsIn, type Hit } from './lexicon.ts'
import { dayFrom } from './plain-days.ts'
import { countsEarlier, fromEarlier, ofEarlier, onlyNoted } from './plain-onward.ts'
import {
  asks,
  bySigns,
  empty,
  type Found,
  foundIn,
  from,
  type Kind,
  plains,
  requestOf,
  resultOf,
  saysNothingElse,
  units,
} from './plain-phrases.ts'
import { shareOf } from './plain-shares.ts'
import { totalOf } from './plain-totals.ts'
import { isTax } from './prices-said.ts'
import type { Token } from './stems.ts'

/** The request of a message that is a plain sum and nothing else; undefined for every other one, and where something of the trade is asked. */
export function plainSumIn(
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  asksOfTrade: boolean,
): Request | undefined {
  const day = dayFrom(heard, message)
  if (day) return day
  const totalled = totalOf(heard, message)
  if (totalled) return totalled
  const noted = onlyNoted(heard, message, hits)
  if (noted) return noted
  const told = foundIn(message, asks).filter((it) => it.stems.join() !== 'take' || isOrder(message, it.from))
  const signs = bySigns(heard)
  const [asked, inUnits] = [[...told, ...signs], foundIn(message, units)]
  const share = shareOf(heard, message)
  if (share) return share
  if (asked.length === 0 && inUnits.length === 0) return undefined
  // "How many litres are 5 gallons?": where no word is left over, nothing of the trade is in it, whatever its words may mean there.
  if (asksOfTrade && !saysNothingElse(message, [...asked, ...inUnits])) return undefined
  if (heard.readings.length === 0 || countsEarlier(heard, message)) return ofEarlier(heard, message, asked, inUnits)
  const onward = fromEarlier(heard, message, asked)
  if (onward) return onward
  // “Can you do 72 ft / 9”: a sign between all of them is a sum, whatever stands before.
  const begins = beginsOutright(message, heard) || signs.length > 0
  const explicit = begins || message.at(-1)?.text === '?'
  if (heard.job.asked.length > 0 && !explicit) return undefined
  // What the trade has a word for, right beside it, is of the trade where the talk is about it or nothing is asked outright.
  if ((heard.job.decisions.length > 0 || !begins) && isClaimed(message, hits)) return undefined
  const measured = heard.readings.filter((it) => it.quantity !== null && it.firmness !== 'range')
  const bare = heard.readings.filter((it) => it.bare !== null && !it.proportion && it.firmness !== 'range')
  if (measured.length + bare.length < heard.readings.length) return undefined
  // "$28 a foot, 145 ft": the price of a measure goes with as much of it, which is no plain sum.
  if (
    measured.some((it) => it.per) &&
    measured.some((it) => it.quantity?.kind !== 'money' && it.quantity?.kind !== 'percent')
  )
    return undefined
  if (measured.length === 0) return ofNumbers(bare, asked, heard, message)
  const kinds = new Set(measured.map((it) => it.quantity?.kind as Kind))
  if (kinds.has('percent') && message.some((token) => isTax(token) || token.stem === 'discount')) return undefined
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
  // "12, 18 and 24 in in mm": several at once, where nothing but them is said.
  const isMany = measured.length > 1 && conversion?.values.list === true && saysNothingElse(message, inUnits)
  if (!conversion || !unit || !(measured.length === 1 || isMany) || bare.length > 0 || !explicit) return undefined
  return requestOf(conversion, resultOf(conversion), measured, [unit], heard, message)
}

/** "Take 3 from 10", and not "a hole takes me 45 minutes": something that is to be done. */
const isOrder = (message: readonly Token[], at: number): boolean =>
  message[at]?.text.toLowerCase() === 'take' &&
  (at === 0 ||
    /^([,;.:?!\n]|and|then|now|please|i|we|just|ok|so)$/.test(message[at - 1]?.stem ?? message[at - 1]?.text ?? ''))

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
    if (plain && (bare.length === 2 || !/(Product|Quotient)$/.test(word))) {
      const request = requestOf(plain, word, bare, [], heard, message)
      return /Difference$/.test(word) && isTakenFrom(bare, message)
        ? { ...request, told: request.told.reverse() }
        : request
    }
  }
  return undefined
}

/** "Subtract 3 5/16 from 10 1/8", "3 5/16 off 10 1/8": what it is taken from stands behind. */
function isTakenFrom(bare: readonly Tagged[], message: readonly Token[]): boolean {
  const [first, second] = [...bare]
    .sort((a, b) => a.start - b.start)
    .map((it) => message.findIndex((token) => token.tag === it.tag))
  return (
    bare.length === 2 && message.slice((first as number) + 1, second).some((token) => /^(from|off)$/.test(token.stem))
  )
}

/** Begins with a question word, with what is to be done, or with a quantity that answers no question of ours. */
const beginsOutright = (message: readonly Token[], { job }: Heard): boolean =>
  /^(what'?|how|which|convert|add|sum|subtract|take|deduct|multiply|divide|split|total|average|mean)$/.test(
    message[0]?.stem ?? '',
  ) ||
  (message[0]?.tag !== undefined && job.asked.length === 0)

/** Whether a thing or a name of the trade stands right beside a quantity that it could be. */
function isClaimed(message: readonly Token[], hits: readonly Hit[]): boolean {
  const couldBe = (hit: Owned): boolean => {
    const reading = message[hit.owner ?? -1]?.reading
    const word = vocabulary.get(hit.word)
    // A price of the whole is no price by the measure.
    if (word?.per && !reading?.per) return false
    return reading !== undefined && word?.kind === (reading.quantity?.kind ?? 'count')
  }
  return owners(withoutInner(hits, message), message, []).some(
    (hit) => (hit.sort === 'thing' || (hit.sort === 'name' && hit.length >= 2)) && hit.owner !== null && couldBe(hit),
  )
}

/** Whether what was given is just enough for that result: two values or more, or one and a plain number. */
function isEnough(word: string, measured: readonly Tagged[], bare: readonly Tagged[]): boolean {
  if (/(Multiple|Share)$/.test(word)) return bare.length === 1 && measured.length === 1
  if (/Part$/.test(word)) return false
  if (/Product$/.test(word)) return bare.length === 0 && measured.length === 2
  return bare.length === 0 && measured.length >= 2
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
