// This file is about what is counted over the whole fence: what stands at its many places, gathered into one list for a calculation to add up.
import type { Given, Problem } from '../outcome.ts'
import { yard } from '../places.ts'
import { toNumber } from '../quantities/amount.ts'
import { isList, isQuantity, less, type Quantity, quantity, type Value } from '../quantities/quantity.ts'
import type { Fence, RunTold } from './fence.ts'
import { decided, type Job, quantityKey } from './job.ts'
import type { Post, RunLaid, Stretch } from './laid-out.ts'
import { ownName } from './parts.ts'
import type { Node, Plan } from './node.ts'
import { postSizeOf } from './post-sizes.ts'

/** What stands in the fence, and the parts whose working put it there. */
export interface Laid {
  readonly given: Given
  readonly nodes: readonly Node[]
}
export type Lacking = { readonly problems: readonly Problem[] }

/** The plan as far as it is laid out; each part is worked when it is first looked at. */
export interface Ground extends Pick<Plan, 'node' | 'worked'> {
  readonly job: Job
  readonly fence: Fence
  readonly runNodes: () => readonly { readonly run: RunTold; readonly node: Node }[]
  readonly laid: () => readonly RunLaid[]
  readonly posts: () => readonly Post[]
  readonly kinds: () => readonly string[]
  readonly stretches: () => readonly Stretch[]
}

const count = (noun: string, number: number): Quantity => quantity(number, noun)
const ofKind =
  (kind: Post['kind']) =>
  ({ posts }: Ground): Value =>
    count('post', posts().filter((it) => it.kind === kind).length)
const gatesOf = ({ fence }: Ground) => fence.runs.flatMap((it) => it.gates)

/** Read off the fence as it is laid out. */
const standing: Readonly<Record<string, (ground: Ground) => Value>> = {
  runPosts: ({ laid }) => laid().map((it) => count('post', it.stations.length)),
  runBays: ({ laid }) => laid().map((it) => count('bay', it.bays.length)),
  cornersShared: ({ posts }) => count('post', posts().filter((it) => it.stands.length > 1).length),
  gatePostCount: ofKind('gate-posts'),
  cornerPostCount: ofKind('corner-posts'),
  endPostCount: ofKind('end-posts'),
  stretchBays: ({ stretches }) => stretches().map((it) => count('bay', it.bays.length)),
  gates: (ground) => count('gate', gatesOf(ground).length),
  leavesInAll: (ground) =>
    count(
      'leaf',
      gatesOf(ground).reduce((sum, it) => sum + leavesOf(ground, it.place), 0),
    ),
  // Where nobody said how many rails, the usual two are taken, and said so by the part that cuts them.
  bayRails: ({ stretches, job }) =>
    stretches().map((it) => {
      const told = decided(job, 'rails', it.place)?.value
      return isQuantity(told) ? told : count('rail', 2)
    }),
}

/** Gathered from what each place's part gives. */
const fromEach: Readonly<Record<string, { word: string; at: (ground: Ground) => readonly string[] }>> = {
  bayPickets: { word: 'pickets', at: ({ stretches }) => stretches().map((it) => it.place) },
  railCuts: { word: 'railCut', at: ({ stretches }) => stretches().map((it) => it.place) },
  railsWeights: { word: 'railsWeight', at: ({ stretches }) => stretches().map((it) => it.place) },
  postsWeights: { word: 'postsWeight', at: ({ kinds }) => kinds() },
  leafPickets: {
    word: 'picketsEachGate',
    at: (ground) =>
      gatesOf(ground).flatMap(({ place }) => Array.from({ length: leavesOf(ground, place) }, () => place)),
  },
}

/** The word that a list over the whole fence is a list of; nothing where it is counted on the fence itself. */
export const gatheredFrom = (name: string): string | undefined => fromEach[name]?.word ?? countedFrom[name]
const countedFrom: Readonly<Record<string, string>> = {
  runPosts: 'posts',
  postLengths: 'postLength',
  postsByLength: 'postLength',
  railPieces: 'railCut',
  railsByLength: 'railCut',
}

