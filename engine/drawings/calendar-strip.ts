// This file is about the days of a digging ticket on a calendar: the call, the first day to dig, the day to renew by, the last day.
// Every mark is a word and a kind of border, so that it reads the same in black and white.
import type { Seen } from '../calculation.ts'
import { daysAfter, isoDate, months, weekdayOf, weekdays } from '../quantities/calendar.ts'
import { toNumber } from '../quantities/amount.ts'
import type { Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, grey, heading, ink, line, plate, sheet, width, words } from './svg.ts'

const [wide, high] = [48, 36]
const left = (width - 7 * wide) / 2
const top = 62
/** More weeks than this are broken in the middle: the days that matter lie at both ends. */
const mostWeeks = 7

export function calendarStripDrawing(seen: Seen): string | null {
  const [call, first, last, renew] = ['callDate', 'firstDigDay', 'lastTicketDay', 'renewBy'].map((it) =>
    seen.maybe(it),
  ) as (Quantity | undefined)[]
  if (!call || !first) return null
  const closed = seen.maybe('holidays') ? seen.rows('holidays') : []
  const count = (date: Quantity): number => toNumber(date.amount)
  const monday = (date: Quantity): number => count(date) - weekdayOf(date)
  const end = last ?? first
  const weeks = Array.from({ length: (monday(end) - monday(call)) / 7 + 1 }, (_, i) => monday(call) + 7 * i)
  const kept =
    weeks.length <= mostWeeks
      ? weeks
      : weeks.filter((it) => it <= monday(first) || it >= Math.min(monday(renew ?? end), monday(end) - 7))
  const parts = [
    heading('call, dig, end of the ticket'),
    ...weekdays.map((name, i) => words(left + (i + 0.5) * wide, top - 8, name.slice(0, 3), 'middle', 11)),
  ]
  const breaks = new Set([kept[0]])
  let y = top
  let before: number | undefined
  for (const week of kept) {
    if (before !== undefined && week - before > 7) {
      parts.push(
        line(left, y + 9, width - left, y + 9, 1, grey, '2 4'),
        plate(width / 2, y + 13, `${(week - before) / 7 - 1} weeks`, 11),
      )
      breaks.add(week)
      y += 18
    }
    before = week
    for (let i = 0; i < 7; i++) parts.push(...cell(week + i, left + i * wide, y))
    y += high
  }

  function cell(day: number, x: number, at: number): string[] {
    const date: Quantity = daysAfter(call as Quantity, day - count(call as Quantity))
    const [, month, number] = isoDate(date).split('-').map(Number) as [number, number, number]
    const is = (other: Quantity | undefined): boolean => other !== undefined && count(other) === day
    const isOff = weekdayOf(date) > 4 || closed.some(is)
    const isOutside = day < count(call as Quantity) || day > count(end)
    const drawn = [box(x, at, wide, high, is(first) ? ink : isOff ? '#e4e4e4' : '#fff', 0.6)]
    if (is(call)) drawn.push(box(x + 2, at + 2, wide - 4, high - 4, 'none', 2.2))
    if (is(last))
      drawn.push(box(x + 2, at + 2, wide - 4, high - 4, 'none', 1), box(x + 5, at + 5, wide - 10, high - 10, 'none', 1))
    if (is(renew) && !is(call))
      drawn.push(
        `<rect x="${x + 2}" y="${at + 2}" width="${wide - 4}" height="${high - 4}" fill="none" stroke="${is(first) ? '#fff' : ink}" stroke-width="1.6" stroke-dasharray="4 3"/>`,
      )
    const colour = is(first) ? '#fff' : isOutside ? grey : ink
    const shown =
      number === 1 || breaks.has(day) ? `${number} ${(months[month - 1] as string).slice(0, 3)}` : String(number)
    const write = (text: string, down: number, size: number, bold: boolean): string =>
      `<text x="${x + wide / 2}" y="${at + down}" text-anchor="middle" font-size="${size}" fill="${colour}"${bold ? ' font-weight="700"' : ''}>${text}</text>`
    const marks = [is(call) && 'call', is(first) && 'dig', is(renew) && 'renew', is(last) && 'ends'].filter(Boolean)
    const tags = (marks.length > 0 ? marks : closed.some(is) ? ['closed'] : []) as string[]
    drawn.push(write(shown, [22, 15, 12, 10][tags.length] as number, 10, false))
    for (const [i, tag] of tags.entries())
      drawn.push(
        write(tag, [[28], [22, 32], [18, 26, 34]][tags.length - 1]?.[i] as number, tags.length > 1 ? 9.5 : 11, true),
      )
    return drawn
  }

  parts.push(aside('grey: weekends and the holidays you named', y + 16))
  return sheet(
    {
      width,
      height: y + 26,
      title: 'The days of the ticket',
      description: `Call on ${show(call)}; first day to dig ${show(first)}${renew ? `; renew by ${show(renew)}` : ''}${last ? `; last day of the ticket ${show(last)}` : ''}.`,
    },
    parts,
  )
}
