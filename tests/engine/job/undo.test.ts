// Undo, redo and plans kept: whatever way a job came to where it stands, it is the job that the same decisions make.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import {
  type Decision,
  decide,
  type Job,
  keep,
  type Kept,
  type Move,
  mostKept,
  newJob,
  readJob,
  redo,
  turnTo,
  undo,
  valueKey,
  writeJob,
} from '../../../engine/job/job.ts'
import { toNumber } from '../../../engine/quantities/amount.ts'
import { isQuantity } from '../../../engine/quantities/quantity.ts'
import { newMemo } from '../../../engine/job/node.ts'
import { looksAt, ownName } from '../../../engine/job/parts.ts'
import { planOf } from '../../../engine/job/plan.ts'
import type { Memo, Plan } from '../../../engine/job/node.ts'
import { decisionsOf, jobOf } from './fences.ts'

const first = jobOf({
  'runLength@front': '60 ft',
  'runLength@right': '40 ft',
  widestBay: '8 ft',
  picketWidth: '3 1/2 in',
  widestGap: '2 1/2 in',
  picketLength: '42 in',
  postAbove: '4 ft',
  holeDiameter: '10 in',
  bagWeight: '60 lb',
  picketPrice: '$3.19',
})

/** What may be told next: at the yard, at runs, at a bay and at gates. */
const tellings: readonly (readonly [word: string, values: readonly string[]])[] = [
  ['picketWidth', ['2 1/2 in', '3 1/2 in', '5 1/2 in']],
  ['widestGap', ['2 in', '2 1/2 in', '3 in']],
  ['holeDiameter', ['10 in', '12 in']],
  ['bagWeight', ['60 lb', '80 lb']],
  ['bagYield', ['0.45 ft3', '0.6 ft3']],
  ['runEnds', ['loop', 'centres']],
  ['picketPrice', ['$3.19', '$4.05']],
  ['runLength@front', ['50 ft', '60 ft', '72 ft 3 in']],
  ['runLength@back', ['44 ft', '60 ft']],
  ['widestBay@right', ['6 ft', '8 ft']],
  ['picketWidth@right', ['3 1/2 in', '5 1/2 in']],
  ['rails@back', ['2', '3']],
  ['fall@right', ['20 in', '40 in']],
  ['slopeWay@right', ['stepped', 'raked']],
  ['opening@front/bay-2', ['70 in', '80 in']],
  ['picketEnds@front/bay-3', ['gap', 'picket']],
  ['gates@front', ['0', '1', '2']],
  ['gateOpening@front', ['42 in', '48 in']],
  ['gateStart@front/gate-1', ['10 ft', '20 ft']],
  ['gateOpening@front/gate-2', ['10 ft']],
  ['gateLeaves@front/gate-1', ['single', 'double']],
]

type Step =
  | { readonly do: 'tell'; readonly told: readonly (readonly [string, string])[]; readonly confirms: readonly string[] }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' }
  | { readonly do: 'keep'; readonly name: string }
  | { readonly do: 'turn to'; readonly name: string }

const telling = fc
  .constantFrom(...tellings)
  .chain(([word, values]) => fc.constantFrom(...values).map((value) => [word, value] as const))
const tell: fc.Arbitrary<Step> = fc.record({
  do: fc.constant('tell' as const),
  told: fc.uniqueArray(telling, { minLength: 1, maxLength: 3, selector: ([word]) => word }),
  confirms: fc.subarray(['picketWidth', 'widestGap', 'runLength']),
})
const names = ['narrow', 'wide', 'cedar', 'cheap']
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 5, arbitrary: tell },
  { weight: 3, arbitrary: fc.constant<Step>({ do: 'undo' }) },
  { weight: 2, arbitrary: fc.constant<Step>({ do: 'redo' }) },
)
const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 6, arbitrary: step },
  { weight: 1, arbitrary: fc.constantFrom(...names).map((name): Step => ({ do: 'keep', name })) },
  { weight: 1, arbitrary: fc.constantFrom(...names).map((name): Step => ({ do: 'turn to', name })) },
)

