// This file is about a street corner from above: the sight triangle, and the nearest part of the fence.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { dot, line, shape, sheet, words } from './svg.ts'

const width = 360

export function sightDrawing(seen: Seen): string | null {
  const [first, second = first] = seen.rows('sightLegs') as [Quantity, Quantity?]
  const fence = seen.maybe('fenceAlong') ? seen.rows('fenceAlong') : []
  const [along, back = along] = fence as [Quantity?, Quantity?]
  const [x, y] = [numberIn(first, 'in'), numberIn(second, 'in')]
  const reach = { x: Math.max(x, along ? numberIn(along, 'in') : 0), y: Math.max(y, back ? numberIn(back, 'in') : 0) }
  const scale = Math.min(250 / reach.x, 190 / reach.y)
  const [left, top] = [70, 56]
  const parts = [
    line(20, top, width - 10, top, 2.5),
    line(left, 30, left, top + reach.y * scale + 26, 2.5),
    shape(
      [
        [left, top],
        [left + x * scale, top],
        [left, top + y * scale],
      ],
      '#e4e4e4',
      1.5,
    ),
    words(left + (x * scale) / 2, top - 8, show(first)),
    words(left - 8, top + (y * scale) / 2, show(second), 'end'),
  ]
  if (along && back) {
    const [u, v] = [left + numberIn(along, 'in') * scale, top + numberIn(back, 'in') * scale]
    parts.push(dot(u, v, 5), words(u + 9, v + 4, 'fence', 'start', 12))
  }
  parts.push(
    words(
      width / 2,
      top + reach.y * scale + 44,
      `${show(seen.one('sightSide'))} across, ${show(seen.one('sightArea'))}`,
      'middle',
      12,
      true,
    ),
  )
  return sheet(
    {
      width,
      height: top + reach.y * scale + 58,
      title: 'The sight triangle from above',
      description: `A sight triangle with legs of ${show(first)} and ${show(second)}, ${show(seen.one('sightSide'))} across.${along && back ? ` The nearest part of the fence is ${show(along)} along one street and ${show(back)} along the other.` : ''}`,
    },
    parts,
  )
}
