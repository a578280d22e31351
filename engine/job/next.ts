// This file is about what to ask next, and what is still assumed: in the order of how much each could change what is bought.
import { usualFor } from '../calculation.ts'
import { vocabulary } from '../catalogue.ts'
import type { Problem } from '../outcome.ts'
import { yard } from '../places.ts'
import { type Amount, exact, isExact, over, times, toNumber, add } from '../quantities/amount.ts'
import { isList, isQuantity, type Quantity, type Value } from '../quantities/quantity.ts'
import { unitNamed } from '../quantities/units.ts'
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
/** Less than this, one in a thousand, is no change to speak of. */
const leastShare = 0.001

/** How finely one measures, and what a price is for, is no guess about the fence. */
const isOfTheTape = new Set(['tapeMark', 'stoneUnit'])

/** All that is assumed in the plan, what moves the bill most first. A size is tried a little larger, a choice as its next option. */
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
    .sort(byMove)
}

/** What moves the bill comes first, then what moves something else, most of it first. */
export const byMove = (a: Pick<Assumption, 'moves'>, b: Pick<Assumption, 'moves'>): number =>
  Number(b.moves?.word === bill) - Number(a.moves?.word === bill) || (b.moves?.share ?? 0) - (a.moves?.share ?? 0)
const bill = 'takeOffCost'

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
  if (isList(value)) return value.map((it) => larger(it))
  if (isQuantity(value)) return larger(value)
  const options = Object.keys(word.options ?? {})
  return typeof value === 'string' ? (options[(options.indexOf(value) + 1) % options.length] ?? value) : value
}

/** By as much as it easily comes out otherwise: an inch on a hole, one more of what is counted, five points of a share, else a tenth. */
export function larger(q: Quantity): Quantity {
  if (q.kind === 'count') return { ...q, amount: add(q.amount, exact(1)) }
  if (q.kind === 'percent') return { ...q, amount: add(q.amount, over(exact(5), exact(100))) }
  if (q.kind === 'length') return { ...q, amount: add(q.amount, stepOf(q)) }
  return { ...q, amount: isExact(q.amount) ? q.amount.mul(tenth) : times(q.amount, tenth) }
}

/** In inches, as all lengths are kept: an eighth or 3 mm on what is thin, else 1 in or 25 mm, on what is longer than a yard 6 in or 150 mm, on a run a foot or 300 mm. */
function stepOf(q: Quantity): Amount {
  const inches = toNumber(q.amount)
  const [imperial, metric] = inches < 2 ? ['1/8', 3] : inches < 36 ? [1, 25] : inches < 240 ? [6, 150] : [12, 300]
  return unitNamed(q.unit).system === 'metric' ? over(exact(metric), exact('127/5')) : exact(imperial)
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
  // A bill that holds other things than before is another bill: then it says nothing of what this changes.
  const [was, is] = [plan.node(bill, yard), other.node(bill, yard)]
  const isSame = was?.outcome.ok && is?.outcome.ok && was.outcome.remarks.join() === is.outcome.remarks.join()
  const most = lines.filter((it) => it.word !== bill).sort((a, b) => b.share - a.share)[0]
  const move = (isSame ? lines.find((it) => it.word === bill) : undefined) ?? most
  return move && move.share >= leastShare ? move : undefined
}

export function valueIn(plan: Plan, name: string): Value | undefined {
  const node = plan.node(name, yard)
  return node?.outcome.ok ? node.outcome.values.get(ownName(node.part, name)) : undefined
}
