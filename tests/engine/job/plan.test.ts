// Whole fences: each is worked by hand above its test, and random ones must add up however they are cut.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { add, compare, exact, toNumber } from '../../../engine/quantities/amount.ts'
import { amountIn, isList, isQuantity, numberIn, type Quantity } from '../../../engine/quantities/quantity.ts'
import { decide } from '../../../engine/job/job.ts'
import { newMemo, type Plan } from '../../../engine/job/node.ts'
import { decisionsOf, jobOf, kindsOf, numberOf, planFrom, shownOf, type Told, valueAt } from './fences.ts'
import { randomFence } from './random-fences.ts'

const all = (plan: Plan, words: readonly string[], at = 'yard'): Record<string, string> =>
  Object.fromEntries(words.map((word) => [word, shownOf(plan, word, at)]))

describe('a yard of four sides, with a gate that was placed and a double one that was not', () => {
  const yard = planFrom(
    jobOf({
      'runLength@front': '60 ft',
      'runLength@right': '84 ft',
      'runLength@back': '60 ft',
      'runLength@left': '84 ft',
      runEnds: 'loop',
      widestBay: '8 ft',
      'gateOpening@front': '42 in',
      'gateStart@front': '20 ft',
      'gateOpening@left': '10 ft',
      'gateLeaves@left/gate-1': 'double',
      picketWidth: '3 1/2 in',
      widestGap: '2 1/2 in',
      picketLength: '42 in',
      postAbove: '4 ft',
      holeDiameter: '10 in',
      bagWeight: '60 lb',
    }),
  )

  // front: gate 42 + 3 1/2 = 45 1/2; before it 240/96 → 3 bays of 80; after it 720 − 240 − 45 1/2 = 434 1/2 → 5 of 86.9; posts 8 + 1 + 1
  // right: 1008/96 = 10.5 → 11 bays, 12 posts; back: 720/96 = 7.5 → 8 bays of 90, 9 posts
  // left: 1008 − 123 1/2 = 884 1/2; /96 = 9.2 → 10 bays of 88.45; 12 posts. 10 + 12 + 9 + 12 − 4 corners = 39
  it('has 37 bays and 39 posts, four of them at corners and four beside gates', () => {
    expect(all(yard, ['bays', 'posts', 'linePostCount'])).toEqual({
      bays: '37 bays',
      posts: '39 posts',
      linePostCount: '31 posts',
    })
    expect(kindsOf(yard)).toEqual({ 'corner-posts': 4, 'gate-posts': 4, 'line-posts': 31 })
    expect(yard.stretches.map((it) => `${it.place} × ${it.bays.length}`)).toEqual([
      'front/bay-1 × 3',
      'front/bay-4 × 5',
      'right/bay-1 × 11',
      'back/bay-1 × 8',
      'left/bay-1 × 10',
    ])
  })

  // 76 1/2: 74/6 → 13 × 3 = 39; 83.4: 80.9/6 → 14 × 5 = 70; 88 3/22: 85.64/6 → 15 × 11 = 165; 86 1/2: 84/6 = 14 × 8 = 112; 84.95 → 14 × 10 = 140
  // gates, a picket flush with each edge: 42 − 7/8 = 41 1/8, 43 5/8/6 → 8; leaves of (120 − 1 1/4)/2 = 59 3/8, 61 7/8/6 → 11 each
  it('hangs 556 pickets: 117 in front, 165 at the right, 112 at the back, 162 at the left', () => {
    expect(['front', 'right', 'back', 'left'].map((it) => numberOf(yard, 'picketsHung', it))).toEqual([
      109 + 8,
      165,
      112,
      140 + 22,
    ])
    // 556 × 1.05 = 583.8
    expect(all(yard, ['picketsHung', 'gatePickets', 'picketsToBuy'])).toEqual({
      picketsHung: '556 pickets',
      gatePickets: '30 pickets',
      picketsToBuy: '584 pickets',
    })
  })

  // 2 × 37 = 74; brackets 2 × 74; 556 × 2 × 2 × 1.1 = 2446.4; rails 6 × 76 1/4 + 10 × 83.15 + 22 × 87.886 + 16 × 86 1/4 + 20 × 84.7 = 6296 1/2 in
  it('has 74 rails, 148 brackets and 2,447 screws', () => {
    expect(all(yard, ['railsInAll', 'railLengthAll', 'brackets', 'screwsToBuy'])).toEqual({
      railsInAll: '74 rails',
      railLengthAll: '524 ft 8 1/2 in',
      brackets: '148 brackets',
      screwsToBuy: '2,447 screws',
    })
  })

  // embedment 24, stone 6; (π/4 × 100 − 12 1/4) × 24 = 1590.96 in³; × 39 = 35.91 ft³; /0.45 = 79.8
  it('takes 80 bags of 60 lb, and hangs its three leaves on six hinges', () => {
    expect(all(yard, ['concrete', 'bags', 'hinges', 'latches', 'dropRods'])).toEqual({
      concrete: '35.91 ft³',
      bags: '80 bags',
      hinges: '6 hinges',
      latches: '2 latches',
      dropRods: '1 rod',
    })
  })
})

