// This file is about a leaf that has sagged, from the front: both diagonals, and which way the latch side stands.
import type { Seen } from '../calculation.ts'
import { absolute, compare, exact } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, down, heading, line, shape, sheet, spread, timesLarger, width, words } from './svg.ts'

const top = 60

export function gateSagDrawing(seen: Seen): string | null {
  const [tie, strut, tall, drop, square, pull] = [
    seen.one('tieDiagonal'),
    seen.one('strutDiagonal'),
    seen.one('leafHeight'),
    seen.one('latchDrop'),
    seen.one('squareDiagonal'),
    seen.one('takeUp'),
  ]
  const [h, d] = [numberIn(tall, 'in'), numberIn(drop, 'in')]
  // The rails keep their length: square, the leaf is as wide as its diagonal and its height say.
  const w = Math.sqrt(Math.max(0, numberIn(square, 'in') ** 2 - h ** 2))
  const scale = Math.min(190 / w, 150 / h)
  const larger = timesLarger(Math.abs(d) * scale, 14, Math.min(w, h) * scale * 0.4)
  const [sunk, left] = [d * scale * larger, (width - w * scale) / 2 - 16]
  const latch = left + Math.sqrt(Math.max(0, (w * scale) ** 2 - sunk ** 2))
  const [right, high, low] = [left + w * scale, top + Math.max(0, -sunk), top + Math.max(0, -sunk) + h * scale]
  const parts = [
    shape(
      [
        [left, high],
        [left, low],
        [latch, low + sunk],
        [latch, high + sunk],
      ],
      '#f0f0f0',
      1.5,
    ),
    `<path d="M${left} ${high}H${right}V${low}H${left}" fill="none" stroke="#111" stroke-width="0.75" stroke-dasharray="2 3"/>`,
    line(left, high, latch, low + sunk, 2.5),
    line(left, low, latch, high + sunk, 2, '#111', '8 5'),
  ]
  // In a very low leaf both hinges stand at the middle of their half, and are named once.
  const hung = Math.min(16, (low - high) / 4)
  const isLow = low - high < 48
  for (const y of [high + hung, low - hung]) {
    parts.push(box(left - 12, y - 4, 16, 8, '#555'))
    if (!isLow) parts.push(words(left - 16, y + 4, 'hinge', 'end', 11))
  }
  if (isLow) parts.push(words(left - 16, (high + low) / 2 + 4, 'hinges', 'end', 11))
  const amount: Quantity = { ...drop, amount: absolute(drop.amount) }
  const way = compare(drop.amount, exact(0))
  // The figure stands in the heading as well: where it is too long for the margin, only the way is written.
  const [figure, name] = [show(amount), way === 1 ? 'down' : 'up']
  const isShort = right + 26 + spread(figure) < width
  if (way !== 0)
    parts.push(
      line(latch, high + sunk, right + 20, high + sunk, 0.5),
      line(right, high, right + 20, high, 0.5),
      down(
        right + 16,
        Math.min(high, high + sunk),
        Math.max(high, high + sunk),
        isShort ? figure : name,
        'right',
        isShort ? name : '',
      ),
    )
  const legend = Math.max(low, low + sunk) + 28
  const longer = way === 1 ? [', longer', ''] : way === -1 ? ['', ', longer'] : ['', '']
  parts.push(
    line(14, legend - 4, 44, legend - 4, 2.5),
    words(50, legend, `top hinge to bottom latch ${show(tie)}${longer[0]}`, 'start', 11),
    line(14, legend + 14, 44, legend + 14, 2, '#111', '8 5'),
    words(50, legend + 18, `bottom hinge to top latch ${show(strut)}${longer[1]}`, 'start', 11),
    aside(`both ${show(square)} when square${way === 1 ? `: take the cable up ${show(pull)}` : ''}`, legend + 40),
  )
  if (larger > 1) parts.push(aside(`the sag is drawn ${larger} times as large as it is; dotted: square`, legend + 58))
  const said =
    way === 1
      ? `latch side ${show(amount)} down`
      : way === -1
        ? `latch side ${show(amount)} too high`
        : 'both diagonals alike: square'
  parts.push(heading(said))
  return sheet(
    {
      width,
      height: legend + (larger > 1 ? 68 : 50),
      title: 'The leaf and its two diagonals',
      description: `A leaf ${show(tall)} tall. From the top hinge corner to the bottom latch corner it measures ${show(tie)}, from the bottom hinge corner to the top latch corner ${show(strut)}: ${said}. Square, both are ${show(square)}.`,
    },
    parts,
  )
}
