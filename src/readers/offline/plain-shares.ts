// This file is about shares: “7.5 % of $1,860”, “2/3 of 94 in”, “half of that”.
import { type Calculation, type Quantity, type Word, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { pointing } from './plain-onward.ts'
import { empty, from, plains, requestOf, resultsWanted, saysNothingElse } from './plain-phrases.ts'
import type { Token } from './stems.ts'

/** "7.5 % of $1,860", "2/3 of 94 in", "half of that": a share, and what it is a share of. */
export function shareOf(heard: Heard, message: readonly Token[]): Request | undefined {
  const measured = heard.readings.filter((it) => it.quantity !== null && it.firmness !== 'range')
  const bare = heard.readings.filter((it) => it.bare !== null && !it.proportion && it.firmness !== 'range')
  if (measured.length + bare.length < heard.readings.length || heard.job.asked.length > 0) return undefined
  return (
    percentOf(measured, bare, message) ??
    partOf(measured, bare, heard, message) ??
    splitOf(measured, bare, heard, message) ??
    partOfEarlier(bare, heard, message)
  )
}

/** "Half of that": of what was worked last. */
function partOfEarlier(bare: readonly Tagged[], heard: Heard, message: readonly Token[]): Request | undefined {
  const [part] = bare
  const [result] = resultsWanted(heard)
  const at = message.findIndex((token) => token.tag === part?.tag)
  const rest = message.filter((token) => !pointing.test(token.stem))
  if (!part?.bare || !result || heard.readings.length !== 1 || part.bare.compare(1) >= 0) return undefined
  if (message[at + 1]?.stem !== 'of' || !pointing.test(message[at + 2]?.stem ?? '') || !saysNothingElse(rest, []))
    return undefined
  const plain = plains.find(
    ({ calc, values }) => values.list && values.kind === (result.value as Quantity).kind && multipleIn(calc),
  )
  if (!plain) return undefined
  const number = Object.values(plain.calc.needs).find((it) => it.kind === 'count') as Word
  const told = [
    { word: number.name, at: yard, from: from(part.tag) },
    { word: plain.values.name, at: yard, from: from(result.ref) },
  ]
  return { ...empty, told, wants: [{ word: multipleIn(plain.calc) as string, at: yard }], calculation: plain.calc.name }
}

function percentOf(
  measured: readonly Tagged[],
  bare: readonly Tagged[],
  message: readonly Token[],
): Request | undefined {
  const percent = measured.find((it) => it.quantity?.kind === 'percent')
  const bases = [...measured.filter((it) => it !== percent), ...bare]
  const [base] = bases
  if (!percent || !base || bases.length !== 1 || percent.start > base.start) return undefined
  const at = message.findIndex((token) => token.tag === percent.tag)
  if (message[at + 1]?.stem !== 'of' || !saysNothingElse(message, [])) return undefined
  const kind = base.quantity?.kind ?? 'number'
  const plain = plains.find(({ calc, values }) => values.list && values.kind === kind && calc.needs[partPercent])
  const part = plain && Object.keys(plain.calc.gives).find((it) => it.endsWith('Part'))
  if (!plain || !part) return undefined
  const told = [
    { word: plain.values.name, at: yard, from: from(base.tag) },
    { word: partPercent, at: yard, from: from(percent.tag) },
  ]
  return { ...empty, told, wants: [{ word: part, at: yard }], calculation: plain.calc.name }
}

const partPercent = 'partPercent'

/** "Half of 7 13/16 in", "2/3 of 94 in": so many times, less than once. */
function partOf(
  measured: readonly Tagged[],
  bare: readonly Tagged[],
  heard: Heard,
  message: readonly Token[],
): Request | undefined {
  const [[of, ...others], [part, ...parts]] = [measured, bare]
  if (!of || !part || others.length > 0 || parts.length > 0 || part.start > of.start) return undefined
  if (!part.bare || part.bare.compare(1) >= 0) return undefined
  // “My neighbour pays half of $1,860”: of money, whatever else is said.
  if (of.quantity?.kind !== 'money' && !saysNothingElse(message, [])) return undefined
  const at = message.findIndex((token) => token.tag === part.tag)
  if (message[at + 1]?.stem !== 'of') return undefined
  const plain = plains.find(({ calc, values }) => values.list && values.kind === of.quantity?.kind && multipleIn(calc))
  return plain && requestOf(plain, multipleIn(plain.calc) as string, [part, of], [], heard, message)
}

const splits = /^(split|share|sharing|shared|divided|divide|halve|chip|chipping)$/
/** “We split $1,860 three ways”, “£960 shared between 4 of us”: what each pays. */
function splitOf(
  measured: readonly Tagged[],
  bare: readonly Tagged[],
  heard: Heard,
  message: readonly Token[],
): Request | undefined {
  const [[sum, ...others], [number, ...numbers]] = [measured, bare]
  if (!sum || !number || others.length > 0 || numbers.length > 0) return undefined
  if (sum.quantity?.kind !== 'money' || sum.per || number.bare?.d !== 1n || number.bare.compare(2) < 0) return undefined
  const at = message.findIndex((token) => token.tag === number.tag)
  const isWays =
    /^(way|of|neighbour|neighbor|people|house|family|household|share|part)$/.test(message[at + 1]?.stem ?? '') ||
    /^(between|among|amongst|by|with)$/.test(message[at - 1]?.stem ?? '')
  if (!isWays || !message.some((token) => splits.test(token.stem))) return undefined
  const plain = plains.find(({ calc, values }) => values.list && values.kind === 'money' && shareIn(calc))
  return plain && requestOf(plain, shareIn(plain.calc) as string, [sum, number], [], heard, message)
}

const shareIn = (calc: Calculation): string | undefined => Object.keys(calc.gives).find((it) => it.endsWith('Share'))

const multipleIn = (calc: Calculation): string | undefined =>
  Object.keys(calc.gives).find((it) => it.endsWith('Multiple'))
