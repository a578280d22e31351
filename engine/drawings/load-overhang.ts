// This file is about a load on a bed seen from the side: what it lies on, what sticks out, and where its middle is.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, dot, grey, heading, line, sheet, width, words } from './svg.ts'

const [left, right, floor] = [24, width - 24, 112]

export function loadOverhangDrawing(seen: Seen): string | null {
  const [piece, bed, out] = [seen.one('longestPiece'), seen.one('bedLength'), seen.one('overhang')]
  const [long, lies, over] = [numberIn(piece, 'in'), numberIn(bed, 'in'), numberIn(out, 'in')]
  const scale = (right - left) / Math.max(long, lies)
  const [end, edge, middle] = [left + long * scale, left + lies * scale, left + (long / 2) * scale]
  const isOut = over > 0
  const parts = [
    heading(isOut ? `${show(out)} sticks out behind` : 'it lies on the bed whole'),
    across(left, end, 66, `longest piece ${show(piece)}`),
    // The headboard, which the load is pushed against, and the floor it lies on.
    box(left - 5, floor - 34, 5, 40, '#ddd'),
    box(left, floor, lies * scale, 6, '#ddd'),
    box(left, floor - 9, long * scale, 9, '#eee', 1.4),
    dot(middle, floor - 4.5, 3),
    words(middle, floor - 16, 'its middle', 'middle', 11),
    line(edge, floor - 14, edge, floor + 34, 0.75, grey, '3 3'),
    across(left, edge, floor + 30, `bed ${show(bed)}`),
    ...(isOut ? [across(edge, end, floor + 52, show(out))] : []),
    aside('to scale along the load; its height is not', floor + 78),
  ]
  return sheet(
    {
      width,
      height: floor + 90,
      title: 'The longest piece on the bed',
      description: `A piece ${show(piece)} long on a bed of ${show(bed)}${isOut ? `: ${show(out)} sticks out behind` : ' lies on it whole'}.`,
    },
    parts,
  )
}
