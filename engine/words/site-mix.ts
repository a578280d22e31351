// This file is about concrete mixed on site from cement, sand and stone, by parts.
import { word } from './word.ts'

export const mixParts = word<'count'>('mixParts', {
  kind: 'count',
  noun: 'part',
  list: true,
  label: 'parts of the mix: cement, sand, stone',
  measure: 'By volume, all filled into the same bucket: so many of cement, of sand, of stone.',
  ask: 'In what parts do you mix cement, sand and stone, in that order?',
  called: {
    names: ['parts of the mix', 'mix ratio', 'mixing ratio', 'proportions'],
    things: ['part', 'parts', 'mix', 'mixture'],
    plainly: true,
  },
  possible: { above: '0' },
  plausible: { from: '1/2', to: '10' },
})

export const dryExtra = word<'percent'>('dryExtra', {
  kind: 'percent',
  label: 'dry stuff measures more than the concrete by',
  measure: 'Cement and sand go into the gaps between the stones, so the dry stuff measures more than it makes.',
  ask: 'By how much do the dry materials measure more than the concrete they make?',
  called: {
    names: ['more dry', 'dry than wet', 'dry volume', 'shrinks by', 'dry volume factor', 'for shrinkage'],
    sides: ['dry', 'shrinkage'],
  },
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '30 %', to: '80 %' },
  usual: {
    value: '54 %',
    because: 'worked examples in print take that; with other sand and stone it is about 50 to 60 %',
    from: 'trade rule, no source; a cement maker’s table of a century ago comes to the same for 1 : 2 : 4',
  },
})

export const cementDensity = word<'density'>('cementDensity', {
  kind: 'density',
  label: 'weight of loose cement',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'Cement as it is tipped into a bucket, not pressed down.',
  ask: 'What does loose cement weigh?',
  called: {
    names: ['density of cement', 'density of the cement', 'cement density', 'cement weighs'],
    things: ['cement'],
    sides: ['density', 'weighs'],
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '70 lb/ft3', to: '105 lb/ft3' },
  usual: {
    value: '94 lb/ft3',
    metric: '1440 kg/m3',
    because: 'a US bag of 94 lb is reckoned a cubic foot; metric worked examples take 1440 kg/m³',
    from: 'common practice, no source (from memory)',
  },
})

export const cementBagWeight = word<'mass'>('cementBagWeight', {
  kind: 'mass',
  label: 'weight of a bag of cement',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Printed on the bag. Plain cement, not a mix with sand and stone in it.',
  ask: 'What does a bag of cement weigh?',
  called: {
    names: ['bag of cement', 'sack of cement', 'cement bag', 'bags of cement', 'cement in bags of', 'cement bags of'],
    things: ['cement', 'bag', 'sack'],
    sides: ['cement'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '20 lb', to: '120 lb' },
  usual: {
    value: '94 lb',
    metric: '25 kg',
    because: 'a US bag is 94 lb; 25 kg is common in the UK, 20 kg in Australia and New Zealand, 40 kg in Canada',
    from: 'common practice (from memory); your own bag comes first',
  },
})

export const cementVolume = word<'volume'>('cementVolume', {
  kind: 'volume',
  label: 'cement, loose',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'As it is measured into the mix.',
  ask: 'How much cement is that, loose?',
  called: { names: ['volume of cement'], asks: ['what volume of cement'] },
})

export const cementBags = word<'count'>('cementBags', {
  kind: 'count',
  noun: 'bag',
  label: 'bags of plain cement',
  whole: true,
  measure: 'For mixing with sand and stone. No bags of ready mix are among them.',
  ask: 'How many bags of plain cement?',
  called: {
    names: ['bags of plain cement', 'bags of portland cement', 'bags of portland'],
    asks: [
      'how many bags of cement',
      'how many sacks of cement',
      'how many bags of portland',
      'how many bags of plain cement',
      'how much cement',
      'how much portland',
      'how much plain cement',
      'how much cement and sand',
      'how much cement sand and stone',
      'how much cement sand and gravel',
    ],
  },
})

export const sandForMix = word<'volume'>('sandForMix', {
  kind: 'volume',
  label: 'sand for the mix, loose',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Sharp sand, dry and loose. Damp sand takes more room.',
  ask: 'How much sand does the mix take?',
  called: {
    names: ['sand in the mix'],
    things: ['sand'],
    asks: ['how much sand', 'sand do i need', 'sand for the mix'],
  },
})

export const stoneForMix = word<'volume'>('stoneForMix', {
  kind: 'volume',
  label: 'stone for the mix, loose',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Gravel or crushed stone, loose. Not the stone under the posts.',
  ask: 'How much stone does the mix take?',
  called: {
    names: ['stone in the mix', 'gravel in the mix'],
    asks: ['stone for the mix', 'gravel for the mix', 'how much aggregate', 'how much coarse aggregate'],
  },
})

export const mixBatches = word<'count'>('mixBatches', {
  kind: 'count',
  noun: 'batch',
  label: 'batches, one bucket to a part',
  whole: true,
  measure: 'As many buckets of each as its parts make one batch.',
  ask: 'How many batches are mixed?',
  called: { names: ['number of batches'], things: ['batch'], asks: ['how many batches', 'how many mixes'] },
})

export const batchMakes = word<'volume'>('batchMakes', {
  kind: 'volume',
  label: 'concrete from one batch',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'One bucket to a part.',
  ask: 'How much concrete does one batch make?',
  called: { names: ['concrete per batch'], asks: ['how much does a batch make', 'how much concrete per batch'] },
})
