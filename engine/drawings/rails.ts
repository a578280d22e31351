// This file is about rails between two posts, from the front.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, heading, line, sheet, width } from './svg.ts'

export function railsDrawing(seen: Seen): string | null {
  if (!seen.maybe('railCut')) return null
  const [opening, cut, play, rails] = ['opening', 'railCut', 'fitAllowance', 'rails'].map((it) => seen.one(it)) as [
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
    ReturnType<Seen['one']>,
  ]
  const space = numberIn(opening, 'in')
  const post = 3.5 // drawn as a common 4x4; it is no part of the sum
  const scale = (width - 44) / (space + 2 * post)
  const left = 22 + post * scale
  const right = left + space * scale
  const [top, ground] = [56, 170]
  const all = Math.round(numberIn(rails, rails.unit))
  const many = Math.min(6, all)
  const gap = Math.max(1.5, numberIn(play, 'in') * scale)
  const parts = [line(8, ground, width - 8, ground, 2)]
  for (let i = 0; i < many; i++)
    parts.push(
      box(left + gap, top + 14 + (i * (ground - top - 50)) / Math.max(1, many - 1), right - left - 2 * gap, 10, '#eee'),
    )
  for (const x of [left - post * scale, right]) parts.push(box(x, top - 6, post * scale, ground - top + 6, '#bbb'))
  parts.push(
    across(left, right, top - 14, `opening ${show(opening)}`),
    across(left + gap, right - gap, ground + 26, `rail ${show(cut)}`),
    heading(`${show(rails)} in the bay, ${show(play)} of play at each end`, 20),
    aside(`${all > many ? `${many} of them are drawn; ` : ''}lengths to scale, heights not`, ground + 46),
  )
  return sheet(
    {
      width,
      height: ground + 56,
      title: 'Rails between two posts',
      description: `${show(rails)} in an opening of ${show(opening)}, each cut to ${show(cut)} with ${show(play)} of play at each end.`,
    },
    parts,
  )
}
