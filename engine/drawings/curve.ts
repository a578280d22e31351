// This file is about a curved run from above: the arc, the straight bays, the posts.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, heading, line, mostParts, part, sheet, width } from './svg.ts'

export function curveDrawing(seen: Seen): string | null {
  const [radius, bays, chord, turn] = [
    seen.one('curveRadius'),
    seen.one('chords'),
    seen.one('chord'),
    seen.one('deflection'),
  ]
  const many = Math.round(numberIn(bays, bays.unit))
  const each = (numberIn(turn, 'deg') * Math.PI) / 180
  const whole = each * many
  const points = Array.from(
    { length: many + 1 },
    (_, i) => [Math.sin(i * each - whole / 2), 1 - Math.cos(i * each - whole / 2)] as const,
  )
  const [left, right] = [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))]
  const low = Math.max(...points.map(([, y]) => y))
  const scale = Math.min((width - 50) / Math.max(right - left, 0.01), 220 / Math.max(low, 1e-9))
  const x = (it: number): number => width / 2 + it * scale
  const y = (it: number): number => 70 + it * scale
  const fine = Array.from({ length: 121 }, (_, i) => (i / 120 - 0.5) * whole).map(
    (it) => `${x(Math.sin(it)).toFixed(1)} ${y(1 - Math.cos(it)).toFixed(1)}`,
  )
  const parts = [`<path d="M${fine.join('L')}" fill="none" stroke="#111" stroke-width="1" stroke-dasharray="5 4"/>`]
  points.forEach(([u, v], i) => {
    const next = points[i + 1]
    const isAsked = 2 * many < mostParts
    const of = (says: string, drawn: string): string => (isAsked ? part(says, drawn) : drawn)
    if (next)
      parts.push(
        of(`bay ${i + 1} of ${many}: ${show(chord)} in a straight line`, line(x(u), y(v), x(next[0]), y(next[1]), 2)),
      )
    const turned = i === 0 || !next ? 'an end of the curve' : `the fence turns ${show(turn)} here`
    parts.push(of(`post ${i + 1} of ${points.length}: ${turned}`, dot(x(u), y(v), many > 40 ? 2 : 4)))
  })
  const [string, first, last] = [seen.maybe('longChord'), points[0], points.at(-1)]
  if (string && first && last)
    parts.push(
      line(x(first[0]), y(first[1]), x(last[0]), y(last[1]), 1, '#111', '2 3'),
      aside(`dotted: the string, ${show(string)}`, y(low) + 24),
    )
  parts.push(
    heading(`${show(bays)} of ${show(chord)}, turning ${show(turn)} at each post`),
    aside(`dashed: the curve, ${show(radius)} radius`, 44),
  )
  return sheet(
    {
      width,
      height: y(low) + (string ? 36 : 24),
      title: 'The curved run from above',
      description: `${show(bays)} of ${show(chord)} in a straight line from post to post, on a curve of ${show(radius)} radius; each turns ${show(turn)}.`,
    },
    parts,
  )
}
