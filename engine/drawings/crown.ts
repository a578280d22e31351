// This file is about the crown of concrete round a post, cut through the hole's top, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import {
  across,
  box,
  broken,
  column,
  dot,
  earth,
  grey,
  heading,
  line,
  scattered,
  shape,
  sheet,
  width,
  words,
} from './svg.ts'

const middle = width / 2
const below = 78 // of the hole, as it is drawn: the rest is left out under a break

export function crownDrawing(seen: Seen): string | null {
  const [hole, rise, post, takes] = [
    seen.one('holeDiameter'),
    seen.one('crownRise'),
    seen.one('postWidth'),
    seen.one('crownConcrete'),
  ]
  const [d, h, p] = [numberIn(hole, 'in'), numberIn(rise, 'in'), numberIn(post, 'in')]
  const scale = Math.min(160 / d, 130 / h)
  const x = (at: number): number => middle + at * scale
  const top = 40
  const ground = top + 48 + h * scale
  const [crest, end] = [ground - h * scale, ground + below]
  const parts = [
    shape(
      [
        [x(-d / 2), end],
        [x(-d / 2), ground],
        [x(-p / 2), crest],
        [x(p / 2), crest],
        [x(d / 2), ground],
        [x(d / 2), end],
      ],
      '#e8e8e8',
      1.5,
    ),
    ...[...scattered(80)].map(([u, v]) =>
      dot(x(-d / 2) + 3 + u * (d * scale - 6), ground + 3 + v * (below - 6), 0.7, grey),
    ),
    box(x(-p / 2), top, p * scale, end - top, '#bbb', 1.2),
    broken(x(-p / 2), x(p / 2), top),
    broken(x(-d / 2), x(d / 2), end),
    line(8, ground, x(-d / 2), ground, 2),
    line(x(d / 2), ground, width - 8, ground, 2),
    earth(12, x(-d / 2) - 4, ground),
    earth(x(d / 2) + 4, width - 8, ground),
    line(x(p / 2), crest, x(d / 2) + 22, crest, 0.5),
    // Over the ground's line, however little the crown rises.
    column(x(d / 2) + 18, [{ y1: crest, y2: ground, figure: show(rise), name: '' }], 'right', 0, ground - 1),
    words(x(p / 2) + 10, top + 12, `post ${show(post)}`, 'start', 11),
    across(x(-d / 2), x(d / 2), end + 30, `hole ${show(hole)}`),
    heading(`${show(takes)} of concrete in the crown`),
  ]
  return sheet(
    {
      width,
      height: end + 42,
      title: 'The crown, cut through',
      description: `A hole ${show(hole)} wide round a ${show(post)} post. Its concrete slopes up ${show(rise)} from the rim to the post, so that water runs off: ${show(takes)} of concrete above the ground.`,
    },
    parts,
  )
}
