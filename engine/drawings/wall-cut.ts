// This file is about the end of a rail that is cut to a leaning wall: the turn of the saw, and the tilt of its blade.
import type { Seen } from '../calculation.ts'
import { toNumber } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, bend, heading, line, shape, sheet, width, words } from './svg.ts'

const end = 300 // the long point of the rail

export function wallCutDrawing(seen: Seen): string | null {
  const [miter, bevel] = [seen.one('wallMiter'), seen.one('wallBevel')]
  const longest = toNumber(seen.one('up').amount) < 0 ? 'bottom edge' : 'top edge'
  return sheet(
    {
      width,
      height: 274,
      title: 'The rail’s end against the wall',
      description: `Seen on its broad face, the rail’s end is cut ${show(miter)} from square, longest at its ${longest}. Seen along that cut, the blade is tilted ${show(bevel)} from upright.`,
    },
    [
      heading(`miter ${show(miter)}, bevel ${show(bevel)}`),
      ...cutEnd(78, 56, miter, 'on the broad face: the saw turned', longest),
      ...cutEnd(194, 34, bevel, 'along that cut: the blade tilted', ''),
      aside('angles true; the rail’s size is no part of it', 262),
    ],
  )
}

/** A rail's end so deep on the sheet, cut at an angle from square, with the wall that it meets. */
function cutEnd(top: number, most: number, angle: Quantity, what: string, edge: string): string[] {
  const slope = Math.tan((numberIn(angle, 'deg') * Math.PI) / 180)
  // A long cut is drawn on a shallower rail, so that it stays on the sheet.
  const deep = Math.min(most, 150 / Math.max(slope, 1e-9))
  const [bottom, back] = [top + deep, deep * slope]
  const short = end - back
  const wall = (y: number): number => short + (bottom - y) * slope
  // The wall goes on a little past the rail, less where it lies so flat that it would leave the sheet.
  const past = Math.min(10, 36 / Math.max(slope, 1e-9))
  const [from, to] = [bottom + past, top - past]
  const parts = [
    shape(
      [
        [wall(from), from],
        [wall(to), to],
        [wall(to) + 18, to],
        [wall(from) + 18, from],
      ],
      '#aaa',
      0.75,
    ),
    shape(
      [
        [16, top],
        [end, top],
        [short, bottom],
        [16, bottom],
      ],
      '#f0f0f0',
      1.5,
    ),
    line(short, bottom, short, top, 1, '#111', '4 3'),
    words(16, top - 16, what, 'start', 11),
    words(short - 8, top + deep / 2 + 4, show(angle), 'end'),
  ]
  if (slope > 0) parts.push(bend(short, bottom, deep * 0.7, 90, 90 - numberIn(angle, 'deg')))
  if (edge && deep > 30) parts.push(words(22, top + 14, edge, 'start', 11))
  return parts
}
