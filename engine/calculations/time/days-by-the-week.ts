// Work done bit by bit on some days of the week: how many days, how many weeks, and on which day it ends.
//
//   Mo Tu We Th Fr Sa Su │ Mo Tu We
//   ▓▓ ▓▓ ▓▓ ▓▓ ▓▓ ▓▓  ·  │ ▓▓ ○○ ○○ ▶      ▓ so many pieces each, · not worked, ○ the wait behind, ▶ ready
import { calculation } from '../../calculation.ts'
import { toNumber } from '../../quantities/amount.ts'
import { daysAfter, weekdayOf, weekdays } from '../../quantities/calendar.ts'
import { numberIn, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  dayOfIt,
  daysDone,
  daysInAll,
  firstWeekday,
  lastDayOn,
  otherDays,
  readyOn,
  thingsATime,
  thingsToDo,
  timesOver,
  waitBehind,
  weekdayReached,
  weeksWorked,
  weekWorked,
} from '../../words/days-of-work.ts'
import { fromDay } from '../../words/working-days.ts'

/** How many days of a week are worked, and which, from Monday on, where that is said. */
const weeks = {
  every: { days: 7, works: () => true },
  notSundays: { days: 6, works: (day: number) => day < 6 },
  weekdays: { days: 5, works: (day: number) => day < 5 },
  weekends: { days: 2, works: (day: number) => day > 4 },
  one: { days: 1, works: undefined },
  two: { days: 2, works: undefined },
  three: { days: 3, works: undefined },
  four: { days: 4, works: undefined },
} as const

const mostDays = 2000

