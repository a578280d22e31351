// This file is about square caps: one on its post, cut through, and the board they are sawn from, each to a scale of its own.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, broken, heading, line, sheet, width } from './svg.ts'

const middle = width / 2
const thick = 18 // of a cap as it is drawn; its thickness is no part of the sum

export function capBlanksDrawing(seen: Seen): string | null {
  const [cap, post, over] = [seen.one('capSize'), seen.one('postWidth'), seen.one('capOverhang')]
  const [c, p] = [numberIn(cap, 'in'), numberIn(post, 'in')]
  const scale = 150 / c
  const [left, right] = [middle - (c / 2) * scale, middle + (c / 2) * scale]
  const [postLeft, postRight] = [middle - (p / 2) * scale, middle + (p / 2) * scale]
  const [top, end] = [72, 166]
  const under = top + thick + 24
  const parts = [
    box(postLeft, top + thick, postRight - postLeft, end - top - thick, '#ccc'),
    broken(postLeft, postRight, end),
    box(left, top, right - left, thick, '#eee', 1.5),
    across(left, right, top - 12, `cap ${show(cap)}`),
    // Each overhang is written on its own side, clear of the post.
    ...[left, right].map((x) => line(x, top + thick, x, under + 5, 0.5)),
    across(left, postLeft, under, show(over), 0),
    across(postRight, right, under, show(over)),
    across(postLeft, postRight, end + 26, `post ${show(post)}`),
    heading(`the cap stands ${show(over)} past each face`),
  ]
  const board = boardBelow(seen, cap, end + 52)
  parts.push(...(board?.parts ?? [aside('the cap’s thickness is not to scale', end + 48)]))
  return sheet(
    {
      width,
      height: board?.bottom ?? end + 58,
      title: board ? 'A cap on its post, and the board it comes from' : 'A cap on its post',
      description: `A cap ${show(cap)} square on a ${show(post)} post stands ${show(over)} past each face.${board ? ` ${board.words}` : ''}`,
    },
    parts,
  )
}

function boardBelow(
  seen: Seen,
  cap: Quantity,
  top: number,
): { parts: string[]; bottom: number; words: string } | undefined {
  const each = seen.maybe('capsPerBoard')
  if (!each) return undefined
  const [stock, kerf, boards] = [seen.one('stockLength'), seen.one('kerf'), seen.maybe('capBoards')]
  const [long, c, k] = [numberIn(stock, 'in'), numberIn(cap, 'in'), numberIn(kerf, 'in')]
  const scale = Math.min((width - 32) / long, 90 / c)
  const left = middle - (long * scale) / 2
  const many = Math.round(numberIn(each, each.unit))
  // Blanks that would run together into one black bar are not drawn one by one.
  const isLegible = c * scale >= 4
  const parts = [box(left, top, long * scale, c * scale, '#aaa')]
  if (isLegible)
    for (let i = 0; i < many; i++) parts.push(box(left + i * (c + k) * scale, top, c * scale, c * scale, '#eee', 0.75))
  const bottom = top + c * scale
  const rest = (long - many * (c + k)) * scale
  const told = [
    isLegible ? (rest > 2 ? 'dark: what is left' : '') : 'too many to draw',
    'the cap’s thickness is not to scale',
  ]
  const total = boards ? `; ${show(boards)} in all` : ''
  parts.push(
    across(left, left + long * scale, bottom + 24, `board ${show(stock)}`),
    aside(`${show(each)} from it, ${show(kerf)} lost at each cut${total}`, bottom + 46),
    aside(told.filter((it) => it !== '').join('; '), bottom + 64),
  )
  return {
    parts,
    bottom: bottom + 74,
    words: `A board of ${show(stock)} gives ${show(each)} with ${show(kerf)} lost at each cut${total}.`,
  }
}
