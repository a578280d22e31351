// This file is about a paper of cells, each the room of one letter: lines that join in it, signs, words, and what it reads as at last.
import type { Cells } from './fit.ts'
import type { Parts, Point, Words } from './parts.ts'

export interface Cell {
  /** Which ways lines leave it. */
  arms: number
  /** What stands in it where no line does. */
  sign: string
  isWord: boolean
  /** A dimension ends here. */
  isTick: boolean
  isBoard: boolean
}
export interface Paper {
  readonly cells: readonly (readonly Cell[])[]
  readonly column: (x: number) => number
  readonly row: (y: number) => number
  /** In cells, from the top left corner. */
  readonly place: (point: Point) => Point
  /** In the drawing, the middle of a cell. */
  readonly middle: (column: number, row: number) => Point
  readonly cell: { readonly wide: number; readonly high: number }
}

export const [up, right, down, left] = [1, 2, 4, 8]
/** By its arms: 3 leaves upwards and to the right. A single arm is the end of a line. */
const joints = ' ╵╶└╷│┌├╴┘─┴┐┤┬┼'

export function newPaper({ wide, high }: Parts, across: Cells, along: Cells): Paper {
  const columns = Math.floor(wide / across.size + across.shift) + 1
  const rows = Math.floor(high / along.size + along.shift) + 1
  const within = (it: number, count: number): number => Math.max(0, Math.min(count - 1, Math.floor(it)))
  return {
    cells: Array.from({ length: rows }, () =>
      Array.from({ length: columns }, () => ({ arms: 0, sign: '', isWord: false, isTick: false, isBoard: false })),
    ),
    column: (x) => within(x / across.size + across.shift, columns),
    row: (y) => within(y / along.size + along.shift, rows),
    place: ([x, y]) => [x / across.size + across.shift, y / along.size + along.shift],
    middle: (column, row) => [(column + 0.5 - across.shift) * across.size, (row + 0.5 - along.shift) * along.size],
    cell: { wide: across.size, high: along.size },
  }
}

export const cellAt = (paper: Paper, column: number, row: number): Cell | undefined => paper.cells[row]?.[column]

export function put(paper: Paper, column: number, row: number, sign: string): void {
  const cell = cellAt(paper, column, row)
  if (cell) [cell.sign, cell.arms] = [sign, 0]
}

/** Where they stand on the sheet, or a row beside it where other words stand already; false where there is no room. */
export function write(paper: Paper, words: Words): boolean {
  const { x, y, anchor, size, text } = words
  const signs = [...text]
  const columns = paper.cells[0]?.length ?? 0
  if (signs.length > columns) return writeInTwo(paper, words)
  const [u, v] = paper.place([x, y - size * 0.36])
  const first = u - (anchor === 'start' ? 0 : anchor === 'middle' ? signs.length / 2 : signs.length)
  const shifts = anchor === 'start' ? [0, 1, 2, -1] : anchor === 'end' ? [0, -1, -2, 1] : [0, 1, -1]
  const starts = shifts.map((it) => Math.max(0, Math.min(columns - signs.length, Math.round(first) + it)))
  const row = Math.floor(v)
  const rows = v - row > 0.5 ? [row, row + 1, row - 1] : [row, row - 1, row + 1]
  const places = rows.flatMap((r) =>
    paper.cells[r] ? starts.map((start) => ({ line: paper.cells[r] as Cell[], start })) : [],
  )
  const under = (it: Place): Cell[] => it.line.slice(it.start, it.start + signs.length)
  const beside = (it: Place): (Cell | undefined)[] => [it.line[it.start - 1], it.line[it.start + signs.length]]
  const free = places.filter((it) => [...under(it), ...beside(it)].every((cell) => !cell?.isWord))
  // Best over no corner of a box and touching no line at its ends, unless it stands in one.
  const open = free.filter((it) => !under(it).some((cell) => isCorner(cell.arms)))
  const isClear = (it: Place): boolean =>
    beside(it).every((cell) => !cell || (cell.arms === 0 && cell.sign.trim() === ''))
  const inRow = (it: Place): boolean => it.line === (open[0] ?? free[0])?.line
  const place =
    open.find((it) => inRow(it) && isClear(it)) ?? open[0] ?? free.find((it) => inRow(it) && isClear(it)) ?? free[0]
  if (!place) return false
  for (const [i, cell] of under(place).entries()) Object.assign(cell, { sign: signs[i], arms: 0, isWord: true })
  for (const cell of beside(place))
    if (cell && !cell.isTick && cell.arms === (left | right)) Object.assign(cell, { sign: ' ', arms: 0 })
  return true
}

interface Place {
  readonly line: Cell[]
  readonly start: number
}

/** What is too long for one row stands in two, one under the other. */
function writeInTwo(paper: Paper, it: Words): boolean {
  const middle = it.text.indexOf(' ', Math.floor(it.text.length / 2))
  const halves = [it.text.slice(0, middle), it.text.slice(middle + 1)]
  if (middle < 0 || halves.some((half) => [...half].length > (paper.cells[0]?.length ?? 0))) return false
  return halves.every((text, i) => write(paper, { ...it, text, y: it.y + (i - 0.5) * paper.cell.high }))
}

export function linesOf({ cells }: Paper): string[] {
  const rows = cells.map((row, r) =>
    row
      .map((cell, c) => signOf(cell, around(cells, c, r)))
      .join('')
      .trimEnd(),
  )
  // Height that holds nothing new is left out: it is not to scale for being blank.
  const kept = rows.filter((row, i) => i === 0 || row !== rows[i - 1] || /[^┆ ]/.test(row))
  if (kept[0] === '') kept.shift()
  if (kept.at(-1) === '') kept.pop()
  const indent = Math.min(...kept.filter((it) => it !== '').map((it) => it.length - it.trimStart().length))
  return kept.map((it) => it.slice(indent))
}

interface Around {
  /** Ways by which a line comes in from the next cell. */
  readonly into: number
  /** Ways that lead to a cell with no line in it. */
  readonly empty: number
}

function around(cells: Paper['cells'], column: number, row: number): Around {
  const beside: [way: number, back: number, cell: Cell | undefined][] = [
    [left, right, cells[row]?.[column - 1]],
    [right, left, cells[row]?.[column + 1]],
    [up, down, cells[row - 1]?.[column]],
    [down, up, cells[row + 1]?.[column]],
  ]
  const ways = (holds: (cell: Cell, back: number) => boolean): number =>
    beside.reduce((sum, [way, back, cell]) => sum | (cell && holds(cell, back) ? way : 0), 0)
  return { into: ways((it, back) => (it.arms & back) !== 0), empty: ways((it) => it.arms === 0 && !it.isWord) }
}

/** A surface drawn over a line cuts it off: at its edge the line ends, and behind the edge there is none. */
function signOf({ arms, sign, isTick }: Cell, { into, empty }: Around): string {
  if (sign !== '') return sign
  if (arms === 0) return isTick ? '/' : ' '
  const led = arms & ~empty
  const goesOn = (led & (led - 1)) !== 0
  const all = (goesOn ? led : arms) | into
  const crossed = (all & (up | down)) === 0 ? all | up | down : (all & (left | right)) === 0 ? all | left | right : all
  return joints[isTick ? crossed : all] as string
}

/** A line turns or branches here. */
const isCorner = (arms: number): boolean => (arms & (up | down)) !== 0 && (arms & (left | right)) !== 0

/** As dark as this, a surface is still the white of the paper. */
export const lightest = 0.12
export const shade = (dark: number): string => (dark < lightest ? '' : dark < 0.5 ? '░' : dark < 0.85 ? '▒' : '█')
