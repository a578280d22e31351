// This file is about reading a drawing of ours back into its parts: outlines, dots and words, in the order they are drawn.
// It reads what engine/drawings/svg.ts and its neighbours write, and no other SVG.

export type Point = readonly [x: number, y: number]

export interface Outline {
  readonly kind: 'outline'
  readonly points: readonly Point[]
  readonly isClosed: boolean
  /** How dark it is filled: 0 is white, 1 is ink; null where nothing is filled. */
  readonly fill: number | null
  readonly hasEdge: boolean
  readonly isDashed: boolean
  /** Drawn in grey: earth, grain, what only leads the eye. */
  readonly isFaint: boolean
  /** An upright box. */
  readonly isBox: boolean
}
export interface Dot {
  readonly kind: 'dot'
  readonly x: number
  readonly y: number
  readonly radius: number
  readonly fill: number | null
}
export interface Words {
  readonly kind: 'words'
  readonly x: number
  /** The line the letters stand on. */
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly size: number
  readonly text: string
}
export type Part = Outline | Dot | Words

export interface Parts {
  readonly wide: number
  readonly high: number
  readonly parts: readonly Part[]
}

/** From where to where a thing goes. */
export interface Extent {
  readonly x1: number
  readonly x2: number
  readonly y1: number
  readonly y2: number
}

/** Undefined where the drawing holds something that this file does not know. */
export function partsOf(svg: string): Parts | undefined {
  const [, wide, high] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? []
  if (!Number(wide) || !Number(high)) return undefined
  const parts: Part[] = []
  const moves: Point[] = [[0, 0]]
  for (const [, tag, told, text] of svg.matchAll(/<(\/?[a-z]+)([^>]*?)\/?>([^<]*)/g)) {
    const [right, down] = moves.at(-1) as Point
    const attribute = (name: string): string | undefined => new RegExp(` ${name}="([^"]*)"`).exec(told as string)?.[1]
    const number = (name: string): number => Number(attribute(name) ?? 0)
    const look = {
      fill: darkness(attribute('fill')),
      hasEdge: attribute('stroke') !== undefined,
      isDashed: attribute('stroke-dasharray') !== undefined,
      isFaint:
        darkness(attribute('stroke') ?? '#000') !== null && (darkness(attribute('stroke') ?? '#000') as number) < 0.8,
    }
    const outline = (points: readonly Point[], isClosed: boolean, isBox = false): void => {
      const moved = points.map(([x, y]): Point => [x + right, y + down])
      parts.push({ kind: 'outline', points: moved, isClosed, isBox, ...look })
    }
    switch (tag) {
      case 'g': {
        const [, x, y] = /^translate\(([-\d.e]+) ([-\d.e]+)\)$/.exec(attribute('transform') ?? 'translate(0 0)') ?? []
        if (x === undefined) return undefined
        moves.push([right + Number(x), down + Number(y)])
        break
      }
      case '/g':
        moves.pop()
        break
      case 'rect': {
        const [x, y, w, h] = ['x', 'y', 'width', 'height'].map(number) as [number, number, number, number]
        outline(
          [
            [x, y],
            [x + w, y],
            [x + w, y + h],
            [x, y + h],
          ],
          true,
          true,
        )
        break
      }
      case 'line':
        outline(
          [
            [number('x1'), number('y1')],
            [number('x2'), number('y2')],
          ],
          false,
        )
        break
      case 'path':
        for (const { points, isClosed } of linesOfPath(attribute('d') ?? '')) outline(points, isClosed)
        break
      case 'circle':
        parts.push({
          kind: 'dot',
          x: number('cx') + right,
          y: number('cy') + down,
          radius: number('r'),
          fill: look.fill,
        })
        break
      case 'text':
        parts.push({
          kind: 'words',
          x: number('x') + right,
          y: number('y') + down,
          anchor: (attribute('text-anchor') ?? 'start') as Words['anchor'],
          size: number('font-size'),
          text: plain(text as string),
        })
        break
      case 'svg':
      case '/svg':
      case 'title':
      case '/title':
      case 'desc':
      case '/desc':
      case '/text':
        break
      default:
        return undefined
    }
  }
  return { wide: Number(wide), high: Number(high), parts }
}

