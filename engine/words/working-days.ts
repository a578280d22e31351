// This file is about days from one date to another, working days and all of them.
import { word } from './word.ts'

export const fromDay = word<'date'>('fromDay', {
  kind: 'date',
  label: 'first day',
  measure: 'The day to count from, with its year.',
  ask: 'From which day? Give the date with its year.',
  called: {
    names: [
      'are there between',
      'days between',
      'days from',
      'days after',
      'counted from',
      'working days after',
      'business days after',
      'working days from',
      'business days from',
      'start on',
      'starts on',
      'starting on',
      'starting',
      'start from',
      'begin on',
      'begins on',
      'beginning on',
      'job starts',
      'work starts',
      'i start',
      'we start',
      'starts',
      'kick off on',
    ],
    plainly: true,
    byDefault: true,
  },
})

export const toDay = word<'date'>('toDay', {
  kind: 'date',
  label: 'last day',
  measure: 'The day to count to, with its year.',
  ask: 'To which day? Give the date with its year.',
  called: { byDefault: true },
})

export const daysAhead = word<'count'>('daysAhead', {
  kind: 'count',
  noun: 'working day',
  label: 'working days to count',
  whole: true,
  measure: 'The day you count from is not one of them.',
  ask: 'How many working days?',
  called: {
    names: [
      'working days later',
      'business days later',
      'days of work',
      'work days',
      'workdays',
      'need working days',
      'takes working days',
    ],
    things: ['working day', 'business day', 'work day', 'workday', 'weekday'],
  },
  possible: { least: '0', most: '2000' },
  plausible: { from: '1', to: '500' },
})

export const lostDays = word<'count'>('lostDays', {
  kind: 'count',
  noun: 'lost day',
  label: 'working days lost',
  whole: true,
  measure: 'To rain, or to whatever stops the work.',
  ask: 'How many working days are lost?',
  called: { names: ['days lost', 'rain days', 'lose to rain', 'lost to rain'], things: ['rain day'] },
  possible: { least: '0', most: '500' },
  plausible: { from: '0', to: '60' },
})

export const workWeek = word<'choice'>('workWeek', {
  kind: 'choice',
  label: 'days of the week that are worked',
  measure: 'Monday to Friday where nothing else is said.',
  ask: 'Which days of the week are worked?',
  called: { names: ['days of the week'] },
  options: {
    five: { label: 'Monday to Friday', called: ['no weekends', 'monday to friday', 'monday through friday'] },
    six: {
      label: 'Monday to Saturday',
      called: ['works saturdays', 'work saturdays', 'saturdays too', 'monday to saturday'],
    },
    seven: { label: 'every day', called: ['seven days a week', 'weekends too', 'works weekends'] },
  },
})

export const finishBy = word<'date'>('finishBy', {
  kind: 'date',
  label: 'day it must be done by',
  measure: 'With its year.',
  ask: 'By which day must it be done? Give the date with its year.',
  called: {
    names: [
      'by',
      'done by',
      'finished by',
      'finish by',
      'ready by',
      'before',
      'deadline',
      'no later than',
      'working days before',
      'done before',
    ],
    plainly: true,
    byDefault: true,
  },
})

export const startOn = word<'date'>('startOn', {
  kind: 'date',
  label: 'day to start on',
  measure: 'The first of the days of work.',
  ask: 'On which day do I start?',
  called: {
    names: ['day to start'],
    asks: [
      'when should i start',
      'when do i start',
      'when must i start',
      'when do we start',
      'when should we start',
      'when do i have to start',
      'when do i need to start',
      'start to finish',
      'start to be done',
      'which day do i start',
      'what day do i start',
      'latest start',
      'latest day to start',
      'working days before',
      'business days before',
    ],
  },
})

export const workingDaysBoth = word<'count'>('workingDaysBoth', {
  kind: 'count',
  noun: 'working day',
  label: 'first and last day counted',
  whole: true,
  measure: 'Monday to Friday without the holidays you named, both ends counted where they are working days.',
  ask: 'How many working days is that?',
  called: {
    names: ['working days between', 'working days', 'business days'],
    asks: ['how many working days', 'how many business days', 'how many workdays'],
  },
})

export const workingDaysAfter = word<'count'>('workingDaysAfter', {
  kind: 'count',
  noun: 'working day',
  label: 'first day not counted',
  whole: true,
  measure: 'As notices and deadlines are mostly counted: the day itself is not one of them.',
  ask: 'How many working days is it, the first day not counted?',
  called: { names: ['working days after the first'] },
})

export const calendarDays = word<'duration'>('calendarDays', {
  kind: 'duration',
  label: 'from the first to the last, by the calendar',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Nights between them: weekends and holidays counted.',
  ask: 'How many days is it by the calendar?',
  called: {
    names: ['calendar days between'],
    asks: ['how many calendar days', 'how many days are there'],
  },
})

export const dayReached = word<'date'>('dayReached', {
  kind: 'date',
  label: 'the day it comes to',
  measure: 'The last of the working days counted.',
  ask: 'Which day is that?',
  called: {
    names: ['day reached'],
    asks: ['what date is', 'which date is', 'what day is', 'working days later', 'business days later'],
  },
})

export const lastWorkDay = word<'date'>('lastWorkDay', {
  kind: 'date',
  label: 'last day of the work, the first day counted',
  measure: 'Where work is done on the first day already, it is the first of the days.',
  ask: 'Which is the last day of the work?',
  called: {
    names: ['last day of work'],
    asks: [
      'when do i finish',
      'when will i finish',
      'when do we finish',
      'when does it finish',
      'when will it be finished',
      'when is it finished',
      'when am i done',
      'when are we done',
      'when will i be done',
      'when is it done',
      'when will it be done',
      'when is the job done',
      'when will the job be done',
      'finish day',
      'finish date',
      'finishing date',
      'last working day',
      'what day do i finish',
      'which day do i finish',
      'what date do i finish',
    ],
  },
})

// ── by the calendar ──

export const laterBy = word<'duration'>('laterBy', {
  kind: 'duration',
  label: 'time to count on',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Days, weeks, months or years, weekends and holidays counted.',
  ask: 'How long after it, or before it? Give days, weeks or months.',
  called: { byDefault: true },
  possible: { least: '0 h' },
})

export const dateLater = word<'date'>('dateLater', {
  kind: 'date',
  label: 'so much later',
  measure: 'Every day counted; the day you count from is not one of them.',
  ask: 'Which date is that much later?',
  called: { asks: ['after', 'from', 'later', 'plus', 'past', 'following', 'on from'] },
})

export const dateEarlier = word<'date'>('dateEarlier', {
  kind: 'date',
  label: 'so much earlier',
  measure: 'Every day counted; the day you count from is not one of them.',
  ask: 'Which date is that much earlier?',
  called: { asks: ['before', 'earlier', 'ahead of', 'prior to', 'minus', 'less', 'back from'] },
})
