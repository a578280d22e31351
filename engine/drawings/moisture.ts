// This file is about moisture on a scale: the readings, the limit, and where the wood settles.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { box, dot, grey, line, onSheet, plate, sheet, spread, width, words } from './svg.ts'

const [left, right] = [22, 338]
const top = 30 // per cent at the right end; wetter readings stand there with an arrow

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
  // Over the scale stand the limit and a row for each reading.
  const scaleY = (limit ? 34 : 16) + 20 * readings.length + (readings.length > 0 ? 18 : 0)
  const x = (percent: number): number => left + (Math.min(Math.max(percent, 0), top) / top) * (right - left)
  const parts: string[] = [line(left, scaleY, right, scaleY, 2)]
  for (let percent = 0; percent <= top; percent += 5)
    parts.push(
      line(x(percent), scaleY, x(percent), scaleY + 7),
      words(x(percent), scaleY + 21, `${percent}`, 'middle', 11),
    )
  const said: string[] = []
  const labels: string[] = []
  if (settles) {
    const at = numberIn(settles, 'percent')
    parts.push(
      box(x(at - 1), scaleY - 9, x(at + 1) - x(at - 1), 18, '#ddd', 0.75),
      words(onSheet(x(at), `settles at ${show(settles)}`), scaleY + 40, `settles at ${show(settles)}`),
    )
    said.push(`the wood settles at ${show(settles)}`)
  }
  if (limit) {
    const at = x(numberIn(limit, 'percent'))
    parts.push(
      line(at, 22, at, scaleY + 8, 2, '#111', '5 3'),
      words(onSheet(at + 5, `limit ${show(limit)} `, 'start', 13), 20, `limit ${show(limit)}`, 'start', 12, true),
    )
    said.push(`the limit is ${show(limit)}`)
  }
  readings.forEach(({ label, q }, i) => {
    const percent = numberIn(q, 'percent')
    const text = `${label} ${show(q)}${percent > top ? ' →' : ''}`
    const half = spread(text) / 2
    const y = scaleY - 20 - 20 * i
    // Beside the limit's line the words stand on the reading's own side of it.
    const edge = limit ? x(numberIn(limit, 'percent')) : -1
    const near = limit !== undefined && Math.abs(x(percent) - edge) < half + 6
    const spot = near ? (x(percent) <= edge ? edge - half - 6 : edge + half + 6) : x(percent)
    parts.push(
      dot(x(percent), scaleY, 5, i === 0 && readings.length > 1 ? '#fff' : '#111'),
      line(x(percent), scaleY - 6, x(percent), y + 4, 0.75, grey),
    )
    labels.push(plate(onSheet(spot, text), y, text))
    said.push(
      `${label === 'reading' ? 'a reading' : `a reading at ${label === 'surface' ? 'the surface' : 'depth'}`} of ${show(q)}`,
    )
  })
  parts.push(...labels)
  return sheet(
    {
      width,
      height: scaleY + (settles ? 50 : 32),
      title: 'Moisture in per cent',
      description: `On a scale from 0 to 30 per cent: ${said.join(', ')}.`,
    },
    parts,
  )
}
