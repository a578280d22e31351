// This file is about work that goes on day by day: so many pieces each time, on some days of the week, and a wait behind it.
import { word } from './word.ts'

const countOf = (name: string, noun: string, label: string, ask: string) =>
  word<'count'>(name, {
    kind: 'count',
    noun,
    label,
    measure: 'The same thing in both: pickets, posts, holes.',
    ask,
    called: {},
    possible: { above: '0' },
    plausible: { from: '1', to: '5000' },
  })
export const thingsToDo = countOf('thingsToDo', 'piece', 'all there are to do', 'How many are there to do?')
export const thingsATime = countOf(
  'thingsATime',
  'piece',
  'done each time',
  'How many do you do in a day, or in an evening?',
)
export const timesOver = countOf('timesOver', 'coat', 'coats on each', 'How many coats?')

/** Days of work that another sum came to. */
export const daysDone = word<'count'>('daysDone', {
  kind: 'count',
  noun: 'working day',
  label: 'days of the work before',
  measure: 'As it was worked.',
  ask: 'How many days does that take?',
  called: {},
})

export const otherDays = word<'duration'>('otherDays', {
  kind: 'duration',
  list: true,
  label: 'days of the other parts',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Part by part, one after another.',
  ask: 'How many days do the parts take?',
  called: {},
  possible: { above: '0 h' },
})

export const waitBehind = word<'duration'>('waitBehind', {
  kind: 'duration',
  label: 'wait after the last day',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Every day of it counts, Sundays too.',
  ask: 'How long must it stand after the last day?',
  called: {},
  possible: { above: '0 h' },
  plausible: { from: '1 h', to: '60 days' },
})

export const weekWorked = word<'choice'>('weekWorked', {
  kind: 'choice',
  label: 'days that are worked',
  measure: 'The days of the week.',
  ask: 'On which days of the week do you work?',
  called: {},
  options: {
    every: { label: 'every day', called: [] },
    notSundays: { label: 'every day but Sundays', called: [] },
    weekdays: { label: 'Monday to Friday', called: [] },
    weekends: { label: 'Saturdays and Sundays', called: [] },
    one: { label: 'one day a week', called: [] },
    two: { label: 'two days a week', called: [] },
    three: { label: 'three days a week', called: [] },
    four: { label: 'four days a week', called: [] },
  },
})

const days = (name: string, label: string, ask: string) =>
  word<'choice'>(name, {
    kind: 'choice',
    label,
    measure: 'The day of the week.',
    ask,
    called: {},
    options: {
      monday: { label: 'Monday', called: [] },
      tuesday: { label: 'Tuesday', called: [] },
      wednesday: { label: 'Wednesday', called: [] },
      thursday: { label: 'Thursday', called: [] },
      friday: { label: 'Friday', called: [] },
      saturday: { label: 'Saturday', called: [] },
      sunday: { label: 'Sunday', called: [] },
    },
  })
export const firstWeekday = days('firstWeekday', 'weekday of the first day', 'On which day of the week do you begin?')

export const daysInAll = word<'count'>('daysInAll', {
  kind: 'count',
  noun: 'working day',
  label: 'days, or evenings, in all',
  whole: true,
  measure: 'One begun counts.',
  ask: 'How many days is that?',
  called: {},
})

export const weeksWorked = word<'count'>('weeksWorked', {
  kind: 'count',
  noun: 'working week',
  label: 'weeks, or weekends',
  whole: true,
  measure: 'One begun counts.',
  ask: 'How many weeks is that?',
  called: {},
})

export const lastDayOn = word<'date'>('lastDayOn', {
  kind: 'date',
  label: 'last day of it',
  measure: 'The first day is one of them.',
  ask: 'On which day is it done?',
  called: {},
})

export const readyOn = word<'date'>('readyOn', {
  kind: 'date',
  label: 'after the wait',
  measure: 'So many days after the last day of work.',
  ask: 'On which day has it waited long enough?',
  called: {},
})

export const weekdayReached = days('weekdayReached', 'weekday it comes to', 'On which day of the week is that?')

export const dayOfIt = word<'count'>('dayOfIt', {
  kind: 'count',
  noun: 'calendar day',
  label: 'by the calendar, the first day being day 1',
  whole: true,
  measure: 'The weekday is told beside it.',
  ask: 'Which day is that?',
  called: {},
})
