// This file is about how a brick lies, and its three sizes.
import { word } from './word.ts'

const bricks = ['brick', 'bricks', 'paver', 'pavers']

export const brickLies = word<'choice'>('brickLies', {
  kind: 'choice',
  label: 'lie of the bricks',
  measure: 'A soldier course here lies flat, side by side; bricks that stand are on end.',
  ask: 'How do the bricks lie: flat end to end, flat side by side across the strip (a soldier course), on edge side by side, on edge end to end, or standing on end?',
  called: {},
  replaces: ['brickAlong'],
  options: {
    'end-to-end': {
      label: 'flat, end to end',
      called: [
        'end to end',
        'laid flat',
        'flat end to end',
        'lengthwise',
        'lengthways',
        'longways',
        'stretcher',
        'stretchers',
      ],
    },
    across: {
      label: 'flat, side by side across the strip (soldier course)',
      called: [
        'soldier',
        'soldiers',
        'soldier course',
        'soldier-course',
        'laid across',
        'set across',
        'flat side by side',
        'crosswise',
        'crossways',
      ],
    },
    'on-edge': {
      label: 'on edge, side by side',
      called: [
        'on edge',
        'on their edge',
        'on their edges',
        'on its edge',
        'brick-on-edge',
        'on edge side by side',
        'rowlock',
      ],
    },
    'edge-to-end': {
      label: 'on edge, end to end',
      called: [
        'on edge end to end',
        'on edge lengthwise',
        'on edge lengthways',
        'on edge longways',
        'end to end on edge',
      ],
    },
    'on-end': {
      label: 'standing on end, broad faces out',
      called: [
        'on end',
        'on their end',
        'on their ends',
        'standing up',
        'stood up',
        'upright',
        'standing on end',
        'stood on end',
      ],
    },
  },
})

export const brickLength = word<'length'>('brickLength', {
  kind: 'length',
  label: 'brick length',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The longest side of a brick, measured: its name is larger by a joint.',
  ask: 'How long is a brick, measured?',
  called: { names: ['brick length', 'length of a brick'], things: bricks, sides: ['long', 'length'] },
  possible: { above: '0 in' },
  plausible: { from: '3 in', to: '2 ft' },
  replaces: ['brickAlong'],
})

export const brickWidth = word<'length'>('brickWidth', {
  kind: 'length',
  label: 'brick width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The middle one of its three sides, measured.',
  ask: 'How wide is a brick, measured?',
  called: { names: ['brick width', 'width of a brick'], things: bricks, sides: ['wide', 'width'] },
  possible: { above: '0 in' },
  plausible: { from: '2 in', to: '18 in' },
  replaces: ['brickAlong'],
})

export const brickHeight = word<'length'>('brickHeight', {
  kind: 'length',
  label: 'brick height',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The shortest of its three sides, measured: its thickness when it lies flat.',
  ask: 'How thick is a brick, measured?',
  called: {
    names: ['brick height', 'brick thickness', 'height of a brick', 'thickness of a brick'],
    things: bricks,
    sides: ['thick', 'thickness', 'high', 'height', 'tall', 'deep'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '12 in' },
  replaces: ['brickAlong'],
})
