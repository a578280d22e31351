// This file is about the evidence for what a whole fence is counted from: its runs walked, its posts as points that fences join.
import type { Check } from '../check.ts'
import type { Ran } from '../../engine/run-named.ts'
import { isList, numberIn } from '../../../engine/quantities/quantity.ts'
import { toNumber } from '../../../engine/quantities/amount.ts'
import { decimalsWork, inDecimals } from '../decimals.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

// ── a run, walked with a stick as long as the widest bay ──

interface Walk {
  readonly length: number
  readonly stick: number
  readonly post: number
  /** Whether a post stands against a wall, or was measured to its outside, at the start and at the end. */
  readonly against: readonly [boolean, boolean]
  /** Where each gate’s nearer post stands along the tape, and how wide it opens. In order. */
  readonly gates: readonly { readonly at: number; readonly opens: number }[]
}

/** Where every post stands along the tape: whole marks of a tape, the stick laid down until the next fixed post is reached. */
function walked({ length, stick, post, against, gates }: Walk): number[] {
  const first = against[0] ? post / 2 : 0
  const last = against[1] ? length - post / 2 : length
  const posts = [first]
  const fence = (to: number): void => {
    const from = posts.at(-1) as number
    let lays = 0
    for (let reach = from; reach < to; reach += stick) lays++
    for (let i = 1; i <= lays; i++) posts.push(from + ((to - from) * i) / lays)
  }
  for (const { at, opens } of gates) {
    if (at > (posts.at(-1) as number)) fence(at)
    posts.push(at + opens + post)
  }
  if (last > (posts.at(-1) as number)) fence(last)
  return posts
}
const walking =
  'second derivation: the run walked in whole marks of the tape, a stick as long as the widest bay laid down until the next fixed post is reached'

/** How far the posts of the calculation stand from the posts of the walk, the worst of them; a missing post is a whole inch or more. */
const worstPost =
  (expected: readonly number[], unit: string, perUnit: number) =>
  ({ outcome }: Ran): number => {
    const stations = outcome.ok ? outcome.values.get('postStations') : undefined
    if (!isList(stations)) throw new Error('no posts')
    if (stations.length !== expected.length) return Number.POSITIVE_INFINITY
    return Math.max(...stations.map((it, i) => Math.abs(numberIn(it, unit) * perUnit - (expected[i] as number))))
  }

// In sixteenths of an inch: 63 ft 5 1/2 in, from an outside face to a post’s centre, gates at 12 ft and at 40 ft 3 in.
const twoGates = walked({
  length: 16 * (63 * 12 + 5.5),
  stick: 16 * 96,
  post: 16 * 3.5,
  against: [true, false],
  gates: [
    { at: 16 * 144, opens: 16 * 42 },
    { at: 16 * 483, opens: 16 * 120 },
  ],
})
// In millimetres: 12 m to a wall, gates at 3 m and 7 m.
const metricGates = walked({
  length: 12_000,
  stick: 2400,
  post: 90,
  against: [false, true],
  gates: [
    { at: 3000, opens: 1000 },
    { at: 7000, opens: 3000 },
  ],
})

// ── the fence as a graph: posts are points, bays and gates are the lines between them ──

interface Graph {
  readonly runs: readonly { readonly posts: number; readonly gates?: readonly number[] }[]
  readonly isClosed: boolean
}

