// This file is about the job: what has been decided at which place, what was asked last, and how it is written down.
import Fraction from 'fraction.js'
import type { Country } from '../by-country.ts'
import { vocabulary } from '../catalogue.ts'
import { type Amount, compare, isExact } from '../quantities/amount.ts'
import { isList, isQuantity, type Quantity, type System, type Value } from '../quantities/quantity.ts'
import { looksFrom } from '../places.ts'

export interface Decision {
  readonly word: string
  readonly at: string
  readonly value: Value
  /** The turn it was said in. */
  readonly turn: number
}

export interface Wanted {
  readonly word: string
  readonly at: string
}

/** What was asked back; `between` are the ways in which the person's own words could be read. */
export interface Asked extends Wanted {
  readonly between?: readonly string[]
}

/** A result of the last working, kept so that a change can be shown as before → after. */
export interface Result extends Wanted {
  readonly value: Value
  readonly calculation: string
  readonly ref: string
}

export interface Job {
  readonly decisions: readonly Decision[]
  readonly system: System | null
  readonly confirmed: readonly string[]
  readonly wanted: readonly Wanted[]
  /** The calculation of the last working, where it was named. */
  readonly named: string | null
  readonly asked: readonly Asked[]
  readonly results: readonly Result[]
  /** Codes of the cautions already said in full. */
  readonly told: readonly string[]
}

export const newJob: Job = {
  decisions: [],
  system: null,
  confirmed: [],
  wanted: [],
  named: null,
  asked: [],
  results: [],
  told: [],
}

/** Decides a word at a place; an earlier decision there is replaced, and so is what an earlier turn said that it puts out of date. */
export function decide(job: Job, decisions: readonly Decision[]): Job {
  const replaced = (old: Decision): boolean =>
    decisions.some(
      (it) =>
        it.at === old.at &&
        (it.word === old.word || (old.turn < it.turn && vocabulary.get(it.word)?.replaces?.includes(old.word))),
    )
  const confirmed = job.confirmed.filter((word) => !decisions.some((it) => it.word === word))
  return { ...job, confirmed, decisions: [...job.decisions.filter((old) => !replaced(old)), ...decisions] }
}

/** What was decided for a word, at the place or above it. A word that does not inherit holds at its own place only. */
export function decided(job: Job, wordName: string, place: string): Decision | undefined {
  const known = job.decisions.filter((it) => it.word === wordName)
  const places =
    vocabulary.get(wordName)?.inherits === false
      ? [place]
      : looksFrom(
          place,
          known.map((it) => it.at),
        )
  for (const at of places) {
    const found = known.find((it) => it.at === at)
    if (found) return found
  }
  return undefined
}

// Two approximate amounts within their errors are the same: nothing that a person could notice has changed.
const sameQuantity = (a: Quantity, b: Quantity): boolean =>
  a.kind === b.kind && Math.abs(compare(a.amount, b.amount) ?? 0) === 0

export function sameValue(a: Value, b: Value): boolean {
  if (isQuantity(a) && isQuantity(b)) return sameQuantity(a, b)
  if (isList(a) && isList(b)) return a.length === b.length && a.every((q, i) => sameQuantity(q, b[i] as Quantity))
  return a === b
}

/** Whether the person speaks in metric: by the last length or volume they said. */
export function systemOf(job: Job): System {
  return job.system ?? 'imperial'
}

/** Where the fence is, once it was said. */
export const countryOf = (job: Job): Country | undefined =>
  job.decisions.find((it) => it.word === 'country')?.value as Country | undefined

// ── writing down ──
// Exact amounts are written as fractions (`565/8`), approximate ones with their error, so that reading gives the same job.

type WrittenAmount = string | { value: number; error: number }
type WrittenValue = string | boolean | null | WrittenQuantity | WrittenQuantity[]
interface WrittenQuantity {
  kind: Quantity['kind']
  amount: WrittenAmount
  unit: string
}

const writeAmount = (a: Amount): WrittenAmount => (isExact(a) ? a.toFraction() : { value: a.value, error: a.error })
const readAmount = (a: WrittenAmount): Amount => (typeof a === 'string' ? new Fraction(a) : a)
const writeQuantity = (q: Quantity): WrittenQuantity => ({ kind: q.kind, amount: writeAmount(q.amount), unit: q.unit })
const readQuantity = (q: WrittenQuantity): Quantity => ({ kind: q.kind, amount: readAmount(q.amount), unit: q.unit })

export const writeValue = (value: Value): WrittenValue =>
  isList(value) ? value.map(writeQuantity) : isQuantity(value) ? writeQuantity(value) : value
export const readValue = (value: WrittenValue): Value =>
  Array.isArray(value)
    ? value.map(readQuantity)
    : typeof value === 'object' && value !== null
      ? readQuantity(value)
      : value

export type WrittenJob = Omit<Job, 'decisions' | 'results'> & {
  readonly decisions: readonly (Omit<Decision, 'value'> & { readonly value: WrittenValue })[]
  readonly results: readonly (Omit<Result, 'value'> & { readonly value: WrittenValue })[]
}

export const writeJob = (job: Job): WrittenJob => ({
  ...job,
  decisions: job.decisions.map((it) => ({ ...it, value: writeValue(it.value) })),
  results: job.results.map((it) => ({ ...it, value: writeValue(it.value) })),
})

export const readJob = (written: WrittenJob): Job => ({
  ...written,
  decisions: written.decisions.map((it) => ({ ...it, value: readValue(it.value) })),
  results: written.results.map((it) => ({ ...it, value: readValue(it.value) })),
})
