// This file is about the evidence for the calculations in caps/.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, caps, mouldings, chamfers and bevels (geometry)'

type Corner = readonly [x: number, y: number]

/** The outer corner of a mitred frame: gone out from the block's corner along the mitre, by halving, until it is a moulding's width past the block's side. */
function outerCorner([x, y]: Corner, width: number): Corner {
  let [low, high] = [0, 10 * width]
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2
    if (middle * Math.SQRT1_2 < width) low = middle
    else high = middle
  }
  return [x + Math.sign(x) * low * Math.SQRT1_2, y + Math.sign(y) * low * Math.SQRT1_2]
}

const shoelace = (corners: readonly Corner[]): number =>
  Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = corners[(i + 1) % corners.length] as Corner
      return sum + x * nextY - nextX * y
    }, 0),
  ) / 2

/** The four mitred pieces round a block, each by its corners: inner edge, then outer edge. */
function mitredPieces(
  long: number,
  short: number,
  width: number,
): readonly (readonly [Corner, Corner, Corner, Corner])[] {
  const block: readonly Corner[] = [
    [-long / 2, -short / 2],
    [long / 2, -short / 2],
    [long / 2, short / 2],
    [-long / 2, short / 2],
  ]
  return block.map((corner, i) => {
    const next = block[(i + 1) % 4] as Corner
    return [corner, next, outerCorner(next, width), outerCorner(corner, width)]
  })
}

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
    calculation: 'cap-for-post',
    what: 'the cap that stands 1 in past a 4x4',
    kind: 'library',
    source: 'mathjs 15: the edges of the cap as points about the middle of the post, and the distance between them',
    given: { postWidth: '3 1/2 in', capOverhang: '1 in' },
    gives: 'capSize',
    unit: 'in',
    expected: () => byMathjs('distance([-3.5 / 2 - 1, 0], [3.5 / 2 + 1, 0]) * 1 inch', 'inch'),
    tolerance: 1e-9,
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
  ...(
    [
      ['outerLong', 24],
      ['outerShort', 20],
      ['mouldingEach', 88],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'built-up-cap',
      what: `${gives} of a frame round 16 by 20 in, 2 in wide, before the saw takes its share`,
      kind: 'published',
      source:
        '“How to Figure the Right Length(s) of Moulding to Make Your Frame”, a picture framers’ page (its address holds a shop’s name, so it is not written): two of 20 in, two of 24 in, 88 in',
      given: { blockLong: '20 in', blockShort: '16 in', mouldingWidth: '2 in', kerf: '0 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 0,
    }),
  ),
  ...(
    [
      [11.25, 7.5, 1.625, 0.125, 'in'],
      [5.5, 5.5, 0.75, 0.09375, 'in'],
      [142, 118, 33, 3, 'mm'],
    ] as const
  ).flatMap(([long, short, width, kerf, unit]): Check[] => {
    const shared = {
      calculation: 'built-up-cap',
      kind: 'second derivation',
      given: {
        blockLong: `${long} ${unit}`,
        blockShort: `${short} ${unit}`,
        mouldingWidth: `${width} ${unit}`,
        kerf: `${kerf} ${unit}`,
        capCount: '7',
      },
      system: unit === 'mm' ? 'metric' : 'imperial',
      unit,
      tolerance: 1e-9,
    } as const
    const frame = `a frame round ${long} by ${short} ${unit}, ${width} wide`
    const pieces = () => mitredPieces(long, short, width)
    const outer = (i: number): number => {
      const [, , from, to] = pieces()[i] as readonly [Corner, Corner, Corner, Corner]
      return Math.hypot(to[0] - from[0], to[1] - from[1])
    }
    return [
      ...([0, 1] as const).map(
        (i): Check => ({
          ...shared,
          what: `the ${i === 0 ? 'long' : 'short'} pieces of ${frame}`,
          source:
            'second derivation: the mitre followed from the block’s corner by halving until it is clear of the moulding, long point to long point by coordinates',
          gives: i === 0 ? 'outerLong' : 'outerShort',
          expected: () => outer(i),
        }),
      ),
      {
        ...shared,
        what: `all four pieces of ${frame}, by their area`,
        source:
          'second derivation: the shoelace area of the four pieces over the moulding’s width is half their long and short edges together (Pappus); the short edges go round the block; a saw cut each is added',
        gives: 'mouldingEach',
        expected: () => {
          const edges = (2 * pieces().reduce((sum, it) => sum + shoelace(it), 0)) / width
          const round = pieces().reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0)
          return edges - round + 4 * kerf
        },
      },
      {
        ...shared,
        what: `the moulding of seven caps: ${frame}`,
        source:
          'second derivation: 28 pieces sawn off one long stick, one after the other, and where the saw stands then',
        gives: 'mouldingAll',
        expected: () => {
          let saw = 0
          for (let cap = 0; cap < 7; cap++) for (let i = 0; i < 4; i++) saw += outer(i) + kerf
          return saw
        },
      },
    ]
  }),
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
