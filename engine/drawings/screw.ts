// This file is about a screw through a picket into a rail, cut across, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, heading, line, shape, sheet, width } from './svg.ts'

export function screwDrawing(seen: Seen): string | null {
  const [picket, rail, least, most, thick] = [
    seen.one('picketThickness'),
    seen.one('railThickness'),
    seen.one('leastScrew'),
    seen.one('mostScrew'),
    seen.one('screwDiameter'),
  ]
  const [p, r, l] = [numberIn(picket, 'in'), numberIn(rail, 'in'), numberIn(least, 'in')]
  const scale = 250 / (p + r)
  const left = 55
  const [top, bottom] = [50, 150]
  const y = (top + bottom) / 2
  const tip = left + l * scale
  const half = Math.min((numberIn(thick, 'in') * scale) / 2, 40)
  const point = Math.min(3 * half, (tip - left) / 2)
  const parts = [
    box(left, top - 8, p * scale, bottom - top + 16, '#eee'),
    box(left + p * scale, top + 6, r * scale, bottom - top - 12, '#ddd'),
    shape(
      [
        [left, y - 2 * half],
        [left + point / 3, y - half],
        [tip - point, y - half],
        [tip, y],
        [tip - point, y + half],
        [left + point / 3, y + half],
        [left, y + 2 * half],
      ],
      '#fff',
      1.2,
    ),
  ]
  parts.push(
    across(left, left + p * scale, bottom + 32, `picket ${show(picket)}`),
    across(left + p * scale, left + (p + r) * scale, bottom + 58, `rail ${show(rail)}`),
    line(left + (p + r) * scale, top, left + (p + r) * scale, bottom + 64, 0.5, '#6b6b6b', '2 2'),
  )
  parts.push(aside('the screw drawn is the shortest that will do', bottom + 80))
  parts.push(heading(`at least ${show(least)}, at most ${show(most)}`))
  return sheet(
    {
      width,
      height: bottom + 90,
      title: 'The screw, cut across',
      description: `A picket ${show(picket)} thick on a rail ${show(rail)} thick. The screw is at least ${show(least)} long, and at most ${show(most)}.`,
    },
    parts,
  )
}
