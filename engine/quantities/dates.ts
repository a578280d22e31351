// This file is about dates in a message: whole dates are quantities, parts of one are not.
import { toNumber } from './amount.ts'
import { dateOf, isoDate, showDate, weekdayOf, weekdays } from './calendar.ts'
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

/** A day of some year, “July 4”, “Friday 18 April”, “the 4th of July”: which year, the other dates of the message say. */
export interface DayAndMonth {
  readonly next: number
  readonly month: number
  readonly day: number
  /** 0 for Monday, where the weekday is said as well. */
  readonly weekday?: number
}

/** The day and month that begin at a token, with no year behind them. */
export function dayAndMonthAt(tokens: readonly Scanned[], at: number): DayAndMonth | null {
  const named = weekday.test(lower(tokens[at]))
  let from = named && /^[.,]$/.test(tokens[at + 1]?.text ?? '') ? at + 2 : named ? at + 1 : at
  if (lower(tokens[from]) === 'the') from++
  const found =
    dayThenMonth(tokens, from) ??
    monthThenDay(tokens, from) ??
    (named ? monthThenOrdinal(tokens, from) : null) ??
    dayOfSameMonth(tokens, from)
  if (!found || !isDay(found.month, found.day)) return null
  const said = weekdays.findIndex((it) => it.toLowerCase().startsWith(lower(tokens[at]).slice(0, 3)))
  return named ? { ...found, weekday: said } : found
}

const isDay = (month: number, day: number): boolean => dateOf(2024, month, day) !== undefined
/** “May” is a month only where nothing makes a verb of it: “2 may fail”. */
const endsDay = (token: Scanned | undefined): boolean =>
  token === undefined ||
  token.sort === 'sign' ||
  /^(and|or|to|till|until|through|thru|off|is|are|was|as|with|for|if|when|how|what|then|being|closed|shut|holidays?|public|bank|not|does|doesn't|only|both|i|we|my|so|but|plus|inclusive|recoat|repaint)$/.test(
    lower(token),
  )

function dayThenMonth(tokens: readonly Scanned[], at: number): DayAndMonth | null {
  const it = dayAt(tokens, at)
  if (!it) return null
  const { day } = it
  let { next } = it
  if (lower(tokens[next]) === 'of') next++
  const month = monthOf(tokens[next])
  if (!month || yearAt(tokens, next + 1)) return null
  if (lower(tokens[next]) === 'may' && !endsDay(tokens[next + 1])) return null
  return { next: next + 1, month, day }
}

function monthThenDay(tokens: readonly Scanned[], at: number): DayAndMonth | null {
  const month = monthOf(tokens[at])
  const from = tokens[at + 1]?.text === '.' ? at + 2 : at + 1
  const day = whole(tokens[from], /^\d\d?$/)
  if (!month || !day) return null
  const next = afterOrdinal(tokens, from + 1)
  if (yearAt(tokens, next)) return null
  // “gaps may 3 in”, “march 3 ft”: a measure, and no day.
  return next === from + 1 && unitAt(tokens, next, false) && !endsDay(tokens[next]) ? null : { next, month, day }
}

/** “Monday June second”. */
function monthThenOrdinal(tokens: readonly Scanned[], at: number): DayAndMonth | null {
  const month = monthOf(tokens[at])
  const from = lower(tokens[at + 1]) === 'the' ? at + 2 : at + 1
  const it = month ? dayAt(tokens, from) : undefined
  return month && it && !yearAt(tokens, it.next) ? { next: it.next, month, day: it.day } : null
}

/** How a year that nobody said is told. */
export const yearTaken = 'read in'

const begins =
  /^(start|starts|starting|begin|begins|beginning|kick|kicking|commence|from|day|pour|pours|poured|pouring|concrete)$/
// The first year that is looked at, and as many as there are until every date has had every weekday.
const [firstYear, yearsLooked] = [2025, 28]

/**
 * “We start Monday June second”, with no year in the message or the talk: the first year in which that day is a Monday. What is counted from it falls
 * on the same weekdays in each of them, but for days before March, which a leap day may follow.
 */
