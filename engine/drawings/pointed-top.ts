// This file is about a pointed picket top from the front, to scale: its rise, its cut, its width, and how far up the shoulders are.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, bend, broken, down, heading, line, shape, sheet, width, words } from './svg.ts'

const middle = 172
const tip = 62

export function pointedTopDrawing(seen: Seen): string | null {
  const [wide, angle, rise, cut] = [
    seen.one('picketWidth'),
    seen.one('pointAngle'),
    seen.one('pointRise'),
    seen.one('pointCut'),
  ]
  const up = seen.maybe('shoulderHeight')
  const [w, r] = [numberIn(wide, 'in'), numberIn(rise, 'in')]
  const scale = Math.min(110 / w, 150 / r)
  const [left, right] = [middle - (w / 2) * scale, middle + (w / 2) * scale]
  const shoulder = tip + r * scale
  const end = shoulder + 56
  // The foot stands below a break: the picket between is left out.
  const foot = up ? end + 46 : end
  const parts = [
    shape(
      [
        [left, end],
        [left, shoulder],
        [middle, tip],
        [right, shoulder],
        [right, end],
      ],
      '#f4f4f4',
      1.5,
    ),
    broken(left, right, end),
  ]
  if (up)
    parts.push(
      shape(
        [
          [left, end + 12],
          [right, end + 12],
          [right, foot],
          [left, foot],
        ],
        '#f4f4f4',
        1.5,
      ),
      broken(left, right, end + 12),
      line(right, shoulder, right + 22, shoulder, 0.5),
      line(right, foot, right + 22, foot, 0.5),
      down(right + 18, shoulder, foot, show(up), 'right', 'to the shoulder'),
    )
  parts.push(
    // From the dashed line, which is a square cut, the saw turns up to the slope.
    line(left - 76, shoulder, right, shoulder, 1, '#111', '5 4'),
    bend(left, shoulder, Math.min(26, (w * scale) / 2), 0, numberIn(cut, 'deg')),
    words(left - 10, shoulder - 6, show(cut), 'end'),
    words(left - 10, shoulder + 15, 'from square', 'end', 11),
    line(middle, tip, right + 22, tip, 0.5),
    down(right + 18, tip, shoulder, show(rise)),
    bend(
      middle,
      tip,
      Math.min(18, r * scale * 0.5),
      270 - numberIn(angle, 'deg') / 2,
      270 + numberIn(angle, 'deg') / 2,
    ),
    words(middle, tip - 10, show(angle)),
    across(left, right, foot + 26, show(wide)),
    heading(`point ${show(rise)} high, cut ${show(cut)} from square`),
  )
  if (up) parts.push(aside('between the two breaks the picket is left out', foot + 46))
  return sheet(
    {
      width,
      height: foot + (up ? 58 : 38),
      title: 'A pointed top, from the front',
      description: `A picket ${show(wide)} wide with a point of ${show(angle)}: it rises ${show(rise)} from the shoulders, and each slope is cut ${show(cut)} from square.${up ? ` The shoulders are ${show(up)} up from the foot.` : ''}`,
    },
    parts,
  )
}
