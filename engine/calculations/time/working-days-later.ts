// The date so many working days after another.
//
//   Thu   Fri  Sat Sun  Mon  Tue
//   from   1    ·   ·    2    3         the day you count from is not one of them
import { calculation } from '../../calculation.ts'
import { toNumber } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import { holidays } from '../../words/digging-notice.ts'
import { dayReached, daysAhead, fromDay } from '../../words/working-days.ts'
import { nthWorking, workingWithout } from '../../working-days.ts'

export const workingDaysLater = calculation({
  name: 'working-days-later',
  title: 'The date so many working days later',
  answers: 'Which date comes so many working days after another, weekends and the holidays you name left out.',
  needs: { fromDay, daysAhead, holidays },
  may: ['holidays'],
  gives: { dayReached },
  headlines: ['dayReached'],
  lines: {
    calendarAhead: ['dayReached - fromDay', 'by the calendar, weekends and holidays counted'],
  },
  locals: { calendarAhead: 'duration', dayReached: 'date' },
  work({ fromDay: from, daysAhead: ahead }, { line, tell, has, rows, remark }) {
    const closed = has('holidays') ? rows('holidays') : []
    tell('dayReached', nthWorking(from, toNumber(ahead.amount), workingWithout(closed)))
    line('calendarAhead')
    remark(
      `Counted: ${show(from)} does not count; then ${show(ahead)}, Saturdays, Sundays${closed.length > 0 ? ' and the holidays you named' : ''} left out.`,
    )
    if (closed.length === 0) remark('I know no holidays: each that falls in between puts it off by a day. Name them.')
    remark('Where the first day counts in your case, it comes a working day sooner.')
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
      expect: { dayReached: 'Monday 19 October 2026' },
    },
    // Mon 21: 22, 23, 24, (25 h), (28 h), 29, 30, 31, (1 h), 4, 5, 6, 7
    {
      ask: 'Which date is 10 working days after 21 December 2026 with holidays on 25 December 2026, 28 December 2026 and 1 January 2027?',
      given: { fromDay: '2026-12-21', daysAhead: '10', holidays: ['2026-12-25', '2026-12-28', '2027-01-01'] },
      expect: { dayReached: 'Thursday 7 January 2027' },
    },
  ],
})
