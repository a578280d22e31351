// Whole fences told in many ways: what stands afterwards is counted, posts and gates.
// The sums were made apart, by hand and by a carpenter: on each run the fewest bays within the limit, one post more than
// bays and gates on an open fence, as many on a closed one, each corner post once.
import { describe, expect, it } from 'vitest'
import type { Job } from '../../../../engine/job/job.ts'
import { planOf } from '../../../../engine/job/plan.ts'
import { type Quantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { readOne } from '../../../../engine/quantities/read.ts'
import { createAssistant } from '../../../../src/assistant.ts'
import { jobAfter } from '../../../../src/hearing.ts'
import type { Turn } from '../../../../src/answer.ts'
import { offlineReader } from '../../../../src/readers/offline/offline.ts'

/** Posts, gates, and the talk, its turns parted by two strokes. */
const fences: readonly (readonly [posts: number, gates: number, talk: string])[] = [
  [11, 1, `Front 42 ft, left 30 ft, 8 ft max between posts. || There is a 4 ft gate in the front.`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || add a 42 in gate to the front`],
  [12, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || put a gate in the left run, 36 inches`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || we need a 10 ft double gate in the left run`],
  [12, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || a 4 ft gate opening in the left run`],
  [12, 1, `front 48 ft, left 32 ft, posts 8 ft apart at most || the left run has a 42 in gate`],
  [
    11,
    1,
    `front 42 ft, left 30 ft, posts at most 8 ft apart || pickets 3 1/2 in wide, gap 2 1/2 in || 3 1/2 ft gate in front run`,
  ],
  [
    11,
    1,
    `the front run is 42 ft. || the left run is 30 ft. || the left run ends at the house wall. || posts not over 8 ft apart. || the front run has a 4 ft gate.`,
  ],
  [
    12,
    1,
    `front 48 ft, left 32 ft, posts 8 ft apart at most || fence 4 ft high || pickets 3 1/2 in wide, gap 2 1/2 in || a 4 ft gate in the front run || how many posts`,
  ],
  [
    27,
    1,
    `north 18 m, east 12 m, south 18 m, west 12 m, closed loop, bays not over 2.4 m || how many posts || 1 m gate in the south run`,
  ],
  [11, 1, `Front 42 ft, left 30 ft, 8 ft max between posts. || gate in the front run: 4 ft`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || gate opening of 4 ft in the front run`],
  [
    12,
    1,
    `front 48 ft, left 32 ft, posts 8 ft apart at most || the left run has a 42 in gate || how many posts || the gate in the left run is 48 in`,
  ],
  [13, 1, `run 1 24 ft run 2 40 ft run 3 24 ft posts at most 8 ft || gate 4 ft in run 2`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || the front gate is 4 ft`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || front gate 42"`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || one 4 ft gate, front`],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || the gate is 4 foot and its in the front`],
  [12, 1, `front 13.2 m, left 7.8 m. posts not over 2.4 m. gate 1 m wide in the front, 3 m from the left end.`],
  [14, 1, `left side's 12.6m, front's 9m, posts no further than 1.8m apart, gate in front is 900mm`],
  [13, 1, `front is 36 feet, side is 50 feet, posts every 8 or less. gate on the side, 40 inches`],
  [
    24,
    1,
    `my fence goes along the lane 22 metres then round the corner along the street 15.5 metres, finishing at the garage wall. gate 900 in the street one. || posts 1.8 centres max. how many posts do i need`,
  ],
  [12, 2, `Front 42 ft, left 30 ft, max 8 ft. The front has a 4 ft gate and the left has a 3 ft gate.`],
  [12, 2, `front 42 ft, left 30 ft, posts 8 ft apart at most || the left has two gates, 3 ft and 10 ft`],
  [
    15,
    2,
    `street run 18 m, lane run 11 m, posts 2.4 m apart max || gates: 3 m double on the lane, 1 m single on the street`,
  ],
  [
    12,
    1,
    `front 48 ft, left 32 ft. max bay 8 ft. fence 4 ft high. pickets 3 1/2 in wide, 2 1/2 in gap. two rails. one 4 ft gate in the front run.`,
  ],
  [
    23,
    1,
    `front 30ft back 30ft left 50ft right 50ft all the way round closed, one 3'6" gate in the front. max 8ft bays`,
  ],
  [11, 0, `front 42 ft and left 30 ft. max bay 8 ft`],
  [14, 0, `front 12 m left 9 m right 9 m posts at most 2.4 m apart`],
  [11, 0, `front 42 ft, left 30 ft || bays not over 8 ft`],
  [11, 0, `front 42 ft, left 30 ft || bays of 8 ft`],
  [11, 0, `front 42 ft, left 30 ft || 8 ft spacing`],
  [11, 0, `front 42 ft, left 30 ft || no more than 8 ft between posts`],
  [11, 0, `front 42 ft, left 30 ft || panels 8 ft`],
  [11, 0, `front 42 ft, left 30 ft || 8 ft sections.`],
  [13, 0, `front 12 m, left 9 m || 1.8m bays max.`],
  [11, 0, `front 42 ft. left 30 ft. posts max 8 ft.`],
  [11, 1, `front is 42 ft with a 4 ft gate in it and the left side is 30 ft. posts no more than 8 ft apart.`],
  [11, 0, `front 42 ft, left 30 ft. bays at most 8 ft`],
  [11, 0, `G'day. Doing front 14.4m and down the drive 9.6m, post spacing 2.4`],
  [12, 0, `Street boundary is 16.8m. Side boundary is 9.6m. Posts at max 2.4m centres.`],
  [
    15,
    1,
    `Our section: road frontage 17.6 metres, north boundary 10.2. Posts 2.1 max. Gate of 1.05 m in the road frontage.`,
  ],
  [11, 0, `street frontage 42 ft, lane 30 ft, posts at most 8 ft apart`],
  [15, 0, `12.5m front, 7.3m left, 7.3m right. posts max 2.4m. how many posts?`],
  [15, 0, `front, left, right: 42 ft, 30 ft, 30 ft. posts at most 8 ft apart`],
  [19, 0, `front 60', sides 40' each, 8' centres`],
  [15, 0, `I have 42 feet at the front, 30 on each side. Posts every 8 feet. How many posts?`],
  [15, 0, `the front is 42 ft, both sides are 30 ft, posts at most 8 ft apart`],
  [22, 0, `left 10.8 right 10.8 back 15 all in metres, posts at most 1.8`],
  [10, 0, `Corner points in metres: A (0, 0), B (12, 0), C (12, 9). Bays at most 2.4 m.`],
  [11, 0, `front 42 ft, left 30 ft from the house wall, posts 8 ft apart at most || how many posts?`],
  [15, 1, `Front: 42 ft, gate 4 ft. Left: 30 ft, ends at house. Right: 30 ft, ends at the house. Bays 8 ft max.`],
  [15, 0, `left 30 ft ends at house, front 42 ft, right 30 ft ends at house. bays 8 ft max`],
  [11, 0, `front 42 ft, left 30 ft, posts 8 ft apart at most || ground rises 18 in along the front, follow it`],
  [22, 0, `north run 100 ft falls 5 ft, step it. east run 60 ft level. 8 ft max`],
  [11, 0, `front 42 ft, left 30 ft, left is stepped down 2 ft, posts at most 8 ft apart`],
  [12, 0, `front 40 ft, left 24 ft, posts 8 ft apart at most || what if bays were 6 ft`],
  [
    44,
    2,
    `The front is 66 ft, with a 42 in gate 30 ft along. || The left side is 92 ft and falls 40 in. The back is 58 ft. || The lane side is 48 ft with a 10 ft double gate in it. || The right side is 37 ft and the drive side is 24 ft. || It closes up: the last run ends at the first post. || Posts no more than 8 ft apart.`,
  ],
  [
    11,
    1,
    `front 42 ft, left 30 ft, posts 8 ft apart at most || pickets 3 1/2 in wide, gap 2 1/2 in, 4 ft gate in the front`,
  ],
  [11, 1, `front 42 ft, left 30 ft, posts 8 ft apart at most || there's a 4 ft gate || front`],
  [30, 0, 'I want 14.4m front, 20m left, 20m right, 14.4 back, all closed in, 2.4 m bays max'],
  [21, 0, 'the long side is 120 ft and the short side is 35 ft, eight foot posts max || how many posts all told'],
  // 30, 30 and 40 ft at 8 ft: 4 + 4 + 5 bays, and one post more; asked in one breath with the last run, and still of all.
  [14, 0, 'left 30 ft, right 30 ft, front 40 ft, max 8 ft, how many posts'],
  // 48, 32 and 32 ft: 6 + 4 + 4 bays; “3 sides” is no run of 3 ft.
  [15, 0, '3 sides. back 48 ft, left 32 ft, right 32 ft. 8 ft max. How many posts?'],
  [15, 0, 'I need posts count: side A 22 ft side B 31 ft side C 22 ft, 6 ft max'],
  [
    14,
    0,
    "Right so we've got 18 metres along the street and 12 m down the side, posts no more than 2.4 m apart, posts are 90 mm || how many posts all up",
  ],
  [
    13,
    0,
    'my front fence will be 52 feet, it runs from the house wall to the corner, then 40 feet down the side to the garage wall. 8 ft post spacing tops. how many posts',
  ],
  [
    20,
    2,
    'north run 96 ft, east run 48 ft, max spacing 8 ft || two gates in the north, 3 ft and 10 ft || how many posts',
  ],
  [12, 1, 'front 48 ft, left 32 ft, posts 8 ft max apart, 4 ft gate front'],
  [20, 1, 'north 18 m, south 18 m, east 9 m, posts 2.4 m apart max. gate 3.6 m double in south.'],
  [
    11,
    2,
    'front 48 ft, posts 8 ft max, walk gate 3 ft in the front, driveway gate 10 ft double in the front || back 10 ft',
  ],
  [9, 0, 'front 40 ft, left 24 ft, max 8 ft || bay 3 came out at 7 ft 10'],
  [14, 1, "we've a 22 m frontage and want a gate bang in the middle, 1.2 m wide. posts 2 m max"],
  [12, 2, 'front 72 ft w/ 2 gates both 3 ft, 8 ft max'],
  [8, 1, 'front 42 ft with a 4 ft gate in the middle, posts 8 ft max'],
]

/** The job as it stands after all that was said. */
async function jobOf(talk: string): Promise<Job> {
  const assistant = createAssistant(offlineReader)
  const turns: Turn[] = []
  for (const said of talk.split(' || ')) {
    const { answer, job } = await assistant.turn({ said, before: turns })
    turns.push({ n: turns.length, said, answer, job })
  }
  return jobAfter(turns)
}

describe('a fence, however it is told', () => {
  it.each(fences)('has %i posts and %i gates: %s', async (posts, gates, talk) => {
    const plan = planOf(await jobOf(talk))
    const outcome = plan?.node('posts', 'yard')?.outcome
    const counted = outcome?.ok ? numberIn(outcome.values.get('posts') as Quantity, 'post') : undefined
    expect({ posts: counted, gates: plan?.fence.runs.reduce((sum, run) => sum + run.gates.length, 0) }).toEqual({
      posts,
      gates,
    })
  })
})

// 93 − 3 1/2 = 89 1/2 between the posts; 2400 − 90 = 2310; 7 ft 10 in is said of what is between them.
const built: readonly (readonly [talk: string, at: string, opening: string])[] = [
  ['front 60 ft, max 8 ft || bay 3 on the front came out 93 in on center', 'front/bay-3', '89 1/2 in'],
  ['front 60 ft, max 8 ft || bay 3 on the front came out 93 in o.c.', 'front/bay-3', '89 1/2 in'],
  ['front 60 ft, max 8 ft || bay 1 measured 7 ft 9 in between post centres', 'front/bay-1', '89 1/2 in'],
  ['front 18 m, max 2.4 m || bay 2 came out 2400 mm centre to centre, pickets?', 'front/bay-2', '2310 mm'],
  ['front 60 ft, max 8 ft || bay 3 came out at 7 ft 10', 'front/bay-3', '94 in'],
]

describe('a bay as it was built', () => {
  it.each(built)('%s: at %s the opening is %s', async (talk, at, opening) => {
    const job = await jobOf(talk)
    const told = job.decisions.find((it) => it.word === 'opening' && it.at === at)?.value
    const node = planOf(job)?.node('opening', at)
    const value = told ?? (node?.outcome.ok ? node.outcome.values.get('opening') : undefined)
    const unit = opening.endsWith('mm') ? 'mm' : 'in'
    expect(numberIn(value as Quantity, unit)).toBe(numberIn(readOne(opening)?.quantity as Quantity, unit))
  })

  it('two gates of one width are two, wherever the width stands', async () => {
    const job = await jobOf('front 60 ft, max 8 ft bays || two gates in the front, each 3 ft')
    expect(planOf(job)?.fence.runs.map((run) => run.gates.length)).toEqual([2])
  })
})
