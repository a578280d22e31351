// The date so many days, weeks or months after another, or before it, by the calendar.
//
//   ├── so long ──┤
//   from          later          every day counted, weekends and holidays as well
import { calculation } from '../../calculation.ts'
import { isExact, toNumber } from '../../quantities/amount.ts'
import { daysAfter, monthsAfter } from '../../quantities/calendar.ts'
import { amountIn, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dateEarlier, dateLater, fromDay, laterBy } from '../../words/working-days.ts'

const longestYears = 100
const monthsIn: Readonly<Record<string, number>> = { month: 1, year: 12 }

export const daysLater = calculation({
  name: 'days-later',
  title: 'The date so many days later, or earlier',
  answers: 'Which date comes so many days, weeks or months after another, or before it, every day counted.',
  needs: { fromDay, laterBy },
  gives: { dateLater, dateEarlier },
  headlines: ['dateLater', 'dateEarlier'],
  plain: true,
  lines: {
    daysOn: ['dateLater - fromDay', 'from the one date to the other, in nights'],
    daysBack: ['fromDay - dateEarlier', 'from the one date to the other, in nights'],
  },
  locals: { dateLater: 'date', dateEarlier: 'date' },
  work({ fromDay: from, laterBy: by }, { line, tell, wants, refuse, remark }) {
    const beyond = (): never =>
      refuse('laterBy', `${show(by)} from ${show(from)} leads out of the years that I keep, 1900 to 2199. Check both.`)
    if (toNumber(amountIn(by, 'year')) > longestYears) beyond()
    const reached = (sign: 1 | -1): Quantity => moved(from, by, sign) ?? beyond()
    if (wants('dateLater')) {
      tell('dateLater', reached(1))
      line('daysOn')
    }
    if (wants('dateEarlier')) {
      tell('dateEarlier', reached(-1))
      line('daysBack')
    }
    const hours = amountIn(by, 'h')
    if (by.unit === 'h' || by.unit === 'min')
      remark(
        isExact(hours) && hours.div(24).d === 1n
          ? 'Counted from hour to hour: at the same hour of that day, not sooner.'
          : 'A part of a day is counted as a day begun: it may come sooner by the clock.',
      )
    if (by.unit in monthsIn && Number.isInteger(toNumber(amountIn(by, by.unit)) * (monthsIn[by.unit] ?? 0)))
      remark('A month on is the same day of the next month, or its last day where that is shorter.')
    remark('Every day is counted, Saturdays, Sundays and holidays as well. For working days, say so.')
  },
  sources: [{ fact: 'which day falls on which date', from: 'The Gregorian calendar; worked, no table.' }],
  cautions: [],
  examples: [
    // 15 to 30 June: 15; July 31: 46; August 31: 77; 13 more
    {
      ask: 'What date is 90 days after 15 June 2025?',
      given: { fromDay: '2025-06-15', laterBy: '90 days' },
      expect: { dateLater: 'Saturday 13 September 2025' },
    },
    // 6 weeks are 42 days: 31 back to 1 May's eve, 30 April; 11 more
    {
      ask: 'What date is 6 weeks before 1 June 2025?',
      given: { fromDay: '2025-06-01', laterBy: '6 weeks' },
      expect: { dateEarlier: 'Sunday 20 April 2025' },
    },
  ],
})

/** Months and years go by the day of the month, all else by days; a day begun counts. */
function moved(from: Quantity, by: Quantity, sign: 1 | -1): Quantity | undefined {
  const months = monthsIn[by.unit]
  const count = toNumber(amountIn(by, by.unit))
  if (months && Number.isInteger(count * months)) return monthsAfter(from, sign * count * months)
  return daysAfter(from, sign * Math.ceil(toNumber(amountIn(by, 'day'))))
}
