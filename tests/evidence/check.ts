// This file is about evidence: one figure of a calculation held against a value that is not our own arithmetic restated.
import { calculationNamed } from '../../engine/catalogue.ts'
import type { Solver } from '../../engine/cutting/solver.ts'
import { isQuantity, numberIn, type System } from '../../engine/quantities/quantity.ts'
import { type Ran, runNamed } from '../engine/run-named.ts'

/**
 * Where the value comes from, the strongest first:
 * `published` somebody else printed this answer · `handbook` a standard's or handbook's table or formula ·
 * `library` another program works it, with numbers and units of its own · `second derivation` we work it again by another method, named in `source` ·
 * `reference` a worked example of our reference book, whose arithmetic is its own.
 */
export type EvidenceKind = 'published' | 'handbook' | 'library' | 'second derivation' | 'reference'

export interface Check {
  readonly calculation: string
  /** What is compared, in a short line: `concrete in a 12 in hole with a 4x4 and 6 in of stone`. */
  readonly what: string
  readonly kind: EvidenceKind
  /** Title, edition, table or page, and the address where it was read; for a second derivation, the method. */
  readonly source: string
  /** The example of the reference book that this is, by its id. */
  readonly reference?: string
  readonly given: Readonly<Record<string, string | readonly string[]>>
  readonly system?: System
  readonly confirmed?: readonly string[]
  /** What is handed in, where the calculation does better with it. */
  readonly solver?: Solver
  /** The result that is compared, and the unit it is compared in (`ratio` for plain numbers, the noun for counts, `verdict` for yes and no). */
  readonly gives: string
  readonly unit: string
  /** How to find the figure where it is no result of its own: in a table's row, for instance. In `unit`. */
  readonly got?: (ran: Ran) => number
  /** A verdict is 1 for yes, 0 for no, −1 for cannot say. */
  readonly expected: number | (() => number)
  /** How far off it may be, in `unit`: half of the last figure that the source prints, or what the comparison deserves. */
  readonly tolerance: number
}

export interface Checked extends Omit<Check, 'expected' | 'got'> {
  readonly expected: number
  readonly got: number
  readonly pass: boolean
}

/** Works one check. Throws when the calculation refuses: then the check itself is wrong. */
export function runCheck(check: Check): Checked {
  const ran = runNamed(check.calculation, check.given, {
    system: check.system,
    confirmed: check.confirmed,
    solver: check.solver,
    wanted: check.got ? undefined : [check.gives],
  })
  if (!ran.outcome.ok) throw new Error(`${check.calculation}, ${check.what}: ${ran.said}`)
  const got = check.got ? check.got(ran) : figure(check, ran)
  const expected = typeof check.expected === 'function' ? check.expected() : check.expected
  return { ...check, expected, got, pass: Math.abs(got - expected) <= check.tolerance }
}

function figure({ calculation, gives, unit }: Check, { outcome }: Ran): number {
  const value = outcome.ok ? outcome.values.get(gives) : undefined
  if (isQuantity(value)) return numberIn(value, value.kind === 'count' || value.kind === 'number' ? value.unit : unit)
  if (typeof value === 'boolean') return value ? 1 : 0
  if (value === null) return -1
  throw new Error(
    `${calculation} gives no single “${gives}” (${calculationNamed(calculation) ? '' : 'no such calculation'})`,
  )
}

/** What a line of the working gave, in a unit. */
export const step =
  (name: string, unit: string) =>
  ({ outcome }: Ran): number => {
    const value = outcome.ok ? outcome.steps.find((it) => it.gives === name)?.value : undefined
    if (!isQuantity(value)) throw new Error(`no step ${name}`)
    return numberIn(value, unit)
  }

/** 1 where the choice that comes out is this one, 0 where it is another. */
export const chosen =
  (word: string, option: string) =>
  ({ outcome }: Ran): number =>
    outcome.ok && outcome.values.get(word) === option ? 1 : 0
