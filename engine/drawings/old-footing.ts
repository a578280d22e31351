// This file is about an old footing, cut through, to scale: its concrete, the post or the room it left, and what it weighs.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import {
  across,
  aside,
  box,
  broken,
  dot,
  down,
  earth,
  grey,
  heading,
  line,
  onSheet,
  scattered,
  sheet,
  width,
  words,
} from './svg.ts'

const ground = 78

/** Nothing is drawn of posts that stand in soil. */
export function oldFootingDrawing(seen: Seen): string | null {
  const [wide, deep, post, weight] = ['footingWidth', 'footingDepth', 'oldPostWidth', 'footingWeight'].map((it) =>
    seen.maybe(it),
  )
  if (!wide || !deep || !weight) return null
  const [w, d] = [numberIn(wide, 'in'), numberIn(deep, 'in')]
  const scale = Math.min(200 / d, 130 / w)
  const middle = width / 2
  const [left, right, bottom] = [middle - (w * scale) / 2, middle + (w * scale) / 2, ground + d * scale]
  const parts = [
    line(8, ground, left, ground, 2),
    line(right, ground, width - 8, ground, 2),
    earth(12, left - 4, ground),
    earth(right + 6, width - 8, ground),
    box(left, ground, right - left, bottom - ground, '#e4e4e4', 1.5),
  ]
  // Where no width is given the post is drawn at a third of the footing, dashed, and not measured.
  const half = ((post ? numberIn(post, 'in') : w / 3) * scale) / 2
  for (const [u, v] of scattered(60)) {
    const [x, y] = [left + 3 + u * (right - left - 6), ground + 4 + v * (bottom - ground - 8)]
    if (!post || Math.abs(x - middle) > half + 2) parts.push(dot(x, y, 0.7, grey))
  }
  if (post) {
    parts.push(box(middle - half, ground, 2 * half, bottom - ground, '#fff', 1.2))
    const text = `room of the post ${show(post)}`
    const start = onSheet(middle + half + 10, text, 'start', 11)
    parts.push(words(start, 64, text, 'start', 11), line(middle, ground + 6, start - 2, 60, 0.75))
  } else {
    parts.push(box(middle - half, 44, 2 * half, ground - 44, '#cfcfcf', 1.2), broken(middle - half, middle + half, 44))
    parts.push(words(middle + half + 10, 62, 'the post’s stump', 'start', 11))
  }
  parts.push(
    heading(`one footing: ${show(weight)}`),
    // Below the strokes of the ground, however shallow the footing is.
    down(right + 18, ground, bottom, show(deep), 'right', '', ground + 7),
    across(left, right, bottom + 26, show(wide)),
    aside(
      post ? 'weighed without the room of the post' : 'weighed as solid concrete, the post not taken out',
      bottom + 46,
    ),
  )
  return sheet(
    {
      width,
      height: bottom + 58,
      title: 'An old footing, cut through',
      description: `A round footing ${show(wide)} wide and ${show(deep)} deep weighs ${show(weight)}, ${post ? `with the room of a ${show(post)} post taken out` : 'reckoned as solid concrete'}.`,
    },
    parts,
  )
}
