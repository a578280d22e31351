// This file is about a yard from above, drawn to scale from its corners.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, heading, onSheet, plate, shape, sheet, spread, width } from './svg.ts'

const room = 240

export function yardDrawing(seen: Seen): string | null {
  const sides = seen.rows('sides')
  const points = seen.maybe('corners') ? walked(sides, seen.rows('corners')) : cut(sides, seen.maybe('yardDiagonal'))
  if (!points) return null
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const scale = Math.min(
    (width - 150) / Math.max(Math.max(...xs) - left, 1e-9),
    room / Math.max(Math.max(...ys) - low, 1e-9),
  )
  const top = 50
  const high = (Math.max(...ys) - low) * scale
  const at = points.map(([x, y]) => [75 + (x - left) * scale, top + high - (y - low) * scale] as const)
  const parts = [shape(at, '#f4f4f4', 2), ...at.map(([x, y]) => dot(x, y, 3.5))]
  const unwritten = labelled(at, sides.map(show), parts)
  const area = seen.one('yardArea')
  parts.push(heading(`${show(area)}, ${show(seen.one('yardPerimeter'))} all round`))
  if (unwritten > 0) parts.push(aside('some lengths have no room here', top + high + 46))
  return sheet(
    {
      width,
      height: top + high + (unwritten > 0 ? 56 : 36),
      title: 'The yard from above',
      description: `A yard with sides of ${sides.map(show).join(', ')}: ${show(area)}, ${show(seen.one('yardPerimeter'))} all round.`,
    },
    parts,
  )
}

type Point = readonly [number, number]

/** Writes each side's length outside it, where it runs into no side and no other length. Gives how many found no such place. */
function labelled(at: readonly Point[], lengths: readonly string[], parts: string[]): number {
  if (at.length > 12) return lengths.length
  const next = (i: number): Point => at[(i + 1) % at.length] as Point
  // Which way round the corners go tells which side of a line is outside.
  const round = Math.sign(at.reduce((sum, [x, y], i) => sum + x * next(i)[1] - next(i)[0] * y, 0)) || 1
  const taken: { x: number; y: number; half: number }[] = []
  const isFree = (x: number, y: number, half: number): boolean =>
    !taken.some((it) => Math.abs(it.x - x) < it.half + half + 2 && Math.abs(it.y - y) < 14) &&
    !at.some(([fromX, fromY], i) => {
      const [toX, toY] = next(i)
      return Array.from({ length: 81 }, (_, k) => k / 80).some(
        (t) => Math.abs(fromX + t * (toX - fromX) - x) < half + 1 && Math.abs(fromY + t * (toY - fromY) - (y - 4)) < 9,
      )
    })
  let unwritten = 0
  at.forEach(([x, y], i) => {
    const [toX, toY] = next(i)
    const length = Math.hypot(toX - x, toY - y) || 1
    const [outX, outY] = [(round * (toY - y)) / length, (round * (x - toX)) / length]
    const text = lengths[i] as string
    const half = spread(text, 11) / 2
    for (const [far, along] of farther) {
      const [midX, midY] = [x + along * (toX - x), y + along * (toY - y)]
      const [labelX, labelY] = [onSheet(midX + outX * (far + half), text, 'middle', 11), midY + outY * (far + 6) + 4]
      if (labelY < 36 || !isFree(labelX, labelY, half)) continue
      taken.push({ x: labelX, y: labelY, half })
      parts.push(plate(labelX, labelY, text, 11))
      return
    }
    unwritten += 1
  })
  return unwritten
}

/** Where a length may stand: how far out from its side, and how far along it. */
const farther = [4, 12, 22].flatMap((far) => [0.5, 0.3, 0.7].map((along) => [far, along] as const))

function walked(sides: readonly Quantity[], corners: readonly Quantity[]): Point[] {
  let [x, y, heading] = [0, 0, 0]
  return sides.map((side, i) => {
    const here = [x, y] as const
    const length = numberIn(side, 'in')
    x += length * Math.cos(heading)
    y += length * Math.sin(heading)
    const inside = corners[i]
    if (inside) heading += Math.PI - (numberIn(inside, 'deg') * Math.PI) / 180
    return here
  })
}

/** Three sides, or four with the diagonal that cuts off the first two. */
function cut(sides: readonly Quantity[], diagonal: Quantity | undefined): Point[] | null {
  const [a, b, c, d] = sides.map((it) => numberIn(it, 'in'))
  if (a === undefined || b === undefined || c === undefined) return null
  const across = d === undefined ? c : diagonal && numberIn(diagonal, 'in')
  if (across === undefined) return null
  const apex = (base: number, near: number, far: number): Point => {
    const x = (near ** 2 + base ** 2 - far ** 2) / (2 * base)
    return [x, Math.sqrt(Math.max(0, near ** 2 - x ** 2))]
  }
  // The diagonal lies along x: the first two sides above it, the others below.
  const [bx, by] = apex(across, a, b)
  if (d === undefined)
    return [
      [0, 0],
      [bx, by],
      [across, 0],
    ]
  const [dx, dy] = apex(across, d, c)
  return [
    [0, 0],
    [bx, by],
    [across, 0],
    [dx, -dy],
  ]
}
