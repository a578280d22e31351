// This file is about days of the calendar: a date is a quantity that counts days, so that days can be added to it.
// No clock is read here: every date comes from the person.
import { exact, toNumber } from './amount.ts'
import type { Quantity } from './quantity.ts'

export const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const
export const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

const daysBefore = (year: number): number =>
  365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400)
const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
const lengths = (year: number): number[] => [31, isLeap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

/** The date of that year, month (1 to 12) and day in the Gregorian calendar; undefined when there is no such day. Years 1900 to 2199. */
export function dateOf(year: number, month: number, day: number): Quantity | undefined {
  const inMonth = lengths(year)[month - 1]
  if (year < 1900 || year > 2199 || inMonth === undefined || day < 1 || day > inMonth) return undefined
  const before = lengths(year).slice(0, month - 1)
  const days = daysBefore(year - 1) + before.reduce((sum, it) => sum + it, 0) + day - 1
  return { kind: 'date', amount: exact(days - daysBefore(1969)), unit: 'date' }
}

interface Day {
  readonly year: number
  readonly month: number
  readonly day: number
}

function dayOf(q: Quantity): Day {
  const count = toNumber(q.amount) + daysBefore(1969)
  let year = Math.floor(count / 365.2425) + 1
  while (daysBefore(year) <= count) year++
  while (daysBefore(year - 1) > count) year--
  let left = count - daysBefore(year - 1)
  let month = 1
  for (const length of lengths(year)) {
    if (left < length) break
    left -= length
    month++
  }
  return { year, month, day: left + 1 }
}

/** 0 for Monday, 6 for Sunday. */
export const weekdayOf = (date: Quantity): number => (((toNumber(date.amount) + 3) % 7) + 7) % 7

/** `2026-10-05`. */
export function isoDate(date: Quantity): string {
  const { year, month, day } = dayOf(date)
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
}

/** `Monday 5 October 2026`. */
export function showDate(date: Quantity): string {
  const { year, month, day } = dayOf(date)
  return `${weekdays[weekdayOf(date)]} ${day} ${months[month - 1]} ${year}`
}

/** So many days later (earlier when negative). */
export const daysAfter = (date: Quantity, days: number): Quantity => ({
  ...date,
  amount: exact(toNumber(date.amount) + days),
})

/** The same day so many years later, the last of February for the 29th; undefined beyond the years that the calendar holds. */
export function yearsAfter(date: Quantity, years: number): Quantity | undefined {
  const { year, month, day } = dayOf(date)
  return dateOf(year + years, month, day) ?? dateOf(year + years, 2, 28)
}

/** The same day so many months later (earlier when negative), the last of the month where it has no such day; undefined beyond the years that the calendar holds. */
export function monthsAfter(date: Quantity, count: number): Quantity | undefined {
  const { year, month, day } = dayOf(date)
  const [inYear, inMonth] = [year + Math.floor((month - 1 + count) / 12), ((((month - 1 + count) % 12) + 12) % 12) + 1]
  const last = lengths(inYear)[inMonth - 1] as number
  return dateOf(inYear, inMonth, Math.min(day, last))
}
