// This file is about boards in a row, as pickets stand: each as wide as the others like it, and a gap seen wherever there is one.
import { cellAt, down, left, type Paper, right, shade, up } from './paper.ts'
import { extentOf, type Outline } from './parts.ts'

/** How many cells each takes across. */
export type Boards = ReadonlyMap<Outline, number>

/** As many in a drawing are a row; fewer are posts, and drawn by their edges. */
const fewest = 5

/** So much of a cell is no gap that could be seen. */
const hairline = 0.35

/** Undefined where cells are too wide to show a gap that there is. */
export function boardsOf(outlines: readonly Outline[], paper: Paper): Boards | undefined {
  const boards = outlines.filter((it) => isBoard(it, paper.cell.wide)).map((it) => ({ it, ...extentOf(it.points) }))
  if (boards.length < fewest) return new Map()
  const cells = new Map<number, number>()
  const alike = (board: { x1: number; x2: number }): number => Math.round(2 * (board.x2 - board.x1))
  for (const board of boards) {
    const next = boards
      .filter((it) => it.x1 > board.x2 - 0.5 && it.y1 < board.y2 && it.y2 > board.y1)
      .reduce<(typeof boards)[number] | undefined>((a, b) => (a && a.x1 <= b.x1 ? a : b), undefined)
    const isTight = next !== undefined && next.x1 - board.x2 < hairline * paper.cell.wide
    const room = next ? paper.column(next.x1) - paper.column(board.x1) - (isTight ? 0 : 1) : Number.POSITIVE_INFINITY
    const wide = Math.max(1, Math.round((board.x2 - board.x1) / paper.cell.wide))
    if (room < 1) return undefined
    cells.set(alike(board), Math.min(wide, room, cells.get(alike(board)) ?? wide))
  }
  return new Map(boards.map((board) => [board.it, cells.get(alike(board)) ?? 1]))
}

/** Tall and narrow, seen from the front. */
const isBoard = ({ points, isClosed, hasEdge, isDashed }: Outline, cellWide: number): boolean => {
  const { x1, x2, y1, y2 } = extentOf(points)
  return isClosed && hasEdge && !isDashed && x2 - x1 < 6 * cellWide && y2 - y1 > 2.5 * (x2 - x1) && y2 - y1 > 40
}

/** A board takes the cells that it covers, and the gap beside it those that it leaves: so 2 to 1 is seen as 2 to 1. */
export function drawBoard(paper: Paper, { points, fill }: Outline, wide: number): void {
  const { x1, x2, y1, y2 } = extentOf(points)
  const [first, foot] = [paper.column(x1), paper.row(y2)]
  const last = first + wide - 1
  const topAt = (x: number): number => Math.min(...points.filter((it) => Math.abs(it[0] - x) < 0.5).map(([, y]) => y))
  const shoulder = Math.min(topAt(x1), topAt(x2))
  const isPointed = paper.place([0, shoulder])[1] - paper.place([0, y1])[1] > 0.4
  const top = paper.row(isPointed ? y1 : shoulder)
  const filled = shade(fill ?? 0)
  for (let c = first; c <= last; c++)
    for (let r = top; r <= foot; r++) {
      const cell = cellAt(paper, c, r)
      if (!cell) continue
      const isSide = c === first || c === last
      const isEnd = r === top || r === foot
      Object.assign(cell, { arms: 0, sign: filled, isBoard: true })
      // Too narrow to have an inside, a post is told from a picket by its shade.
      if (filled !== '' && wide < 3) continue
      if (wide === 1) cell.sign = r === top && isPointed ? '^' : '║'
      else if (r === top && isPointed) cell.sign = c === first ? '/' : c === last ? '\\' : '─'
      else if (isEnd || isSide) {
        cell.sign = ''
        if (isEnd) cell.arms |= (c > first ? left : 0) | (c < last ? right : 0)
        if (isSide) cell.arms |= (r > top ? up : 0) | (r < foot ? down : 0)
      }
    }
}
