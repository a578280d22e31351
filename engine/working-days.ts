// This file is about working days: Monday to Friday, without the holidays that the person named. No holiday is built in: they differ by country, state and year.
import { toNumber } from './quantities/amount.ts'
import { daysAfter, weekdayOf } from './quantities/calendar.ts'
import { less, type Quantity } from './quantities/quantity.ts'

export type IsWorking = (day: Quantity) => boolean

/** Monday to Friday, or so many days of the week from Monday on, but for these days. */
export function workingWithout(holidays: readonly Quantity[], daysOfWeek = 5): IsWorking {
  const closed = new Set(holidays.map((it) => toNumber(it.amount)))
  return (day) => weekdayOf(day) < daysOfWeek && !closed.has(toNumber(day.amount))
}

/** The working day so many working days after that one, which does not count itself. */
export function nthWorking(from: Quantity, count: number, isWorking: IsWorking): Quantity {
  let day = from
  for (let passed = 0; passed < count; ) {
    day = daysAfter(day, 1)
    if (isWorking(day)) passed++
  }
  return day
}

/** The day on which so many working days begin that end on that one, or on the last working day before it. */
export function nthWorkingBefore(by: Quantity, count: number, isWorking: IsWorking): Quantity {
  let day = daysAfter(by, 1)
  for (let passed = 0; passed < count; ) {
    day = daysAfter(day, -1)
    if (isWorking(day)) passed++
  }
  return day
}

/** The first working day after so many full ones that follow the day of the call. */
export function firstAfterNotice(call: Quantity, notice: number, isWorking: IsWorking): Quantity {
  return nthWorking(nthWorking(call, notice, isWorking), 1, isWorking)
}

/** How many working days there are from the first to the last, both counted. */
export function workingBetween(first: Quantity, last: Quantity, isWorking: IsWorking): number {
  let count = 0
  for (let day = first; !less(last, day); day = daysAfter(day, 1)) if (isWorking(day)) count++
  return count
}
