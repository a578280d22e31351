// This file is about what is printed at its true size: cut over as few pages as it takes, with marks to join them by and a length to check the printer by.
//
//      A1             ┊         A2
//   ┌─────────────────┊──┐   ┌──┊─────────────┐
//   │                 ◇  │   │  ◇             │     A2 is cut along its first dashed line and laid on the last one of A1:
//   │                 ┊  │   │  ┊             │     both are the same line of the drawing, and so are the marks on it.
//   └─────────────────┊──┘   └──┊─────────────┘
import { drawAt, type Draw, type Frame } from './drawing.ts'
import type { Paper } from './paper.ts'
import { broken, lineHeight, write } from './type.ts'

const point = 72 / 25.4
/** Millimetres that neighbours have in common. */
const overlap = 12
const label = { size: 15, weight: 'bold' } as const
const labelHigh = 24
const text = { size: 11.5 }
const checkHigh = 62

interface Full {
  readonly svg: string
  readonly wide: number
  readonly high: number
  /** From where to where along it words stand. */
  readonly words?: readonly (readonly [from: number, to: number])[]
  readonly caption: string
}

/** How it is cut: pieces across and down, and how many of them share a page. Sizes in millimetres. */
interface Cut {
  readonly landscape: boolean
  /** Where each piece of a row begins, and how wide it is. */
  readonly across: readonly { readonly from: number; readonly wide: number }[]
  readonly down: number
  readonly pieceHigh: number
  readonly perPage: number
}

export function placeFullSize(paper: Paper, draw: Draw, full: Full): void {
  const cuts = [false, true].map((landscape) => cutFor(paper, full, landscape))
  const cut = cuts.reduce((best, it) => (pagesOf(it) < pagesOf(best) ? it : best))
  const pieces = cut.across.length * cut.down
  let onPage = cut.perPage
  for (let row = 0; row < cut.down; row++)
    for (let column = 0; column < cut.across.length; column++) {
      if (onPage === cut.perPage) {
        beginTilePage(paper, cut, wordsOf(full, pieces))
        onPage = 0
      }
      placePiece(paper, draw, full, cut, row, column)
      onPage++
    }
  // Nothing else stands beside what has to be cut out.
  paper.close()
}

const wordsOf = ({ caption, wide, high }: Full, pieces: number): string =>
  pieces === 1
    ? `${caption} True size.`
    : `${caption} True size, ${Math.round(wide)} by ${Math.round(high)} mm in ${pieces} pieces. Cut each piece along its dashed line with the scissors and lay it on the dashed line of the piece before, mark on mark.`

function cutFor(paper: Paper, full: Full, landscape: boolean): Cut {
  const words = broken(paper.doc, wordsOf(full, 2), text, paper.widthWhen(landscape)).length * lineHeight(text.size) + 8
  const width = paper.widthWhen(landscape) / point
  const free = paper.heightWhen(landscape) - words - checkHigh
  const height = (free - labelHigh) / point
  const down = piecesFor(full.high, height)
  const pieceHigh = down === 1 ? full.high : height
  const perPage = down === 1 ? Math.max(1, Math.floor(free / (labelHigh + full.high * point + 8))) : 1
  return { landscape, across: acrossIn(full, width), down, pieceHigh, perPage }
}

const piecesFor = (length: number, room: number): number =>
  length <= room ? 1 : Math.ceil((length - overlap) / (room - overlap))
const pagesOf = ({ across, down, perPage }: Cut): number => Math.ceil((across.length * down) / perPage)

/** Each piece as wide as the page, or a little less where words stand in what it has in common with the next. */
function acrossIn({ wide, words = [] }: Full, room: number): Cut['across'] {
  const pieces: { from: number; wide: number }[] = []
  const isFree = (end: number): boolean => words.every(([from, to]) => end < from || end - overlap > to)
  let from = 0
  while (wide - from > room) {
    const most = from + room
    let end = most
    while (end > from + room / 2 && !isFree(end)) end -= 0.5
    if (!isFree(end)) end = most
    pieces.push({ from, wide: end - from })
    from = end - overlap
  }
  return [...pieces, { from, wide: wide - from }]
}

function beginTilePage(paper: Paper, cut: Cut, words: string): void {
  paper.open(cut.landscape)
  if (!paper.isFresh) paper.newPage()
  for (const line of broken(paper.doc, words, text, paper.width)) {
    write(paper.doc, line, paper.left, paper.y, text)
    paper.y += lineHeight(text.size)
  }
  paper.y += 8
  checkLength(paper)
}

/** A letter for each row, a number for each piece in it: A1, A2 … B1. */
const nameOf = (row: number, column: number): string =>
  `${row >= 26 ? String.fromCharCode(64 + Math.floor(row / 26)) : ''}${String.fromCharCode(65 + (row % 26))}${column + 1}`

