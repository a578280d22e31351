// This file is about the top of one picket from the front, to scale: rounded with its compass point, or with clipped corners.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, down, dot, heading, ink, line, shape, sheet, spread, width, words } from './svg.ts'

const middle = 176
const top = 66

const inches = (q: Quantity): number => numberIn(q, 'in')
const px = (x: number): string => x.toFixed(2)

export function roundTopDrawing(seen: Seen): string | null {
  const [wide, radius, rise] = ['picketWidth', 'roundRadius', 'roundRise'].map((it) => seen.one(it)) as [
    Quantity,
    Quantity,
    Quantity,
  ]
  const [w, r, s] = [wide, radius, rise].map(inches) as [number, number, number]
  // A compass point far below would leave the top too small to read: then it is told, not drawn.
  const isNear = r <= 2 * w
  const scale = 130 / w
  const shoulder = top + s * scale
  const point = top + r * scale
  const bottom = Math.max(shoulder, isNear ? point : 0) + 46
  const [left, right] = [middle - 65, middle + 65]
  const parts = [
    `<path d="M${px(left)} ${px(bottom)}V${px(shoulder)}A${px(r * scale)} ${px(r * scale)} 0 0 1 ${px(right)} ${px(shoulder)}V${px(bottom)}" fill="#f4f4f4" stroke="${ink}" stroke-width="1.8"/>`,
    line(left, shoulder, right, shoulder, 0.75, ink, '4 3'),
    line(middle, top - 8, middle, bottom, 0.75, ink, '8 3 2 3'),
    down(right + 16, top, shoulder, show(rise), 'right', 'rise'),
    line(middle, top, right + 20, top, 0.5),
    across(left, right, bottom + 18, show(wide)),
    heading(`radius ${show(radius)}`),
  ]
  if (isNear) {
    const turn = Math.asin(Math.min(1, w / 2 / r)) * 0.6
    const [x, y] = [middle - r * scale * Math.sin(turn), point - r * scale * Math.cos(turn)]
    parts.push(line(middle, point, x, y, 1), dot(middle, point, 3.5))
    parts.push(down(left - 14, top, point, show(radius), 'left'), line(left - 18, point, middle, point, 0.5))
    parts.push(line(left - 18, top, middle, top, 0.5))
  } else parts.push(aside(`compass ${show(radius)} below the tip, on the middle line`, bottom + 40))
  return sheet(
    {
      width,
      height: bottom + (isNear ? 30 : 52),
      title: 'A rounded top, from the front',
      description: `A picket ${show(wide)} wide whose top rises ${show(rise)} from its shoulders. The compass stands on the middle line, ${show(radius)} below the tip.`,
    },
    parts,
  )
}

export function clippedDrawing(seen: Seen): string | null {
  const [wide, along, down_, cut] = ['picketWidth', 'clipAcross', 'clipShoulder', 'clipLength'].map((it) =>
    seen.one(it),
  ) as [Quantity, Quantity, Quantity, Quantity]
  const [w, a, d] = [wide, along, down_].map(inches) as [number, number, number]
  const scale = Math.min(130 / w, 200 / d)
  const half = (w / 2) * scale
  const [left, right] = [middle - half, middle + half]
  const shoulder = top + d * scale
  const bottom = shoulder + 56
  const flat: [number, number] = [left + a * scale, right - a * scale]
  const parts = [
    shape(
      [
        [left, bottom],
        [left, shoulder],
        [flat[0], top],
        [flat[1], top],
        [right, shoulder],
        [right, bottom],
      ],
      '#f4f4f4',
      1.8,
    ),
    // What falls off at each side.
    line(left, shoulder, left, top, 0.75, ink, '4 3'),
    line(left, top, flat[0], top, 0.75, ink, '4 3'),
    line(right, shoulder, right, top, 0.75, ink, '4 3'),
    line(flat[1], top, right, top, 0.75, ink, '4 3'),
    across(left, flat[0], top - 10, show(along), flat[0] + 8),
    down(right + 14, top, shoulder, show(down_)),
    across(left, right, bottom + 18, show(wide)),
    heading(`cuts of ${show(cut)}, ${show(seen.one('clipCut'))} from square`),
  ]
  const flatText = `flat ${show(seen.one('flatTop'))}`
  // On the picket where it is wide enough, else under the drawing.
  const fits = spread(flatText, 11) < 2 * half - 8
  parts.push(fits ? words(middle, shoulder + 30, flatText, 'middle', 11) : aside(`${flatText} at the top`, bottom + 40))
  return sheet(
    {
      width,
      height: bottom + (fits ? 32 : 50),
      title: 'Clipped corners, from the front',
      description: `A picket ${show(wide)} wide with both corners clipped: ${show(along)} along the top and ${show(down_)} down the edge, a cut of ${show(cut)}, ${show(seen.one('flatTop'))} left flat.`,
    },
    parts,
  )
}
