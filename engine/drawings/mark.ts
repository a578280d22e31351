// This file is about a hole beside a buried line's mark, from above: the zone, the line, the hole, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, dot, line, sheet, words } from './svg.ts'

const width = 420

export function markDrawing(seen: Seen): string | null {
  if (!seen.maybe('edgeToZone')) return null
  const [distance, hole, zone, pipe] = ['markDistance', 'holeDiameter', 'zoneWidth', 'facilityWidth'].map((it) =>
    seen.one(it),
  ) as [ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>]
  const [d, h, z, p] = [distance, hole, zone, pipe].map((it) => numberIn(it, 'in')) as [number, number, number, number]
  const scale = (width - 60) / Math.max(z / 2 + Math.max(d + h / 2, z / 2), 1)
  const mark = 30 + (z / 2) * scale
  const [top, bottom] = [46, 176]
  const radius = (h / 2) * scale
  const middle = (top + bottom) / 2
  const parts = [
    box(mark - (z / 2) * scale, top, z * scale, bottom - top, '#e4e4e4', 0.75),
    box(mark - Math.max(1.5, (p / 2) * scale), top, Math.max(3, p * scale), bottom - top, '#888'),
    line(mark, top - 6, mark, bottom + 6, 1, '#111', '5 3'),
    `<circle cx="${(mark + d * scale).toFixed(1)}" cy="${middle}" r="${Math.max(2, radius).toFixed(1)}" fill="#fff" stroke="#111" stroke-width="1.5"/>`,
    dot(mark + d * scale, middle, 2),
    across(mark, mark + d * scale, bottom + 26, show(distance), width),
    across(mark - (z / 2) * scale, mark + (z / 2) * scale, bottom + 50, `zone ${show(zone)}`, width),
    words(width / 2, 24, `hole ${show(hole)}: its edge counts, not its centre`, 'middle', 13, true),
  ]
  return sheet(
    {
      width,
      height: bottom + 66,
      title: 'The hole and the mark from above',
      description: `A mark with a zone of ${show(zone)} in all. The centre of a hole ${show(hole)} wide is ${show(distance)} from the mark; from its edge to the zone: ${show(seen.one('edgeToZone'))}.`,
    },
    parts,
  )
}
