// This file is about where two costs meet: digging by hand, a rented machine and a bought one, over the number of holes.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, grey, heading, ink, line, onSheet, plate, sheet, spread, width, words } from './svg.ts'

const [left, right, top, bottom] = [52, width - 14, 66, 236]
/** More holes than this are not drawn: the lines run on as they are. */
const most = 400

export function breakEvenDrawing(seen: Seen): string | null {
  const least = seen.maybe('rentHoles')
  const [rent, worth] = [seen.maybe('rentADay'), seen.maybe('hourWorth')]
  if (!least || !rent || !worth || seen.rows('holeTime').length > 1 || seen.rows('machineHoleTime').length > 1)
    return null
  const hours = (name: string): number => numberIn(seen.one(name), 'h')
  const money = (name: string): number => numberIn(seen.one(name), rent.unit)
  const [byHand, byMachine, perHour] = [hours('holeTime'), hours('machineHoleTime'), money('hourWorth')]
  const inADay = seen.maybe('holesInADay')
  const fits = inADay ? numberIn(inADay, inADay.unit) : Number.POSITIVE_INFINITY
  const yours = seen.maybe('posts') ? seen.rows('posts').reduce((sum, it) => sum + numberIn(it, it.unit), 0) : 0
  const k = numberIn(least, least.unit)
  const holes = Math.ceil(Math.max(2 * k, 1.2 * yours, 6))
  if (holes > most || fits < 1) return null
  const handCost = (n: number): number => n * byHand * perHour
  const rentCost = (n: number): number =>
    Math.max(1, Math.ceil(n / fits - 1e-9)) * money('rentADay') + n * byMachine * perHour
  const outlay = seen.maybe('outlay') ? money('outlay') : undefined
  const buyCost = (n: number): number => (outlay ?? 0) + n * byMachine * perHour
  const highest = Math.max(handCost(holes), rentCost(holes))
  const x = (n: number): number => left + (n / holes) * (right - left)
  const y = (cost: number): number => bottom - (cost / (highest * 1.08)) * (bottom - top)
  const parts = [line(left, bottom, right, bottom, 1.2), line(left, top - 6, left, bottom, 1.2)]
  const step = stepOf(holes, 8)
  for (let n = 0; n <= holes; n += step)
    parts.push(line(x(n), bottom, x(n), bottom + 4), words(x(n), bottom + 17, `${n}`, 'middle', 11))
  const rise = stepOf(highest, 5)
  for (let cost = 0; cost <= highest; cost += rise)
    parts.push(line(left - 4, y(cost), left, y(cost)), words(left - 7, y(cost) + 4, thousands(cost), 'end', 11))
  const path = (points: readonly (readonly [number, number])[], dash: string, weight: number): string =>
    `<path d="M${points.map(([n, cost]) => `${x(n).toFixed(1)} ${y(cost).toFixed(1)}`).join('L')}" fill="none" stroke="${ink}" stroke-width="${weight}"${dash ? ` stroke-dasharray="${dash}"` : ''}/>`
  const rentPoints: (readonly [number, number])[] = [[0, money('rentADay')]]
  for (let day = 1; day * fits < holes; day++)
    rentPoints.push([day * fits, rentCost(day * fits)], [day * fits, rentCost(day * fits) + money('rentADay')])
  rentPoints.push([holes, rentCost(holes)])
  parts.push(
    path(
      [
        [0, 0],
        [holes, handCost(holes)],
      ],
      '',
      2.4,
    ),
    path(rentPoints, '7 4', 1.8),
  )
  const isBought = outlay !== undefined && buyCost(0) < highest
  if (isBought) {
    const end = Math.min(holes, buyCost(holes) > highest ? (highest - outlay) / (byMachine * perHour) : holes)
    parts.push(
      path(
        [
          [0, buyCost(0)],
          [end, buyCost(end)],
        ],
        '2 3',
        1.8,
      ),
    )
  }
  const mark = (n: number, text: string, from: number): string =>
    line(x(n), from, x(n), bottom, 0.75, grey, '3 3') + plate(onSheet(x(n), text, 'middle', 11), from - 4, text, 11)
  const meets = k <= fits && k <= holes
  if (meets)
    parts.push(
      mark(k, `${show(least)} on`, Math.max(top + 22, y(handCost(k)) - 22)),
      dot(x(k), y(handCost(k)), 4, '#fff'),
    )
  if (yours > 0) parts.push(mark(yours, `yours: ${yours}`, top + 6))
  // What each line is, in a row of its own: at their ends they may lie too close for words.
  const key = [
    ['by hand', '', 2.4],
    ['rented', '7 4', 1.8],
    ...(isBought ? [['bought', '2 3', 1.8] as const] : []),
  ] as const
  let at = left
  for (const [text, dash, weight] of key) {
    parts.push(
      line(at, bottom + 50, at + 26, bottom + 50, weight, ink, dash),
      words(at + 31, bottom + 54, text, 'start', 11),
    )
    at += 46 + spread(text, 11)
  }
  parts.push(
    heading(meets ? `a rented day pays from ${show(least)} on` : 'no rented day pays for itself'),
    aside('what it costs in all, your hours counted, by the number of holes', 42),
    words(right, bottom + 32, 'holes', 'end', 11),
  )
  return sheet(
    {
      width,
      height: bottom + 66,
      title: 'By hand, rented, or bought',
      description: `Cost over holes: by hand it rises by ${show(seen.one('savedWorth'))} a hole more than with the machine; a rented day begins at ${show(rent)}${outlay === undefined ? '' : `, a bought machine at ${show(seen.one('outlay'))}`}. ${meets ? `The rented day costs no more from ${show(least)} on.` : 'So many holes as would pay for a rented day do not fit into one.'}`,
    },
    parts,
  )
}

/** A round step that leaves at most so many of them. */
function stepOf(size: number, steps: number): number {
  const ten = 10 ** Math.floor(Math.log10(size / steps))
  return ([1, 2, 5, 10].find((it) => size / (it * ten) <= steps) ?? 10) * Math.max(ten, steps === 8 ? 1 : 0.01)
}

const thousands = (cost: number): string =>
  cost >= 10 ? String(Math.round(cost)).replace(/\B(?=(\d{3})+$)/g, ',') : String(Math.round(cost * 100) / 100)
