// This file is about the evidence for lengths of fences, posts and pickets that are told in parts.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

/** A plain sum of lengths, worked by mathjs. */
const sum = (
  calculation: string,
  what: string,
  given: Check['given'],
  gives: string,
  [text, unit]: readonly [string, string],
): Check => ({
  calculation,
  what,
  kind: 'library',
  source: mathjsWorks,
  given,
  gives,
  unit: unit === 'inch' ? 'in' : unit,
  expected: () => byMathjs(text, unit),
  tolerance: 1e-9,
})

/** Pickets laid end to end on a board, each with its cut behind it, until the next would not fit. */
function piecesOn(board: number, piece: number, cut: number): number {
  let [pieces, at] = [0, 0]
  while (at + piece <= board + 1e-9) {
    pieces++
    at += piece + cut
  }
  return pieces
}

/** Posts set one by one in each piece, so many spaces that none is wider than the limit. */
function postsOf(pieces: readonly number[], widest: number): number {
  return pieces.reduce((posts, length) => {
    let bays = 1
    while (length / bays > widest + 1e-9) bays++
    return posts + bays + 1
  }, 0)
}

/** Boards laid along a line, each lapping the one before, until the line is covered. */
function boardsOver(line: number, width: number, lap: number): number {
  let [boards, covered] = [1, width]
  while (covered < line - 1e-9) {
    boards++
    covered += width - lap
  }
  return boards
}

export const lengthChecks: readonly Check[] = [
  sum(
    'posts-given',
    'eleven posts along 75 ft outside to outside, posts of 3 1/2 in',
    { runLength: '75 ft', posts: '11', runEnds: 'outside', postWidth: '3 1/2 in' },
    'bayCentres',
    ['(75 ft - 3.5 inch) / 10', 'inch'],
  ),
  sum(
    'fence-round-yard',
    'a yard of 48 by 66 ft, the house along 48 ft, gates of 42 in and 10 ft',
    { yardAcross: '48 ft', yardAlong: '66 ft', closedSides: ['48 ft'], gateOpenings: ['42 in', '10 ft'] },
    'fenceAlone',
    ['2 * (48 ft + 66 ft) - 48 ft - 42 inch - 10 ft', 'ft'],
  ),
  sum(
    'line-left',
    'a line of 23.4 m with 750 mm off each end and a drive of 3.2 m',
    { wholeLine: '23.4 m', offEachEnd: '750 mm', takenOff: ['3.2 m'] },
    'runLength',
    ['23.4 m - 2 * 750 mm - 3.2 m', 'm'],
  ),
  sum(
    'post-in-parts',
    'a fence of 5 ft, posts 3 1/2 in above it and 27 in in the ground',
    { postAbove: '5 ft', postOverFence: '3 1/2 in', embedment: '27 in' },
    'postLength',
    ['5 ft + 3.5 inch + 27 inch', 'inch'],
  ),
  sum(
    'post-above',
    'a post of 7 ft 6 in with 29 in of it buried',
    { postLength: '7 ft 6 in', embedment: '29 in' },
    'postAbove',
    ['7.5 ft - 29 inch', 'inch'],
  ),
  sum(
    'post-above',
    'its hole with 5 in of stone',
    { postLength: '7 ft 6 in', embedment: '29 in', stoneDepth: '5 in' },
    'holeDepth',
    ['29 inch + 5 inch', 'inch'],
  ),
  sum('hole-to-frost', 'frost at 42 in, 4 in of stone', { frostDepth: '42 in', stoneDepth: '4 in' }, 'holeDepth', [
    '42 inch + 4 inch',
    'inch',
  ]),
  sum(
    'picket-length',
    'a fence of 3 ft 6 in that stands 2 1/4 in clear',
    { fenceHeight: '3 ft 6 in', footGap: '2 1/4 in' },
    'picketLength',
    ['3.5 ft - 2.25 inch', 'inch'],
  ),
  sum(
    'post-line',
    'a face that stands 2 1/2 in before the post, 9 in inside the line',
    { setback: '9 in', picketFaceOut: '2 1/2 in', postWidth: '3 1/2 in' },
    'postLineOffset',
    ['9 inch + 2.5 inch + 3.5 inch / 2', 'inch'],
  ),
  ...(
    [
      [96, 40, 0.125],
      [144, 35.875, 0.125],
      [120, 40, 0.125],
      [72, 36, 0],
    ] as const
  ).map(
    ([board, piece, cut]): Check => ({
      calculation: 'pickets-from-boards',
      what: `pickets of ${piece} in on a board of ${board} in, ${cut} in a cut`,
      kind: 'second derivation',
      source: 'second derivation: one picket after another laid on the board until none fits',
      given: { stockLength: `${board} in`, picketLength: `${piece} in`, kerf: `${cut} in` },
      gives: 'picketsPerBoard',
      unit: 'picket',
      expected: () => piecesOn(board, piece, cut),
      tolerance: 0,
    }),
  ),
  ...(
    [
      [[33, 19], 8],
      [[24, 16, 9.5], 6],
    ] as const
  ).map(
    ([pieces, widest]): Check => ({
      calculation: 'runs-apart',
      what: `pieces of ${pieces.join(', ')} ft, posts at most ${widest} ft apart`,
      kind: 'second derivation',
      source: 'second derivation: one bay after another tried in each piece until none is too wide',
      given: { piecesApart: pieces.map((it) => `${it} ft`), widestBay: `${widest} ft` },
      gives: 'posts',
      unit: 'post',
      expected: () => postsOf(pieces, widest),
      tolerance: 0,
    }),
  ),
  {
    calculation: 'pickets-by-length',
    what: 'palings of 125 mm lapped by 20 mm over 17 m',
    kind: 'second derivation',
    source: 'second derivation: one board after another laid along the line until it is covered',
    given: { runLength: '17 m', picketWidth: '125 mm', boardLap: '20 mm' },
    gives: 'picketsHung',
    unit: 'picket',
    expected: () => boardsOver(17_000, 125, 20),
    tolerance: 0,
  },
  {
    calculation: 'picket-count',
    what: 'twelve bays of 17 pickets, three of them with 9',
    kind: 'second derivation',
    source: 'second derivation: the bays counted one by one',
    given: { pickets: '17', bays: '12', shortBays: '3', shortBayPickets: '9' },
    gives: 'picketsHung',
    unit: 'picket',
    expected: () => Array.from({ length: 12 }, (_, i) => (i < 3 ? 9 : 17)).reduce((a, b) => a + b, 0),
    tolerance: 0,
  },
]
