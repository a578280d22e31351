// This file is about a quote by the foot or metre, with what comes on top, against a flat one.
import { word } from './word.ts'

export const quoteExtras = word<'money'>('quoteExtras', {
  kind: 'money',
  list: true,
  label: 'extras of the quote by the foot',
  measure: 'What comes on top of the price by the foot or metre: the old fence taken out, a gate, delivery.',
  ask: 'What comes on top of the price by the foot, each thing?',
  called: {
    names: ['plus', 'and another', 'tear out', 'tear-out', 'tearout', 'removal', 'haul away', 'for the gate', 'on top'],
    things: ['tear out', 'tearout', 'removal', 'gate', 'delivery', 'permit', 'disposal', 'setup'],
    plainly: true,
  },
  possible: { least: '$0' },
})

export const extraEach = word<'money'>('extraEach', {
  kind: 'money',
  label: 'price of each thing on top',
  measure: 'For one gate, one corner: what comes on top of the price by the foot.',
  ask: 'What does each of them cost on top?',
  called: {},
  possible: { least: '$0' },
})

export const extraCount = word<'count'>('extraCount', {
  kind: 'count',
  noun: 'piece',
  label: 'how many of them',
  whole: true,
  measure: 'Gates, corners: whatever has that price.',
  ask: 'How many of them are there, at that price each?',
  called: {},
  possible: { least: '1' },
})

export const flatQuote = word<'money'>('flatQuote', {
  kind: 'money',
  label: 'the flat quote',
  measure: 'One price for the whole fence, with the same things in it.',
  ask: 'What is the flat quote for the whole fence?',
  called: {
    names: [
      'flat',
      'flat quote',
      'flat price',
      'flat rate',
      'all in',
      'lump sum',
      'fixed price',
      'for the lot',
      'the whole thing',
    ],
    things: ['flat', 'lump sum'],
    plainly: true,
  },
  possible: { above: '$0' },
})

export const quotedByMeasure = word<'money'>('quotedByMeasure', {
  kind: 'money',
  label: 'the quote by the foot or metre',
  measure: 'Its price times the length, with its extras.',
  ask: 'What does the quote by the foot come to?',
  called: {
    names: ['quote by the foot'],
    asks: ['what does the quote by the foot come to', 'what does the first quote come to'],
  },
})

export const quotesApart = word<'money'>('quotesApart', {
  kind: 'money',
  label: 'between the two quotes',
  measure: 'The dearer less the cheaper.',
  ask: 'How much is between the two quotes?',
  called: {
    names: ['between the two quotes'],
    asks: ['how much is between the two quotes', 'how far apart are the quotes'],
  },
})

export const evenLength = word<'length'>('evenLength', {
  kind: 'length',
  label: 'length at which both cost the same',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Shorter than that the quote by the foot is cheaper, longer the flat one.',
  ask: 'At what length do both cost the same?',
  called: { names: ['length at which both cost the same'], asks: ['at what length', 'at how many feet', 'break even'] },
})

export const cheaperQuote = word<'choice'>('cheaperQuote', {
  kind: 'choice',
  label: 'cheaper quote',
  measure: 'The quote by the foot or metre with its extras, against the flat one.',
  ask: 'Which quote is cheaper, by the foot or flat?',
  called: {
    names: ['by the foot or flat'],
    asks: [
      'by the foot or flat',
      'flat or by the foot',
      'against a flat quote',
      'versus a flat quote',
      'cheaper than the flat',
    ],
  },
  options: {
    'by the foot or metre': { label: 'by the foot or metre', called: [] },
    'the flat quote': { label: 'the flat quote', called: [] },
    'both alike': { label: 'both alike', called: [] },
  },
})
