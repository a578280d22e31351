// Days of the calendar, against JavaScript's own calendar (proleptic Gregorian, UTC), which the engine may not use.
import { describe, expect, it } from 'vitest'
import { dateOf, daysAfter, isoDate, showDate, weekdayOf, weekdays } from '../../../engine/quantities/calendar.ts'
import { isQuantity, type Quantity } from '../../../engine/quantities/quantity.ts'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'

const date = (year: number, month: number, day: number): Quantity => dateOf(year, month, day) as Quantity

describe('days', () => {
  it('agrees with the platform on every day from 1999 to 2101', () => {
    const day = new Date(Date.UTC(1999, 0, 1))
    while (day.getUTCFullYear() < 2101) {
      const ours = date(day.getUTCFullYear(), day.getUTCMonth() + 1, day.getUTCDate())
      const text = day.toISOString().slice(0, 10)
      expect(Number(ours.amount.valueOf()), text).toBe(day.getTime() / 86_400_000)
      expect(isoDate(ours)).toBe(text)
      expect((weekdayOf(ours) + 1) % 7).toBe(day.getUTCDay())
      day.setUTCDate(day.getUTCDate() + 1)
    }
  })

  it('knows no 31st of June, and no 29th of February in 2100', () => {
    expect(dateOf(2026, 6, 31)).toBeUndefined()
    expect(dateOf(2100, 2, 29)).toBeUndefined()
    expect(dateOf(2000, 2, 29)).toBeDefined()
  })

  it('ten days after the 25th of December 2026 is Monday 4 January 2027', () => {
    expect(showDate(daysAfter(date(2026, 12, 25), 10))).toBe('Monday 4 January 2027')
    expect(weekdays[0]).toBe('Monday')
  })
})

describe('dates in a message', () => {
  const read = (text: string): string[] =>
    readQuantities(text)
      .filter((it) => !it.clock)
      .map((it) => [it.quantity, ...it.rivals].filter(isQuantity).map(show).join(' or '))

  it.each([
    ['I call on 2026-10-05', 'Monday 5 October 2026'],
    ['on Oct 5th, 2026', 'Monday 5 October 2026'],
    ['the 5th of October 2026 at 3 pm', 'Monday 5 October 2026'],
    ['Monday 5 October 2026', 'Monday 5 October 2026'],
    ['Tues, Oct. 6 2026', 'Tuesday 6 October 2026'],
    ['25/12/2026', 'Friday 25 December 2026'],
  ])('%s is one date', (text, expected) => expect(read(text)).toEqual([expected]))

  it('5/10/2026 may be either way round, and a weekday settles it', () => {
    expect(read('call on 5/10/2026')).toEqual(['Sunday 10 May 2026 or Monday 5 October 2026'])
    expect(read('call on Monday 5/10/2026')).toEqual(['Monday 5 October 2026'])
  })

  it('a weekday that does not fit is said back', () => {
    expect(readQuantities('Friday 5 October 2026')[0]?.note).toBe('that day is a Monday')
  })

  it.each(['on Nov 25', 'at 10:30', '31 June 2026', 'in November 2026'])('“%s” is no whole date', (text) =>
    expect(read(text)).toEqual([]),
  )

  it('what is shown reads again as the same day', () => {
    for (let i = 0; i < 800; i++) {
      const day = daysAfter(date(2026, 1, 1), i)
      expect(readQuantities(show(day)).map((it) => it.quantity)).toEqual([day])
    }
  })
})