export function yearByWeekday(it: DayAndMonth, tokens: readonly Scanned[], at: number): Found | null {
  const isLed = tokens.slice(Math.max(0, at - 3), at).some((token) => begins.test(lower(token)))
  if (it.weekday === undefined || it.month < 3 || !isLed) return null
  const dates = Array.from({ length: yearsLooked }, (_, i) => dateOf(firstYear + i, it.month, it.day))
  const date = dates.find((each) => each && weekdayOf(each) === it.weekday)
  if (!date) return null
  const year = isoDate(date).slice(0, 4)
  return {
    next: it.next,
    quantity: date,
    bare: null,
    note: `${yearTaken} ${year}, in which it is a ${weekdays[it.weekday]}`,
  }
}

/** “18 and 21 April”, “July 3 and 4”: the month is said once for both. */
function dayOfSameMonth(tokens: readonly Scanned[], at: number): DayAndMonth | null {
  const day = whole(tokens[at], /^\d\d?$/)
  if (!day) return null
  const next = afterOrdinal(tokens, at + 1)
  const month = monthAhead(tokens, next) ?? monthBehind(tokens, at - 1, next)
  return month ? { next, month, day } : null
}

/** In tokens: a dozen days of one month. */
const longestChain = 36

function monthAhead(tokens: readonly Scanned[], at: number): number | undefined {
  let next = at
  let hasAnd = false
  while (/^(,|and|&)$/.test(lower(tokens[next])) && next < at + longestChain) {
    if (lower(tokens[next]) !== ',') hasAnd = true
    const day = next + (tokens[next]?.text === ',' && /^(and|&)$/.test(lower(tokens[next + 1])) ? 2 : 1)
    if (day === next + 2) hasAnd = true
    if (!whole(tokens[day], /^\d\d?$/)) return undefined
    next = afterOrdinal(tokens, day + 1)
    const from = lower(tokens[next]) === 'of' ? next + 1 : next
    const month = monthOf(tokens[from])
    if (month) return hasAnd ? month : undefined
  }
  return undefined
}

function monthBehind(tokens: readonly Scanned[], joint: number, next: number): number | undefined {
  if (!/^(and|&)$/.test(lower(tokens[joint])) || !(endsDay(tokens[next]) || yearAt(tokens, next))) return undefined
  let at = joint - 1
  if (yearIn(tokens[at])) at -= tokens[at - 1]?.text === ',' ? 2 : 1
  if (/^(st|nd|rd|th)$/.test(lower(tokens[at]))) at--
  return whole(tokens[at], /^\d\d?$/) ? monthOf(tokens[tokens[at - 1]?.text === '.' ? at - 2 : at - 1]) : undefined
}
const yearIn = (token: Scanned | undefined): boolean => whole(token, /^(19|20|21)\d\d$/) !== undefined

/** How many days before another date one without its year may lie: behind it in the message it mostly comes later, before it either way. */
const mostBefore = { saidAfter: 60, saidBefore: 182 }

/** The first such date that lies no more than so many days before another date of the message, and less than a year and a half after it. */
export function inYearOf(it: DayAndMonth, other: Quantity, isSaidAfter: boolean): Found | null {
  const earliest = toNumber(other.amount) - (isSaidAfter ? mostBefore.saidAfter : mostBefore.saidBefore)
  const year = Number(isoDate(other).slice(0, 4))
  const dates = [year - 1, year, year + 1, year + 2]
    .map((each) => dateOf(each, it.month, it.day))
    .filter((date) => date !== undefined)
  const date = dates.find((each) => toNumber(each.amount) >= earliest)
  if (!date || toNumber(date.amount) > toNumber(other.amount) + 550) return null
  const fits = it.weekday === undefined || weekdayOf(date) === it.weekday
  return {
    next: it.next,
    quantity: date,
    bare: null,
    ...(fits ? {} : { note: `that day is a ${showDate(date).split(' ')[0]} in ${isoDate(date).slice(0, 4)}` }),
  }
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
  const joint = tokens[at + 1]?.text ?? ''
  if (!year || !month || !day || !/^[-/]$/.test(joint) || tokens[at + 3]?.text !== joint) return null
  return found(at + 5, dateOf(year, month, day))
}

const afterOrdinal = (tokens: readonly Scanned[], at: number): number =>
  /^(st|nd|rd|th)$/.test(lower(tokens[at])) ? at + 1 : at
