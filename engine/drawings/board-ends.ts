// This file is about the width of a board now and when it has settled: two board ends one over the other, their difference drawn larger than it is.
import type { Seen } from '../calculation.ts'
import { absolute } from '../quantities/amount.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, grey, heading, line, sheet, timesLarger, width, words } from './svg.ts'

const left = 30
const widest = 300

export function boardEndsDrawing(seen: Seen): string | null {
  const [now, later, change] = ['picketWidth', 'widthLater', 'widthChange'].map((it) => seen.one(it))
  if (!now || !later || !change) return null
  const [from, by] = [numberIn(now, 'in'), numberIn(change, 'in')]
  const share = Math.abs(by) / from
  const times = timesLarger(share * widest, 24, 60)
  const drawn = share * widest * times
  const [a, b] = by <= 0 ? [widest, widest - drawn] : [widest - drawn, widest]
  const parts = [
    heading(`${by <= 0 ? 'narrower' : 'wider'} by ${show({ ...change, amount: absolute(change.amount) })}`),
    across(left, left + a, 58, show(now)),
    box(left, 66, a, 34, '#e8e8e8', 1.4),
    box(left, 118, b, 34, '#fff', 1.4),
    line(left + a, 66, left + a, 160, 0.75, grey, '3 3'),
    line(left + b, 66, left + b, 160, 0.75, grey, '3 3'),
    across(left, left + b, 176, show(later)),
    words(left + 8, 88, 'now', 'start', 11),
    words(left + 8, 140, 'later', 'start', 11),
    aside(
      times > 1 ? `the difference is drawn ${times} times as large as it is` : 'the difference is drawn to scale',
      200,
    ),
  ]
  return sheet(
    {
      width,
      height: 212,
      title: 'A board now and when it has settled',
      description: `The end of a board: ${show(now)} wide now and ${show(later)} when it has settled.`,
    },
    parts,
  )
}
