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
