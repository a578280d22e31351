// This file is about fences in tests: told in texts, `word@place`, and worked without anybody talking.
import { vocabulary } from '../../../engine/catalogue.ts'
import { type Decision, decide, type Job, newJob } from '../../../engine/job/job.ts'
import { type Memo, newMemo, type Plan } from '../../../engine/job/node.ts'
import { ownName } from '../../../engine/job/parts.ts'
import { planOf } from '../../../engine/job/plan.ts'
import { isList, isQuantity, type Quantity, type System, type Value } from '../../../engine/quantities/quantity.ts'
import { toNumber } from '../../../engine/quantities/amount.ts'
import { show } from '../../../engine/quantities/show.ts'
import { parseValue } from '../../../engine/words/value.ts'

export type Told = Readonly<Record<string, string>>

/** Decisions from texts, each word at the yard or, as `picketWidth@front`, at its place. */
export const decisionsOf = (told: Told, turn = 0, system: System = 'imperial'): Decision[] =>
  Object.entries(told).map(([key, text]) => {
    const [name = '', at = 'yard'] = key.split('@')
    const word = vocabulary.get(name)
    if (!word) throw new Error(`no word ${name}`)
    const value = parseValue(word, text, system)
    if (value === undefined) throw new Error(`“${text}” does not read as ${name}`)
    return { word: name, at, value, turn }
  })

export const jobOf = (told: Told, system: System = 'imperial'): Job => ({
  ...decide(newJob, decisionsOf(told, 0, system)),
  system,
})

export function planFrom(job: Job, memo: Memo = newMemo(), turn = 0): Plan {
  const plan = planOf(job, memo, turn)
  if (!plan) throw new Error('no run is told')
  return plan
}

/** A word's value as its part gives it; what is lacking is thrown, since a test that asks for it expects a value. */
export function valueAt(plan: Plan, word: string, at = 'yard'): Value {
  const node = plan.node(word, at)
  if (!node) throw new Error(`no part gives ${word} at ${at}`)
  if (!node.outcome.ok) throw new Error(`${word} at ${at}: ${node.outcome.problems.map((it) => it.message).join(' ')}`)
  const value = node.outcome.values.get(ownName(node.part, word))
  if (value === undefined) throw new Error(`${node.part.calculation.name} at ${at} does not give ${word} yet`)
  return value
}

export const shownOf = (plan: Plan, word: string, at = 'yard'): string => {
  const value = valueAt(plan, word, at)
  return isList(value) ? value.map(show).join('; ') : isQuantity(value) ? show(value) : String(value)
}

export const numberOf = (plan: Plan, word: string, at = 'yard'): number =>
  toNumber((valueAt(plan, word, at) as Quantity).amount)

/** How many posts of each kind, those that do not occur left out. */
export function kindsOf({ posts }: Plan): Readonly<Record<string, number>> {
  const kinds: Record<string, number> = {}
  for (const { kind } of posts) kinds[kind] = (kinds[kind] ?? 0) + 1
  return kinds
}
