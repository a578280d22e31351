// This file is about a story stick laid aslant between two posts, to scale: its marks carried plumb, and the same marks squared off it.
import type { Seen } from '../calculation.ts'
import { exact, times } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, grey, heading, line, mostParts, part, shape, sheet, width } from './svg.ts'

const [left, right] = [34, 326]
const top = 62

export function stickErrorsDrawing(seen: Seen): string | null {
  const [opening, wide, count, step] = ['opening', 'picketWidth', 'pickets', 'stickPitch'].map((it) =>
    seen.one(it),
  ) as [Quantity, Quantity, Quantity, Quantity]
  const [W, w, n, s] = [
    numberIn(opening, 'in'),
    numberIn(wide, 'in'),
    numberIn(count, count.unit),
    numberIn(step, 'in'),
  ] as [number, number, number, number]
  const pitch = (W + w) / (n + 1)
  const cosine = pitch / s
  const angle = Math.acos(cosine)
  const scale = (right - left) / W
  const fall = Math.tan(angle) * W * scale
  // A stick that lies very steep would make a tower of the drawing: then the figures are enough.
  if (fall > 420) return null
  const rail = top + fall + 46
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)]
  const first = (W / cosine - (n - 1) * s) / 2
  const marks = Array.from({ length: n }, (_, i) => (first + i * s) * scale)
  const parts = [
    shape([
      [left - 14, top - 16],
      [left, top - 16],
      [left, rail + 34],
      [left - 14, rail + 34],
    ]),
    shape([
      [right, top - 16],
      [right + 14, top - 16],
      [right + 14, rail + 34],
      [right, rail + 34],
    ]),
    line(left, top, right, top + fall, 3),
    line(left, rail, right, rail, 1.5),
  ]
  for (const [i, along] of marks.entries()) {
    const [x, y] = [left + along * ux, top + along * uy]
    const drawn = line(x, y, x, rail, 0.9) + line(x, rail, x, rail + 8, 2)
    const past = show({ ...step, amount: times(step.amount, exact(i)) })
    const says = `mark ${i + 1} of ${n}: ${i === 0 ? 'the first on the stick' : `${past} past the first, along the stick`}`
    parts.push(n > mostParts ? drawn : part(says, drawn))
    // Square to the stick, down to the same rail: only where it still falls between the posts, and few of them.
    const squared = x - ((rail - y) * uy) / ux
    if (squared > left && (n <= 6 || i % 3 === 0)) {
      parts.push(line(x, y, squared, rail, 0.9, grey, '4 3'), dot(squared, rail, 2.5, '#fff'))
    }
  }
  parts.push(
    heading(`marks every ${show(step)}`),
    aside('ticks: carried plumb, even', rail + 26),
    aside(
      n <= 6 ? 'open dots: squared off the stick, too wide' : 'open dots: every third squared off the stick, too wide',
      rail + 50,
    ),
  )
  return sheet(
    {
      width,
      height: rail + 64,
      title: 'A story stick laid aslant, from the front',
      description: `A stick with marks every ${show(step)} laid aslant across an opening of ${show(opening)}. Carried plumb its marks come even; squared off the stick they come ${show(seen.one('squaredPitch'))} apart, too wide.`,
    },
    parts,
  )
}
