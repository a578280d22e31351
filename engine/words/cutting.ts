// This file is about a cut list: what is needed, what the yard sells, and what the plan gives.
import { word } from './word.ts'

export const pieceLengths = word<'length'>('pieceLengths', {
  kind: 'length',
  list: true,
  label: 'lengths of the pieces',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The finished length of each sort of piece, of one section of timber.',
  ask: 'Which lengths do you need?',
  called: {
    names: ['piece length', 'lengths of the pieces', 'pieces at', 'pieces of', 'cut length'],
    things: ['piece'],
    sides: ['long'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '20 ft' },
})

export const pieceCounts = word<'count'>('pieceCounts', {
  kind: 'count',
  noun: 'piece',
  list: true,
  whole: true,
  label: 'how many of each length',
  measure: 'As many as you need, in the order of the lengths.',
  ask: 'How many of each length do you need, in the same order?',
  called: { things: ['piece'] },
  possible: { above: '0' },
  plausible: { from: '1', to: '5000' },
})

export const stockLengths = word<'length'>('stockLengths', {
  kind: 'length',
  list: true,
  label: 'lengths the yard sells',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Every length of that section that you can buy.',
  ask: 'Which lengths can you buy?',
  called: {
    names: ['cut from', 'sold in', 'stock lengths', 'comes in', 'come in', 'yard sells', 'yard has', 'out of'],
    things: ['board', 'stick', 'stock', 'length'],
  },
  possible: { above: '0 in' },
  plausible: { from: '2 ft', to: '24 ft' },
})

export const stockPrices = word<'money'>('stockPrices', {
  kind: 'money',
  list: true,
  label: 'price of one of each length',
  measure: 'For one board, in the order of the lengths.',
  ask: 'What does one board of each length cost, in the same order?',
  called: { names: ['price each', 'priced at'], things: ['board', 'stick', 'price'], plainly: true },
  possible: { least: '$0' },
})

export const endTrim = word<'length'>('endTrim', {
  kind: 'length',
  label: 'squared off one end of each board',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What comes off once to square an end, that cut included. The cuts between pieces are reckoned apart.',
  ask: 'How much do you square off the end of each board?',
  called: { names: ['end trim', 'trim', 'squared off', 'square off', 'off the end', 'off one end'], plainly: true },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '4 in' },
  usual: {
    value: '0 in',
    metric: '0 mm',
    because: 'one end is taken to be square',
    from: 'common practice, no source',
  },
})

export const leastOffcut = word<'length'>('leastOffcut', {
  kind: 'length',
  label: 'shortest offcut worth keeping',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is shorter counts as waste.',
  ask: 'How long must an offcut be to be worth keeping?',
  called: { names: ['shortest offcut', 'offcuts over', 'offcut worth keeping', 'keep offcuts over'] },
  possible: { least: '0 in' },
  plausible: { from: '1 in', to: '8 ft' },
  usual: {
    value: '12 in',
    metric: '300 mm',
    because: 'about a foot still makes a block or a cap',
    from: 'common practice, no source',
  },
})

export const smallLengths = word<'length'>('smallLengths', {
  kind: 'length',
  list: true,
  label: 'lengths of smaller pieces from offcuts',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Caps, blocks: of the same section, wanted only if offcuts give them.',
  ask: 'Which smaller pieces would you like out of the offcuts?',
  called: { names: ['from the offcuts', 'out of the offcuts', 'smaller pieces'] },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '8 ft' },
})

export const smallCounts = word<'count'>('smallCounts', {
  kind: 'count',
  noun: 'smaller piece',
  list: true,
  whole: true,
  label: 'how many smaller pieces of each length',
  measure: 'In the order of their lengths.',
  ask: 'How many smaller pieces of each length, in the same order?',
  called: { things: ['smaller piece', 'block', 'cap blank'] },
  possible: { above: '0' },
  plausible: { from: '1', to: '5000' },
})

export const boardsToCut = word<'count'>('boardsToCut', {
  kind: 'count',
  noun: 'board',
  label: 'boards to buy for the pieces',
  measure: 'Of all lengths together.',
  ask: 'How many boards do the pieces take?',
  called: {
    names: ['cut plan', 'cut list', 'cutting list', 'cutting plan', 'cut plan for'],
    asks: ['what do i buy', 'what should i buy', 'what to buy', 'how do i cut', 'how should i cut', 'best way to cut'],
  },
})

export const cutCost = word<'money'>('cutCost', {
  kind: 'money',
  label: 'price of those boards',
  measure: 'Each length at its price.',
  ask: 'What do the boards for the pieces cost?',
  called: { names: ['cost of the cut plan', 'cheapest way to cut', 'price of those boards'] },
})

export const timberBought = word<'length'>('timberBought', {
  kind: 'length',
  units: { imperial: 'ft', metric: 'm' },
  label: 'timber bought, end to end',
  measure: 'All the boards together.',
  ask: 'How much timber is that, end to end?',
  called: { names: ['timber bought'] },
})

export const timberUsed = word<'percent'>('timberUsed', {
  kind: 'percent',
  label: 'share of the timber that becomes pieces',
  measure: 'The rest is saw cuts, trim and offcuts.',
  ask: 'How much of the timber is used?',
  called: { names: ['share of timber used', 'timber used'] },
})

export const longestOffcut = word<'length'>('longestOffcut', {
  kind: 'length',
  units: { imperial: 'in', metric: 'mm' },
  label: 'longest offcut',
  measure: 'What is left of one board when its last cut is made.',
  ask: 'How long is the longest offcut?',
  called: { names: ['longest offcut'] },
})

export const smallsFromOffcuts = word<'count'>('smallsFromOffcuts', {
  kind: 'count',
  noun: 'smaller piece',
  label: 'smaller pieces out of the offcuts',
  measure: 'With nothing more bought.',
  ask: 'How many smaller pieces come out of the offcuts?',
  called: { names: ['smaller pieces out of the offcuts'], asks: ['how many from the offcuts'] },
})

export const longestBoard = word<'length'>('longestBoard', {
  kind: 'length',
  label: 'longest board to buy',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Of those that the plan buys.',
  ask: 'How long is the longest board to buy?',
  called: { names: ['longest board to buy'] },
})
