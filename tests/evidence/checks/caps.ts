// This file is about the evidence for the calculations in caps/.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, caps, mouldings, chamfers and bevels (geometry)'

export const capsChecks: readonly Check[] = [
  {
    calculation: 'cap-blanks',
    what: '5 1/2 in blanks from an 8 ft board',
    kind: 'reference',
    source: ours,
    reference: 'cap-blanks',
    given: { capSize: '5 1/2 in', stockLength: '96 in', kerf: '1/8 in' },
    gives: 'capsPerBoard',
    unit: 'cap',
    expected: 17,
    tolerance: 0,
  },
  {
    calculation: 'cap-blanks',
    what: 'the cap past a 4x4',
    kind: 'reference',
    source: ours,
    reference: 'cap-overhang',
    given: { capSize: '5 1/2 in', postWidth: '3 1/2 in' },
    gives: 'capOverhang',
    unit: 'in',
    expected: 1,
    tolerance: 0,
  },
  {
    calculation: 'cap-blanks',
    what: 'blanks sawn off one by one',
    kind: 'second derivation',
    source: 'second derivation: blanks and saw cuts taken off the board until the next does not come out',
    given: { capSize: '5 1/2 in', stockLength: '12 ft', kerf: '1/8 in' },
    gives: 'capsPerBoard',
    unit: 'cap',
    expected: () => {
      let [left, count] = [144, 0]
      while (left >= 5.5) {
        left -= 5.625
        count++
      }
      return count
    },
    tolerance: 0,
  },
  ...(
    [
      ['capSlope', 'deg', 19.983107, 1e-5],
      ['capSlant', 'in', 2.926175, 1e-5],
      ['capFaces', 'in2', 32.187925, 1e-4],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'pyramid-cap',
      what: `${gives} of a 5 1/2 in cap that rises 1 in`,
      kind: 'reference',
      source: ours,
      reference: 'pyramid-cap',
      given: { capSize: '5 1/2 in', capRise: '1 in' },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'pyramid-cap',
    what: 'the four faces as triangles between four corners and the tip',
    kind: 'second derivation',
    source: 'second derivation: each face’s area as half the length of the product of two of its edges, by vectors',
    given: { capSize: '5 1/2 in', capRise: '1 in' },
    gives: 'capFaces',
    unit: 'in2',
    expected: () => {
      const [h, r] = [2.75, 1]
      // Edges from one corner: along the side (2h, 0, 0), up to the tip (h, h, r); their product is (0, −2hr, 2h²).
      return 4 * 0.5 * Math.hypot(0, 2 * h * r, 2 * h * h)
    },
    tolerance: 1e-9,
  },
  ...(
    [
      ['outerLong', 24.5],
      ['outerShort', 18.5],
      ['mouldingEach', 86.5],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'built-up-cap',
      what: `${gives} of a frame round 20 by 14 in`,
      kind: 'reference',
      source: ours,
      reference: 'frame-mitre',
      given: { blockLong: '20 in', blockShort: '14 in', mouldingWidth: '2 1/4 in', kerf: '1/8 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'built-up-cap',
    what: 'the frame’s short side',
    kind: 'library',
    source: mathjsWorks,
    given: { blockLong: '20 in', blockShort: '14 in', mouldingWidth: '2 1/4 in' },
    gives: 'outerShort',
    unit: 'in',
    expected: () => byMathjs('14 inch + 2 * 2.25 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'chamfers',
    what: 'the face of a 1/4 in chamfer at 45°',
    kind: 'reference',
    source: ours,
    reference: 'chamfer',
    given: { chamferLeg: '1/4 in', chamferAngle: '45 deg' },
    gives: 'chamferFace',
    unit: 'in',
    expected: 0.35355339,
    tolerance: 1e-8,
  },
  {
    calculation: 'chamfers',
    what: 'the face as the long side of a right triangle',
    kind: 'second derivation',
    source: 'second derivation: leg and depth at right angles, the root of the sum of their squares',
    given: { chamferLeg: '6 mm', chamferAngle: '30 deg' },
    gives: 'chamferFace',
    unit: 'mm',
    expected: () => Math.hypot(6, 6 / Math.sqrt(3)),
    tolerance: 1e-9,
  },
  ...(
    [
      ['topDrop', 0.93782217],
      ['topFace', 3.6234666],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'sloped-post-top',
      what: `${gives} of a 4x4 cut at 15°`,
      kind: 'reference',
      source: ours,
      reference: 'bevel-post',
      given: { postWidth: '3 1/2 in', topSlope: '15 deg' },
      gives,
      unit: 'in',
      expected,
      tolerance: 1e-7,
    }),
  ),
  {
    calculation: 'sloped-post-top',
    what: 'drop and face of a 3-4-5 cut',
    kind: 'second derivation',
    source: 'second derivation: the 3-4-5 triangle, whose smaller angle is 36.869897646°',
    given: { postWidth: '4 in', topSlope: '36.869897646 deg' },
    gives: 'topFace',
    unit: 'in',
    expected: 5,
    tolerance: 1e-7,
  },
]
