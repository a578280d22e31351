// This file is about the leaf of a gate seen from the front: posts, frame, brace with its direction, sizes to scale.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, down, grey, heading, line, shape, sheet, width, words } from './svg.ts'

const room = { wide: 220, high: 210 }
const top = 56

/** A leaf between its posts, hinges on the left. */
export function leafDrawing(seen: Seen): string | null {
  const [opening, leaf, hinge, latch] = ['gateOpening', 'leafWidth', 'hingeGap', 'latchGap'].map((it) =>
    seen.one(it),
  ) as [Quantity, Quantity, Quantity, Quantity]
  const isDouble = seen.option('gateLeaves') === 'double'
  const middle = seen.maybe('meetingGap')
  const wide = numberIn(opening, 'in')
  const high = seen.maybe('leafHeight') ? numberIn(seen.one('leafHeight'), 'in') : wide * 0.8
  const post = 3.5
  const scale = Math.min(room.wide / (wide + 2 * post), room.high / high)
  const left = (width - wide * scale) / 2
  const bottom = top + 34 + high * scale
  const member = seen.maybe('memberWidth') ? numberIn(seen.one('memberWidth'), 'in') * scale : 6
  const parts = [line(8, bottom + 8, width - 8, bottom + 8, 2)]
  for (const x of [left - post * scale, left + wide * scale])
    parts.push(box(x, top + 22, post * scale, bottom - top - 14, '#bbb'))
  const leafIn = numberIn(leaf, 'in')
  const starts = isDouble ? [numberIn(hinge, 'in'), wide - numberIn(hinge, 'in') - leafIn] : [numberIn(hinge, 'in')]
  for (const start of starts) {
    const x = left + start * scale
    parts.push(
      box(x, top + 34, leafIn * scale, high * scale, '#fff', 1.2),
      box(
        x + member,
        top + 34 + member,
        Math.max(0, leafIn * scale - 2 * member),
        Math.max(0, high * scale - 2 * member),
        '#fff',
        0.75,
      ),
    )
  }
  parts.push(across(left, left + wide * scale, top + 12, `opening ${show(opening)}`))
  const x = left + (starts[0] as number) * scale
  parts.push(across(x, x + leafIn * scale, bottom + 30, `leaf ${show(leaf)}`))
  const gaps = isDouble
    ? `gaps: ${show(hinge)} at each hinge side${middle ? `, ${show(middle)} where they meet` : ''}`
    : `gaps: ${show(hinge)} hinge side, ${show(latch)} latch side`
  parts.push(aside(gaps, bottom + 52))
  const guessed = !seen.maybe('leafHeight')
  if (guessed) parts.push(aside('widths to scale, height not', bottom + 70))
  parts.push(heading(isDouble ? 'A double gate, shut' : 'A single gate, shut'))
  return sheet(
    {
      width,
      height: bottom + (guessed ? 80 : 62),
      title: isDouble ? 'A double gate in its opening' : 'A single gate in its opening',
      description: `An opening of ${show(opening)} with ${isDouble ? 'two leaves' : 'one leaf'} of ${show(leaf)} width; ${gaps}.`,
    },
    parts,
  )
}

/** The frame with its brace from the bottom hinge corner up to the top latch corner. */
export function braceDrawing(seen: Seen): string | null {
  const [inside, height, stock, angle, length, cut] = [
    'insideWidth',
    'insideHeight',
    'braceWidth',
    'braceAngle',
    'braceLength',
    'braceCut',
  ].map((it) => seen.one(it)) as [Quantity, Quantity, Quantity, Quantity, Quantity, Quantity]
  const [a, b, t] = [inside, height, stock].map((it) => numberIn(it, 'in')) as [number, number, number]
  const scale = Math.min(180 / a, room.high / b)
  const member = Math.max(8, Math.min(16, t * scale * 0.6))
  const [left, high] = [(width - a * scale) / 2 - 20, top]
  const bottom = high + b * scale
  const theta = (numberIn(angle, 'deg') * Math.PI) / 180
  const foot = (t / Math.sin(theta)) * scale
  // The brace lies on the bottom rail from the hinge corner and under the top rail to the latch corner.
  const brace = [
    [left, bottom],
    [left + foot, bottom],
    [left + a * scale, high],
    [left + a * scale - foot, high],
  ] as const
  const parts = [
    box(left - member, high - member, a * scale + 2 * member, b * scale + 2 * member, '#eee'),
    box(left, high, a * scale, b * scale, '#fff'),
    shape(brace, '#ccc', 1.2),
  ]
  const [fromX, fromY, toX, toY] = [left + foot * 0.7, bottom - 12, left + a * scale - foot * 0.7, high + 12]
  parts.push(line(fromX, fromY, toX, toY, 1.5, '#111', '6 4'))
  const [dx, dy] = [toX - fromX, toY - fromY]
  const size = Math.hypot(dx, dy)
  const [ux, uy] = [dx / size, dy / size]
  parts.push(
    shape(
      [
        [toX, toY],
        [toX - 12 * ux - 5 * uy, toY - 12 * uy + 5 * ux],
        [toX - 12 * ux + 5 * uy, toY - 12 * uy - 5 * ux],
      ],
      '#111',
    ),
  )
  // In a very low frame both hinges stand at the middle of their half.
  const hung = Math.min(14, (b * scale) / 4)
  for (const y of [high + hung, bottom - hung]) {
    parts.push(box(left - member - 12, y - 4, 16, 8, '#555'))
    if (b * scale > 40 || y < (high + bottom) / 2)
      parts.push(words(left - member - 16, y + 4, b * scale > 40 ? 'hinge' : 'hinges', 'end', 11))
  }
  if (b * scale > 48) parts.push(words(left + a * scale + member + 19, high + hung + 4, 'latch', 'start', 11))
  parts.push(across(left, left + a * scale, high - member - 8, `inside ${show(inside)}`))
  parts.push(down(left + a * scale + member + 12, high, bottom, show(height)))
  parts.push(heading(`brace ${show(length)}, long point to long point`, bottom + member + 22))
  parts.push(
    words(
      width / 2,
      bottom + member + 40,
      `${show(angle)} up from level; both ends ${show(cut)} from square`,
      'middle',
      12,
    ),
  )
  parts.push(line(left, bottom, left, bottom + member, 0.5, grey))
  return sheet(
    {
      width,
      height: bottom + member + 54,
      title: 'The brace in its frame',
      description: `A frame ${show(inside)} wide and ${show(height)} tall inside. The brace rises from the bottom corner at the hinges to the top corner at the latch: ${show(length)} from long point to long point, ${show(angle)} up from level, both ends cut ${show(cut)} from square.`,
    },
    parts,
  )
}
