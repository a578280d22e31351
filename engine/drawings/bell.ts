// This file is about a belled hole, cut through, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, down, heading, line, shape, sheet, width } from './svg.ts'

const ground = 70

export function bellDrawing(seen: Seen): string | null {
  const [hole, depth, bell, high, post] = ['holeDiameter', 'holeDepth', 'bellWidth', 'bellHeight', 'postWidth'].map(
    (it) => seen.one(it),
  ) as [
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
  ]
  const [d, deep, w, h, p] = [hole, depth, bell, high, post].map((it) => numberIn(it, 'in')) as [
    number,
    number,
    number,
    number,
    number,
  ]
  const isSquare = seen.option('holeShape') === 'square'
  const scale = Math.min(200 / deep, 130 / w)
  const middle = width / 2
  const x = (at: number): number => middle + at * scale
  const [bottom, neck] = [ground + deep * scale, ground + (deep - h) * scale]
  const parts = [
    line(8, ground, x(-d / 2), ground, 2),
    line(x(d / 2), ground, width - 8, ground, 2),
    shape(
      [
        [x(-d / 2), ground],
        [x(d / 2), ground],
        [x(d / 2), neck],
        [x(w / 2), bottom],
        [x(-w / 2), bottom],
        [x(-d / 2), neck],
      ],
      '#e4e4e4',
      1.5,
    ),
    box(x(-p / 2), 34, p * scale, bottom - 34, '#bbb', 1.2),
  ]
  parts.push(
    down(x(Math.max(w, d) / 2) + 16, ground, bottom, show(depth)),
    down(x(-Math.max(w, d) / 2) - 14, neck, bottom, show(high), 'left'),
    across(x(-w / 2), x(w / 2), bottom + 24, `bell ${show(bell)}`),
    heading(`hole ${show(hole)}${isSquare ? ' square' : ''}, belled to ${show(bell)}`),
  )
  return sheet(
    {
      width,
      height: bottom + 40,
      title: 'A belled hole, cut through',
      description: `A hole ${show(hole)} ${isSquare ? 'square' : 'wide'} and ${show(depth)} deep, flared to ${show(bell)} over its lowest ${show(high)}, with a ${show(post)} post standing on the bottom.`,
    },
    parts,
  )
}
