// This file is about going on: quantities that are only noted, and what is asked of them or of the last answer next: “add those two”, “divide that by 3”.
import { askable, type Quantity, type Word, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard } from '../reader.ts'
import type { Hit } from './lexicon.ts'
import {
  asks,
  empty,
  type Found,
  foundIn,
  from,
  plains,
  resultOf,
  resultsWanted,
  saysNothingElse,
  unitTold,
} from './plain-phrases.ts'
import type { Token } from './stems.ts'

/** "120 ft and 38 ft 6 in": quantities and nothing else, kept for what is asked of them next. */
export function onlyNoted(heard: Heard, message: readonly Token[], hits: readonly Hit[]): Request | undefined {
  const { readings, job } = heard
  if (readings.length < 2 || job.asked.length > 0 || job.wanted.length > 0 || job.decisions.length > 0) return undefined
  const [first] = readings
  const isAlike = readings.every(
    (it) => it.quantity && it.quantity.kind === first?.quantity?.kind && it.firmness === 'exactly',
  )
  const isJoined =
    heard.readings
      .slice(1)
      .every((it, i) => /^\s*(,|;|and|&|,\s*and)\s*$/i.test(heard.said.slice(readings[i]?.end, it.start))) &&
    message.every((token) => token.tag !== undefined || !/\p{L}/u.test(token.text) || token.stem === 'and')
  if (!isAlike || !isJoined || hits.some((hit) => hit.sort === 'ask')) return undefined
  const plain = plains.find(
    ({ values }) => values.list && values.kind === first?.quantity?.kind && !values.called.byDefault,
  )
  if (!plain) return undefined
  const told = readings.map((it) => ({ word: plain.values.name, at: yard, from: from(it.tag) }))
  return { ...empty, told }
}

export const pointing = /^(that|it|this|result|answer|sum|total|those|them|these|both)$/

/** "Divide that by 3", "add 6 in to that", "and times 4?": of what was worked last, with one thing more. */
export function fromEarlier(heard: Heard, message: readonly Token[], asked: readonly Found[]): Request | undefined {
  const [only, more] = heard.readings
  if (!only || more || heard.job.asked.length > 0 || only.firmness === 'range') return undefined
  const isOfPlain = heard.job.named !== null && (askable.find((it) => it.name === heard.job.named)?.plain ?? false)
  const isPointed = message.some((token) => pointing.test(token.stem))
  const rest = message.filter((token) => !pointing.test(token.stem))
  if (!(isPointed || isOfPlain) || !saysNothingElse(rest, foundIn(rest, asks))) return undefined
  const earlier = resultsWanted(heard)
  const isOther = (word: string): boolean =>
    only.bare !== null ? /(Multiple|Share)$/.test(word) : /(Sum|Difference|Ratio)$/.test(word)
  for (const { word } of asked.filter((it) => isOther(it.word)))
    for (const result of earlier) {
      const kind = (result.value as Quantity).kind
      const plain = plains.find(({ calc, values }) => values.list && values.kind === kind && calc.gives[word])
      const number = Object.values(plain?.calc.needs ?? {}).find((it) => it.kind === 'count')
      if (!plain || (only.bare !== null ? !number : only.quantity?.kind !== kind)) continue
      const told = [
        { word: plain.values.name, at: yard, from: from(result.ref) },
        { word: only.bare !== null ? (number as Word).name : plain.values.name, at: yard, from: from(only.tag) },
      ]
      return { ...empty, told, wants: [{ word, at: yard }], calculation: plain.calc.name }
    }
  return undefined
}

/** "Add those two": the number says how many were noted. */
export const countsEarlier = ({ readings }: Heard, message: readonly Token[]): boolean =>
  readings.length === 1 &&
  /^(two|three|four|2|3|4)$/i.test(readings[0]?.said ?? '') &&
  readings[0]?.bare !== null &&
  /^(those|these|them|the|all|of)$/.test(message[message.findIndex((token) => token.tag) - 1]?.stem ?? '')

/** "And in inches?", "what is that in mm?", "add those two": of what was worked before. */
export function ofEarlier(
  heard: Heard,
  message: readonly Token[],
  asked: readonly Found[],
  inUnits: readonly Found[],
): Request | undefined {
  const words = message.filter((token) => /\p{L}/u.test(token.text))
  if (words.length > 8 || heard.job.asked.length > 0) return undefined
  const earlier = resultsWanted(heard)
  const pointed = words.some(({ stem }) => /^(that|it|this|those|them|these|both|two)$/.test(stem))
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
  // "120 ft and 38 ft 6 in", and then "add those two": they were noted, and nothing was worked.
  for (const { word } of pointed || earlier.length === 0 ? asked : []) {
    const plain = plains.find(({ calc, values }) => values.list && calc.gives[word] && isNoted(values, heard))
    if (!plain || /(Multiple|Share|Product|Part)$/.test(word)) continue
    return { ...empty, wants: [{ word, at: yard }], calculation: plain.calc.name }
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

/** Whether values of that word were told before, two or more, and nothing was made of them. */
const isNoted = (values: Word, { job }: Heard): boolean =>
  job.decisions.some(({ word, value }) => word === values.name && Array.isArray(value) && value.length > 1) &&
  job.results.length === 0
