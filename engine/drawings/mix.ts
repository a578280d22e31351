// This file is about a mix by parts: cement, sand and stone as they are measured, stacked, beside the concrete they make, to one scale.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { box, dot, heading, line, scattered, sheet, width, words } from './svg.ts'

const [top, base, wide] = [44, 244, 96]
const [dryAt, madeAt] = [14, width - 14 - wide]
const apart = 15

/** Grains in a box, of one size each, so that the three read apart without colour. */
function* grains(x: number, y: number, high: number, radius: number, count: number): Generator<string> {
  if (high < 2 * radius + 2) return
  for (const [u, v] of scattered(count))
    yield dot(
      x + radius + 1 + u * (wide - 2 * radius - 2),
      y + radius + 1 + v * (high - 2 * radius - 2),
      radius,
      '#fff',
    )
}

export function mixDrawing(seen: Seen): string | null {
  const parts = seen.rows('mixParts')
  const [dry, made] = [seen.one('dryVolume'), seen.one('concrete')]
  const litres = (q: Quantity): number => numberIn(q, 'L')
  const scale = (base - top) / litres(dry)
  const stack = (
    [
      ['cement', 'cementVolume', 0, '#9a9a9a', 0],
      ['sand', 'sandForMix', 1, '#e8e8e8', 1],
      ['stone', 'stoneForMix', 2, '#fff', 4],
    ] as const
  ).map(([name, word, i, fill, grain]) => ({ name, volume: seen.one(word), part: parts[i] as Quantity, fill, grain }))
  const drawn: string[] = []
  let [edge, lowest] = [top, 0]
  for (const [i, { name, volume, fill, grain }] of stack.entries()) {
    const high = litres(volume) * scale
    drawn.push(box(dryAt, edge, wide, high, fill, 1.2))
    if (grain > 0) drawn.push(...grains(dryAt, edge, high, grain, Math.round((high * wide) / (grain * 60))))
    // Clear of the label above it, with room left for those below it.
    const y = Math.min(Math.max(edge + high / 2 + 4, lowest + apart), base - 6 - apart * (stack.length - 1 - i))
    drawn.push(words(dryAt + wide + 8, y, `${name} ${show(volume)}`, 'start', 11))
    lowest = y
    edge += high
  }
  const high = litres(made) * scale
  drawn.push(
    box(madeAt, base - high, wide, high, '#ddd', 1.5),
    ...grains(madeAt, base - high, high, 4, Math.round(high / 6)),
    ...grains(madeAt, base - high, high, 1, Math.round(high)),
    line(8, base, width - 8, base, 2),
    words(dryAt + wide / 2, base + 18, 'dry, as measured', 'middle', 11),
    words(dryAt + wide / 2, base + 34, show(dry), 'middle', 12),
    words(madeAt + wide / 2, base + 18, 'concrete', 'middle', 11),
    words(madeAt + wide / 2, base + 34, show(made), 'middle', 12),
    heading(`${stack.map(({ name, part }) => `${show(part)} ${name}`).join(', ')}`),
  )
  return sheet(
    {
      width,
      height: base + 48,
      title: 'What goes in, and what it makes',
      description: `${stack.map(({ name, volume, part }) => `${show(part)} of ${name}, ${show(volume)}`).join('; ')}: ${show(dry)} dry make ${show(made)} of concrete.`,
    },
    drawn,
  )
}
