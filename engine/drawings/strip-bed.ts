// This file is about the trench of the strip, cut across, to scale: base, sand, and the room left for the bricks.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, dot, down, earth, grey, heading, scattered, sheet, width } from './svg.ts'

const ground = 62

/** Drawn where the depth is known: by the trench, or by what goes into it. */
export function bedDrawing(seen: Seen): string | null {
  const [dug, base, sand, wide] = ['spoilDepth', 'baseDepth', 'sandDepth', 'edgeWidth'].map((it) => seen.maybe(it))
  const inches = (q: Quantity | undefined): number => (q ? numberIn(q, 'in') : 0)
  const filled = inches(base) + inches(sand)
  // Without a depth dug, the trench is drawn a third deeper than its bed, and that depth is not written.
  const deep = dug ? inches(dug) : filled * 1.5
  if (deep <= 0) return null
  const across9 = inches(wide) || deep
  const scale = Math.min(150 / deep, 170 / across9)
  const middle = width / 2
  const [left, right, bottom] = [middle - (across9 * scale) / 2, middle + (across9 * scale) / 2, ground + deep * scale]
  const [baseTop, sandTop] = [bottom - inches(base) * scale, bottom - filled * scale]
  const parts = [
    `<path d="M8 ${ground}H${left.toFixed(2)}V${bottom.toFixed(2)}H${right.toFixed(2)}V${ground}H${width - 8}" fill="none" stroke="#111" stroke-width="2"/>`,
    earth(12, left - 4, ground),
    earth(right + 6, width - 8, ground),
  ]
  if (bottom - baseTop > 0.5) {
    parts.push(box(left, baseTop, right - left, bottom - baseTop, '#e4e4e4'))
    const size = Math.min(3.2, (bottom - baseTop) / 2 - 0.5)
    if (size > 1)
      for (const [u, v] of scattered(34))
        parts.push(
          dot(left + 5 + u * (right - left - 10), baseTop + size + v * (bottom - baseTop - 2 * size), size, '#fff'),
        )
  }
  if (baseTop - sandTop > 0.5) {
    parts.push(box(left, sandTop, right - left, baseTop - sandTop, '#fff'))
    for (const [u, v] of scattered(50))
      parts.push(dot(left + 3 + u * (right - left - 6), sandTop + 1.5 + v * (baseTop - sandTop - 3), 0.6, grey))
  }
  if (base && inches(base) > 0) parts.push(layer(left - 14, baseTop, bottom, show(base), 'base'))
  if (sand && inches(sand) > 0) parts.push(layer(left - 14, sandTop, baseTop, show(sand), 'sand'))
  const room = seen.maybe('brickRoom')
  if (room) parts.push(layer(left - 14, ground, sandTop, show(room), 'left'))
  if (dug) parts.push(down(right + 16, ground, bottom, show(dug), 'right', 'dug'))
  if (wide) parts.push(across(left, right, bottom + 26, show(wide)))
  else parts.push(aside('the width is not to scale', bottom + 22))
  parts.push(heading(titleOf(base, sand, room)))
  return sheet(
    {
      width,
      height: bottom + 42,
      title: 'The trench of the strip, cut across',
      description: `A trench${wide ? ` ${show(wide)} wide` : ''}${dug ? ` ${show(dug)} deep` : ''}${base ? `, with ${show(base)} of base` : ''}${sand ? ` and ${show(sand)} of sand` : ''}${room ? `, which leaves ${show(room)} for the bricks` : ''}.`,
    },
    parts,
  )
}

/** A layer's dimension at the left, its figure and its name on one line, for layers are thin. */
const layer = (x: number, y1: number, y2: number, figure: string, name: string): string =>
  down(x, y1, y2, `${figure} ${name}`, 'left')

const titleOf = (base?: Quantity, sand?: Quantity, room?: Quantity): string =>
  room
    ? `${show(room)} left for the bricks`
    : base || sand
      ? 'what goes into the trench'
      : 'the trench, before anything goes in'
