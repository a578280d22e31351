// This file is about the evidence for the calculations in frame/.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

/** Pieces sawn off one board until the next does not come out. */
function piecesFrom(board: number, piece: number, kerf: number): number {
  let [left, count] = [board, 0]
  while (left >= piece - 1e-9) {
    left -= piece + kerf
    count++
  }
  return count
}

/** The plane of a wall cut through a rail, by vectors: miter on the rail's face and bevel out of it, in degrees. */
function cutByVectors(lean: number, plan: number, pitch: number): { miter: number; bevel: number } {
  const rad = (x: number): number => (x * Math.PI) / 180
  // x along the fence, y sideways, z up. The wall's face is turned by the plan angle and leans away as it rises.
  const n = [
    Math.sin(rad(plan)) * Math.cos(rad(lean)),
    Math.cos(rad(plan)) * Math.cos(rad(lean)),
    -Math.sin(rad(lean)),
  ] as const
  const along = [Math.cos(rad(pitch)), 0, Math.sin(rad(pitch))] as const
  const across = [0, 1, 0] as const
  const up = [-Math.sin(rad(pitch)), 0, Math.cos(rad(pitch))] as const
  const dot = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, it, i) => sum + it * (b[i] as number), 0)
  // On the rail's face the cut's trace is square to the part of n that lies in that face.
  const [u, v, w] = [dot(n, along), dot(n, across), dot(n, up)]
  return { miter: (Math.atan2(Math.abs(w), u) * 180) / Math.PI, bevel: (Math.asin(Math.abs(v)) * 180) / Math.PI }
}