/** A word of the whole fence, to be added up by a calculation that shows it; nothing where it is none of them. */
export function overAll(name: string, whole: Ground, run?: string): Laid | Lacking | undefined {
  const [direct, each] = [standing[name], fromEach[name]]
  if (!direct && !each && !special.has(name)) return undefined
  if (run && !ofOneRun.has(name)) return undefined
  const ground = run ? within(whole, run) : whole
  const runs = ground.runNodes().map((it) => it.node)
  const lacking = runs.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.problems))
  if (lacking.length > 0) return { problems: askedOnce(lacking) }
  if (direct) return { given: { value: direct(ground), role: 'result' }, nodes: runs }
  if (each) {
    const places = each.at(ground)
    // A run without a gate has no pickets on gates: the yard's, which are its other runs', must not stand in for them.
    if (name === 'leafPickets' && places.length === 0)
      return { given: { value: [count('picket', 0)], role: 'result' }, nodes: runs }
    return gathered(
      places.map((at) => ground.node(each.word, at)),
      each.word,
    )
  }
  if (name === 'capCount') {
    // A cap is on every post, once somebody speaks of caps.
    const has = decided(ground.job, 'capSize', yard) ?? decided(ground.job, 'capPrice', yard)
    return has ? { given: { value: count('post', ground.posts().length), role: 'result' }, nodes: runs } : undefined
  }
  if (name === 'capPieces' || name === 'capPieceCounts') return capsFromRails(name, ground)
  if (name === 'longestPiece') return longestToHaul(ground)
  return name.startsWith('rail') ? railsByLength(name, ground) : byLength(name, ground)
}
/** What may be counted in one run alone: a post at its corner is the next run's too. */
const ofOneRun = new Set(['stretchBays', 'bayRails', 'bayPickets', 'railCuts', 'leafPickets'])

const within = (ground: Ground, run: string): Ground => ({
  ...ground,
  fence: { ...ground.fence, runs: ground.fence.runs.filter((it) => it.place === run) },
  runNodes: () => ground.runNodes().filter((it) => it.run.place === run),
  stretches: () => ground.stretches().filter((it) => it.run === run),
})

const special = new Set([
  'postsByLength',
  'postLengths',
  'railsByLength',
  'railPieces',
  'capCount',
  'capPieces',
  'capPieceCounts',
  'longestPiece',
])

export const leavesOf = ({ job }: Pick<Ground, 'job'>, gate: string): number =>
  decided(job, 'gateLeaves', gate)?.value === 'double' ? 2 : 1

/** Posts that are as long as each other, and how long: a post in a run that steps down is longer by its step. */
function byLength(name: string, ground: Ground): Laid | Lacking | undefined {
  const { node, kinds } = ground
  const nodes = kinds().flatMap((kind) => node('postLength', kind) ?? [])
  const problems = nodes.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.problems))
  if (problems.length > 0) return { problems: askedOnce(problems) }
  const all = lengthsOfPosts(ground)
  if (!all || 'problems' in all) return all
  const value = name === 'postLengths' ? all.map((it) => it.length) : all.map((it) => count('post', it.count))
  return { given: { value, role: 'result' }, nodes }
}

type Lengths = readonly { readonly length: Quantity; readonly count: number }[]

/** Posts of one kind that stand in the same runs are alike: each sort is looked at once. */
function lengthsOfPosts(ground: Ground): Lengths | Lacking | undefined {
  const sorts = new Map<string, { post: Post; count: number }>()
  for (const post of ground.posts()) {
    const sort = [post.kind, ...post.stands.map((it) => it.run)].join()
    sorts.set(sort, { post, count: (sorts.get(sort)?.count ?? 0) + 1 })
  }
  const groups = new Map<string, { length: Quantity; count: number }>()
  for (const { post, count } of sorts.values()) {
    const size = postSizeOf(post, ground)
    if (!size || 'problems' in size) return size
    const key = quantityKey(size.length)
    groups.set(key, { length: size.length, count: (groups.get(key)?.count ?? 0) + count })
  }
  return [...groups.values()]
}

