// This file is about the evidence for the calculations in gates/.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, gates (statics and geometry)'
const corners =
  'second derivation: the brace’s four corners placed in the frame by coordinates, moved along the rails until the brace is as wide as its stock'

/** The two feet on the rails are alike: moved along them, the brace grows wider, until it has the width of its stock. */
function lengthByCorners(wide: number, high: number, stock: number): number {
  const cornersAt = (foot: number) =>
    [
      [0, 0],
      [foot, 0],
      [wide, high],
      [wide - foot, high],
    ] as const
  /** Along the brace, from the first corner to the fourth. */
  const along = (foot: number): readonly [number, number] => {
    const edge = Math.hypot(wide - foot, high)
    return [(wide - foot) / edge, high / edge]
  }
  let [narrow, broad] = [0, wide]
  for (let i = 0; i < 80; i++) {
    const foot = (narrow + broad) / 2
    // How far the second corner lies from the edge between the first and the fourth.
    const [x, y] = along(foot)
    const across = Math.hypot(foot - foot * x * x, foot * x * y)
    if (across < stock) narrow = foot
    else broad = foot
  }
  const [x, y] = along(narrow)
  const spots = cornersAt(narrow).map(([right, up]) => right * x + up * y)
  return Math.max(...spots) - Math.min(...spots)
}

const braces: readonly (readonly [
  id: string,
  wide: number,
  high: number,
  length: number,
  cut: number,
  edge: number,
])[] = [
  ['brace-36x30', 36, 30, 46.730611, 45.911123, 43.117488],
  ['brace-33x36', 33, 36, 48.710882, 38.400663, 45.93675],
]

/** A leaf with rails of constant length, leaned by a drop: its two diagonals by coordinates. */
function diagonals(rail: number, high: number, drop: number): { tie: number; strut: number } {
  const across = Math.sqrt(rail ** 2 - drop ** 2)
  return { tie: Math.hypot(across, high + drop), strut: Math.hypot(across, high - drop) }
}
const leaned = diagonals(42, 40, 1.25)

