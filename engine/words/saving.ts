// This file is about money that is put by a little at a time.
import { word } from './word.ts'

export const savingGoal = word<'money'>('savingGoal', {
  kind: 'money',
  label: 'price to save for',
  measure: 'All that it will cost.',
  ask: 'How much must there be in the end?',
  called: {},
  possible: { above: '$0' },
})

export const savedAlready = word<'money'>('savedAlready', {
  kind: 'money',
  label: 'saved already',
  measure: 'What is there now.',
  ask: 'How much is there already?',
  called: {},
  possible: { least: '$0' },
})

export const savedEach = word<'money'>('savedEach', {
  kind: 'money',
  label: 'put by each time',
  measure: 'The same each week or month.',
  ask: 'How much do you put by each time?',
  called: {},
  possible: { above: '$0' },
})

export const savedEvery = word<'choice'>('savedEvery', {
  kind: 'choice',
  label: 'put by every',
  measure: 'How often it is put by.',
  ask: 'Is that each week, every two weeks, or each month?',
  called: {},
  options: {
    week: { label: 'week', called: ['a week', 'weekly'] },
    fortnight: { label: 'two weeks', called: ['a fortnight', 'every two weeks'] },
    month: { label: 'month', called: ['a month', 'monthly'] },
  },
})

export const stillToSave = word<'money'>('stillToSave', {
  kind: 'money',
  label: 'still to be saved',
  measure: 'The price, less what is there.',
  ask: 'How much is lacking?',
  called: {},
})

export const savingTime = word<'duration'>('savingTime', {
  kind: 'duration',
  label: 'time until it reaches',
  units: { imperial: 'week', metric: 'week' },
  measure: 'Whole weeks or months.',
  ask: 'How long does the saving take?',
  called: {},
})
