// Rails that run across the faces of the posts, with every joint on a post.
//
//   ●━━━━━━━●━━━━━━━●┃━━━━━━●━━━━━━━●     one board spans as many whole bays as it is long enough for
//  ◄┘                joint, in the middle of a post
//  the first and the last reach half a post further, to the outer face of the end post
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres } from '../../words/bays.ts'
import { bayCount, boardsPerRow, endBoard, faceBoards, faceCut, jointEvery } from '../../words/framing.ts'
import { stockLength } from '../../words/lumber.ts'
import { postWidth } from '../../words/posts.ts'
import { rails } from '../../words/rails.ts'

export const railsAcrossFaces = calculation({
  name: 'rails-across-faces',
  title: 'Rails across the faces of the posts',
  answers:
    'How many bays a board spans when rails run across the posts, where the joints come, and how many boards the run takes.',
  needs: { bayCentres, bayCount, rails, stockLength, postWidth },
  onlyFor: { bayCount: ['boardsPerRow', 'faceBoards'] },
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
  lines: {
    jointEvery: ['floor(stockLength / bayCentres)', 'a joint must come on the middle of a post'],
    faceCut: ['jointEvery * bayCentres', 'from joint to joint'],
    endBoard: ['faceCut + postWidth / 2', 'the first and the last cover their end post whole'],
    boardsPerRow: ['ceil(bayCount / jointEvery)', 'the last one may be shorter'],
    faceBoards: ['rails * boardsPerRow', 'a row for each rail'],
  },
  work({ stockLength, bayCentres, postWidth }, { line, has, refuse, remark, doubt }) {
    if (less(stockLength, bayCentres))
      refuse(
        'stockLength',
        `A board of ${show(stockLength)} is shorter than a bay, ${show(bayCentres)} from post centre to post centre, so its end hangs in the air. Take longer boards or closer posts.`,
      )
    const span = line('jointEvery')
    const cut = line('faceCut')
    const atEnd = line('endBoard')
    if (has('bayCount')) {
      line('boardsPerRow')
      line('faceBoards')
    }
    remark(
      compare(span.amount, exact(1)) === 1
        ? `Each board spans ${show(span)}. Shift the joints of one row by a bay against the next, so that no post carries all of them.`
        : 'Each board spans one bay, so every post carries a joint: two ends share its face, and screws come close to them. Boards that span two bays hold better.',
    )
    if (less(cut, stockLength)) remark(`Cut each board back to ${show(cut)}, or the joint misses the post.`)
    if (less(stockLength, atEnd))
      doubt(
        'contradictory',
        'stockLength',
        `Posts stand on their centres, so at both ends of the run a board must be ${show(atEnd)} to cover its end post, a ${show(postWidth)} one, and a ${show(stockLength)} board ends short of that. Set the end posts half a post nearer, or let the end boards span a bay less and buy for that.`,
      )
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
      given: { bayCentres: '8 ft', bayCount: '13', rails: '2', stockLength: '16 ft' },
      expect: { jointEvery: '2 bays', faceCut: '192 in', boardsPerRow: '7 boards', faceBoards: '14 boards' },
    },
    // ⌊4.8/1.8⌋ = 2; 3600; ⌈9/2⌉ = 5; × 3
    {
      ask: 'Rails on the face of the posts, bays 1.8 m centre to centre, 9 bays with 3 rails, boards 4.8 m long: where do the joints fall?',
      given: { bayCentres: '1800 mm', bayCount: '9', rails: '3', stockLength: '4800 mm' },
      expect: { jointEvery: '2 bays', faceCut: '3,600 mm', faceBoards: '15 boards' },
    },
  ],
})
