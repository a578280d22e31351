// This file is about the season that the coats fall into, on either half of the earth, and whether its nights are warm enough.
import { word } from './word.ts'

const monthNames = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
] as const
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

export const hemisphere = word<'choice'>('hemisphere', {
  kind: 'choice',
  label: 'half of the earth',
  measure:
    'North of the equator or south of it: Australia, New Zealand, South Africa and most of South America lie south.',
  ask: 'Is the fence north or south of the equator?',
  called: { names: ['half of the earth'] },
  options: {
    north: {
      label: 'north of the equator',
      called: [
        'northern hemisphere',
        'in the northern',
        'north of the equator',
        'in the us',
        'usa',
        'canada',
        'in the uk',
        'england',
        'scotland',
        'ireland',
      ],
    },
    south: {
      label: 'south of the equator',
      called: [
        'southern hemisphere',
        'in the southern',
        'south of the equator',
        'australia',
        'new zealand',
        'south africa',
      ],
    },
  },
})

export const coatMonth = word<'choice'>('coatMonth', {
  kind: 'choice',
  label: 'month of the coats',
  measure: 'The month in which the last coats go on.',
  ask: 'In which month will the coats go on?',
  called: { names: ['month of painting'] },
  options: Object.fromEntries(monthNames.map((it) => [it, { label: capital(it), called: [it] }])),
})

export const nightLow = word<'temperature'>('nightLow', {
  kind: 'temperature',
  label: 'coldest of the night',
  units: { imperial: 'F', metric: 'C' },
  measure: 'What the nights of that month go down to, by your own thermometer or a weather station near by.',
  ask: 'How cold do the nights get in that month?',
  called: {
    names: [
      'night lows',
      'night low',
      'nights are',
      'nights get down to',
      'nights go down to',
      'at night',
      'overnight low',
      'overnight lows',
    ],
    things: ['night', 'overnight'],
    plainly: true,
  },
  plausible: { from: '-20 F', to: '90 F' },
})

export const coatSeason = word<'choice'>('coatSeason', {
  kind: 'choice',
  label: 'season of the coats',
  measure: 'By whole months: spring is March to May in the north, September to November in the south.',
  ask: 'What season is that?',
  called: { names: ['season of painting'], asks: ['what season is', 'which season is'] },
  options: {
    spring: { label: 'spring', called: [] },
    summer: { label: 'summer', called: [] },
    autumn: { label: 'autumn', called: [] },
    winter: { label: 'winter', called: [] },
  },
})

export const warmEnough = word<'verdict'>('warmEnough', {
  kind: 'verdict',
  label: 'nights warm enough for the coats',
  measure:
    'The coldest of the night beside what the can allows. It must stay warm while the coat dries, not only while you brush.',
  ask: 'Are the nights warm enough?',
  called: {
    names: ['warm enough'],
    asks: [
      'warm enough to paint',
      'warm enough for paint',
      'warm enough to stain',
      'warm enough for stain',
      'too cold to paint',
      'too cold to stain',
      'too cold for paint',
      'too cold for stain',
    ],
  },
  says: { yes: 'warm enough at night', no: 'too cold at night', unknown: 'cannot say' },
})
