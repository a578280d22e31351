// A given number of pickets in one bay: the gap that they leave, against the posts too.
//
//   post ┃ gap ▯ gap ▯ gap ┃ post          opening = pickets × width + (pickets + 1) × gap
//
import type Fraction from 'fraction.js'
import { calculation } from '../../calculation.ts'
import { bayDrawing } from '../../drawings/bay.ts'
import { compare, subtract, times } from '../../quantities/amount.ts'
import { exactly, less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { markFromOneEnd, marksTable, mostPickets, runningMarks } from '../../running-marks.ts'
import { gap, lastGap, opening, picketWidth, pickets, tapeGap, tapeMark } from '../../words/pickets.ts'

export const gapForPickets = calculation({
  name: 'gap-for-pickets',
  title: 'The gap that a given number of pickets leaves',
  answers: 'The one gap that makes a given number of pickets come out even between two posts.',
  needs: { opening, picketWidth, pickets, tapeMark },
  gives: { gap, tapeGap, lastGap },
  headlines: ['tapeGap'],
  lines: {
    gap: [
      '(opening - pickets * picketWidth) / (pickets + 1)',
      'the wood is taken out, and what is left is shared equally',
    ],
    tapeGap: ['round(gap, tapeMark)', 'the nearest mark on a tape'],
    lastGap: [
      'opening - pickets * picketWidth - pickets * tapeGap',
      'what would be left at the far post if you stepped the tape gap along',
    ],
  },
  work({ opening, picketWidth, pickets, tapeMark }, { line, refuse, remark, table, cite, system }) {
    if (compare(pickets.amount, mostPickets) === 1)
      refuse('pickets', `${show(pickets)} are more than one bay can hold. Give one bay at a time.`)
    const wood: Quantity = { ...opening, amount: times(pickets.amount, picketWidth.amount) }
    if (less(opening, wood)) {
      const over: Quantity = { ...opening, amount: subtract(wood.amount, opening.amount) }
      refuse(
        'pickets',
        `${show(pickets)} of ${show(picketWidth)} are ${cite(wood, 'wood')} of wood, ${cite(over, 'what it overshoots')} more than the ${show(opening)} opening. Check the three, or take fewer.`,
      )
    }
    line('gap')
    line('tapeGap')
    line('lastGap')
    const [space, width, count, mark] = [opening, picketWidth, pickets, tapeMark].map(exactly) as [
      Fraction,
      Fraction,
      Fraction,
      Fraction,
    ]
    table(marksTable(runningMarks(space, width, count, mark), system))
    remark(markFromOneEnd)
  },
  sources: [
    { fact: 'opening = pickets × width + (pickets + 1) × gap', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  drawing: bayDrawing,
  examples: [
    {
      // 94 1/2 − 15 × 3 1/2 = 42; / 16 = 2 5/8
      ask: 'I have 15 pickets of 3 1/2 in for a 94 1/2 in opening. What gap?',
      given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15' },
      expect: { gap: '2 5/8 in', tapeGap: '2 5/8 in', lastGap: '2 5/8 in' },
    },
    {
      // 2385 − 23 × 70 = 775; / 24 = 32 7/24; nearest mm 32; 775 − 23 × 32 = 39
      ask: '23 pickets of 70 mm in 2385 mm: what gap?',
      given: { opening: '2385 mm', picketWidth: '70 mm', pickets: '23' },
      expect: { gap: '32 7/24 mm', tapeGap: '32 mm', lastGap: '39 mm' },
    },
  ],
})
