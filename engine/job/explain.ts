// This file is about why a figure is what it is: the path from what was told, step by step, to the value.
import { vocabulary } from '../catalogue.ts'
import type { Given, Table } from '../outcome.ts'
import { placeLabel, yard } from '../places.ts'
import { isList, isQuantity, type Value } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import type { Word } from '../words/word.ts'
import { ownName } from './parts.ts'
import type { Node, Origin, Plan } from './node.ts'

const deepest = 6
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
  const seen = new Set<Node>()
  const label = (name: string, depth: number): string => `${'· '.repeat(depth)}${vocabulary.get(name)?.label ?? name}`
  const add = (name: string, value: Value, where: string, from: string, depth: number): void => {
    const word = vocabulary.get(name)
    if (word && rows.length < mostRows)
      rows.push([label(name, depth), placeLabel(where) || 'yard', showValue(word, value), from])
  }
  const go = (node: Node, name: string, depth: number): void => {
    const { outcome, part } = node
    if (!outcome.ok) return
    if (seen.has(node) && depth > 0) return
    const value = outcome.values.get(ownName(part, name))
    if (value !== undefined) add(name, value, node.at, `worked: ${part.calculation.title.toLowerCase()}`, depth)
    if (depth >= deepest) return
    seen.add(node)
    const uses = namesIn(node, ownName(part, name))
    for (const [need, given] of outcome.given) {
      if (!uses.has(need)) continue
      const origin = node.origins.get(need)
      if (origin?.from === 'worked' && given.role === 'result') go(origin.node, origin.word, depth + 1)
      else {
        add(need, given.value, placeOf(origin, node.at), sourceOf(given, origin), depth + 1)
        if (origin?.from === 'fence')
          for (const under of [...new Set(origin.nodes)]) go(under, headOf(under, need), depth + 2)
      }
    }
  }
  for (const node of nodes) go(node, wordName, 0)
  return {
    title: 'How it comes about',
    columns: ['what', 'where', 'value', 'from'].map((it) => ({ label: it, unit: '' })),
    rows,
  }
}

/** The given words that a result hangs on, through the lines of its calculation; all of them where no line gives it. */
function namesIn({ part, outcome }: Node, result: string): ReadonlySet<string> {
  const { lines } = part.calculation
  const found = new Set<string>()
  const open = [result]
  const worked = outcome.ok ? new Set(outcome.steps.map((it) => it.gives)) : new Set<string>()
  while (open.length > 0) {
    const name = open.pop() as string
    if (found.has(name)) continue
    found.add(name)
    if (worked.has(name) || name === result) open.push(...(lines.get(name)?.line.names ?? []))
  }
  // What a search or a table decides stands in no line: then everything given may have had a part in it.
  const told = [...outcome.given.keys()]
  return told.some((it) => found.has(it)) &&
    lines.has(result) &&
    isPlain(part.calculation.lines.get(result)?.line.names ?? [], lines, told)
    ? found
    : new Set(told)
}

/** Whether every name that a line uses is given, or another line. */
const isPlain = (names: readonly string[], lines: ReadonlyMap<string, unknown>, told: readonly string[]): boolean =>
  names.every((it) => lines.has(it) || told.includes(it))

/** What to name of a part that only stands behind a list: the runs' bays behind the bays of all. */
const headOf = ({ part }: Node, need: string): string =>
  part.calculation.gives[need] ? need : need === 'runPosts' ? 'posts' : (part.calculation.headlines[0] ?? need)

const placeOf = (origin: Origin | undefined, at: string): string =>
  origin?.from === 'told' ? origin.decision.at : origin ? at : yard

function sourceOf(given: Given, origin: Origin | undefined): string {
  if (origin?.from === 'told') return `you said, turn ${origin.decision.turn + 1}`
  if (given.role === 'assumed') return 'taken as usual'
  if (given.role === 'said' || given.role === 'known') return 'you said'
  return 'counted on the fence as laid out'
}