/** Rails that are as long as each other, and how many of each: bays of several stretches may take the same. */
function railsByLength(name: string, ground: Ground): Laid | Lacking | undefined {
  const cuts = overAll('railCuts', ground)
  if (!cuts || 'problems' in cuts) return cuts
  const lengths = cuts.given.value as Quantity[]
  const rails = overAll('bayRails', ground) as Laid
  const groups = new Map<string, { length: Quantity; count: number }>()
  for (const [i, stretch] of ground.stretches().entries()) {
    const length = lengths[i] as Quantity
    const each = toNumber(((rails.given.value as Quantity[])[i] as Quantity).amount)
    const known = groups.get(quantityKey(length)) ?? { length, count: 0 }
    groups.set(quantityKey(length), { length, count: known.count + each * stretch.bays.length })
  }
  const all = [...groups.values()]
  const value = name === 'railPieces' ? all.map((it) => it.length) : all.map((it) => count('rail', it.count))
  return { given: { value, role: 'result' }, nodes: cuts.nodes }
}

/** Square caps that rails are wide enough for: they may come out of what is left of the rails. */
function capsFromRails(name: string, ground: Ground): Laid | undefined {
  const [cap, rail] = ['capSize', 'railDepth'].map((it) => decided(ground.job, it, yard)?.value)
  if (!isQuantity(cap) || !isQuantity(rail) || less(rail, cap)) return undefined
  const value = name === 'capPieces' ? [cap] : [count('smaller piece', ground.posts().length)]
  return { given: { value, role: 'result' }, nodes: ground.runNodes().map((it) => it.node) }
}

/** The longest that must be brought home: a board as it is bought where that is planned, else a piece as it is used. */
function longestToHaul(ground: Ground): Laid | Lacking | undefined {
  const found = [
    ['railsLongest', 'railPieces'],
    ['postsLongest', 'postLengths'],
    ['picketsLongest', 'picketLength'],
  ].flatMap(([board, piece]) => {
    const bought = ground.worked(board as string, yard)
    if (bought) return [{ value: bought.value, nodes: [bought.node] }]
    const told = decided(ground.job, piece as string, yard)
    if (told) return [{ value: told.value, nodes: [] }]
    const cut = overAll(piece as string, ground)
    return cut && !('problems' in cut) ? [{ value: cut.given.value, nodes: cut.nodes }] : []
  })
  const all = found.flatMap(({ value }) => (isList(value) ? value : isQuantity(value) ? [value] : []))
  const [first] = all
  if (!first) return undefined
  return {
    given: { value: all.reduce((a, b) => (less(a, b) ? b : a), first), role: 'result' },
    nodes: found.flatMap((it) => it.nodes),
  }
}

function gathered(each: readonly (Node | undefined)[], word: string): Laid | Lacking | undefined {
  const found = each.filter((it) => it !== undefined)
  if (found.length < each.length || found.length === 0) return undefined
  const problems = found.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.problems))
  if (problems.length > 0) return { problems: askedOnce(problems) }
  const values = found.map(({ outcome, part }) => (outcome.ok ? outcome.values.get(ownName(part, word)) : undefined))
  if (!values.every((it) => isQuantity(it))) return undefined
  return { given: { value: values as Quantity[], role: 'result' }, nodes: found }
}

/** The same thing missing at several places is asked for once, for all of them. */
export function askedOnce(problems: readonly Problem[]): Problem[] {
  const byWord = new Map<string, Problem[]>()
  for (const it of problems) byWord.set(`${it.code}:${it.word}`, [...(byWord.get(`${it.code}:${it.word}`) ?? []), it])
  return [...byWord.values()].flatMap((same) => {
    const [first] = same as [Problem]
    const places = new Set(same.map((it) => it.at))
    if (first.code !== 'missing') return [...new Map(same.map((it) => [it.message, it])).values()]
    return places.size === 1 ? [first] : [{ ...first, at: yard }]
  })
}