/** Counts by walking the graph: a point for every post of every run, the two at a corner made one. */
function counted({ runs, isClosed }: Graph) {
  const same = new Map<string, string>()
  const name = (run: number, post: number): string => same.get(`${run}/${post}`) ?? `${run}/${post}`
  for (let i = 0; i < runs.length - (isClosed ? 0 : 1); i++)
    same.set(`${i}/${(runs[i] as Graph['runs'][number]).posts - 1}`, `${(i + 1) % runs.length}/0`)
  const lines = runs.flatMap(({ posts, gates = [] }, run) =>
    Array.from({ length: posts - 1 }, (_, i) => ({
      from: name(run, i),
      to: name(run, i + 1),
      isGate: gates.includes(i),
      run,
    })),
  )
  const points = [...new Set(lines.flatMap((it) => [it.from, it.to]))]
  const at = (point: string) => lines.filter((it) => it.from === point || it.to === point)
  return {
    posts: points.length,
    bays: lines.filter((it) => !it.isGate).length,
    shared: points.filter((it) => new Set(at(it).map((line) => line.run)).size > 1).length,
    beside: points.filter((it) => at(it).some((line) => line.isGate)).length,
    corners: points.filter(
      (it) => new Set(at(it).map((line) => line.run)).size > 1 && !at(it).some((line) => line.isGate),
    ).length,
    ends: points.filter((it) => at(it).length === 1 && !at(it).some((line) => line.isGate)).length,
    between: points.filter(
      (it) =>
        at(it).length === 2 && !at(it).some((line) => line.isGate) && new Set(at(it).map((l) => l.run)).size === 1,
    ).length,
  }
}
const asGraph =
  'second derivation: the fence as a graph, its points and lines listed one by one and counted; a line post is a point of two bays of one run'

/** The inputs of the calculation as they come from such a graph. */
function givenFrom(graph: Graph): Record<string, string | readonly string[]> {
  const it = counted(graph)
  return {
    runPosts: graph.runs.map(({ posts }) => String(posts)),
    runBays: graph.runs.map(({ posts, gates = [] }) => String(posts - 1 - gates.length)),
    cornersShared: String(it.shared),
    gatePostCount: String(it.beside),
    cornerPostCount: String(it.corners),
    endPostCount: String(it.ends),
    runEnds: graph.isClosed ? 'loop' : 'centres',
  }
}
// A gate in the midst of the first run, one at the corner where the third begins; open, then closed.
const open: Graph = { runs: [{ posts: 9, gates: [3] }, { posts: 7 }, { posts: 12, gates: [0, 8] }], isClosed: false }
const closed: Graph = { runs: [{ posts: 9, gates: [3] }, { posts: 7 }, { posts: 9 }, { posts: 7 }], isClosed: true }

// ── pickets and rails taken in hand one by one ──

interface Stretch {
  readonly bays: number
  readonly pickets: number
  readonly rails: number
  /** In sixteenths of an inch. */
  readonly rail: number
}
const stretches: readonly Stretch[] = [
  { bays: 5, pickets: 16, rails: 2, rail: 16 * 92.25 },
  { bays: 8, pickets: 17, rails: 3, rail: 16 * 94.8125 },
  { bays: 1, pickets: 6, rails: 2, rail: 16 * 31.375 },
]
const onGates = 19
/** Bay by bay and picket by picket: what is hung, and every place where one lies on a rail. */
function hung(): { pickets: number; crossings: number } {
  let [pickets, crossings] = [0, 0]
  for (const stretch of stretches)
    for (let bay = 0; bay < stretch.bays; bay++)
      for (let picket = 0; picket < stretch.pickets; picket++) {
        pickets++
        for (let rail = 0; rail < stretch.rails; rail++) crossings++
      }
  for (let picket = 0; picket < onGates; picket++) {
    pickets++
    crossings += 2
  }
  return { pickets, crossings }
}
/** Hung ones handed out twenty at a time, a spare laid by with every twenty that are begun. */
function withSpares(pickets: number): number {
  let spares = 0
  for (let left = pickets; left > 0; left -= 20) spares++
  return pickets + spares
}
const picketsGiven = {
  bayPickets: stretches.map((it) => String(it.pickets)),
  stretchBays: stretches.map((it) => String(it.bays)),
  bayRails: stretches.map((it) => String(it.rails)),
  gatePickets: String(onGates),
  picketSpare: '5 %',
}
const railsGiven = {
  bayRails: stretches.map((it) => String(it.rails)),
  stretchBays: stretches.map((it) => String(it.bays)),
  railCuts: stretches.map((it) => `${it.rail / 16} in`),
}
const oneByOne = 'second derivation: every bay and every stick in it taken in hand one by one, in whole sixteenths'

