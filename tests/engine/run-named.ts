// This file is about running a calculation in a test from texts, as people write them.
import { run } from '../../engine/calculation.ts'
import { calculationNamed } from '../../engine/catalogue.ts'
import type { Solver } from '../../engine/cutting/solver.ts'
import { parseValue } from '../../engine/words/value.ts'
import type { Given, Outcome } from '../../engine/outcome.ts'
import { isList, isQuantity, type System } from '../../engine/quantities/quantity.ts'
import { readOne } from '../../engine/quantities/read.ts'
import { show } from '../../engine/quantities/show.ts'
import { unitNamed } from '../../engine/quantities/units.ts'

export interface Ran {
  readonly outcome: Outcome
  readonly shown: Record<string, string>
  readonly said: string
}

export type Inputs = Readonly<Record<string, string | readonly string[]>>

/** The units that these inputs are written in: metric where any of them is. */
export const systemOf = (given: Inputs): System =>
  Object.values(given)
    .flat()
    .some((text) => {
      const read = readOne(text)?.quantity
      return read && unitNamed(read.unit).system === 'metric'
    })
    ? 'metric'
    : 'imperial'

/** Runs a calculation; lists are one text a place. `shown` is every result as `show` writes it; `said` joins problems or remarks and doubts. */
export function runNamed(
  name: string,
  given: Inputs,
  options: {
    system?: System
    wanted?: readonly string[]
    confirmed?: readonly string[]
    places?: readonly string[]
    solver?: Solver
  } = {},
): Ran {
  const calc = calculationNamed(name)
  if (!calc) throw new Error(`no calculation ${name}`)
  const system = options.system ?? 'imperial'
  const told = givenOf(name, given, system)
  const outcome = run(calc, told, {
    system,
    wanted: options.wanted,
    confirmed: new Set(options.confirmed),
    places: options.places,
    solver: options.solver,
  })
  const shown: Record<string, string> = {}
  if (outcome.ok)
    for (const [key, value] of outcome.values)
      shown[key] = isQuantity(value) ? show(value) : isList(value) ? value.map(show).join('; ') : String(value)
  const said = outcome.ok
    ? [...outcome.remarks, ...outcome.doubts.map((it) => it.message)].join(' ')
    : outcome.problems.map((it) => `${it.code} ${it.word}: ${it.message}`).join(' ')
  return { outcome, shown, said }
}

/** The inputs of a calculation from texts; lists are one text a value. */
export function givenOf(name: string, given: Inputs, system: System): Map<string, Given> {
  const calc = calculationNamed(name)
  if (!calc) throw new Error(`no calculation ${name}`)
  const told = new Map<string, Given>()
  for (const [key, text] of Object.entries(given)) {
    const word = calc.needs[key]
    if (!word) throw new Error(`${name} has no input ${key}`)
    const read = (it: string) => {
      const value = parseValue(word, it, system)
      if (value === undefined) throw new Error(`“${it}” does not read as ${key}`)
      return value
    }
    const value =
      typeof text === 'string' || word.list
        ? read(typeof text === 'string' ? text : text.join('; '))
        : text.map((it) => {
            const q = read(it)
            if (!isQuantity(q)) throw new Error('a list holds quantities')
            return q
          })
    told.set(key, { value, role: 'said' })
  }
  return told
}
