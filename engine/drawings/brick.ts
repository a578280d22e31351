// This file is about bricks along an edge, from above: a stretch of it to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, sheet, words } from './svg.ts'

const width = 400

export function brickDrawing(seen: Seen): string | null {
  const [along, joint, rows, all] = ['brickAlong', 'brickJoint', 'brickRows', 'bricks'].map((it) => seen.one(it)) as [
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
  ]
  const [a, j] = [numberIn(along, 'in'), numberIn(joint, 'in')]
  const many = Math.min(6, Math.round(numberIn(rows, rows.unit)))
  const shown = Math.max(2, Math.min(8, Math.round(numberIn(all, all.unit) / Math.max(1, many))))
  const scale = (width - 60) / (shown * (a + j))
  const deep = 44
  const parts: string[] = []
  for (let row = 0; row < many; row++)
    for (let i = 0; i < shown; i++)
      parts.push(box(30 + i * (a + j) * scale, 60 + row * (deep + Math.max(2, j * scale)), a * scale, deep, '#ddd'))
  const bottom = 60 + many * (deep + Math.max(2, j * scale))
  parts.push(
    across(30, 30 + a * scale, bottom + 18, show(along), width),
    words(width / 2, 24, `${show(all)}, ${show(joint)} between them`, 'middle', 13, true),
    words(width / 2, 44, 'a stretch of the edge, from above; depth of the bricks not to scale', 'middle', 11),
  )
  return sheet(
    {
      width,
      height: bottom + 34,
      title: 'The edge from above',
      description: `${show(all)} in ${show(rows)}, each ${show(along)} along the edge with ${show(joint)} between them.`,
    },
    parts,
  )
}
