// This file is about the section across the lot line: line, setback, what reaches over from the posts, and the hole in the ground.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, line, sheet, words } from './svg.ts'

const width = 420
const ground = 150

export function postLineDrawing(seen: Seen): string | null {
  const [offset, setback, post] = ['postLineOffset', 'setback', 'postWidth'].map((it) => seen.one(it)) as [
    Quantity,
    Quantity,
    Quantity,
  ]
  const inches = (q: Quantity): number => numberIn(q, 'in')
  const hole = seen.maybe('holeDiameter')
  const right = inches(offset) + Math.max(inches(post) / 2, hole ? inches(hole) / 2 : 0)
  const left = Math.min(0, hole ? inches(offset) - inches(hole) / 2 : 0)
  const scale = (width - 110) / Math.max(right - left, 1)
  const x = (at: number): number => 60 + (at - left) * scale
  const side = seen.option('picketSide')
  const middle = inches(offset)
  const face = middle - inches(post) / 2
  const [rail, picket] = [
    side === 'outside' ? inches(seen.one('railThickness')) : 0,
    side === 'inside' ? 0 : inches(seen.one('picketThickness')),
  ]
  const parts = [
    line(8, ground, width - 8, ground, 2),
    line(x(0), 36, x(0), ground + 92, 2, '#111', '9 3 2 3'),
    words(x(0), 30, 'lot line', x(0) > width / 2 ? 'end' : 'start', 11),
  ]
  if (hole) parts.push(box(x(middle - inches(hole) / 2), ground, inches(hole) * scale, 62, '#eee'))
  parts.push(box(x(face), 56, inches(post) * scale, ground - 56 + (hole ? 56 : 0), '#bbb'))
  if (rail > 0) for (const y of [72, ground - 34]) parts.push(box(x(face - rail), y, rail * scale, 10, '#ddd'))
  if (picket > 0) parts.push(box(x(face - rail - picket), 58, picket * scale, ground - 66, '#fff'))
  parts.push(across(x(0), x(middle), ground + 84, `${show(offset)} to post centres`, width))
  if (inches(setback) > 0) parts.push(across(x(0), x(inches(setback)), 50, `setback ${show(setback)}`, width))
  parts.push(line(x(middle), 56, x(middle), ground + 90, 0.75, '#111', '6 3'))
  if (hole) parts.push(words(x(middle), ground + 104, `hole ${show(hole)} across`, 'middle', 11))
  return sheet(
    {
      width,
      height: ground + 116,
      title: 'Lot line, fence and hole, cut across',
      description: `Post centres stand ${show(offset)} inside the lot line, with a setback of ${show(setback)}${hole ? ` and holes ${show(hole)} across` : ''}.`,
    },
    parts,
  )
}
