// This file is about gravel: how much lies in the holes, how much to buy, and carrying it.
import { word } from './word.ts'

export const gravelInPlace = word<'volume'>('gravelInPlace', {
  kind: 'volume',
  label: 'gravel in place',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'As it lies tamped in the holes.',
  ask: 'How much gravel lies in the holes?',
  called: {},
})

export const gravel = word<'volume'>('gravel', {
  kind: 'volume',
  label: 'loose gravel to buy',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Loose, as it is sold.',
  ask: 'How much gravel to buy?',
  called: {
    names: ['amount of gravel', 'volume of gravel'],
    things: ['gravel', 'stone', 'crushed stone', 'rock', 'pea gravel', 'ballast', 'shingle', 'drainage'],
    asks: [
      'gravel for',
      'stone for',
      'gravel needed',
      'how much gravel',
      'how much stone',
      'how much crushed',
      'how much rock',
      'how much pea',
      'gravel do i need',
      'stone do i need',
      'cubic feet of gravel',
      'yards of gravel',
      'how much drainage',
      'how much ballast',
      'how much shingle',
    ],
  },
})

export const settling = word<'percent'>('settling', {
  kind: 'percent',
  label: 'lost to tamping and spills',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'How much more loose gravel than tamped is bought.',
  ask: 'How much extra for tamping?',
  called: {
    names: [
      'more for tamping',
      'extra for tamping',
      'for tamping',
      'for settling',
      'tamping',
      'compaction',
      'settling',
      'settlement',
      'for compaction',
    ],
    sides: ['tamping', 'compaction'],
  },
  possible: { least: '0 %' },
  plausible: { from: '0 %', to: '50 %' },
  usual: {
    value: '15 %',
    because: 'loose stone settles by 10 to 20 % when it is tamped',
    from: 'common practice, no source (from memory)',
  },
})

export const gravelDensity = word<'density'>('gravelDensity', {
  kind: 'density',
  label: 'weight of loose gravel',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'The yard that sells it knows.',
  ask: 'What does the gravel weigh?',
  called: {
    names: ['gravel density', 'density of the gravel', 'weight of gravel', 'gravel weighs', 'stone weighs'],
    things: ['gravel', 'stone'],
    sides: ['weighs', 'density'],
    plainly: true,
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '60 lb/ft3', to: '160 lb/ft3' },
  usual: {
    value: '100 lb/ft3',
    metric: '1600 kg/m3',
    because: 'dry crushed stone as it is tipped',
    from: 'common practice, no source; aggregate for concrete is usually given as 75 to 110 lb/ft³',
  },
})

export const bucketSize = word<'volume'>('bucketSize', {
  kind: 'volume',
  label: 'size of a bucket',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'It is moulded on the bottom or printed on the side.',
  ask: 'How big is your bucket?',
  called: { names: ['bucket size'], things: ['bucket', 'pail'], sides: ['holds', 'big', 'size'], plainly: true },
  possible: { above: '0 gal' },
  plausible: { from: '1 gal', to: '20 gal' },
  usual: { value: '5 gal', metric: '15 L', because: 'the common builder’s bucket', from: 'common practice, no source' },
})

export const bucketFill = word<'percent'>('bucketFill', {
  kind: 'percent',
  label: 'filled to',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'How full each bucket is carried.',
  ask: 'How full do you carry a bucket?',
  called: {
    names: ['bucket full', 'fill the bucket', 'filled to', 'full bucket'],
    things: ['bucket', 'pail'],
    sides: ['full', 'fill', 'filled'],
  },
  possible: { above: '0 %', most: '100 %' },
  plausible: { from: '20 %', to: '100 %' },
  usual: {
    value: '66 2/3 %',
    because:
      'a 5 gal bucket filled to the brim with stone weighs about 67 lb, more than the 51 lb that the NIOSH lifting equation allows at best',
    from: 'NIOSH revised lifting equation, load constant 51 lb (23 kg)',
  },
})

