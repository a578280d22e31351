// This file is about pickets for the whole fence.
import { word } from './word.ts'

export const gatePickets = word<'count'>('gatePickets', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets on gates',
  whole: true,
  measure: 'On all gates together.',
  ask: 'How many pickets are on the gates?',
  called: {
    names: [
      'pickets on gates',
      'pickets on the gate',
      'pickets for the gate',
      'gate pickets',
      'on the gate',
      'for the gates',
      'on the gates',
    ],
    things: ['picket', 'pickets'],
  },
  possible: { least: '0' },
  plausible: { from: '0', to: '200' },
  usual: {
    value: '0',
    because: 'you did not speak of pickets on gates',
    from: 'Decided here; say how many there are.',
  },
})

export const picketsEachGate = word<'count'>('picketsEachGate', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets on each gate',
  whole: true,
  measure: 'On one gate; all gates alike.',
  ask: 'How many pickets are on each gate?',
  called: {
    names: ['pickets each', 'pickets on each gate', 'pickets per gate', 'pickets a gate', 'each gate'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '60' },
})

export const picketSpare = word<'percent'>('picketSpare', {
  kind: 'percent',
  label: 'spare pickets',
  measure: 'For splits, knots and cuts gone wrong.',
  ask: 'How many spare pickets, in percent?',
  called: {
    names: ['spare pickets', 'extra pickets', 'spare', 'extra', 'waste', 'for waste', 'for spares', 'spares'],
    things: ['spare', 'extra', 'waste', 'spares'],
    sides: ['spare', 'extra', 'waste'],
  },
  possible: { least: '0 %' },
  plausible: { from: '0 %', to: '30 %' },
  usual: {
    value: '5 %',
    because: 'some split, and some have knots where the point should be',
    from: 'common practice, no source',
  },
})

export const picketsToBuy = word<'count'>('picketsToBuy', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets to buy',
  whole: true,
  measure: 'All bays and gates, spares included.',
  ask: 'How many pickets to buy?',
  called: {
    names: ['pickets to buy'],
    asks: [
      'how many pickets to buy',
      'how many pickets in all',
      'pickets to buy',
      'pickets for the whole fence',
      'how many pickets altogether',
      'total pickets',
      'how many pickets do i buy',
      'pickets in total',
      'how many pickets in total',
      'how many pickets for the whole',
      'how many pickets for the entire',
      'how many pickets overall',
      'how many pickets do i order',
      'pickets to order',
    ],
  },
})

export const picketsHung = word<'count'>('picketsHung', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets in all, without spares',
  whole: true,
  measure: 'In all bays and gates, as they hang.',
  ask: 'How many pickets are there in all?',
  called: {
    names: ['pickets that hang', 'pickets in all', 'pickets in total', 'total pickets', 'pickets altogether'],
    things: ['picket', 'board', 'paling'],
    asks: ['how many pickets hang'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '5000' },
})

export const shortBays = word<'count'>('shortBays', {
  kind: 'count',
  noun: 'bay',
  label: 'short bays among them',
  whole: true,
  measure: 'Bays that take fewer pickets than the others.',
  ask: 'How many of the bays are short?',
  called: { names: ['short bays', 'short sections', 'short ones'] },
  possible: { least: '0' },
  plausible: { from: '0', to: '200' },
})

export const shortBayPickets = word<'count'>('shortBayPickets', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets in each short bay',
  whole: true,
  measure: 'Those of one short bay.',
  ask: 'How many pickets does each short bay take?',
  called: { names: ['pickets in the short bays'] },
  possible: { least: '0' },
  plausible: { from: '1', to: '60' },
})
