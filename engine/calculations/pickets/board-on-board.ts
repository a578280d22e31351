// Two layers: boards with gaps behind, and a board over each gap in front.
//
//   ┃ ▄▄▄▄   ▄▄▄▄   ▄▄▄▄ ┃   back: n boards, n + 1 gaps, the first and the last against the posts
//   ▀▀▀  ▀▀▀▀▀  ▀▀▀▀▀  ▀▀▀   front: one over each gap
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { mostPickets } from '../../running-marks.ts'
import { backBoards, boardLap, bothLayers, coverEachSide, frontBoards } from '../../words/picket-patterns.ts'
import { gap, opening, picketWidth, widestGap } from '../../words/pickets.ts'

export const boardOnBoard = calculation({
  name: 'board-on-board',
  title: 'Boards in two layers',
  answers:
    'How many boards the back and the front layer take when every gap behind is covered by a board in front, and the gap.',
  needs: { opening, picketWidth, boardLap, widestGap },
  may: ['boardLap', 'widestGap'],
  oneOf: [['boardLap', 'widestGap']],
  gives: { bothLayers, backBoards, frontBoards, gap, coverEachSide },
  headlines: ['bothLayers', 'gap'],
  together: {
    bothLayers: ['bothLayers', 'backBoards', 'frontBoards', 'gap', 'coverEachSide'],
    backBoards: ['backBoards', 'frontBoards', 'bothLayers'],
    frontBoards: ['frontBoards', 'backBoards', 'bothLayers'],
  },
  called: [
    'board on board',
    'board-on-board',
    'two layers',
    'both layers',
    'both sides alike',
    'good neighbour',
    'good neighbor',
  ],
  lines: {
    widest: ['picketWidth - 2 * boardLap', 'a gap no wider than a board less what it must cover on both sides'],
    backBoards: [
      'max(ceil((opening - widest) / (picketWidth + widest)), 1)',
      'the fewest that keep the gaps that narrow',
    ],
    gap: ['(opening - backBoards * picketWidth) / (backBoards + 1)', 'one gap more than boards'],
    coverEachSide: ['(picketWidth - gap) / 2', 'the front board stands in the middle of its gap'],
    frontBoards: ['backBoards + 1', 'one over each gap; those at the posts lie partly over a post'],
    bothLayers: ['backBoards + frontBoards', 'back and front'],
  },
  work({ opening, picketWidth, boardLap, widestGap }, { line, has, put, refuse }) {
    const byLap = has('boardLap') ? line('widest') : widestGap
    // Where a widest gap is told as well, both must hold.
    const widest = has('widestGap') && !less(byLap, widestGap) ? put('widest', widestGap) : byLap
    if (!less(widest, picketWidth))
      refuse(
        'widestGap',
        `Boards ${show(picketWidth)} wide do not cover gaps of ${show(widest)}. Take a narrower gap or wider boards.`,
      )
    if (has('widestGap') && compare(widestGap.amount, exact(0)) === 0)
      refuse(
        'widestGap',
        'Without a gap behind there is nothing for the front boards to cover. Take a gap, or one layer.',
      )
    if (compare(widest.amount, exact(0)) !== 1)
      refuse(
        'boardLap',
        `Boards ${show(picketWidth)} wide that cover ${show(boardLap)} on both sides leave no gap behind them. Take a smaller cover.`,
      )
    if (less(opening, picketWidth))
      refuse(
        'opening',
        `A ${show(picketWidth)} board does not fit a ${show(opening)} opening. Check both measurements.`,
      )
    const count = line('backBoards')
    if (compare(count.amount, mostPickets) === 1)
      refuse('opening', `${show(count)} are more than one bay can hold. Check both units.`)
    const between = line('gap')
    if (compare(between.amount, exact(0)) === -1)
      refuse(
        'opening',
        `${show(count)} of ${show(picketWidth)} do not fit a ${show(opening)} opening. Check the measurements.`,
      )
    for (const name of ['coverEachSide', 'frontBoards', 'bothLayers']) line(name)
  },
  sources: [
    {
      fact: 'back: opening = boards × width + (boards + 1) × gap; front: one to each gap',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['tools', 'structure'],
  examples: [
    // widest 5.5 − 2 = 3.5; (93 − 3.5)/9 = 9.94 → 10; (93 − 55)/11 = 3 5/11; cover (5.5 − 3 5/11)/2 = 1 1/44; 11; 21
    {
      ask: 'Board on board with 5 1/2 in boards lapping 1 in, opening 93 in: how many boards?',
      given: { opening: '93 in', picketWidth: '5 1/2 in', boardLap: '1 in' },
      expect: {
        backBoards: '10 boards',
        frontBoards: '11 boards',
        bothLayers: '21 boards',
        gap: '3 5/11 in',
        coverEachSide: '1 1/44 in',
      },
    },
    // widest 150 − 50 = 100; (2400 − 100)/250 = 9.2 → 10; (2400 − 1500)/11 = 81 9/11
    {
      ask: 'Boards in two layers, 150 mm boards with 25 mm overlap, 2400 mm opening: how many boards for board on board?',
      given: { opening: '2400 mm', picketWidth: '150 mm', boardLap: '25 mm' },
      expect: { backBoards: '10 boards', frontBoards: '11 boards', bothLayers: '21 boards', gap: '81 9/11 mm' },
    },
    // (92.5 − 3)/6.5 = 13.8 → 14; (92.5 − 49)/15 = 2.9; (3.5 − 2.9)/2 = 0.3
    {
      ask: 'Pickets 3 1/2 in, gaps 3 in, opening 92 1/2 in, board on board, both sides alike: how many boards?',
      given: { opening: '92 1/2 in', picketWidth: '3 1/2 in', widestGap: '3 in' },
      expect: { bothLayers: '29 boards', gap: '2 9/10 in', coverEachSide: '3/10 in' },
    },
  ],
})
