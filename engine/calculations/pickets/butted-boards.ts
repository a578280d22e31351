// Boards tight together: the last one is ripped, or the trim is shared by both ends.
//
//   ┃████│████│████│██┃
import { calculation } from '../../calculation.ts'
import { compare, exact, times } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { mostPickets } from '../../running-marks.ts'
import { boards, endBoards, lastBoard } from '../../words/picket-patterns.ts'
import { opening, picketWidth } from '../../words/pickets.ts'

export const buttedBoards = calculation({
  name: 'butted-boards',
  title: 'Boards with no gap',
  answers: 'How many boards fill an opening with no gaps, and how the last one or both end ones are ripped.',
  needs: { opening, picketWidth },
  gives: { boards, lastBoard, endBoards },
  headlines: ['boards', 'lastBoard'],
  together: { boards: ['boards', 'lastBoard', 'endBoards'], lastBoard: ['lastBoard', 'endBoards', 'boards'] },
  called: ['butted', 'no gap', 'no gaps', 'tight together', 'close boarded', 'close-boarded', 'solid'],
  lines: {
    boards: ['ceil(opening / picketWidth)', 'the last one counts whole: it is bought whole'],
    lastBoard: ['opening - (boards - 1) * picketWidth', 'what the others leave'],
    endBoards: ['(opening - (boards - 2) * picketWidth) / 2', 'or the trim is shared, and both ends look alike'],
  },
  work({ opening, picketWidth }, { line, refuse, remark }) {
    if (less({ ...picketWidth, amount: times(picketWidth.amount, mostPickets) }, opening))
      refuse(
        'opening',
        `${show(picketWidth)} boards in a ${show(opening)} opening are more than one bay can hold. Check both units.`,
      )
    const count = line('boards')
    const last = line('lastBoard')
    const half: Quantity = { ...picketWidth, amount: times(picketWidth.amount, exact('1/2')) }
    if (compare(count.amount, exact(2)) !== -1) {
      line('endBoards')
      if (less(last, half))
        remark(`The last board would be a strip of ${show(last)}. Share the trim between both ends instead.`)
    }
    remark(
      'Boards that are butted wet open up as they dry; boards butted dry swell and buckle. Ask for the gap to set now.',
    )
  },
  sources: [{ fact: 'boards = opening ÷ width, rounded up', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools', 'structure'],
  examples: [
    // 93/5.5 = 16.9 → 17; 93 − 88 = 5; (93 − 82.5)/2 = 5 1/4
    {
      ask: 'How many boards fill a 93 in opening butted with no gap, boards 5 1/2 in wide?',
      given: { opening: '93 in', picketWidth: '5 1/2 in' },
      expect: { boards: '17 boards', lastBoard: '5 in', endBoards: '5 1/4 in' },
    },
    // 2400/95 = 25.26 → 26; 2400 − 2375 = 25; (2400 − 24 × 95)/2 = 60
    {
      ask: 'Opening 2400 mm, 95 mm boards tight together: how many boards fill the bay?',
      given: { opening: '2400 mm', picketWidth: '95 mm' },
      expect: { boards: '26 boards', lastBoard: '25 mm', endBoards: '60 mm' },
    },
  ],
})
