// This file is about a drawing in characters: the same lines and words, each in the cell of the terminal where it falls.
//
//   │░│╷─╷ ╷─╷│░│      a line is joined to what it meets, a board is as wide as it is to the scale of the drawing,
//   │░││ │═│ ││░│      and the words stand where they stand on the sheet. What would lose a word, or run its lines
//   │░│└─┘ └─┘│░│      into one another, is not drawn at all.
import { type Boards, boardsOf } from './boards.ts'
import { type Cells, cellsFor, edges, type Size } from './fit.ts'
import { drawDot, drawOutline } from './outlines.ts'
import { linesOf, newPaper, type Paper, write } from './paper.ts'
import { type Parts, partsOf } from './parts.ts'

/** With fewer columns the words of a drawing do not fit beside its lines. */
const fewest = 56
/** As wide as it is drawn where nothing asks for more. */
const usual = 72
/** More would make it taller than a screen. */
const most = 92
/** A cell is about twice as high as wide; how much it may be off, so that lines fall better. */
const upright = 2
const stretches = [0.94, 0.97, 1, 1.03, 1.06]

/** The lines of it; undefined where characters cannot draw it in so many columns. */
export function inCharacters(svg: string, columns: number): string[] | undefined {
  const drawing = partsOf(svg)
  if (!drawing || columns < fewest) return undefined
  const outlines = drawing.parts.filter((it) => it.kind === 'outline')
  const levels = edges(outlines, 1)
  for (const across of cellsFor(edges(outlines, 0), sizesAcross(drawing.wide, columns))) {
    const [along] = cellsFor(
      levels,
      stretches.map((it) => ({ size: across.size * upright * it, cost: Math.abs(it - 1) })),
    )
    const paper = newPaper(drawing, across, along as Cells)
    const boards = boardsOf(outlines, paper)
    if (boards) return drawnOn(paper, drawing, boards, columns)
  }
  return undefined
}

function drawnOn(paper: Paper, drawing: Parts, boards: Boards, columns: number): string[] | undefined {
  for (const it of drawing.parts)
    if (it.kind === 'outline') drawOutline(paper, it, boards)
    else if (it.kind === 'dot') drawDot(paper, it)
  for (const it of drawing.parts) if (it.kind === 'words' && !write(paper, it)) return undefined
  const lines = linesOf(paper)
  return lines.some((it) => [...it].length > columns) ? undefined : lines
}

function sizesAcross(wide: number, columns: number): Size[] {
  const greatest = Math.min(most, columns)
  return Array.from({ length: 2 * (greatest - fewest) + 1 }, (_, i) => {
    const count = fewest + i / 2
    return { size: wide / count, cost: Math.abs(count - usual) / usual }
  })
}
