// Boards that lap over each other, with the same lap at each.
//
//   ▀▀▀▀▄▄▄▄▀▀▀▀▄▄▄▄      n boards have n − 1 laps: opening = n × width − (n − 1) × lap
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { mostPickets } from '../../running-marks.ts'
import { boardLap, lapNow, lappedBoards as lapped } from '../../words/picket-patterns.ts'
import { opening, picketWidth } from '../../words/pickets.ts'

export const lappedBoards = calculation({
  name: 'lapped-boards',
  title: 'Boards that lap over each other',
  answers: 'How many lapped boards fill an opening, and the one lap that makes them come out even.',
  needs: { opening, picketWidth, boardLap },
  gives: { lappedBoards: lapped, lapNow },
  headlines: ['lappedBoards', 'lapNow'],
  together: { lappedBoards: ['lappedBoards', 'lapNow'], lapNow: ['lapNow', 'lappedBoards'] },
  called: ['lapped', 'overlapping', 'overlap', 'shiplap', 'featheredge', 'feather edge'],
  lines: {
    lappedBoards: [
      'max(ceil((opening - boardLap) / (picketWidth - boardLap)), 1)',
      'each board after the first covers its width less the lap',
    ],
    lapNow: ['(lappedBoards * picketWidth - opening) / (lappedBoards - 1)', 'what is too much is shared by the laps'],
  },
  work({ opening, picketWidth, boardLap }, { line, refuse, remark }) {
    if (!less(boardLap, picketWidth))
      refuse(
        'boardLap',
        `A lap of ${show(boardLap)} is as wide as the ${show(picketWidth)} board. Check both measurements.`,
      )
    const count = line('lappedBoards')
    if (compare(count.amount, mostPickets) === 1)
      refuse('opening', `${show(count)} are more than one bay can hold. Check both units.`)
    if (compare(count.amount, exact(2)) === -1)
      refuse(
        'opening',
        `One ${show(picketWidth)} board covers a ${show(opening)} opening, so nothing laps. Check both measurements.`,
      )
    const lap = line('lapNow')
    remark(`Lap every board by ${show(lap)}. Mark the edges from one end, each a board less a lap further on.`)
  },
  sources: [
    { fact: 'opening = boards × width − (boards − 1) × lap', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools', 'structure'],
  examples: [
    // (93 − 1)/4.5 = 20.4 → 21; 21 × 5.5 = 115.5; − 93 = 22.5; /20 = 1 1/8
    {
      ask: 'How many lapped boards 5 1/2 in wide with an overlap of 1 in fill a 93 in opening?',
      given: { opening: '93 in', picketWidth: '5 1/2 in', boardLap: '1 in' },
      expect: { lappedBoards: '21 boards', lapNow: '1 1/8 in' },
    },
    // (1800 − 25)/100 = 17.75 → 18; 18 × 125 − 1800 = 450; /17 = 26 8/17
    {
      ask: 'Overlapping boards: opening 1800 mm, 125 mm boards, lap of 25 mm. How many?',
      given: { opening: '1800 mm', picketWidth: '125 mm', boardLap: '25 mm' },
      expect: { lappedBoards: '18 boards', lapNow: '26 8/17 mm' },
    },
  ],
})
