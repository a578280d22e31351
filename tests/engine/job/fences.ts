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

/** What is told of a whole fence, its runs left out. */
export const oneFence: Told = {
  widestBay: '8 ft',
  picketWidth: '3 1/2 in',
  widestGap: '2 1/2 in',
  picketLength: '42 in',
  picketThickness: '3/4 in',
  postAbove: '4 ft',
  postWidth: '3 1/2 in',
  holeDiameter: '10 in',
  bagWeight: '60 lb',
  species: 'southern-pine',
  moistureNow: '19 %',
  railDepth: '3 1/2 in',
  railThickness: '1 1/2 in',
  coverageFirst: '300 ft2/gal',
  postPrice: '$18.49',
  railPrice: '$7.25',
  picketPrice: '$3.19',
  bagPrice: '$6.75',
}

// front 3 + 5 bays and a gate, right 11 (it steps down), back 8, left 4 and a double gate, lane 6, drive 7: 44 bays
export const yardOfSix: Told = {
  ...oneFence,
  'runLength@front': '60 ft',
  'runLength@right': '84 ft',
  'runLength@back': '60 ft',
  'runLength@left': '40 ft',
  'runLength@lane': '44 ft',
  'runLength@drive': '50 ft',
  'gateOpening@front': '42 in',
  'gateStart@front': '20 ft',
  'gateOpening@left': '10 ft',
  'gateLeaves@left/gate-1': 'double',
  'fall@right': '40 in',
  'slopeWay@right': 'stepped',
}
