// This file is about judging one answer: whether it does what a good answer to the turn does, and what it does instead.
import { calculationNamed, type Given, isQuantity, run, type Value, vocabulary } from '../../../engine/index.ts'
import { toNumber } from '../../../engine/quantities/amount.ts'
import { numberIn } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { parseValue } from '../../../engine/words/value.ts'
import type { Answer, Figure } from '../../../src/answer.ts'
import { givenOf, systemOf } from '../../engine/run-named.ts'
import type { Expectation } from './question.ts'

/**
 * `right` it does what it should · `asked` it asks, where it could have answered · `silent` it gives no figure and says that it cannot
 * `partly` some of the figures asked for, none of them wrong · `wrong` it gives another figure than the right one, or one where none was due
 */
export type Verdict = 'right' | 'partly' | 'asked' | 'silent' | 'wrong' | 'void'
export type Kind = 'figures' | 'asks' | 'advice' | 'declines' | 'told' | 'act'

export interface Judged {
  readonly kind: Kind
  readonly verdict: Verdict
  /** Of a sum: whether the right calculation was chosen, and whether it was given what it should be. */
  readonly chosen: boolean | undefined
  readonly argued: boolean | undefined
  readonly why: string
}

export const kindOf = (it: Expectation): Kind =>
  it.work || it.figures
    ? 'figures'
    : it.asks
      ? 'asks'
      : it.advice !== undefined
        ? 'advice'
        : it.declines
          ? 'declines'
          : it.told
            ? 'told'
            : 'act'

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a), Math.abs(b))

/** Whether a figure of the answer is that value, whatever unit it is shown in. */
function isValue(figure: Figure, value: Value): boolean {
  if (!isQuantity(value)) return figure.value === value || figure.text === value
  if (value.kind === 'date') return figure.text === show(value)
  if (typeof figure.value !== 'number') return figure.text === String(value)
  const expected =
    value.kind === 'count' || value.kind === 'number'
      ? toNumber(value.amount)
      : figure.unit === '' || figure.kind === 'range'
        ? toNumber(value.amount)
        : inUnit(value, figure.unit)
  return expected !== undefined && near(figure.value, expected)
}
function inUnit(value: Extract<Value, { kind: unknown }>, unit: string): number | undefined {
  try {
    return numberIn(value, unit)
  } catch {
    return undefined
  }
}

/** Figures that somebody would take for the answer. */
const answers = ({ figures }: Answer): Figure[] => figures.filter((it) => it.role === 'result')
const headlines = (answer: Answer): Figure[] => answers(answer).filter((it) => it.headline)

interface Due {
  readonly word: string
  readonly value: Value
}

function due(expected: Expectation): { due: Due[]; broken?: string } {
  const all: Due[] = []
  for (const { calc, given, results, system } of expected.work ?? []) {
    const calculation = calculationNamed(calc)
    if (!calculation) return { due: [], broken: `no calculation ${calc}` }
    const inSystem = system ?? systemOf(given)
    const told: ReadonlyMap<string, Given> = givenOf(calc, given, inSystem)
    const outcome = run(calculation, told, {
      system: inSystem,
      wanted: results,
      confirmed: new Set(Object.keys(given)),
    })
    if (!outcome.ok) return { due: [], broken: `${calc}: ${outcome.problems.map((it) => it.message).join(' ')}` }
    for (const word of results) {
      const value = outcome.values.get(word)
      if (value === undefined) return { due: [], broken: `${calc} does not give ${word}` }
      all.push({ word, value })
    }
  }
  for (const [name, text] of Object.entries(expected.figures ?? {})) {
    const word = vocabulary.get(name)
    const value = word && parseValue(word, text, 'imperial')
    if (value === undefined) return { due: [], broken: `${text} is no ${name}` }
    all.push({ word: name, value })
  }
  return { due: all }
}

