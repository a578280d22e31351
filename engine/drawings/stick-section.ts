// This file is about the end of a stick that is sold by a name: the size of the name dashed, and what it measures inside it.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, down, heading, sheet, width } from './svg.ts'

const [widest, tallest] = [190, 150]
const left = 60
const top = 66

export function stickSectionDrawing(seen: Seen): string | null {
  const [soldWide, soldThick] = [seen.one('nominalWidth'), seen.one('nominalThickness')]
  const [wide, thick] = [seen.maybe('dressedWidth'), seen.maybe('dressedThickness')]
  if (!wide || !thick) return null
  const [nw, nt] = [numberIn(soldWide, 'in'), numberIn(soldThick, 'in')]
  const [w, t] = [numberIn(wide, 'in'), numberIn(thick, 'in')]
  const scale = Math.min(widest / Math.max(nw, w), tallest / Math.max(nt, t))
  const [W, T] = [nw * scale, nt * scale]
  const [x, y] = [left + (W - w * scale) / 2, top + (T - t * scale) / 2]
  const parts = [
    heading(`${show(thick)} × ${show(wide)}`),
    `<rect x="${left}" y="${top}" width="${W.toFixed(2)}" height="${T.toFixed(2)}" fill="none" stroke="#6b6b6b" stroke-width="1" stroke-dasharray="5 4"/>`,
    box(x, y, w * scale, t * scale, '#ddd', 1.6),
    across(x, x + w * scale, top - 10, show(wide)),
    down(left + W + 16, y, y + t * scale, show(thick)),
    aside(`dashed: sold as ${show(soldThick)} × ${show(soldWide)}`, top + T + 26),
  ]
  return sheet(
    {
      width,
      height: top + T + 38,
      title: 'The end of the stick',
      description: `Sold as ${show(soldThick)} by ${show(soldWide)}, it measures ${show(thick)} by ${show(wide)}.`,
    },
    parts,
  )
}