describe('two runs in metric, from a wall to a free end, with one bay as it was built', () => {
  const plan = planFrom(
    jobOf(
      {
        'runLength@run-1': '12 m',
        'nearEnd@run-1': 'wall',
        'runLength@run-2': '7.5 m',
        widestBay: '2.4 m',
        postWidth: '90 mm',
        picketWidth: '70 mm',
        widestGap: '30 mm',
        rails: '3',
        'opening@run-2/bay-2': '1850 mm',
        postAbove: '1.2 m',
        holeDiameter: '300 mm',
        bagYield: '9.36 L',
      },
      'metric',
    ),
  )

  // run 1: 12 000 − 45 = 11 955; /2400 → 5 bays of 2391, 6 posts; run 2: 7500/2400 → 4 bays of 1875, 5 posts; 6 + 5 − 1 = 10
  it('has 9 bays and 10 posts, and the built bay stands apart', () => {
    expect(all(plan, ['bays', 'posts'])).toEqual({ bays: '9 bays', posts: '10 posts' })
    expect(kindsOf(plan)).toEqual({ 'corner-posts': 1, 'end-posts': 2, 'line-posts': 7 })
    expect(plan.stretches.map((it) => `${it.place} × ${it.bays.length}`)).toEqual([
      'run-1/bay-1 × 5',
      'run-2/bay-1 × 3',
      'run-2/bay-2 × 1',
    ])
  })

  // 2301: 2271/100 → 23 × 5 = 115; 1785: 1755/100 → 18 × 3 = 54; 1850: 1820/100 → 19. 188; × 1.05 = 197.4
  it('takes the pickets and the rails of that bay by its own opening', () => {
    expect(shownOf(plan, 'pickets', 'run-2/bay-2')).toBe('19 pickets')
    expect(shownOf(plan, 'railCut', 'run-2/bay-2')).toBe('1,844 mm')
    expect(['run-1', 'run-2', 'yard'].map((it) => numberOf(plan, 'picketsHung', it))).toEqual([115, 73, 188])
    expect(shownOf(plan, 'picketsToBuy')).toBe('198 pickets')
  })

  // 3 × 9; 15 × 2295 + 9 × 1779 + 3 × 1844 = 55 968; 188 × 3 × 2 × 1.1 = 1240.8
  it('has 27 rails, 55.968 m end to end, and 1,241 screws', () => {
    expect(all(plan, ['railsInAll', 'railLengthAll', 'screwsToBuy'])).toEqual({
      railsInAll: '27 rails',
      railLengthAll: '55.968 m',
      screwsToBuy: '1,241 screws',
    })
  })

  // depth 600; (70 685.8 − 8100) × 600 = 37.55 L; × 10 = 375.5; /9.36 = 40.1
  it('takes 41 bags, and has no gate to hang', () => {
    expect(all(plan, ['concrete', 'bags', 'gatePickets', 'hinges'])).toEqual({
      concrete: '375.5 L',
      bags: '41 bags',
      gatePickets: '0 pickets',
      hinges: '0 hinges',
    })
  })
})

