// This file is about the section across the lot line: line, setback, what reaches over from the posts, and the hole in the ground.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, line, onSheet, sheet, width, words } from './svg.ts'

const ground = 150

export function postLineDrawing(seen: Seen): string | null {
  const [offset, setback, post] = ['postLineOffset', 'setback', 'postWidth'].map((it) => seen.one(it)) as [
    Quantity,
    Quantity,
    Quantity,
  ]
  const inches = (q: Quantity): number => numberIn(q, 'in')
  const hole = seen.maybe('holeDiameter')
  const cap = seen.maybe('capOverhang')
  const reach = Math.max(inches(post) / 2 + (cap ? inches(cap) : 0), hole ? inches(hole) / 2 : 0)
  const [left, right] = [Math.min(0, inches(offset) - reach), inches(offset) + reach]
  const scale = (width - 90) / Math.max(right - left, 1)
  const x = (at: number): number => 45 + (at - left) * scale
  const side = seen.option('picketSide')
  const middle = inches(offset)
  const face = middle - inches(post) / 2
  const [rail, picket] = [
    side === 'outside' ? inches(seen.one('railThickness')) : 0,
    side === 'inside' ? 0 : inches(seen.one('picketThickness')),
  ]
  const parts = [
    line(8, ground, width - 8, ground, 2),
    line(x(0), 28, x(0), ground + 92, 2, '#111', '9 3 2 3'),
    words(x(0), 22, 'lot line', x(0) > width / 2 ? 'end' : 'start', 11),
  ]
  if (hole) parts.push(box(x(middle - inches(hole) / 2), ground, inches(hole) * scale, 62, '#eee'))
  parts.push(box(x(face), 62, inches(post) * scale, ground - 62 + (hole ? 56 : 0), '#bbb'))
  if (cap) {
    const past = inches(cap) * scale
    parts.push(box(x(face) - past, 58, inches(post) * scale + 2 * past, 7, '#fff'))
  }
  if (rail > 0) for (const y of [78, ground - 34]) parts.push(box(x(face - rail), y, rail * scale, 10, '#ddd'))
  if (picket > 0) parts.push(box(x(face - rail - picket), 68, picket * scale, ground - 76, '#fff'))
  if (inches(setback) > 0) parts.push(across(x(0), x(inches(setback)), 48, `setback ${show(setback)}`))
  parts.push(
    line(x(middle), 56, x(middle), ground + 90, 0.75, '#111', '6 3'),
    across(x(0), x(middle), ground + 84, `${show(offset)} to post centres`, width, true),
  )
  if (hole)
    parts.push(
      words(
        onSheet(x(middle), `hole ${show(hole)} across`, 'middle', 11),
        ground + 104,
        `hole ${show(hole)} across`,
        'middle',
        11,
      ),
    )
  parts.push(aside('widths to scale, heights not', ground + 122))
  return sheet(
    {
      width,
      height: ground + 132,
      title: 'Lot line, fence and hole, cut across',
      description: `Post centres stand ${show(offset)} inside the lot line, with a setback of ${show(setback)}${hole ? ` and holes ${show(hole)} across` : ''}.`,
    },
    parts,
  )
}
