// Rails cut to go between the posts, and the boards they come from.
//
//   ┃◄play►├──── rail ────┤◄play►┃
import { calculation } from '../../calculation.ts'
import { railsDrawing } from '../../drawings/rails.ts'
import { exact, times } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { fitAllowance, railBoards, railCut, railOffcut, railsInAll, railsPerBoard } from '../../words/framing.ts'
import { kerf, stockLength } from '../../words/lumber.ts'
import { opening } from '../../words/pickets.ts'
import { rails } from '../../words/rails.ts'
import { bays } from '../../words/bays.ts'

export const railsBetweenPosts = calculation({
  name: 'rails-between-posts',
  title: 'Rails between the posts',
  answers: 'How long rails between posts are cut, how many there are, and how many boards of a given length they take.',
  needs: { opening, fitAllowance, rails, bays, stockLength, kerf },
  onlyFor: {
    opening: ['railCut', 'railsPerBoard', 'railBoards', 'railOffcut'],
    fitAllowance: ['railCut', 'railsPerBoard', 'railBoards', 'railOffcut'],
    bays: ['railsInAll', 'railBoards'],
    stockLength: ['railsPerBoard', 'railBoards', 'railOffcut'],
    kerf: ['railsPerBoard', 'railBoards', 'railOffcut'],
  },
  gives: { railCut, railsInAll, railsPerBoard, railBoards, railOffcut },
  headlines: ['railCut', 'railsInAll', 'railBoards'],
  together: {
    railCut: ['railCut', 'railsInAll', 'railsPerBoard', 'railBoards'],
    railBoards: ['railBoards', 'railsPerBoard', 'railCut', 'railsInAll', 'railOffcut'],
  },
  called: ['between the posts', 'between posts'],
  lines: {
    railCut: ['opening - 2 * fitAllowance', 'the opening, less the play at both ends'],
    railsInAll: ['rails * bays', 'so many in each bay'],
    railsPerBoard: ['floor((stockLength + kerf) / (railCut + kerf))', 'one cut fewer than pieces'],
    railBoards: ['ceil(railsInAll / railsPerBoard)', 'whole boards'],
    railOffcut: [
      'max(stockLength - railsPerBoard * (railCut + kerf), 0)',
      'every rail takes its cut, the last one as well, unless it is the board’s end',
    ],
  },
  work(_given, { line, has, rows, refuse, remark }) {
    if (has('bays')) line('railsInAll')
    if (!has('opening') || !has('fitAllowance')) return
    const [space, fitAllowance] = [rows('opening')[0], rows('fitAllowance')[0]] as [Quantity, Quantity]
    const play: Quantity = { ...fitAllowance, amount: times(exact(2), fitAllowance.amount) }
    if (!less(play, space))
      refuse(
        'fitAllowance',
        `Play of ${show(fitAllowance)} at both ends leaves nothing of a ${show(space)} opening. Check both.`,
      )
    const cut = line('railCut')
    if (has('stockLength') && has('kerf')) {
      const stock = rows('stockLength')[0] as Quantity
      if (less(stock, cut))
        refuse(
          'stockLength',
          `A board of ${show(stock)} is shorter than the rail, ${show(cut)}. Take longer boards, or closer posts.`,
        )
      line('railsPerBoard')
      if (has('bays')) line('railBoards')
      line('railOffcut')
    }
    remark(
      'Posts are never set quite evenly: measure each bay where its rail goes and cut to that. The boards here are reckoned one length at a time; a cut plan for the whole fence may need fewer.',
    )
  },
  sources: [
    {
      fact: 'rail = opening − play at both ends; pieces from a board = ⌊(board + cut) / (piece + cut)⌋',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['tools'],
  drawing: railsDrawing,
  examples: [
    // 92 1/2 − 1/4 = 92 1/4; 2 × 13 = 26; ⌊(96 + 1/8)/(92 1/4 + 1/8)⌋ = 1 → 26 boards; 96 − 92 1/4 − 1/8 = 3 5/8
    {
      ask: 'Rails between the posts: opening 92 1/2 in, 13 bays with 2 rails each, 8 ft boards. How long do I cut the rails and how many boards?',
      given: { opening: '92 1/2 in', rails: '2', bays: '13', stockLength: '8 ft' },
      expect: {
        railCut: '92 1/4 in',
        railsInAll: '26 rails',
        railsPerBoard: '1 rail',
        railBoards: '26 boards',
        railOffcut: '3 5/8 in',
      },
    },
    // 1710 − 6 = 1704; ⌊3603/1707⌋ = 2; 3 × 10 = 30 → 15; 3600 − 2 × 1707 = 186
    {
      ask: 'Opening 1710 mm, 3 rails in each of 10 bays, boards 3.6 m: how long is a rail and how many boards for the rails?',
      given: {
        opening: '1710 mm',
        rails: '3',
        bays: '10',
        stockLength: '3600 mm',
        kerf: '3 mm',
        fitAllowance: '3 mm',
      },
      expect: {
        railCut: '1,704 mm',
        railsInAll: '30 rails',
        railsPerBoard: '2 rails',
        railBoards: '15 boards',
        railOffcut: '186 mm',
      },
    },
  ],
})
