// This file is about what a message said that nothing took: it is named to the person, and no verdict passes over it.
import { isQuantity, sameValue, vocabulary, type Worked } from '../engine/index.ts'
import type { Held } from './guard/bindings.ts'
import type { Tagged } from './readers/reader.ts'
import type { Request } from './request.ts'

/** The quantities of the message that stand for no word and are no turn of phrase. */
export function unusedOf(readings: readonly Tagged[], request: Request, held: readonly Held[]): Tagged[] {
  const used = (it: Tagged): boolean =>
    request.told.some((told) => told.from.tag === it.tag || told.from.quote?.includes(it.said)) ||
    // "4x4s, actual 3 1/2 in": the name says again what the size said.
    (it.section !== undefined &&
      held.some((other) => isQuantity(other.value) && sameValue(other.value, it.section?.width ?? null)))
  // "between two walls", "the one by the drive": a small number in words is seldom a measure that somebody missed.
  // A date or an hour tells when, and few questions hang on it; 811 is who to call.
  const isTurnOfPhrase = (it: Tagged): boolean =>
    it.quantity?.kind === 'date' ||
    it.clock === true ||
    (it.bare !== null && /^(one|two|a couple|a pair|811)\b/i.test(it.said))
  // "three sides: 40 ft, 60 ft and 40 ft": the three says how many values there are, and there are as many.
  const countsValues = (it: Tagged): boolean =>
    held.some(
      ({ word }) => vocabulary.get(word)?.list && it.bare?.equals(held.filter((other) => other.word === word).length),
    )
  return readings.filter((it) => !used(it) && !isTurnOfPhrase(it) && !countsValues(it))
}

/** A verdict that might have been another with what was not understood says neither yes nor that nothing fails. */
export const withoutYes = (worked: readonly Worked[], unused: readonly Tagged[]): Worked[] =>
  worked.map((it) => {
    const { outcome } = it
    if (unused.length === 0 || !outcome.ok || ![...outcome.values.values()].includes(true)) return it
    const values = new Map([...outcome.values].map(([word, value]) => [word, value === true ? null : value] as const))
    return { ...it, outcome: { ...outcome, values } }
  })
