// One post that must move, for a rock or a pipe: its two bays.
//
//   ●──────── planned ────────●──────── planned ────────●
//   ●─────────── longer ─────────►●──── shorter ────────●
import { calculation } from '../../calculation.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { widestBay } from '../../words/bays.ts'
import {
  bayBeforePost,
  longerBay,
  longerOpening,
  moveHolds,
  postMoved,
  shorterBay,
  shorterOpening,
} from '../../words/corners-and-curves.ts'
import { postWidth } from '../../words/posts.ts'

export const movedPost = calculation({
  name: 'moved-post',
  title: 'One post that must move',
  answers:
    'The two new bays when one post moves along the run for a rock, a root or a pipe, and whether the longer one keeps the limit.',
  needs: { bayBeforePost, postMoved, postWidth, widestBay },
  may: ['widestBay'],
  onlyFor: { widestBay: ['moveHolds'] },
  gives: { longerBay, shorterBay, longerOpening, shorterOpening, moveHolds },
  headlines: ['longerBay', 'shorterBay'],
  together: {
    longerBay: ['longerBay', 'shorterBay', 'longerOpening', 'shorterOpening', 'moveHolds'],
    moveHolds: ['moveHolds', 'longerBay', 'shorterBay'],
  },
  called: ['must move', 'has to move', 'hit a rock', 'move one post', 'moved post', 'post must move'],
  lines: {
    longerBay: ['bayBeforePost + postMoved', 'on the side it moves away from'],
    shorterBay: ['bayBeforePost - postMoved', 'on the side it moves toward'],
    longerOpening: ['longerBay - postWidth', 'between post faces'],
    shorterOpening: ['shorterBay - postWidth', 'between post faces'],
  },
  work({ bayBeforePost, postMoved, postWidth }, { line, has, rows, tell, refuse, remark }) {
    const longer = line('longerBay')
    const shorter = line('shorterBay')
    if (!less(postWidth, shorter))
      refuse(
        'postMoved',
        `Moved by ${show(postMoved)}, the post runs into its neighbor: bays of ${show(bayBeforePost)} and posts ${show(postWidth)} wide leave no room. Check the three.`,
      )
    line('longerOpening')
    line('shorterOpening')
    if (has('widestBay')) {
      const limit = rows('widestBay')[0] as Quantity
      const holds = !less(limit, longer)
      tell('moveHolds', holds)
      remark(
        `Decided by: ${show(longer)} against your limit of ${show(limit)}.${holds ? '' : ' Move it the other way, add a post, or set out that part of the run anew.'}`,
      )
    }
    remark(
      'Its pickets come out anew in both bays: ask for the spacing of each opening. Look first whether the whole run can be set out so that no post meets the rock. Rails bought to the planned bays may be too short now.',
    )
  },
  sources: [{ fact: 'what one bay gains the other loses', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 96 + 5 = 101, 96 − 5 = 91; − 3.5
    {
      ask: 'Bays are 96 in on center and one post has to move 5 in for a rock. What are the two new bays?',
      given: { bayBeforePost: '96 in', postMoved: '5 in', postWidth: '3 1/2 in' },
      expect: { longerBay: '101 in', shorterBay: '91 in', longerOpening: '97 1/2 in', shorterOpening: '87 1/2 in' },
    },
    // 2000 + 150 = 2150 < 2400
    {
      ask: 'One post must move 150 mm, bays of 2000 mm, 90 mm posts, bays at most 2.4 m. What do the bays become?',
      given: { bayBeforePost: '2000 mm', postMoved: '150 mm', postWidth: '90 mm', widestBay: '2.4 m' },
      expect: { longerBay: '2,150 mm', shorterBay: '1,850 mm', moveHolds: 'both bays are within your limit' },
    },
  ],
})