// ── the bill in whole cents ──

const bought = { postsByLength: ['17', '6'], postPrice: '$18.49', picketsToBuy: '237', picketPrice: '$3.19' }
const more = {
  railsInAll: '46',
  railPrice: '$7.25',
  bags: '23',
  bagPrice: '$6.75',
  gravel: '12.25 ft3',
  stonePrice: '$41.30',
  stoneUnit: '1 yd3',
  hinges: '6',
  hingePrice: '$11.95',
  latches: '2',
  latchPrice: '$18.60',
  deliveryPrice: '$65',
}
/** As a till works: whole cents, and the one part of a yard rounded to the cent. */
const tillInCents = (): number => {
  let cents = 0
  const ring = (count: number, each: number): void => {
    for (let i = 0; i < count; i++) cents += each
  }
  ring(17, 1849)
  ring(6, 1849)
  ring(237, 319)
  ring(46, 725)
  ring(23, 675)
  cents += Math.floor((12.25 / 27) * 4130 + 0.5)
  ring(6, 1195)
  ring(2, 1860)
  return cents + 6500
}

/** The figures of one column of the take-off's table, added up. */
const columnSum =
  (column: number) =>
  ({ outcome }: Ran): number => {
    const rows = outcome.ok ? (outcome.tables.find((it) => it.title === 'Take-off')?.rows ?? []) : []
    const cents = rows.map((row) => Math.round(100 * Number(String(row[column]).replace(/[^\d.]/g, ''))))
    return cents.reduce((sum, it) => sum + it, 0) / 100
  }

// ── corner points ──

// A yard out of square, in feet: the second corner lies behind the stake.
const corners = [
  [0, 0],
  [63.5, -4],
  [72, 51.25],
  [10, 66],
] as const
const pointsGiven = {
  pointsAcross: corners.map(([x]) => `${x} ft`),
  pointsAlong: corners.map(([, y]) => `${y} ft`),
  runEnds: 'loop',
}
/** Each corner's angle from the three sides of the triangle that it makes with its neighbours: the law of cosines, no direction in it. */
const anglesBySides = corners.map((_, i) => {
  const [before, here, after] = [0, 1, 2].map((step) => corners[(i + step) % 4] as readonly [number, number])
  const apart = (a: readonly number[] = [], b: readonly number[] = []): number =>
    Math.hypot((a[0] ?? 0) - (b[0] ?? 0), (a[1] ?? 0) - (b[1] ?? 0))
  const [a, b, across] = [apart(before, here), apart(here, after), apart(before, after)]
  return (Math.acos((a ** 2 + b ** 2 - across ** 2) / (2 * a * b)) * 180) / Math.PI
})

// ── a run that steps down, post by post ──

// In sixteenths of an inch: bays of 7 ft and 8 ft, a gate of 10 ft between posts of 3 1/2 in, ground that falls one in twenty.
const spaces = [
  { wide: 16 * 84, isGate: false },
  { wide: 16 * 96, isGate: false },
  { wide: 16 * 123.5, isGate: true },
  { wide: 16 * 84, isGate: false },
]
/** The ground at each post, walked down the slope; the greatest drop between two posts with a bay, or a gate, between them. */
function greatestDrop(ofGates: boolean): number {
  let [ground, greatest] = [0, 0]
  for (const { wide, isGate } of spaces) {
    const next = ground - wide / 20
    if (isGate === ofGates) greatest = Math.max(greatest, ground - next)
    ground = next
  }
  return greatest / 16
}
const stepsGiven = { slope: '5 %', bayRow: ['7 ft', '8 ft', '7 ft'], gateOpenings: ['10 ft'], highEndGap: '2 in' }
const bySlope =
  'second derivation: the ground walked from post to post, its height kept, and each drop taken between two'

