// This file is about the evidence as a report: every calculation, what it reproduces, and what rests on habit alone.
import { catalogue } from '../../engine/catalogue.ts'
import { type Checked, runCheck } from './check.ts'
import { checks } from './checks.ts'
import { explained } from './explained.ts'

export interface Report {
  readonly calculations: readonly {
    readonly name: string
    readonly title: string
    readonly checks: readonly Checked[]
    /** Facts that rest on the trade's habit, or on memory: said so in every answer. */
    readonly unsourced: readonly { readonly fact: string; readonly from: string }[]
  }[]
  readonly explained: Readonly<Record<string, string>>
  readonly passed: number
  readonly failed: number
  /** Calculations without a check of their own. */
  readonly unchecked: readonly string[]
}

export function report(): Report {
  const done = checks.map(runCheck)
  const calculations = catalogue.map(({ name, title, sources }) => ({
    name,
    title,
    checks: done.filter((it) => it.calculation === name),
    unsourced: sources.filter((it) => /no source|from memory/i.test(it.from)),
  }))
  return {
    calculations,
    explained,
    passed: done.filter((it) => it.pass).length,
    failed: done.filter((it) => !it.pass).length,
    unchecked: calculations.filter((it) => it.checks.length === 0).map((it) => it.name),
  }
}