export const gatesChecks: readonly Check[] = [
  {
    calculation: 'gate-leaf',
    what: 'the leaf for a 48 in opening',
    kind: 'reference',
    source: ours,
    reference: 'gate-05',
    given: { gateOpening: '48 in', gateLeaves: 'single', hingeGap: '3/8 in', latchGap: '1/2 in' },
    gives: 'leafWidth',
    unit: 'in',
    expected: 47.125,
    tolerance: 1e-9,
  },
  {
    calculation: 'gate-leaf',
    what: 'each leaf for a 96 in opening',
    kind: 'reference',
    source: ours,
    reference: 'gate-05',
    given: { gateOpening: '96 in', gateLeaves: 'double', hingeGap: '3/8 in', meetingGap: '1/2 in' },
    gives: 'leafWidth',
    unit: 'in',
    expected: 47.375,
    tolerance: 1e-9,
  },
  {
    calculation: 'gate-leaf',
    what: 'gaps and leaves laid one after the other fill the opening',
    kind: 'second derivation',
    source: 'second derivation: the pieces laid across the opening in sixty-fourths, one by one',
    given: { gateOpening: '120 in', gateLeaves: 'double', hingeGap: '5/16 in', meetingGap: '3/4 in' },
    gives: 'leafWidth',
    unit: 'in',
    expected: () => {
      // The widest leaf, in sixty-fourths, with which hinge gap, leaf, middle gap, leaf, hinge gap still fit.
      let leaf = 0
      while (20 + leaf + 48 + leaf + 20 <= 120 * 64) leaf++
      return (leaf - 1) / 64
    },
    tolerance: 1 / 64,
  },
  ...braces.flatMap(([reference, wide, high, length, cut, edge]): Check[] => {
    const given = { insideWidth: `${wide} in`, insideHeight: `${high} in`, braceWidth: '3 1/2 in' }
    const shared = { calculation: 'gate-brace', given } as const
    return [
      {
        ...shared,
        what: `brace in a ${wide} by ${high} in frame`,
        kind: 'reference',
        source: ours,
        reference,
        gives: 'braceLength',
        unit: 'in',
        expected: length,
        tolerance: 1e-5,
      },
      {
        ...shared,
        what: `its cut, ${wide} by ${high} in`,
        kind: 'reference',
        source: ours,
        reference,
        gives: 'braceCut',
        unit: 'deg',
        expected: cut,
        tolerance: 1e-5,
      },
      {
        ...shared,
        what: `its edge, ${wide} by ${high} in`,
        kind: 'reference',
        source: ours,
        reference,
        gives: 'braceEdge',
        unit: 'in',
        expected: edge,
        tolerance: 1e-5,
      },
      {
        ...shared,
        what: `brace by its corners, ${wide} by ${high} in`,
        kind: 'second derivation',
        source: corners,
        gives: 'braceLength',
        unit: 'in',
        expected: () => lengthByCorners(wide, high, 3.5),
        tolerance: 1e-6,
      },
    ]
  }),
  {
    calculation: 'gate-brace',
    what: 'a brace with pointed ends, tip to tip',
    kind: 'reference',
    source: ours,
    reference: 'brace-pointed',
    given: { insideWidth: '36 in', insideHeight: '30 in', braceWidth: '3 1/2 in' },
    gives: 'pointedLength',
    unit: 'in',
    expected: 46.861498,
    tolerance: 1e-5,
  },
  {
    calculation: 'gate-brace',
    what: 'a brace with pointed ends, along one edge',
    kind: 'reference',
    source: ours,
    reference: 'brace-pointed',
    given: { insideWidth: '36 in', insideHeight: '30 in', braceWidth: '3 1/2 in' },
    gives: 'pointedEdge',
    unit: 'in',
    expected: 43.303165,
    tolerance: 1e-5,
  },
  {
    calculation: 'gate-brace',
    what: 'what a brace on the diagonal is pressed with',
    kind: 'reference',
    source: ours,
    reference: 'gate-04',
    given: { insideWidth: '42 in', insideHeight: '36 in', braceWidth: '3 1/2 in', leafWeight: '60 lb' },
    gives: 'braceForce',
    unit: 'lbf',
    expected: 46.1,
    tolerance: 0.05,
  },
  ...(
    [
      ['gate-01', { leafWeight: '62.6 kg', leafWidth: '1.7 m', hingeSpacing: '1.3 m' }, 'hingePull', 'N', 401.4, 0.05],
      ['gate-01', { leafWeight: '62.6 kg', leafWidth: '1.7 m', hingeSpacing: '1.3 m' }, 'gateForce', 'N', 613.9, 0.05],
      [
        'gate-01',
        { leafWeight: '62.6 kg', leafWidth: '1.7 m', hingeSpacing: '1.3 m' },
        'postCouple',
        'N-m',
        521.8,
        0.05,
      ],
      ['gate-02', { leafWeight: '60 lb', leafWidth: '42 in', hingeSpacing: '30 in' }, 'hingePull', 'lbf', 42, 1e-9],
      [
        'gate-02',
        { leafWeight: '60 lb', leafWidth: '42 in', hingeSpacing: '30 in', hangingWeight: '200 lb' },
        'hingePullHung',
        'lbf',
        322,
        1e-9,
      ],
      ['gate-03', { leafWeight: '60 lb', leafWidth: '42 in', hingeSpacing: '24 in' }, 'hingePull', 'lbf', 52.5, 1e-9],
      ['gate-03', { leafWeight: '60 lb', leafWidth: '42 in', hingeSpacing: '48 in' }, 'hingePull', 'lbf', 26.25, 1e-9],
    ] as const
  ).map(
    ([reference, given, gives, unit, expected, tolerance]): Check => ({
      calculation: 'gate-pull',
      what: `${gives} of a gate: ${Object.values(given).join(', ')}`,
      kind: 'reference',
      source: ours,
      reference,
      given,
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'gate-pull',
    what: 'moments about the bottom hinge add up to nothing',
    kind: 'second derivation',
    source: 'second derivation: the leaf cut into a thousand upright strips, each turning about the bottom hinge',
    given: { leafWeight: '75 lb', leafWidth: '44 in', hingeSpacing: '28 in' },
    gives: 'hingePull',
    unit: 'lbf',
    expected: () => {
      let turning = 0
      for (let i = 0; i < 1000; i++) turning += (75 / 1000) * ((i + 0.5) * (44 / 1000))
      return turning / 28
    },
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-sag',
    what: 'a leaf leaned by 1 1/4 in',
    kind: 'second derivation',
    source: 'second derivation: a leaf with rails of constant length leaned by coordinates, its diagonals measured',
    given: {
      tieDiagonal: `${leaned.tie.toFixed(9)} in`,
      strutDiagonal: `${leaned.strut.toFixed(9)} in`,
      leafHeight: '40 in',
    },
    gives: 'latchDrop',
    unit: 'in',
    expected: 1.25,
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-sag',
    what: 'the diagonal that the same leaf has when it is square',
    kind: 'second derivation',
    source: 'second derivation: the same leaf, upright again',
    given: {
      tieDiagonal: `${leaned.tie.toFixed(9)} in`,
      strutDiagonal: `${leaned.strut.toFixed(9)} in`,
      leafHeight: '40 in',
    },
    gives: 'squareDiagonal',
    unit: 'in',
    expected: Math.hypot(42, 40),
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-swing',
    what: 'rise over the swing on 8 %',
    kind: 'reference',
    source: ours,
    reference: 'gate-06',
    given: { leafWidth: '42 in', slope: '8 %' },
    gives: 'swingRise',
    unit: 'in',
    expected: 3.36,
    tolerance: 1e-9,
  },
  {
    calculation: 'gate-swing',
    what: 'the room that a square edge needs',
    kind: 'reference',
    source: ours,
    reference: 'gate-06',
    given: { leafWidth: '42 in', leafThickness: '1 1/2 in' },
    gives: 'edgeRoom',
    unit: 'in',
    expected: 0.0268,
    tolerance: 5e-5,
  },
  {
    calculation: 'gate-swing',
    what: 'the furthest that the edge reaches while it turns',
    kind: 'second derivation',
    source:
      'second derivation: the far corner turned by ten thousand small angles, its reach across the opening taken each time',
    given: { leafWidth: '40 in', leafThickness: '2 in' },
    gives: 'edgeRoom',
    unit: 'in',
    expected: () => {
      let reach = 0
      for (let i = 0; i <= 10_000; i++) {
        const turn = ((i / 10_000) * Math.PI) / 2
        reach = Math.max(reach, 40 * Math.cos(turn) + 2 * Math.sin(turn))
      }
      return reach - 40
    },
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-post-lean',
    what: 'the latch end of a leaf whose post leans 1 in over 48',
    kind: 'second derivation',
    source: 'second derivation: similar triangles, 42 × 1 / √(48² + 1²)',
    given: { outOfPlumb: '1 in', plumbOver: '48 in', leafWidth: '42 in' },
    gives: 'latchMove',
    unit: 'in',
    expected: () => 42 / Math.sqrt(48 ** 2 + 1),
    tolerance: 1e-9,
  },
  {
    calculation: 'inside-of-frame',
    what: 'between the stiles of a 36 in leaf framed with 3 1/2 in stock',
    kind: 'library',
    source: 'mathjs 15: the two inner corners as points, and the distance between them',
    given: { leafWidth: '36 in', leafHeight: '48 in', memberWidth: '3 1/2 in' },
    gives: 'insideWidth',
    unit: 'in',
    expected: () => byMathjs('distance([3.5, 3.5], [36 - 3.5, 3.5]) * 1 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'inside-of-frame',
    what: 'between the rails of a leaf 1100 mm tall framed with 90 mm stock',
    kind: 'library',
    source: 'mathjs 15: the two inner corners as points, and the distance between them',
    given: { leafWidth: '1000 mm', leafHeight: '1100 mm', memberWidth: '90 mm' },
    system: 'metric',
    gives: 'insideHeight',
    unit: 'mm',
    expected: () => byMathjs('distance([90, 90], [90, 1100 - 90]) * 1 mm', 'mm'),
    tolerance: 1e-9,
  },
  {
    calculation: 'gate-for-passage',
    what: 'a 48 in deck with 3 in on each side',
    kind: 'library',
    source:
      'mathjs 15: the faces of the two posts as points about the middle of the deck, and the distance between them',
    given: { widestThrough: '48 in', roomEachSide: '3 in' },
    gives: 'gateOpening',
    unit: 'in',
    expected: () => byMathjs('distance([-48 / 2 - 3, 0], [48 / 2 + 3, 0]) * 1 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'leaf-diagonal',
    what: 'a leaf 1045 by 960 mm from corner to corner',
    kind: 'library',
    source: mathjsWorks,
    given: { leafWidth: '1045 mm', leafHeight: '960 mm' },
    gives: 'leafDiagonal',
    unit: 'mm',
    expected: () => byMathjs('distance([0, 0], [1045, 960]) * 1 mm', 'mm'),
    tolerance: 1e-6,
  },
  {
    calculation: 'take-up-for-drop',
    what: 'a leaf 46 by 50 in that dropped 1 1/2 in, by its corners',
    kind: 'library',
    source: mathjsWorks,
    given: { latchDrop: '1 1/2 in', leafWidth: '46 in', leafHeight: '50 in' },
    gives: 'takeUp',
    unit: 'in',
    expected: () =>
      byMathjs('(distance([0, 50], [sqrt(46^2 - 1.5^2), -1.5]) - distance([0, 50], [46, 0])) * 1 inch', 'inch'),
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-over-rise',
    what: 'over a rise of 65 mm, 35 mm clear',
    kind: 'library',
    source: mathjsWorks,
    given: { swingRise: '65 mm', clearOver: '35 mm' },
    gives: 'gateGapBelow',
    unit: 'mm',
    expected: () => byMathjs('65 mm + 35 mm', 'mm'),
    tolerance: 1e-9,
  },
  {
    calculation: 'pickets-on-leaf',
    what: 'the gap between 8 pickets on a leaf of 1010 mm',
    kind: 'library',
    source: mathjsWorks,
    given: { leafWidth: '1010 mm', picketWidth: '65 mm', wantedGap: '70 mm' },
    gives: 'gap',
    unit: 'mm',
    expected: () => byMathjs('(1010 mm - 8 * 65 mm) / 7', 'mm'),
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-weight',
    what: 'seven pickets, two rails',
    kind: 'library',
    source: mathjsWorks,
    given: {
      gatePartCounts: ['7', '2'],
      gatePartLengths: ['40 in', '38 in'],
      gatePartWidths: ['3 1/2 in', '3 1/2 in'],
      gatePartThicknesses: ['3/4 in', '1 1/2 in'],
      woodDensity: '30 lb/ft3',
    },
    gives: 'leafWeight',
    unit: 'lb',
    expected: () =>
      byMathjs('(7 * 40 inch * 3.5 inch * 0.75 inch + 2 * 38 inch * 3.5 inch * 1.5 inch) * 30 lb / ft^3', 'lb'),
    tolerance: 1e-6,
  },
]
