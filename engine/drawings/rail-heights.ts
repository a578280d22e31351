// This file is about pickets on their rails from the front, with every height from the ground, heights to scale.
import type { Seen } from '../calculation.ts'
import { exact, subtract, times } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, column, down, heading, line, part, shape, sheet, spread, width, words } from './svg.ts'

const [left, right] = [166, 250] // of the rails
const top = 52
const high = 230
const pickets = 3
const [picket, gap] = [17, 11] // as they are drawn: widths are no part of the sum

export function railHeightsDrawing(seen: Seen): string | null {
  const [long, foot, over, under, rails, deep, topAt, bottomAt, apart] = [
    seen.one('picketLength'),
    seen.one('footGap'),
    seen.one('overTop'),
    seen.one('underBottom'),
    seen.one('rails'),
    seen.one('railDepth'),
    seen.one('topRailAt'),
    seen.one('bottomRailAt'),
    seen.one('railsApart'),
  ]
  const scale = high / (numberIn(foot, 'in') + numberIn(long, 'in'))
  const ground = top + high
  const y = (up: number): number => ground - up * scale
  const [f, t, b, a, d] = [foot, topAt, bottomAt, apart, deep].map((it) => numberIn(it, 'in')) as [
    number,
    number,
    number,
    number,
    number,
  ]
  const all = Math.round(numberIn(rails, rails.unit))
  const many = Math.min(40, all)
  const parts: string[] = []
  for (let i = 0; i < many; i++) {
    const edge: Quantity = { ...topAt, amount: subtract(topAt.amount, times(apart.amount, exact(i))) }
    parts.push(
      part(
        `rail ${i + 1} of ${all}: its top edge ${show(edge)} from the ground`,
        box(left, y(t - i * a), right - left, d * scale, '#ccc', 0.75),
      ),
    )
  }
  const start = (left + right - pickets * picket - (pickets - 1) * gap) / 2
  for (let i = 0; i < pickets; i++) {
    const x = start + i * (picket + gap)
    parts.push(
      shape(
        [
          [x, y(f)],
          [x, top + 9],
          [x + picket / 2, top],
          [x + picket, top + 9],
          [x + picket, y(f)],
        ],
        '#fff',
      ),
    )
  }
  parts.push(
    line(8, ground, width - 8, ground, 2),
    // From the ground, at the left; each height is led to the top edge of its rail.
    line(70, y(t), left, y(t), 0.5),
    down(74, y(t), ground, show(topAt), 'left'),
    line(88, y(b), left, y(b), 0.5),
    // The heading says it too, where it has no room here.
    down(92, y(b), ground, ground - y(b) >= 14 && spread(show(bottomAt)) < left - 102 ? show(bottomAt) : ''),
    // One under the other, at the right.
    line(right, y(t), right + 20, y(t), 0.5),
    line(start + pickets * (picket + gap) - gap / 2, top, right + 20, top, 0.5),
    line(right, y(t - a), right + 20, y(t - a), 0.5),
    line(right, y(b - d), right + 20, y(b - d), 0.5),
    line(start + pickets * (picket + gap) - gap, y(f), right + 20, y(f), 0.5),
    column(
      right + 16,
      [
        { y1: top, y2: y(t), figure: show(over), name: 'over the rail' },
        { y1: y(t), y2: y(t - a), figure: show(apart), name: 'apart' },
        { y1: y(b - d), y2: y(f), figure: show(under), name: 'under the rail' },
      ].filter(({ y1, y2 }) => y2 > y1),
      'right',
      top - 8,
      ground - 1,
    ),
    heading(`top rail at ${show(topAt)}, bottom rail at ${show(bottomAt)}`),
    aside(`${show(rails)} ${show(deep)} deep, pickets ${show(long)} long`, ground + 42),
    aside('to the top edge of each rail; widths are not to scale', ground + 59),
  )
  if (f > 0) {
    parts.push(down(right + 16, y(f), ground, ''))
    parts.push(words(right + 16, ground + 19, `${show(foot)} off the ground`, 'middle', 11))
  }
  return sheet(
    {
      width,
      height: ground + 69,
      title: 'The rails and their heights',
      description: `Pickets ${show(long)} long, ${show(foot)} off the ground, on ${show(rails)}: the top edge of the top rail is at ${show(topAt)}, that of the bottom rail at ${show(bottomAt)}; from rail to rail ${show(apart)}.`,
    },
    parts,
  )
}