export const frameChecks: readonly Check[] = [
  {
    calculation: 'rails-between-posts',
    what: 'rails sawn from a 12 ft board one after the other',
    kind: 'second derivation',
    source: 'second derivation: pieces and saw cuts taken off the board until the next does not come out',
    given: { opening: '46 in', fitAllowance: '1/8 in', bayCount: '9', stockLength: '12 ft', kerf: '1/8 in' },
    gives: 'railsPerBoard',
    unit: 'rail',
    expected: () => piecesFrom(144, 45.75, 0.125),
    tolerance: 0,
  },
  {
    calculation: 'rails-between-posts',
    what: 'a 12 ft board gives three 36 in pieces with a saw cut, not four',
    kind: 'second derivation',
    source: 'second derivation: as above; the reference book’s cut-count says the same',
    given: { opening: '36 1/4 in', fitAllowance: '1/8 in', bayCount: '4', stockLength: '144 in', kerf: '1/8 in' },
    gives: 'railsPerBoard',
    unit: 'rail',
    expected: () => piecesFrom(144, 36, 0.125),
    tolerance: 0,
  },
  {
    calculation: 'rails-across-faces',
    what: 'boards laid along a run of 13 bays, joints on posts only',
    kind: 'second derivation',
    source: 'second derivation: each board laid to the furthest post it reaches, until the run is covered',
    given: { bayCentres: '7 1/2 ft', bayCount: '13', rails: '2', stockLength: '16 ft' },
    gives: 'faceBoards',
    unit: 'board',
    expected: () => {
      let [post, boards] = [0, 0]
      while (post < 13) {
        let reach = post
        while (reach < 13 && (reach + 1 - post) * 7.5 <= 16) reach++
        post = reach
        boards++
      }
      return boards * 2
    },
    tolerance: 0,
  },
  {
    calculation: 'rails-across-faces',
    what: 'the first board, from the outer side of the end post to the middle of the post two bays on',
    kind: 'library',
    source: mathjsWorks,
    given: { bayCentres: '7 1/2 ft', bayCount: '13', rails: '2', stockLength: '16 ft', postWidth: '3 1/2 in' },
    gives: 'endBoard',
    unit: 'in',
    expected: () => byMathjs('3.5 inch / 2 + 2 * 7.5 ft', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'rail-heights',
    what: 'the top of the upper rail above the ground',
    kind: 'library',
    source: mathjsWorks,
    given: { picketLength: '42 in', footGap: '2 in', overTop: '5 in', underBottom: '7 in', railDepth: '3 1/2 in' },
    gives: 'topRailAt',
    unit: 'in',
    expected: () => byMathjs('2 inch + 3.5 ft - 5 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'rail-brackets',
    what: 'brackets counted bay by bay, end by end',
    kind: 'second derivation',
    source: 'second derivation: counted one by one',
    given: { bayCount: '7', rails: '3' },
    gives: 'brackets',
    unit: 'bracket',
    expected: () => {
      let count = 0
      for (let bay = 0; bay < 7; bay++)
        for (let rail = 0; rail < 3; rail++) for (const _end of ['left', 'right']) count++
      return count
    },
    tolerance: 0,
  },
  ...(
    [
      ['screws', 240],
      ['screwsToBuy', 264],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'picket-screws',
      what: `${gives} for 60 pickets on two rails`,
      kind: 'reference',
      source: 'Reference book, fasteners (common practice)',
      reference: 'screw-count',
      given: { picketsInAll: '60', rails: '2', screwsEachJoint: '2', screwSpare: '10 %' },
      gives,
      unit: 'screw',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'picket-screws',
    what: 'boxes opened one after the other',
    kind: 'second derivation',
    source: 'second derivation: screws taken out crossing by crossing, a new box whenever one is empty',
    given: { picketsInAll: '215', rails: '3', screwsEachJoint: '2', screwSpare: '0 %', boxCount: '144' },
    gives: 'screwBoxes',
    unit: 'box',
    expected: () => {
      let [left, boxes] = [0, 0]
      for (let i = 0; i < 215 * 3 * 2; i++) {
        if (left === 0) {
          boxes++
          left = 144
        }
        left--
      }
      return boxes
    },
    tolerance: 0,
  },
  ...(
    [
      ['leastScrew', 1.734],
      ['fullScrew', 2.39],
      ['mostScrew', 2.25],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'screw-length',
      what: `${gives} for a 3/4 in picket on a 1 1/2 in rail`,
      kind: 'reference',
      source: 'Reference book, fasteners (from memory, NDS)',
      reference: 'screw-length',
      given: { picketThickness: '3/4 in', railThickness: '1 1/2 in', screwDiameter: '0.164 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'screw-length',
    what: 'the longest that stays in, grown by thirty-seconds',
    kind: 'second derivation',
    source: 'second derivation: the screw made longer by thirty-seconds until its point would stand out of the rail',
    given: { picketThickness: '3/4 in', railThickness: '1 1/2 in' },
    gives: 'mostScrew',
    unit: 'in',
    expected: () => {
      let length = 1
      while (length + 1 / 32 <= 0.75 + 1.5) length += 1 / 32
      return length
    },
    tolerance: 0,
  },
  ...(
    [
      [10, 90, 0],
      [8, 60, 0],
      [12, 75, 6],
      [5, 45, 10],
    ] as const
  ).flatMap(([lean, plan, pitch]): Check[] => {
    const shared = {
      calculation: 'leaning-wall-cut',
      kind: 'second derivation',
      source: 'second derivation: the wall’s plane and the rail’s three directions as vectors',
      given: { wallLean: `${lean} deg`, planAngle: `${plan} deg`, railPitch: `${pitch} deg` },
      unit: 'deg',
      tolerance: 1e-9,
    } as const
    const what = `a wall that leans ${lean}°, met at ${plan}°, by a rail that rises ${pitch}°`
    return [
      {
        ...shared,
        what: `miter: ${what}`,
        gives: 'wallMiter',
        expected: () => cutByVectors(-lean, plan, -pitch).miter,
      },
      {
        ...shared,
        what: `bevel: ${what}`,
        gives: 'wallBevel',
        expected: () => cutByVectors(-lean, plan, -pitch).bevel,
      },
    ]
  }),
]
