// The day to start on, so that so many working days of work are over by a date.
//
//   Thu   Fri  Sat Sun  Mon  Tue
//    3     2    ·   ·    1   by       the last of them is the day itself, where it is a working day
//   start
import { calculation } from '../../calculation.ts'
import { toNumber } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import { holidays } from '../../words/digging-notice.ts'
import { daysAhead, finishBy, startOn } from '../../words/working-days.ts'
import { nthWorkingBefore, workingWithout } from '../../working-days.ts'

export const workingDaysBefore = calculation({
  name: 'working-days-before',
  title: 'The day to start on',
  answers:
    'On which day to start, so that so many working days of work are over by a date, weekends and the holidays you name left out.',
  needs: { finishBy, daysAhead, holidays },
  may: ['holidays'],
  gives: { startOn },
  headlines: ['startOn'],
  called: ['working days before', 'business days before', 'days of work before', 'to finish', 'to be done'],
  lines: {
    calendarBack: ['finishBy - startOn', 'by the calendar, weekends and holidays counted'],
  },
  locals: { calendarBack: 'duration', startOn: 'date' },
  work({ finishBy: by, daysAhead: ahead }, { line, tell, has, rows, refuse, remark }) {
    const count = toNumber(ahead.amount)
    if (count < 1) refuse('daysAhead', `${show(ahead)} of work is none. How many does it take?`)
    const closed = has('holidays') ? rows('holidays') : []
    const isWorking = workingWithout(closed)
    const start = tell('startOn', nthWorkingBefore(by, count, isWorking))
    line('calendarBack')
    remark(
      `${show(start)} is the first of the ${show(ahead)}, and ${isWorking(by) ? `${show(by)} the last` : `the last working day before ${show(by)} the last`}. Rain takes days of its own: start sooner.`,
    )
    remark(`Saturdays and Sundays${closed.length > 0 ? `, and ${closed.map(show).join(', ')},` : ''} are left out.`)
    if (closed.length === 0)
      remark('I know no holidays: each that falls in between puts the start a day sooner. Name them.')
  },
  sources: [{ fact: 'which day falls on which date', from: 'The Gregorian calendar; worked, no table.' }],
  cautions: [],
  examples: [
    // 15 working days to Friday 19 June 2026: three weeks, from Monday 1 June
    {
      ask: 'When should I start to finish 15 working days of work by 19 June 2026?',
      given: { finishBy: '2026-06-19', daysAhead: '15' },
      expect: { startOn: 'Monday 1 June 2026' },
    },
    // to Sunday 3 January 2027 without 25 and 28 December and 1 January: 31, 30, 29, 24, 23
    {
      ask: 'I want to be done by 3 January 2027 and need 5 working days, holidays on 25 December 2026, 28 December 2026 and 1 January 2027. When do I start?',
      given: { finishBy: '2027-01-03', daysAhead: '5', holidays: ['2026-12-25', '2026-12-28', '2027-01-01'] },
      expect: { startOn: 'Wednesday 23 December 2026' },
    },
  ],
})