export const bucketsPerTrip = word<'count'>('bucketsPerTrip', {
  kind: 'count',
  noun: 'bucket',
  label: 'buckets carried at once',
  whole: true,
  measure: 'One in each hand is two; a barrow takes more.',
  ask: 'How many buckets do you carry at once?',
  called: {
    names: [
      'buckets at a time',
      'buckets at once',
      'buckets per trip',
      'buckets a trip',
      'buckets each trip',
      'buckets in the barrow',
      'buckets per load',
    ],
    sides: ['at a time', 'at once', 'per trip', 'a trip', 'each trip', 'barrow'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '12' },
  usual: { value: '2', because: 'one in each hand', from: 'common practice, no source' },
})

export const buckets = word<'count'>('buckets', {
  kind: 'count',
  noun: 'bucket',
  label: 'buckets',
  whole: true,
  measure: 'All the loose gravel, over what one bucket is filled with, rounded up.',
  ask: 'How many buckets?',
  called: {
    names: ['number of buckets', 'bucketfuls', 'bucket loads', 'pails'],
    things: ['bucket', 'pail', 'bucketful'],
    asks: ['how many buckets', 'how many pails', 'how many bucketfuls', 'buckets of gravel', 'buckets of stone'],
  },
})

export const trips = word<'count'>('trips', {
  kind: 'count',
  noun: 'trip',
  label: 'trips',
  whole: true,
  measure: 'There and back, rounded up.',
  ask: 'How many trips?',
  called: {
    names: ['number of trips'],
    things: ['trip', 'load'],
    asks: [
      'how many trips',
      'how many loads',
      'how many walks',
      'how many journeys',
      'how many carries',
      'how many times do i',
      'trips to haul',
      'can i haul it in one',
      'one trip or two',
    ],
  },
})

export const looseVolume = word<'volume'>('looseVolume', {
  kind: 'volume',
  label: 'loose stuff to buy',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Gravel, stone, sand, soil or mulch, loose, as it is sold.',
  ask: 'How much of it do you need, by volume?',
  called: {
    names: ['i need', 'need', 'want'],
    things: ['gravel', 'stone', 'sand', 'soil', 'topsoil', 'mulch', 'compost', 'ballast', 'shingle', 'rock'],
    byDefault: true,
  },
  possible: { above: '0 ft3' },
  plausible: { from: '0.1 ft3', to: '1000 ft3' },
})

export const looseBag = word<'volume'>('looseBag', {
  kind: 'volume',
  label: 'what one bag holds',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Printed on the bag of gravel, stone, sand, soil or mulch.',
  ask: 'How much does one bag of it hold?',
  called: {
    names: ['bags of', 'a bag', 'per bag', 'each bag', 'bag holds', 'bags hold', 'to a bag', 'in a bag'],
    things: ['bag', 'sack'],
    sides: ['of', 'holds', 'hold', 'per', 'each'],
    plainly: true,
  },
  possible: { above: '0 ft3' },
  plausible: { from: '0.1 ft3', to: '40 ft3' },
})

export const looseBagWeight = word<'mass'>('looseBagWeight', {
  kind: 'mass',
  label: 'weight of one bag',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Printed on a bag that is sold by weight.',
  ask: 'What does one bag of it weigh?',
  called: {
    names: ['bags of', 'a bag', 'per bag', 'each bag', 'bag weighs'],
    things: ['bag', 'sack'],
    sides: ['weighs', 'weigh', 'per', 'each'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '5 lb', to: '2500 lb' },
})

export const looseBags = word<'count'>('looseBags', {
  kind: 'count',
  noun: 'bag',
  label: 'bags of it',
  whole: true,
  measure: 'All of it over what one bag holds, rounded up.',
  ask: 'How many bags of it?',
  called: {
    names: ['bags of it'],
    asks: ['gravel', 'stone', 'sand', 'soil', 'topsoil', 'mulch', 'rock'].map((it) => `how many bags of ${it}`),
  },
})

export const inBags = word<'volume'>('inBags', {
  kind: 'volume',
  label: 'bought in those bags',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Whole bags times what one holds.',
  ask: 'How much is bought in those bags?',
  called: { names: ['volume in bags'] },
})

export const looseBagsWeight = word<'mass'>('looseBagsWeight', {
  kind: 'mass',
  label: 'weight of those bags',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Dry. Left out in the rain they weigh far more.',
  ask: 'What do those bags weigh?',
  called: { names: ['weight of those bags'], asks: ['what do those bags weigh'] },
})

export const gravelLoad = word<'mass'>('gravelLoad', {
  kind: 'mass',
  label: 'weight of the gravel',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All of it, loose and dry.',
  ask: 'What does the gravel weigh?',
  called: {
    names: ['weight of the gravel', 'weight of gravel', 'gravel weight'],
    asks: ['how heavy is the gravel', 'gravel weigh', 'stone weigh', 'how much will the gravel weigh'],
  },
})

export const bucketLoad = word<'mass'>('bucketLoad', {
  kind: 'mass',
  label: 'weight of one bucket as carried',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Without the bucket itself.',
  ask: 'What does one bucket weigh?',
  called: {
    names: ['weight of a bucket', 'bucket weigh'],
    asks: ['how heavy is a bucket', 'what does a bucket weigh', 'bucket weigh'],
  },
})
