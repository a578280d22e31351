// This file is about why a figure is what it is: the path from what was told, step by step, to the value.
import { vocabulary } from '../catalogue.ts'
import type { Given, Table } from '../outcome.ts'
import { placeLabel, yard } from '../places.ts'
import { isList, isQuantity, type Value } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import type { Word } from '../words/word.ts'
import { decided, decidedAt } from './job.ts'
import type { Node, Origin, Plan } from './node.ts'
import { gatheredFrom } from './over-all.ts'
import { ownName } from './parts.ts'

const deepest = 12
const mostRows = 60

/** A value as it is shown in a table; a long list by its first and last. */
export function showValue(word: Word, value: Value): string {
  if (isList(value))
    return value.length > 6
      ? `${value.slice(0, 3).map(show).join(', ')} … ${show(value.at(-1) as (typeof value)[number])} (${value.length})`
      : value.map(show).join(', ')
  if (isQuantity(value)) return show(value)
  if (typeof value === 'string') return word.options?.[value]?.label ?? value
  return value === null
    ? (word.says?.unknown ?? 'cannot say')
    : value
      ? (word.says?.yes ?? 'yes')
      : (word.says?.no ?? 'no')
}

/** The path to a word's value, from the value down to what was told and taken as usual; nothing where no part gives it. */
export function pathOf(plan: Plan, wordName: string, at: string): Table | undefined {
  const nodes = plan.answer(wordName, at).filter((it) => it.outcome.ok)
  if (nodes.length === 0) return undefined
  const rows: string[][] = []
  let left = 0
  const seen = new Set<Node>()
  const label = (name: string, depth: number): string => `${'· '.repeat(depth)}${vocabulary.get(name)?.label ?? name}`
  const add = (name: string, value: Value, where: string, from: string, depth: number): void => {
    const word = vocabulary.get(name)
    if (!word) return
    if (rows.length < mostRows)
      rows.push([label(name, depth), placeLabel(where) || 'yard', showValue(word, value), from])
    else left++
  }
  const go = (node: Node, name: string, depth: number): void => {
    const { outcome, part } = node
    if (!outcome.ok) return
    const isKnown = seen.has(node) || depth >= deepest
    const value = outcome.values.get(ownName(part, name))
    const by = `worked: ${part.calculation.title.toLowerCase()}${isKnown ? ', see above' : ''}`
    if (value !== undefined) add(name, value, node.at, by, depth)
    if (isKnown) return
    seen.add(node)
    const uses = namesIn(node, ownName(part, name))
    const under: (() => void)[] = []
    // What was told stands first, so that no long working parts it from what it is told for.
    for (const [need, given] of outcome.given) {
      if (!uses.has(need)) continue
      const origin = node.origins.get(need)
      const called = part.takes?.[need] ?? need
      const own = (): void =>
        add(called, given.value, placeOf(origin, node.at), sourceOf(plan, node, need, given, origin), depth + 1)
      if (origin?.from === 'worked' && given.role === 'result')
        under.push(() => go(origin.node, origin.word, depth + 1))
      else if (origin?.from === 'fence' && origin.nodes.length > 0)
        under.push(() => {
          own()
          const head = (it: Node): string => gatheredFrom(need) ?? headOf(it, need)
          for (const it of new Set(origin.nodes)) if (!seen.has(it)) go(it, head(it), depth + 2)
        })
      else own()
    }
    for (const each of under) each()
  }
  for (const node of nodes) go(node, wordName, 0)
  if (left > 0) rows.push([`and ${left} more`, '', '', 'ask for one of the figures above to see what lies under it'])
  return {
    title: 'How it comes about',
    columns: ['what', 'where', 'value', 'from'].map((it) => ({ label: it, unit: '' })),
    rows,
  }
}

/** The given words that a result hangs on, through the lines that were worked; all of them where something stands in no line. */
function namesIn({ part, outcome }: Node, result: string): ReadonlySet<string> {
  const told = new Set(outcome.given.keys())
  const worked = new Set(outcome.ok ? outcome.steps.map((it) => it.gives) : [])
  const found = new Set<string>()
  const open = [result]
  while (open.length > 0) {
    const name = open.pop() as string
    if (found.has(name)) continue
    found.add(name)
    if (told.has(name)) continue
    // What a branch, a search or a table decided: everything given may have had a part in it.
    if (!worked.has(name)) return told
    open.push(...(part.calculation.lines.get(name)?.line.names ?? []))
  }
  return found
}

/** What to name of a part that only stands behind what was counted: of a run its bays. */
const headOf = ({ part }: Node, need: string): string =>
  part.calculation.gives[need] ? need : (part.calculation.headlines[0] ?? need)

const placeOf = (origin: Origin | undefined, at: string): string =>
  origin?.from === 'told' ? origin.decision.at : origin ? at : yard

function sourceOf(plan: Plan, node: Node, need: string, given: Given, origin: Origin | undefined): string {
  if (origin?.from === 'told') return `you said, turn ${origin.decision.turn + 1}`
  if (given.role === 'assumed') return 'taken as usual'
  if (given.role === 'result') return 'counted on the fence as laid out'
  const turns = [...new Set(turnsOf(plan, node, need))].sort((a, b) => a - b).map((it) => it + 1)
  return turns.length === 0 ? 'you said' : `you said, turn${turns.length > 1 ? 's' : ''} ${turns.join(' and ')}`
}

/** The turns in which was told what a run, a gate or several kinds of post are given together. */
function turnsOf({ job, fence }: Plan, { part, at, places }: Node, need: string): number[] {
  const name = part.takes?.[need] ?? need
  const run = fence.runs.find((it) => it.place === at)
  const gates = run?.gates ?? fence.runs.flatMap((it) => it.gates).filter((it) => it.place === at)
  const from: Readonly<Record<string, readonly (number | undefined)[]>> = {
    runLength: [run?.length?.turn],
    gateOpenings: gates.map((it) => it.opening?.turn),
    gateOpening: gates.map((it) => it.opening?.turn),
    gateStarts: gates.map((it) => it.start?.turn),
    nearEnd: [(decidedAt(job, name, at) ?? decided(job, 'runEnds', at))?.turn],
    farEnd: [(decidedAt(job, name, at) ?? decided(job, 'runEnds', at))?.turn],
  }
  return (from[name] ?? places.map((it) => decided(job, name, it)?.turn)).filter((it) => it !== undefined)
}
