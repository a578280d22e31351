// This file is about a street corner from above: the sight triangle, and the nearest part of the fence.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, heading, line, onSheet, plate, shape, sheet, spread, width, words } from './svg.ts'

export function sightDrawing(seen: Seen): string | null {
  const [first, second = first] = seen.rows('sightLegs') as [Quantity, Quantity?]
  const fence = seen.maybe('fenceAlong') ? seen.rows('fenceAlong') : []
  const [along, back] = fence as [Quantity?, Quantity?]
  const [x, y] = [numberIn(first, 'in'), numberIn(second, 'in')]
  const reach = { x: Math.max(x, along ? numberIn(along, 'in') : 0), y: Math.max(y, back ? numberIn(back, 'in') : 0) }
  const [left, top] = [Math.max(70, spread(show(second)) + 14), 56]
  const scale = Math.min((width - left - 20) / reach.x, 190 / reach.y)
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
    words(Math.max(left + (x * scale) / 2, left + 5 + spread(show(first)) / 2), top - 8, show(first)),
    words(left - 8, Math.max(top + (y * scale) / 2, top + 16), show(second), 'end'),
  ]
  if (along && back) {
    const [u, v] = [left + numberIn(along, 'in') * scale, top + numberIn(back, 'in') * scale]
    const [outFirst, outSecond] = [seen.maybe('leavesFirst'), seen.maybe('leavesSecond')]
    if (outFirst && outSecond) {
      // The fence along each street, heavy as long as it stands inside, and on from there.
      const [outX, outY] = [left + numberIn(outFirst, 'in') * scale, top + numberIn(outSecond, 'in') * scale]
      parts.push(
        line(u, v, outX, v, 4),
        line(u, v, u, outY, 4),
        line(outX, v, Math.min(width - 6, outX + 34), v, 1.5),
        line(u, outY, u, outY + 24, 1.5),
        dot(outX, v, 4, '#fff'),
        dot(u, outY, 4, '#fff'),
        words(onSheet(outX + 8, show(outFirst), 'start', 11), v + 16, show(outFirst), 'start', 11),
        words(u + 9, outY + 14, show(outSecond), 'start', 11),
        aside('heavy: fence inside; it is out from the open dots on', top + reach.y * scale + 62),
      )
    } else
      parts.push(
        dot(u, v, 5),
        plate(onSheet(u + 12 + spread('fence') / 2, 'fence'), u + 60 > width ? v + 20 : v + 4, 'fence'),
      )
  }
  parts.push(
    heading(`${show(seen.one('sightSide'))} across, ${show(seen.one('sightArea'))}`, top + reach.y * scale + 44),
  )
  return sheet(
    {
      width,
      height: top + reach.y * scale + (seen.maybe('leavesFirst') ? 72 : 58),
      title: 'The sight triangle from above',
      description: `A sight triangle with legs of ${show(first)} and ${show(second)}, ${show(seen.one('sightSide'))} across.${along && back ? ` The nearest part of the fence is ${show(along)} along one street and ${show(back)} along the other.` : ''}${seen.maybe('leavesFirst') ? ` Along the two streets the fence is out of the triangle from ${show(seen.one('leavesFirst'))} and ${show(seen.one('leavesSecond'))} on.` : ''}`,
    },
    parts,
  )
}
