// This file is about outlines in cells: boards, surfaces, level, upright and slanted lines, each by the signs that look most like it.
import { type Boards, drawBoard } from './boards.ts'
import { cellAt, down, left, lightest, type Paper, put, right, shade, up } from './paper.ts'
import { type Dot, type Extent, extentOf, type Outline, type Point, segments } from './parts.ts'

export function drawOutline(paper: Paper, it: Outline, boards: Boards): void {
  const at = extentOf(it.points)
  const [wide, high] = [at.x2 - at.x1, at.y2 - at.y1]
  const isStroke = it.points.length === 2 && wide > 0.5 && high > 0.5 && wide < 7 && high < 7
  const hasInside = it.isClosed && it.hasEdge
  if (hasInside && (it.fill ?? 0) > 0.8 && wide < 16 && high < 16) drawMark(paper, it, at)
  else if (isStroke && it.isFaint) drawEarth(paper, at)
  else if (isStroke) drawTick(paper, at)
  else if (isBreak(it, at)) drawAcross(paper, at, '≈')
  else if (boards.has(it)) drawBoard(paper, it, boards.get(it) ?? 1)
  // What is thinner than a cell is one stroke of it, and not two that fall together.
  else if (hasInside && it.isBox && high < 1.15 * paper.cell.high) {
    if (wide > 6 * paper.cell.wide) drawAcross(paper, at, '═')
    else drawBlock(paper, at, shade(it.fill ?? 0))
  } else if (hasInside && high > 1.5 * paper.cell.high && wide < 1.5 * paper.cell.wide) drawAlong(paper, at, '║')
  else drawLines(paper, it, at)
}

function drawLines(paper: Paper, it: Outline, at: Extent): void {
  const dark = it.fill ?? 0
  // White without an edge lies under words, which keep their own place free.
  const isPlate = dark < lightest && !it.hasEdge
  const filled = it.fill === null || it.points.length < 3 || isPlate ? 0 : fillIn(paper, it, at)
  if (!it.hasEdge) return
  // A broad board that lies aslant is plainer as a surface than between two ragged edges.
  const isSurface = dark > lightest && filled >= paper.column(at.x2) - paper.column(at.x1) && isAslant(paper, it)
  const slanted: Point[][] = []
  let isOn = false
  for (const [a, b] of segments(it.points, it.isClosed)) {
    const isLevel = Math.abs(a[1] - b[1]) < 0.5
    const isUpright = Math.abs(a[0] - b[0]) < 0.5
    if (isLevel) drawLevel(paper, a[0], b[0], (a[1] + b[1]) / 2, it.isDashed)
    else if (isUpright) drawUpright(paper, (a[0] + b[0]) / 2, a[1], b[1], it.isDashed)
    else if (isOn) slanted.at(-1)?.push(b)
    else slanted.push([a, b])
    isOn = !isLevel && !isUpright
  }
  if (!isSurface) for (const points of slanted) drawSlanted(paper, points, it.isDashed)
}

/** The zigzag where something goes on that is not drawn. */
const isBreak = ({ points, isClosed }: Outline, { y1, y2 }: Extent): boolean =>
  !isClosed &&
  points.length === 6 &&
  y2 - y1 < 14 &&
  [0, 5].every((i) => Math.abs((points[i]?.[1] ?? 0) - (y1 + y2) / 2) < 1)

const isAslant = (paper: Paper, { points, isClosed }: Outline): boolean =>
  segments(points, isClosed).some(([a, b]) => {
    const [from, to] = [paper.place(a), paper.place(b)]
    const [wide, high] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])]
    return wide > 3 && high > 1.5 && high < 3 * wide
  })

/** An arrow’s head by where its tip is; any other small thing in ink is a square. */
function drawMark(paper: Paper, { points }: Outline, { x1, x2, y1, y2 }: Extent): void {
  const [column, row] = [paper.column((x1 + x2) / 2), paper.row((y1 + y2) / 2)]
  const [x, y] = points.length === 3 ? tipOf(points as [Point, Point, Point]) : [x2, y2]
  const [dx, dy] = [x - (x1 + x2) / 2, y - (y1 + y2) / 2]
  if (points.length !== 3) put(paper, column, row, '■')
  else put(paper, column, row, Math.abs(dx) >= Math.abs(dy) ? (dx > 0 ? '>' : '<') : dy > 0 ? 'v' : '^')
}

/** The corner whose two sides are alike. */
function tipOf(points: readonly [Point, Point, Point]): Point {
  const side = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])
  const [a, b, c] = points
  const unlike = [side(a, b) - side(a, c), side(b, a) - side(b, c), side(c, a) - side(c, b)].map(Math.abs)
  return points[unlike.indexOf(Math.min(...unlike))] as Point
}

function drawTick(paper: Paper, { x1, x2, y1, y2 }: Extent): void {
  const cell = cellAt(paper, paper.column((x1 + x2) / 2), paper.row((y1 + y2) / 2))
  if (cell) cell.isTick = true
}

/** A stroke of earth; under the line of the ground, where they fall into one cell. */
function drawEarth(paper: Paper, { x1, x2, y1, y2 }: Extent): void {
  const [column, row] = [paper.column((x1 + x2) / 2), paper.row((y1 + y2) / 2)]
  const below = cellAt(paper, column, row)?.arms === 0 ? row : row + 1
  const cell = cellAt(paper, column, below)
  if (cell && cell.arms === 0 && cell.sign === '') cell.sign = '/'
}

function drawAcross(paper: Paper, { x1, x2, y1, y2 }: Extent, sign: string): void {
  for (let c = paper.column(x1); c <= paper.column(x2); c++) put(paper, c, paper.row((y1 + y2) / 2), sign)
}