export const fenceChecks: readonly Check[] = [
  ...(
    [
      ['stepEach', 'the step', () => greatestDrop(false)],
      ['longerPost', 'how much longer its posts are', () => greatestDrop(false)],
      ['longerAtGates', 'how much longer they are beside the gate', () => greatestDrop(true)],
      ['gapUnderStep', 'the gap under its widest bay', () => 2 + greatestDrop(false)],
    ] as const
  ).map(
    ([gives, what, expected]): Check => ({
      calculation: 'step-of-run',
      what: `${what} of a run with bays of 7 and 8 ft and a gate`,
      kind: 'second derivation',
      source: bySlope,
      given: stepsGiven,
      gives,
      unit: 'in',
      expected,
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'opening-of-bay',
    what: 'between 3 1/2 in posts whose centres are 7 ft 9 in apart',
    kind: 'library',
    source:
      'mathjs 15: the faces of the two posts as points on one line, in its own units, and the distance between them',
    given: { bayCentres: '7 ft 9 in', postWidth: '3 1/2 in' },
    gives: 'opening',
    unit: 'in',
    expected: () => byMathjs('distance([0 + 3.5 / 2, 0], [(7 ft + 9 in) / (1 in) - 3.5 / 2, 0]) * 1 in', 'in'),
    tolerance: 1e-9,
  },
  {
    calculation: 'days-of-tasks',
    what: 'pickets of 21 hours by two, five hours a day',
    kind: 'second derivation',
    source: 'second derivation: ten hours of work taken off each day until none is left',
    given: { picketHanging: '21 h', helpers: '1', dayHours: '5 h' },
    gives: 'picketWork',
    unit: 'day',
    expected: () => {
      let [left, days] = [21, 0]
      for (; left > 0; days++) left -= 2 * 5
      return days
    },
    tolerance: 0,
  },
  {
    calculation: 'runs-from-points',
    what: 'round a yard of four corners out of square',
    kind: 'library',
    source: 'mathjs 15: its distance between two points, added with its own units',
    given: pointsGiven,
    gives: 'yardPerimeter',
    unit: 'ft',
    expected: () =>
      byMathjs(
        corners
          .map(([x, y], i) => {
            const [nextX, nextY] = corners[(i + 1) % 4] as readonly [number, number]
            return `distance([${x}, ${y}], [${nextX}, ${nextY}]) * 1 ft`
          })
          .join(' + '),
        'ft',
      ),
    tolerance: 1e-9,
  },
  {
    calculation: 'runs-from-points',
    what: 'its angles, the worst of the four',
    kind: 'second derivation',
    source: 'second derivation: by the law of cosines from the sides of the triangle at each corner',
    given: pointsGiven,
    gives: 'cornersInside',
    unit: 'deg',
    got: ({ outcome }) => {
      const angles = outcome.ok ? outcome.values.get('cornersInside') : undefined
      if (!isList(angles) || angles.length !== 4) return Number.POSITIVE_INFINITY
      return Math.max(...angles.map((it, i) => Math.abs(numberIn(it, 'deg') - (anglesBySides[i] as number))))
    },
    expected: 0,
    tolerance: 1e-6,
  },
  ...(
    [
      ['bays', 'bay', twoGates.length - 1 - 2],
      ['posts', 'post', twoGates.length],
    ] as const
  ).map(
    ([gives, unit, expected]): Check => ({
      calculation: 'run-set-out',
      what: `${gives} of a run with two gates where they were wanted`,
      kind: 'second derivation',
      source: walking,
      given: {
        runLength: '63 ft 5 1/2 in',
        widestBay: '8 ft',
        nearEnd: 'outside',
        gateOpenings: ['42 in', '120 in'],
        gateStarts: ['12 ft', '40 ft 3 in'],
        postWidth: '3 1/2 in',
      },
      gives,
      unit,
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'run-in-pieces',
    what: 'a run of three pieces with two gates between them, post by post',
    kind: 'second derivation',
    source: walking,
    given: {
      runPieces: ['12 ft 4 in', '24 ft 6 1/2 in', '8 ft'],
      gateOpenings: ['42 in', '10 ft'],
      postWidth: '3 1/2 in',
    },
    gives: 'runLength',
    unit: 'in',
    // From post centre to centre along each piece; half a post, the opening and half a post at each gate.
    expected: [148, 1.75, 42, 1.75, 294.5, 1.75, 120, 1.75, 96].reduce((at, step) => at + step, 0),
    tolerance: 1e-9,
  },
  {
    calculation: 'run-set-out',
    what: 'where each post of it stands, the worst of them',
    kind: 'second derivation',
    source: walking,
    given: {
      runLength: '63 ft 5 1/2 in',
      widestBay: '8 ft',
      nearEnd: 'outside',
      gateOpenings: ['42 in', '120 in'],
      gateStarts: ['12 ft', '40 ft 3 in'],
      postWidth: '3 1/2 in',
    },
    gives: 'postStations',
    unit: '1/16 in',
    got: worstPost(twoGates, 'in', 16),
    expected: 0,
    tolerance: 1e-8,
  },
  {
    calculation: 'run-set-out',
    what: 'where each post of a run of 12 m to a wall stands, the worst of them',
    kind: 'second derivation',
    source: walking,
    system: 'metric',
    given: {
      runLength: '12 m',
      widestBay: '2.4 m',
      farEnd: 'wall',
      gateOpenings: ['1000 mm', '3000 mm'],
      gateStarts: ['3 m', '7 m'],
      postWidth: '90 mm',
    },
    gives: 'postStations',
    unit: 'mm',
    got: worstPost(metricGates, 'mm', 1),
    expected: 0,
    tolerance: 1e-8,
  },
  {
    calculation: 'run-set-out',
    what: 'bays, posts and gates laid end to end between two walls fill the measure',
    kind: 'library',
    source: mathjsWorks,
    given: {
      runLength: '700 in',
      widestBay: '8 ft',
      nearEnd: 'wall',
      farEnd: 'wall',
      gateOpenings: ['42 in'],
      postWidth: '3 1/2 in',
    },
    gives: 'openings',
    unit: 'in',
    got: ({ outcome }) => {
      const openings = outcome.ok ? outcome.values.get('openings') : undefined
      if (!isList(openings)) throw new Error('no openings')
      const posts = outcome.ok ? outcome.values.get('posts') : undefined
      if (!posts || typeof posts !== 'object' || isList(posts)) throw new Error('no posts')
      const clear = openings.map((it) => `${numberIn(it, 'in')} inch`).join(' + ')
      return byMathjs(`${clear} + ${toNumber(posts.amount)} * 3.5 inch + 42 inch`, 'inch')
    },
    expected: 700,
    tolerance: 1e-9,
  },
  ...([open, closed] as const).flatMap((graph) => {
    const it = counted(graph)
    return (
      [
        ['posts', 'post', it.posts],
        ['bays', 'bay', it.bays],
        ['linePostCount', 'post', it.between],
      ] as const
    ).map(
      ([gives, unit, expected]): Check => ({
        calculation: 'posts-of-fence',
        what: `${gives === 'linePostCount' ? 'line posts' : gives} of ${graph.isClosed ? 'a closed' : 'an open'} fence of ${graph.runs.length} runs`,
        kind: 'second derivation',
        source: asGraph,
        given: givenFrom(graph),
        gives,
        unit,
        expected,
        tolerance: 0,
      }),
    )
  }),
  ...(
    [
      ['picketsHung', 'picket', hung().pickets],
      ['picketCrossings', 'place', hung().crossings],
      ['picketsToBuy', 'picket', withSpares(hung().pickets)],
    ] as const
  ).map(
    ([gives, unit, expected]): Check => ({
      calculation: 'pickets-of-fence',
      what: `${gives === 'picketsHung' ? 'pickets hung' : gives === 'picketsToBuy' ? 'pickets with one spare for every twenty begun' : 'crossings'} in three stretches and on gates`,
      kind: 'second derivation',
      source: oneByOne,
      given: picketsGiven,
      gives,
      unit,
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'rails-of-fence',
    what: 'rails in three stretches',
    kind: 'second derivation',
    source: oneByOne,
    given: railsGiven,
    gives: 'railsInAll',
    unit: 'rail',
    expected: () => {
      const rails: number[] = []
      for (const it of stretches)
        for (let bay = 0; bay < it.bays; bay++) for (let rail = 0; rail < it.rails; rail++) rails.push(it.rail)
      return rails.length
    },
    tolerance: 0,
  },
  {
    calculation: 'rails-of-fence',
    what: 'the same end to end',
    kind: 'library',
    source: `${mathjsWorks}: the dot product of the lengths and of how many there are`,
    given: railsGiven,
    gives: 'railLengthAll',
    unit: 'ft',
    expected: () =>
      byMathjs(
        `dot([${stretches.map((it) => it.rail / 16)}], [${stretches.map((it) => it.bays * it.rails)}]) * 1 inch`,
        'ft',
      ),
    tolerance: 1e-9,
  },
  {
    calculation: 'pickets-on-gates',
    what: 'three leaves, their pickets counted off two at a time',
    kind: 'second derivation',
    source: 'second derivation: a heap counted off in pairs, as one counts a pile',
    given: { leafPickets: ['8', '11', '12'] },
    gives: 'gatePickets',
    unit: 'picket',
    expected: () => {
      const heap = ['8', '11', '12'].map((it) => '|'.repeat(Number(it))).join('')
      return 2 * (heap.match(/\|\|/g) ?? []).length + (heap.length % 2)
    },
    tolerance: 0,
  },
  ...(
    [
      ['hinges', 'hinge', (leaves: readonly (readonly string[])[]) => 3 * leaves.flat().length],
      ['latches', 'latch', (leaves: readonly (readonly string[])[]) => leaves.filter((it) => it.length > 0).length],
      [
        'dropRods',
        'rod',
        (leaves: readonly (readonly string[])[]) => leaves.flat().filter((it) => it === 'second').length,
      ],
    ] as const
  ).map(([gives, unit, expected]): Check => {
    const gates = [['first'], ['first', 'second'], ['first'], ['first', 'second']]
    return {
      calculation: 'gate-hardware',
      what: `${gives === 'dropRods' ? 'drop rods' : gives} of four gates, two of them double, three hinges to a leaf`,
      kind: 'second derivation',
      source:
        'second derivation: the gates hung leaf by leaf; the first leaf of each takes the latch, a second one its rod',
      given: { gates: '4', leavesInAll: '6', hingesEach: '3' },
      gives,
      unit,
      expected: expected(gates),
      tolerance: 0,
    }
  }),
  {
    calculation: 'take-off',
    what: 'nine lines and the delivery',
    kind: 'second derivation',
    source: 'second derivation: rung up piece by piece in whole cents, as a till works',
    given: { ...bought, ...more },
    gives: 'takeOffCost',
    unit: 'USD',
    expected: () => tillInCents() / 100,
    tolerance: 1e-9,
  },
  {
    calculation: 'take-off',
    what: 'what stands in its lines, added up',
    kind: 'library',
    source: decimalsWork,
    given: { ...bought, ...more },
    gives: 'takeOffCost',
    unit: 'USD',
    got: columnSum(4),
    expected: () =>
      inDecimals(
        '23 * 18.49 + 237 * 3.19 + 46 * 7.25 + 23 * 6.75 + floor(12.25 / 27 * 4130 + 0.5) / 100 + 6 * 11.95 + 2 * 18.60 + 65',
      ),
    tolerance: 1e-9,
  },
  {
    calculation: 'take-off',
    what: 'weights in pounds and kilograms together',
    kind: 'library',
    source: mathjsWorks,
    given: {
      postsByLength: ['17'],
      postsWeights: ['610 lb'],
      railsInAll: '46',
      railsWeights: ['148.5 kg', '88 lb'],
      picketsToBuy: '237',
      picketsWeight: '1.2 kg',
      bags: '23',
      bagsLoad: '1380 lb',
    },
    gives: 'takeOffWeight',
    unit: 'lb',
    expected: () => byMathjs('610 lb + 148.5 kg + 88 lb + 1.2 kg + 1380 lb', 'lb'),
    tolerance: 1e-6,
  },
]