describe('three runs with words of their own, and a double gate at the corner', () => {
  const plan = planFrom(
    jobOf({
      'runLength@front': '50 ft',
      'runLength@right': '40 ft',
      'runLength@back': '36 ft',
      'farEnd@back': 'wall',
      widestBay: '8 ft',
      'widestBay@right': '6 ft',
      'gateOpening@right': '10 ft',
      'gateStart@right': '0 ft',
      'gateLeaves@right': 'double',
      picketWidth: '3 1/2 in',
      'picketWidth@back': '5 1/2 in',
      widestGap: '2 1/2 in',
      'picketEnds@back': 'picket',
      'rails@back': '3',
    }),
  )

  // front: 600/96 → 7 bays of 85 5/7, 8 posts; right: 480 − 123 1/2 = 356 1/2, /72 → 5 of 71.3, 7 posts;
  // back: 432 − 1 3/4 = 430 1/4, /96 → 5 of 86.05, 6 posts. 8 + 7 + 6 − 2 = 19; the first corner is a gate post
  it('has 17 bays and 19 posts, and the corner where the gate hangs is a gate post', () => {
    expect(all(plan, ['bays', 'posts'])).toEqual({ bays: '17 bays', posts: '19 posts' })
    expect(kindsOf(plan)).toEqual({ 'gate-posts': 2, 'corner-posts': 1, 'end-posts': 2, 'line-posts': 14 })
    expect(plan.posts[7]).toMatchObject({ number: 8, kind: 'gate-posts', stands: [{ run: 'front' }, { run: 'right' }] })
  })

  // 82 3/14: 79.71/6 → 14 × 7 = 98; 67.8: 65.3/6 → 11 × 5 = 55; tight to the posts 82.55: 85.05/8 → 11 × 5 = 55; leaves 2 × 11
  // 98 × 2 + 55 × 2 + 55 × 3 + 22 × 2 = 515 crossings; × 2 × 1.1 = 1133. 230 × 1.05 = 241.5
  it('hangs 230 pickets, and crosses three rails at the back only', () => {
    expect(['front', 'right', 'back'].map((it) => numberOf(plan, 'picketsHung', it))).toEqual([98, 55 + 22, 55])
    expect(all(plan, ['picketsHung', 'picketsToBuy', 'picketCrossings', 'screwsToBuy'])).toEqual({
      picketsHung: '230 pickets',
      picketsToBuy: '242 pickets',
      picketCrossings: '515 places',
      screwsToBuy: '1,133 screws',
    })
  })

  // 14 + 10 + 15 = 39; 14 × 81 27/28 + 10 × 67.55 + 15 × 82.3 = 1147 1/2 + 675 1/2 + 1234 1/2 = 3057 1/2 in
  it('has 39 rails, and two leaves on four hinges', () => {
    expect(all(plan, ['railsInAll', 'railLengthAll', 'brackets', 'hinges', 'dropRods'])).toEqual({
      railsInAll: '39 rails',
      railLengthAll: '254 ft 9 1/2 in',
      brackets: '78 brackets',
      hinges: '4 hinges',
      dropRods: '1 rod',
    })
  })
})