interface Walked {
  readonly job: Job
  /** The moves that stand, as plainly counted here. */
  readonly stands: readonly Move[]
}

/** Takes the steps, and keeps two plain piles beside: what stands, and what was taken back. */
function walk(steps: readonly Step[]): Walked {
  let job = first
  let [stands, back]: [readonly Move[], readonly Move[]] = [first.moves, []]
  let kept: readonly { readonly name: string; readonly stands: readonly Move[] }[] = []
  for (const [i, it] of steps.entries()) {
    if (it.do === 'tell') {
      const decisions = decisionsOf(Object.fromEntries(it.told), i + 1)
      job = decide(job, decisions, it.confirms)
      stands = [...stands, { turn: i + 1, decisions, confirms: it.confirms }]
      back = []
    } else if (it.do === 'undo') {
      job = undo(job)
      const last = stands.at(-1)
      if (last) [stands, back] = [stands.slice(0, -1), [...back, last]]
    } else if (it.do === 'redo') {
      job = redo(job)
      const last = back.at(-1)
      if (last) [stands, back] = [[...stands, last], back.slice(0, -1)]
    } else if (it.do === 'keep') {
      job = keep(job, it.name)
      kept = [...kept.filter((other) => other.name !== it.name), { name: it.name, stands }].slice(-mostKept)
    } else {
      const old = kept.find((other) => other.name === it.name)
      const found = job.kept.find((other) => other.name === it.name)
      expect(found === undefined).toBe(old === undefined)
      if (old) [job, stands, back] = [turnTo(job, found as Kept), old.stands, []]
    }
  }
  return { job, stands }
}

const fromScratch = (moves: readonly Move[]): Job => ({
  ...moves.reduce((job, { decisions, confirms }) => decide(job, decisions, confirms), newJob),
  system: 'imperial',
})

/** The last that was told of each word at each place, less what a later turn put out of date: read off the moves, backwards. */
function standing(moves: readonly Move[]): string[] {
  const all = moves.flatMap((it) => it.decisions)
  const isOld = (old: Decision, i: number): boolean =>
    all.slice(i + 1).some(
      (later) =>
        later.at === old.at &&
        (later.word === old.word ||
          (later.turn > old.turn &&
            (vocabulary.get(later.word)?.replaces?.includes(old.word) ||
              // A gate that is told puts “no gates” out of date, and no other number of them.
              (isNone(old) && vocabulary.get(later.word)?.replacesNone?.includes(old.word))))),
    )
  return all.filter((it, i) => !isOld(it, i)).map(written)
}
const isNone = ({ value }: Decision): boolean => isQuantity(value) && toNumber(value.amount) === 0
const written = ({ word, at, value, turn }: Decision): string => `${word}@${at} = ${valueKey(value)}, turn ${turn}`

/** What a person looks at: the value, or why there is none. */
function lookedAt(job: Job, memo: Memo): Record<string, string> {
  const plan: Plan | undefined = planOf(job, memo, -1)
  if (!plan) return {}
  return Object.fromEntries(
    looksAt.map((word) => {
      const node = plan.node(word, 'yard')
      if (!node) return [word, 'no part']
      const { outcome } = node
      const value = outcome.ok ? outcome.values.get(ownName(node.part, word)) : undefined
      const lacks = outcome.ok ? outcome.doubts : outcome.problems
      return [
        word,
        `${value === undefined ? 'none' : valueKey(value)} ${lacks.map((it) => `${it.word}@${it.at}: ${it.message}`).join(' ')}`,
      ]
    }),
  )
}

