// This file is about things sold in bundles, boxes and packs: how many of them for what is needed.
import { word } from './word.ts'

const packed = ['bundle', 'pack', 'packet', 'box', 'carton', 'pallet', 'bag', 'sleeve', 'tub']

export const piecesWanted = word<'count'>('piecesWanted', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces needed',
  whole: true,
  measure: 'As many as the work takes, spares included.',
  ask: 'How many pieces do you need?',
  called: {
    names: ['need', 'i need', 'we need', 'needs', 'wanted', 'want', 'take', 'takes'],
    things: ['picket', 'paling', 'board', 'brick', 'block', 'screw', 'nail', 'cap', 'bracket', 'spacer', 'piece'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '50000' },
})

export const piecesNotNeeded = word<'count'>('piecesNotNeeded', {
  kind: 'count',
  noun: 'piece',
  label: 'of these not needed',
  whole: true,
  measure: 'Posts that get no cap, and the like.',
  ask: 'How many of them are not needed?',
  called: {},
  possible: { least: '0' },
})

export const piecesAPack = word<'count'>('piecesAPack', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces in one pack',
  whole: true,
  measure: 'Printed on the bundle, the box or the pack.',
  ask: 'How many are in one bundle, box or pack?',
  called: {
    names: packed.flatMap((it) => [
      `in a ${it}`,
      `to a ${it}`,
      `to the ${it}`,
      `per ${it}`,
      `a ${it}`,
      `${it} of`,
      `${it}s of`,
      `${it}es of`,
      `each ${it}`,
    ]),
    things: packed,
    sides: ['holds', 'of', 'in', 'per', 'each'],
    plainly: true,
  },
  possible: { least: '1' },
  plausible: { from: '2', to: '5000' },
})

export const piecesAWeight = word<'count'>('piecesAWeight', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces to the pound or kilogram',
  measure: 'On the label, or weigh a handful and count it.',
  ask: 'How many go to the pound or the kilogram?',
  called: {
    names: ['pound', 'lb', 'kilo', 'kg', 'kilogram'].flatMap((it) => [
      `to the ${it}`,
      `to a ${it}`,
      `per ${it}`,
      `a ${it}`,
    ]),
    things: ['screw', 'nail', 'staple', 'bolt'],
    sides: ['pound', 'kilo'],
    plainly: true,
  },
  possible: { above: '0' },
  plausible: { from: '5', to: '5000' },
})

export const countedBy = word<'choice'>('countedBy', {
  kind: 'choice',
  label: 'counted to the',
  measure: 'What the count is for: one pound or one kilogram.',
  ask: 'Is that count to the pound or to the kilogram?',
  called: { names: ['counted by'] },
  saidOf: 'piecesAWeight',
  options: {
    lb: {
      label: 'pound',
      called: ['to the pound', 'to a pound', 'a pound', 'per pound', 'each pound', 'to the lb', 'per lb', 'a lb'],
    },
    kg: {
      label: 'kilogram',
      called: [
        'to the kilo',
        'to a kilo',
        'a kilo',
        'per kilo',
        'each kilo',
        'to the kg',
        'per kg',
        'a kg',
        'per kilogram',
        'to the kilogram',
      ],
    },
  },
})

export const packWeight = word<'mass'>('packWeight', {
  kind: 'mass',
  label: 'weight of one pack',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Printed on the box: a 5 lb box, a 1 kg tub.',
  ask: 'What does one box or pack weigh?',
  called: { names: ['box weighs', 'weight of a box'], things: packed, plainly: true, byDefault: true },
  possible: { above: '0 lb' },
  plausible: { from: '0.1 lb', to: '100 lb' },
})

export const packPrice = word<'money'>('packPrice', {
  kind: 'money',
  label: 'price of one pack',
  measure: 'For one bundle, one box, one pack.',
  ask: 'What does one bundle, box or pack cost?',
  called: {
    names: packed.flatMap((it) => [`a ${it}`, `per ${it}`, `each ${it}`]),
    things: packed,
    plainly: true,
    byDefault: true,
  },
  possible: { least: '$0' },
})

export const packs = word<'count'>('packs', {
  kind: 'count',
  noun: 'pack',
  label: 'packs to buy',
  whole: true,
  measure: 'Bundles, boxes, whatever they come in: rounded up.',
  ask: 'How many bundles, boxes or packs is that?',
  called: {
    names: ['packs to buy', 'number of bundles'],
    asks: ['bundles', 'packs', 'packets', 'cartons', 'pallets', 'tubs', 'sleeves'].map((it) => `how many ${it}`),
  },
})

export const piecesInPack = word<'count'>('piecesInPack', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces in a pack, by its weight',
  whole: true,
  measure: 'So many to the pound or the kilogram, times what the pack weighs.',
  ask: 'How many are in one pack?',
  called: {
    names: ['pieces by weight'],
    asks: packed.flatMap((it) => [
      `how many in a ${it}`,
      `how many are in a ${it}`,
      `how many in the ${it}`,
      `how many are in the ${it}`,
    ]),
  },
})

export const piecesOver = word<'count'>('piecesOver', {
  kind: 'count',
  noun: 'piece',
  label: 'left over',
  whole: true,
  measure: 'What is in all the packs, less what you need.',
  ask: 'How many are left over?',
  called: { names: ['pieces left over'], asks: ['how many are left over', 'how many left over', 'how many spare'] },
})

export const packsCost = word<'money'>('packsCost', {
  kind: 'money',
  label: 'what the packs cost',
  measure: 'Whole packs at the price of one.',
  ask: 'What do the packs cost?',
  called: {
    names: ['price of the packs'],
    asks: ['what do the bundles cost', 'what do the boxes cost', 'what do the packs cost'],
  },
})

export const singlePrice = word<'money'>('singlePrice', {
  kind: 'money',
  label: 'price of a single one',
  measure: 'Bought one by one, out of no pack.',
  ask: 'What does a single one cost?',
  called: {},
  possible: { least: '$0' },
})

export const singlesCost = word<'money'>('singlesCost', {
  kind: 'money',
  label: 'what they cost one by one',
  measure: 'As many as you need, at the price of one.',
  ask: 'What do they cost singly?',
  called: {},
})
