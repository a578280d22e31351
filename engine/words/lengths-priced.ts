// This file is about timber that is sold by its length: so many pieces, so long each, at a price for the foot or the metre.
import { word } from './word.ts'

export const lengthPrices = word<'money'>('lengthPrices', {
  kind: 'money',
  per: 'measure',
  list: true,
  label: 'price for a foot or a metre',
  measure: 'In the order of the pieces; one price if it is the same for all.',
  ask: 'What does one foot or metre of it cost, in the same order?',
  called: {
    names: ['foot', 'metre', 'meter', 'yard'].flatMap((it) => [`a ${it}`, `per ${it}`, `the ${it}`]),
    plainly: true,
    byDefault: true,
  },
  possible: { least: '$0' },
})

export const soldCounts = word<'count'>('soldCounts', {
  kind: 'count',
  noun: 'piece',
  list: true,
  label: 'how many pieces of each length',
  whole: true,
  measure: 'In the order of the lengths.',
  ask: 'How many pieces of each length do you buy, in the same order?',
  called: { things: ['board', 'rail', 'post', 'picket', 'paling', 'batten', 'plank', 'length', 'piece', 'stick'] },
  possible: { least: '1' },
})

export const soldLengths = word<'length'>('soldLengths', {
  kind: 'length',
  list: true,
  label: 'length of each of them',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'As they are sold, in the order of the numbers; one length if all are alike.',
  ask: 'How long is each of them, in the same order?',
  called: {
    names: ['each', 'long each', 'each long', 'lengths of', 'at'],
    things: ['board', 'rail', 'post', 'picket', 'paling', 'batten', 'plank', 'length', 'piece', 'stick'],
    sides: ['long', 'each', 'length', 'lengths'],
    byDefault: true,
  },
  possible: { above: '0 ft' },
  plausible: { from: '1 ft', to: '30 ft' },
})

export const lengthBought = word<'length'>('lengthBought', {
  kind: 'length',
  label: 'length in all',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Every piece, end to end.',
  ask: 'What length is that in all?',
  called: {
    names: ['length in all'],
    asks: ['how many feet in all', 'how many metres in all', 'how many lineal feet'],
  },
})
