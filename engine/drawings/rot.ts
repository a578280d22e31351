// This file is about a post cut across at the ground: what is rotten, and what is left of its width.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, dot, down, heading, line, scattered, sheet, width } from './svg.ts'

const [side, top] = [150, 66]

export function rotDrawing(seen: Seen): string | null {
  const [post, left, sound] = [seen.one('postWidth'), seen.maybe('sectionLeft'), seen.maybe('soundWidth')]
  const where = seen.option('rotWhere')
  if (!left || !sound || !where) return null
  const isRound = seen.option('postSection') === 'round'
  const [w, x] = [numberIn(post, 'in'), (width - side) / 2]
  const scale = side / w
  const isInside = where === 'inside'
  const depth = isInside ? numberIn(seen.one('soundShell'), 'in') : numberIn(seen.one('rotDepth'), 'in')
  const cut = Math.min(depth * scale, side / 2)
  const spreads = isRound && !isInside ? 'all' : where
  const middle: readonly [number, number] = [x + side / 2, top + side / 2]
  const isRotten = (px: number, py: number): boolean => {
    const [ax, ay] = [px - x, py - top]
    const gone = depth * scale
    if (isRound) {
      const far = Math.hypot(px - middle[0], py - middle[1])
      return isInside ? far < side / 2 - gone : far > side / 2 - gone && far < side / 2
    }
    const [near, across, below] = [ax < gone, ax > side - gone, ay < gone || ay > side - gone]
    if (isInside) return ax > gone && ax < side - gone && ay > gone && ay < side - gone
    if (spreads === 'one') return near
    if (spreads === 'opposite') return near || across
    if (spreads === 'corner') return near || ay < gone
    return near || across || below
  }
  const outline = (inset: number, fill: string, weight: number): string =>
    isRound
      ? dot(middle[0], middle[1], side / 2 - inset, fill)
      : box(x + inset, top + inset, side - 2 * inset, side - 2 * inset, fill, weight)
  const parts = [outline(0, '#ddd', 1.5)]
  // Rotten wood is speckled, so that it shows in black and white.
  for (const [u, v] of scattered(900)) {
    const [px, py] = [x + 2 + u * (side - 4), top + 2 + v * (side - 4)]
    if (isRotten(px, py)) parts.push(dot(px, py, 1.4, '#333'))
  }
  if (isInside) parts.push(outline(cut, 'none', 1))
  else if (isRound) parts.push(dot(middle[0], middle[1], Math.max(0.5, side / 2 - cut), 'none'))
  else {
    const [from, to] = [x + cut, spreads === 'one' || spreads === 'corner' ? x + side : x + side - cut]
    parts.push(line(from, top, from, top + side, 1, '#111', '4 3'))
    if (to < x + side) parts.push(line(to, top, to, top + side, 1, '#111', '4 3'))
  }
  parts.push(across(x, x + side, top - 12, show(post)))
  if (isInside) parts.push(down(x + side + 18, top, top + cut, show(seen.one('soundShell')), 'right', 'sound'))
  else if (numberIn(sound, 'in') > 0) {
    const from = x + cut
    const to = spreads === 'one' || spreads === 'corner' ? x + side : x + side - cut
    parts.push(across(from, to, top + side + 26, `${show(sound)} sound`))
  }
  const bottom = top + side + (isInside ? 22 : 48)
  parts.push(
    heading(`${show(left)} of its strength left`),
    aside('the post cut across; speckled is rotten, to scale', bottom),
  )
  return sheet(
    {
      width,
      height: bottom + 12,
      title: 'What rot leaves of a post',
      description: `A post ${show(post)} wide with rot ${where === 'inside' ? `inside and ${show(seen.one('soundShell'))} of sound wood round it` : `${show(seen.one('rotDepth'))} deep, ${label[where] ?? where}`}: ${show(left)} of its strength in bending is left.`,
    },
    parts,
  )
}

const label: Readonly<Record<string, string>> = {
  one: 'on one face',
  opposite: 'on two opposite faces',
  corner: 'on two faces that meet',
  all: 'all round',
}
