// This file is about concrete by the volume, out of bags or from the truck: bags, ready-mix, water, weight.
import { word } from './word.ts'

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

export const orderStep = word<'volume'>('orderStep', {
  kind: 'volume',
  label: 'ready-mix is sold by steps of',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Ask the plant: the smallest step by which an order grows.',
  ask: 'By what step does your plant sell ready-mix?',
  called: {
    names: [
      'order step',
      'steps of',
      'step of',
      'sold by',
      'sold in',
      'sells by',
      'sells in',
      'ordered by',
      'increments of',
      'multiples of',
    ],
    things: ['step', 'increment'],
    sides: ['sold', 'sells', 'step', 'steps', 'increments'],
    plainly: true,
  },
  possible: { above: '0 yd3' },
  plausible: { from: '1/20 yd3', to: '1 1/2 yd3' },
  usual: {
    value: '1/4 yd3',
    metric: '0.2 m3',
    because: 'plants commonly sell by quarter yards, or by fifths of a cubic metre; ask yours',
    from: 'common practice, no source (the metric step from memory)',
  },
})

export const readyMix = word<'volume'>('readyMix', {
  kind: 'volume',
  label: 'ready-mix to order',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'All the concrete, up to the next step that is sold. Instead of the bags, not with them.',
  ask: 'How much ready-mix to order?',
  called: {
    names: ['ready-mix order', 'from the truck', 'by the truck'],
    things: ['ready mix', 'readymix', 'ready mixed concrete', 'ready mixed'],
    asks: [
      'how much ready mix',
      'how much readymix',
      'how much ready mixed',
      'ready mix do i need',
      'ready mix to order',
      'ready mix should i order',
      'yards of ready mix',
      'metres of ready mix',
      'how much to order',
      'how much concrete to order',
      'how much concrete should i order',
      'how much concrete do i order',
      'yards to order',
      'yards should i order',
      'cubic metres to order',
      'how many yards',
      'order from the truck',
      'from the ready mix plant',
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
  upTo: 'waterEachMost',
  label: 'water for one bag, to begin with',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'Printed on the bag; of two figures the lower.',
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

export const waterEachMost = word<'volume'>('waterEachMost', {
  kind: 'volume',
  label: 'most water for one bag',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'Printed on the bag; of two figures the higher.',
  ask: 'What is the most water that the bag allows, by its print?',
  called: {
    names: ['most water', 'no more than', 'water at most', 'at most'],
    things: ['most', 'maximum'],
    sides: ['at most', 'most', 'maximum'],
  },
  possible: { above: '0 gal' },
  plausible: { from: '0.2 gal', to: '4 gal' },
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
  label: 'water for all bags, to begin with',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'By the amount printed on the bag; of two figures the lower.',
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

export const waterAllMost = word<'volume'>('waterAllMost', {
  kind: 'volume',
  label: 'most water for all bags',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'By the higher figure printed on the bag. Never more.',
  ask: 'What is the most water in all?',
  called: { names: ['most water in all'], asks: ['most water in all', 'how much water at most'] },
})

export const waterWeight = word<'mass'>('waterWeight', {
  kind: 'mass',
  label: 'weight of that water',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'To be carried as well.',
  ask: 'What does the water weigh?',
  called: { names: ['weight of the water'], asks: ['what does the water weigh', 'weight of the water'] },
})
