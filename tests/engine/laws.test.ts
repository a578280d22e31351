// Every calculation, at random: an outcome always, never NaN, never a throw. `npm run soak` runs the same a hundred thousand times each.
import { describe, expect, it } from 'vitest'
import { run } from '../../engine/calculation.ts'
import { catalogue } from '../../engine/catalogue.ts'
import { isList, isQuantity, type Quantity } from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { unitNamed } from '../../engine/quantities/units.ts'
import { alwaysGivesAnOutcome, readsAsShown } from './laws.ts'
import { givenOf } from './run-named.ts'

const inputsEach = 2_000

describe.each(catalogue.map((calc) => [calc.name, calc] as const))('%s', (_, calc) => {
  it(`gives an outcome for ${inputsEach} random inputs`, () => alwaysGivesAnOutcome(calc, inputsEach, 20_260_501))

  it.each(calc.examples.map((example) => [example.ask, example] as const))(
    'what it shows reads again as the same: %s',
    (_ask, example) => {
      const outcome = run(calc, givenOf(calc.name, example.given, 'imperial'), { system: 'imperial' })
      if (!outcome.ok) throw new Error(outcome.problems.map((it) => it.message).join(' '))
      const shown = [...outcome.values.values()].flatMap((value) =>
        isList(value) ? [...value] : isQuantity(value) ? [value] : [],
      )
      expect(shown.filter((q) => !readsAsShown(q)).map(show)).toEqual([])
    },
  )

  it.each(calc.examples.map((example) => [example.ask, example] as const))(
    'gives the same exact values in either system of units: %s',
    (_ask, example) => {
      // All that has a usual value in one system is said, so that both work on the same.
      const first = run(calc, givenOf(calc.name, example.given, 'imperial'), { system: 'imperial' })
      if (!first.ok) throw new Error(first.problems.map((it) => it.message).join(' '))
      const inMetric = run(
        calc,
        new Map([...first.given].map(([name, it]) => [name, { ...it, value: metric(it.value) }])),
        {
          system: 'metric',
        },
      )
      if (!inMetric.ok) throw new Error(inMetric.problems.map((it) => it.message).join(' '))
      for (const [name, value] of first.values) {
        const other = inMetric.values.get(name)
        const [a, b] = [amounts(value), amounts(other)]
        expect(b.length, name).toBe(a.length)
        for (const [i, x] of a.entries())
          expect(Math.abs(x - (b[i] as number)), name).toBeLessThanOrEqual(Math.abs(x) * 1e-9)
      }
    },
  )
})

const other: Readonly<Record<string, string>> = {
  in: 'mm',
  ft: 'm',
  yd: 'm',
  in2: 'm2',
  ft2: 'm2',
  in3: 'L',
  ft3: 'L',
  yd3: 'm3',
  gal: 'L',
  lb: 'kg',
  ton: 'tonne',
  F: 'C',
  lbf: 'N',
  psi: 'MPa',
}
const inOther = (q: Quantity): Quantity => ({ ...q, unit: unitNamed(other[q.unit] ?? q.unit).name })
const metric = <V>(value: V): V =>
  (isList(value as never)
    ? (value as readonly Quantity[]).map(inOther)
    : isQuantity(value as never)
      ? inOther(value as Quantity)
      : value) as V
const amounts = (value: unknown): number[] =>
  isList(value as never)
    ? (value as readonly Quantity[]).map((q) =>
        Number(q.amount instanceof Object && 'value' in q.amount ? q.amount.value : q.amount.valueOf()),
      )
    : isQuantity(value as never)
      ? amounts([value])
      : []
