// This file is about the evidence for measuring the ground: corners, yards, tenths, slopes.
import { numberIn, type Quantity } from '../../../engine/quantities/quantity.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, layout (geometry)'
const euclid = 'Euclid, Elements, I.47: the 5-12-13 and 8-15-17 triangles of the schoolbooks'

/** The far mark of the second side placed by coordinates: where the two circles about corner and first mark meet. */
function angleByCoordinates(a: number, b: number, c: number): number {
  const x = (a * a + b * b - c * c) / (2 * a)
  return (Math.atan2(Math.sqrt(b * b - x * x), x) * 180) / Math.PI
}

/** A five-sided yard by its corners, in feet: sides and inside angles by coordinates. */
const five = [
  [0, 0],
  [60, 0],
  [60, 40],
  [25, 55],
  [0, 40],
] as const
const at = (i: number): readonly [number, number] => five[((i % 5) + 5) % 5] as readonly [number, number]
const fiveSides = five.map((p, i) => Math.hypot(at(i + 1)[0] - p[0], at(i + 1)[1] - p[1]))
const fiveAngles = five.map((_, i) => {
  const [before, here, after] = [at(i), at(i + 1), at(i + 2)]
  const [u, v] = [
    Math.atan2(before[1] - here[1], before[0] - here[0]),
    Math.atan2(after[1] - here[1], after[0] - here[0]),
  ]
  return (((u - v) * 180) / Math.PI + 360) % 360
})
const pentagon = {
  sides: fiveSides.map((it) => `${it.toFixed(9)} ft`),
  corners: fiveAngles.map((it) => `${it.toFixed(9)} deg`),
}

/** Area by counting: the share of a fine grid whose points lie inside. */
function areaByGrid(points: readonly (readonly [number, number])[], step: number): number {
  let inside = 0
  for (let x = step / 2; x < 60; x += step)
    for (let y = step / 2; y < 60; y += step) {
      let odd = false
      points.forEach(([px, py], i) => {
        const [qx, qy] = points[(i + 1) % points.length] as readonly [number, number]
        if (py > y !== qy > y && x < ((qx - px) * (y - py)) / (qy - py) + px) odd = !odd
      })
      if (odd) inside++
    }
  return inside * step * step
}

/** The tangent of an angle in degrees, from the power series of sine and cosine. */
function tangentBySeries(degrees: number): number {
  const x = (degrees * Math.PI) / 180
  let [sine, cosine, term] = [0, 0, 1]
  for (let n = 0; n < 30; n++) {
    const sign = Math.floor(n / 2) % 2 === 0 ? 1 : -1
    if (n % 2 === 0) cosine += sign * term
    else sine += sign * term
    term *= x / (n + 1)
  }
  return sine / cosine
}

