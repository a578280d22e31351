// A day said without its year takes the year of the other date; without one it is no date. And what stands beside: hours with minutes.
import { describe, expect, it } from 'vitest'
import { dateOf, isoDate, monthsAfter } from '../../../engine/quantities/calendar.ts'
import type { Quantity } from '../../../engine/quantities/quantity.ts'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'

const dates = (text: string, near?: Quantity): string[] =>
  readQuantities(text, near ? { near } : {}).flatMap((it) =>
    it.quantity?.kind === 'date' ? [isoDate(it.quantity)] : [],
  )

describe('a day and its month', () => {
  it.each([
    ['call on wednesday july 2 2025, july 4 off', ['2025-07-02', '2025-07-04']],
    ['july 4 off, i call on july 2, 2025', ['2025-07-04', '2025-07-02']],
    ['24 December 2026, holidays 25 December and 1 January', ['2026-12-24', '2026-12-25', '2027-01-01']],
    ['from 28 December to 5 January 2027', ['2026-12-28', '2027-01-05']],
    ['from 14 April to 2 May 2025', ['2025-04-14', '2025-05-02']],
    ['start 3 March 2025, closed 25 December', ['2025-03-03', '2025-12-25']],
    ['20 June 2025, painted on the 3rd of May', ['2025-06-20', '2025-05-03']],
    ['holidays 18 and 21 April 2025', ['2025-04-18', '2025-04-21']],
    ['call July 1 2025, July 3 and 4 off', ['2025-07-01', '2025-07-03', '2025-07-04']],
    ['call 1 July 2025, Friday 4 July off', ['2025-07-01', '2025-07-04']],
    // Two days of notice are no second of July.
    ['call july 1 2025 and 2 days notice', ['2025-07-01']],
  ])('%s', (text, expected) => expect(dates(text)).toEqual(expected))

  it('is no date where nothing says the year', () => expect(dates('july 4 off, call tuesday')).toEqual([]))

  it('takes the year of the talk', () => expect(dates('june 19', dateOf(2025, 6, 17))).toEqual(['2025-06-19']))

  it('of another weekday than was said is said back', () => {
    // 4 July 2025 is a Friday.
    const found = readQuantities('call 1 July 2025, Monday July 4 off').at(-1)
    expect(found?.note).toBe('that day is a Friday in 2025')
  })

  it.each([
    ['2 may fail', ['2']],
    ['3 in gaps', ['3 in']],
  ])('%s holds none', (text, expected) =>
    expect(
      readQuantities(`1 May 2025. ${text}`)
        .slice(1)
        .map((it) => (it.quantity ? show(it.quantity) : String(it.bare))),
    ).toEqual(expected),
  )
})

describe('months later', () => {
  it.each([
    [[2025, 6, 15], 2, '2025-08-15'],
    // There is no 31 February: the last day of it.
    [[2024, 1, 31], 1, '2024-02-29'],
    [[2025, 1, 31], -2, '2024-11-30'],
    [[2025, 11, 30], 14, '2027-01-30'],
  ] as const)('%j and %d months', ([year, month, day], count, expected) =>
    expect(isoDate(monthsAfter(dateOf(year, month, day) as Quantity, count) as Quantity)).toBe(expected),
  )
})

describe('hours with their minutes', () => {
  it.each([
    ['2 h 45 min', 165],
    ['2 hours and 45 minutes', 165],
    ['1 hour 5 mins', 65],
    ['2h45', 165],
    ['1 1/2 h', 90],
  ])('%s are %d minutes', (text, minutes) => {
    const [only, more] = readQuantities(text)
    expect(more).toBeUndefined()
    expect(only?.quantity && Number(only.quantity.amount) * 1440).toBeCloseTo(minutes, 9)
  })

  it('8 h and 20 pickets are two things', () => expect(readQuantities('8 h 20 pickets')).toHaveLength(2))
})

describe('a stick that carries its length on', () => {
  it.each([
    ['2x4x8', '8 ft'],
    ['2x6x12s', '12 ft'],
    ['2x4x96', '96 in'],
  ])('%s is %s long', (text, long) => {
    const [stick, length] = readQuantities(text)
    expect(stick?.section).toBeDefined()
    expect(length?.quantity && show(length.quantity)).toBe(long)
  })
})
