// This file is about how long painting takes, piece by piece.
import { word } from './word.ts'

const each = {
  kind: 'duration',
  units: { imperial: 'min', metric: 'min' },
  possible: { above: '0 min' },
} as const
const pace = 'common practice, no source; time your own first one'

export const picketTime = word<'duration'>('picketTime', {
  ...each,
  label: 'time for one picket, one coat',
  measure: 'By the clock, with your own brush: both faces and the edges.',
  ask: 'How long does one picket take, one coat?',
  called: {
    names: ['a picket', 'per picket', 'each picket', 'one picket'],
    things: ['picket', 'board', 'paling'],
    sides: ['each', 'per', 'take', 'takes'],
    plainly: true,
  },
  plausible: { from: '0.5 min', to: '45 min' },
  usual: { value: '5 min', because: 'a 3 to 4 ft picket takes about that with a brush, all round', from: pace },
})

export const railTime = word<'duration'>('railTime', {
  ...each,
  label: 'time for one rail, one coat',
  measure: 'By the clock, with your own brush, all four sides.',
  ask: 'How long does one rail take, one coat?',
  called: {
    names: ['a rail', 'per rail', 'each rail', 'one rail'],
    things: ['rail', 'stringer'],
    sides: ['each', 'per', 'take', 'takes'],
    plainly: true,
  },
  plausible: { from: '1 min', to: '60 min' },
  usual: { value: '8 min', because: 'an 8 ft rail takes about that with a brush, all round', from: pace },
})

export const postTime = word<'duration'>('postTime', {
  ...each,
  label: 'time for one post, one coat',
  measure: 'By the clock, with your own brush: four sides and the top.',
  ask: 'How long does one post take, one coat?',
  called: {
    names: ['a post', 'per post', 'each post', 'one post'],
    things: ['post'],
    sides: ['each', 'per', 'take', 'takes'],
    plainly: true,
  },
  plausible: { from: '1 min', to: '60 min' },
  usual: { value: '8 min', because: 'a 4 ft post takes about that with a brush', from: pace },
})

export const areaAnHour = word<'area'>('areaAnHour', {
  kind: 'area',
  label: 'area painted in an hour',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'One person, one coat: paint for half an hour, measure what is done, and double it.',
  ask: 'How much area does one person paint in an hour, one coat?',
  called: {
    names: [
      'an hour',
      'per hour',
      'each hour',
      'every hour',
      'in an hour',
      '/hour',
      'hourly',
      'paint about',
      'can paint',
      'can do',
    ],
    things: ['hour', 'pace'],
    sides: ['hour', 'pace', 'rate'],
    plainly: true,
  },
  possible: { above: '0 ft2' },
  plausible: { from: '10 ft2', to: '1500 ft2' },
})

export const coatSetUp = word<'duration'>('coatSetUp', {
  ...each,
  label: 'setting up and cleaning, each coat',
  measure: 'Sheets down, stirring, brushes washed.',
  ask: 'How long do setting up and cleaning take for each coat?',
  called: {
    names: ['setting up', 'set up', 'cleaning', 'clean up', 'cleanup', 'setup'],
    things: ['set up', 'cleaning', 'brushes'],
    sides: ['set up', 'clean'],
    plainly: true,
  },
  possible: { least: '0 min' },
  plausible: { from: '0 min', to: '6 h' },
  usual: {
    value: '45 min',
    because: 'sheets, stirring and brushes take that at least',
    from: 'common practice, no source',
  },
})

export const painters = word<'count'>('painters', {
  kind: 'count',
  noun: 'painter',
  label: 'people painting',
  whole: true,
  measure: 'You included.',
  ask: 'How many people paint, you included?',
  called: {
    names: ['people painting', 'painters', 'of us', 'people', 'brushes'],
    things: ['painter', 'people', 'person', 'brush'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '12' },
  usual: { value: '1', because: 'you did not speak of help', from: 'Decided here; say how many you are.' },
})

export const paintingTime = word<'duration'>('paintingTime', {
  kind: 'duration',
  label: 'painting in all',
  units: { imperial: 'h', metric: 'h' },
  measure: 'All coats by one person. The time between coats is not in it.',
  ask: 'How many hours of painting is it in all?',
  called: {
    names: ['painting time', 'time to paint', 'painting hours'],
    asks: [
      'how long to paint',
      'how long to stain',
      'how long will it take to paint',
      'how long will it take to stain',
      'how long does it take to paint',
      'how long does it take to stain',
      'hours of painting',
      'hours of staining',
      'how many hours to paint',
      'how many hours to stain',
      'how long will the painting take',
      'how long will the staining take',
      'how long does the painting take',
      'painting take',
      'staining take',
    ],
  },
})

export const paintingClock = word<'duration'>('paintingClock', {
  kind: 'duration',
  label: 'painting by the clock',
  units: { imperial: 'h', metric: 'h' },
  measure: 'With all who paint at once.',
  ask: 'How long is that by the clock?',
  called: {},
})

export const paintingDays = word<'count'>('paintingDays', {
  kind: 'count',
  noun: 'painting day',
  label: 'days of painting',
  whole: true,
  measure: 'A day begun counts, and each coat begins on a day of its own.',
  ask: 'How many days of painting is it?',
  called: {
    things: ['days of painting'],
    asks: [
      'how many days to paint',
      'how many days to stain',
      'how many days of painting',
      'how many days will the painting',
    ],
  },
})

export const paintDayHours = word<'duration'>('paintDayHours', {
  kind: 'duration',
  label: 'hours of painting a day',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From when the dew is off until it must be drying.',
  ask: 'How many hours a day can you paint?',
  called: {
    names: ['hours a day', 'a day', 'per day', 'each day', 'every day'],
    things: ['day'],
    sides: ['a day', 'per day'],
    plainly: true,
  },
  possible: { above: '0 h', most: '24 h' },
  plausible: { from: '1 h', to: '12 h' },
})
