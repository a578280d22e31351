// This file is about the brace of a gate: how long, how cut, and what it carries.
import { word } from './word.ts'

export const pointedLength = word<'length'>('pointedLength', {
  kind: 'length',
  label: 'brace with pointed ends, tip to tip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Its middle line on the diagonal, both ends cut to a point that fills the corner.',
  ask: 'How long is a brace with pointed ends?',
  called: {
    names: ['pointed brace'],
    asks: ['brace with pointed ends', 'pointed ends', 'pointed brace', 'brace cut to a point'],
  },
})

export const pointedEdge = word<'length'>('pointedEdge', {
  kind: 'length',
  label: 'edge of a brace with pointed ends',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Each long edge of it, from shoulder to shoulder.',
  ask: 'How long is the edge of a brace with pointed ends?',
  called: { names: ['edge of the pointed brace'], asks: ['edge of the pointed brace'] },
})

export const braceForce = word<'force'>('braceForce', {
  kind: 'force',
  label: 'push along the brace',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'What the brace is pressed together with, from the weight of the leaf alone.',
  ask: 'How hard is the brace pressed?',
  called: {
    names: ['force in the brace', 'push in the brace'],
    asks: [
      'force in the brace',
      'how hard is the brace pressed',
      'compression in the brace',
      'what does the brace carry',
    ],
  },
})

export const insideWidth = word<'length'>('insideWidth', {
  kind: 'length',
  label: 'inside width of the frame',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the stiles of the leaf, where the brace goes.',
  ask: 'How wide is the frame inside, between the stiles?',
  called: {
    names: [
      'inside width',
      'frame inside',
      'inside the frame',
      'between the stiles',
      'inside measures',
      'inside of the frame',
      'frame',
    ],
    things: ['frame', 'inside'],
    sides: ['wide', 'width', 'across', 'inside'],
    asks: ['inside of the frame', 'how wide is the frame inside', 'inside width'],
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '10 ft' },
})

export const insideHeight = word<'length'>('insideHeight', {
  kind: 'length',
  label: 'inside height of the frame',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the rails of the leaf, where the brace goes.',
  ask: 'How tall is the frame inside, between the rails?',
  called: {
    names: ['inside height', 'between the gate rails', 'between the rails'],
    things: ['frame', 'inside'],
    sides: ['tall', 'high', 'height'],
    asks: ['how tall is the frame inside', 'inside height'],
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '8 ft' },
})

export const braceWidth = word<'length'>('braceWidth', {
  kind: 'length',
  label: 'width of the brace',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the face of the brace itself: a 2x4 laid flat is 3 1/2 in.',
  ask: 'How wide is the brace, across its face?',
  called: {
    names: ['brace width', 'width of the brace', 'brace stock'],
    things: ['brace', 'diagonal'],
    sides: ['wide', 'width', 'face'],
    plainly: true,
  },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '12 in' },
  usual: {
    value: '3 1/2 in',
    metric: '90 mm',
    because: 'a 2x4 laid flat is 3 1/2 in across',
    from: 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source',
  },
})

export const braceLength = word<'length'>('braceLength', {
  kind: 'length',
  label: 'brace, long point to long point',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Cut the blank this long; both ends are bevelled within it.',
  ask: 'How long is the brace, long point to long point?',
  called: {
    names: ['brace length', 'length of the brace'],
    things: ['brace'],
    asks: [
      'how long a brace',
      'how long is the brace',
      'how long should the brace',
      'brace length',
      'length of the brace',
      'length of the diagonal',
      'how do i cut the brace',
      'cut the brace',
      'what brace',
      'size the brace',
      'which way does the brace',
      'which way should the brace',
      'which way the brace',
      'diagonal brace',
    ],
  },
})

export const braceEdge = word<'length'>('braceEdge', {
  kind: 'length',
  label: 'brace, along one edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Each long edge of the brace, from its cut to its cut.',
  ask: 'How long is one edge of the brace?',
  called: { names: ['edge of the brace'], asks: ['how long is the edge of the brace'] },
})

export const braceAngle = word<'angle'>('braceAngle', {
  kind: 'angle',
  label: 'brace, up from level',
  measure: 'How steeply the brace stands in the frame.',
  ask: 'How steep is the brace?',
  called: {
    names: ['brace angle', 'angle of the brace'],
    asks: ['what angle is the brace', 'angle of the brace', 'brace angle', 'how steep is the brace'],
  },
})

export const braceCut = word<'angle'>('braceCut', {
  kind: 'angle',
  label: 'cut at both ends, from square',
  measure: 'Set the saw over by this much from a square cut; both ends are cut alike.',
  ask: 'What angle are the ends of the brace cut at?',
  called: {
    names: ['cut angle of the brace', 'brace cut'],
    asks: [
      'what angle do i cut the brace',
      'cut angle',
      'angle to cut the brace',
      'angles for the brace',
      'angle do i cut',
      'angle to cut',
      'what angles',
    ],
  },
})
