// This file is about the evidence for the calculations in tops/.
import { numberIn } from '../../../engine/quantities/quantity.ts'
import { readOne } from '../../../engine/quantities/read.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, arches (geometry)'

/** A circle through both ends and the middle, found by halving its radius. */
function radiusByHalving(chord: number, rise: number): number {
  let low = chord / 2
  let high = (chord * chord) / rise
  for (let i = 0; i < 100; i++) {
    const r = (low + high) / 2
    if (r - Math.sqrt(r * r - (chord * chord) / 4) > rise) low = r
    else high = r
  }
  return low
}
/** Length of a curve by many small straight steps. */
function lengthBySteps(y: (x: number) => number, chord: number): number {
  const steps = 200_000
  let sum = 0
  for (let i = 0; i < steps; i++) {
    const [a, b] = [i, i + 1].map((k) => (k / steps - 0.5) * chord) as [number, number]
    sum += Math.hypot(b - a, y(b) - y(a))
  }
  return sum
}
const circle = (x: number): number => Math.sqrt(111 * 111 - x * x) - 105

const lengths = [37.0739, 38.3936, 39.5029, 40.4057, 41.1049, 41.6027, 41.9008, 42.0]

export const topsChecks: readonly Check[] = [
  {
    calculation: 'arched-top',
    what: 'the radius over 72 in with a rise of 6 in',
    kind: 'reference',
    source: ours,
    reference: 'arch-72-6',
    given: { opening: '72 in', archRise: '6 in' },
    gives: 'archRadius',
    unit: 'in',
    expected: 111,
    tolerance: 0,
  },
  {
    calculation: 'arched-top',
    what: 'its length along the curve',
    kind: 'reference',
    source: ours,
    reference: 'arch-72-6',
    given: { opening: '72 in', archRise: '6 in' },
    gives: 'archLength',
    unit: 'in',
    expected: 73.326013,
    tolerance: 1e-6,
  },
  {
    calculation: 'arched-top',
    what: 'the same length by two hundred thousand straight steps',
    kind: 'second derivation',
    source: 'second derivation: the curve cut into small straight steps, summed',
    given: { opening: '72 in', archRise: '6 in' },
    gives: 'archLength',
    unit: 'in',
    expected: () => lengthBySteps(circle, 72),
    tolerance: 1e-5,
  },
  {
    calculation: 'arched-top',
    what: 'a circle through both ends and the middle, by halving',
    kind: 'second derivation',
    source: 'second derivation: the radius halved until the circle rises by just so much',
    given: { opening: '94 1/2 in', archRise: '6 in' },
    gives: 'archRadius',
    unit: 'in',
    expected: () => radiusByHalving(94.5, 6),
    tolerance: 1e-6,
  },
  {
    calculation: 'arched-top',
    what: 'a half circle: rise half the opening',
    kind: 'reference',
    source: ours,
    reference: 'arch-semicircle',
    given: { opening: '40 in', archRise: '20 in' },
    gives: 'archLength',
    unit: 'in',
    expected: 62.831853,
    tolerance: 1e-6,
  },
  ...lengths.map(
    (expected, k): Check => ({
      calculation: 'arched-top',
      what: `the middle of picket ${k + 1} of 15 under an arch of 6 in over 94 1/2 in`,
      kind: 'reference',
      source: ours,
      reference: 'arch-pickets',
      given: {
        opening: '94 1/2 in',
        archRise: '6 in',
        picketWidth: '3 1/2 in',
        pickets: '15',
        curveBase: '36 in',
        tapeMark: '1/500 in',
      },
      confirmed: ['tapeMark'],
      gives: 'tallestPicket',
      unit: 'in',
      // In the table, worked to a five-hundredth so that nothing is lost to the tape's marks.
      got: ({ outcome }) => {
        const cell = outcome.ok ? outcome.tables[0]?.rows[k]?.[2] : undefined
        const q = readOne(`${cell} in`)?.quantity
        if (!q) throw new Error(`“${cell}” is no length`)
        return numberIn(q, 'in')
      },
      expected,
      tolerance: 0.0011,
    }),
  ),
  {
    calculation: 'arched-top',
    what: 'the template of an arch of 6 in over 72 in',
    kind: 'reference',
    source: ours,
    reference: 'arch-template',
    given: { opening: '72 in', archRise: '6 in', templateMargin: '2 in' },
    gives: 'templateLong',
    unit: 'in',
    expected: 76,
    tolerance: 0,
  },
  {
    calculation: 'arched-top',
    what: 'a hanging chain over 72 in with a sag of 10 in, its length by steps',
    kind: 'second derivation',
    source: 'second derivation: the chain’s height at two hundred thousand places, straight steps summed',
    given: { opening: '72 in', archRise: '10 in', archCurve: 'chain' },
    gives: 'archLength',
    unit: 'in',
    expected: () => {
      // The chain's parameter grown by a little until it sags no more than 10 in.
      let a = 36
      while (a * (Math.cosh(36 / a) - 1) > 10) a += 1e-5
      return lengthBySteps((x) => a * Math.cosh(x / a), 72)
    },
    tolerance: 1e-4,
  },
  {
    calculation: 'arched-top',
    what: 'a parabola over 72 in with a rise of 10 in, its length by steps',
    kind: 'second derivation',
    source: 'second derivation: the parabola cut into small straight steps, summed',
    given: { opening: '72 in', archRise: '10 in', archCurve: 'parabola' },
    gives: 'archLength',
    unit: 'in',
    expected: () => lengthBySteps((x) => 10 * (1 - (x / 36) ** 2), 72),
    tolerance: 1e-5,
  },
  {
    calculation: 'arch-over-unequal-bays',
    what: 'the same circle over 48 in, by the distance of its ends from its middle line',
    kind: 'second derivation',
    source: 'second derivation: the circle’s height at both places by coordinates',
    given: { standardChord: '72 in', archRise: '6 in', otherChord: '48 in' },
    gives: 'riseSameRadius',
    unit: 'in',
    expected: () => circle(0) - circle(24),
    tolerance: 1e-9,
  },
  ...(
    [
      ['pointRise', 'in', 1.75],
      ['pointCut', 'deg', 45],
    ] as const
  ).map(
    ([gives, unit, expected]): Check => ({
      calculation: 'pointed-top',
      what: `${gives} of a right-angled point on 3 1/2 in`,
      kind: 'reference',
      source: 'Reference book, chamfers (geometry)',
      reference: 'picket-point',
      given: { picketWidth: '3 1/2 in', pointAngle: '90 deg' },
      gives,
      unit,
      expected,
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'pointed-top',
    what: 'the tip’s angle back from its height',
    kind: 'second derivation',
    source: 'second derivation: the two slopes as vectors, the angle between them by their product',
    given: { picketWidth: '70 mm', pointAngle: '60 deg' },
    gives: 'pointRise',
    unit: 'mm',
    expected: () => {
      let [low, high] = [0, 1000]
      for (let i = 0; i < 100; i++) {
        const up = (low + high) / 2
        const angle = (Math.acos((-35 * 35 + up * up) / (35 * 35 + up * up)) * 180) / Math.PI
        if (angle > 60) low = up
        else high = up
      }
      return low
    },
    tolerance: 1e-6,
  },
  {
    calculation: 'rounded-top',
    what: 'the radius of a 70 mm top that rises 20 mm, by halving',
    kind: 'second derivation',
    source: 'second derivation: the radius halved until the circle rises by just so much over the width',
    given: { picketWidth: '70 mm', wantedRise: '20 mm' },
    gives: 'roundRadius',
    unit: 'mm',
    expected: () => radiusByHalving(70, 20),
    tolerance: 1e-6,
  },
  {
    calculation: 'rounded-top',
    what: 'its cut, by two hundred thousand straight steps',
    kind: 'second derivation',
    source: 'second derivation: the curve cut into small straight steps, summed',
    given: { picketWidth: '70 mm', wantedRise: '20 mm' },
    gives: 'roundLength',
    unit: 'mm',
    expected: () => lengthBySteps((x) => Math.sqrt(40.625 ** 2 - x * x), 70),
    tolerance: 1e-5,
  },
  {
    calculation: 'rounded-top',
    what: 'what a top of 3 in radius loses at the corners of a 3 1/2 in picket, in thin strips',
    kind: 'second derivation',
    source: 'second derivation: a hundred thousand upright strips between the tip’s level and the curve, summed',
    given: { picketWidth: '3 1/2 in', wantedRadius: '3 in' },
    gives: 'cornersLost',
    unit: 'in2',
    expected: () => {
      const strips = 100_000
      let sum = 0
      for (let i = 0; i < strips; i++) {
        const x = ((i + 0.5) / strips - 0.5) * 3.5
        sum += (3 - Math.sqrt(9 - x * x)) * (3.5 / strips)
      }
      return sum
    },
    tolerance: 1e-8,
  },
  {
    calculation: 'rounded-top',
    what: 'half round on a 3 1/2 in picket: half the way round a circle as wide as it',
    kind: 'library',
    source: mathjsWorks,
    given: { picketWidth: '3 1/2 in' },
    gives: 'roundLength',
    unit: 'in',
    expected: () => byMathjs('pi * 3.5 inch / 2', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'clipped-corners',
    what: 'the angle between the cut and a square one, 20 mm along and 40 mm down',
    kind: 'second derivation',
    source: 'second derivation: the cut and the top as vectors, the angle between them by their product',
    given: { picketWidth: '90 mm', clipAcross: '20 mm', clipDown: '40 mm' },
    gives: 'clipCut',
    unit: 'deg',
    expected: () => (Math.acos((20 * 1) / Math.hypot(20, 40)) * 180) / Math.PI,
    tolerance: 1e-9,
  },
  {
    calculation: 'clipped-corners',
    what: 'a cut at 30° from square, 1 1/2 in along the top: what is cut away, by going round both pieces',
    kind: 'second derivation',
    source: 'second derivation: the area of the picket’s top by the cross products of its corners, off a square one',
    given: { picketWidth: '5 1/2 in', clipAcross: '1 1/2 in', clipAngle: '30 deg' },
    gives: 'cornersLost',
    unit: 'in2',
    expected: () => {
      const down = 1.5 / Math.sqrt(3)
      const round = [
        [0, -10],
        [5.5, -10],
        [5.5, -down],
        [4, 0],
        [1.5, 0],
        [0, -down],
      ] as const
      const twice = round.reduce((sum, [x, y], i) => {
        const [u, v] = round[(i + 1) % round.length] as readonly [number, number]
        return sum + x * v - u * y
      }, 0)
      return 5.5 * 10 - twice / 2
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'arch-at-place',
    what: 'a place 20 in from the post, by the circle through three points',
    kind: 'library',
    source: mathjsWorks,
    given: { opening: '80 in', heightAtPosts: '40 in', heightInMiddle: '46 in', placeFromPost: '20 in' },
    gives: 'heightAtPlace',
    unit: 'in',
    expected: () => byMathjs('(40 + sqrt(((40^2 + 6^2) / 12)^2 - 20^2) - ((40^2 + 6^2) / 12 - 6)) * 1 inch', 'inch'),
    tolerance: 1e-6,
  },
]
