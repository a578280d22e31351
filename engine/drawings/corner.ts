// This file is about a corner seen from above: two sides, the diagonal, and the corner as it stands where that was measured.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, heading, line, onSheet, sheet, spread, width, words } from './svg.ts'

export function cornerDrawing(seen: Seen): string | null {
  const [a, b] = seen.rows('legs') as [Quantity, Quantity]
  const right = seen.one('squareAcross')
  const [x, y] = [numberIn(a, 'in'), numberIn(b, 'in')]
  const angle = seen.maybe('cornerAngle')
  const turn = angle ? (numberIn(angle, 'deg') * Math.PI) / 180 : Math.PI / 2
  // A wide corner leans out to the left, a narrow one may reach past its own foot: both have to be on the sheet.
  const [least, most] = [Math.min(0, Math.cos(turn) * y), Math.max(x, Math.cos(turn) * y)]
  const label = spread(show(b)) + 18
  const scale = Math.min((width - label - 24) / (most - least), 190 / y)
  const [left, ground] = [label - least * scale, 46 + y * scale]
  const far = [left + Math.cos(turn) * y * scale, ground - Math.sin(turn) * y * scale] as const
  const parts = [
    line(left, ground, left + x * scale, ground, 2.5),
    line(left, ground, left, ground - y * scale, angle ? 1 : 2.5, '#111', angle ? '5 4' : ''),
  ]
  if (angle) parts.push(line(left, ground, far[0], far[1], 2.5))
  parts.push(line(left + x * scale, ground, left, ground - y * scale, 1, '#111', '5 4'))
  if (angle) parts.push(line(left + x * scale, ground, far[0], far[1], 1.5))
  const mark = Math.min(14, (x * scale) / 2, (y * scale) / 2)
  parts.push(`<path d="M${left} ${ground - mark}h${mark}v${mark}" fill="none" stroke="#111"/>`)
  for (const [u, v] of [[left, ground], [left + x * scale, ground], far]) parts.push(dot(u as number, v as number, 4))
  parts.push(
    words(onSheet(left + (x * scale) / 2, show(a)), ground + 20, show(a)),
    // Beside the middle of its side, and under it where that leans far out.
    words(
      onSheet(Math.min(left, (left + far[0]) / 2) - 8, show(b), 'end'),
      (turn > Math.PI / 2 ? (ground + far[1]) / 2 : ground - (y * scale) / 2) + 16 * Math.max(0, -Math.cos(turn)),
      show(b),
      'end',
    ),
  )
  const shown = seen.maybe('measuredDiagonal')
  parts.push(
    heading(
      shown ? `${show(shown)} measured, ${show(right)} when square` : `${show(right)} straight across when square`,
      ground + 44,
    ),
  )
  if (angle) parts.push(aside(`corner ${show(angle)}; dashed: square`, ground + 62))
  return sheet(
    {
      width,
      height: ground + 74,
      title: 'The corner from above',
      description: `A corner with sides of ${show(a)} and ${show(b)}. Square, the diagonal is ${show(right)}.${shown && angle ? ` As measured it is ${show(shown)}, and the corner has ${show(angle)}.` : ''}`,
    },
    parts,
  )
}
