// This file is about what to ask next, and what is still assumed: in the order of how much each could change what is bought.
import { usualFor } from '../calculation.ts'
import { vocabulary } from '../catalogue.ts'
import type { Problem } from '../outcome.ts'
import { yard } from '../places.ts'
import { exact, isExact, over, times, toNumber, add } from '../quantities/amount.ts'
import { isList, isQuantity, type Quantity, type Value } from '../quantities/quantity.ts'
import type { Usual, Word } from '../words/word.ts'
import { decide, type Job } from './job.ts'
import { looksAt, ownName } from './parts.ts'
import type { Memo, Node, Plan } from './node.ts'
import { planOf } from './plan.ts'

/** The question most worth asking, and what cannot be worked without its answer. */
export interface NextQuestion {
  readonly word: string
  readonly at: string
  readonly question: string
  /** Labels of what waits for it. */
  readonly waits: readonly string[]
}

/** Questions still open about the fence, the one that most waits for first. */
export function openQuestions(job: Job, memo: Memo, turn: number): NextQuestion[] {
  const plan = planOf(job, memo, turn)
  if (!plan) return []
  const open = new Map<string, { problem: Problem; waits: Set<string> }>()
  for (const name of looksAt)
    for (const { outcome } of plan.answer(name, yard)) {
      const lacking = outcome.ok ? outcome.doubts : outcome.problems
      for (const problem of lacking.filter((it) => it.ask)) {
        const key = `${problem.word}@${problem.at ?? yard}`
        const known = open.get(key) ?? { problem, waits: new Set() }
        known.waits.add((vocabulary.get(name) as Word).label)
        open.set(key, known)
      }
    }
  return [...open.values()]
    .sort((a, b) => b.waits.size - a.waits.size)
    .map(({ problem, waits }) => ({
      word: problem.word,
      at: problem.at ?? yard,
      question: problem.ask as string,
      waits: [...waits],
    }))
}

/** Something that nobody said, and what the bill would do if it were otherwise. */
export interface Assumption {
  readonly word: string
  readonly at: string
  readonly value: Value
  readonly usual: Usual
  /** What it was tried with instead. */
  readonly tried: Value
  /** The line of the take-off that changes most, before and after; nothing where none does. */
  readonly moves:
    | { readonly word: string; readonly before: Value; readonly after: Value; readonly share: number }
    | undefined
}

const tenth = exact('11/10')

/** How finely one measures, and what a price is for, is no guess about the fence. */
const isOfTheTape = new Set(['tapeMark', 'stoneUnit'])

/** All that is assumed in the plan, what moves the bill most first. A size is tried a tenth larger, a choice as its next option. */
export function assumptionsOf(job: Job, memo: Memo, turn: number): Assumption[] {
  const plan = planOf(job, memo, turn)
  if (!plan) return []
  const found = new Map<string, Pick<Assumption, 'word' | 'at' | 'value' | 'usual'>>()
  for (const node of worked(plan))
    for (const [name, given] of node.outcome.given) {
      const word = vocabulary.get(name) as Word
      const usual = given.role === 'assumed' ? (given.usual ?? usualFor(node.part.calculation, word)) : undefined
      if (usual && !found.has(name) && !isOfTheTape.has(name))
        found.set(name, { word: name, at: yard, value: given.value, usual })
    }
  return [...found.values()]
    .map((it): Assumption => {
      const tried = otherwise(vocabulary.get(it.word) as Word, it.value)
      return { ...it, tried, moves: moved(job, plan, it.word, tried, memo, turn) }
    })
    .sort((a, b) => (b.moves?.share ?? 0) - (a.moves?.share ?? 0))
}

/** Every part that what a person looks at hangs on. */
function worked(plan: Plan): Node[] {
  const seen = new Set<Node>()
  const open = looksAt.flatMap((name) => plan.answer(name, yard))
  while (open.length > 0) {
    const node = open.pop() as Node
    if (seen.has(node)) continue
    seen.add(node)
    for (const origin of node.origins.values())
      if (origin.from === 'worked') open.push(origin.node)
      else if (origin.from === 'fence') open.push(...origin.nodes)
  }
  return [...seen]
}

function otherwise(word: Word, value: Value): Value {
  if (isList(value)) return value.map((it) => larger(word, it))
  if (isQuantity(value)) return larger(word, value)
  const options = Object.keys(word.options ?? {})
  return typeof value === 'string' ? (options[(options.indexOf(value) + 1) % options.length] ?? value) : value
}

/** A tenth larger; of what is counted one more, of shares five points, and of nothing a little. */
export function larger(word: Word, q: Quantity): Quantity {
  if (q.kind === 'count') return { ...q, amount: add(q.amount, exact(1)) }
  if (q.kind === 'percent') return { ...q, amount: add(q.amount, over(exact(5), exact(100))) }
  if (toNumber(q.amount) === 0) return { ...q, amount: exact(word.kind === 'length' ? 1 : 0) }
  return { ...q, amount: isExact(q.amount) ? q.amount.mul(tenth) : times(q.amount, tenth) }
}

/** What one word, told anew, moves most: the bill where it is known, else the line whose share changes most. */
export function moved(job: Job, plan: Plan, word: string, tried: Value, memo: Memo, turn: number): Assumption['moves'] {
  const other = planOf(decide(job, [{ word, at: yard, value: tried, turn }]), memo, turn)
  if (!other) return undefined
  const lines = looksAt.flatMap((name) => {
    const [before, after] = [valueIn(plan, name), valueIn(other, name)]
    if (!isQuantity(before) || !isQuantity(after)) return []
    const was = toNumber(before.amount)
    const share = was === 0 ? 0 : Math.abs(toNumber(after.amount) - was) / was
    return share > 0 ? [{ word: name, before, after, share }] : []
  })
  const bill = lines.find((it) => it.word === 'takeOffCost')
  return bill ?? lines.sort((a, b) => b.share - a.share)[0]
}

export function valueIn(plan: Plan, name: string): Value | undefined {
  const node = plan.node(name, yard)
  return node?.outcome.ok ? node.outcome.values.get(ownName(node.part, name)) : undefined
}
