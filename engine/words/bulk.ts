// This file is about loose stuff and concrete by the load: sold by steps, with a least load, against the same in bags.
import { word } from './word.ts'

export const bulkVolume = word<'volume'>('bulkVolume', {
  kind: 'volume',
  label: 'volume that is needed',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'As it was worked, before anything is added for waste.',
  ask: 'How much of it do you need, by volume?',
  called: {},
  possible: { above: '0 yd3' },
})

export const bulkWaste = word<'percent'>('bulkWaste', {
  kind: 'percent',
  label: 'added for waste',
  measure: 'For what is spilled, and for holes that come out wider.',
  ask: 'How many percent are added for waste?',
  called: {},
  possible: { least: '0 %', most: '100 %' },
})

export const bulkStep = word<'volume'>('bulkStep', {
  kind: 'volume',
  label: 'sold by steps of',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Half yards, tenths of a cubic metre: ask the yard or the plant.',
  ask: 'By what step is it sold?',
  called: {},
  possible: { above: '0 yd3' },
})

export const leastLoad = word<'volume'>('leastLoad', {
  kind: 'volume',
  label: 'least that is charged',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'A smaller load is paid as this much.',
  ask: 'What is the least that they charge for?',
  called: {},
  possible: { above: '0 yd3' },
})

export const orderedVolume = word<'volume'>('orderedVolume', {
  kind: 'volume',
  label: 'volume to order',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'With the waste, up to the next step, and no less than the least load.',
  ask: 'How much is to be ordered?',
  called: {},
})

export const bulkCost = word<'money'>('bulkCost', {
  kind: 'money',
  label: 'what the load costs',
  measure: 'What is ordered at its price, and the delivery.',
  ask: 'What does the load cost?',
  called: {},
})

export const bagPriced = word<'money'>('bagPriced', {
  kind: 'money',
  label: 'price of a bag of it',
  measure: 'On the shelf.',
  ask: 'What does a bag of it cost?',
  called: {},
  possible: { least: '$0' },
})

export const bagsInstead = word<'count'>('bagsInstead', {
  kind: 'count',
  noun: 'bag',
  label: 'bags in its place',
  whole: true,
  measure: 'Whole bags for the same volume.',
  ask: 'How many bags would that be?',
  called: {},
})

export const bagsInsteadCost = word<'money'>('bagsInsteadCost', {
  kind: 'money',
  label: 'what the bags cost',
  measure: 'Whole bags at the price of one.',
  ask: 'What would the bags cost?',
  called: {},
})

export const cheaperSupply = word<'choice'>('cheaperSupply', {
  kind: 'choice',
  label: 'cheaper of the two',
  measure: 'The load as it is charged, against whole bags.',
  ask: 'Which is cheaper, the load or bags?',
  called: {},
  options: {
    'the load': { label: 'the load', called: [] },
    'the bags': { label: 'the bags', called: [] },
    'both alike': { label: 'both alike', called: [] },
  },
})

export const suppliesApart = word<'money'>('suppliesApart', {
  kind: 'money',
  label: 'between the load and the bags',
  measure: 'The dearer less the cheaper.',
  ask: 'How much is between them?',
  called: {},
})
