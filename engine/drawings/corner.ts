// This file is about a corner seen from above: two sides, the diagonal, and the corner as it stands where that was measured.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { dot, line, sheet, words } from './svg.ts'

const width = 360

export function cornerDrawing(seen: Seen): string | null {
  const [a, b] = seen.rows('legs') as [Quantity, Quantity]
  const right = seen.one('squareAcross')
  const [x, y] = [numberIn(a, 'in'), numberIn(b, 'in')]
  const scale = Math.min(230 / x, 190 / y)
  const [left, ground] = [64, 50 + y * scale]
  const angle = seen.maybe('cornerAngle')
  const turn = angle ? (numberIn(angle, 'deg') * Math.PI) / 180 : Math.PI / 2
  const far = [left + Math.cos(turn) * y * scale, ground - Math.sin(turn) * y * scale] as const
  const parts = [
    line(left, ground, left + x * scale, ground, 2.5),
    line(left, ground, left, ground - y * scale, angle ? 1 : 2.5, '#111', angle ? '5 4' : ''),
  ]
  if (angle) parts.push(line(left, ground, far[0], far[1], 2.5))
  parts.push(line(left + x * scale, ground, left, ground - y * scale, 1, '#111', '5 4'))
  if (angle) parts.push(line(left + x * scale, ground, far[0], far[1], 1.5))
  parts.push(`<path d="M${left} ${ground - 14}h14v14" fill="none" stroke="#111"/>`)
  for (const [u, v] of [[left, ground], [left + x * scale, ground], far]) parts.push(dot(u as number, v as number, 4))
  parts.push(
    words(left + (x * scale) / 2, ground + 20, show(a)),
    words(left - 8, ground - (y * scale) / 2, show(b), 'end'),
  )
  const shown = seen.maybe('measuredDiagonal')
  parts.push(
    words(
      width / 2,
      ground + 44,
      shown ? `${show(shown)} measured, ${show(right)} when square` : `${show(right)} straight across when square`,
      'middle',
      13,
      true,
    ),
  )
  if (angle) parts.push(words(width / 2, ground + 62, `corner ${show(angle)}; dashed: square`, 'middle', 11))
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
