// This file is about what is bought, and what it comes to on the bill: prices, numbers, discount, tax.
import { word } from './word.ts'

export const unitPrices = word<'money'>('unitPrices', {
  kind: 'money',
  list: true,
  label: 'price of one, thing by thing',
  measure: 'For one bag, one post, one box, in the order of the numbers.',
  ask: 'What does one of each cost, in the same order?',
  called: { names: ['price', 'prices', 'priced at', 'price each'], things: ['price'], plainly: true, byDefault: true },
  possible: { least: '$0' },
})

export const itemCounts = word<'count'>('itemCounts', {
  kind: 'count',
  noun: 'item',
  list: true,
  label: 'how many of each',
  measure: 'As many as you buy, in the order of the prices.',
  ask: 'How many of each do you buy, in the same order?',
  called: {
    things: [
      'bag',
      'post',
      'picket',
      'paling',
      'rail',
      'board',
      'panel',
      'box',
      'packet',
      'pack',
      'tin',
      'tub',
      'roll',
      'hinge',
      'latch',
      'bracket',
      'cap',
      'brick',
      'screw',
    ],
  },
  possible: { above: '0' },
})

export const taxedAmounts = word<'money'>('taxedAmounts', {
  kind: 'money',
  list: true,
  label: 'amounts, each for all of it',
  measure: 'What each thing comes to, whatever its number: materials, concrete, hire.',
  ask: 'What amount is it, before the tax or with it?',
  called: {
    names: [
      'tax on',
      'vat on',
      'gst on',
      'hst on',
      'amount of',
      'subtotal',
      'bill of',
      'bill is',
      'invoice of',
      'total is',
      'receipt is',
    ],
    things: ['amount', 'subtotal', 'bill', 'invoice', 'material', 'materials', 'labour', 'labor', 'delivery', 'sum'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '$0' },
})

export const untaxedAmounts = word<'money'>('untaxedAmounts', {
  kind: 'money',
  list: true,
  label: 'amounts that are not taxed',
  measure: 'Delivery in some places, a deposit: they are added after the tax.',
  ask: 'Which amounts are not taxed?',
  called: {},
  possible: { least: '$0' },
})

export const settledAmounts = word<'money'>('settledAmounts', {
  kind: 'money',
  list: true,
  label: 'paid already, and left out',
  measure: 'What is no longer to pay.',
  ask: 'Which amounts are paid already?',
  called: {},
  possible: { least: '$0' },
})

export const discount = word<'percent'>('discount', {
  kind: 'percent',
  label: 'discount',
  measure: 'Off the whole bill, before tax is added.',
  ask: 'How much discount is there, in percent?',
  called: {
    names: ['discount', 'discount of', 'trade discount', 'off the bill', 'off the price', 'knocked off'],
    things: ['discount', 'off', 'rebate'],
    plainly: true,
  },
  possible: { least: '0 %', most: '100 %' },
  plausible: { from: '0 %', to: '60 %' },
})

export const taxRate = word<'percent'>('taxRate', {
  kind: 'percent',
  label: 'tax rate',
  measure: 'The rate on the receipt of the same shop, or what the tax office of your place says.',
  ask: 'What is the rate of tax?',
  called: {
    names: ['tax', 'sales tax', 'vat', 'gst', 'hst', 'pst', 'tax rate', 'tax of', 'vat of', 'gst of'],
    things: ['tax', 'vat', 'gst', 'hst', 'pst', 'sales tax'],
    sides: ['tax', 'vat', 'gst', 'hst'],
    plainly: true,
  },
  possible: { least: '0 %', most: '100 %' },
  plausible: { from: '0 %', to: '30 %' },
})

export const taxIncluded = word<'choice'>('taxIncluded', {
  kind: 'choice',
  label: 'tax in the prices or on top',
  measure: 'Shelf prices hold the tax in some countries and not in others; trade counters often leave it out.',
  ask: 'Do the prices hold the tax already, or does it come on top?',
  called: { names: ['tax inclusion'] },
  saidOf: 'taxRate',
  options: {
    added: {
      label: 'tax comes on top',
      called: [
        'plus tax',
        'plus vat',
        'plus gst',
        'plus hst',
        'before tax',
        'sales tax',
        'ex vat',
        'ex gst',
        'excluding tax',
        'excluding vat',
        'excluding gst',
        'without tax',
        'without vat',
        'on top',
        'tax not included',
        'not included',
        'not yet included',
        'not in it',
        'not in the price',
        'to be added',
        'tax extra',
        'vat extra',
        'excl vat',
        'excl tax',
        'excl gst',
        'exclusive of',
        'tax on',
        'vat on',
        'gst on',
        'hst on',
        'on',
        'tax added',
        'plus',
      ],
    },
    included: {
      label: 'the prices hold the tax',
      called: [
        'includes',
        'what is before tax',
        "what's before tax",
        'was it before tax',
        'is it before tax',
        'how much before tax',
        'net of tax',
        'without the tax',
        'tax included',
        'vat included',
        'gst included',
        'included',
        'including',
        'includes',
        'incl',
        'inc',
        'inclusive of',
        'already included',
        'included already',
        'is included',
        'are included',
        'already in it',
        'already in',
        'already in the price',
        'already in there',
        'in the price',
        'in the prices',
        'is in it',
        'is in the price',
        'includes vat',
        'includes tax',
        'includes gst',
        'including tax',
        'including vat',
        'including gst',
        'inc vat',
        'inc gst',
        'incl vat',
        'incl gst',
        'inclusive',
        'inclusive of',
        'prices include',
        'prices hold',
        'with tax in',
        'tax in',
        'tax already in',
      ],
    },
  },
})

export const billBefore = word<'money'>('billBefore', {
  kind: 'money',
  label: 'all together, before discount and tax',
  measure: 'Each price times its number, added up, exact.',
  ask: 'What is it before discount and tax?',
  called: { names: ['before discount', 'gross'] },
})

export const billNet = word<'money'>('billNet', {
  kind: 'money',
  label: 'net, without tax',
  measure: 'What is left when the discount is off and no tax is in it.',
  ask: 'What is it without tax?',
  called: {
    names: ['net price', 'net of tax'],
    asks: ['how much without tax', 'what is it without tax', 'net of tax'],
  },
})

export const billTax = word<'money'>('billTax', {
  kind: 'money',
  label: 'tax',
  measure: 'To the cent, half a cent up.',
  ask: 'How much tax is it?',
  called: {
    names: ['amount of tax'],
    asks: ['how much tax', 'how much vat', 'how much gst', 'what is the tax', 'what is the vat'],
  },
})

export const billTotal = word<'money'>('billTotal', {
  kind: 'money',
  label: 'to pay',
  measure: 'With the discount off and the tax in, rounded once for the whole bill.',
  ask: 'What does it all come to?',
  called: {
    names: ['bill', 'total price', 'total cost', 'price of the bags', 'price of the posts', 'price of the pickets'],
    asks: [
      'what will it cost',
      'how much will it cost',
      'what does it cost',
      'how much does it cost',
      'what do i pay',
      'how much do i pay',
      'what is the bill',
      'what is the total price',
      'what does it all cost',
    ],
  },
})

export const billTotalByLine = word<'money'>('billTotalByLine', {
  kind: 'money',
  label: 'to pay, rounded line by line',
  measure: 'Where the till rounds discount and tax on each line and adds up after.',
  ask: 'What does it come to when every line is rounded?',
  called: { names: ['rounded by line', 'line by line'] },
})

export const amountCarried = word<'money'>('amountCarried', {
  kind: 'money',
  label: 'what was worked before',
  measure: 'For all of it: what the fence comes to, what the screws come to.',
  ask: 'What does the rest come to?',
  called: {},
  possible: { least: '$0' },
})

export const amountsBeside = word<'money'>('amountsBeside', {
  kind: 'money',
  list: true,
  label: 'other amounts on it',
  measure: 'Each for all of it: a gate, a load of gravel.',
  ask: 'What other amounts are on the bill?',
  called: {},
  possible: { least: '$0' },
})