describe('one run that nobody named, and one that steps down', () => {
  // 700 − 3 1/2 − 45 1/2 = 651; /96 → 7 bays of 93; 9 posts. 89 1/2: 87/6 → 15 × 7 = 105, and 8 on the gate
  it('between two walls, with a gate where two bays meet', () => {
    const plan = planFrom(
      jobOf({
        runLength: '700 in',
        widestBay: '8 ft',
        runEnds: 'walls',
        gates: '1',
        gateOpening: '42 in',
        picketWidth: '3 1/2 in',
        widestGap: '2 1/2 in',
      }),
    )
    expect(all(plan, ['bays', 'posts', 'picketsHung', 'railsInAll'])).toEqual({
      bays: '7 bays',
      posts: '9 posts',
      picketsHung: '113 pickets',
      railsInAll: '14 rails',
    })
    expect(kindsOf(plan)).toEqual({ 'end-posts': 2, 'gate-posts': 2, 'line-posts': 5 })
    expect(plan.stretches.map((it) => it.bays.length)).toEqual([7])
  })

  // 48 ft: 6 bays of 8 ft, 7 posts, step 40/6 = 6 2/3; front 24 ft: 3 bays, 4 posts. 72 in by the rule for 48 in above
  // Posts of the stepped run are longer by the step, the corner among them: 7 of 78 2/3, 3 of 72
  it('posts of the run that steps down are longer by its step', () => {
    const plan = planFrom(
      jobOf({
        'runLength@front': '24 ft',
        'runLength@right': '48 ft',
        'fall@right': '40 in',
        'slopeWay@right': 'stepped',
        widestBay: '8 ft',
        postAbove: '48 in',
      }),
    )
    expect(shownOf(plan, 'stepEach', 'right')).toBe('6 2/3 in')
    const given = plan.node('takeOffLines', 'yard')?.outcome.given
    const [lengths, counts] = [given?.get('postLengths')?.value, given?.get('postsByLength')?.value]
    expect(isList(lengths) && lengths.map((it) => amountIn(it, 'in')).map(toNumber)).toEqual([72, 78 + 2 / 3])
    expect(isList(counts) && counts.map((it) => toNumber(it.amount))).toEqual([3, 7])
  })

  // 40/6 = 6 2/3 and 20/6 = 3 1/3 over 72: 7 posts of the one run with the corner, 6 of the other, whichever of them comes first.
  it('a corner between two such runs is longer by the larger step', () => {
    const lengthsOf = (falls: readonly [string, string]): unknown => {
      const given = planFrom(
        jobOf({
          'runLength@front': '48 ft',
          'runLength@right': '48 ft',
          'fall@front': falls[0],
          'fall@right': falls[1],
          'slopeWay@front': 'stepped',
          'slopeWay@right': 'stepped',
          widestBay: '8 ft',
          postAbove: '48 in',
        }),
      ).node('takeOffLines', 'yard')?.outcome.given
      const [lengths, counts] = [given?.get('postLengths')?.value, given?.get('postsByLength')?.value]
      return (
        isList(lengths) &&
        isList(counts) &&
        lengths
          .map((it, i) => [Math.round(toNumber(amountIn(it, 'in')) * 3) / 3, toNumber((counts[i] as Quantity).amount)])
          .toSorted(([a = 0], [b = 0]) => a - b)
      )
    }
    expect(lengthsOf(['40 in', '20 in'])).toEqual([
      [226 / 3, 6],
      [236 / 3, 7],
    ])
    expect(lengthsOf(['20 in', '40 in'])).toEqual(lengthsOf(['40 in', '20 in']))
  })
})

