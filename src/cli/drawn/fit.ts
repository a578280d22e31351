// This file is about where the cells lie over a drawing: so that equal distances come out equal, and few lines fall into one cell.
import { type Outline, segments } from './parts.ts'

/** How much of the drawing a cell holds in one direction, and how far the cells are shifted along it. */
export interface Cells {
  readonly size: number
  readonly shift: number
}

/** A size that cells may have, and what it costs to have it rather than the usual one. */
export interface Size {
  readonly size: number
  readonly cost: number
}

/** Where upright (0) or level (1) lines stand, from the least on. */
export function edges(outlines: readonly Outline[], axis: 0 | 1): number[] {
  const found = new Set<number>()
  for (const { points, isClosed, hasEdge, isDashed, isFaint } of outlines)
    if (hasEdge && !isDashed && !isFaint)
      for (const [a, b] of segments(points, isClosed))
        if (Math.abs(a[axis] - b[axis]) < 0.5 && Math.abs(a[axis === 0 ? 1 : 0] - b[axis === 0 ? 1 : 0]) > 4)
          found.add(Math.round(a[axis] * 10) / 10)
  return [...found].sort((a, b) => a - b)
}

/** The cells that there may be, from those on: in which equal distances come out as equal as they can, and the fewest lines fall into one. */
export function cellsFor(places: readonly number[], sizes: readonly Size[]): Cells[] {
  const shifts = [0, 0.2, 0.4, 0.6, 0.8]
  return sizes
    .flatMap(({ size, cost }) =>
      shifts.map((shift) => ({ size, shift, off: unevenness(places, { size, shift }) + cost / 2 })),
    )
    .sort((a, b) => a.off - b.off)
}

function unevenness(places: readonly number[], { size, shift }: Cells): number {
  let off = 0
  const seen = new Map<number, number>()
  for (let i = 1; i < places.length; i++) {
    const [from, to] = [places[i - 1] as number, places[i] as number]
    const distance = (to - from) / size
    const cells = Math.floor(to / size + shift) - Math.floor(from / size + shift)
    const before = seen.get(Math.round(2 * (to - from))) ?? cells
    seen.set(Math.round(2 * (to - from)), before)
    off += (cells - distance) ** 2 + (cells === 0 && distance > 0.4 ? 1 : 0) + (cells === before ? 0 : 0.5)
  }
  return off / Math.max(1, places.length)
}
