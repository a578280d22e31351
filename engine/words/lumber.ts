// This file is about what is true of any stick on the saw bench.
import { word } from './word.ts'

export const stockLength = word<'length'>('stockLength', {
  kind: 'length',
  label: 'length of a board as bought',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'The length of one board as the yard sells it.',
  ask: 'How long is a board as you buy it?',
  called: {
    names: ['stock length', 'length of the stock', 'board length', 'as bought', 'stock'],
    things: ['board', 'stock', 'stick', 'length'],
    sides: ['long', 'length'],
  },
  possible: { above: '0 in' },
  plausible: { from: '2 ft', to: '24 ft' },
})

export const kerf = word<'length'>('kerf', {
  kind: 'length',
  label: 'width of the saw cut',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the blade turns to dust at each cut.',
  ask: 'How wide is the saw cut?',
  called: {
    names: ['saw kerf', 'kerf', 'saw cut', 'blade width'],
    things: ['kerf', 'blade', 'saw'],
    sides: ['kerf', 'wide'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '1/4 in' },
  usual: {
    value: '1/8 in',
    metric: '3 mm',
    because: 'a common circular saw blade takes 1/8 in',
    from: 'common practice, no source',
  },
})

export const sawReach = word<'angle'>('sawReach', {
  kind: 'angle',
  label: 'furthest the saw turns',
  measure: 'The last mark on its scale, counted from a square cut. Take the smaller of turn and tilt.',
  ask: 'How far does your saw turn from square, and how far does its blade tilt?',
  called: {
    names: [
      'saw turns',
      'saw only turns',
      'saw goes',
      'saw only goes',
      'saw reaches',
      'saw tilts',
      'turns no further than',
      'turns up to',
      'turns as far as',
    ],
    things: ['saw', 'miter saw', 'mitre saw', 'chop saw'],
    sides: ['turns', 'reaches', 'goes', 'tilts'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '90 deg' },
  plausible: { from: '30 deg', to: '70 deg' },
  usual: {
    value: '45 deg',
    because: 'many saws turn and tilt no further',
    from: 'common practice, no source',
  },
})
