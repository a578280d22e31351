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
  const foot = top + reach.y * scale
  let isCrowded = false
  const parts = [
    line(20, top, width - 10, top, 2.5),
    line(left, 30, left, foot + 26, 2.5),
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
        aside('heavy: fence inside; it is out from the open dots on', foot + 62),
      )
      // Close to each other or to the edge of the sheet the two lengths are written under the drawing.
      const [ends, starts] = [outX + 8 + spread(show(outFirst), 11), u + 9 + spread(show(outSecond), 11)]
      const meet = Math.abs(outY - 2 - v) < 14 && starts > outX + 4
      isCrowded = meet || Math.max(ends, starts) > width - 3
      parts.push(
        ...(isCrowded
          ? [aside(`the open dots: ${show(outFirst)} and ${show(outSecond)} along the streets`, foot + 80)]
          : [
              words(outX + 8, v + 16, show(outFirst), 'start', 11),
              words(u + 9, outY + 14, show(outSecond), 'start', 11),
            ]),
      )
    } else
      parts.push(
        dot(u, v, 5),
        plate(
          onSheet(u + 12 + spread('fence') / 2, 'fence'),
          Math.max(u + 60 > width ? v + 20 : v + 4, top + 16),
          'fence',
        ),
      )
  }
  parts.push(heading(`${show(seen.one('sightSide'))} across, ${show(seen.one('sightArea'))}`, foot + 44))
  return sheet(
    {
      width,
      height: foot + (isCrowded ? 90 : seen.maybe('leavesFirst') ? 72 : 58),
      title: 'The sight triangle from above',
      description: `A sight triangle with legs of ${show(first)} and ${show(second)}, ${show(seen.one('sightSide'))} across.${along && back ? ` The nearest part of the fence is ${show(along)} along one street and ${show(back)} along the other.` : ''}${seen.maybe('leavesFirst') ? ` Along the two streets the fence is out of the triangle from ${show(seen.one('leavesFirst'))} and ${show(seen.one('leavesSecond'))} on.` : ''}`,
    },
    parts,
  )
}
