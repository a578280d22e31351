// This file is about what a change touches that is already bought or built, and where what was told and what is worked disagree.
import { vocabulary } from '../catalogue.ts'
import { inPlace, yard } from '../places.ts'
import { negative, subtract, toNumber } from '../quantities/amount.ts'
import { isQuantity, less, type Quantity, type Value } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { atNearestMark } from '../quantities/tape.ts'
import { boughtOf } from '../words/so-far.ts'
import { inSentence, type Word } from '../words/word.ts'
import { showValue } from './explain.ts'
import { decidedAt, type Decision, type Job, sameValue } from './job.ts'
import { valueIn } from './next.ts'
import type { Memo, Node, Plan } from './node.ts'
import { ownName } from './parts.ts'
import { planOf } from './plan.ts'

/** A thing that was bought, beside what the fence takes now. */
export interface Bought {
  readonly word: string
  readonly bought: Quantity
  readonly needed: Quantity
  /** What is still to buy; less than none where more lies there than the fence takes. */
  readonly open: Quantity
}

/** What was bought of each thing that the fence takes. */
export function boughtSoFar(plan: Plan): Bought[] {
  return boughtOf.flatMap(({ bought, needed }) => {
    const have = decidedAt(plan.job, bought.name, yard)?.value
    const takes = valueIn(plan, needed)
    if (!isQuantity(have) || !isQuantity(takes)) return []
    return [
      { word: needed, bought: have, needed: takes, open: { ...takes, amount: subtract(takes.amount, have.amount) } },
    ]
  })
}

const stages = ['holes', 'posts', 'rails', 'pickets'] as const
/** What moves or is cut anew where one of these changes, and so touches what is built. */
const builtFrom: Readonly<Record<(typeof stages)[number], readonly string[]>> = {
  holes: ['postStations', 'holeDepth', 'holeDiameter'],
  posts: ['postStations', 'postLength'],
  rails: ['railCut'],
  pickets: ['pickets', 'gap'],
}

/** What a change touches that is bought or built, in sentences; nothing where it touches none of it. */
export function touched(before: Job, after: Job, memo: Memo, turn: number): string[] {
  const [was, is] = [planOf(before, memo, turn), planOf(after, memo, turn)]
  if (!was || !is || before.moves === after.moves) return []
  return [...ofBought(was, is), ...ofBuilt(was, is)]
}

function ofBought(was: Plan, is: Plan): string[] {
  const earlier = new Map(boughtSoFar(was).map((it) => [it.word, it] as const))
  return boughtSoFar(is).flatMap(({ word, bought, needed, open }) => {
    const before = earlier.get(word)
    if (before && sameValue(before.needed, needed) && sameValue(before.bought, bought)) return []
    const rest = toNumber(open.amount)
    const left: Quantity = { ...open, amount: rest < 0 ? negative(open.amount) : open.amount }
    if (rest < 0) return [`You have ${show(bought)}, and the fence takes ${show(needed)} now: ${show(left)} too many.`]
    return [
      `You have ${show(bought)} of the ${show(needed)} the fence takes${rest === 0 ? '' : `: ${show(left)} still to buy`}.`,
    ]
  })
}

function ofBuilt(was: Plan, is: Plan): string[] {
  return is.fence.runs.flatMap(({ place }) => {
    const done = decidedAt(is.job, 'doneSoFar', place)?.value ?? decidedAt(is.job, 'doneSoFar', yard)?.value
    const reached = stages.indexOf(done as (typeof stages)[number])
    const moved = stages
      .slice(0, reached + 1)
      .filter((stage) => builtFrom[stage].some((word) => differs(was, is, word, place)))
    if (moved.length === 0) return []
    const label = (stage: string): string => `the ${stage}`
    return [
      `On ${inPlace(place)} ${moved.map(label).join(' and ')} are done already: this would be work done again there.`,
    ]
  })
}

/** Whether a word comes out differently anywhere in a run. */
function differs(was: Plan, is: Plan, word: string, run: string): boolean {
  const all = (plan: Plan): Value[] => {
    const told = decidedAt(plan.job, word, yard)?.value
    const nodes = plan.answer(word, run)
    const values = nodes.flatMap(({ outcome, part }) =>
      outcome.ok ? (outcome.values.get(ownName(part, word)) ?? []) : [],
    )
    return [...(told === undefined ? [] : [told]), ...values]
  }
  const [a, b] = [all(was), all(is)]
  return a.length !== b.length || a.some((value, i) => !sameValue(value, b[i] as Value))
}

/** What was told, beside what a part of the fence would give in its place: what was told governs. */
export interface Rival {
  readonly decision: Decision
  readonly worked: Value
  /** By which way. */
  readonly by: string
}

/** Told words that the fence would have worked otherwise: a depth beside the rule's, a bay as built beside the bay as planned. */
export function rivalsOf(job: Job, told: readonly Decision[], memo: Memo, turn: number): Rival[] {
  return told.flatMap((decision) => {
    const without: Job = { ...job, decisions: job.decisions.filter((it) => it !== decision) }
    const plan = planOf(without, memo, turn)
    const found = plan?.answer(decision.word, decision.at)[0] ?? ofKinds(plan, decision) ?? laidOut(plan, decision)
    if (!found) return []
    const value =
      'value' in found
        ? found.value
        : found.outcome.ok
          ? found.outcome.values.get(ownName(found.part, decision.word))
          : undefined
    const by = 'value' in found ? 'the run as it is set out' : `“${found.part.calculation.title}”`
    return value === undefined || sameValue(value, decision.value) ? [] : [{ decision, worked: value, by }]
  })
}

/** Told of all posts: what the fence gives for the first kind that has it. */
const ofKinds = (plan: Plan | undefined, { word, at }: Decision): Node | undefined =>
  plan && at === yard
    ? [...new Set(plan.posts.map((it) => it.kind))].map((kind) => plan.node(word, kind)).find((it) => it !== undefined)
    : undefined

function laidOut(plan: Plan | undefined, { word, at }: Decision): { value: Value } | undefined {
  if (!plan || (word !== 'opening' && word !== 'bayCentres')) return undefined
  const bay = plan.runs.flatMap((it) => it.bays).find((it) => it.place === at)
  return bay && { value: word === 'opening' ? bay.opening : bay.centres }
}

const marked = (q: Quantity): Quantity => atNearestMark(q) ?? q
const byTape = (value: Value): Value => (isQuantity(value) ? marked(value) : value)

/** As a sentence: what was told is used, and the other is named with its way. */
export function rivalText({ decision, worked, by }: Rival): string {
  const word = vocabulary.get(decision.word) as Word
  const [a, b] = [decision.value, worked]
  const apart =
    isQuantity(a) && isQuantity(b) && a.kind === 'length' && a.kind === b.kind
      ? `, ${show(marked({ ...a, amount: less(a, b) ? subtract(b.amount, a.amount) : subtract(a.amount, b.amount) }))} ${less(a, b) ? 'less' : 'more'}`
      : ''
  return `You said ${showValue(word, decision.value)} for ${inSentence(word)}; ${by} gives ${showValue(word, byTape(worked))}. I use yours${apart}.`
}