const plain = (text: string): string =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&')

/** `#cfcfcf` → 0.19, as dark as that grey is. SVG fills with ink what says nothing. */
function darkness(fill: string | undefined): number | null {
  if (fill === 'none') return null
  const [, digits] = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(fill ?? '#000') ?? []
  if (!digits) return 1
  return 1 - Number.parseInt(digits.length === 3 ? `${digits[0]}${digits[0]}` : digits.slice(0, 2), 16) / 255
}

/** The lines of a path, arcs as short straight ones. */
function linesOfPath(d: string): { points: Point[]; isClosed: boolean }[] {
  const lines: { points: Point[]; isClosed: boolean }[] = []
  let [x, y] = [0, 0]
  for (const [, command, told] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = ((told as string).match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number)
    const isMove = command === 'M'
    const line = lines.at(-1)
    if (command === 'Z' || command === 'z') {
      if (line) line.isClosed = true
      continue
    }
    const size = { M: 2, L: 2, l: 2, H: 1, h: 1, V: 1, v: 1, A: 7 }[command as string] ?? 0
    if (size === 0) return []
    for (let i = 0; i + size <= numbers.length; i += size) {
      const from: Point = [x, y]
      const [a = 0, b = 0] = numbers.slice(i)
      if (isMove || command === 'L') [x, y] = [a, b]
      else if (command === 'l') [x, y] = [x + a, y + b]
      else if (command === 'H') x = a
      else if (command === 'h') x += a
      else if (command === 'V') y = a
      else if (command === 'v') y += a
      else {
        const [, , , isLarge = 0, isRight = 0, toX = 0, toY = 0] = numbers.slice(i)
        ;[x, y] = [toX, toY]
        lines.at(-1)?.points.push(...arc(from, [x, y], a, isLarge === 1, isRight === 1))
      }
      if (isMove && i === 0) lines.push({ points: [[x, y]], isClosed: false })
      else lines.at(-1)?.points.push([x, y])
    }
  }
  return lines
}

/** Points of a circle's arc between its ends, which are left out. */
function arc([x1, y1]: Point, [x2, y2]: Point, radius: number, isLarge: boolean, isRight: boolean): Point[] {
  const [dx, dy] = [x2 - x1, y2 - y1]
  const chord = Math.hypot(dx, dy)
  if (chord === 0) return []
  const r = Math.max(radius, chord / 2)
  const off = Math.sqrt(Math.max(0, r * r - (chord * chord) / 4)) * (isLarge === isRight ? -1 : 1)
  const [cx, cy] = [(x1 + x2) / 2 - (off * dy) / chord, (y1 + y2) / 2 + (off * dx) / chord]
  const from = Math.atan2(y1 - cy, x1 - cx)
  let turn = Math.atan2(y2 - cy, x2 - cx) - from
  if (isRight && turn < 0) turn += 2 * Math.PI
  if (!isRight && turn > 0) turn -= 2 * Math.PI
  return Array.from({ length: 23 }, (_, i) => {
    const angle = from + (turn * (i + 1)) / 24
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)]
  })
}

/** The straight lines of an outline, one after the other. */
export const segments = (points: readonly Point[], isClosed: boolean): [from: Point, to: Point][] =>
  (isClosed ? [...points, points[0] as Point] : points)
    .slice(1)
    .map((to, i) => [points[i] as Point, to] satisfies [Point, Point])

export const extentOf = (points: readonly Point[]): Extent => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return { x1: Math.min(...xs), x2: Math.max(...xs), y1: Math.min(...ys), y2: Math.max(...ys) }
}
