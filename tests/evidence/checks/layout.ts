// This file is about the evidence for the calculations in layout/.
import { numberIn } from '../../../engine/quantities/quantity.ts'
import { readOne } from '../../../engine/quantities/read.ts'
import type { Ran } from '../../engine/run-named.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

/** Posts laid one by one from the first, never further apart than the limit and all alike: the fewest bays that do. */
function baysBySearch(run: number, widest: number): number {
  let bays = 1
  while (run / bays > widest + 1e-12) bays++
  return bays
}

const ours = 'Reference book, layout (geometry)'

/** A length of the first table, in inches: by row and column, counted from nought. */
function cell({ outcome }: Ran, row: number, column: number): number {
  const text = outcome.ok ? String(outcome.tables[0]?.rows[row]?.[column]) : ''
  const q = readOne(text)?.quantity
  if (!q) throw new Error(`“${text}” is no length`)
  return numberIn(q, 'in')
}

/** Posts whose feet stand in the ground at their places: the shortest length, grown by whole steps, that reaches the string at all of them, or at any. */
function reaching(heights: readonly number[], buried: number, step: number, where: 'all' | 'any'): number {
  // The string is at nought; the ground lies below it, and each foot further below.
  const feet = heights.map((it) => 0 - it - buried)
  const reaches = (length: number): boolean =>
    where === 'all' ? feet.every((it) => it + length >= -1e-9) : feet.some((it) => it + length >= -1e-9)
  let steps = 0
  while (!reaches(steps * step)) steps++
  return steps * step
}

