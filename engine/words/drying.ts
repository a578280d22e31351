// This file is about how wood dries out there, reckoned from readings on two days or more.
import { word } from './word.ts'

export const dryingReadings = word<'percent'>('dryingReadings', {
  kind: 'percent',
  list: true,
  label: 'readings, one after the other',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'The same boards at the same depth, on two days or more, the oldest first.',
  ask: 'What did the meter read, on which days, the oldest first?',
  called: {
    names: [
      'it read',
      'readings',
      'readings of',
      'read',
      'the meter read',
      'days later',
      'weeks later',
      'week later',
      'meter read',
    ],
    things: ['reading'],
    sides: ['read', 'then', 'today', 'later'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 %', most: '300 %' },
  plausible: { from: '5 %', to: '120 %' },
})

export const readingDates = word<'date'>('readingDates', {
  kind: 'date',
  list: true,
  label: 'dates of the readings',
  measure: 'One for each reading, in the same order.',
  ask: 'On which dates were they read?',
  called: { names: ['read on', 'reading on', 'dates of the readings', 'on'], things: ['reading'], byDefault: true },
})

export const readingSpacing = word<'duration'>('readingSpacing', {
  kind: 'duration',
  label: 'time from one reading to the next',
  units: { imperial: 'day', metric: 'day' },
  measure: 'The same between all of them; else give the dates.',
  ask: 'How many days lie between one reading and the next?',
  called: {
    names: ['apart', 'days apart', 'between readings', 'between them', 'from one to the next', 'later', 'a week later'],
    things: ['reading', 'readings'],
    sides: ['apart', 'later', 'between', 'after'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 h' },
  plausible: { from: '12 h', to: '1 year' },
})

export const daysToDry = word<'duration'>('daysToDry', {
  kind: 'duration',
  label: 'time until it is dry enough',
  units: { imperial: 'day', metric: 'day' },
  measure: 'From the last reading, if the weather stays as it is.',
  ask: 'How long until it is dry enough?',
  called: {
    names: ['drying time', 'time to dry'],
    asks: [
      'how long until it is dry',
      'how long until dry',
      'how long till it is dry',
      'how long before it is dry',
      'will it be dry',
      'will the wood be dry',
      'will it get dry',
      'when will the wood be dry',
      'when is it dry enough',
      'when will it',
      'how much longer until it is dry',
      'how much longer to dry',
      'how long will it take to dry',
      'will it ever dry',
      'drying forecast',
    ],
  },
})

export const daysToDryFrom = word<'duration'>('daysToDryFrom', {
  kind: 'duration',
  label: 'at the soonest',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Half of what the readings give.',
  ask: 'How long at the soonest?',
  called: {},
})

export const daysToDryTo = word<'duration'>('daysToDryTo', {
  kind: 'duration',
  label: 'at the latest',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Twice what the readings give.',
  ask: 'How long at the latest?',
  called: {},
})

export const dryFrom = word<'date'>('dryFrom', {
  kind: 'date',
  label: 'measure again from',
  measure: 'No sooner than this is it likely to be dry enough.',
  ask: 'From what day can it be dry enough?',
  called: {},
})

export const dryBy = word<'date'>('dryBy', {
  kind: 'date',
  label: 'likely dry by',
  measure: 'Twice the time that the readings give.',
  ask: 'By what day is it likely dry enough?',
  called: { asks: ['by what day', 'by when will it be dry', 'on what date will it be dry'] },
})

export const halfTime = word<'duration'>('halfTime', {
  kind: 'duration',
  label: 'time to lose half of what it can still lose',
  units: { imperial: 'day', metric: 'day' },
  measure: 'Half of the way to where it settles, whatever it reads now.',
  ask: 'How long does it take to lose half of what it can still lose?',
  called: { names: ['half time', 'drying half-life'] },
})

export const timeConstant = word<'duration'>('timeConstant', {
  kind: 'duration',
  label: 'time constant of drying',
  units: { imperial: 'day', metric: 'day' },
  measure: 'The time after which 37 % of what it can still lose is left.',
  ask: 'What is the time constant of the drying?',
  called: { names: ['time constant', 'drying constant'] },
})

export const settlesByReadings = word<'percent'>('settlesByReadings', {
  kind: 'percent',
  label: 'settles at, by the readings themselves',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'From three readings equally far apart: where their curve levels out.',
  ask: 'Where do the readings themselves level out?',
  called: { names: ['levels out at'], asks: ['where will it level out', 'where do the readings level out'] },
})

export const driesHere = word<'verdict'>('driesHere', {
  kind: 'verdict',
  label: 'dries that far in this weather',
  measure: 'The moisture wanted against where the air lets the wood settle, and readings that fall.',
  ask: 'Does it dry that far in this weather?',
  called: {
    names: ['dry in this weather'],
    asks: ['dry in this weather', 'does it dry here', 'will it dry in this weather'],
  },
  says: {
    yes: 'it dries that far in this weather',
    no: 'not in this weather',
    unknown: 'cannot say whether it dries that far',
  },
})
