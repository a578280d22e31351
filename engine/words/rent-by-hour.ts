// This file is about a machine that is rented by the hour, with a least time, against a rate by the day.
import { word } from './word.ts'

export const hourRate = word<'money'>('hourRate', {
  kind: 'money',
  label: 'rent for one hour',
  measure: 'Everything in.',
  ask: 'What does an hour of it cost?',
  called: {},
  possible: { above: '$0' },
})

export const leastHours = word<'duration'>('leastHours', {
  kind: 'duration',
  label: 'least time that is charged',
  units: { imperial: 'h', metric: 'h' },
  measure: 'However short you have it.',
  ask: 'For how many hours do they charge at the least?',
  called: {},
  possible: { above: '0 h' },
})

export const hoursWanted = word<'duration'>('hoursWanted', {
  kind: 'duration',
  label: 'time that you need it',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From the counter and back.',
  ask: 'For how many hours do you need it?',
  called: {},
  possible: { above: '0 h' },
})

export const holesWanted = word<'count'>('holesWanted', {
  kind: 'count',
  noun: 'hole',
  label: 'holes to dig with it',
  whole: true,
  measure: 'All of them.',
  ask: 'How many holes are to be dug?',
  called: {},
  possible: { least: '1' },
})

export const holesAnHour = word<'count'>('holesAnHour', {
  kind: 'count',
  noun: 'hole',
  label: 'holes in an hour',
  measure: 'As it goes in your ground, moving on and clearing counted.',
  ask: 'How many holes does it dig in an hour?',
  called: {},
  possible: { above: '0' },
})

export const hoursCharged = word<'duration'>('hoursCharged', {
  kind: 'duration',
  label: 'hours that are paid',
  units: { imperial: 'h', metric: 'h' },
  measure: 'An hour begun is paid, and no less than the least.',
  ask: 'How many hours are paid?',
  called: {},
})

export const rentByHours = word<'money'>('rentByHours', {
  kind: 'money',
  label: 'rent by the hour, in all',
  measure: 'The hours that are paid, at the rate of one.',
  ask: 'What does it come to by the hour?',
  called: {},
})

export const cheaperRent = word<'choice'>('cheaperRent', {
  kind: 'choice',
  label: 'cheaper way to rent',
  measure: 'By the hour with its least time, against one day.',
  ask: 'Is it cheaper by the hour or by the day?',
  called: {},
  options: {
    'by the hour': { label: 'by the hour', called: [] },
    'by the day': { label: 'by the day', called: [] },
    'both alike': { label: 'both alike', called: [] },
  },
})

export const rentsApart = word<'money'>('rentsApart', {
  kind: 'money',
  label: 'between hour and day',
  measure: 'The dearer less the cheaper.',
  ask: 'How much is between them?',
  called: {},
})

export const firstHours = word<'duration'>('firstHours', {
  kind: 'duration',
  label: 'hours at the first price',
  units: { imperial: 'h', metric: 'h' },
  measure: 'What the first price holds, before the rate by the hour begins.',
  ask: 'How many hours does the first price hold?',
  called: {},
  possible: { above: '0 h' },
})

export const firstHoursPrice = word<'money'>('firstHoursPrice', {
  kind: 'money',
  label: 'price of the first hours',
  measure: 'For all of them together.',
  ask: 'What do the first hours cost together?',
  called: {},
  possible: { least: '$0' },
})

export const timeAHole = word<'duration'>('timeAHole', {
  kind: 'duration',
  label: 'time for one hole with it',
  units: { imperial: 'min', metric: 'min' },
  measure: 'Moving on and clearing counted.',
  ask: 'How long does one hole take with it?',
  called: {},
  possible: { above: '0 min' },
})

export const timeBeside = word<'duration'>('timeBeside', {
  kind: 'duration',
  label: 'other time on the clock',
  units: { imperial: 'min', metric: 'min' },
  measure: 'Fetching it, bringing it back, cleaning it.',
  ask: 'How long is it on the clock beside the digging?',
  called: {},
})

export const rentByBegunHours = word<'money'>('rentByBegunHours', {
  kind: 'money',
  label: 'if an hour begun is charged whole',
  measure: 'The hours past the first, each begun one paid.',
  ask: 'What is it where an hour begun is charged whole?',
  called: {},
})
