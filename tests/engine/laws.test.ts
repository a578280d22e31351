// Every calculation, at random: an outcome always, never NaN, never a throw. `npm run soak` runs the same a hundred thousand times each.
import { describe, expect, it } from 'vitest'
import { type Calculation, run } from '../../engine/calculation.ts'
import { catalogue } from '../../engine/catalogue.ts'
import type { Given } from '../../engine/outcome.ts'
import { isExact, toNumber } from '../../engine/quantities/amount.ts'
import {
  amountIn,
  isList,
  isQuantity,
  type Quantity,
  type System,
  type Value,
} from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { unitNamed } from '../../engine/quantities/units.ts'
import { parseValue } from '../../engine/words/value.ts'
import type { Word } from '../../engine/words/word.ts'
import { alwaysGivesAnOutcome, readsAsShown } from './laws.ts'
import { givenOf, systemOf } from './run-named.ts'

const inputsEach = 2_000

describe.each(catalogue.map((calc) => [calc.name, calc] as const))('%s', (_, calc) => {
  it(`gives an outcome for ${inputsEach} random inputs`, () => alwaysGivesAnOutcome(calc, inputsEach, 20_260_501))

  it.each(calc.examples.map((example) => [example.ask, example] as const))(
    'gives an outcome for each of its results alone, and without each of its inputs: %s',
    (_ask, { given }) => {
      const told = givenOf(calc.name, given, systemOf(given))
      const lacking = [told, ...[...told.keys()].map((left) => new Map([...told].filter(([name]) => name !== left)))]
      for (const wanted of Object.keys(calc.gives))
        for (const some of lacking)
          expect(() => run(calc, some, { system: systemOf(given), wanted: [wanted] }), wanted).not.toThrow()
    },
  )

  it.each(calc.examples.map((example) => [example.ask, example] as const))(
    'what it shows reads again as the same: %s',
    (_ask, { given }) => {
      const outcome = runWith(calc, givenOf(calc.name, given, systemOf(given)), systemOf(given))
      const shown = [...outcome.values.values()].flatMap((value) =>
        isList(value) ? [...value] : isQuantity(value) ? [value] : [],
      )
      expect(shown.filter((q) => !readsAsShown(q)).map(show)).toEqual([])
    },
  )

  it.each(calc.examples.map((example) => [example.ask, example] as const))(
    'told in the units of the other system it gives the same: %s',
    (_ask, { given }) => {
      const system = systemOf(given)
      const first = runWith(calc, givenOf(calc.name, given, system), system)
      // What was taken as usual in the first system is told too, so that both work on the same.
      const told = new Map(
        [...first.given].map(([name, it]) => [name, { ...it, value: restated(calc.needs[name] as Word, it.value) }]),
      )
      const again = runWith(calc, told, system === 'metric' ? 'imperial' : 'metric')
      for (const [name, value] of first.values) expect(differences(value, again.values.get(name)), name).toEqual([])
    },
  )
})

function runWith(calc: Calculation, told: ReadonlyMap<string, Given>, system: System) {
  const outcome = run(calc, told, { system })
  if (!outcome.ok) throw new Error(outcome.problems.map((it) => it.message).join(' '))
  return outcome
}

const pairs = [
  ['in', 'mm'],
  ['ft', 'm'],
  ['in2', 'mm2'],
  ['ft2', 'm2'],
  ['in3', 'mm3'],
  ['ft3', 'L'],
  ['yd3', 'm3'],
  ['gal', 'L'],
  ['lb', 'kg'],
  ['ton', 'tonne'],
  ['F', 'C'],
  ['dF', 'dC'],
  ['lbf', 'N'],
  ['psi', 'MPa'],
  ['psi', 'GPa'],
  ['lb/ft2', 'kPa'],
  ['psf/ft', 'kPa/m'],
  ['mph', 'm/s'],
  ['lb/ft3', 'kg/m3'],
  ['ft2/gal', 'm2/L'],
  ['lb/ft', 'kg/m'],
  ['lbf-ft', 'N-m'],
] as const
const otherUnit = (unit: string): string | undefined => {
  const [imperial, metric] = pairs.find((it) => it.includes(unit as never)) ?? []
  return unit === imperial ? metric : imperial
}

/** The same value written in a unit of the other system, and read again: 3 1/2 in as 889/10 mm. What has no other unit stays. */
function restated(word: Word, value: Value): Value {
  if (isList(value)) return value.map((it) => restated({ ...word, list: false }, it) as Quantity)
  const unit = isQuantity(value) ? otherUnit(value.unit) : undefined
  if (!isQuantity(value) || unit === undefined) return value
  const amount = amountIn(value, unit)
  const text = `${isExact(amount) ? amount.toFraction() : toNumber(amount)} ${unit}`
  const read = parseValue({ ...word, list: false }, text, unitNamed(unit).system === 'metric' ? 'metric' : 'imperial')
  if (!isQuantity(read)) throw new Error(`“${text}” does not read as ${word.name}`)
  expect(read.unit).toBe(unit)
  return read
}

/** Where two values differ: exact ones by anything at all, approximate ones by more than a billionth. */
function differences(a: Value | undefined, b: Value | undefined): string[] {
  const [one, other] = [a, b].map((it) => (isList(it) ? it : [it]))
  if (one?.length !== other?.length) return [`${one?.length} values, then ${other?.length}`]
  return (one ?? []).flatMap((x, i) => {
    const y = other?.[i]
    if (!isQuantity(x) || !isQuantity(y)) return x === y ? [] : [`${x} is not ${y}`]
    const alike =
      isExact(x.amount) && isExact(y.amount)
        ? x.amount.equals(y.amount)
        : Math.abs(toNumber(x.amount) - toNumber(y.amount)) <= Math.abs(toNumber(x.amount)) * 1e-9
    return alike ? [] : [`${show(x)} is not ${show(y)}`]
  })
}
