// This file is about whole plans side by side: what each comes to, line by line.
import { vocabulary } from '../catalogue.ts'
import type { Table } from '../outcome.ts'
import { yard } from '../places.ts'
import type { Value } from '../quantities/quantity.ts'
import type { Word } from '../words/word.ts'
import { showValue } from './explain.ts'
import { type Job, sameValue, type Wanted } from './job.ts'
import { looksAt, ownName } from './parts.ts'
import type { Memo, Plan } from './node.ts'
import { planOf } from './plan.ts'
import { work } from './work.ts'

/** A plan and the name that it was kept under. */
export interface Named {
  readonly name: string
  readonly job: Job
}

/** One line that plans are held against each other by. */
export interface Compared {
  readonly word: string
  readonly at: string
  /** In the order of the plans; undefined where a plan cannot give it yet. */
  readonly values: readonly (Value | undefined)[]
}

/** What the plans come to: of a whole fence what a person looks at first, and in any case what was asked last. */
export function compared(plans: readonly Named[], asked: readonly Wanted[], memo: Memo, turn: number): Compared[] {
  const each = plans.map(({ job }) => ({ job, plan: planOf(job, memo, turn) }))
  const whole = each.some((it) => it.plan) ? looksAt.map((word): Wanted => ({ word, at: yard })) : []
  const wanted = [
    ...whole,
    ...asked.filter((it) => !whole.some((other) => other.word === it.word && other.at === it.at)),
  ]
  return wanted
    .map(({ word, at }) => ({
      word,
      at,
      values: each.map(({ job, plan }) => valueIn(job, plan, word, at, memo, turn)),
    }))
    .filter(({ values }) => values.some((it) => it !== undefined))
}

function valueIn(
  job: Job,
  plan: Plan | undefined,
  word: string,
  at: string,
  memo: Memo,
  turn: number,
): Value | undefined {
  const node = plan?.node(word, at)
  if (node) return node.outcome.ok ? node.outcome.values.get(ownName(node.part, word)) : undefined
  const found = work(job, [{ word, at }], turn, { memo }).find((it) => it.wanted.includes(word) && it.at === at)
  return found?.outcome.ok ? found.outcome.values.get(word) : undefined
}

/** As a table, one column a plan; what is alike in all is left to the end. */
export function sideBySide(plans: readonly Named[], lines: readonly Compared[]): Table {
  const differs = ({ values }: Compared): boolean =>
    values.some(
      (it) =>
        (it === undefined) !== (values[0] === undefined) || (it !== undefined && !sameValue(it, values[0] as Value)),
    )
  const shown = [...lines.filter(differs), ...lines.filter((it) => !differs(it))]
  return {
    title: 'Side by side',
    columns: ['what', ...plans.map((it) => it.name)].map((label) => ({ label, unit: '' })),
    rows: shown.map((it) => {
      const word = vocabulary.get(it.word) as Word
      return [
        `${word.label}${differs(it) ? '' : ' (alike)'}`,
        ...it.values.map((value) => (value === undefined ? 'not known yet' : showValue(word, value))),
      ]
    }),
  }
}
