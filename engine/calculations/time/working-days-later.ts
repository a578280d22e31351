// The date so many working days after another.
//
//   Thu   Fri  Sat Sun  Mon  Tue
//   from   1    ·   ·    2    3         the day you count from is not one of them
//    1     2    ·   ·    3              … or it is, where the work begins on that day
import { calculation } from '../../calculation.ts'
import { toNumber } from '../../quantities/amount.ts'
import { daysAfter } from '../../quantities/calendar.ts'
import { show } from '../../quantities/show.ts'
import { holidays } from '../../words/digging-notice.ts'
import { dayReached, daysAhead, fromDay, lastWorkDay, lostDays, workWeek } from '../../words/working-days.ts'
import { nthWorking, workingWithout } from '../../working-days.ts'

/** How many days of the week are worked, from Monday on. */
const daysOf = { five: 5, six: 6, seven: 7 } as const

export const workingDaysLater = calculation({
  name: 'working-days-later',
  title: 'The date so many working days later',
  answers: 'Which date comes so many working days after another, weekends and the holidays you name left out.',
  needs: { fromDay, daysAhead, lostDays, holidays, workWeek },
  may: ['holidays', 'lostDays', 'workWeek'],
  gives: { dayReached, lastWorkDay },
  headlines: ['dayReached', 'lastWorkDay'],
  together: { dayReached: ['dayReached', 'lastWorkDay'], lastWorkDay: ['lastWorkDay', 'dayReached'] },
  lines: {
    calendarAhead: ['dayReached - fromDay', 'by the calendar, weekends and holidays counted'],
  },
  locals: { calendarAhead: 'duration', dayReached: 'date' },
  work({ fromDay: from, daysAhead: ahead, lostDays: lost, workWeek: week }, { line, tell, has, rows, remark }) {
    const closed = has('holidays') ? rows('holidays') : []
    const days = has('workWeek') ? daysOf[week as keyof typeof daysOf] : daysOf.five
    const isWorking = workingWithout(closed, days)
    const count = toNumber(ahead.amount) + (has('lostDays') ? toNumber(lost.amount) : 0)
    tell('dayReached', nthWorking(from, count, isWorking))
    line('calendarAhead')
    // The first day is one of them, where it is a working day; a job that starts on a Sunday starts on Monday.
    const last = count > 0 ? nthWorking(daysAfter(from, -1), count, isWorking) : undefined
    if (last) tell('lastWorkDay', last)
    remark(
      last
        ? `Does the first day count? Where work is done on ${show(from)} already, the last of ${show(ahead)} is ${show(last)}; where the count begins on the day after, as with notices, it is ${show(nthWorking(from, count, isWorking))}.`
        : `${show(ahead)} after ${show(from)} is the day itself.`,
    )
    if (has('lostDays')) remark(`${show(lost)} come on top: the work then ends so many working days later.`)
    const free = days === 5 ? ['Saturdays', 'Sundays'] : days === 6 ? ['Sundays'] : []
    const out = [...free, ...closed.map(show)]
    if (out.length > 0)
      remark(
        days === 5
          ? `Saturdays and Sundays${closed.length > 0 ? `, and ${closed.map(show).join(', ')},` : ''} are left out.`
          : `${out.join(', ')} ${out.length === 1 && days === 7 ? 'is' : 'are'} left out.`,
      )
    if (closed.length === 0) remark('I know no holidays: each that falls in between puts it off by a day. Name them.')
  },
  sources: [
    {
      fact: 'the day counted from is not one of them',
      from: 'As notices are mostly counted; common practice, no source',
    },
    { fact: 'which day falls on which date', from: 'The Gregorian calendar; worked, no table.' },
  ],
  cautions: [],
  examples: [
    // Monday 5 + 10: two whole weeks on
    {
      ask: 'What date is 10 working days after 5 October 2026?',
      given: { fromDay: '2026-10-05', daysAhead: '10' },
      expect: { dayReached: 'Monday 19 October 2026', lastWorkDay: 'Friday 16 October 2026' },
    },
    // Mon 21: 22, 23, 24, (25 h), (28 h), 29, 30, 31, (1 h), 4, 5, 6, 7
    {
      ask: 'Which date is 10 working days after 21 December 2026 with holidays on 25 December 2026, 28 December 2026 and 1 January 2027?',
      given: { fromDay: '2026-12-21', daysAhead: '10', holidays: ['2026-12-25', '2026-12-28', '2027-01-01'] },
      expect: { dayReached: 'Thursday 7 January 2027', lastWorkDay: 'Wednesday 6 January 2027' },
    },
    // Mon 3 to Fri 7: 5, to Fri 14: 10, Mon 17, Tue 18: 12
    {
      ask: 'If I start on Monday 3 March 2025 and need 12 working days, when do I finish?',
      given: { fromDay: '2025-03-03', daysAhead: '12' },
      expect: { lastWorkDay: 'Tuesday 18 March 2025', dayReached: 'Wednesday 19 March 2025' },
    },
    // Thu 4, Fri 5, Sat 6, Mon 8, Tue 9, Wed 10: 6, and 2 lost: Thu 11, Fri 12
    {
      ask: 'We start on Thursday 4 September 2025, need 6 working days, work Saturdays too and lose 2 days to rain: when do we finish?',
      given: { fromDay: '2025-09-04', daysAhead: '6', lostDays: '2', workWeek: 'six' },
      expect: { lastWorkDay: 'Friday 12 September 2025' },
    },
  ],
})
