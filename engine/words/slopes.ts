// This file is about ground that is not level.
import { word } from './word.ts'

export const fall = word<'length'>('fall', {
  difference: true,
  kind: 'length',
  label: 'fall of the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much lower the ground is at one end than at the other: level a string and measure down at both ends.',
  ask: 'How far does the ground fall from one end to the other?',
  called: {
    names: [
      'fall of the ground',
      'total fall',
      'drop of the ground',
      'falls',
      'drops',
      'rises',
      'drop',
      'fall',
      'rise',
    ],
    things: ['ground', 'grade', 'yard', 'slope', 'hill'],
    sides: ['fall', 'drop', 'rise', 'lower', 'higher', 'downhill', 'uphill'],
    asks: ['how far does it fall', 'what fall', 'how far does it drop', 'how far down is it', 'fall over that'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '30 ft' },
})

export const levelDistance = word<'length'>('levelDistance', {
  kind: 'length',
  label: 'level distance',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Measure level, not along the ground: a taut string with a level on it, or the plan.',
  ask: 'How far is it from end to end, measured level?',
  called: {
    names: ['level distance', 'horizontal distance', 'measured level', 'distance on the flat', 'horizontally'],
    sides: ['level', 'horizontal', 'apart'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '1000 ft' },
})

export const slope = word<'percent'>('slope', {
  kind: 'percent',
  label: 'slope',
  measure: 'The fall for each hundred of level distance.',
  ask: 'How steep is the ground, in percent?',
  called: {
    names: ['slope', 'grade', 'gradient', 'steepness'],
    things: ['ground', 'slope', 'hill', 'grade'],
    sides: ['slope', 'sloping', 'grade', 'steep'],
    asks: [
      'how steep',
      'what slope',
      'what grade',
      'what is the slope',
      'slope percent',
      'slope in percent',
      'what percent slope',
      'percent grade',
      'find the slope',
      'get the slope',
    ],
  },
  possible: { least: '0 %' },
  plausible: { from: '0 %', to: '60 %' },
})
