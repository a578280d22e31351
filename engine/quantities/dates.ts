// This file is about dates in a message: whole dates are quantities, parts of one are not.
import { dateOf, showDate, weekdayOf, weekdays } from './calendar.ts'
import type { Found } from './found.ts'
import type { Quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { unitAt } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const weekday =
  /^(mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/
const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

/**
 * A whole date: 2026-10-05, 5 October 2026, Oct 5th, 2026, Monday 5 October 2026, 25/12/2026.
 * 5/10/2026 may be either way round: both are kept, and the person is asked. A weekday that does not fit is said back.
 */
export function dateAt(tokens: readonly Scanned[], at: number): Found | null {
  const named = weekday.test(lower(tokens[at]))
  let from = at
  if (named) {
    from++
    if (tokens[from]?.text === '.' || tokens[from]?.text === ',') from++
    if (lower(tokens[from]) === 'the') from++
  }
  const found = isoAt(tokens, from) ?? dayFirst(tokens, from) ?? monthFirst(tokens, from) ?? slashed(tokens, from)
  if (!found || !named) return found
  const said = weekdays.findIndex((it) => it.toLowerCase().startsWith(lower(tokens[at]).slice(0, 3)))
  const fits = (date: Quantity): boolean => weekdayOf(date) === said
  const dates = [found.quantity as Quantity, ...(found.rivals ?? [])]
  const right = dates.filter(fits)
  if (right.length === 1) return { ...found, quantity: right[0] as Quantity, rivals: [] }
  return { ...found, note: `that day is a ${showDate(dates[0] as Quantity).split(' ')[0]}` }
}

const whole = (token: Scanned | undefined, digits: RegExp): number | undefined =>
  token?.sort === 'digits' && digits.test(token.text) ? Number(token.text) : undefined
const monthOf = (token: Scanned | undefined): number | undefined =>
  months.test(lower(token)) ? monthNames.indexOf(lower(token).slice(0, 3)) + 1 : undefined
const found = (next: number, ...dates: (Quantity | undefined)[]): Found | null => {
  const [date, ...rivals] = dates.filter((it) => it !== undefined)
  return date ? { next, quantity: date, bare: null, rivals } : null
}

function isoAt(tokens: readonly Scanned[], at: number): Found | null {
  const [year, , month, , day] = [0, 1, 2, 3, 4].map((i) => whole(tokens[at + i], i === 0 ? /^\d{4}$/ : /^\d\d?$/))
  if (!year || !month || !day || tokens[at + 1]?.text !== '-' || tokens[at + 3]?.text !== '-') return null
  return found(at + 5, dateOf(year, month, day))
}

const afterOrdinal = (tokens: readonly Scanned[], at: number): number =>
  /^(st|nd|rd|th)$/.test(lower(tokens[at])) ? at + 1 : at
const yearAt = (tokens: readonly Scanned[], at: number): { year: number; next: number } | null => {
  const from = tokens[at]?.text === ',' || tokens[at]?.text === '.' ? at + 1 : at
  const year = whole(tokens[from], /^(19|20|21)\d\d$/)
  return year ? { year, next: from + 1 } : null
}

function dayFirst(tokens: readonly Scanned[], at: number): Found | null {
  const day = whole(tokens[at], /^\d\d?$/)
  let next = afterOrdinal(tokens, at + 1)
  if (lower(tokens[next]) === 'of') next++
  const month = monthOf(tokens[next])
  const year = yearAt(tokens, next + 1)
  return day && month && year ? found(year.next, dateOf(year.year, month, day)) : null
}

function monthFirst(tokens: readonly Scanned[], at: number): Found | null {
  const month = monthOf(tokens[at])
  const from = tokens[at + 1]?.text === '.' ? at + 2 : at + 1
  const day = whole(tokens[from], /^\d\d?$/)
  const year = yearAt(tokens, afterOrdinal(tokens, from + 1))
  return month && day && year ? found(year.next, dateOf(year.year, month, day)) : null
}

function slashed(tokens: readonly Scanned[], at: number): Found | null {
  const sign = tokens[at + 1]?.text
  if ((sign !== '/' && sign !== '.') || tokens[at + 3]?.text !== sign) return null
  const [a, b, year] = [at, at + 2, at + 4].map((i, n) => whole(tokens[i], n === 2 ? /^(19|20|21)\d\d$/ : /^\d\d?$/))
  if (!a || !b || !year) return null
  const [monthThenDay, dayThenMonth] = [dateOf(year, a, b), dateOf(year, b, a)]
  return found(at + 5, monthThenDay, a === b ? undefined : dayThenMonth)
}

const months =
  /^(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec|january|february|march|april|june|july|august|september|october|november|december)$/
/** Nov 25, in 2026, and what only looks like an hour, 10:31 or 1:12: not quantities. */
export function isDateOrTime(tokens: readonly Scanned[], at: number): boolean {
  const token = tokens[at] as Scanned
  if (token.sort !== 'digits') return false
  const [before, after] = [lower(tokens[at - 1]), tokens[at + 1]]
  if (/^(am|pm)$/.test(lower(after)) || (after?.text === ':' && after.glued && tokens[at + 2]?.glued)) return true
  if (months.test(before) && /^\d{1,2}$/.test(token.text)) return true
  if (months.test(lower(after)) && /^\d{1,2}$/.test(token.text) && lower(after) !== 'may') return true
  if (
    /^(19|20)\d\d$/.test(token.text) &&
    (months.test(before) ||
      (/^(in|since)$/.test(before) && !unitAt(tokens, at + 1, false) && !/\w/.test(after?.text ?? '')))
  )
    return true
  const dashed = (i: number): boolean =>
    tokens[i]?.text === '-' &&
    tokens[i]?.glued === true &&
    tokens[i + 1]?.glued === true &&
    tokens[i + 1]?.sort === 'digits'
  if (/^(19|20)\d\d$/.test(token.text) && dashed(at + 1) && dashed(at + 3)) return true
  return (
    tokens[at - 1]?.text === '-' &&
    tokens[at - 1]?.glued === true &&
    token.glued &&
    [at - 2, at - 4].some((i) => /^(19|20)\d\d$/.test(tokens[i]?.text ?? ''))
  )
}
