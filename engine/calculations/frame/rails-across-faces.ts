// Rails that run across the faces of the posts, with every joint on a post.
//
//   ●━━━━━━━●━━━━━━━●┃━━━━━━●━━━━━━━●     one board spans as many whole bays as it is long enough for
//  ◄┘                joint, in the middle of a post
//  the first and the last reach half a post further, to the outer face of the end post
//
//   ●━━━━━━━●┃━━━━━━●━━━━━━━●┃━━━━━━●     the next row starts with a board one bay shorter, so its joints come on other posts
import { calculation } from '../../calculation.ts'
import type { Table } from '../../outcome.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { exactly, less, type Quantity, quantity, type System } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres, bays } from '../../words/bays.ts'
import { boardsPerRow, endBoard, faceBoards, faceCut, jointEvery } from '../../words/framing.ts'
import { stockLength } from '../../words/lumber.ts'
import { postWidth } from '../../words/posts.ts'
import { rails } from '../../words/rails.ts'

export const railsAcrossFaces = calculation({
  name: 'rails-across-faces',
  title: 'Rails across the faces of the posts',
  answers:
    'How many bays a board spans when rails run across the posts, which posts carry a joint in each row, and how many boards the run takes.',
  needs: { bayCentres, bays, rails, stockLength, postWidth },
  onlyFor: { bays: ['boardsPerRow', 'faceBoards'] },
  gives: { jointEvery, faceCut, endBoard, boardsPerRow, faceBoards },
  headlines: ['faceBoards', 'jointEvery'],
  together: {
    faceBoards: ['faceBoards', 'jointEvery', 'faceCut', 'endBoard', 'boardsPerRow'],
    jointEvery: ['jointEvery', 'faceCut', 'endBoard', 'faceBoards'],
  },
  called: [
    'across the face',
    'across the faces',
    'across the posts',
    'over the face of the posts',
    'on the face of the posts',
  ],
  locals: { longerRows: 'count' },
  lines: {
    jointEvery: ['floor(stockLength / bayCentres)', 'a joint must come on the middle of a post'],
    faceCut: ['jointEvery * bayCentres', 'from joint to joint'],
    endBoard: ['faceCut + postWidth / 2', 'the first and the last cover their end post whole'],
    wholeRun: ['bays * bayCentres + postWidth', 'from the outer face of the first post to that of the last'],
    boardsPerRow: ['ceil(bays / jointEvery)', 'the last one may be shorter'],
    faceBoards: ['rails * boardsPerRow + longerRows', 'a row for each rail, and one more where a shifted row needs it'],
  },
  work(
    { stockLength, bayCentres, postWidth, rails },
    { line, has, put, rows, refuse, remark, doubt, cite, table, system },
  ) {
    if (less(stockLength, bayCentres))
      refuse(
        'stockLength',
        `A board of ${show(stockLength)} is shorter than a bay, ${show(bayCentres)} from post centre to post centre, so its end hangs in the air. Take longer boards or closer posts.`,
      )
    const span = line('jointEvery')
    const cut = line('faceCut')
    const bays = has('bays') ? (rows('bays')[0] as Quantity) : undefined
    if (bays && !less(span, bays)) {
      inOnePiece(bays)
      return
    }
    const atEnd = line('endBoard')
    remark(
      compare(span.amount, exact(1)) === 1
        ? `Each board spans ${show(span)}. Shift the joints of one row by a bay against the next, so that no post carries all of them.`
        : 'Each board spans one bay, so every post carries a joint: two ends share its face, and screws come close to them. Boards that span two bays hold better.',
    )
    if (bays) {
      line('boardsPerRow')
      const longer = put('longerRows', quantity(exact(rowsThatNeedMore(bays, span, rails)), 'row'))
      line('faceBoards')
      if (less(quantity(0, 'row'), longer))
        remark(
          `Shifted, ${cite(longer, 'rows that take one board more')} ${compare(longer.amount, exact(1)) === 0 ? 'takes' : 'take'} a board more than a row that starts with a whole one. Each piece is reckoned from a board of its own: an offcut that is long enough saves one.`,
        )
      table(jointsTable(bays, span, rails, bayCentres, postWidth, system))
    }
    if (less(cut, stockLength)) remark(`Cut each board back to ${show(cut)}, or the joint misses the post.`)
    if (less(stockLength, atEnd))
      doubt(
        'contradictory',
        'stockLength',
        `Posts stand on their centres, so at both ends of the run a board must be ${show(atEnd)} to cover its end post, a ${show(postWidth)} one, and a ${show(stockLength)} board ends short of that. Set the end posts half a post nearer, or let the end boards span a bay less and buy for that.`,
      )

    /** A run no longer than one board: no joint anywhere, and both end posts are covered by it. */
    function inOnePiece(bays: Quantity): void {
      line('boardsPerRow')
      put('longerRows', quantity(0, 'row'))
      line('faceBoards')
      const whole = line('wholeRun')
      remark(`One board covers the whole run of ${show(bays)}, so there is no joint. Cut it to ${show(whole)}.`)
      if (less(stockLength, whole))
        doubt(
          'contradictory',
          'stockLength',
          `To cover both end posts, ${show(postWidth)} ones, it must be ${show(whole)} long, and a ${show(stockLength)} board is short of that. Set the end posts nearer, or joint it on a post between.`,
        )
    }
  },
  sources: [
    {
      fact: 'joints come on post centres, so a board spans whole bays',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['tools'],
  examples: [
    // ⌊16/8⌋ = 2; ⌈13/2⌉ = 7; × 2 = 14
    {
      ask: 'Rails across the faces of the posts: bays of 8 ft centre to centre, 13 bays, 2 rails, 16 ft boards. How many boards across the posts?',
      given: { bayCentres: '8 ft', bays: '13', rails: '2', stockLength: '16 ft' },
      expect: { jointEvery: '2 bays', faceCut: '192 in', boardsPerRow: '7 boards', faceBoards: '14 boards' },
    },
    // ⌊4.8/1.8⌋ = 2; 3600; ⌈9/2⌉ = 5; × 3
    {
      ask: 'Rails on the face of the posts, bays 1.8 m centre to centre, 9 bays with 3 rails, boards 4.8 m long: where do the joints fall?',
      given: { bayCentres: '1800 mm', bays: '9', rails: '3', stockLength: '4800 mm' },
      expect: { jointEvery: '2 bays', faceCut: '3,600 mm', faceBoards: '15 boards' },
    },
  ],
})

// More rows than this are not set out one by one: after as many rows as a board spans bays, the joints come on the same posts again.
const mostRows = 12
// So many joints of one row are written out.
const mostJoints = 12

/** The rows whose shifted joints cost a board more: the first board is so many bays shorter, and the last has no room to make up for it. */
function rowsThatNeedMore(bays: Quantity, span: Quantity, rows: Quantity): bigint {
  const [n, k, all] = [bays, span, rows].map((it) => exactly(it).n) as [bigint, bigint, bigint]
  const spare = (k - (n % k)) % k
  const ofRound = (upTo: bigint): bigint => (upTo > spare + 1n ? upTo - spare - 1n : 0n)
  return (all / k) * ofRound(k) + ofRound(all % k)
}

/** Row by row: the posts that carry a joint, and the first and last board of the row. Posts are counted from one end, from 1. */
function jointsTable(
  bays: Quantity,
  span: Quantity,
  rails: Quantity,
  centres: Quantity,
  post: Quantity,
  system: System,
): Table {
  const unit = system === 'metric' ? 'mm' : 'in'
  const [n, k] = [bays, span].map((it) => Number(exactly(it).n)) as [number, number]
  const rowCount = Math.min(Number(exactly(rails).n), mostRows)
  const long = (count: number): string => {
    const amount = exactly(centres).mul(count).add(exactly(post).div(2))
    return show({ kind: 'length', amount, unit }).replace(` ${unit}`, '')
  }
  return {
    title: `Joints row by row, posts counted from one end${Number(exactly(rails).n) > mostRows ? ' (further rows go on alike)' : ''}`,
    columns: [
      { label: 'row', unit: '' },
      { label: 'posts with a joint', unit: '' },
      { label: `first board (${unit})`, unit },
      { label: `last board (${unit})`, unit },
    ],
    rows: Array.from({ length: rowCount }, (_, row) => {
      const first = k - (row % k)
      const joints = Math.ceil((n - first) / k)
      const at = (i: number): number => 1 + first + i * k
      const written =
        joints <= mostJoints
          ? Array.from({ length: joints }, (_, i) => at(i)).join(', ')
          : `${at(0)}, ${at(1)} and so on to ${at(joints - 1)}`
      return [row + 1, written, long(first), long(n + 1 - at(joints - 1))]
    }),
  }
}
