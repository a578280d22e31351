// This file is about the job as bars over days: what decides the end in black, what may slip in white with its slack dotted.
import type { Seen } from '../calculation.ts'
import { decidingPath, endOf, type Placed, place, slackOf } from '../critical-path.ts'
import { tasksOf } from '../job-plan.ts'
import { exact, toNumber } from '../quantities/amount.ts'
import { isoDate, months, weekdayOf } from '../quantities/calendar.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, grey, heading, ink, line, plate, sheet, spread, width, words } from './svg.ts'

const [left, right, top, high] = [92, width - 10, 58, 21]
/** Up to so many days the weekends are shaded; beyond, they would be a grey of their own. */
const mostShaded = 70

export function jobCalendarDrawing(seen: Seen): string | null {
  const call = seen.maybe('callDate')
  const ownDays = seen.option('ownDays')
  if (!call || !ownDays) return null
  const start = toNumber(call.amount)
  const holidays = seen.maybe('holidays') ? seen.rows('holidays') : []
  const placed = place(tasksOf({ maybe: seen.maybe, ownDays, holidays }), start)
  const bars = placed.filter((it) => it.days > 0)
  const path = decidingPath(placed)
  const slacks = slackOf(placed)
  const end = endOf(placed)
  const days = end - start + 1
  const x = (day: number): number => left + ((day - start) / days) * (right - left)
  const bottom = top + bars.length * high
  const date = (day: number): Quantity => ({ ...call, amount: exact(day) })
  const parts: string[] = []

  const shade = (from: number, to: number): string =>
    `<rect x="${x(from).toFixed(2)}" y="${top}" width="${(x(to) - x(from)).toFixed(2)}" height="${bottom - top}" fill="#ececec"/>`
  if (days <= mostShaded)
    for (let saturday = start - weekdayOf(call) + 5; saturday <= end; saturday += 7)
      parts.push(shade(Math.max(saturday, start), Math.min(saturday + 2, end + 1)))
  parts.push(line(left, top, right, top), line(left, bottom, right, bottom))
  for (const { day, text } of marks(start, end, (d) => date(d))) {
    const at = Math.min(Math.max(x(day), left + spread(text, 10) / 2 - 6), right - spread(text, 10) / 2 + 6)
    parts.push(line(x(day), top - 4, x(day), bottom, 0.5, grey, '2 3'), words(at, top - 8, text, 'middle', 10))
  }
  bars.forEach((it, i) => {
    const y = top + i * high
    const decides = path.includes(it.name)
    const slack = slacks.get(it.name) as number
    const [from, to] = [x(it.first), x(it.last + 1)]
    if (!decides && slack > 0)
      parts.push(line(to, y + high / 2, x(Math.min(it.last + slack, end) + 1), y + high / 2, 1.6, ink, '2 3'))
    parts.push(
      words(left - 6, y + 14, it.name, 'end', 11, decides),
      box(from, y + 4, Math.max(to - from, 1.5), high - 8, decides ? ink : '#fff', 1.2),
    )
  })
  parts.push(
    heading(`last coat on ${show(seen.one('finishDate'))}`),
    plate(width / 2, bottom + 18, 'black: decides the end · white: may slip as far as the dots', 10.5),
    ...(days <= mostShaded ? [aside('grey: weekends', bottom + 34)] : []),
  )
  return sheet(
    {
      width,
      height: bottom + (days <= mostShaded ? 44 : 28),
      title: 'The job day by day',
      description: `${bars.map((it) => described(it, date)).join('; ')}. What decides the end: ${path.join(', ')}.`,
    },
    parts,
  )
}

const described = ({ name, first, last }: Placed, date: (day: number) => Quantity): string =>
  first === last ? `${name} ${short(date(first))}` : `${name} ${short(date(first))} to ${short(date(last))}`

/** `5 Oct`. */
function short(date: Quantity): string {
  const [, month, day] = isoDate(date).split('-').map(Number) as [number, number, number]
  return `${day} ${(months[month - 1] as string).slice(0, 3)}`
}

/** The days along the top: Mondays in a short job, the firsts of months in a long one, so few that each has its room. */
function marks(start: number, end: number, date: (day: number) => Quantity): { day: number; text: string }[] {
  const days = end - start + 1
  const all = Array.from({ length: days }, (_, i) => start + i)
  const isFirst = (day: number): boolean => isoDate(date(day)).endsWith('-01')
  const chosen =
    days <= 14
      ? all.filter((_, i) => i % Math.max(1, Math.ceil(days / 6)) === 0)
      : days <= mostShaded
        ? all.filter((day) => weekdayOf(date(day)) === 0)
        : all.filter(isFirst)
  const step = Math.ceil(chosen.length / (days > 400 ? 4 : 6))
  return chosen
    .filter((_, i) => i % step === 0)
    .map((day) => ({ day, text: short(date(day)) + (days > 400 ? ` ${isoDate(date(day)).slice(2, 4)}` : '') }))
}
