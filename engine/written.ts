// This file is about one calculation worked from inputs as people write them, without a conversation.
import { type Calculation, run } from './calculation.ts'
import type { Solver } from './cutting/solver.ts'
import type { Given, Outcome, Problem } from './outcome.ts'
import { isList, isQuantity, type System } from './quantities/quantity.ts'
import { unitNamed } from './quantities/units.ts'
import { parseValue } from './words/value.ts'
import { inSentence } from './words/word.ts'

/**
 * Works a calculation on texts, numbers and lists of both: `{ opening: '93 in', picketWidth: '3 1/2 in', sides: ['60 ft', '40 ft'] }`.
 * A bare number is in the unit of its word. Results are metric when any input is written in a metric unit, else imperial.
 * An input that is unknown or cannot be read is a problem of the outcome; null and undefined count as not given. Never throws for what was written.
 * `confirmed` names inputs whose odd value the person stands by; others are asked about and not worked.
 */
export function workWritten(
  calc: Calculation,
  inputs: Readonly<Record<string, unknown>>,
  options: { readonly solver?: Solver; readonly confirmed?: readonly string[] } = {},
): Outcome {
  const problems: Problem[] = []
  const system = systemIn(calc, inputs)
  const told = new Map<string, Given>()
  for (const [key, input] of Object.entries(inputs)) {
    const word = wordOf(calc, key)
    if (!word) {
      problems.push({
        code: 'unreadable',
        word: key,
        message: `“${key}” is not an input of ${calc.name}. Its inputs are: ${Object.keys(calc.needs).join(', ')}.`,
      })
      continue
    }
    if (input === null || input === undefined) continue
    const text = textOf(input)
    const value = text === undefined ? undefined : parseValue(word, text, system)
    if (value === undefined)
      problems.push({
        code: 'unreadable',
        word: key,
        message: `I cannot read ${JSON.stringify(input)} as ${inSentence(word)}. ${word.measure}`,
        ask: word.ask,
      })
    else told.set(key, { value, role: 'said' })
  }
  return problems.length > 0
    ? { ok: false, given: told, problems, cited: [] }
    : run(calc, told, {
        system,
        wanted: wantedWith(calc.onlyFor ?? {}, told, Object.keys(calc.gives)),
        confirmed: new Set(options.confirmed),
        solver: options.solver,
      })
}

const wordOf = (calc: Calculation, name: string) => (Object.hasOwn(calc.needs, name) ? calc.needs[name] : undefined)

/** One value as text; a list with semicolons between its values, which no quantity holds. */
const textOf = (input: unknown): string | undefined =>
  typeof input === 'string' || typeof input === 'number'
    ? String(input)
    : Array.isArray(input) && input.every((it) => typeof it === 'string' || typeof it === 'number')
      ? input.join('; ')
      : undefined

/** Metric when any input is written in a metric unit. */
function systemIn(calc: Calculation, inputs: Readonly<Record<string, unknown>>): System {
  for (const [key, input] of Object.entries(inputs)) {
    const word = wordOf(calc, key)
    const text = textOf(input)
    const value = word && text !== undefined ? parseValue(word, text, 'imperial') : undefined
    const first = isList(value) ? value[0] : value
    if (isQuantity(first) && unitNamed(first.unit).system === 'metric') return 'metric'
  }
  return 'imperial'
}

/** What can be wanted of what was given: a result that hangs on an input left out is not asked for, unless nothing else is left. */
function wantedWith(
  onlyFor: Readonly<Record<string, readonly string[] | undefined>>,
  told: ReadonlyMap<string, Given>,
  all: readonly string[],
): string[] {
  const out = new Set(Object.entries(onlyFor).flatMap(([need, results]) => (told.has(need) ? [] : (results ?? []))))
  const left = all.filter((it) => !out.has(it))
  return left.length > 0 ? left : [...all]
}