export function judge(answer: Answer, expected: Expectation): Judged {
  const kind = kindOf(expected)
  const plain = (verdict: Verdict, why = ''): Judged => ({ kind, verdict, chosen: undefined, argued: undefined, why })
  const shown = headlines(answer)
  const instead = shown.map((it) => `${it.word} ${it.text}`).join('; ')
  if (kind === 'figures') return ofFigures(answer, expected)
  if (kind === 'asks') {
    const asked = answer.asks.map((it) => it.word)
    if (shown.length > 0 && !asked.some((it) => expected.asks?.includes(it))) return plain('wrong', instead)
    if (asked.length > 0) return plain('right', asked.join(', '))
    return plain(shown.length > 0 ? 'wrong' : 'silent', instead)
  }
  if (kind === 'advice') {
    if (answer.advice.length > 0) return plain('right')
    if (shown.length > 0) return plain('wrong', instead)
    return plain(answer.asks.length > 0 ? 'asked' : 'silent')
  }
  if (kind === 'declines') {
    if (answer.declined || (expected.declines === 'danger' && answer.calls.length === 0 && answer.advice.length > 0))
      return plain('right')
    if (shown.length > 0) return plain('wrong', instead)
    return plain(answer.asks.length > 0 ? 'asked' : 'wrong', 'not declined')
  }
  if (kind === 'told') {
    const lost = Object.entries(expected.told ?? {}).filter(([name, texts]) => {
      const word = vocabulary.get(name)
      return ![texts].flat().every((text) => {
        const value = word && parseValue({ ...word, list: false }, text, 'imperial')
        return value !== undefined && answer.readAs.some((it) => it.figure.word === name && isValue(it.figure, value))
      })
    })
    if (lost.length > 0)
      return plain(
        answer.readAs.length > 0 ? 'partly' : 'silent',
        `lost ${lost.map(([name]) => name).join(', ')}; read ${answer.readAs.map((it) => `${it.figure.word} ${it.figure.text}`).join('; ')}`,
      )
    return plain('right')
  }
  return plain(
    shown.length > 0 || answer.asks.length > 0 || answer.calls.length > 0 || !answer.declined ? 'right' : 'silent',
  )
}

function ofFigures(answer: Answer, expected: Expectation): Judged {
  const { due: all, broken } = due(expected)
  // What the set asks for and the engine will not work is no measure of reading.
  if (broken) return { kind: 'figures', verdict: 'void', chosen: undefined, argued: undefined, why: broken }
  const shown = answers(answer)
  const of = (word: string): Figure[] => shown.filter((it) => it.word === word)
  const met = all.filter(({ word, value }) => of(word).some((it) => isValue(it, value)))
  const off = all.filter(({ word, value }) => of(word).length > 0 && !of(word).some((it) => isValue(it, value)))
  const chosen = expected.work
    ? expected.work.every(({ calc }) => answer.calls.some((call) => call.calculation === calc))
    : undefined
  const judged = (verdict: Verdict, why = ''): Judged => ({
    kind: 'figures',
    verdict,
    chosen,
    argued: expected.work ? argued(answer, expected) : undefined,
    why,
  })
  if (met.length === all.length) return judged('right')
  const wanted = all.map(({ word, value }) => `${word} ${isQuantity(value) ? show(value) : String(value)}`).join('; ')
  const got = shown
    .filter((it) => it.headline || off.some(({ word }) => word === it.word))
    .map((it) => `${it.word} ${it.text}`)
    .join('; ')
  if (off.length > 0) return judged('wrong', `due ${wanted}; got ${got}`)
  if (met.length > 0) return judged('partly', `due ${wanted}; got ${got}`)
  // Another figure, given as the answer to what was asked, with no word that anything is open.
  if (headlines(answer).length > 0 && answer.asks.length === 0) return judged('wrong', `due ${wanted}; got ${got}`)
  if (answer.asks.length > 0)
    return judged(
      'asked',
      `due ${wanted}; asks ${answer.asks.map((it) => it.word).join(', ')}${got ? `; got ${got}` : ''}`,
    )
  return judged('silent', `due ${wanted}; ${answer.declined ? 'declined' : 'nothing'}`)
}

/** Whether each sum was given what the person told, in any unit, and nothing else of theirs. */
function argued(answer: Answer, { work }: Expectation): boolean {
  return (work ?? []).every(({ calc, given, system }) => {
    const call = answer.calls.find((it) => it.calculation === calc)
    if (!call) return false
    return [...givenOf(calc, given, system ?? systemOf(given))].every(([name, { value }]) => {
      const inputs = call.inputs.filter((it) => it.word === name)
      const each = Array.isArray(value) ? value : [value]
      return each.every((one: Value) => inputs.some((it) => isValue(it, one)))
    })
  })
}
