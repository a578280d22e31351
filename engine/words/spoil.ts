// This file is about soil that is dug out: how it swells, what it weighs, how it is carried off.
import { word } from './word.ts'

export const soilSwell = word<'percent'>('soilSwell', {
  kind: 'percent',
  label: 'soil swells by, once dug',
  measure: 'Loose soil takes more room than it did in the ground.',
  ask: 'By how much does the dug soil swell, in percent?',
  called: {
    names: ['swell', 'swells', 'bulking', 'fluff', 'bulks up'],
    things: ['soil', 'dirt', 'spoil'],
    sides: ['swell', 'swells', 'bulking'],
    plainly: true,
  },
  possible: { least: '0 %' },
  plausible: { from: '5 %', to: '60 %' },
  usual: { value: '25 %', because: 'common garden soil swells by about a quarter', from: 'common practice, no source' },
})

export const barrowSize = word<'volume'>('barrowSize', {
  kind: 'volume',
  label: 'barrow load',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'What one barrow takes heaped as you would push it.',
  ask: 'How much does your barrow take?',
  called: {
    names: ['barrow', 'wheelbarrow', 'barrow load', 'barrow takes', 'wheelbarrow holds'],
    things: ['barrow', 'wheelbarrow'],
    sides: ['holds', 'takes', 'load'],
    plainly: true,
  },
  possible: { above: '0 ft3' },
  plausible: { from: '1 ft3', to: '12 ft3' },
  usual: {
    value: '3 ft3',
    metric: '85 L',
    because: 'a common barrow is pushed with about that',
    from: 'common practice, no source',
  },
})

export const loadSize = word<'volume'>('loadSize', {
  kind: 'volume',
  label: 'one load of the trailer, skip or bin',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'What it holds, level with its sides.',
  ask: 'How much does your trailer, skip or bin hold?',
  called: { names: ['trailer holds', 'trailer takes', 'skip holds', 'skip takes', 'ute takes', 'ute holds'] },
  possible: { above: '0 ft3' },
  plausible: { from: '2 ft3', to: '40 yd3' },
})

export const vesselLoads = word<'count'>('vesselLoads', {
  kind: 'count',
  noun: 'load',
  label: 'loads of the trailer, skip or bin',
  whole: true,
  measure: 'Whole loads, by the room alone: weigh it too.',
  ask: 'How many loads of the trailer, skip or bin?',
  called: {
    names: ['trailer loads', 'truck loads', 'skip loads', 'ute loads'],
    asks: [
      'how many trailer loads',
      'how many truck loads',
      'how many ute loads',
      'how many skips',
      'how many skip loads',
    ],
  },
})

export const looseDensity = word<'density'>('looseDensity', {
  kind: 'density',
  label: 'weight of loose soil',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'As it lies on the heap.',
  ask: 'What does the loose soil weigh?',
  called: { names: ['loose soil weighs', 'loose dirt weighs'] },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '40 lb/ft3', to: '130 lb/ft3' },
})

export const soilOut = word<'volume'>('soilOut', {
  kind: 'volume',
  label: 'soil dug out, loose',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'As it lies on the heap.',
  ask: 'How much loose soil comes out?',
  called: {
    names: ['soil out', 'spoil'],
    asks: [
      'how much soil',
      'how much dirt',
      'soil comes out',
      'how much spoil',
      'dirt comes out',
      'soil to haul',
      'dirt to haul away',
      'how much earth',
      'spoil from the holes',
    ],
  },
})

export const barrows = word<'count'>('barrows', {
  kind: 'count',
  noun: 'load',
  label: 'barrow loads',
  whole: true,
  measure: 'Whole loads.',
  ask: 'How many barrow loads?',
  called: {
    names: ['barrow loads', 'wheelbarrow loads'],
    asks: ['how many barrow loads', 'how many wheelbarrows', 'how many barrows', 'wheelbarrow loads', 'barrow loads'],
  },
})

export const spoilDepth = word<'length'>('spoilDepth', {
  kind: 'length',
  label: 'depth dug',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the grass down to the bottom of the trench.',
  ask: 'How deep is it dug?',
  called: {
    names: ['depth dug', 'dug out', 'dig out', 'excavated', 'trench depth'],
    things: ['trench', 'sod'],
    sides: ['deep', 'depth'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '3 ft' },
})

export const spoilInGround = word<'volume'>('spoilInGround', {
  kind: 'volume',
  label: 'soil as it lay in the ground',
  units: { imperial: 'ft3', metric: 'm3' },
  measure: 'All holes together.',
  ask: 'How much soil was in the holes?',
  called: { names: ['soil in the ground'], asks: ['volume of the holes'] },
})

export const spoilWeight = word<'mass'>('spoilWeight', {
  kind: 'mass',
  label: 'weight of the soil',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Swelling changes its volume, never its weight.',
  ask: 'What does the soil weigh?',
  called: {
    names: ['weight of the soil'],
    asks: [
      'what does the soil weigh',
      'how heavy is the dirt',
      'weight of the dirt',
      'weight of the spoil',
      'what does the dirt weigh',
      'how heavy is the soil',
      'weight of the soil',
    ],
  },
})

export const soilDensity = word<'density'>('soilDensity', {
  kind: 'density',
  label: 'weight of soil in the ground',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'Moist, as it lies.',
  ask: 'What does your soil weigh?',
  called: {
    names: ['soil density', 'soil weighs', 'dirt weighs'],
    things: ['soil', 'dirt'],
    sides: ['weighs', 'density'],
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '60 lb/ft3', to: '150 lb/ft3' },
  usual: {
    value: '100 lb/ft3',
    metric: '1600 kg/m3',
    because: 'common moist soil weighs about that',
    from: 'common practice, no source',
  },
})
