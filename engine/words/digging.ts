// This file is about the time that digging takes: your own pace, the hands there are, and how long a day is.
import { word } from './word.ts'

export const holeTime = word<'duration'>('holeTime', {
  kind: 'duration',
  label: 'time for one hole',
  units: { imperial: 'min', metric: 'min' },
  measure:
    'Time your first hole, from the first cut to a clean bottom, rests counted. Stones and roots make the next one longer.',
  ask: 'How many minutes does one hole take you? Dig the first and time it.',
  called: {
    names: [
      'a hole',
      'each hole',
      'per hole',
      'one hole',
      'for each hole',
      'minutes a hole',
      'the first hole',
      'first hole took',
      'a hole takes',
      'hole takes',
      'hole took',
      'took me',
      'takes me',
    ],
    things: ['hole', 'post hole', 'posthole'],
    sides: ['took', 'takes', 'pace', 'to dig'],
    plainly: true,
  },
  possible: { above: '0 h' },
  plausible: { from: '2 minutes', to: '8 h' },
})

export const helpers = word<'count'>('helpers', {
  kind: 'count',
  noun: 'helper',
  label: 'helpers',
  whole: true,
  measure: 'Those who work beside you, you not counted.',
  ask: 'How many help you?',
  called: {
    names: ['helpers', 'friends', 'mates', 'besides me'],
    things: ['helper', 'friend', 'mate', 'neighbour', 'son'],
  },
  possible: { least: '0' },
  plausible: { from: '0', to: '12' },
  replaces: ['diggers'],
})

export const diggers = word<'count'>('diggers', {
  kind: 'count',
  noun: 'digger',
  label: 'people digging',
  whole: true,
  measure: 'You included. Two on one auger dig one hole at a time: they count as one.',
  ask: 'How many people dig, you included?',
  called: {
    names: ['of us', 'people digging', 'people dig', 'people', 'persons', 'diggers', 'pairs of hands'],
    things: ['people', 'person', 'digger', 'men'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '12' },
  replaces: ['helpers'],
})

export const dayHours = word<'duration'>('dayHours', {
  kind: 'duration',
  label: 'hours of work a day',
  units: { imperial: 'h', metric: 'h' },
  measure: 'As long as you can work well, not as long as it is light.',
  ask: 'How many hours a day will you work?',
  called: {
    names: ['hours a day', 'a day', 'per day', 'each day', 'every day', 'in a day', 'of an evening', 'an evening'],
    things: ['day', 'evening'],
    sides: ['a day', 'per day', 'each day'],
    plainly: true,
  },
  possible: { above: '0 h', most: '24 h' },
  plausible: { from: '0.5 h', to: '12 h' },
})

export const diggingTime = word<'duration'>('diggingTime', {
  kind: 'duration',
  label: 'digging in all',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Every hole, one after the other, by one person.',
  ask: 'How many hours of digging is it in all?',
  called: {
    names: ['digging time', 'time to dig'],
    asks: [
      'how long to dig',
      'how long will it take to dig',
      'how long does it take to dig',
      'how long will the digging take',
      'how long will the holes take',
      'how many hours to dig',
      'how many hours of digging',
      'how many hours digging',
      'how long for the holes',
    ],
  },
})

export const diggingClock = word<'duration'>('diggingClock', {
  kind: 'duration',
  label: 'by the clock, all hands digging',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Whole holes are shared out; the one who digs the most decides.',
  ask: 'How many hours by the clock?',
  called: { names: ['hours by the clock'], asks: ['how many hours by the clock', 'how long by the clock'] },
})

export const diggingDays = word<'count'>('diggingDays', {
  kind: 'count',
  noun: 'digging day',
  label: 'days of digging',
  whole: true,
  measure: 'Whole days, the last one perhaps short.',
  ask: 'How many days of digging?',
  called: {
    names: ['digging days'],
    asks: [
      'how many days to dig',
      'how many days of digging',
      'how many days will the digging take',
      'how many days will it take to dig',
      'how many days for the holes',
      'days to dig the holes',
    ],
  },
})
