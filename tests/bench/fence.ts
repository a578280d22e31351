// This file is about how fast a whole fence is worked: one change in a yard of six runs, and fences of a thousand and ten thousand posts.
import { compile } from 'mathjs'
import { type Decision, decide, type Job } from '../../engine/job/job.ts'
import { type Memo, newMemo } from '../../engine/job/node.ts'
import { looksAt, ownName } from '../../engine/job/parts.ts'
import { planOf } from '../../engine/job/plan.ts'
import type { Value } from '../../engine/quantities/quantity.ts'
import { decisionsOf, jobOf, oneFence, type Told, yardOfSix } from '../engine/job/fences.ts'
import { type Measured, measure, type Reference } from './measure.ts'

const changeLimit = 5
const manyPostsLimit = 1000
const warmUps = 300

/** So many posts in equal runs of 199 bays, each with a width of its own so that no run’s working serves for another. */
const ofPosts = (posts: number): Told => {
  const runs = Math.ceil((posts - 1) / 199)
  const bays = (run: number): number => Math.min(199, posts - 1 - 199 * run)
  const lengths = Array.from(
    { length: runs },
    (_, i) => [`runLength@run-${i + 1}`, `${bays(i) * 96 - i / 8} in`] as const,
  )
  return { ...oneFence, ...Object.fromEntries(lengths) }
}

/** Counts that nobody expects of a yard, and that are asked about until they are confirmed. */
const large = [
  'bays',
  'posts',
  'rails',
  'railsInAll',
  'pickets',
  'picketsHung',
  'picketsToBuy',
  'bags',
  'sticks',
  'finishArea',
  'finishNeeded',
]

/** Everything that a person looks at first, the take-off among it. */
function lookedAt(job: Job, memo: Memo): Value[] {
  const plan = planOf(job, memo, 1)
  if (!plan) throw new Error('no run is told')
  return looksAt.map((word) => {
    const node = plan.node(word, 'yard')
    const value = node?.outcome.ok ? node.outcome.values.get(ownName(node.part, word)) : undefined
    if (value === undefined) throw new Error(`${word} is not known`)
    return value
  })
}

const formula = compile('(opening - pickets * picketWidth) / (pickets + 1)')
const general: Reference = {
  name: 'mathjs working one compiled formula a thousand times, without units or working',
  run: () => {
    for (let i = 0; i < 1000; i++) formula.evaluate({ opening: 93, pickets: 16, picketWidth: 3.5 })
  },
}

export function fenceMeasures(): Measured[] {
  const job = jobOf(yardOfSix)
  const known = newMemo()
  lookedAt(job, known)
  // Every time a width that nobody told before: what was worked for one must not answer for the next.
  let widths = 0
  const wider = (): readonly Decision[] => decisionsOf({ picketWidth: `${5 + (widths++ % 1000) / 1024} in` }, 1)
  const changed = (): Value[] => lookedAt(decide(job, wider()), { outcomes: new Map(known.outcomes), ran: [] })
  // Warm: as a program is that has answered for a while.
  for (let i = 0; i < warmUps; i++) changed()
  const change = measure(
    'pickets of another width in a fence of 6 runs, 44 bays, 2 gates and a slope: all that is looked at, take-off included',
    changed,
    general,
    { limitMs: changeLimit },
  )
  const whole = measure('the same fence worked from nothing', () => lookedAt(job, newMemo()), general, { rounds: 20 })

  const [thousand, many] = [1000, 10_000].map((posts) => decide(jobOf(ofPosts(posts)), [], large)) as [Job, Job]
  const tenfold = measure(
    'a fence of 10,000 posts, worked from nothing',
    () => lookedAt(many, newMemo()),
    { name: 'a fence of 1,000 posts in the same way', run: () => lookedAt(thousand, newMemo()) },
    { limitMs: manyPostsLimit, rounds: 9 },
  )
  return [change, whole, tenfold]
}