describe('what is told of a run holds in the sums of the whole fence', () => {
  // 40 in over 40 ft: a bay of 71.3 in falls 5.94 in, and the 123 1/2 in of the gate more. A post shorter than that does not reach.
  it('a step is no smaller than the ground falls over a bay as it is laid out, where a gate makes bays other', () => {
    const plan = planFrom(
      jobOf({
        'runLength@right': '40 ft',
        widestBay: '6 ft',
        'gateOpening@right': '10 ft',
        'gateStart@right': '0 ft',
        'fall@right': '40 in',
        'slopeWay@right': 'stepped',
      }),
    )
    const widest = Math.max(...(plan.runs[0]?.bays ?? []).map((it) => toNumber(it.centres.amount)))
    expect(numberOf(plan, 'stepEach', 'right')).toBeGreaterThanOrEqual((40 * widest) / 480 - 1e-9)
  })

  // Both runs have pickets of 5 1/2 in: as much to finish and to carry as where the yard was told so.
  it.each(['finishArea', 'takeOffWeight'])('%s is by the pickets that each run has', (word) => {
    const told: Told = {
      'runLength@front': '48 ft',
      'runLength@right': '24 ft',
      widestBay: '8 ft',
      widestGap: '2 1/2 in',
      picketLength: '42 in',
      picketThickness: '3/4 in',
      postAbove: '4 ft',
      species: 'southern-pine',
      moistureNow: '19 %',
    }
    const byRun = { picketWidth: '3 1/2 in', 'picketWidth@front': '5 1/2 in', 'picketWidth@right': '5 1/2 in' }
    expect(numberOf(planFrom(jobOf({ ...told, ...byRun })), word)).toBeCloseTo(
      numberOf(planFrom(jobOf({ ...told, picketWidth: '5 1/2 in' })), word),
      6,
    )
  })

  // 3 1/2 in on one run and 5 1/2 in on the other: it is no answer to ask for the width that was told twice.
  it('where the runs have different pickets, the area says that it needs one width, and does not ask what was told', () => {
    const plan = planFrom(
      jobOf({
        'runLength@front': '48 ft',
        'runLength@right': '24 ft',
        widestBay: '8 ft',
        widestGap: '2 1/2 in',
        picketLength: '42 in',
        postAbove: '4 ft',
        'picketWidth@front': '5 1/2 in',
        'picketWidth@right': '3 1/2 in',
      }),
    )
    const outcome = plan.node('finishArea', 'yard')?.outcome
    const said = !outcome ? [] : outcome.ok ? outcome.doubts : outcome.problems
    expect(said.filter((it) => it.word === 'picketWidth').map((it) => it.code)).toEqual(['contradictory'])
  })
})

describe('what stands at gates is counted, or asked for, and never passed over', () => {
  const told = {
    'runLength@front': '24 ft',
    widestBay: '8 ft',
    'gateOpening@front': '42 in',
    picketWidth: '3 1/2 in',
    widestGap: '2 1/2 in',
  }
  /** Whether the gates’ pickets are in the sum, or it is said why not. */
  function isCountedOrSaid(fence: Told): boolean {
    const outcome = planFrom(jobOf(fence)).node('picketsHung', 'yard')?.outcome
    const said = !outcome ? [] : outcome.ok ? outcome.doubts : outcome.problems
    const onGates = outcome?.given.get('gatePickets')?.value
    return (isQuantity(onGates) && toNumber(onGates.amount) > 0) || said.some((it) => it.word === 'widestGap')
  }

  it('a gate whose pickets can be worked is in the sum', () => expect(isCountedOrSaid(told)).toBe(true))

  // A leaf is worked by the widest gap. Where only the gap one would like was told, its pickets cannot be counted yet.
  it('pickets of the whole fence do not leave out those of a gate that lacks its widest gap', () => {
    const { widestGap, ...rest } = told
    expect(isCountedOrSaid({ ...rest, wantedGap: widestGap })).toBe(true)
  })

  // 43 in, double: leaves of 20 7/8 in; four pickets of 5 1/4 in are 21 in, and three leave gaps of 2 9/16 in.
  it('nor those of all gates, when one leaf takes no number of pickets', () => {
    const odd = { ...told, 'gateOpening@front': '43 in', 'gateLeaves@front': 'double', 'picketWidth@front': '5 1/4 in' }
    expect(isCountedOrSaid({ ...odd, 'runLength@back': '24 ft', 'gateOpening@back': '36 in' })).toBe(true)
  })

  // Posts and rails alone are 138.6 ft²; the pickets, most of the fence, are not known yet.
  it.each(['finishArea', 'workTime'])('%s asks for the pickets where they are not in it yet', (word) => {
    const plan = planFrom(jobOf({ 'runLength@front': '60 ft', widestBay: '8 ft', postAbove: '4 ft' }))
    const outcome = plan.node(word, 'yard')?.outcome
    const said = !outcome ? [] : outcome.ok ? outcome.doubts : outcome.problems
    expect(said.map((it) => it.word)).toContain('picketWidth')
  })

  // Nobody said how wide the posts are: 3 1/2 in is taken for their holes, and must be for their weight.
  it('posts of the usual width are weighed like the rest', () => {
    const plan = planFrom(
      jobOf({
        ...told,
        picketLength: '42 in',
        postAbove: '4 ft',
        species: 'southern-pine',
        moistureNow: '19 %',
        railDepth: '3 1/2 in',
        railThickness: '1 1/2 in',
      }),
    )
    const outcome = plan.node('takeOffLines', 'yard')?.outcome
    const remarks = outcome?.ok ? outcome.remarks : []
    expect(remarks.find((it) => it.startsWith('Not weighed')) ?? '').not.toMatch(/posts|rails|pickets/)
  })
})

