// This file is about a cut plan, board by board, to scale: the pieces, the marks to cut at, and what is left.
import type { Seen } from '../calculation.ts'
import { add } from '../quantities/amount.ts'
import { less, numberIn, type Quantity, zero } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { byTape } from '../quantities/tape.ts'
import { aside, box, heading, ledDown, line, mostParts, part, sheet, spread, width, words } from './svg.ts'

const most = 12
const [left, right] = [16, width - 16]
const deep = 20
// Of more marks than these the figures would stand too close: they are in the table.
const mostMarks = 8

export function cutPlanDrawing(seen: Seen): string | null {
  if (!seen.maybe('sticksAlike')) return null
  const ways = waysOf(seen)
  const drawn = ways.slice(0, most)
  const scale = (right - left) / Math.max(...ways.map((it) => inches(it.length)))
  const parts: string[] = []
  let top = 54
  let isMarked = true
  for (const it of drawn) {
    parts.push(...oneWay(it, top, scale, seen))
    if (it.pieces.length > mostMarks) {
      isMarked = false
      top += deep + 26
      continue
    }
    const { drawn: marks, lowest } = ledDown(marksOf(it, top + deep + 4, scale, seen), top + deep + 16)
    parts.push(marks)
    top = lowest + 28
  }
  const boards = show(seen.one('boardsToCut'))
  const more = ways.length - drawn.length
  const rest = [
    more > 0 ? `${more} more ways of cutting and all marks stand in the table` : '',
    more === 0 && !isMarked ? 'marks that have no room stand in the table' : '',
    'grey is left over',
  ]
  parts.push(
    heading(`${boards}, ${ways.length === 1 ? 'all cut alike' : 'board by board'}`),
    aside(`to scale; ${rest.filter(Boolean).join('; ')}`, top - 6),
  )
  return sheet(
    {
      width,
      height: top + 6,
      title: 'The cut plan, board by board',
      description: `${boards}. ${drawn.map((it) => `${show(it.alike)} of ${show(it.length)}: ${it.pieces.map(byTape).join(', ')}`).join('. ')}.${more > 0 ? ` ${more} more ways of cutting stand in the table.` : ''}`,
    },
    parts,
  )
}

/** One way of cutting a board, and how many boards are cut so. */
interface Way {
  readonly alike: Quantity
  readonly length: Quantity
  readonly offcut: Quantity
  readonly pieces: readonly Quantity[]
}

const inches = (it: Quantity | undefined): number => (it ? numberIn(it, 'in') : 0)

function waysOf(seen: Seen): Way[] {
  const [lengths, offcuts, counts, pieces] = [
    seen.rows('stickLengths'),
    seen.rows('stickOffcuts'),
    seen.rows('piecesOnStick'),
    seen.rows('cutPieces'),
  ]
  let next = 0
  return seen.rows('sticksAlike').map((alike, i) => {
    const from = next
    next += Number(counts[i]?.amount.valueOf())
    return {
      alike,
      length: lengths[i] as Quantity,
      offcut: offcuts[i] as Quantity,
      pieces: pieces.slice(from, next),
    }
  })
}

function oneWay({ alike, length, offcut, pieces }: Way, top: number, scale: number, seen: Seen): string[] {
  const [kerf, trim] = [inches(seen.maybe('kerf')), inches(seen.maybe('endTrim'))]
  const end = left + inches(length) * scale
  const times = show({ ...alike, kind: 'number', unit: 'ratio' })
  const parts = [
    words(left, top - 6, `${show(length)} × ${times}`, 'start', 12, true),
    words(right, top - 6, inches(offcut) > 0 ? `offcut ${byTape(offcut)}` : 'no offcut', 'end', 11),
    box(left, top, end - left, deep, '#bbb'),
  ]
  if (trim > 0) parts.push(box(left, top, trim * scale, deep, '#fff'))
  let x = left + trim * scale
  for (const [i, piece] of pieces.entries()) {
    const wide = inches(piece) * scale
    const drawn = box(x, top, wide, deep, '#f4f4f4') + label(x, wide, top, piece)
    const says = `piece ${i + 1} of ${pieces.length}: ${byTape(piece)}, from a board of ${show(length)}`
    parts.push(pieces.length > mostParts ? drawn : part(says, drawn))
    // What is sawn lies on the far side of the mark.
    if (x + wide < end - 0.01) parts.push(line(x + wide, top - 3, x + wide, top + deep + 3, 1.6))
    x += wide + kerf * scale
  }
  return parts
}

/** The length of a piece, in it where there is room. */
function label(x: number, wide: number, top: number, piece: Quantity): string {
  const text = bare(piece)
  const size = [12, 11, 10].find((it) => spread(text, it) <= wide - 2)
  return size === undefined ? '' : words(x + wide / 2, top + deep / 2 + 4, text, 'middle', size)
}

/** As it is marked: the table beside the drawing says the same. */
const bare = (it: Quantity): string => byTape(it).replace(/ (in|mm)$/, '')

/** The figure under each mark, from the end as bought. */
function marksOf(
  { length, pieces }: Way,
  from: number,
  scale: number,
  seen: Seen,
): { x: number; from: number; text: string }[] {
  const none = zero('length', 'in')
  const [kerf, trim] = [seen.maybe('kerf') ?? none, seen.maybe('endTrim') ?? none]
  let at = trim.amount
  return pieces.flatMap((piece, i) => {
    at = add(add(at, piece.amount), i > 0 ? kerf.amount : none.amount)
    const mark = { ...piece, amount: at }
    return less(mark, length) ? [{ x: left + inches(mark) * scale, from, text: bare(mark) }] : []
  })
}
