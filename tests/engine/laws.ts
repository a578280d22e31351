// This file is about laws that hold for every calculation, whatever it is given.
import fc from 'fast-check'
import { type Calculation, run } from '../../engine/calculation.ts'
import type { Outcome } from '../../engine/outcome.ts'
import { toNumber } from '../../engine/quantities/amount.ts'
import { isList, isQuantity, numberIn, type Quantity, type Value } from '../../engine/quantities/quantity.ts'
import { readOne } from '../../engine/quantities/read.ts'
import { show } from '../../engine/quantities/show.ts'
import { type Inputs, inputsFor } from './random-inputs.ts'

/** Throws, naming the calculation and its inputs, when one of so many random inputs gives no proper outcome. */
export function alwaysGivesAnOutcome(calc: Calculation, runs: number, seed: number): void {
  fc.assert(
    fc.property(inputsFor(calc), (inputs) => {
      const { outcome, text } = outcomeOf(calc, inputs)
      if (!outcome.ok) {
        for (const problem of outcome.problems)
          if (!problem.message || /NaN|undefined|Infinity/.test(problem.message))
            throw new Error(`a problem without its words: “${problem.message}” for ${text}`)
        return
      }
      for (const [name, value] of outcome.values) for (const q of quantitiesIn(value)) sound(q, name, text)
      for (const step of outcome.steps) {
        for (const q of quantitiesIn(step.value)) sound(q, step.gives, text)
        if (/NaN|undefined|Infinity/.test(`${step.substituted} ${step.result}`))
          throw new Error(`step ${step.gives} reads “${step.substituted} = ${step.result}” for ${text}`)
      }
      const said = [...outcome.remarks, ...outcome.doubts.map((it) => it.message)].join(' ')
      if (/NaN|undefined|Infinity|\[object/.test(said)) throw new Error(`it says “${said}” for ${text}`)
      if (outcome.drawing && /NaN|undefined|Infinity/.test(outcome.drawing))
        throw new Error(`no proper drawing for ${text}`)
      const cells = outcome.tables.flatMap((table) => table.rows.flat())
      if (cells.some((cell) => /NaN|undefined|Infinity/.test(String(cell))))
        throw new Error(`no proper table for ${text}`)
    }),
    { numRuns: runs, seed, endOnFailure: true },
  )
}

function outcomeOf(calc: Calculation, { system, told, confirmed, wanted }: Inputs): { outcome: Outcome; text: string } {
  const text = `${calc.name} (${system}; ${wanted.join(', ')}) ${[...told].map(([name, { value }]) => `${name}: ${written(value)}`).join(', ')}`
  try {
    return { outcome: run(calc, told, { system, confirmed, wanted }), text }
  } catch (fault) {
    throw new Error(`thrown for ${text}: ${fault instanceof Error ? fault.message : String(fault)}`, { cause: fault })
  }
}

const quantitiesIn = (value: Value): readonly Quantity[] => (isList(value) ? value : isQuantity(value) ? [value] : [])

const written = (value: Value): string =>
  isList(value) ? `[${value.map(show).join('; ')}]` : isQuantity(value) ? show(value) : String(value)

function sound(q: Quantity, name: string, text: string): void {
  if (!Number.isFinite(toNumber(q.amount))) throw new Error(`${name} is ${toNumber(q.amount)} for ${text}`)
  if (/NaN|undefined|Infinity/.test(show(q))) throw new Error(`${name} shows as “${show(q)}” for ${text}`)
}

/** What is shown reads again as the same quantity, as near as it was shown: read(show(x)) = x. */
export function readsAsShown(q: Quantity): boolean {
  const again = readOne(show(q))
  if (!again) return false
  if (q.kind === 'count' || q.kind === 'number')
    return again.bare !== null && near(Number(again.bare.valueOf()), numberIn(q, q.unit))
  // A worked moisture is shown to a tenth of a point.
  if (q.kind === 'percent')
    return (
      again.quantity?.kind === 'percent' &&
      Math.abs(numberIn(again.quantity, 'percent') - numberIn(q, 'percent')) <=
        Math.max(0.05, numberIn(q, 'percent') * 0.001)
    )
  // And a worked difference of temperatures to a tenth of a degree.
  if (q.kind === 'temperatureDifference')
    return (
      again.quantity?.kind === q.kind &&
      Math.abs(numberIn(again.quantity, q.unit) - numberIn(q, q.unit)) <= Math.max(0.05, numberIn(q, q.unit) * 0.001)
    )
  return again.quantity?.kind === q.kind && near(numberIn(again.quantity, q.unit), numberIn(q, q.unit))
}

// Approximate values are shown to four figures.
const near = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(Math.abs(b) * 0.001, 1e-4)
