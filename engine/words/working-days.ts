// This file is about working days from one date to another.
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
    names: ['working days later', 'business days later'],
    things: ['working day', 'business day'],
  },
  possible: { least: '0', most: '2000' },
  plausible: { from: '1', to: '500' },
})

export const workingDaysBoth = word<'count'>('workingDaysBoth', {
  kind: 'count',
  noun: 'working day',
  label: 'first and last day counted',
  whole: true,
  measure: 'Monday to Friday without the holidays you named, both ends counted where they are working days.',
  ask: 'How many working days is that?',
  called: {
    names: ['working days between'],
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