export const daysByTheWeek = calculation({
  name: 'days-by-the-week',
  title: 'Days and evenings of work, by the week',
  answers:
    'How many evenings or days work takes at so many pieces each time, how many weeks, and on which day it ends.',
  needs: {
    thingsToDo,
    thingsATime,
    timesOver,
    daysDone,
    otherDays,
    waitBehind,
    weekWorked,
    firstWeekday,
    fromDay,
  },
  may: [
    'thingsToDo',
    'thingsATime',
    'timesOver',
    'daysDone',
    'otherDays',
    'waitBehind',
    'weekWorked',
    'firstWeekday',
    'fromDay',
  ],
  gives: { daysInAll, weeksWorked, lastDayOn, readyOn, weekdayReached, dayOfIt },
  headlines: ['daysInAll'],
  together: {
    lastDayOn: ['lastDayOn', 'daysInAll'],
    readyOn: ['readyOn', 'lastDayOn', 'daysInAll'],
    weekdayReached: ['weekdayReached', 'dayOfIt', 'daysInAll'],
    weeksWorked: ['weeksWorked', 'daysInAll'],
  },
  locals: {
    oneCoat: 'count',
    oneDay: 'duration',
    perWeek: 'number',
    allDays: 'number',
    piecesOver: 'count',
    daysOfPieces: 'count',
    daysOfParts: 'count',
  },
  lines: {
    piecesOver: [
      'max(ceil(thingsToDo * timesOver / oneCoat / thingsATime), timesOver / oneCoat)',
      'every coat goes over all of them, and no two on one day; one begun counts',
    ],
    daysOfPieces: ['ceil(thingsToDo / thingsATime)', 'one that is begun counts'],
    daysOfParts: ['sum(otherDays) / oneDay', 'one part after another'],
    weeksWorked: ['ceil(allDays / perWeek)', 'a week that is begun counts'],
  },
  work({ daysDone: before, weekWorked, firstWeekday: first, fromDay: from, waitBehind: wait }, tools) {
    const { line, put, has, need, tell, wants, refuse, remark } = tools
    put('oneCoat', quantity(1, 'coat'))
    put('oneDay', quantity(1, 'day'))
    // A date and the day of the week beside it are wanted only where everything is: then what is not told is passed over.
    const isOfAll = wants('lastDayOn') && wants('weekdayReached')
    const isOfPieces = has('thingsToDo') || has('thingsATime') || !(has('daysDone') || has('otherDays'))
    if (isOfPieces) {
      if (!has('thingsToDo')) need('thingsToDo')
      if (!has('thingsATime')) need('thingsATime')
    }
    const ofPieces = isOfPieces ? line(has('timesOver') ? 'piecesOver' : 'daysOfPieces', 'working day') : undefined
    const ofParts = has('otherDays') ? line('daysOfParts', 'working day') : undefined
    const all = [ofPieces, ofParts, has('daysDone') ? before : undefined]
    const days = Math.ceil(all.reduce((sum, it) => sum + (it ? toNumber(it.amount) : 0), 0) - 1e-9)
    if (days > mostDays) refuse('thingsATime', `That is more than ${mostDays} days. Check both numbers.`)
    tell('daysInAll', quantity(days, 'working day'))
    const week = has('weekWorked') ? weeks[weekWorked as keyof typeof weeks] : undefined
    if (week) {
      put('allDays', quantity(days, 'ratio'))
      put('perWeek', quantity(week.days, 'ratio'))
      line('weeksWorked')
    } else if (wants('weeksWorked') && !isOfAll) need('weekWorked')
    const isDated = wants('lastDayOn') || wants('readyOn')
    if (isDated && !isOfAll && !has('fromDay')) need('fromDay')
    if (wants('weekdayReached') && !isOfAll && !has('firstWeekday')) need('firstWeekday')
    if (wants('readyOn') && !isOfAll && !has('waitBehind')) need('waitBehind')
    if (days < 1 || !(has('fromDay') || has('firstWeekday'))) return
    if (week && !week.works) {
      if ((isDated || wants('weekdayReached')) && !isOfAll)
        refuse(
          'weekWorked',
          'Say which days of the week you work: every day, all but Sundays, Monday to Friday, or weekends. From a number of days I cannot tell a date.',
        )
      return
    }
    const works = week?.works ?? (() => true)
    const start = has('fromDay') ? weekdayOf(from) : weekdays.findIndex((it) => it.toLowerCase() === first)
    let on = 0
    const begins = works(start) ? 0 : [1, 2, 3, 4, 5, 6].find((it) => works((start + it) % 7))
    for (let worked = works(start) ? 1 : 0; worked < days; ) {
      on++
      if (works((start + on) % 7)) worked++
    }
    const waits = has('waitBehind') ? Math.ceil(numberIn(wait, 'day') - 1e-9) : 0
    const name = (day: number): string =>
      `a ${weekdays[(start + day) % 7]}${day < 7 ? '' : `, in week ${Math.floor(day / 7) + 1}`}`
    if (has('fromDay')) {
      tell('lastDayOn', daysAfter(from, on))
      if (has('waitBehind')) tell('readyOn', daysAfter(from, on + waits))
    }
    tell('weekdayReached', (weekdays[(start + on + waits) % 7] as string).toLowerCase())
    tell('dayOfIt', quantity(on + waits + 1, 'calendar day'))
    remark(
      `${begins ? `Work begins on ${name(begins)}` : 'The first day is one of them'}, and the last of the work is ${name(on)}.${has('waitBehind') ? ` ${show(wait)} after it is ${name(on + waits)}.` : ''}`,
    )
    remark(
      week?.works
        ? `Worked ${weekSaid[weekWorked as keyof typeof weekSaid] ?? 'every day'}; none lost to weather.`
        : 'I counted every day, Saturdays and Sundays too, and none lost to weather: say which days you work, where it is fewer.',
    )
  },
  sources: [
    { fact: 'days = what there is to do ÷ what is done each time, rounded up', from: 'Arithmetic; needs no table.' },
    { fact: 'which day falls on which date', from: 'The Gregorian calendar; worked, no table.' },
  ],
  cautions: ['weather'],
  examples: [
    // 26 × 2 / 8 = 6.5 → 7 evenings; Mon 7 to Sat 12 September: 6, Sunday off, Mon 14: 7
    {
      ask: 'I stain 8 panels of an evening, 26 of them, two coats. Starting Monday 7 September 2026, every evening but Sundays, what date am I done?',
      given: { thingsToDo: '26', thingsATime: '8', timesOver: '2', weekWorked: 'notSundays', fromDay: '2026-09-07' },
      expect: { lastDayOn: 'Monday 14 September 2026', daysInAll: '7 working days' },
    },
    // 44 / 15 → 3 mornings; two a week: 2 weeks
    {
      ask: 'There are 44 pickets, I hang 15 in a morning and work only on Monday and Friday mornings. How many weeks?',
      given: { thingsToDo: '44', thingsATime: '15', weekWorked: 'two' },
      expect: { weeksWorked: '2 working weeks', daysInAll: '3 working days' },
    },
  ],
})

const weekSaid = {
  every: 'every day',
  notSundays: 'every day but Sundays',
  weekdays: 'Monday to Friday',
  weekends: 'on Saturdays and Sundays',
} as const
