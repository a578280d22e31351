// This file is about what every sheet of the field pack is made from: the plan, read word by word. No figure is worked here.
import type { CautionCode } from '../../cautions/caution.ts'
import type { Outcome, Problem, Table } from '../../outcome.ts'
import { placeLabel, yard } from '../../places.ts'
import { isList, isQuantity, type Quantity, type Value } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { atNearestMark, byTape } from '../../quantities/tape.ts'
import { decided, type Job } from '../job.ts'
import type { Post, RunLaid, Stretch } from '../laid-out.ts'
import type { Memo, Node, Plan } from '../node.ts'
import { looksAt, ownName } from '../parts.ts'
import type { CalendarEntry, Sheet } from '../sheets.ts'

export interface Site {
  readonly job: Job
  readonly plan: Plan
  readonly memo: Memo
  readonly turn: number
}

/** What else of the talk stands and goes into the pack beside the fence. */
export interface Beside {
  readonly sheets: readonly Sheet[]
  readonly cautions: readonly CautionCode[]
  readonly calendar: readonly CalendarEntry[]
}

type Worked = Extract<Outcome, { ok: true }>

export const workedAt = ({ plan }: Site, word: string, at: string): (Node & { outcome: Worked }) | undefined => {
  const node = plan.node(word, at)
  return node?.outcome.ok ? { ...node, outcome: node.outcome } : undefined
}

export function valueIn(node: Node | undefined, word: string): Value | undefined {
  return node?.outcome.ok ? node.outcome.values.get(ownName(node.part, word)) : undefined
}

export function sizeIn(node: Node | undefined, word: string): Quantity | undefined {
  const value = valueIn(node, word)
  return isQuantity(value) ? value : undefined
}

/** What a part was given for a word, at one of the places that it was worked for. */
export function givenIn(node: Node | undefined, word: string, at: string): Quantity | undefined {
  const value = node?.outcome.given.get(word)?.value
  if (isQuantity(value)) return value
  return isList(value) ? value[node?.places.indexOf(at) ?? -1] : undefined
}

export const optionIn = (node: Node | undefined, word: string): string | undefined => {
  const value = node?.outcome.given.get(word)?.value
  return typeof value === 'string' ? value : undefined
}

/** A size as it was told, or as a part gives it, at the place or above. */
export function sizeAt({ job, plan }: Site, word: string, at: string): Quantity | undefined {
  const value = decided(job, word, at)?.value ?? plan.worked(word, at)?.value
  return isQuantity(value) ? value : undefined
}

/** Exactly, and beside it at the nearest mark where that is another. */
export function figure(q: Quantity): string {
  const marked = atNearestMark(q)
  return marked ? `${show(q)} (${show(marked)} by the tape)` : show(q)
}
export const tapeOr = (q: Quantity | undefined): string => (q ? byTape(q) : '')

/** “1 to 3, 6”: numbers in order, those that follow one another together. */
export function numbers(all: readonly number[]): string {
  const groups: [number, number][] = []
  for (const number of all) {
    const last = groups.at(-1)
    if (last && last[1] === number - 1) last[1] = number
    else groups.push([number, number])
  }
  return groups
    .map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from} to ${to}`))
    .join(', ')
}

export const stretchName = ({ run, bays }: Stretch): string =>
  `${placeLabel(run)}, ${bays.length === 1 ? 'bay' : 'bays'} ${numbers(bays.map((it) => it.number))}`

/** “corner post”, and of one that a gate hangs at where two runs meet both. */
export function postName(post: Post): string {
  const kind = placeLabel(post.kind).replace(/s$/, '')
  return post.kind === 'gate-posts' && post.stands.length > 1 ? 'gate and corner post' : kind
}

/** The posts of one run as they stand along it: a post that two runs share is the same post in both. */
export function postsAlong({ plan }: Site, laid: RunLaid): Post[] {
  return laid.stations.flatMap(
    (station) =>
      plan.posts.find((post) => post.stands.some((it) => it.run === laid.run.place && it.station === station)) ?? [],
  )
}

/** What stands in a column is written in it once only, where its rows have it at all. */
export const columns = (...labels: readonly string[]): Table['columns'] => labels.map((label) => ({ label, unit: '' }))

/** Words that no person looks at first and a sheet is made from all the same. */
const ofTheSheets = [
  'pickets',
  'railCut',
  'leafWidth',
  'picketsEachGate',
  'stepEach',
  'archLength',
  'braceLength',
  'takeOffLines',
  'postBoards',
  'railSticks',
  'picketSticks',
  'boardsToCut',
  'firstDigDay',
  'lastTicketDay',
  'finishDate',
]
const ofKinds = ['postLength', 'holeDepth']

/** Every part that stands on a sheet, and what it hangs on. */
export function allNodes({ plan }: Site): Node[] {
  const kinds = [...new Set(plan.posts.map((it) => it.kind))]
  const open = [
    ...[...looksAt, ...ofTheSheets].flatMap((name) => plan.answer(name, yard)),
    ...kinds.flatMap((kind) => ofKinds.flatMap((name) => plan.node(name, kind) ?? [])),
  ]
  const seen = new Map<string, Node>()
  while (open.length > 0) {
    const node = open.pop() as Node
    const key = `${node.part.calculation.name} ${Object.values(node.part.as ?? {}).join()} ${node.at}`
    if (seen.has(key)) continue
    seen.set(key, node)
    for (const origin of node.origins.values())
      if (origin.from === 'worked') open.push(origin.node)
      else if (origin.from === 'fence') open.push(...origin.nodes)
  }
  return [...seen.values()]
}

/** What the sheets lack, each thing once. */
export const lackingIn = (nodes: readonly Node[]): Problem[] => {
  const all = nodes.flatMap(({ outcome }) => (outcome.ok ? outcome.doubts : outcome.problems))
  return [...new Map(all.map((it) => [`${it.word}@${it.at ?? yard} ${it.ask ? '' : it.message}`, it])).values()]
}

/** Remarks of several parts, each said once. */
export const remarksOf = (nodes: readonly (Node | undefined)[]): string[] => [
  ...new Set(nodes.flatMap((it) => (it?.outcome.ok ? it.outcome.remarks : [])).map((it) => `• ${it}`)),
]
