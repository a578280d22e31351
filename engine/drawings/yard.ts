// This file is about a yard from above, drawn to scale from its corners.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { dot, shape, sheet, words } from './svg.ts'

const width = 400
const room = 270

export function yardDrawing(seen: Seen): string | null {
  const sides = seen.rows('sides')
  const points = seen.maybe('corners') ? walked(sides, seen.rows('corners')) : cut(sides, seen.maybe('yardDiagonal'))
  if (!points) return null
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const scale = Math.min(
    (width - 120) / Math.max(Math.max(...xs) - left, 1e-9),
    room / Math.max(Math.max(...ys) - low, 1e-9),
  )
  const top = 50
  const high = (Math.max(...ys) - low) * scale
  const at = points.map(([x, y]) => [60 + (x - left) * scale, top + high - (y - low) * scale] as const)
  const middle = [
    at.reduce((sum, [x]) => sum + x, 0) / at.length,
    at.reduce((sum, [, y]) => sum + y, 0) / at.length,
  ] as const
  const parts = [shape(at, '#f4f4f4', 2)]
  at.forEach(([x, y], i) => {
    const [u, v] = at[(i + 1) % at.length] as readonly [number, number]
    parts.push(dot(x, y, 3.5))
    // Each side's length stands outside it.
    const [mx, my] = [(x + u) / 2, (y + v) / 2]
    const [dx, dy] = [mx - middle[0], my - middle[1]]
    const size = Math.hypot(dx, dy) || 1
    if (at.length <= 12)
      parts.push(
        words(
          mx + (dx / size) * 14,
          my + (dy / size) * 14 + 4,
          show(sides[i] as Quantity),
          Math.abs(dx) < size * 0.5 ? 'middle' : dx > 0 ? 'start' : 'end',
          11,
        ),
      )
  })
  const area = seen.one('yardArea')
  parts.push(words(width / 2, 22, `${show(area)}, ${show(seen.one('yardPerimeter'))} all round`, 'middle', 13, true))
  return sheet(
    {
      width,
      height: top + high + 40,
      title: 'The yard from above',
      description: `A yard with sides of ${sides.map(show).join(', ')}: ${show(area)}, ${show(seen.one('yardPerimeter'))} all round.`,
    },
    parts,
  )
}

type Point = readonly [number, number]

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
