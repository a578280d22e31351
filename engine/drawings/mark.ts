// This file is about a hole beside a buried line's mark, from above: the zone, the line, the hole, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, dot, heading, line, shape, sheet, width } from './svg.ts'

export function markDrawing(seen: Seen): string | null {
  if (!seen.maybe('edgeToZone')) return null
  const [distance, hole, zone, pipe] = ['markDistance', 'holeDiameter', 'zoneWidth', 'facilityWidth'].map((it) =>
    seen.one(it),
  ) as [ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>]
  const [d, h, z, p] = [distance, hole, zone, pipe].map((it) => numberIn(it, 'in')) as [number, number, number, number]
  const isSquare = seen.option('holeShape') === 'square'
  // A square hole is drawn as it is reckoned, with a corner toward the mark.
  const half = (h / 2) * (isSquare ? Math.SQRT2 : 1)
  // From the mark: the hole may be larger than its distance, and then it reaches past the mark.
  const [least, most] = [Math.min(-z / 2, d - half), Math.max(z / 2, d + half)]
  const scale = Math.min((width - 60) / Math.max(most - least, 1), 105 / half)
  const x = (at: number): number => width / 2 + (at - (least + most) / 2) * scale
  const high = Math.max(130, 2 * half * scale + 16)
  const [top, bottom] = [46, 46 + high]
  const [mark, centre, middle] = [x(0), x(d), top + high / 2]
  const [radius, pipeWide] = [Math.max(2, half * scale), Math.max(3, p * scale)]
  const larger = [...(radius > half * scale ? ['the hole'] : []), ...(pipeWide > p * scale ? ['the buried line'] : [])]
  const parts = [
    box(x(-z / 2), top, z * scale, high, '#e4e4e4', 0.75),
    box(mark - pipeWide / 2, top, pipeWide, high, '#888'),
    line(mark, top - 6, mark, bottom + 6, 1, '#111', '5 3'),
    // The zone and the line show through: a hole that reaches into them has to be seen to do so.
    isSquare
      ? shape(
          [
            [centre - radius, middle],
            [centre, middle - radius],
            [centre + radius, middle],
            [centre, middle + radius],
          ],
          'none',
          1.5,
        )
      : `<circle cx="${centre.toFixed(1)}" cy="${middle.toFixed(1)}" r="${radius.toFixed(1)}" fill="none" stroke="#111" stroke-width="1.5"/>`,
    ...(radius > 5 ? [dot(centre, middle, 2)] : []),
    across(mark, centre, bottom + 26, show(distance)),
    across(x(-z / 2), x(z / 2), bottom + 50, `zone ${show(zone)}`),
    heading(`hole ${show(hole)}${isSquare ? ' square: its corner' : ': its edge'} counts, not its centre`),
  ]
  if (larger.length > 0)
    parts.push(
      aside(
        `${larger.join(' and ')} ${larger.length > 1 ? 'are drawn larger than they are' : 'is drawn larger than it is'}`,
        bottom + 72,
      ),
    )
  return sheet(
    {
      width,
      height: bottom + (larger.length > 0 ? 82 : 66),
      title: 'The hole and the mark from above',
      description: `A mark with a zone of ${show(zone)} in all. The centre of a hole ${show(hole)} ${isSquare ? 'square' : 'wide'} is ${show(distance)} from the mark; from its ${isSquare ? 'corner' : 'edge'} to the zone: ${show(seen.one('edgeToZone'))}.`,
    },
    parts,
  )
}
