// This file is about moisture on a scale: the readings, the limit, and where the wood settles.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { box, dot, grey, line, sheet, spread, words } from './svg.ts'

interface Reading {
  readonly label: string
  readonly q: Quantity
}

const width = 420
const [left, right] = [24, 396]
const top = 30 // per cent at the right end; wetter readings stand there with an arrow
const scaleY = 96

export function moistureDrawing(seen: Seen): string | null {
  const named = [
    ['surfaceReading', 'surface'],
    ['depthReading', 'depth'],
    ['moistureReading', 'reading'],
  ] as const
  const readings = named.flatMap(([word, label]) => {
    const q = seen.maybe(word)
    return q ? [{ label, q }] : []
  })
  const settles = seen.maybe('equilibriumMoisture')
  const limit = seen.maybe('moistureLimit')
  if (readings.length === 0 && !settles) return null
  const x = (percent: number): number => left + (Math.min(Math.max(percent, 0), top) / top) * (right - left)
  const parts: string[] = [line(left, scaleY, right, scaleY, 2)]
  for (let percent = 0; percent <= top; percent += 5)
    parts.push(
      line(x(percent), scaleY, x(percent), scaleY + 7),
      words(x(percent), scaleY + 21, `${percent}`, 'middle', 11),
    )
  const said: string[] = []
  if (settles) {
    const at = numberIn(settles, 'percent')
    parts.push(
      box(x(at - 1), scaleY - 9, x(at + 1) - x(at - 1), 18, '#ddd', 0.75),
      words(Math.min(Math.max(x(at), 92), width - 92), scaleY + 40, `settles at ${show(settles)}`, 'middle', 12),
    )
    said.push(`the wood settles at ${show(settles)}`)
  }
  if (limit) {
    const at = x(numberIn(limit, 'percent'))
    parts.push(
      line(at, 22, at, scaleY + 8, 2, '#111', '5 3'),
      words(at + 5, 20, `limit ${show(limit)}`, 'start', 12, true),
    )
    said.push(`the limit is ${show(limit)}`)
  }
  const lines =
    readings.length > 1 &&
    Math.abs(x(numberIn((readings[0] as Reading).q, 'percent')) - x(numberIn((readings[1] as Reading).q, 'percent'))) <
      110
  readings.forEach(({ label, q }, i) => {
    const percent = numberIn(q, 'percent')
    const text = `${label} ${show(q)}${percent > top ? ' →' : ''}`
    const half = spread(text) / 2
    const y = lines && i % 2 === 1 ? 44 : 64
    // Beside the limit's line the words stand on the reading's own side of it.
    const edge = limit ? x(numberIn(limit, 'percent')) : -1
    const near = limit !== undefined && Math.abs(x(percent) - edge) < half + 6
    const spot = near ? (x(percent) <= edge ? edge - half - 6 : edge + half + 6) : x(percent)
    parts.push(
      dot(x(percent), scaleY, 5, i === 0 && readings.length > 1 ? '#fff' : '#111'),
      line(x(percent), scaleY - 6, x(percent), y + 4, 0.75, grey),
      words(Math.min(Math.max(spot, half + 4), width - half - 4), y, text),
    )
    said.push(
      `${label === 'reading' ? 'a reading' : `a reading at ${label === 'surface' ? 'the surface' : 'depth'}`} of ${show(q)}`,
    )
  })
  return sheet(
    {
      width,
      height: settles ? 146 : 128,
      title: 'Moisture in per cent',
      description: `On a scale from 0 to 30 per cent: ${said.join(', ')}.`,
    },
    parts,
  )
}
