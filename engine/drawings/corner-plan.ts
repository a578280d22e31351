// This file is about two rails meeting at a corner, from above, mitred.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { heading, line, shape, sheet, width, words } from './svg.ts'

export function cornerPlan(seen: Seen): string | null {
  const [corner, miter] = [seen.one('cornerAngle'), seen.one('miterCut')]
  const turn = (numberIn(corner, 'deg') * Math.PI) / 180
  const [long, thick] = [120, 24]
  // A blunt corner takes less room: its rails reach up only so far.
  const [x, y] = [width / 2, 52 + long * Math.max(0.35, Math.cos(turn / 2))]
  // Both rails lie with their outer face along their line from the corner; the miter halves the corner.
  const rail = (direction: number, inward: number) => {
    const [ux, uy] = [Math.cos(direction), -Math.sin(direction)]
    const [nx, ny] = [Math.cos(direction + inward), -Math.sin(direction + inward)]
    const back = thick / Math.tan(turn / 2)
    return [
      [x, y],
      [x + ux * long, y + uy * long],
      [x + ux * long + nx * thick, y + uy * long + ny * thick],
      [x + ux * back + nx * thick, y + uy * back + ny * thick],
    ] as const
  }
  const start = Math.PI / 2 - turn / 2
  const parts = [
    shape(rail(start, Math.PI / 2), '#eee', 1.5),
    shape(rail(start + turn, -Math.PI / 2), '#ddd', 1.5),
    line(x, y, x, y - Math.min(long, thick / Math.sin(turn / 2)), 1, '#111', '4 3'),
  ]
  parts.push(
    words(x, y + 26, `corner ${show(corner)} inside`, 'middle', 12),
    heading(`saw at ${show(miter)} from square, both rails`),
  )
  return sheet(
    {
      width,
      height: y + 42,
      title: 'Two rails at the corner, from above',
      description: `Two rails meet at a corner of ${show(corner)} inside. Each is cut ${show(miter)} from square, so that the joint halves the corner.`,
    },
    parts,
  )
}
