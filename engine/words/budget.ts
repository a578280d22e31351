// This file is about so much money to spend: how long a fence it makes, how many of a thing it buys, and what is left of it.
import { word } from './word.ts'

export const budget = word<'money'>('budget', {
  kind: 'money',
  label: 'money to spend',
  measure: 'All that you want to spend on it, tax and all.',
  ask: 'How much have you got to spend?',
  called: {},
  possible: { above: '$0' },
})

export const affordableLength = word<'length'>('affordableLength', {
  kind: 'length',
  label: 'length that the money makes',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'The money, by the price of one foot or metre.',
  ask: 'How long a fence can it be for that money?',
  called: {},
})

export const budgetShort = word<'money'>('budgetShort', {
  kind: 'money',
  label: 'money still lacking',
  measure: 'What it costs, less what there is to spend.',
  ask: 'How much is lacking?',
  called: {},
})

export const budgetLeft = word<'money'>('budgetLeft', {
  kind: 'money',
  label: 'money left over',
  measure: 'What there is to spend, less what it costs.',
  ask: 'How much is left over?',
  called: {},
})

export const pieceBought = word<'money'>('pieceBought', {
  kind: 'money',
  label: 'price of one of them',
  measure: 'Of the thing that the rest of the money goes into.',
  ask: 'What does one of them cost?',
  called: {},
  possible: { above: '$0' },
})

export const spentFirst = word<'money'>('spentFirst', {
  kind: 'money',
  label: 'what the other things come to',
  measure: 'Each number times its price, added up.',
  ask: 'What do the other things come to?',
  called: {},
})

export const affordablePieces = word<'count'>('affordablePieces', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces that the money buys',
  whole: true,
  measure: 'Whole ones.',
  ask: 'How many can be bought for that money?',
  called: {},
})

export const spentAmounts = word<'money'>('spentAmounts', {
  kind: 'money',
  list: true,
  label: 'amounts spent',
  measure: 'What each thing comes to, for all of it.',
  ask: 'What does it come to, or each part of it?',
  called: {},
  possible: { least: '$0' },
})

export const spentTogether = word<'money'>('spentTogether', {
  kind: 'money',
  label: 'spent in all',
  measure: 'All amounts, with the tax.',
  ask: 'What does it all come to?',
  called: {},
})

export const moneyReaches = word<'verdict'>('moneyReaches', {
  kind: 'verdict',
  label: 'the money for all of it',
  measure: 'What there is to spend, against what it comes to.',
  ask: 'Is the money enough?',
  called: {},
  says: { yes: 'enough', no: 'not enough', unknown: 'cannot say whether it is enough' },
})

export const pieceDropped = word<'money'>('pieceDropped', {
  kind: 'money',
  label: 'price of one that may be left out',
  measure: 'Of the thing that you would buy fewer of.',
  ask: 'What does one of them cost?',
  called: {},
  possible: { above: '$0' },
})

export const piecesToDrop = word<'count'>('piecesToDrop', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces to leave out',
  whole: true,
  measure: 'Fewer of that thing, until it is within the money.',
  ask: 'How many must be left out?',
  called: {},
})

export const spentCounts = word<'count'>('spentCounts', {
  kind: 'count',
  noun: 'item',
  list: true,
  label: 'how many of each are bought',
  measure: 'In the order of their prices.',
  ask: 'How many of each are bought, in the same order?',
  called: {},
  possible: { above: '0' },
})

export const spentPrices = word<'money'>('spentPrices', {
  kind: 'money',
  list: true,
  label: 'price of one, thing by thing',
  measure: 'In the order of the numbers.',
  ask: 'What does one of each cost, in the same order?',
  called: {},
  possible: { least: '$0' },
})

export const spentTax = word<'percent'>('spentTax', {
  kind: 'percent',
  label: 'tax on what is bought',
  measure: 'On top of all that is told, where the amounts do not hold it.',
  ask: 'What rate of tax comes on it?',
  called: {},
  possible: { least: '0 %' },
})
