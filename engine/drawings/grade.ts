// This file is about a fence on a step in the ground, with its height from both sides.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { box, column, down, heading, line, sheet, width, words } from './svg.ts'

export function gradeDrawing(seen: Seen): string | null {
  const [own, drop, other] = ['fenceHeight', 'gradeDifference', 'heightOtherSide'].map((it) => seen.one(it)) as [
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
  ]
  const scale = 170 / numberIn(other, 'in')
  const top = 46
  const near = top + numberIn(own, 'in') * scale
  const far = top + numberIn(other, 'in') * scale
  const middle = width / 2
  const parts = [
    line(10, near, middle, near, 2),
    line(middle, near, middle, far, 2),
    line(middle, far, width - 10, far, 2),
    box(middle - 7, top, 14, far - top, '#ccc'),
    // Over the line of the ground, however low the fence is on this side.
    column(middle - 50, [{ y1: top, y2: near, figure: show(own), name: '' }], 'left', 0, near - 1),
    down(middle + 46, top, far, show(other), 'right'),
    words(16, near + 18, 'your side', 'start', 11),
    words(width - 16, far + 18, 'other side', 'end', 11),
    heading(`${show(drop)} lower on the other side`),
  ]
  return sheet(
    {
      width,
      height: far + 32,
      title: 'The fence from both sides',
      description: `The fence is ${show(own)} high on your side and ${show(other)} from the other side, where the ground is ${show(drop)} lower.`,
    },
    parts,
  )
}
