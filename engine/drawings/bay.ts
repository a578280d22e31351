// This file is about the elevation of one bay: two posts, two rails, pickets with equal gaps, widths to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, heading, line, shape, sheet, width } from './svg.ts'

const side = 26
const ground = 196
const tops = 62

export function bayDrawing(seen: Seen): string | null {
  const [opening, picket, count, gap, tape] = [
    seen.one('opening'),
    seen.one('picketWidth'),
    seen.one('pickets'),
    seen.one('gap'),
    seen.one('tapeGap'),
  ]
  const many = Math.round(numberIn(count, count.unit))
  const space = numberIn(opening, 'in')
  const post = 3.5 // drawn as wide as a common 4x4; the posts are not part of the sum
  const scale = (width - 2 * side) / (space + 2 * post)
  const [left, right] = [side + post * scale, side + (post + space) * scale]
  const [pitch, wide, open] = [
    numberIn(gap, 'in') + numberIn(picket, 'in'),
    numberIn(picket, 'in') * scale,
    numberIn(gap, 'in') * scale,
  ]
  const parts = [line(8, ground, width - 8, ground, 2)]
  for (const y of [tops + 26, ground - 38]) parts.push(box(left, y, right - left, 8, '#ddd', 0.75))
  for (let i = 0; i < many; i++) {
    const x = left + open + i * pitch * scale
    const point = Math.min(wide / 2, 10)
    parts.push(
      shape(
        [
          [x, ground - 8],
          [x, tops + point],
          [x + wide / 2, tops],
          [x + wide, tops + point],
          [x + wide, ground - 8],
        ],
        '#fff',
        many > 40 ? 0.6 : 1,
      ),
    )
  }
  for (const x of [side, right]) parts.push(box(x, tops - 8, post * scale, ground - tops + 8, '#bbb'))
  parts.push(across(left, right, 44, `opening ${show(opening)}`))
  parts.push(`<g>${across(left + open, left + open + wide, ground + 24, `picket ${show(picket)}`)}</g>`)
  parts.push(`<g>${across(left, left + open, ground + 44, `gap ${show(tape)} by the tape`)}</g>`)
  // The picket's far edge is led to its own dimension only: the words of the gap stand below it.
  for (const [x, y] of [
    [left, 48],
    [left + open, 48],
    [left + open + wide, 28],
  ] as const)
    parts.push(line(x, ground + 2, x, ground + y, 0.5, '#6b6b6b', '2 2'))
  parts.push(heading(`${show(count)}, the same gap at every post`, 18))
  parts.push(aside('widths to scale, height not', ground + 68))
  return sheet(
    {
      width,
      height: ground + 76,
      title: 'One bay, from the street',
      description: `A bay with an opening of ${show(opening)}: ${show(count)}, each ${show(picket)} wide, with a gap of ${show(tape)} by the tape between them and at each post.`,
    },
    parts,
  )
}
