// This file is about wood that dries, or shrinks, at a rate that was told: so many points a week, so much of its width for each point.
import { word } from './word.ts'

export const dryingRate = word<'percent'>('dryingRate', {
  kind: 'percent',
  label: 'moisture lost each time',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Points of moisture lost in a day, or in a week: from two readings of the same boards.',
  ask: 'How many points of moisture does it lose in a day, or in a week?',
  called: { names: ['points lost'] },
  possible: { above: '0 %', most: '40 %' },
  plausible: { from: '0.05 %', to: '10 %' },
})

export const ratePer = word<'choice'>('ratePer', {
  kind: 'choice',
  label: 'time for that loss',
  measure: 'A day, a week or a month of thirty days.',
  ask: 'Is that in a day, in a week or in a month?',
  called: { names: ['time of the rate'] },
  options: {
    day: { label: 'a day', called: ['a day', 'per day', 'each day', 'every day', 'daily'] },
    week: { label: 'a week', called: ['a week', 'per week', 'each week', 'every week', 'weekly'] },
    month: { label: 'a month', called: ['a month', 'per month', 'each month', 'every month', 'monthly'] },
  },
})

export const daysAtRate = word<'duration'>('daysAtRate', {
  kind: 'duration',
  label: 'time to dry at that rate',
  units: { imperial: 'day', metric: 'day' },
  measure: 'As if it went on losing as much; mostly it slows down.',
  ask: 'How long does it dry at that rate?',
  called: { names: ['days at that rate'] },
})

export const readyAtRate = word<'date'>('readyAtRate', {
  kind: 'date',
  label: 'down to it on',
  measure: 'The first day on which it is there, at that rate.',
  ask: 'On what day is it down to it?',
  called: { names: ['day it is dry at that rate'] },
})

export const shrinkRate = word<'percent'>('shrinkRate', {
  kind: 'percent',
  label: 'shrinkage for each point of moisture',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Of its width, for every percent of moisture that it loses.',
  ask: 'By what part of its width does it shrink for each percent of moisture?',
  called: { names: ['shrinks for each percent'] },
  possible: { above: '0 %', most: '2 %' },
  plausible: { from: '0.05 %', to: '0.6 %' },
})

export const shrunkBy = word<'length'>('shrunkBy', {
  kind: 'length',
  label: 'narrower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Of one board, across its grain.',
  ask: 'How much narrower does it get?',
  called: { names: ['narrower by'] },
})

export const shrunkWidth = word<'length'>('shrunkWidth', {
  kind: 'length',
  label: 'width then',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What it measures when it is down to that moisture.',
  ask: 'How wide is it then?',
  called: { names: ['width when it has shrunk'] },
})

export const gapWhenWet = word<'length'>('gapWhenWet', {
  kind: 'length',
  label: 'gap as nailed up',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between two boards, on the day they were fixed.',
  ask: 'How wide is the gap as the boards are nailed up?',
  called: {},
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
})

export const gapOpened = word<'length'>('gapOpened', {
  kind: 'length',
  label: 'gap then',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between two boards that shrank, with the same middles.',
  ask: 'How wide is the gap then?',
  called: {},
})

export const weeksAtRate = word<'duration'>('weeksAtRate', {
  kind: 'duration',
  label: 'weeks to dry at that rate',
  units: { imperial: 'week', metric: 'week' },
  measure: 'As if it went on losing as much; mostly it slows down.',
  ask: 'How many weeks does it dry at that rate?',
  called: {},
})
