// This file is about random inputs for any calculation, made from its words: likely ones, odd ones, edges, both systems of units.
import fc from 'fast-check'
import type { Calculation } from '../../engine/calculation.ts'
import { parseValue, unitFor } from '../../engine/words/value.ts'
import type { Given } from '../../engine/outcome.ts'
import { exact } from '../../engine/quantities/amount.ts'
import { dateOf } from '../../engine/quantities/calendar.ts'
import { isList, isQuantity, type Quantity, type System, type Value } from '../../engine/quantities/quantity.ts'
import { unitNamed } from '../../engine/quantities/units.ts'
import type { Word } from '../../engine/words/word.ts'

export interface Inputs {
  readonly system: System
  readonly told: ReadonlyMap<string, Given>
  readonly confirmed: ReadonlySet<string>
  /** The results that are wanted; all of them half of the time, else one. */
  readonly wanted: readonly string[]
}

/** A calculation's inputs; about one in ten words is left out. Every odd value counts as confirmed, so that it is worked. */
export function inputsFor(calc: Calculation): fc.Arbitrary<Inputs> {
  const words = Object.values(calc.needs)
  return fc
    .record({
      system: fc.constantFrom<System>('imperial', 'metric'),
      wanted: fc.oneof(
        fc.constant(Object.keys(calc.gives)),
        fc.constantFrom(...Object.keys(calc.gives)).map((name) => [name]),
      ),
      values: fc.tuple(...words.map((word) => fc.option(makeOf(word), { freq: 9, nil: undefined }))),
    })
    .map(({ system, values, wanted }) => {
      const told = new Map<string, Given>()
      words.forEach((word, i) => {
        const make = values[i]
        const value = make?.(system)
        if (value !== undefined) told.set(word.name, { value, role: 'said' })
      })
      return { system, told, confirmed: new Set(words.map((word) => word.name)), wanted }
    })
}

type Make = (system: System) => Value

function makeOf(word: Word): fc.Arbitrary<Make> {
  if (word.kind === 'choice') return fc.constantFrom(...Object.keys(word.options ?? {})).map((it) => () => it)
  if (!word.list) return oneOf(word)
  return fc
    .array(oneOf(word), { minLength: 1, maxLength: 7 })
    .map((makes) => (system) => makes.map((it) => it(system) as Quantity))
}

function oneOf(word: Word): fc.Arbitrary<Make> {
  if (word.kind === 'date')
    return fc.integer({ min: 0, max: 2000 }).map((days) => () => {
      const first = dateOf(2024, 1, 1) as Quantity
      return { ...first, amount: exact(Number(first.amount.valueOf()) + days) }
    })
  const [low, high] = [word.plausible?.from, word.plausible?.to].map((it) => limitOf(word, it))
  const [least, most] = [word.possible?.least ?? word.possible?.above, word.possible?.most].map((it) =>
    limitOf(word, it),
  )
  const from = low ?? least ?? 0
  const to = high ?? Math.max(from * 10, 100)
  const likely = fc.integer({ min: 0, max: 960 }).map((share) => from + ((to - from) * share) / 960)
  const odd = fc.constantFrom(
    ...[least ?? 0, from, to, most ?? to * 50, to * 1000, from / 7, to / 3, 1, 1 / 1024, 10_000, 1e7],
  )
  const rough = fc.oneof({ weight: 5, arbitrary: likely }, { weight: 2, arbitrary: odd })
  return rough.map((size) => (system) => {
    const unit = unitNamed(unitFor(word, system))
    // A count is whole; anything else falls on a sixteenth of the base unit or, in metric, on a tenth of its own.
    const amount = word.whole
      ? exact(Math.max(1, Math.round(size)))
      : system === 'metric' && !unit.zero
        ? exact(Math.round((size * 10) / unit.size.valueOf()))
            .div(10)
            .mul(unit.size)
        : exact(Math.round(size * 64)).div(64)
    return { kind: word.kind as Quantity['kind'], amount, unit: unit.name }
  })
}

/** A limit as a number in the base unit. */
function limitOf(word: Word, text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  const value = parseValue(word.list ? { ...word, list: false } : word, text, 'imperial')
  if (!isQuantity(value) || isList(value)) throw new Error(`the limit “${text}” of ${word.name} cannot be read`)
  return Number(value.amount.valueOf())
}
