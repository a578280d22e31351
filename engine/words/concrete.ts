// This file is about concrete: what fills a hole, and the bags it comes in.
import { word } from './word.ts'

export const concretePerHole = word<'volume'>('concretePerHole', {
  kind: 'volume',
  label: 'concrete in one hole',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The hole, less the stone and less the post.',
  ask: 'How much concrete does one hole take?',
  called: {
    names: ['concrete per hole', 'concrete in each hole', 'concrete per post', 'concrete for each post'],
    asks: ['how much concrete per', 'how much concrete each', 'how much concrete in each', 'how much concrete in one'],
  },
})

export const concrete = word<'volume'>('concrete', {
  kind: 'volume',
  label: 'concrete in all',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'All the holes together, or the volume you were told.',
  ask: 'How much concrete in all, by volume?',
  called: {
    names: [
      'volume of concrete',
      'amount of concrete',
      'concrete volume',
      'total concrete',
      'of concrete',
      'need to fill',
      'volume',
    ],
    things: ['concrete', 'cement', 'crete', 'mix', 'postcrete'],
    sides: ['concrete'],
    plainly: true,
    byDefault: true,
    asks: [
      'how much concrete',
      'how much cement',
      'how much mix',
      'cubic feet of concrete',
      'cubic yards of concrete',
      'litres of concrete',
      'concrete do i need',
      'what volume',
    ],
  },
  possible: { above: '0 ft3' },
  plausible: { from: '0.05 ft3', to: '30 yd3' },
})

export const bagWeight = word<'mass'>('bagWeight', {
  replaces: ['bagYield'],
  kind: 'mass',
  label: 'weight of a bag',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'It is printed on the bag.',
  ask: 'What does a bag weigh?',
  called: {
    names: ['bag weight', 'weight of a bag', 'bag size'],
    things: ['bag', 'sack', 'concrete', 'mix', 'pounder', 'cement', 'postcrete'],
    sides: ['weigh', 'weight', 'heavy'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '20 lb', to: '120 lb' },
})

export const bagYield = word<'volume'>('bagYield', {
  kind: 'volume',
  label: 'what a bag makes',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The yield printed on the bag.',
  ask: 'Which bags are you buying: what weight, or what yield is printed on them?',
  called: {
    names: [
      'bag yield',
      'yield of a bag',
      'yields',
      'yield',
      'makes',
      'bag makes',
      'per bag',
      'a bag',
      'each bag',
      'fills',
    ],
    things: ['bag', 'sack'],
    sides: ['yield', 'yields', 'makes', 'make', 'gives', 'fills', 'per', 'each', 'of'],
    plainly: true,
  },
  possible: { above: '0 ft3' },
  plausible: { from: '0.1 ft3', to: '1.5 ft3' },
})

export const dryMixDensity = word<'density'>('dryMixDensity', {
  kind: 'density',
  label: 'dry mix for each volume of concrete',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'From the bag: its weight over its printed yield.',
  ask: 'How much dry mix makes a cubic foot?',
  called: { names: ['dry mix density', 'dry mix per cubic foot'] },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '100 lb/ft3', to: '170 lb/ft3' },
  usual: {
    value: '133 1/3 lb/ft3',
    because: '20 lb of dry mix makes about 0.15 ft³; the yield printed on your own bag comes first',
    from: 'trade rule, no source; it gives the yields commonly printed on bags (60 lb: 0.45 ft³, 80 lb: 0.60 ft³)',
  },
})

export const spare = word<'percent'>('spare', {
  kind: 'percent',
  label: 'added for spills and rough holes',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'A share on top of the worked amount.',
  ask: 'How much would you add for spills and rough holes?',
  called: {
    names: ['waste', 'wastage', 'spare', 'extra', 'overage', 'spillage', 'for spills', 'contingency'],
    sides: ['extra', 'waste', 'spare', 'more', 'over'],
    plainly: true,
  },
  possible: { least: '0 %' },
  plausible: { from: '0 %', to: '50 %' },
  usual: {
    value: '0 %',
    because: 'nothing is added unless you say so; see what an oversize hole costs instead',
    from: 'Decided here, so that the sum stays plain.',
  },
})

