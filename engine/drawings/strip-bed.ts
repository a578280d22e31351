// This file is about the trench of the strip, cut across, to scale: base, sand, and the room left for the bricks.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import {
  across,
  aside,
  box,
  column,
  dot,
  down,
  earth,
  grey,
  heading,
  type Part,
  scattered,
  sheet,
  width,
} from './svg.ts'

const ground = 62
const underEarth = ground + 7 // no words stand in the strokes of the ground

/** Drawn where the depth is known: by the trench, or by what goes into it. */
export function bedDrawing(seen: Seen): string | null {
  const [dug, base, sand, wide] = ['spoilDepth', 'baseDepth', 'sandDepth', 'edgeWidth'].map((it) => seen.maybe(it))
  const inches = (q: Quantity | undefined): number => (q ? numberIn(q, 'in') : 0)
  const filled = inches(base) + inches(sand)
  // Without a depth dug, the trench is drawn a third deeper than its bed, and that depth is not written.
  const deep = dug ? inches(dug) : filled * 1.5
  if (deep <= 0) return null
  const across9 = inches(wide) || deep
  const scale = Math.min(150 / deep, 150 / across9)
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
  const room = seen.maybe('brickRoom')
  const layers: Part[] = [
    ...(room ? [{ y1: ground, y2: sandTop, figure: show(room), name: 'for bricks' }] : []),
    ...(sand && inches(sand) > 0 ? [{ y1: sandTop, y2: baseTop, figure: show(sand), name: 'sand' }] : []),
    ...(base && inches(base) > 0 ? [{ y1: baseTop, y2: bottom, figure: show(base), name: 'base' }] : []),
  ]
  parts.push(column(left - 14, layers, 'left', underEarth))
  if (dug) parts.push(down(right + 16, ground, bottom, show(dug), 'right', 'dug', underEarth))
  // The words of three layers of a very shallow trench reach below it: the width’s dimension stands clear of them.
  const under = Math.max(bottom, ground + 7 + 14 * layers.length - 22)
  if (wide) parts.push(across(left, right, under + 26, show(wide)))
  const guessed = [wide ? '' : 'the width', dug ? '' : 'the depth over the layers'].filter((it) => it !== '')
  if (guessed.length > 0)
    parts.push(
      aside(`${guessed.join(' and ')} ${guessed.length > 1 ? 'are' : 'is'} not to scale`, under + (wide ? 46 : 22)),
    )
  parts.push(heading(titleOf(base, sand, room)))
  return sheet(
    {
      width,
      height: under + (wide ? 40 : 14) + (guessed.length > 0 ? 18 : 0),
      title: 'The trench of the strip, cut across',
      description: `A trench${wide ? ` ${show(wide)} wide` : ''}${dug ? ` ${show(dug)} deep` : ''}${base ? `, with ${show(base)} of base` : ''}${sand ? ` and ${show(sand)} of sand` : ''}${room ? `, which leaves ${show(room)} for the bricks` : ''}.`,
    },
    parts,
  )
}

const titleOf = (base?: Quantity, sand?: Quantity, room?: Quantity): string =>
  room
    ? `${show(room)} left for the bricks`
    : base || sand
      ? 'what goes into the trench'
      : 'the trench, before anything goes in'
