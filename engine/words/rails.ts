// This file is about rails: the sticks that carry the pickets from post to post.
import { word } from './word.ts'

const dressed = 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source'

export const rails = word<'count'>('rails', {
  kind: 'count',
  noun: 'rail',
  label: 'rails in a bay',
  whole: true,
  measure: 'Count the rails one above the other in one bay.',
  ask: 'How many rails does a bay have, one above the other?',
  called: {
    names: ['rails per bay', 'number of rails', 'rails in a bay', 'rails each bay'],
    things: ['rail', 'stringer', 'backer rail', 'arris rail', 'runner'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '6' },
  usual: { value: '2', because: 'two rails carry a fence up to about 4 ft', from: 'trade rule, no source' },
})

export const railDepth = word<'length'>('railDepth', {
  kind: 'length',
  label: 'rail depth, top to bottom',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure the rail as it hangs, from its top edge to its bottom edge: 3 1/2 in for a 2x4 on edge.',
  ask: 'How deep is a rail as it hangs, top to bottom?',
  called: {
    names: ['rail depth', 'depth of the rail', 'rail height', 'rail width'],
    things: ['rail', 'stringer'],
    sides: ['deep', 'on edge', 'tall', 'high', 'wide'],
    plainly: 'sticks',
  },
  ofStick: 'width',
  otherSide: 'railThickness',
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '12 in' },
  usual: { value: '3 1/2 in', metric: '90 mm', because: 'a 2x4 on edge is 3 1/2 in deep', from: dressed },
})

export const railThickness = word<'length'>('railThickness', {
  kind: 'length',
  label: 'rail thickness, front to back',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure the rail as it hangs, from front to back: 1 1/2 in for a 2x4 on edge.',
  ask: 'How thick is a rail as it hangs, front to back?',
  called: {
    names: ['rail thickness', 'thickness of the rail'],
    things: ['rail', 'stringer'],
    sides: ['thick', 'thickness'],
  },
  ofStick: 'thickness',
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '8 in' },
  usual: { value: '1 1/2 in', metric: '45 mm', because: 'a 2x4 on edge is 1 1/2 in thick', from: dressed },
})