function placePiece(paper: Paper, draw: Draw, full: Full, cut: Cut, row: number, column: number): void {
  const { doc, left } = paper
  const { from, wide } = cut.across[column] as Cut['across'][number]
  const under = row * (cut.pieceHigh - overlap)
  const high = Math.min(cut.pieceHigh, full.high - under)
  // The first part of the line above a piece is the scissors'.
  const beside = left + overlap * point
  write(doc, nameOf(row, column), beside, paper.y, label)
  const onward = [
    column + 1 < cut.across.length ? `right of it: ${nameOf(row, column + 1)}` : '',
    row + 1 < cut.down ? `below it: ${nameOf(row + 1, column)}` : '',
  ].filter((it) => it !== '')
  write(doc, onward.join(' · '), beside + 46, paper.y + 4, { size: 10.5 })
  const frame: Frame = { x: left, y: paper.y + labelHigh, width: wide * point, height: high * point }
  doc.save()
  doc.rect(frame.x, frame.y, frame.width, frame.height).clip()
  drawAt(paper, draw, full.svg, {
    x: frame.x - from * point,
    y: frame.y - under * point,
    width: full.wide * point,
    height: full.high * point,
  })
  doc.restore()
  corners(doc, frame)
  const half = (overlap / 2) * point
  if (column > 0) joinDown(doc, frame, frame.x + half, true)
  if (column + 1 < cut.across.length) joinDown(doc, frame, frame.x + frame.width - half, false)
  if (row > 0) joinAcross(doc, frame, frame.y + half, true)
  if (row + 1 < cut.down) joinAcross(doc, frame, frame.y + frame.height - half, false)
  paper.y = frame.y + frame.height + 8
}

type Doc = PDFKit.PDFDocument

function corners(doc: Doc, { x, y, width, height }: Frame): void {
  doc.lineWidth(0.6).strokeColor('#000').undash()
  for (const [cx, out] of [
    [x, 1],
    [x + width, -1],
  ] as const)
    for (const [cy, down] of [
      [y, 1],
      [y + height, -1],
    ] as const)
      doc
        .moveTo(cx + 10 * out, cy)
        .lineTo(cx, cy)
        .lineTo(cx, cy + 10 * down)
        .stroke()
}

function joinDown(doc: Doc, { y, height }: Frame, x: number, isCut: boolean): void {
  dashed(doc, x, y, x, y + height)
  for (const at of [0.25, 0.75]) mark(doc, x, y + height * at)
  if (isCut) write(doc, '✂', x, y - 13, { size: 12 }, 'middle')
}

function joinAcross(doc: Doc, { x, width }: Frame, y: number, isCut: boolean): void {
  dashed(doc, x, y, x + width, y)
  for (const at of [0.25, 0.75]) mark(doc, x + width * at, y)
  if (isCut) write(doc, '✂', x - 14, y - 8, { size: 12 })
}

const dashed = (doc: Doc, x1: number, y1: number, x2: number, y2: number): void => {
  doc.moveTo(x1, y1).lineTo(x2, y2).lineWidth(0.7).strokeColor('#000').dash(5, { space: 3 }).stroke().undash()
}

const mark = (doc: Doc, x: number, y: number): void => {
  const reach = 6
  doc
    .moveTo(x - reach, y)
    .lineTo(x, y - reach)
    .lineTo(x + reach, y)
    .lineTo(x, y + reach)
    .closePath()
    .lineWidth(0.7)
    .strokeColor('#000')
    .undash()
    .stroke()
}

/** A length in millimetres and one in inches at the foot of the page: a printer that shrinks to fit is found out by a rule. */
function checkLength({ doc, left, bottom, width }: Paper): void {
  const y = bottom - checkHigh + 26
  const rule = (length: number, step: number, count: number, down: number): void => {
    doc.lineWidth(0.9).strokeColor('#000').undash()
    doc
      .moveTo(left, y)
      .lineTo(left + length, y)
      .stroke()
    for (let i = 0; i <= count; i++) {
      const reach = (i === 0 || i === count ? 10 : 5) * down
      const x = left + i * step
      doc
        .moveTo(x, y)
        .lineTo(x, y + reach)
        .stroke()
    }
  }
  rule(100 * point, 10 * point, 10, -1)
  rule(4 * 72, 72, 4, 1)
  write(doc, '100 mm', left + 50 * point, y - 19, { size: 10.5, weight: 'bold' }, 'middle')
  write(doc, '4 in', left + 2 * 72, y + 7, { size: 10.5, weight: 'bold' }, 'middle')
  const words =
    'Measure this line: 100 mm above, 4 in below. If it is not, print at 100 %, with nothing fitted to the page.'
  broken(doc, words, { size: 10.5 }, width - 4 * 72 - 24).forEach((line, i) => {
    write(doc, line, left + 4 * 72 + 24, y - 20 + i * 13.5, { size: 10.5 })
  })
}