describe('any fence adds up', () => {
  const sumOver = (plan: Plan, word: string): Quantity['amount'] =>
    plan.fence.runs.reduce(
      (sum, { place }) => add(sum, (valueAt(plan, word, place) as Quantity).amount),
      exact(0) as Quantity['amount'],
    )
  const leavesAreWorked = ({ fence, node }: Plan): boolean =>
    fence.runs.every((run) => run.gates.every(({ place }) => node('picketsEachGate', place)?.outcome.ok))
  const ofYard = (plan: Plan, word: string): Quantity['amount'] => (valueAt(plan, word) as Quantity).amount

  it('every run’s pickets, crossings and rails make up the yard’s', () => {
    fc.assert(
      fc.property(randomFence, ({ told, system }) => {
        const plan = planFrom(jobOf(told, system))
        fc.pre(leavesAreWorked(plan))
        for (const word of ['picketsHung', 'picketCrossings', 'railsInAll', 'railLengthAll'])
          expect(compare(ofYard(plan, word), sumOver(plan, word)), word).toBe(0)
        const runs = plan.runs.reduce((sum, it) => sum + it.bays.length, 0)
        expect(numberOf(plan, 'bays')).toBe(runs)
        expect(plan.stretches.reduce((sum, it) => sum + it.bays.length, 0)).toBe(runs)
      }),
      { numRuns: 60, seed: 20_260_501 },
    )
  })

  // An open fence is a path: one post more than bays and gates. A closed one is a ring: as many.
  it('posts are the points of a path or of a ring, and every post is of one kind', () => {
    fc.assert(
      fc.property(randomFence, ({ told, system, isClosed, gates, walls }) => {
        const plan = planFrom(jobOf(told, system))
        // Two runs that meet at a wall do not share a post: each has its own.
        const apart = walls
        expect(numberOf(plan, 'posts')).toBe(numberOf(plan, 'bays') + gates + (isClosed ? 0 : 1) + apart)
        expect(plan.posts).toHaveLength(numberOf(plan, 'posts'))
        const kinds = kindsOf(plan)
        expect(Object.values(kinds).reduce((sum, it) => sum + it, 0)).toBe(numberOf(plan, 'posts'))
        expect(numberOf(plan, 'linePostCount')).toBe(kinds['line-posts'] ?? 0)
        expect(plan.posts.map((it) => it.number)).toEqual(plan.posts.map((_, i) => i + 1))
      }),
      { numRuns: 60, seed: 20_260_502 },
    )
  })

  it('a run’s bays and gates, with the posts between, fill it', () => {
    fc.assert(
      fc.property(randomFence, ({ told, system }) => {
        const plan = planFrom(jobOf(told, system))
        for (const { run, bays, stations, gateSpaces } of plan.runs) {
          const [first, last] = [stations[0], stations.at(-1)] as [Quantity, Quantity]
          const steps = stations
            .slice(1)
            .map((it, i) => toNumber(it.amount) - toNumber((stations[i] as Quantity).amount))
          const fenced = bays.reduce((sum, it) => sum + toNumber(it.centres.amount), 0)
          const gated = steps.filter((_, i) => gateSpaces[i]).reduce((sum, it) => sum + it, 0)
          expect(fenced + gated).toBeCloseTo(toNumber(last.amount) - toNumber(first.amount), 6)
          const length = toNumber((run.length as { value: Quantity }).value.amount)
          const ends = (run.nearEnd === 'post' ? 0 : 1) + (run.farEnd === 'post' ? 0 : 1)
          const post = plan.node('bays', run.place)?.outcome.given.get('postWidth')?.value as Quantity
          const half = toNumber(post.amount) / 2
          expect(length - (fenced + gated)).toBeCloseTo(ends * half, 6)
        }
      }),
      { numRuns: 60, seed: 20_260_503 },
    )
  })

  it('the lines of the take-off add up to what it costs, to the cent, and its weights to what it weighs', () => {
    fc.assert(
      fc.property(randomFence, ({ told, system }) => {
        const plan = planFrom(jobOf(told, system))
        const { outcome } = plan.node('takeOffLines', 'yard') as NonNullable<ReturnType<Plan['node']>>
        if (!outcome.ok) throw new Error(outcome.problems.map((it) => it.message).join(' '))
        const rows = outcome.tables.find((it) => it.title === 'Take-off')?.rows ?? []
        const figure = (text: number | string | undefined): number => Number(String(text).replace(/[^\d.]/g, ''))
        const cents = rows.reduce((sum, row) => sum + Math.round(100 * figure(row[4])), 0)
        expect(cents).toBe(Math.round(100 * numberOf(plan, 'takeOffCost')))
        expect(rows).toHaveLength(numberOf(plan, 'takeOffLines'))
        // Each row is shown to four figures.
        const shown = rows.reduce((sum, row) => sum + figure(row[5]), 0)
        const mass = outcome.values.get('takeOffWeight') as Quantity
        const whole = numberIn(mass, mass.unit)
        expect(Math.abs(shown - whole) / whole).toBeLessThan(0.001)
        // What was bought is what the parts gave.
        const posts = rows.filter((it) => it[0] === 'posts').reduce((sum, row) => sum + figure(row[1]), 0)
        expect(posts).toBe(numberOf(plan, 'posts'))
        for (const [what, word] of [
          ['rails', 'railsInAll'],
          ['pickets', 'picketsToBuy'],
          ['bags of concrete', 'bags'],
        ] as const)
          expect(figure(rows.find((it) => it[0] === what)?.[1]), what).toBe(numberOf(plan, word))
        const weights = plan.stretches.map((it) => numberOf(plan, 'railsWeight', it.place))
        const railsGiven = outcome.given.get('railsWeights')?.value
        expect(isList(railsGiven) && railsGiven.map((it) => toNumber(it.amount))).toEqual(weights)
      }),
      { numRuns: 40, seed: 20_260_504 },
    )
  })
})

describe('what a plan says of a figure', () => {
  it('is said in the turn that told it, and known in the next', () => {
    const job = decide(jobOf({ 'runLength@front': '60 ft' }), decisionsOf({ widestBay: '8 ft' }, 1))
    const role = (turn: number, word: string) =>
      planFrom(job, newMemo(), turn).node('bays', 'front')?.outcome.given.get(word)?.role
    expect([role(1, 'widestBay'), role(1, 'runLength')]).toEqual(['said', 'known'])
    expect(role(2, 'widestBay')).toBe('known')
  })

  // The hours of the fence are known without the hours of a day, its days are not.
  it('that its part does not give yet is what it lacks', () => {
    const told = { 'runLength@front': '60 ft', widestBay: '8 ft', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }
    const days = planFrom(jobOf(told)).answer('workDays', 'yard')[0]?.outcome
    expect(days && !days.ok && days.problems.map((it) => [it.code, it.word])).toEqual([['missing', 'dayHours']])
    expect(planFrom(jobOf(told)).answer('workTime', 'yard')[0]?.outcome.ok).toBe(true)
    expect(planFrom(jobOf({ ...told, dayHours: '8 h' })).answer('workDays', 'yard')[0]?.outcome.ok).toBe(true)
  })
})
