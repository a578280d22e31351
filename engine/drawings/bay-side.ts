// This file is about one bay as it is seen from outside, for whoever asks how high and how open a fence is: heights and widths to one scale.
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, down, earth, heading, line, shape, sheet, width } from './svg.ts'

export interface BaySide {
  readonly centres: Quantity
  readonly opening: Quantity
  readonly postAbove: Quantity
  readonly pickets: Quantity | undefined
  readonly picketWidth: Quantity | undefined
  readonly gap: Quantity | undefined
  readonly picketLength: Quantity | undefined
  readonly footGap: Quantity | undefined
  /** Whether a picket stands against each post. */
  readonly isTight: boolean
}

const top = 66

export function baySideDrawing(bay: BaySide): string {
  const { centres, opening, postAbove, pickets, picketWidth, gap, picketLength, footGap } = bay
  const [c, o, high] = [centres, opening, postAbove].map((it) => numberIn(it, 'in')) as [number, number, number]
  const post = c - o
  const long = picketLength ? numberIn(picketLength, 'in') : undefined
  const foot = footGap ? numberIn(footGap, 'in') : 2
  const tallest = Math.max(high, long ? foot + long : 0)
  const scale = Math.min((width - 150) / (c + post), 220 / tallest)
  const left = 76
  const ground = top + tallest * scale
  const y = (up: number): number => ground - up * scale
  const x = (along: number): number => left + along * scale
  const parts = [line(8, ground, width - 8, ground, 2), earth(12, width - 12, ground)]
  const many = pickets ? Math.min(60, Math.round(numberIn(pickets, pickets.unit))) : 0
  const drawn = many > 0 && picketWidth && gap && long
  if (drawn) {
    const [w, g] = [numberIn(picketWidth, 'in'), numberIn(gap, 'in')]
    for (let i = 0; i < many; i++) {
      const at = post + (bay.isTight ? 0 : g) + i * (w + g)
      const tip = Math.min(w / 2, 3)
      parts.push(
        shape(
          [
            [x(at), y(foot)],
            [x(at), y(foot + long - tip)],
            [x(at + w / 2), y(foot + long)],
            [x(at + w), y(foot + long - tip)],
            [x(at + w), y(foot)],
          ],
          '#fff',
          many > 30 ? 0.6 : 0.9,
        ),
      )
    }
  }
  for (const at of [0, c]) parts.push(box(x(at), y(high), post * scale, high * scale, '#bbb'))
  parts.push(
    across(x(post / 2), x(c + post / 2), top - 14, show(centres)),
    down(x(c + post) + 14, y(high), ground, show(postAbove), 'right', 'post'),
  )
  if (drawn) parts.push(down(left - 12, y(foot + long), y(foot), show(picketLength as Quantity), 'left', 'picket'))
  const notes = [
    drawn && gap
      ? `gaps ${show(gap)}, pickets ${show(picketWidth as Quantity)} wide`
      : 'pickets are not drawn: their sizes are not all known',
    footGap ? `pickets ${show(footGap)} off the ground` : drawn ? 'how far they stand off the ground was not said' : '',
  ].filter((it) => it !== '')
  parts.push(
    heading('one bay from outside, level ground', 20),
    ...notes.map((it, i) => aside(it, ground + 30 + i * 17)),
  )
  return sheet(
    {
      width,
      height: ground + 38 + notes.length * 17,
      title: 'One bay from outside',
      description: `A bay of ${show(centres)} from post centre to post centre, posts ${show(postAbove)} above the ground. ${notes.join('; ')}.`,
    },
    parts,
  )
}
