// This file is about a gate as it swings: standing open over rising ground, and turning seen from above. Each view is to scale.
import type { Seen } from '../calculation.ts'
import { less, numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, bend, box, broken, down, grey, heading, line, shape, sheet, width, words } from './svg.ts'

export function gateSwingDrawing(seen: Seen): string | null {
  const open = seen.maybe('swingRise') ? openView(seen) : { parts: [], bottom: 0, words: '' }
  const turning = turningView(seen, open.bottom)
  return sheet(
    {
      width,
      height: turning.bottom,
      title: 'The gate as it swings',
      description: `${open.words}${turning.words}`,
    },
    [...open.parts, ...turning.parts],
  )
}

interface View {
  readonly parts: string[]
  readonly bottom: number
  readonly words: string
}

/** Along the fence: the leaf stands open uphill, level, over ground that has risen. */
function openView(seen: Seen): View {
  const [leaf, rise, gap] = [seen.one('leafWidth'), seen.one('swingRise'), seen.maybe('gateGapBelow')]
  const [w, r] = [numberIn(leaf, 'in'), numberIn(rise, 'in')]
  // Where nobody said the gap, the leaf is drawn where it just touches.
  const g = gap ? numberIn(gap, 'in') : r
  const scale = Math.min(140 / w, 110 / Math.max(r, g, 1e-9))
  const hinge = (width - w * scale) / 2 + 2
  const latch = hinge + w * scale
  const level = 120 + Math.max(r, g) * scale
  const [foot, risen] = [level - g * scale, level - r * scale]
  const climb = (r * scale) / (w * scale)
  const ground = (x: number): number => level - (x - hinge) * climb
  const [from, to] = [hinge - 16, latch + 10]
  const base = Math.max(ground(from), level) + 22
  const top = foot - 56
  const parts = [
    box(hinge - 12, top - 6, 9, level - top + 6, '#bbb'),
    shape(
      [
        [hinge, top],
        [latch, top],
        [latch, foot],
        [hinge, foot],
      ],
      '#f4f4f4',
      1.2,
    ),
    broken(hinge, latch, top),
    `<path d="M${from} ${base}L${from} ${ground(from)}L${to} ${ground(to)}L${to} ${base}Z" fill="#ddd"/>`,
    line(from, ground(from), to, ground(to), 2),
    // What of the leaf is under the ground shows dashed.
    line(hinge, foot, latch, foot, 1.2, '#111', '4 3'),
    line(hinge - 34, level, latch + 24, level, 0.75, '#111', '5 4'),
    line(latch, risen, latch + 24, risen, 0.5),
    down(latch + 20, risen, level, show(rise), 'right', 'risen'),
  ]
  if (gap) parts.push(line(hinge - 34, foot, hinge, foot, 0.5), down(hinge - 30, foot, level, show(gap), 'left', 'gap'))
  const clears = gap && less(rise, gap)
  const says = gap
    ? `open, the leaf ${clears ? 'clears the ground' : 'drags on the ground'}`
    : 'open, the ground has risen'
  parts.push(
    heading(says),
    aside('along the fence; dashed: the ground under the shut gate', 42),
    across(hinge, latch, base + 22, `leaf ${show(leaf)}`),
  )
  if (!gap) parts.push(aside('the leaf is drawn where it just touches', base + 42))
  return {
    parts,
    bottom: base + (gap ? 36 : 54),
    words: `A leaf ${show(leaf)} wide stands open over ground that has risen ${show(rise)} under its latch end${gap ? `, with a gap of ${show(gap)} under the shut gate: the leaf ${clears ? 'clears the ground' : 'drags on the ground'}` : ''}. `,
  }
}

/** From above: the far corner of the latch edge swings on a longer arc than the face. */
function turningView(seen: Seen, from: number): View {
  const [leaf, thick, room] = [seen.one('leafWidth'), seen.one('leafThickness'), seen.one('edgeRoom')]
  const [w, t] = [numberIn(leaf, 'in'), numberIn(thick, 'in')]
  const scale = 120 / Math.max(w, t)
  const reach = Math.hypot(w, t) * scale
  const [x, y] = [(width - w * scale) / 2, from + 58 + reach]
  const edge = (Math.atan2(t, w) * 180) / Math.PI
  const parts = [
    words(width / 2, from + 24, 'turning, from above', 'middle', 12, true),
    aside(`its edge needs ${show(room)} past the shut leaf`, from + 42),
    box(x - 14, y - 3, 12, t * scale + 6, '#bbb'),
    box(x + reach + 2, y - 3, 12, t * scale + 6, '#bbb'),
    box(x, y, w * scale, t * scale, '#eee', 1.2),
    `<rect x="${x}" y="${y - w * scale}" width="${t * scale}" height="${w * scale}" fill="none" stroke="${grey}" stroke-dasharray="4 3"/>`,
    bend(x, y, reach, -edge, 90 - edge),
    across(x, x + w * scale, y + t * scale + 28, `leaf ${show(leaf)}`),
    aside(`${show(thick)} thick at its latch edge`, y + t * scale + 48),
  ]
  return {
    parts,
    bottom: y + t * scale + 58,
    words: `From above, the edge of a leaf ${show(thick)} thick reaches ${show(room)} further while it turns than when it is shut.`,
  }
}