function drawAlong(paper: Paper, { x1, x2, y1, y2 }: Extent, sign: string): void {
  for (let r = paper.row(y1); r <= paper.row(y2); r++) put(paper, paper.column((x1 + x2) / 2), r, sign)
}

/** From above, or too low to have an inside: `[ ]`, or its shade. */
function drawBlock(paper: Paper, { x1, x2, y1, y2 }: Extent, filled: string): void {
  const [from, to, row] = [paper.column(x1), paper.column(x2), paper.row((y1 + y2) / 2)]
  for (let c = from; c <= to; c++)
    put(paper, c, row, filled !== '' || from === to ? filled || '■' : c === from ? '[' : c === to ? ']' : ' ')
}

/** Fills what lies inside, and says how many cells that is. */
function fillIn(paper: Paper, { points, fill }: Outline, { x1, x2, y1, y2 }: Extent): number {
  const sign = shade(fill ?? 0)
  let filled = 0
  for (let r = paper.row(y1); r <= paper.row(y2); r++)
    for (let c = paper.column(x1); c <= paper.column(x2); c++)
      if (isInside(paper.middle(c, r), points)) {
        put(paper, c, r, sign)
        filled++
      }
  return filled
}

function isInside([x, y]: Point, points: readonly Point[]): boolean {
  let inside = false
  for (const [[x1, y1], [x2, y2]] of segments(points, true))
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside
  return inside
}

function drawLevel(paper: Paper, xa: number, xb: number, y: number, isDashed: boolean): void {
  const [from, to, row] = [paper.column(Math.min(xa, xb)), paper.column(Math.max(xa, xb)), paper.row(y)]
  for (let c = from; c <= to; c++)
    join(paper, c, row, (c > from ? left : 0) | (c < to ? right : 0), isDashed ? '╌' : '')
}

function drawUpright(paper: Paper, x: number, ya: number, yb: number, isDashed: boolean): void {
  const [from, to, column] = [paper.row(Math.min(ya, yb)), paper.row(Math.max(ya, yb)), paper.column(x)]
  for (let r = from; r <= to; r++)
    join(paper, column, r, (r > from ? up : 0) | (r < to ? down : 0), isDashed ? '┆' : '')
}

function join(paper: Paper, column: number, row: number, arms: number, dash: string): void {
  const cell = cellAt(paper, column, row)
  if (!cell) return
  if (dash !== '') {
    if (cell.arms === 0 && cell.sign === '') cell.sign = dash
  } else if (arms !== 0) {
    cell.arms |= arms
    cell.sign = ''
  }
}

/** A line that is neither level nor upright, or a curve: in each cell the sign that lies most like it. */
function drawSlanted(paper: Paper, points: readonly Point[], isDashed: boolean): void {
  const steps: Step[] = []
  for (const [a, b] of segments(points, false)) {
    const [[u1, v1], [u2, v2]] = [paper.place(a), paper.place(b)]
    const count = Math.max(1, Math.ceil(Math.max(Math.abs(u2 - u1), Math.abs(v2 - v1)) * 16))
    for (let i = 0; i <= count; i++) {
      const at: Point = [u1 + ((u2 - u1) * i) / count, v1 + ((v2 - v1) * i) / count]
      const [column, row] = [Math.floor(at[0]), Math.floor(at[1])]
      const last = steps.at(-1)
      if (last && last.column === column && last.row === row) last.to = at
      else steps.push({ column, row, from: at, to: at })
    }
  }
  steps.forEach((step, i) => {
    const cell = cellAt(paper, step.column, step.row)
    const isFree = cell && !cell.isBoard && [0, up, right, down, left].includes(cell.arms)
    if (!isFree || (isDashed && cell.sign !== '') || isShorter(step, steps[i - 1], steps[i + 1])) return
    ;[cell.arms, cell.sign] = [0, signFor(step.from, step.to, step.row)]
  })
}

interface Step {
  readonly column: number
  readonly row: number
  readonly from: Point
  to: Point
}

/** Cells up for one across, from which a line is drawn row by row. */
const steep = 0.4
const long = ({ from, to }: Step): number => Math.hypot(to[0] - from[0], to[1] - from[1])

/** A steep line has one sign in a row, and a flat one one in a column: where it crosses from one to the next, the cell that it is longer in. */
function isShorter(it: Step, before: Step | undefined, after: Step | undefined): boolean {
  const [from, to] = [(before ?? it).from, (after ?? it).to]
  const isSteep = Math.abs(to[1] - from[1]) > steep * Math.abs(to[0] - from[0])
  return [before, after].some(
    (other) =>
      other !== undefined &&
      (isSteep ? other.row === it.row : other.column === it.column) &&
      (long(other) > long(it) || (long(other) === long(it) && other === after)),
  )
}

function signFor(from: Point, to: Point, row: number): string {
  const [wide, high] = [to[0] - from[0], to[1] - from[1]]
  if (Math.abs(high) > 3 * Math.abs(wide)) return '│'
  if (Math.abs(high) > steep * Math.abs(wide)) return wide > 0 === high > 0 ? '\\' : '/'
  const middle = (from[1] + to[1]) / 2 - row
  return middle < 0.34 ? '¯' : middle < 0.67 ? '─' : '_'
}

export function drawDot(paper: Paper, { x, y, radius, fill }: Dot): void {
  const cell = cellAt(paper, paper.column(x), paper.row(y))
  if (cell?.arms !== 0) return
  if (radius < 1.2) cell.sign ||= '.'
  else cell.sign = (fill ?? 0) > 0.5 ? '●' : 'o'
}