describe('a job after any steps', () => {
  it('has the decisions and the confirmed words that a job told only what stands would have', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 30 }), (steps) => {
        const { job, stands } = walk(steps)
        const again = fromScratch(stands)
        expect(job.moves).toEqual(stands)
        expect(job.decisions).toEqual(again.decisions)
        expect(job.confirmed).toEqual(again.confirmed)
        expect(job.decisions.map(written).toSorted()).toEqual(standing(stands).toSorted())
      }),
      { numRuns: 300, seed: 20_260_511 },
    )
  })

  // One memory for all of them: what was worked for a job that was taken back must never answer for this one.
  it('comes to the same wherever a person looks, though its parts were remembered on the way', () => {
    const memo = newMemo()
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 7 }), (steps) => {
        for (let n = 1; n < steps.length; n++) lookedAt(walk(steps.slice(0, n)).job, memo)
        const { job, stands } = walk(steps)
        expect(lookedAt(job, memo)).toEqual(lookedAt(fromScratch(stands), newMemo()))
      }),
      { numRuns: 40, seed: 20_260_512 },
    )
  })

  it('is read as it was written, and goes on alike', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 20 }), (steps) => {
        const { job } = walk(steps)
        const read = readJob(JSON.parse(JSON.stringify(writeJob(job))))
        expect(read).toEqual(job)
        expect(undo(read)).toEqual(undo(job))
        expect(redo(read)).toEqual(redo(job))
      }),
      { numRuns: 150, seed: 20_260_513 },
    )
  })

  it('undone all the way is new again, and made again all the way stands where it stood', () => {
    fc.assert(
      fc.property(fc.array(tell, { maxLength: 12 }), (steps) => {
        const { job } = walk(steps)
        const times = (n: number, work: (job: Job) => Job, from: Job): Job =>
          Array.from({ length: n }).reduce<Job>(work, from)
        const empty = times(job.moves.length + 2, undo, job)
        expect([empty.decisions, empty.confirmed, empty.moves]).toEqual([[], [], []])
        const back = times(job.moves.length + 2, redo, empty)
        expect(back).toEqual(job)
      }),
      { numRuns: 100, seed: 20_260_514 },
    )
  })
})

describe('plans that are kept', () => {
  const told = (job: Job, text: string, turn: number): Job => decide(job, decisionsOf({ picketWidth: text }, turn))

  it('turning to one goes on from where it was kept, and what was told since is not in it', () => {
    const narrow = keep(first, 'narrow')
    const wide = told(narrow, '5 1/2 in', 1)
    const back = turnTo(wide, wide.kept[0] as Kept)
    expect(back.decisions).toEqual(first.decisions)
    expect(back.kept.map((it) => it.name)).toEqual(['narrow'])
    expect(told(back, '2 1/2 in', 2).moves).toHaveLength(first.moves.length + 1)
  })

  it('a name is kept once, and of more than three the oldest goes', () => {
    const all = ['narrow', 'wide', 'narrow', 'cedar', 'cheap'].reduce(keep, first)
    expect(all.kept.map((it) => it.name)).toEqual(['narrow', 'cedar', 'cheap'])
  })

  it('something new told after an undo leaves nothing to be made again', () => {
    const undone = undo(told(first, '5 1/2 in', 1))
    expect(redo(told(undone, '2 1/2 in', 2)).decisions).toEqual(told(undone, '2 1/2 in', 2).decisions)
  })
})

describe('a word that the person stands by', () => {
  const confirmed = (job: Job): readonly string[] => job.confirmed
  const stood = decide(decide(newJob, [], ['widestBay']), [], ['picketWidth', 'widestBay'])

  it('is kept once, and until that word is told anew', () => {
    expect(confirmed(stood)).toEqual(['widestBay', 'picketWidth'])
    const anew = decide(stood, decisionsOf({ widestBay: '9 ft' }, 1))
    expect(confirmed(anew)).toEqual(['picketWidth'])
    expect(confirmed(undo(anew))).toEqual(['widestBay', 'picketWidth'])
  })

  it('and what is told with it stand in one move', () => {
    const both = decide(newJob, decisionsOf({ widestBay: '9 ft' }, 3), ['widestBay'])
    expect(confirmed(both)).toEqual(['widestBay'])
    expect(both.moves.map((it) => it.turn)).toEqual([3])
    expect(decide(both, [])).toBe(both)
    expect(decide(both, [], ['picketWidth']).moves.map((it) => it.turn)).toEqual([3, 3])
  })
})
