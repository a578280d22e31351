// This file is about the ground read with a level.
import { word } from './word.ts'

export const levelReadings = word<'length'>('levelReadings', {
  kind: 'length',
  list: true,
  label: 'readings down from the level line, in order',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'Stretch a level string (or set a level): at each place measure straight down to the ground. A bigger reading is lower ground.',
  ask: 'What do you read down from the level line to the ground, in order along the fence?',
  called: {
    names: [
      'level readings',
      'readings',
      'down from the string',
      'down to the ground',
      'string to ground',
      'measure down',
    ],
    things: ['reading', 'readings'],
    sides: ['down', 'read'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '15 ft' },
})

export const readingsApart = word<'length'>('readingsApart', {
  kind: 'length',
  label: 'readings apart',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'The level distance from one reading to the next, the same all along.',
  ask: 'How far apart are the readings, measured level?',
  called: {
    names: ['readings apart', 'between readings', 'taken every', 'at every'],
    things: ['reading', 'readings'],
    sides: ['apart', 'every', 'spaced'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '100 ft' },
})

export const totalFall = word<'length'>('totalFall', {
  kind: 'length',
  label: 'fall from the first reading to the last',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Last reading less the first; less than nothing when the ground rises.',
  ask: 'How far does the ground fall in all?',
  called: {
    names: ['total fall'],
    asks: [
      'how much does it fall',
      'how far does the ground fall',
      'total fall',
      'how much fall',
      'how much drop',
      'fall in all',
    ],
  },
})

export const slopeAngle = word<'angle'>('slopeAngle', {
  kind: 'angle',
  label: 'slope as an angle',
  measure: 'From level.',
  ask: 'How steep is it, in degrees?',
  called: {
    names: ['slope in degrees', 'slope angle', 'angle of the slope', 'degree slope'],
    things: ['slope', 'ground', 'hill', 'grade', 'yard'],
    sides: ['slope', 'slopes', 'degrees', 'steep', 'angle'],
    plainly: true,
    asks: ['how many degrees', 'slope in degrees', 'what angle is the slope', 'angle of the slope'],
  },
  possible: { least: '0 deg', most: '85 deg' },
  plausible: { from: '0 deg', to: '31 deg' },
})

export const alongGround = word<'length'>('alongGround', {
  kind: 'length',
  label: 'length along the ground',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'What a tape laid on the ground would read.',
  ask: 'How long is it along the ground?',
  called: {
    names: ['along the ground', 'along the slope', 'slope length'],
    asks: [
      'how long along the ground',
      'how long along the slope',
      'length along the ground',
      'slope distance',
      'length along the slope',
    ],
  },
})