const yearAt = (tokens: readonly Scanned[], at: number): { year: number; next: number } | null => {
  const from = tokens[at]?.text === ',' || tokens[at]?.text === '.' ? at + 1 : at
  const year = whole(tokens[from], /^(19|20|21)\d\d$/)
  return year ? { year, next: from + 1 } : null
}

const firstNine = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth']
const ordinals = [
  ...firstNine,
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
  'eighteenth',
  'nineteenth',
  'twentieth',
  ...firstNine.map((it) => `twenty-${it}`),
  'thirtieth',
  'thirty-first',
]

/** The day of a month, “3”, “3rd” or “third”, and the token after it. */
function dayAt(tokens: readonly Scanned[], at: number): { day: number; next: number } | undefined {
  const digits = whole(tokens[at], /^\d\d?$/)
  if (digits !== undefined) return { day: digits, next: afterOrdinal(tokens, at + 1) }
  const one = lower(tokens[at])
  const second = tokens[at + 1]?.text === '-' ? at + 2 : at + 1
  const both = ordinals.indexOf(`${one}-${lower(tokens[second])}`)
  if (both >= 0) return { day: both + 1, next: second + 1 }
  const alone = ordinals.indexOf(one)
  return alone >= 0 ? { day: alone + 1, next: at + 1 } : undefined
}

function dayFirst(tokens: readonly Scanned[], at: number): Found | null {
  const it = dayAt(tokens, at)
  if (!it) return null
  const { day } = it
  let { next } = it
  // "05-Oct-2026".
  const isDashed = tokens[next]?.text === '-' && tokens[next + 2]?.text === '-'
  if (lower(tokens[next]) === 'of' || isDashed) next++
  const month = monthOf(tokens[next])
  const year = yearAt(tokens, isDashed ? next + 2 : next + 1)
  return day && month && year ? found(year.next, dateOf(year.year, month, day)) : null
}

function monthFirst(tokens: readonly Scanned[], at: number): Found | null {
  const month = monthOf(tokens[at])
  const from = tokens[at + 1]?.text === '.' ? at + 2 : at + 1
  if (!month) return null
  const it = dayAt(tokens, lower(tokens[from]) === 'the' ? from + 1 : from)
  const year = it && yearAt(tokens, it.next)
  const day = it?.day
  return day && year ? found(year.next, dateOf(year.year, month, day)) : null
}

function slashed(tokens: readonly Scanned[], at: number): Found | null {
  const dotted = /^(\d\d?)\.(\d\d?)\.((?:19|20|21)\d\d)$/.exec(tokens[at]?.text ?? '')
  // With points the day comes first, wherever they are written so.
  if (dotted) return found(at + 1, dateOf(Number(dotted[3]), Number(dotted[2]), Number(dotted[1])))
  const yearFirst = /^((?:19|20|21)\d\d)\.(\d\d?)\.(\d\d?)$/.exec(tokens[at]?.text ?? '')
  if (yearFirst) return found(at + 1, dateOf(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3])))
  const sign = tokens[at + 1]?.text
  if (!/^[-/.]$/.test(sign ?? '') || tokens[at + 3]?.text !== sign) return null
  const [a, b] = [whole(tokens[at], /^\d\d?$/), whole(tokens[at + 2], /^\d\d?$/)]
  const year = whole(tokens[at + 4], /^(19|20|21)\d\d$/) ?? shortYear(tokens, at)
  return a && b && year ? eitherWay(at + 5, a, b, year) : null
}

/** “25/12/26”, written tight: a date of this century. “6/8/10” are sides, and “3/4/5” is a corner laid out. */
function shortYear(tokens: readonly Scanned[], at: number): number | undefined {
  const isTight = [1, 2, 3, 4].every((i) => tokens[at + i]?.glued) && tokens[at + 1]?.text === '/'
  const year = isTight ? whole(tokens[at + 4], /^[2-4]\d$/) : undefined
  return year && 2000 + year
}

function eitherWay(next: number, a: number, b: number, year: number): Found | null {
  const [monthThenDay, dayThenMonth] = [dateOf(year, a, b), dateOf(year, b, a)]
  return found(next, monthThenDay, a === b ? undefined : dayThenMonth)
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
