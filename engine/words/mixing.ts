// This file is about mixing concrete: bags for a volume, water, weight.
import { word } from './word.ts'

export const volumeWanted = word<'volume'>('volumeWanted', {
  kind: 'volume',
  label: 'concrete wanted',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The volume you have worked out or been told.',
  ask: 'How much concrete do you want, by volume?',
  called: {
    names: ['of concrete', 'concrete wanted', 'need to fill', 'volume'],
    things: ['concrete', 'volume', 'yard', 'metre', 'cube'],
    sides: ['concrete'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 ft3' },
  plausible: { from: '0.05 ft3', to: '30 yd3' },
})

export const bagsForVolume = word<'count'>('bagsForVolume', {
  kind: 'count',
  noun: 'bag',
  label: 'bags for that volume',
  whole: true,
  measure: 'Rounded up once.',
  ask: 'How many bags make that volume?',
  called: {
    names: ['bags for a volume'],
    asks: [
      'how many bags in a yard',
      'bags in a yard',
      'bags make a yard',
      'how many bags make',
      'bags to a yard',
      'bags per yard',
      'bags in a cubic',
      'bags for a cubic',
      'how many bags in a cubic',
      'bags of concrete in',
      'how many bags to make',
      'bags in a metre',
      'how many bags for a yard',
      'bags per cubic',
    ],
  },
})

export const freshWeight = word<'mass'>('freshWeight', {
  kind: 'mass',
  label: 'weight of it, mixed',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'As it stands in the barrow.',
  ask: 'What does it weigh when it is mixed?',
  called: {
    names: ['weight of the concrete'],
    asks: [
      'what does the concrete weigh',
      'weight of the concrete',
      'how heavy is the concrete',
      'how much does the concrete weigh',
    ],
  },
})

export const freshDensity = word<'density'>('freshDensity', {
  kind: 'density',
  label: 'weight of fresh concrete',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'For ordinary concrete, mixed.',
  ask: 'What does fresh concrete weigh?',
  called: { names: ['concrete density', 'density of concrete'], sides: ['density'] },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '120 lb/ft3', to: '160 lb/ft3' },
  usual: {
    value: '145 lb/ft3',
    metric: '2300 kg/m3',
    because: 'ordinary concrete weighs about that',
    from: 'common practice, no source',
  },
})

export const waterEach = word<'volume'>('waterEach', {
  kind: 'volume',
  label: 'water for one bag',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'Printed on the bag, often as a range: take the least first.',
  ask: 'How much water does one bag take, by its print?',
  called: {
    names: ['water per bag', 'water each', 'water a bag', 'per bag', 'water for one bag', 'of water'],
    things: ['water'],
    sides: ['water', 'per bag'],
    plainly: true,
  },
  possible: { above: '0 gal' },
  plausible: { from: '0.2 gal', to: '3 gal' },
})

export const bagsToMix = word<'count'>('bagsToMix', {
  kind: 'count',
  noun: 'bag',
  label: 'bags to mix',
  whole: true,
  measure: 'All together.',
  ask: 'How many bags do you mix?',
  called: { names: ['bags to mix', 'number of bags'], things: ['bag', 'bags', 'sack', 'sacks'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '500' },
})

export const waterAll = word<'volume'>('waterAll', {
  kind: 'volume',
  label: 'water for all bags',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'By the amount printed on the bag.',
  ask: 'How much water in all?',
  called: {
    names: ['water for the bags'],
    asks: [
      'how much water',
      'water for the bags',
      'water to mix',
      'how much water do i need',
      'water for mixing',
      'gallons of water',
      'litres of water',
    ],
  },
})

export const waterWeight = word<'mass'>('waterWeight', {
  kind: 'mass',
  label: 'weight of that water',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'To be carried as well.',
  ask: 'What does the water weigh?',
  called: { names: ['weight of the water'], asks: ['what does the water weigh', 'weight of the water'] },
})