export const layoutChecks: readonly Check[] = [
  ...(
    [
      ['100 ft', '8 ft', 1200, 96],
      ['73 ft 4 in', '8 ft', 880, 96],
      ['48 ft', '6 ft', 576, 72],
    ] as const
  ).map(
    ([runLength, widestBay, run, widest]): Check => ({
      calculation: 'bays-in-run',
      what: `bays in ${runLength} at most ${widestBay} apart`,
      kind: 'second derivation',
      source: 'second derivation: one bay after another tried until none is too wide',
      given: { runLength, widestBay, runEnds: 'centres' },
      gives: 'bays',
      unit: 'bay',
      expected: () => baysBySearch(run, widest),
      tolerance: 0,
    }),
  ),
  ...(
    [
      ['100 ft', '8 ft', 1200, 96],
      ['73 ft 4 in', '6 ft', 880, 72],
      ['19.91 m', '2.4 m', 19_910 / 25.4, 2400 / 25.4],
    ] as const
  ).flatMap(([runLength, fixedBay, run, bay]): Check[] => {
    const shared = {
      calculation: 'bay-patterns',
      kind: 'second derivation',
      given: { runLength, fixedBay },
      unit: 'in',
      tolerance: 1e-6,
    } as const
    return [
      {
        ...shared,
        what: `the odd bay of ${runLength} in bays of ${fixedBay}`,
        source: 'second derivation: posts set one by one until the next would pass the end, the rest measured',
        gives: 'oddBay',
        expected: () => {
          let post = 0
          while (post + bay <= run) post += bay
          return run - post
        },
      },
      {
        ...shared,
        what: `two ends that match beside whole bays, ${runLength} in bays of ${fixedBay}`,
        source:
          'second derivation: one whole bay after another set in the middle of the run until the ends are narrower than one',
        gives: 'endBays',
        expected: () => {
          let middle = 0
          while ((run - middle) / 2 >= bay) middle += bay
          return (run - middle) / 2
        },
      },
    ]
  }),
  {
    calculation: 'bays-round-corners',
    what: 'posts of a fence of 41, 63 and 29 ft with gates of 40 in in its first and last side, at most 8 ft apart',
    kind: 'second derivation',
    source:
      'second derivation: each side walked off post by post, a gate first where there is one, then bays of the first even width that reaches the corner',
    given: {
      fenceSides: ['41 ft', '63 ft', '29 ft'],
      widestBay: '8 ft',
      gates: '2',
      gateOpening: '40 in',
      gateSides: ['1', '3'],
      postWidth: '3 1/2 in',
    },
    gives: 'posts',
    unit: 'post',
    expected: () => {
      let posts = 1
      for (const [i, side] of [41, 63, 29].entries()) {
        let left = side * 12
        if (i !== 1) {
          posts++
          left -= 40 + 3.5
        }
        posts += baysBySearch(left / 12, 8)
      }
      return posts
    },
    tolerance: 0,
  },
  {
    calculation: 'bays-round-corners',
    what: 'posts of a fence of 41, 63, 29 and 50 ft, closed, at most 8 ft apart',
    kind: 'second derivation',
    source:
      'second derivation: posts walked off along the whole fence, each at the next even place of its side, a place met twice set once',
    given: { fenceSides: ['41 ft', '63 ft', '29 ft', '50 ft'], widestBay: '8 ft', runEnds: 'loop' },
    gives: 'posts',
    unit: 'post',
    expected: () => {
      const sides = [41, 63, 29, 50]
      const whole = sides.reduce((a, b) => a + b, 0)
      const set = new Set<number>()
      let corner = 0
      for (const side of sides) {
        const count = baysBySearch(side, 8)
        for (let i = 0; i <= count; i++) set.add(Math.round(((corner + (i * side) / count) % whole) * 1000))
        corner += side
      }
      return set.size
    },
    tolerance: 0,
  },
  ...(
    [
      ['slopeBays', 'bay', 6, 0],
      ['bayCentres', 'ft', 8, 0],
      ['stepEach', 'in', 6.667, 0.0005],
      ['slope', 'percent', 6.94, 0.005],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'stepped-run',
      what: `${gives} of a fence 48 ft long that falls 40 in`,
      kind: 'reference',
      source: ours,
      reference: 'lay-06',
      given: { fall: '40 in', levelDistance: '48 ft', widestBay: '8 ft' },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'stepped-run',
    what: 'the step of six bays that were told, stepped down one by one',
    kind: 'second derivation',
    source: 'second derivation: the step that comes down the whole fall in so many steps, found by halving',
    given: { fall: '22 in', levelDistance: '48 ft', slopeBays: '6' },
    gives: 'stepEach',
    unit: 'in',
    expected: () => {
      let [low, high] = [0, 22]
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2
        let down = 0
        for (let bay = 0; bay < 6; bay++) down += middle
        if (down < 22) low = middle
        else high = middle
      }
      return low
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'stepped-run',
    what: 'the step of the fewest bays that keep the limit',
    kind: 'second derivation',
    source: 'second derivation: one bay after another tried until none is too wide, the fall shared among them',
    given: { fall: '37 in', levelDistance: '50 ft', widestBay: '7 ft' },
    gives: 'stepEach',
    unit: 'in',
    expected: () => 37 / baysBySearch(600, 84),
    tolerance: 1e-9,
  },
  ...(
    [
      ['dropPerBay', 'in', 9.6, 1e-9],
      ['rakedRail', 'in', 92.961, 0.0005],
      ['plumbCut', 'deg', 5.711, 0.0005],
      ['pitchAlongRail', 'in', 6.0299, 0.00005],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'raked-run',
      what: `${gives} on a slope of 10 %`,
      kind: 'reference',
      source: ours,
      reference: 'lay-07',
      given: {
        slope: '10 %',
        bayCentres: '96 in',
        postWidth: '3 1/2 in',
        picketWidth: '3 1/2 in',
        wantedGap: '2 1/2 in',
      },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  ...(
    [
      ['rakedRail', 'in', 95.258858, 1e-5],
      ['rakedBlank', 'in', 95.703302, 1e-5],
      ['plumbCut', 'deg', 7.236922, 1e-5],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'raked-run',
      what: `${gives} of a rail over a 94 1/2 in opening that rises 12 in`,
      kind: 'reference',
      source: ours,
      reference: 'slope-rail',
      // 12 in over 94.5 in is a slope of 12.698412698 %; posts 3 1/2 in wide make the bay 98 in.
      given: { slope: '12.6984126984 %', bayCentres: '98 in', postWidth: '3 1/2 in', railDepth: '3 1/2 in' },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'raked-run',
    what: 'the blank of a raked rail by its four corners',
    kind: 'second derivation',
    source: 'second derivation: the rail’s corners by coordinates, the distance along the rail between the outermost',
    given: { slope: '10 %', bayCentres: '96 in', postWidth: '3 1/2 in', railDepth: '3 1/2 in' },
    gives: 'rakedBlank',
    unit: 'in',
    expected: () => {
      // Plumb ends: the upper edge stands straight above the lower one by the depth over the cosine.
      const [run, size] = [92.5, Math.hypot(1, 0.1)]
      const [ux, uy] = [1 / size, -0.1 / size]
      const plumb = 3.5 * size
      const spots = [
        [0, 0],
        [run, -0.1 * run],
        [0, plumb],
        [run, -0.1 * run + plumb],
      ].map(([x, y]) => (x as number) * ux + (y as number) * uy)
      return Math.max(...spots) - Math.min(...spots)
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'post-heights',
    what: 'the longest post, found by looking at each',
    kind: 'library',
    source: mathjsWorks,
    given: { groundReadings: ['48 in', '57 1/4 in', '54 1/2 in'], embedment: '24 in' },
    gives: 'tallestPost',
    unit: 'in',
    expected: () => byMathjs('max(48 inch, 57.25 inch, 54.5 inch) + 2 ft', 'inch'),
    tolerance: 1e-9,
  },
  ...(
    [
      [[51.5, 47.25, 58.0625, 44.75, 49], 26.5, 'in', 1 / 16],
      [[36, 36, 35.9375], 30.125, 'in', 1 / 16],
      [[1310, 1198, 1455, 1456, 1203], 615, 'mm', 1],
    ] as const
  ).flatMap(([heights, buried, unit, step]): Check[] =>
    (
      [
        ['tallestPost', 'all'],
        ['shortestPost', 'any'],
      ] as const
    ).map(
      ([gives, where]): Check => ({
        calculation: 'post-heights',
        what: `${gives} of ${heights.length}, a string up to ${Math.max(...heights)} ${unit} above the ground and ${buried} ${unit} buried`,
        kind: 'second derivation',
        source: `second derivation: every post stood on its foot, and made longer a step at a time until it reaches the string at ${where === 'all' ? 'every place' : 'one of the places'}`,
        given: { groundReadings: heights.map((it) => `${it} ${unit}`), embedment: `${buried} ${unit}` },
        system: unit === 'mm' ? 'metric' : 'imperial',
        gives,
        unit,
        expected: () => reaching(heights, buried, step, where),
        tolerance: 1e-9,
      }),
    ),
  ),
  {
    calculation: 'post-heights',
    what: 'what is cut off four posts of 8 ft at the string, laid end to end',
    kind: 'second derivation',
    source:
      'second derivation: a sixteenth sawn off each standing post at a time until its top is no higher than the string',
    given: {
      groundReadings: ['51 1/2 in', '47 1/4 in', '58 1/16 in', '44 3/4 in'],
      embedment: '26 1/2 in',
      stockLength: '8 ft',
    },
    gives: 'cut off',
    unit: 'in',
    got: (ran) => [0, 1, 2, 3].reduce((sum, row) => sum + cell(ran, row, 3), 0),
    expected: () => {
      let sawn = 0
      for (const height of [51.5, 47.25, 58.0625, 44.75])
        for (let top = -height - 26.5 + 96; top > 1e-9; top -= 1 / 16) sawn += 1 / 16
      return sawn
    },
    tolerance: 1e-9,
  },
  ...([60, 75, 120, 135] as const).map(
    (angle): Check => ({
      calculation: 'corner-post',
      what: `the miter of a corner of ${angle}°`,
      kind: 'second derivation',
      source:
        'second derivation: both rails as strips by coordinates, the line from outer to inner corner against square',
      given: { cornerAngle: `${angle} deg` },
      gives: 'miterCut',
      unit: 'deg',
      expected: () => {
        const a = (angle * Math.PI) / 180
        // Outer faces meet at the origin, inner faces one thickness inside; the first rail runs along x.
        const inner = [(1 + Math.cos(a)) / Math.sin(a), 1] as const
        // The joint runs from the origin to there; a square cut runs straight across the rail.
        return (Math.atan2(inner[0], inner[1]) * 180) / Math.PI
      },
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'corner-post',
    what: 'a hexagon’s corners are mitred at 30°',
    kind: 'reference',
    source: 'Reference book, moulding (geometry): miter = 180° / sides',
    reference: 'mitre-n',
    given: { cornerAngle: '120 deg' },
    gives: 'miterCut',
    unit: 'deg',
    expected: 30,
    tolerance: 0,
  },
  {
    calculation: 'curve-by-chords',
    what: 'the straight distance between posts on a curve',
    kind: 'second derivation',
    source: 'second derivation: posts by coordinates on the circle, the distance measured',
    given: { curveRadius: '30 ft', curveLength: '30 ft', widestBay: '6 ft' },
    gives: 'chord',
    unit: 'in',
    expected: () => Math.hypot(360 * Math.sin(0.2), 360 * (1 - Math.cos(0.2))),
    tolerance: 1e-6,
  },
  {
    calculation: 'curve-by-chords',
    what: 'how far the curve stands off a rail',
    kind: 'second derivation',
    source: 'second derivation: a thousand places of the arc, the furthest from the straight line taken',
    given: { curveRadius: '12 m', curveLength: '9 m', widestBay: '1.8 m' },
    gives: 'bulge',
    unit: 'mm',
    expected: () => {
      const [r, turn] = [12_000, 0.15]
      const line = r * Math.cos(turn / 2)
      return Math.max(...Array.from({ length: 1001 }, (_, i) => r * Math.cos(turn * (i / 1000 - 0.5)) - line))
    },
    tolerance: 1e-6,
  },
  {
    calculation: 'curve-by-chords',
    what: 'the string from the first post to the last',
    kind: 'second derivation',
    source: 'second derivation: both end posts by coordinates on the circle, the distance measured',
    given: { curveRadius: '30 ft', curveLength: '45 ft', widestBay: '6 ft' },
    gives: 'longChord',
    unit: 'in',
    // 45 ft round a circle of 30 ft is a turn of 1.5
    expected: () => Math.hypot(360 * Math.sin(1.5), 360 * (1 - Math.cos(1.5))),
    tolerance: 1e-6,
  },
  ...([2, 3, 5] as const).map(
    (post): Check => ({
      calculation: 'curve-by-chords',
      what: `how far post ${post} of 9 stands off the string, by the table`,
      kind: 'second derivation',
      source:
        'second derivation: the circle through both ends of the string, its height over the place that the table gives along the string',
      given: { curveRadius: '30 ft', curveLength: '45 ft', widestBay: '6 ft' },
      gives: 'longChord',
      unit: 'in',
      got: (ran) => cell(ran, post - 1, 3),
      expected: () => {
        const half = 360 * Math.sin(0.75)
        const along = (i: number): number => 360 * (Math.sin(0.75) + Math.sin((1.5 * i) / 8 - 0.75))
        return Math.sqrt(360 ** 2 - (along(post - 1) - half) ** 2) - Math.sqrt(360 ** 2 - half ** 2)
      },
      tolerance: 1 / 32 + 1e-9,
    }),
  ),
  ...(
    [
      ['longerPickets', 'picket', 101 - 3.5],
      ['shorterPickets', 'picket', 91 - 3.5],
    ] as const
  ).map(
    ([gives, unit, space]): Check => ({
      calculation: 'moved-post',
      what: `${gives} when a post moves 5 in`,
      kind: 'second derivation',
      source: 'second derivation: one picket after another added until every gap is within the limit',
      given: { bayBeforePost: '96 in', postMoved: '5 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
      gives,
      unit,
      expected: () => {
        let count = 0
        while ((space - count * 3.5) / (count + 1) > 2.5) count++
        return count
      },
      tolerance: 0,
    }),
  ),
  {
    calculation: 'moved-post',
    what: 'the gap of the bay that grows',
    kind: 'library',
    source: mathjsWorks,
    given: { bayBeforePost: '96 in', postMoved: '5 in', picketWidth: '3 1/2 in', pickets: '15' },
    gives: 'longerGap',
    unit: 'in',
    expected: () => byMathjs('(8 ft + 5 inch - 3.5 inch - 15 * 3.5 inch) / 16', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'moved-post',
    what: 'the two bays are the distance between their outer posts',
    kind: 'library',
    source: mathjsWorks,
    given: { bayBeforePost: '96 in', postMoved: '5 in' },
    gives: 'shorterBay',
    unit: 'in',
    expected: () => byMathjs('2 * 8 ft - (8 ft + 5 inch)', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'post-between-steps',
    what: 'panels of 1100 mm, a step of 130 mm',
    kind: 'library',
    source: mathjsWorks,
    given: { panelHeight: '1100 mm', highEndGap: '45 mm', stepEach: '130 mm', embedment: '650 mm' },
    gives: 'stepPost',
    unit: 'mm',
    expected: () => byMathjs('650 mm + 45 mm + 130 mm + 1100 mm', 'mm'),
    tolerance: 1e-9,
  },
]
