// This file is about a built-up cap from above: the block and the mitred frame round it.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, down, heading, line, sheet, spread, width, words } from './svg.ts'

export function capDrawing(seen: Seen): string | null {
  const [long, short, inner, moulding] = ['outerLong', 'outerShort', 'blockLong', 'mouldingWidth'].map((it) =>
    seen.one(it),
  ) as [ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>]
  const [a, b, m] = [long, short, moulding].map((it) => numberIn(it, 'in')) as [number, number, number]
  const scale = Math.min(200 / a, 190 / b)
  const [left, top] = [(width - a * scale) / 2 - 20, 62]
  const [right, bottom] = [left + a * scale, top + b * scale]
  const parts = [
    box(left, top, a * scale, b * scale, '#eee', 1.5),
    box(left + m * scale, top + m * scale, (a - 2 * m) * scale, (b - 2 * m) * scale, '#fff', 1.2),
  ]
  for (const [x, y, u, v] of [
    [left, top, 1, 1],
    [right, top, -1, 1],
    [right, bottom, -1, -1],
    [left, bottom, 1, -1],
  ] as const)
    parts.push(line(x, y, x + u * m * scale, y + v * m * scale, 1.2))
  parts.push(
    across(left, right, top - 12, show(long)),
    down(right + 14, top, bottom, show(short)),
    aside(`moulding ${show(moulding)}, mitred at every corner`, bottom + 26),
    heading('A built-up cap from above'),
  )
  if ((a - 2 * m) * scale > spread('block') + 6 && (b - 2 * m) * scale > 18)
    parts.push(words((left + right) / 2, (top + bottom) / 2 + 4, 'block'))
  return sheet(
    {
      width,
      height: bottom + 40,
      title: 'A built-up cap from above',
      description: `A block with ${show(inner)} as its longer side, and a mitred frame of moulding ${show(moulding)} wide round it: ${show(long)} by ${show(short)} outside.`,
    },
    parts,
  )
}
