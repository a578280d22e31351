// Working days from one date to another.
//
//   Fri   Sat Sun   Mon  Tue  Wed
//   from   ·   ·     1    2    to        counted with both ends, or without the first, as a notice is
import { calculation } from '../../calculation.ts'
import { toNumber } from '../../quantities/amount.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { holidays } from '../../words/digging-notice.ts'
import { calendarDays, fromDay, toDay, workingDaysAfter, workingDaysBoth } from '../../words/working-days.ts'
import { workingBetween, workingWithout } from '../../working-days.ts'

/** Longer than any job, and short enough to count day by day. */
const longest = 20_000

export const workingDaysBetween = calculation({
  name: 'working-days-between',
  title: 'Working days from one date to another',
  answers: 'How many working days lie from one date to another, weekends and the holidays you name left out.',
  needs: { fromDay, toDay, holidays },
  may: ['holidays'],
  gives: { workingDaysBoth, workingDaysAfter, calendarDays },
  headlines: ['workingDaysBoth', 'workingDaysAfter'],
  together: {
    workingDaysBoth: ['workingDaysBoth', 'workingDaysAfter', 'calendarDays'],
    calendarDays: ['calendarDays', 'workingDaysBoth', 'workingDaysAfter'],
  },
  lines: {
    calendarDays: ['toDay - fromDay', 'one date less the other, in nights'],
    workingDaysAfter: ['workingDaysBoth - firstCounts', 'without the first day, where that is one of them'],
  },
  locals: { firstCounts: 'number', workingDaysBoth: 'count' },
  work({ fromDay: from, toDay: to }, { line, put, tell, has, rows, refuse, remark }) {
    if (less(to, from))
      refuse('toDay', `${show(to)} comes before ${show(from)}. Check the dates, and which is the first.`)
    if (toNumber(to.amount) - toNumber(from.amount) > longest)
      refuse('toDay', `From ${show(from)} to ${show(to)} is longer than I count day by day. Check the years.`)
    const closed = has('holidays') ? rows('holidays') : []
    const isWorking = workingWithout(closed)
    tell('workingDaysBoth', quantity(workingBetween(from, to, isWorking), 'working day'))
    put('firstCounts', quantity(isWorking(from) ? 1 : 0, 'ratio'))
    line('workingDaysAfter')
    line('calendarDays')
    const idle = closed.filter((it) => less(it, from) || less(to, it))
    if (idle.length > 0)
      remark(
        `${idle.map(show).join(' and ')} ${idle.length > 1 ? 'lie outside, and change' : 'lies outside, and changes'} nothing.`,
      )
    remark(
      closed.length > 0
        ? 'Saturdays, Sundays and the holidays you named are left out.'
        : 'Saturdays and Sundays are left out. I know no holidays: name those that fall in between.',
    )
  },
  sources: [
    { fact: 'Monday to Friday are working days', from: 'common practice, no source' },
    { fact: 'which day falls on which date', from: 'The Gregorian calendar; worked, no table.' },
    { fact: 'holidays', from: 'As you gave them: they differ by country, state and year.' },
  ],
  cautions: [],
  examples: [
    // Monday 5 to Friday 16: two whole weeks
    {
      ask: 'How many working days are there between 5 October 2026 and 16 October 2026?',
      given: { fromDay: '2026-10-05', toDay: '2026-10-16' },
      expect: { workingDaysBoth: '10 working days', workingDaysAfter: '9 working days', calendarDays: '11 days' },
    },
    // Thursday 24 December to Monday 4 January: 24, 28 h, 29, 30, 31, 1 h, 4: 24, 29, 30, 31, 4
    {
      ask: 'How many working days from 24 December 2026 until 4 January 2027 with holidays on 25 December 2026, 28 December 2026 and 1 January 2027?',
      given: {
        fromDay: '2026-12-24',
        toDay: '2027-01-04',
        holidays: ['2026-12-25', '2026-12-28', '2027-01-01'],
      },
      expect: { workingDaysBoth: '5 working days', workingDaysAfter: '4 working days' },
    },
  ],
})
