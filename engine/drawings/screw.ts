// This file is about a screw through a picket into a rail, cut across, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, line, shape, sheet, words } from './svg.ts'

const width = 380

export function screwDrawing(seen: Seen): string | null {
  const [picket, rail, least, most] = ['picketThickness', 'railThickness', 'leastScrew', 'mostScrew'].map((it) =>
    seen.one(it),
  ) as [ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>]
  const [p, r, l] = [picket, rail, least].map((it) => numberIn(it, 'in')) as [number, number, number]
  const scale = 250 / (p + r)
  const left = 60
  const [top, bottom] = [50, 150]
  const y = (top + bottom) / 2
  const tip = left + l * scale
  const parts = [
    box(left, top - 8, p * scale, bottom - top + 16, '#eee'),
    box(left + p * scale, top + 6, r * scale, bottom - top - 12, '#ddd'),
    shape(
      [
        [left, y - 9],
        [left + 5, y - 4],
        [tip - 12, y - 4],
        [tip, y],
        [tip - 12, y + 4],
        [left + 5, y + 4],
        [left, y + 9],
      ],
      '#fff',
      1.2,
    ),
  ]
  parts.push(
    across(left, left + p * scale, bottom + 32, show(picket), width),
    across(left + p * scale, left + (p + r) * scale, bottom + 54, `rail ${show(rail)}`, width),
    line(left + (p + r) * scale, top, left + (p + r) * scale, bottom + 60, 0.5, '#6b6b6b', '2 2'),
  )
  parts.push(words(width / 2, 22, `at least ${show(least)}, at most ${show(most)}`, 'middle', 13, true))
  return sheet(
    {
      width,
      height: bottom + 70,
      title: 'The screw, cut across',
      description: `A picket ${show(picket)} thick on a rail ${show(rail)} thick. The screw is at least ${show(least)} long, and at most ${show(most)}.`,
    },
    parts,
  )
}
