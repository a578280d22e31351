// This file is about dew on a scale of temperature: the dew point, the margin over it, the face of the wood, and the air.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, dot, grey, heading, line, onSheet, plate, sheet, width, words } from './svg.ts'

const [left, right] = [24, 336]

export function dewDrawing(seen: Seen): string | null {
  const [air, dew] = [seen.one('airNow'), seen.maybe('dewPoint')]
  const [face, margin] = [seen.maybe('surfaceTemperature'), seen.maybe('dewMargin')]
  if (!dew) return null
  const scale = air.unit === 'F' ? 'F' : 'C'
  const step = scale === 'F' ? 10 : 5
  const over = margin ? numberIn(margin, scale === 'F' ? 'dF' : 'dC') : 0
  const low = numberIn(dew, scale)
  const places = [low, low + over, numberIn(air, scale), ...(face ? [numberIn(face, scale)] : [])]
  const from = Math.floor((Math.min(...places) - 1) / step) * step
  const to = Math.ceil((Math.max(...places) + 1) / step) * step
  if (!(to - from > 0) || to - from > 40 * step) return null
  const x = (degrees: number): number => left + ((degrees - from) / (to - from)) * (right - left)
  const marks = [
    { at: low, text: `dew point ${show(dew)}`, fill: '#fff' },
    ...(face ? [{ at: numberIn(face, scale), text: `face ${show(face)}`, fill: '#111' }] : []),
    { at: numberIn(air, scale), text: `air ${show(air)}`, fill: '#bbb' },
  ]
  const y = 58 + 22 * marks.length
  const ticks = [1, 2, 4, 8].find((it) => (to - from) / step / it <= 9) ?? 16
  const parts = [
    // From the dew point up to the margin is too near to it.
    box(x(low), y - 9, Math.max(x(low + over) - x(low), 0.5), 18, '#ddd', 0.75),
    line(left, y, right, y, 2),
  ]
  for (let degrees = from; degrees <= to; degrees += step * ticks)
    parts.push(
      line(x(degrees), y, x(degrees), y + 8),
      words(onSheet(x(degrees), `${degrees}`, 'middle', 11), y + 22, `${degrees}`, 'middle', 11),
    )
  const labels: string[] = []
  marks.forEach(({ at, text, fill }, i) => {
    const high = y - 24 - 22 * i
    parts.push(line(x(at), y - 6, x(at), high + 4, 0.75, grey), dot(x(at), y, 5, fill))
    labels.push(plate(onSheet(x(at), text), high, text))
  })
  const above = seen.maybe('aboveDew')
  parts.push(
    ...labels,
    heading(above ? `face ${show(above)} above the dew point` : `dew point ${show(dew)}`),
    aside(
      margin ? `°${scale}; grey: within ${show(margin)} of the dew point, too near for paint` : `°${scale}`,
      y + 42,
    ),
  )
  return sheet(
    {
      width,
      height: y + 52,
      title: 'Dew point and the face of the wood',
      description: `On a scale of temperature: the dew point ${show(dew)}, the air ${show(air)}${face ? `, the face of the wood ${show(face)}` : ''}${margin ? `; the face should be ${show(margin)} or more above the dew point` : ''}.`,
    },
    parts,
  )
}
