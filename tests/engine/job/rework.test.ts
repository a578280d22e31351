// A change works everything downstream of it, once, and nothing else. What is downstream is found here by the words alone:
// from the parts’ needs and gives, as a walk over a graph, without asking the plan.
import { describe, expect, it } from 'vitest'
import { decide, type Job } from '../../../engine/job/job.ts'
import { type Memo, newMemo, type Node, type Plan } from '../../../engine/job/node.ts'
import { type Part, parts } from '../../../engine/job/parts.ts'
import { runOf, yard } from '../../../engine/places.ts'
import { decisionsOf, jobOf, planFrom, type Told, yardOfSix } from './fences.ts'

const job = jobOf({
  ...yardOfSix,
  insideHeight: '36 in',
  memberWidth: '3 1/2 in',
  braceWidth: '3 1/2 in',
  holeTime: '30 min',
  payload: '1500 lb',
  bedLength: '8 ft',
  deliveryPrice: '$80',
  tripCost: '$12',
  boxCount: '100',
  stonePrice: '$41.30',
  canPrice: '$40',
  screwBoxPrice: '$12',
})

/** Every part at every place where it holds, worked. */
function everywhere(plan: Plan): Node[] {
  const gates = plan.fence.runs.flatMap((run) => run.gates.map((it) => it.place))
  const placesAt: Readonly<Record<Part['level'], readonly string[]>> = {
    yard: [yard],
    run: plan.fence.runs.map((it) => it.place),
    bay: plan.stretches.map((it) => it.place),
    gate: gates,
    kind: [...new Set(plan.posts.map((it) => it.kind))],
  }
  return parts.flatMap((part) => {
    const names = part.as ? Object.values(part.as) : Object.keys(part.calculation.gives)
    return placesAt[part.level].flatMap(
      (at) => names.map((name) => plan.node(name, at)).find((it) => it?.part === part) ?? [],
    )
  })
}

/** What is counted over a place is gathered from what is within it: a list, and the words that it is a list of. */
const gathered: Readonly<Record<string, readonly string[]>> = {
  bayPickets: ['pickets'],
  bayRails: ['rails'],
  leafPickets: ['picketsEachGate'],
  railCuts: ['railCut'],
  railsByLength: ['railCut', 'rails'],
  railPieces: ['railCut'],
  railsWeights: ['railsWeight'],
  postsWeights: ['postsWeight'],
  postsByLength: ['postLength', 'longerPost'],
  postLengths: ['postLength', 'longerPost'],
  longestPiece: ['railCut', 'postLength', 'longerPost', 'picketLength'],
}

const isWithin = (at: string, wider: string): boolean => wider === yard || at === wider || runOf(at) === wider
const gives = ({ as, calculation }: Part, word: string): boolean =>
  as ? Object.values(as).includes(word) : calculation.gives[word] !== undefined

/** The parts that a word told at a place reaches, as `calculation@place`: first those that take it, then those that take what these give. */
function downstreamOf(word: string, place: string, told: Job, nodes: readonly Node[]): string[] {
  const isTold = (name: string, at: string): boolean =>
    told.decisions.some((it) => it.word === name && isWithin(at, it.at))
  const reached = new Set<Node>()
  const takesChanged = ({ part, at, places }: Node): boolean =>
    Object.keys(part.calculation.needs).some((need) => {
      const name = part.takes?.[need] ?? need
      // What one sum over all runs takes is no longer one where a run has its own.
      if (name === word && part.alike?.includes(word) && isWithin(place, at)) return true
      if (name === word) return places.some((it) => isWithin(it, place))
      const sources = gathered[name]
      if (sources?.includes(word)) return isWithin(place, at)
      if (sources) return [...reached].some((it) => isWithin(it.at, at) && sources.some((each) => gives(it.part, each)))
      return places.some((from) => {
        if (isTold(name, from)) return false
        // The nearest place that gives it counts, and no wider one.
        const nearest = [from, runOf(from), yard]
          .map((it) => nodes.find((other) => other.at === it && other.part !== part && gives(other.part, name)))
          .find((it) => it !== undefined)
        return nearest !== undefined && reached.has(nearest)
      })
    })
  for (let before = -1; before !== reached.size; ) {
    before = reached.size
    for (const node of nodes) if (takesChanged(node)) reached.add(node)
  }
  return [...reached].map((it) => `${it.part.calculation.name}@${it.at}`).toSorted()
}

interface Reworked {
  readonly before: readonly Node[]
  readonly after: readonly Node[]
  readonly memo: Memo
  /** Calculations that ran for the change, in order. */
  readonly ran: readonly string[]
}

function rework(change: Told): Reworked {
  const memo = newMemo()
  const before = everywhere(planFrom(job, memo))
  const count = memo.ran.length
  const after = everywhere(planFrom(decide(job, decisionsOf(change, 1)), memo, 1))
  return { before, after, memo, ran: memo.ran.slice(count) }
}

const valuesOf = ({ outcome }: Node | { outcome: Node['outcome'] }): unknown => (outcome.ok ? outcome.values : outcome)
/** Parts whose results are other ones than before, as `calculation@place`: a part that was not worked hands on the very same. */
const workedAgain = ({ before, after }: Reworked): string[] =>
  after
    .filter((now) => !before.some((it) => it.part === now.part && it.at === now.at && valuesOf(it) === valuesOf(now)))
    .map((it) => `${it.part.calculation.name}@${it.at}`)
    .toSorted()
