// This file is about the finish itself: its coats, how far it goes, and how much of it.
import { word } from './word.ts'

export const coats = word<'count'>('coats', {
  kind: 'count',
  noun: 'coat',
  label: 'coats',
  whole: true,
  measure: 'Primer counts as one.',
  ask: 'How many coats?',
  called: { names: ['number of coats'], things: ['coat', 'coats'] },
  possible: { least: '1', most: '6' },
  plausible: { from: '1', to: '4' },
  usual: {
    value: '2',
    because: 'two coats are usual; film paint on new wood takes a primer and two more',
    from: 'common practice, no source; Wood Handbook, chapter 16, for the primer and two',
  },
})

export const surfaceTexture = word<'choice'>('surfaceTexture', {
  kind: 'choice',
  label: 'rough or smooth wood',
  measure: 'Planed is smooth; sawn or weathered is rough, and drinks about twice as much.',
  ask: 'Is the wood planed smooth, or rough (sawn or weathered)?',
  called: { names: ['texture'] },
  options: {
    smooth: { label: 'smooth (planed)', called: ['smooth', 'planed', 'dressed', 'smooth wood', 's4s'] },
    rough: {
      label: 'rough (sawn or weathered)',
      called: [
        'rough',
        'rough sawn',
        'rough-sawn',
        'sawn',
        'saw-textured',
        'roughsawn',
        'weathered wood',
        'rough wood',
        'old wood',
      ],
    },
  },
})

export const coverageFirst = word<'coverage'>('coverageFirst', {
  kind: 'coverage',
  label: 'spread of the first coat',
  units: { imperial: 'ft2/gal', metric: 'm2/L' },
  measure: 'On the can, for wood as rough as yours. The lower figure buys enough.',
  ask: 'How far does the first coat go, by the can?',
  called: {
    names: [
      'coverage',
      'first coat',
      'spread',
      'spreading rate',
      'covers',
      'for the first',
      'first coat at',
      'on the first coat',
      'covers first',
    ],
    things: ['can', 'coat', 'stain', 'paint'],
    sides: ['covers', 'coverage', 'first', 'goes'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 ft2/gal' },
  plausible: { from: '40 ft2/gal', to: '700 ft2/gal' },
})

export const coverageNext = word<'coverage'>('coverageNext', {
  kind: 'coverage',
  label: 'spread of each later coat',
  units: { imperial: 'ft2/gal', metric: 'm2/L' },
  measure: 'On the can. A second coat goes further, since the wood drinks less.',
  ask: 'How far does each later coat go, by the can?',
  called: {
    names: [
      'second coat',
      'later coats',
      'next coat',
      'second coat at',
      'for the second',
      'on the second coat',
      'then',
    ],
    things: ['second', 'second coat'],
    sides: ['second', 'later', 'next'],
    plainly: true,
  },
  possible: { above: '0 ft2/gal' },
  plausible: { from: '40 ft2/gal', to: '900 ft2/gal' },
})

export const finishSpare = word<'percent'>('finishSpare', {
  kind: 'percent',
  label: 'spare finish',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'For what stays in brush, tray and can, and runs off edges. A sprayer loses far more.',
  ask: 'How much spare finish, in percent?',
  called: {
    names: ['waste', 'spare', 'extra', 'loss', 'for waste'],
    things: ['waste', 'spare', 'extra'],
    sides: ['waste', 'spare', 'extra'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '0 %', to: '60 %' },
  usual: { value: '10 %', because: 'a brush and a can keep some for themselves', from: 'common practice, no source' },
})

export const canSize = word<'volume'>('canSize', {
  kind: 'volume',
  label: 'size of the can',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'On the label.',
  ask: 'How large is a can?',
  called: {
    names: ['can size', 'cans of', 'tins of', 'size of the can', 'sold in'],
    things: ['can', 'tin', 'pail', 'bucket of stain', 'pot'],
    sides: ['can', 'cans', 'tin', 'tins', 'pail'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 gal' },
  plausible: { from: '0.1 gal', to: '6 gal' },
  usual: {
    value: '1 gal',
    metric: '5 L',
    because: 'a common size of can',
    from: 'common practice, no source',
  },
})

export const finishNeeded = word<'volume'>('finishNeeded', {
  kind: 'volume',
  label: 'finish needed',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'All coats, with what is spare.',
  ask: 'How much finish is needed?',
  called: {
    names: ['amount of stain', 'amount of paint', 'finish needed'],
    asks: [
      'how much stain',
      'how much paint',
      'how much finish',
      'how much primer',
      'how much sealer',
      'how many gallons of stain',
      'how many gallons of paint',
      'how many gallons',
      'how many litres of stain',
      'how many litres of paint',
      'how many litres',
      'how many liters',
      'gallons of stain',
      'gallons of paint',
      'litres of stain',
      'litres of paint',
      'stain do i need',
      'paint do i need',
      'stain will i need',
      'paint will i need',
    ],
  },
})

export const finishCans = word<'count'>('finishCans', {
  kind: 'count',
  noun: 'can',
  label: 'cans to buy',
  whole: true,
  measure: 'Whole cans of that size. Stir them together before you begin: no two batches match.',
  ask: 'How many cans?',
  called: {
    names: ['cans to buy'],
    things: ['can', 'tin', 'pail'],
    asks: ['cans of stain', 'cans of paint', 'tins of paint', 'tins of stain', 'cans do i need', 'tins do i need'],
  },
})

export const finishCost = word<'money'>('finishCost', {
  kind: 'money',
  label: 'the finish in all',
  measure: 'Whole cans at what one costs.',
  ask: 'What does the finish cost in all?',
  called: { names: ['cost of the finish', 'cost of the paint', 'cost of the stain'] },
})
