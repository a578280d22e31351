// This file is about a hole beside a buried line's mark, from above: the zone, the line, the hole, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, dot, heading, line, shape, sheet, width } from './svg.ts'

export function markDrawing(seen: Seen): string | null {
  if (!seen.maybe('edgeToZone')) return null
  const [distance, hole, zone, pipe] = ['markDistance', 'holeDiameter', 'zoneWidth', 'facilityWidth'].map((it) =>
    seen.one(it),
  ) as [ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>]
  const [d, h, z, p] = [distance, hole, zone, pipe].map((it) => numberIn(it, 'in')) as [number, number, number, number]
  const scale = (width - 60) / Math.max(z / 2 + Math.max(d + h * 0.71, z / 2), 1)
  const mark = 30 + (z / 2) * scale
  const [top, bottom] = [46, 176]
  const isSquare = seen.option('holeShape') === 'square'
  // A square hole is drawn as it is reckoned, with a corner toward the mark.
  const radius = (h / 2) * scale * (isSquare ? Math.SQRT2 : 1)
  const centre = mark + d * scale
  const middle = (top + bottom) / 2
  const parts = [
    box(mark - (z / 2) * scale, top, z * scale, bottom - top, '#e4e4e4', 0.75),
    box(mark - Math.max(1.5, (p / 2) * scale), top, Math.max(3, p * scale), bottom - top, '#888'),
    line(mark, top - 6, mark, bottom + 6, 1, '#111', '5 3'),
    isSquare
      ? shape(
          [
            [centre - radius, middle],
            [centre, middle - radius],
            [centre + radius, middle],
            [centre, middle + radius],
          ],
          '#fff',
          1.5,
        )
      : `<circle cx="${(mark + d * scale).toFixed(1)}" cy="${middle}" r="${Math.max(2, radius).toFixed(1)}" fill="#fff" stroke="#111" stroke-width="1.5"/>`,
    dot(mark + d * scale, middle, 2),
    across(mark, mark + d * scale, bottom + 26, show(distance)),
    across(mark - (z / 2) * scale, mark + (z / 2) * scale, bottom + 50, `zone ${show(zone)}`),
    heading(`hole ${show(hole)}${isSquare ? ' square: its corner' : ': its edge'} counts, not its centre`),
  ]
  return sheet(
    {
      width,
      height: bottom + 66,
      title: 'The hole and the mark from above',
      description: `A mark with a zone of ${show(zone)} in all. The centre of a hole ${show(hole)} ${isSquare ? 'square' : 'wide'} is ${show(distance)} from the mark; from its ${isSquare ? 'corner' : 'edge'} to the zone: ${show(seen.one('edgeToZone'))}.`,
    },
    parts,
  )
}