const names = (each: readonly string[]): string[] => each.map((it) => it.split('@')[0] as string).toSorted()

describe('a fence of six runs, 44 bays, two gates and a slope', () => {
  it('is worked whole, and each of its parts once', () => {
    const memo = newMemo()
    const plan = planFrom(job, memo)
    const nodes = everywhere(plan)
    expect(plan.runs.reduce((sum, it) => sum + it.bays.length, 0)).toBe(44)
    expect(nodes.filter((it) => !it.outcome.ok).map((it) => `${it.part.calculation.name}@${it.at}`)).toEqual([])
    expect(memo.ran).toHaveLength(nodes.length)
    expect(memo.outcomes.size).toBe(memo.ran.length)
    // Looked at again, by another plan of the same job, nothing runs.
    everywhere(planFrom(job, memo, 5))
    expect(memo.outcomes.size).toBe(memo.ran.length)
    expect(memo.ran).toHaveLength(nodes.length)
  })

  it.each([
    ['pickets 5 1/2 in wide', 'picketWidth', yard, '5 1/2 in'],
    ['holes 12 in wide', 'holeDiameter', yard, '12 in'],
    ['pickets 5 1/2 in wide at the back', 'picketWidth', 'back', '5 1/2 in'],
    ['gaps of 1 in at the front, where a gate is', 'widestGap', 'front', '1 in'],
    ['a bag of 80 lb', 'bagWeight', yard, '80 lb'],
  ] as const)('%s: what hangs on it runs again, once, and nothing else', (_, word, at, value) => {
    const done = rework({ [at === yard ? word : `${word}@${at}`]: value })
    const expected = downstreamOf(word, at, job, done.before)
    expect(workedAgain(done)).toEqual(expected)
    // What lacks one value for all runs now says so, and is not worked.
    const lacking = done.after.filter((it) => !it.outcome.ok).map((it) => `${it.part.calculation.name}@${it.at}`)
    expect(lacking.filter((it) => !expected.includes(it))).toEqual([])
    if (at === yard) expect(lacking).toEqual([])
    const isRefused = (name: string): boolean => lacking.some((it) => it.startsWith(`${name}@`))
    expect(done.ran.filter((it) => !isRefused(it)).toSorted()).toEqual(names(expected).filter((it) => !isRefused(it)))
    expect(names(expected)).toEqual(expect.arrayContaining([...done.ran]))
    expect(done.memo.outcomes.size).toBe(done.memo.ran.length)
    expect(expected.length).toBeLessThan(done.before.length / 2)
  })

  // Seven stretches of bays, two leaves; the gates, two of the runs’ and the yard’s, all runs’ pickets, and what is bought and hauled.
  it('a wider picket reaches the bays and gates, and no rail, post, hole or bag', () => {
    const { before, ran } = rework({ picketWidth: '5 1/2 in' })
    const counts = Object.fromEntries([...new Set(ran)].map((name) => [name, ran.filter((it) => it === name).length]))
    expect(counts).toEqual({
      'picket-spacing': 7,
      'pickets-touching-posts': 2,
      'pickets-on-gates': 3,
      'pickets-of-fence': 7,
      'picket-screws': 1,
      'stick-weight': 1,
      'finish-area': 1,
      'finish-quantity': 1,
      'take-off': 1,
      'haul-trips': 1,
      'deliver-or-haul': 1,
      'job-hours': 1,
    })
    expect(before.length).toBeGreaterThan(2 * ran.length)
  })

  it('told for one run, it leaves the bays, gates and counts of every other run as they are', () => {
    const done = rework({ 'picketWidth@back': '5 1/2 in' })
    const elsewhere = workedAgain(done).filter(
      (it) => !it.endsWith('@yard') && runOf(it.split('@')[1] as string) !== 'back',
    )
    expect(elsewhere).toEqual([])
    expect(workedAgain(done)).toContain('pickets-of-fence@back')
  })

  // The take-off costs more and weighs the same, so no load is driven anew. Gaps of 2 in leave the gate’s eight pickets eight.
  it('ends where a part comes to what it came to before', () => {
    expect(rework({ picketPrice: '$4' }).ran).toEqual(['take-off'])
    expect(downstreamOf('picketPrice', yard, job, rework({}).before)).toEqual([
      'deliver-or-haul@yard',
      'haul-trips@yard',
      'take-off@yard',
    ])
    const { ran } = rework({ 'widestGap@front': '2 in' })
    expect(ran).toContain('pickets-touching-posts')
    expect(ran).not.toContain('pickets-on-gates')
    // A third rail on the lane is crossed by as many pickets, and no longer: what weighs pickets and what sticks out behind is spared.
    const lane = rework({ 'rails@lane': '3' })
    const downstream = downstreamOf('rails', 'lane', job, lane.before)
    expect(downstream.filter((it) => !workedAgain(lane).includes(it))).toEqual([
      'load-overhang@yard',
      'stick-weight@yard',
    ])
    expect(workedAgain(lane).filter((it) => !downstream.includes(it))).toEqual([])
  })

  it('taken back, it runs nothing again', () => {
    const { memo } = rework({ picketWidth: '5 1/2 in' })
    const count = memo.ran.length
    everywhere(planFrom(job, memo, 2))
    expect(memo.ran).toHaveLength(count)
  })
})