export const surveyChecks: readonly Check[] = [
  ...(
    [
      [5, 12, 13],
      [8, 15, 17],
      [20, 21, 29],
    ] as const
  ).map(
    ([a, b, c]): Check => ({
      calculation: 'square-corner',
      what: `the diagonal of a corner ${a} by ${b} ft`,
      kind: 'handbook',
      source: euclid,
      given: { legs: [`${a} ft`, `${b} ft`] },
      gives: 'squareAcross',
      unit: 'ft',
      expected: c,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'square-corner',
    what: '3-4-5 four times over',
    kind: 'reference',
    source: ours,
    reference: 'lay-01',
    given: { legs: ['12 ft', '16 ft'] },
    gives: 'squareAcross',
    unit: 'ft',
    expected: 20,
    tolerance: 0,
  },
  {
    calculation: 'square-corner',
    what: 'the diagonal of 60 by 40 ft',
    kind: 'reference',
    source: ours,
    reference: 'lay-03',
    given: { legs: ['60 ft', '40 ft'] },
    gives: 'squareAcross',
    unit: 'ft',
    expected: 72.111,
    tolerance: 0.0005,
  },
  {
    calculation: 'square-corner',
    what: 'the angle of a corner 12, 16, 20 1/4 ft',
    kind: 'reference',
    source: ours,
    reference: 'lay-02',
    given: { legs: ['12 ft', '16 ft'], measuredDiagonal: '20 ft 3 in' },
    gives: 'cornerAngle',
    unit: 'deg',
    expected: 91.502,
    tolerance: 0.0005,
  },
  {
    calculation: 'square-corner',
    what: 'how far that runs off in a hundred feet',
    kind: 'reference',
    source: ours,
    reference: 'lay-02',
    given: { legs: ['12 ft', '16 ft'], measuredDiagonal: '20 ft 3 in' },
    gives: 'offsetPerHundred',
    unit: 'ft',
    expected: 2.62,
    tolerance: 0.005,
  },
  {
    calculation: 'square-corner',
    what: '1, 1.5 and 2 m are not square: 104.5°',
    kind: 'second derivation',
    source: 'second derivation: the far mark placed by coordinates where two circles meet',
    given: { legs: ['1 m', '1.5 m'], measuredDiagonal: '2 m' },
    gives: 'cornerAngle',
    unit: 'deg',
    expected: () => angleByCoordinates(1, 1.5, 2),
    tolerance: 1e-9,
  },
  {
    calculation: 'rectangle-diagonals',
    what: 'a rectangle 60 by 40 ft whose far side stands 7 in along',
    kind: 'second derivation',
    source: 'second derivation: the pushed corners by coordinates, both diagonals measured',
    given: {
      pushedSide: '60 ft',
      diagonals: [`${Math.hypot(727, 480).toFixed(9)} in`, `${Math.hypot(713, 480).toFixed(9)} in`],
    },
    gives: 'pushCorner',
    unit: 'in',
    expected: 7,
    tolerance: 1e-6,
  },
  {
    calculation: 'yard-closure',
    what: 'the misclosure of four sides with square corners',
    kind: 'reference',
    source: ours,
    reference: 'lay-04',
    given: { sides: ['60 ft', '40 ft', '59.7 ft', '39.8 ft'], corners: ['90 deg', '90 deg', '90 deg'] },
    gives: 'misclosure',
    unit: 'ft',
    expected: 0.3606,
    tolerance: 0.00005,
  },
  {
    calculation: 'yard-closure',
    what: 'one in so many, for the same',
    kind: 'reference',
    source: ours,
    reference: 'lay-04',
    given: { sides: ['60 ft', '40 ft', '59.7 ft', '39.8 ft'], corners: ['90 deg', '90 deg', '90 deg'] },
    gives: 'closeRatio',
    unit: 'ratio',
    expected: 553,
    tolerance: 0.5,
  },
  {
    calculation: 'yard-closure',
    what: 'the area of a yard with five corners',
    kind: 'reference',
    source: ours,
    reference: 'lay-05',
    given: pentagon,
    gives: 'yardArea',
    unit: 'ft2',
    expected: 2850,
    tolerance: 0.001,
  },
  {
    calculation: 'yard-closure',
    what: 'the length round the same',
    kind: 'reference',
    source: ours,
    reference: 'lay-05',
    given: pentagon,
    gives: 'yardPerimeter',
    unit: 'ft',
    expected: 207.234,
    tolerance: 0.0005,
  },
  {
    calculation: 'yard-closure',
    what: 'the same area, by counting the points of a grid inside',
    kind: 'second derivation',
    source: 'second derivation: points of a three-inch grid, counted inside by crossing its sides',
    given: pentagon,
    gives: 'yardArea',
    unit: 'ft2',
    expected: () => areaByGrid(five, 0.25),
    tolerance: 12,
  },
  {
    calculation: 'yard-closure',
    what: 'the 13-14-15 triangle has an area of 84',
    kind: 'published',
    source: 'Heron of Alexandria, Metrica I.8: the triangle of sides 13, 14 and 15 (from memory)',
    given: { sides: ['13 ft', '14 ft', '15 ft'] },
    gives: 'yardArea',
    unit: 'ft2',
    expected: 84,
    tolerance: 1e-9,
  },
  {
    calculation: 'tenths',
    what: '47.35 ft to the nearest sixteenth',
    kind: 'second derivation',
    source: 'second derivation: counted in sixteenths, 47.35 × 192 to the nearest whole',
    given: { platLength: '47.35 ft' },
    gives: 'onTape',
    unit: 'in',
    expected: () => Math.round(47.35 * 192) / 16,
    tolerance: 1e-12,
  },
  {
    calculation: 'tenths',
    what: '100 ft are 30.48 m exactly',
    kind: 'handbook',
    source: 'NIST SP 811, appendix B: 1 ft = 0.3048 m exactly',
    given: { platLength: '100 ft' },
    gives: 'inMetres',
    unit: 'm',
    expected: 30.48,
    tolerance: 0,
  },
  {
    calculation: 'slope-of-ground',
    what: 'length along a slope of 5 in 12, the 5-12-13 triangle',
    kind: 'handbook',
    source: euclid,
    given: { fall: '5 ft', levelDistance: '12 ft' },
    gives: 'alongGround',
    unit: 'ft',
    expected: 13,
    tolerance: 0,
  },
  {
    calculation: 'fall-of-slope',
    what: 'the fall of 22.5 % over 40 ft, the 9-40-41 triangle',
    kind: 'handbook',
    source: 'Euclid, Elements, I.47: the 9-40-41 triangle',
    given: { slope: '22.5 %', levelDistance: '40 ft' },
    gives: 'fall',
    unit: 'ft',
    expected: 9,
    tolerance: 0,
  },
  {
    calculation: 'fall-of-slope',
    what: 'the length along it',
    kind: 'handbook',
    source: 'Euclid, Elements, I.47: the 9-40-41 triangle',
    given: { slope: '22.5 %', levelDistance: '40 ft' },
    gives: 'alongGround',
    unit: 'ft',
    expected: 41,
    tolerance: 1e-9,
  },
  {
    calculation: 'fall-of-slope',
    what: '12 % in degrees',
    kind: 'library',
    source: mathjsWorks,
    given: { slope: '12 %', levelDistance: '8 ft' },
    gives: 'slopeAngle',
    unit: 'deg',
    expected: () => byMathjs('atan(0.12) / pi * 180 deg', 'deg'),
    tolerance: 1e-9,
  },
  {
    calculation: 'slope-from-angle',
    what: '8 degrees in percent',
    kind: 'second derivation',
    source: 'second derivation: sine and cosine summed by their power series, and one divided by the other',
    given: { slopeAngle: '8 deg' },
    gives: 'slope',
    unit: 'percent',
    expected: () => 100 * tangentBySeries(8),
    tolerance: 1e-9,
  },
  {
    calculation: 'slope-from-levels',
    what: 'the fall in all is the last reading less the first',
    kind: 'library',
    source: mathjsWorks,
    given: { levelReadings: ['4 1/2 in', '11 3/8 in', '9 in', '17 1/16 in'], readingsApart: '8 ft' },
    gives: 'totalFall',
    unit: 'in',
    expected: () => byMathjs('17.0625 inch - 4.5 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'slope-from-levels',
    what: 'the same fall over three distances of 8 ft',
    kind: 'library',
    source: mathjsWorks,
    given: { levelReadings: ['4 1/2 in', '11 3/8 in', '9 in', '17 1/16 in'], readingsApart: '8 ft' },
    gives: 'slope',
    unit: 'percent',
    got: ({ outcome }) => numberIn((outcome.ok ? outcome.values.get('slope') : undefined) as Quantity, 'percent'),
    expected: () => byMathjs('(17.0625 - 4.5) inch / (3 * 8 ft) * 100 inch', 'inch'),
    tolerance: 1e-9,
  },
  // Printed, in metres: readings 1.855, 2.410, 1.280, 0.995 from one place; levels 100.000, 99.445, 100.575, 100.860.
  ...(
    [
      [2, 99.445],
      [3, 100.575],
      [4, 100.86],
    ] as const
  ).map(
    ([count, level]): Check => ({
      calculation: 'slope-from-levels',
      what: `the printed level of ${level} m after ${count} readings, from a first of 100 m`,
      kind: 'published',
      source:
        'Worked example of a level book by rise and fall, https://civinnovate.com/2026/06/23/levelling-explanation-75/: the stations up to the change point',
      given: { levelReadings: ['1.855 m', '2.410 m', '1.280 m', '0.995 m'].slice(0, count) },
      system: 'metric',
      gives: 'totalFall',
      unit: 'm',
      expected: 100 - level,
      tolerance: 1e-9,
    }),
  ),
  ...(
    [
      [[14.5, 21.375, 19, 33.0625, 30.25, 41.5], 7.5, 'in', 'ft', 12],
      [[960, 1115, 840, 610, 655, 402, 380], 2.35, 'mm', 'm', 1000],
    ] as const
  ).flatMap(([readings, apart, unit, far, times]): Check[] => {
    const shared = {
      calculation: 'slope-from-levels',
      kind: 'second derivation',
      given: { levelReadings: readings.map((it) => `${it} ${unit}`), readingsApart: `${apart} ${far}` },
      system: unit === 'mm' ? 'metric' : 'imperial',
      tolerance: 1e-9,
    } as const
    const pairs = readings.slice(1).map((it, i) => [readings[i] as number, it] as const)
    const what = `${readings.length} readings ${apart} ${far} apart, up and down`
    return [
      {
        ...shared,
        what: `the fall in all: ${what}`,
        source:
          'second derivation: the surveyor’s rise-and-fall book, rises in one column and falls in the other, each column added by itself',
        gives: 'totalFall',
        unit,
        expected: () => {
          let [rises, falls] = [0, 0]
          for (const [before, here] of pairs)
            if (here > before) falls += here - before
            else rises += before - here
          return falls - rises
        },
      },
      {
        ...shared,
        what: `the slope: ${what}`,
        source: 'second derivation: every bay’s own slope, and the mean of them all',
        gives: 'slope',
        unit: 'percent',
        got: ({ outcome }) => numberIn((outcome.ok ? outcome.values.get('slope') : undefined) as Quantity, 'percent'),
        expected: () =>
          (pairs.reduce((sum, [before, here]) => sum + (here - before) / (apart * times), 0) / pairs.length) * 100,
      },
      {
        ...shared,
        what: `the angle: ${what}`,
        source:
          'second derivation: a straight line through the first spot of ground, turned by halving until it passes the last',
        gives: 'slopeAngle',
        unit: 'deg',
        expected: () => {
          // Set up by coordinates, x along the string and y down from the first spot of ground.
          const [x, y] = [pairs.length * apart * times, (readings.at(-1) as number) - readings[0]]
          let [low, high] = [-90, 90]
          for (let i = 0; i < 100; i++) {
            const middle = (low + high) / 2
            const turn = (middle * Math.PI) / 180
            if (Math.cos(turn) * y - Math.sin(turn) * x > 0) low = middle
            else high = middle
          }
          return low
        },
      },
    ]
  }),
  {
    calculation: 'slope-from-levels',
    what: 'a fall of 7 ft in 24 ft: the angle whose sine is 7/25',
    kind: 'handbook',
    source: 'Euclid, Elements, I.47: the 7-24-25 triangle of the schoolbooks',
    given: { levelReadings: ['5 in', '40 in', '31 1/2 in', '89 in'], readingsApart: '8 ft' },
    gives: 'slopeAngle',
    unit: 'deg',
    expected: () => (Math.asin(7 / 25) * 180) / Math.PI,
    tolerance: 1e-9,
  },
]
