// This file is about the moisture of a piece of wood, found by weighing it wet and again when it is dry.
import { word } from './word.ts'

export const wetWeight = word<'mass'>('wetWeight', {
  kind: 'mass',
  label: 'weight of the sample as it is',
  units: { imperial: 'lb', metric: 'g' },
  measure: 'Weighed at once after it is cut, two hand widths or more from the end of the board.',
  ask: 'What does the sample weigh as it is?',
  called: {
    names: ['wet weight', 'weight wet', 'weighs wet', 'weighed wet', 'wet sample', 'wet'],
    things: ['sample', 'piece', 'slice', 'offcut'],
    sides: ['wet', 'now', 'before', 'first', 'fresh', 'green'],
    plainly: true,
  },
  possible: { above: '0 g' },
  plausible: { from: '5 g', to: '100 lb' },
})

export const dryWeight = word<'mass'>('dryWeight', {
  kind: 'mass',
  label: 'weight of the sample oven-dry',
  units: { imperial: 'lb', metric: 'g' },
  measure: 'After drying at 103 °C (217 °F) until two weighings some hours apart agree.',
  ask: 'What does the same sample weigh when it is oven-dry?',
  called: {
    names: [
      'dry weight',
      'weight dry',
      'weighs dry',
      'oven dry',
      'oven-dry',
      'bone dry',
      'dry',
      'out of the oven',
      'after the oven',
    ],
    things: ['sample', 'piece', 'slice', 'offcut'],
    sides: ['dry', 'after', 'dried', 'oven'],
  },
  possible: { above: '0 g' },
  plausible: { from: '5 g', to: '100 lb' },
})

export const dryBasis = word<'percent'>('dryBasis', {
  kind: 'percent',
  label: 'moisture by the dry weight',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Water against dry wood: what meters, handbooks and cans mean by moisture content.',
  ask: 'What is the moisture by the dry weight?',
  called: {
    names: ['dry basis', 'oven-dry moisture', 'moisture by weight', 'true moisture'],
    asks: [
      'oven dry moisture',
      'oven-dry moisture',
      'moisture by weighing',
      'moisture of the sample',
      'moisture in the sample',
      'moisture content of the sample',
      'how wet is the sample',
      'how wet is a sample',
      'how wet was the sample',
      'dry basis',
      'on the dry basis',
      'by dry weight',
    ],
  },
})

export const wetBasis = word<'percent'>('wetBasis', {
  kind: 'percent',
  label: 'moisture by the wet weight',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Water against the whole wet piece, as firewood and chips are sold. It is always the smaller figure.',
  ask: 'What is the moisture by the wet weight?',
  called: {
    names: ['wet basis', 'on a wet basis', 'by wet weight', 'of the wet weight', 'of the total weight'],
    things: ['wet basis', 'total weight'],
    sides: ['wet basis', 'wet weight'],
    asks: ['on the wet basis', 'by wet weight'],
  },
  possible: { least: '0 %', most: '95 %' },
  plausible: { from: '3 %', to: '70 %' },
})
