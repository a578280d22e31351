// Square caps sawn from a board.
import { calculation } from '../../calculation.ts'
import { capBlanksDrawing } from '../../drawings/cap-blanks.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { capBoards, capCount, capOverhang, capSize, capsPerBoard } from '../../words/caps.ts'
import { kerf, stockLength } from '../../words/lumber.ts'
import { postWidth } from '../../words/posts.ts'

export const capBlanks = calculation({
  name: 'cap-blanks',
  title: 'Caps sawn from a board',
  answers:
    'How many square caps come out of a board, how many boards so many posts take, and how far a cap stands past the post.',
  needs: { capSize, stockLength, kerf, capCount, postWidth },
  onlyFor: { stockLength: ['capsPerBoard', 'capBoards'], capCount: ['capBoards'] },
  gives: { capsPerBoard, capBoards, capOverhang },
  headlines: ['capsPerBoard', 'capBoards'],
  together: {
    capsPerBoard: ['capsPerBoard', 'capBoards', 'capOverhang'],
    capBoards: ['capBoards', 'capsPerBoard', 'capOverhang'],
  },
  lines: {
    capsPerBoard: ['floor((stockLength + kerf) / (capSize + kerf))', 'one cut fewer than caps'],
    capBoards: ['ceil(capCount / capsPerBoard)', 'whole boards'],
    capOverhang: ['(capSize - postWidth) / 2', 'past each face of the post'],
  },
  work({ capSize, postWidth }, { line, has, rows, refuse, remark }) {
    if (less(capSize, postWidth))
      refuse(
        'capSize',
        `A cap ${show(capSize)} across does not cover a ${show(postWidth)} post. Check both: a post’s name is not its size.`,
      )
    if (has('stockLength')) {
      const stock = rows('stockLength')[0] as typeof capSize
      if (less(stock, capSize))
        refuse('stockLength', `A board of ${show(stock)} gives no cap of ${show(capSize)}. Check both.`)
      line('capsPerBoard')
      if (has('capCount')) line('capBoards')
    }
    line('capOverhang')
    remark(
      `Measure your posts: rough or wet ones are bigger than ${show(postWidth)}, and a cap with a recess must go over the biggest. Cut a drip groove under the overhang.`,
    )
  },
  sources: [{ fact: 'caps = ⌊(board + cut) / (cap + cut)⌋', from: 'Derived here; needs no table.' }],
  cautions: ['tools'],
  drawing: capBlanksDrawing,
  examples: [
    // ⌊96.125/5.625⌋ = 17; ⌈27/17⌉ = 2; (5.5 − 3.5)/2
    {
      ask: 'How many caps from a board 8 ft long, 5 1/2 in square caps, for 27 posts?',
      given: { capSize: '5 1/2 in', stockLength: '8 ft', capCount: '27', postWidth: '3 1/2 in', kerf: '1/8 in' },
      expect: { capsPerBoard: '17 caps', capBoards: '2 boards', capOverhang: '1 in' },
    },
    // ⌊3003/143⌋ = 21; (140 − 90)/2
    {
      ask: 'Cap blanks 140 mm from a 3 m board for 90 mm posts: how many blanks?',
      given: { capSize: '140 mm', stockLength: '3000 mm', kerf: '3 mm', postWidth: '90 mm' },
      expect: { capsPerBoard: '21 caps', capOverhang: '25 mm' },
    },
  ],
})