export const oversize = word<'length'>('oversize', {
  difference: true,
  kind: 'length',
  label: 'if the holes come out wider by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much wider than planned.',
  ask: 'How much wider might the holes come out?',
  called: {
    names: ['oversize', 'wider than planned', 'too wide', 'come out wider', 'wider by'],
    sides: ['wider', 'oversize', 'bigger'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '6 in' },
  usual: {
    value: '1 in',
    metric: '25 mm',
    because: 'a hole dug by hand or in stony ground easily comes out that much wider',
    from: 'common practice, no source',
  },
})

export const bags = word<'count'>('bags', {
  kind: 'count',
  noun: 'bag',
  label: 'bags, bought together',
  whole: true,
  measure: 'All the concrete together, over what one bag makes, rounded up once.',
  ask: 'How many bags in all?',
  called: {
    names: ['number of bags', 'bag count'],
    things: ['bag', 'sack', 'postcrete'],
    asks: [
      'how many bags',
      'how many sacks',
      'bags do i need',
      'bags needed',
      'bags will',
      'bags for',
      'no of bags',
      'how many bags of cement',
      'how many sacks of cement',
    ],
  },
})

export const bagsPerHole = word<'count'>('bagsPerHole', {
  kind: 'count',
  noun: 'bag',
  label: 'bags opened at one hole',
  whole: true,
  measure: 'What one hole takes, rounded up to whole bags.',
  ask: 'How many bags for one hole?',
  called: {
    names: [
      'bags per hole',
      'bags per post',
      'bags each',
      'bags a hole',
      'bags a post',
      'bags in each hole',
      'bags for each post',
      'bags for each hole',
      'bags for one post',
      'bags for one hole',
      'bags to a hole',
      'bags to a post',
      'sacks per hole',
      'sacks per post',
    ],
    asks: [
      'bags per hole',
      'bags per post',
      'bags for each',
      'bags a hole',
      'bags a post',
      'bags in each',
      'bags for one',
      'bags each',
      'sacks per',
      'sacks a',
    ].flatMap((text) => [text, `how many ${text}`]),
  },
})

export const bagsByHole = word<'count'>('bagsByHole', {
  kind: 'count',
  noun: 'bag',
  label: 'bags, if each hole is rounded up',
  whole: true,
  measure: 'Bags opened at one hole, times the holes.',
  ask: 'How many bags if each hole is rounded up?',
  called: {
    names: ['rounded up per hole', 'rounding each hole', 'each hole rounded up', 'whole bags per hole'],
    asks: ['if each hole is rounded', 'rounding up each', 'round each hole'],
  },
})

export const bagsIfWider = word<'count'>('bagsIfWider', {
  kind: 'count',
  noun: 'bag',
  label: 'bags, if the holes come out wider',
  whole: true,
  measure: 'The same sum with wider holes.',
  ask: 'How many bags if the holes come out wider?',
  called: {
    names: ['an inch oversize', 'an inch too wide', 'an inch wider'],
    asks: ['inch oversize', 'inch too wide', 'come out wider', 'if the holes are wider', 'oversized'],
  },
})

export const concreteIfWider = word<'volume'>('concreteIfWider', {
  kind: 'volume',
  label: 'concrete, if the holes come out wider',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The same sum with wider holes.',
  ask: 'How much concrete if the holes come out wider?',
  called: {},
})

export const bagsLoad = word<'mass'>('bagsLoad', {
  kind: 'mass',
  label: 'weight to carry',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All the bags together.',
  ask: 'What do the bags weigh together?',
  called: {
    names: [
      'weight to carry',
      'weight of the bags',
      'load weight',
      'total weight',
      'weight of all the bags',
      'how heavy',
    ],
    asks: [
      'how heavy',
      'bags weigh',
      'what do they weigh',
      'how much will it weigh',
      'how much do the bags weigh',
      'weigh in all',
      'what weight',
    ],
  },
})
