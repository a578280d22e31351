// This file is about outcomes that are kept: by what went into them, and handed out again with the roles of whoever gives it now.
import type { Calculation } from '../calculation.ts'
import type { Given, Outcome } from '../outcome.ts'
import { valueKey } from './job.ts'

/** The same working, given by others: who said what may differ, and nothing else. */
export function regiven(known: Outcome, given: ReadonlyMap<string, Given>): Outcome {
  const roles = new Map([...known.given].map(([name, it]) => [name, given.get(name) ?? it] as const))
  if (!known.ok) return { ...known, given: roles }
  return {
    ok: true,
    given: roles,
    values: known.values,
    steps: known.steps,
    doubts: known.doubts,
    sources: known.sources,
    tables: known.tables,
    remarks: known.remarks,
    cited: known.cited,
    get drawing() {
      return known.drawing
    },
  }
}

export function keyOf(
  calculation: Calculation,
  given: ReadonlyMap<string, Given>,
  wanted: readonly string[],
  places: readonly string[],
  confirmed: readonly string[],
  system: string,
): string {
  const told = [...given].map(([name, { value, role }]) => `${name}=${valueKey(value)}${role === 'assumed' ? '?' : ''}`)
  return [calculation.name, system, wanted.length, places.join(), confirmed.join(), ...told].join('|')
}
