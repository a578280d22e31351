// This file is about the ground from the side: a level string, readings down from it, heights drawn larger than lengths.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, heading, ledDown, line, sheet, width, words } from './svg.ts'

const side = 30

export function profileDrawing(seen: Seen): string | null {
  const readings = seen.rows('levelReadings')
  const downs = readings.map((it) => numberIn(it, 'in'))
  const most = Math.max(...downs, 1e-9)
  const step = (width - 2 * side) / (readings.length - 1)
  const string = 62
  const deep = 110
  const at = downs.map((it, i) => [side + i * step, string + 16 + (it / most) * deep] as const)
  const every = Math.ceil(readings.length / 12)
  const parts = [
    line(side - 14, string, width - side + 14, string, 1.5, '#111', '8 4'),
    words(side - 14, string - 8, 'level string', 'start', 11),
  ]
  parts.push(
    `<path d="M${at.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}" fill="none" stroke="#111" stroke-width="2.5"/>`,
  )
  for (const [x, y] of at) parts.push(line(x, string, x, y, 0.75), dot(x, y, 2.5))
  const labels = ledDown(
    at.flatMap(([x, y], i) =>
      i % every === 0 || i === at.length - 1 ? [{ x, from: y, text: show(readings[i] as Quantity) }] : [],
    ),
    string + 16 + deep + 22,
  )
  const fall = seen.one('totalFall')
  const slope = seen.maybe('slope')
  const title = slope ? `falls ${show(fall)}, ${show(slope)}` : `falls ${show(fall)}`
  parts.push(labels.drawn, heading(title, 24), aside('heights drawn larger than lengths', labels.lowest + 22))
  return sheet(
    {
      width,
      height: labels.lowest + 32,
      title: 'The ground from the side',
      description: `Readings down from a level string: ${readings.map(show).join(', ')}. From the first to the last the ground ${title}.`,
    },
    parts,
  )
}
