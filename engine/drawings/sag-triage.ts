// This file is about the three measurements that tell why a gate hangs low, marked on the gate, with what each lets it down.
import type { Seen } from '../calculation.ts'
import { show } from '../quantities/show.ts'
import { aside, box, heading, line, sheet, shape, width, words } from './svg.ts'

const [left, top, wide, high] = [96, 60, 150, 120]

export function triageDrawing(seen: Seen): string | null {
  const [racked, leaned, hinged] = [seen.maybe('latchDrop'), seen.maybe('latchMove'), seen.maybe('hingeDrop')]
  if (!racked && !leaned && !hinged) return null
  const [right, bottom, sunk] = [left + wide, top + high, 9]
  const post = left - 22
  const drops = [
    ['A', 'diagonals: leaf out of square', racked],
    ['B', 'plumb of the post', leaned],
    ['C', 'gap at the hinges', hinged],
  ] as const
  const mark = (x: number, y: number, letter: string): string =>
    box(x - 8, y - 11, 16, 15, '#fff', 1) + words(x, y + 1, letter, 'middle', 12, true)
  const parts = [
    // The post leans a little toward the gate, its plumb line beside it.
    shape(
      [
        [post - 8, bottom + 26],
        [post - 1, top - 16],
        [post + 11, top - 16],
        [post + 4, bottom + 26],
      ],
      '#bbb',
      1.2,
    ),
    line(post - 20, top - 16, post - 20, bottom + 26, 1, '#111', '6 4'),
    shape(
      [
        [left, top],
        [left - 5, bottom],
        [right - 5, bottom + sunk],
        [right, top + sunk],
      ],
      '#f2f2f2',
      1.5,
    ),
    line(left, top, right - 5, bottom + sunk, 1.5),
    line(left - 5, bottom, right, top + sunk, 1.5, '#111', '7 4'),
    box(post + 6, top + 12, 22, 6, '#555'),
    box(post + 3, bottom - 18, 18, 6, '#555'),
    line(20, bottom + 26, width - 20, bottom + 26, 2),
    mark(left + wide / 2 - 2, top + 28, 'A'),
    mark(post - 34, top + high / 2, 'B'),
    mark(left - 2, top - 8, 'C'),
    mark(left - 12, bottom + 14, 'C'),
    ...drops.flatMap(([letter, what, drop], i) => [
      words(28, bottom + 52 + 18 * i, `${letter}  ${what}`, 'start', 11),
      words(width - 14, bottom + 52 + 18 * i, drop ? `${show(drop)} down` : 'not measured', 'end', 11),
    ]),
    heading('what lets the latch end down'),
    aside('not to scale: where to measure, and the drop that each makes', bottom + 108),
  ]
  return sheet(
    {
      width,
      height: bottom + 118,
      title: 'Three measurements on a gate that hangs low',
      description: `Down at the latch: ${drops.map(([, what, drop]) => `${what} ${drop ? show(drop) : 'not measured'}`).join('; ')}.`,
    },
    parts,
  )
}
