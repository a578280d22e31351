// This file is about what must get through a gate.
import { word } from './word.ts'

export const widestThrough = word<'length'>('widestThrough', {
  kind: 'length',
  label: 'widest thing that must pass',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the mower, barrow or trailer where it is widest.',
  ask: 'How wide is the widest thing that must get through?',
  called: {
    names: ['mower deck', 'deck of the mower', 'widest thing', 'must pass', 'has to pass', 'must get through'],
    things: [
      'mower',
      'mower deck',
      'deck',
      'riding mower',
      'ride on mower',
      'tractor',
      'barrow',
      'wheelbarrow',
      'cart',
      'trailer',
      'bin',
      'wheelchair',
      'car',
      'truck',
      'boat',
    ],
    sides: ['wide', 'width', 'across'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '12 ft' },
})

export const roomEachSide = word<'length'>('roomEachSide', {
  kind: 'length',
  label: 'room on each side of it',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the thing that passes and the post, on one side.',
  ask: 'How much room do you want on each side as it goes through?',
  called: {
    names: ['room each side', 'room on each side', 'to spare each side', 'each side', 'either side', 'both sides'],
    things: ['room', 'clearance'],
    sides: ['each side', 'either side', 'spare', 'both sides'],
  },
  possible: { least: '0 in' },
  plausible: { from: '1 in', to: '24 in' },
  usual: {
    value: '3 in',
    metric: '75 mm',
    because: 'a hand’s breadth on each side is enough for what is pushed or driven straight through',
    from: 'common practice, no source',
  },
})
