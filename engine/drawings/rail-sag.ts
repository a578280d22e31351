// This file is about a rail that sags between two posts, from the front, drawn further down than it goes.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, heading, line, sheet, width, words } from './svg.ts'

const [left, right, level] = [34, width - 34, 96]
const deepest = 62
const exaggerations = [200, 100, 50, 20, 10, 5, 2, 1]

export function railSagDrawing(seen: Seen): string | null {
  const [opening, depth, long] = [seen.one('opening'), seen.one('standing'), seen.one('longSag')]
  const lean = seen.maybe('leanSag')
  const [span, high, own, sat] = [
    numberIn(opening, 'in'),
    numberIn(depth, 'in'),
    numberIn(long, 'in'),
    lean ? numberIn(lean, 'in') : 0,
  ]
  const scale = (right - left) / span
  const most = (own + sat) * scale
  const times = exaggerations.find((it) => most * it <= deepest) ?? 1
  // What no rail does is not drawn to the end of the sheet: it says how far it would go.
  const fit = Math.min(1, (2 * deepest) / (most * times))
  const thick = Math.max(4, Math.min(24, high * scale))
  /** The upper edge of the rail: level at the posts, down by the sag in the middle. */
  const edge = (along: number, person: boolean): number => {
    const near = Math.min(along, 1 - along)
    const even = (16 / 5) * (along - 2 * along ** 3 + along ** 4)
    const middle = 3 * near - 4 * near ** 3
    return level + (own * even + (person ? sat * middle : 0)) * scale * times * fit
  }
  const path = (person: boolean, look: string): string => {
    const steps = Array.from({ length: 49 }, (_, i) => i / 48)
    const at = (along: number, lower: number): string =>
      `${(left + along * (right - left)).toFixed(1)} ${(edge(along, person) + lower).toFixed(1)}`
    const outline = [...steps.map((it) => at(it, 0)), ...steps.reverse().map((it) => at(it, thick))]
    return `<path d="M${outline.join('L')}Z" ${look}/>`
  }
  const bottom = Math.max(edge(0.5, true) + thick, level + 60)
  const parts = [
    box(left - 22, level - 34, 22, bottom - level + 54, '#bbb'),
    box(right, level - 34, 22, bottom - level + 54, '#bbb'),
    path(false, 'fill="#ddd" stroke="#111" stroke-width="1.2"'),
    line(left, level, right, level, 0.75, '#111', '2 3'),
    across(left, right, level - 44, `opening ${show(opening)}`),
  ]
  if (lean) {
    const tip = edge(0.5, false) - 2
    parts.push(
      path(true, 'fill="none" stroke="#111" stroke-width="1.8" stroke-dasharray="7 4"'),
      line(width / 2, level - 30, width / 2, tip - 6, 2),
      `<path d="M${width / 2 - 5} ${tip - 8}h10L${width / 2} ${tip}Z" fill="#111"/>`,
      words(width / 2 + 9, level - 18, show(seen.one('leanWeight')), 'start'),
    )
  }
  const under = bottom + 40
  parts.push(
    heading(`a rail ${show(depth)} from top to bottom`),
    words(width / 2, under, `grey: after years ${show(long)} down`, 'middle', 12),
  )
  if (lean)
    parts.push(words(width / 2, under + 17, `dashed: ${show(lean)} further with the person on it`, 'middle', 12))
  const drawn = fit < 1 ? 'sag not to scale' : times === 1 ? 'sag to scale' : `sag drawn ${times} times too large`
  parts.push(aside(`dotted: level; lengths to scale, ${drawn}`, under + (lean ? 36 : 19)))
  return sheet(
    {
      width,
      height: under + (lean ? 48 : 31),
      title: 'A rail that sags between its posts',
      description: `A rail ${show(depth)} from top to bottom over an opening of ${show(opening)} sags ${show(long)} after years${lean ? `, and ${show(lean)} further with ${show(seen.one('leanWeight'))} on its middle` : ''}; ${drawn}.`,
    },
    parts,
  )
}
