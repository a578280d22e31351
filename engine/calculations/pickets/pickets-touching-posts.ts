// Pickets with one tight against each post, and equal gaps only between them.
//
//   ┃█   █   █   █┃      one gap fewer than pickets: opening = n × width + (n − 1) × gap
import { calculation } from '../../calculation.ts'
import { touchingDrawing } from '../../drawings/bay.ts'
import { compare, exact, times } from '../../quantities/amount.ts'
import { exactly, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { evenMarks, markFromOneEnd, marksTable, mostPickets } from '../../running-marks.ts'
import { gap, lastGap, opening, pickets, picketWidth, tapeGap, tapeMark, widestGap } from '../../words/pickets.ts'

export const picketsTouchingPosts = calculation({
  name: 'pickets-touching-posts',
  title: 'Pickets in one bay, one against each post',
  answers: 'How many pickets fill an opening with one tight against each post, and the one gap between them.',
  needs: { opening, picketWidth, widestGap, tapeMark },
  gives: { pickets, gap, tapeGap, lastGap },
  headlines: ['pickets', 'tapeGap'],
  together: { tapeGap: ['pickets', 'tapeGap'], gap: ['gap', 'tapeGap', 'pickets'], pickets: ['pickets', 'tapeGap'] },
  called: [
    'against each post',
    'against the posts',
    'tight to the posts',
    'tight against',
    'touching the posts',
    'touching each post',
    'no gap at the posts',
    'picket at each post',
    'starting with a picket',
    'picket on each end',
    'picket at each end',
    'hard against the posts',
    'flush with the posts',
    'butted to the posts',
  ],
  lines: {
    pickets: [
      'max(ceil((opening + widestGap) / (picketWidth + widestGap)), 2)',
      'the fewest that keep every gap within your limit; one stands at each end',
    ],
    gap: [
      '(opening - pickets * picketWidth) / (pickets - 1)',
      'the wood is taken out, and what is left is shared by one gap fewer than pickets',
    ],
    tapeGap: ['round(gap, tapeMark)', 'the nearest mark on a tape'],
    lastGap: [
      'opening - pickets * picketWidth - (pickets - 2) * tapeGap',
      'what the last gap would be if you stepped the tape gap along',
    ],
  },
  work({ opening, picketWidth, widestGap, tapeMark }, { line, refuse, remark, cite, table, system }) {
    const two: Quantity = { ...picketWidth, amount: times(exact(2), picketWidth.amount) }
    if (less(opening, two))
      refuse(
        'opening',
        `One at each post takes two pickets, and two of ${show(picketWidth)} do not fit a ${show(opening)} opening. Check both measurements.`,
      )
    const count = line('pickets')
    if (compare(count.amount, mostPickets) === 1)
      refuse('opening', `${show(count)} are more than one bay can hold. Check both units, or give one bay at a time.`)
    const between = line('gap')
    if (compare(between.amount, exact(0)) === -1)
      refuse(
        'widestGap',
        `${show(count)} of ${show(picketWidth)} are more wood than a ${show(opening)} opening holds, and one fewer would leave a gap over ${show(widestGap)}. Allow a wider gap, or trim two pickets.`,
      )
    line('tapeGap')
    line('lastGap')
    const pitch = exactly(between).add(exactly(picketWidth))
    table(marksTable(evenMarks(exact(0), pitch, exactly(count), exactly(tapeMark)), system))
    remark(`The first and the last stand hard against their posts. ${markFromOneEnd}`)
    if (compare(count.amount, exact(2)) === 0)
      remark(`That is ${cite(quantity(2, 'picket'), 'pickets, one at each post')} only: one at each post.`)
  },
  sources: [
    { fact: 'opening = pickets × width + (pickets − 1) × gap', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  drawing: touchingDrawing,
  examples: [
    // (93 + 2.5)/6 = 15.92 → 16; 93 − 56 = 37; /15 = 2 7/15; nearest 2 7/16; 37 − 14 × 2 7/16 = 2 7/8
    {
      ask: 'How many 3 1/2 in pickets in a 93 in opening with a picket against each post and gaps no wider than 2 1/2 in?',
      given: { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
      expect: { pickets: '16 pickets', gap: '2 7/15 in', tapeGap: '2 7/16 in', lastGap: '2 7/8 in' },
    },
    // (2400 + 30)/100 = 24.3 → 25; 2400 − 1750 = 650; /24 = 27 1/12
    {
      ask: 'Opening 2400 mm, 70 mm pickets tight to the posts, gaps at most 30 mm: how many pickets?',
      given: { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm' },
      expect: { pickets: '25 pickets', gap: '27 1/12 mm', tapeGap: '27 mm' },
    },
  ],
})
