// One post that must move, for a rock or a pipe: its two bays.
//
//   ●──────── planned ────────●──────── planned ────────●
//   ●─────────── longer ─────────►●──── shorter ────────●
//
//   the pickets of each bay come out anew: gap = (opening − pickets × width) / (pickets + 1)
import { calculation } from '../../calculation.ts'
import type { Table } from '../../outcome.ts'
import { roundTo, times } from '../../quantities/amount.ts'
import { exactly, less, type Quantity, quantity, type System } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { widestBay } from '../../words/bays.ts'
import {
  bayBeforePost,
  longerBay,
  longerGap,
  longerOpening,
  longerPickets,
  moveHolds,
  postMoved,
  shorterBay,
  shorterGap,
  shorterOpening,
  shorterPickets,
  stockReaches,
} from '../../words/corners-and-curves.ts'
import { stockLength } from '../../words/lumber.ts'
import { pickets, picketWidth, widestGap } from '../../words/pickets.ts'
import { postWidth } from '../../words/posts.ts'

export const movedPost = calculation({
  name: 'moved-post',
  title: 'One post that must move',
  answers:
    'The two new bays when one post moves along the run for a rock, a root or a pipe, their new gaps, and whether limit and rail boards still hold.',
  needs: { bayBeforePost, postMoved, postWidth, widestBay, picketWidth, pickets, widestGap, stockLength },
  may: ['widestBay', 'picketWidth', 'pickets', 'widestGap', 'stockLength'],
  onlyFor: { widestBay: ['moveHolds'], stockLength: ['stockReaches'] },
  gives: {
    longerBay,
    shorterBay,
    longerOpening,
    shorterOpening,
    longerPickets,
    longerGap,
    shorterPickets,
    shorterGap,
    moveHolds,
    stockReaches,
  },
  headlines: ['longerBay', 'shorterBay'],
  together: {
    longerBay: [
      'longerBay',
      'shorterBay',
      'longerOpening',
      'shorterOpening',
      'longerPickets',
      'longerGap',
      'shorterPickets',
      'shorterGap',
      'moveHolds',
      'stockReaches',
    ],
    longerGap: ['longerGap', 'longerPickets', 'shorterGap', 'shorterPickets', 'longerBay', 'shorterBay'],
    moveHolds: ['moveHolds', 'longerBay', 'shorterBay'],
    stockReaches: ['stockReaches', 'longerOpening', 'longerBay', 'shorterBay'],
  },
  called: ['must move', 'has to move', 'hit a rock', 'move one post', 'moved post', 'post must move'],
  lines: {
    longerBay: ['bayBeforePost + postMoved', 'on the side it moves away from'],
    shorterBay: ['bayBeforePost - postMoved', 'on the side it moves toward'],
    longerOpening: ['longerBay - postWidth', 'between post faces'],
    shorterOpening: ['shorterBay - postWidth', 'between post faces'],
    longerPickets: [
      'ceil((longerOpening - widestGap) / (picketWidth + widestGap))',
      'the fewest that keep every gap within your limit',
    ],
    shorterPickets: [
      'ceil((shorterOpening - widestGap) / (picketWidth + widestGap))',
      'the fewest that keep every gap within your limit',
    ],
    longerGap: [
      '(longerOpening - longerPickets * picketWidth) / (longerPickets + 1)',
      'the wood is taken out, and what is left is shared equally',
    ],
    shorterGap: [
      '(shorterOpening - shorterPickets * picketWidth) / (shorterPickets + 1)',
      'the same for the other bay',
    ],
  },
  work({ bayBeforePost, postMoved, postWidth }, { line, has, put, rows, tell, refuse, remark, cite, table, system }) {
    const longer = line('longerBay')
    const shorter = line('shorterBay')
    if (!less(postWidth, shorter))
      refuse(
        'postMoved',
        `Moved by ${show(postMoved)}, the post runs into its neighbor: bays of ${show(bayBeforePost)} and posts ${show(postWidth)} wide leave no room. Check the three.`,
      )
    const [wide, narrow] = [line('longerOpening'), line('shorterOpening')]
    if (has('widestBay')) {
      const limit = rows('widestBay')[0] as Quantity
      const holds = !less(limit, longer)
      tell('moveHolds', holds)
      remark(
        `Decided by: ${show(longer)} against your limit of ${show(limit)}.${holds ? '' : ' Move it the other way, add a post, or set out that part of the run anew.'}`,
      )
    }
    if (has('picketWidth') && (has('widestGap') || has('pickets'))) newGaps()
    else remark('Its pickets come out anew in both bays: tell me how wide they are, and how wide a gap may be.')
    if (has('stockLength')) {
      const stock = rows('stockLength')[0] as Quantity
      const reaches = !less(stock, wide)
      tell('stockReaches', reaches)
      remark(
        `Decided by: boards of ${show(stock)} against the opening of ${show(wide)}.${reaches ? '' : ' Buy longer ones for that bay, or move the post less.'} Rails that run across the posts must reach from post centre to post centre, ${show(longer)}.`,
      )
    } else remark('Rails bought to the planned bays may be too short now.')
    remark(
      `I took both its bays to be ${show(bayBeforePost)}. If they were not alike, add ${show(postMoved)} to the one it moves away from, and take as much off the other.`,
    )
    remark('Look first whether the whole run can be set out so that no post meets the rock.')

    /** Pickets and gaps of the two bays: by the widest gap, else with as many pickets as were planned for each. */
    function newGaps(): void {
      const width = rows('picketWidth')[0] as Quantity
      if (has('widestGap')) {
        for (const name of ['longerPickets', 'shorterPickets']) {
          const count = line(name)
          if (less(count, quantity(0, 'picket'))) put(name, quantity(0, 'picket'))
        }
      } else {
        const planned = rows('pickets')[0] as Quantity
        tell('longerPickets', planned)
        tell('shorterPickets', planned)
        remark(
          `I kept ${show(planned)} in both bays, as planned. Tell me the widest gap you allow, and I choose the number for each.`,
        )
      }
      const bays = [
        { name: 'longer', opening: wide },
        { name: 'shorter', opening: narrow },
      ].map(({ name, opening }) => {
        const count = rows(`${name}Pickets`)[0] as Quantity
        const wood: Quantity = { ...opening, amount: times(count.amount, width.amount) }
        if (less(opening, wood))
          refuse(
            has('widestGap') ? 'widestGap' : 'pickets',
            `${cite(count, `pickets in the ${name} bay`)} of ${show(width)} are ${cite(wood, `wood in the ${name} bay`)} of wood, more than the ${name} opening of ${show(opening)}. ${has('widestGap') ? 'Allow a wider gap there, or trim the two at the posts' : 'Leave one out of that bay'}.`,
          )
        return { name, opening, count, gap: line(`${name}Gap`) }
      })
      table(gapsTable(bays, system))
      remark('Ask for the spacing of each opening to have its running marks.')
    }
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
    // openings 101 − 3 1/2 = 97 1/2 and 87 1/2; ⌈95/6⌉ = 16 and ⌈85/6⌉ = 15; (97 1/2 − 56)/17 = 2 15/34, (87 1/2 − 52 1/2)/16 = 2 3/16; 96 < 97 1/2
    {
      ask: 'Bays are 96 in, one post has to move 5 in for a root, posts 3 1/2 in wide, pickets 3 1/2 in wide with gaps of at most 2 1/2 in, and the boards are 8 ft long. What are the new gaps, and do the rails still fit?',
      given: {
        bayBeforePost: '96 in',
        postMoved: '5 in',
        postWidth: '3 1/2 in',
        picketWidth: '3 1/2 in',
        widestGap: '2 1/2 in',
        stockLength: '8 ft',
      },
      expect: {
        longerPickets: '16 pickets',
        longerGap: '2 15/34 in',
        shorterPickets: '15 pickets',
        shorterGap: '2 3/16 in',
        stockReaches: 'your boards are too short for the longer bay',
      },
    },
  ],
})

interface Bay {
  readonly name: string
  readonly opening: Quantity
  readonly count: Quantity
  readonly gap: Quantity
}

/** The two bays side by side, the gap exactly and at the nearest mark of a tape. */
function gapsTable(bays: readonly Bay[], system: System): Table {
  const unit = system === 'metric' ? 'mm' : 'in'
  const mark = exactly(system === 'metric' ? quantity(1, 'mm') : quantity('1/16', 'in'))
  const bare = (q: Quantity): string => show({ ...q, unit }).replace(` ${unit}`, '')
  return {
    title: 'Pickets and gaps of the two bays',
    columns: [
      { label: 'bay', unit: '' },
      { label: `opening (${unit})`, unit },
      { label: 'pickets', unit: '' },
      { label: `gap (${unit})`, unit },
      { label: `gap by the tape (${unit})`, unit },
    ],
    rows: bays.map(({ name, opening, count, gap }) => [
      name,
      bare(opening),
      show({ ...count, kind: 'number', unit: 'ratio' }),
      bare(gap),
      bare({ ...gap, amount: roundTo(gap.amount, mark) }),
    ]),
  }
}
