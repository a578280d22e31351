// This file is about the leaf of a gate: its size, its frame, and the room its hardware takes.
import { word } from './word.ts'

export const gateLeaves = word<'choice'>('gateLeaves', {
  kind: 'choice',
  label: 'leaves of the gate',
  measure: 'One leaf that swings, or two that meet in the middle.',
  ask: 'Is it a single gate, or a double gate with two leaves?',
  called: { names: ['leaves', 'kind of gate'] },
  options: {
    single: { label: 'single', called: ['single gate', 'single leaf', 'one leaf', 'single'] },
    double: {
      label: 'double',
      called: [
        'double gate',
        'double gates',
        'two leaves',
        'two leaf gate',
        'two leafs',
        'each leaf',
        'both leaves',
        'where they meet',
        'where the leaves meet',
        'pair of gates',
        'two gates',
        'double',
        'driveway gates',
      ],
    },
  },
  usual: { value: 'single', because: 'you did not speak of two leaves', from: 'Decided here; say “double” if it is.' },
})

export const hingeGap = word<'length'>('hingeGap', {
  kind: 'length',
  label: 'gap at the hinge side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What your hinges need between leaf and post: read it on the hinges, or lay them out and measure.',
  ask: 'What gap do your hinges need between leaf and post?',
  called: {
    names: [
      'hinge gap',
      'hinge side gap',
      'gap at the hinges',
      'hinge side',
      'for the hinges',
      'hinge clearance',
      'at the hinge',
    ],
    things: ['hinge', 'hinges'],
    sides: ['hinge', 'gap', 'clearance'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '3 in' },
  usual: {
    value: '3/8 in',
    metric: '10 mm',
    because: 'many hinges for wood gates want about that',
    from: 'trade rule, no source',
  },
})

export const latchGap = word<'length'>('latchGap', {
  kind: 'length',
  label: 'gap at the latch side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What your latch needs between leaf and post: read it on the latch, or lay it out and measure.',
  ask: 'What gap does your latch need between leaf and post?',
  called: {
    names: [
      'latch gap',
      'latch side gap',
      'gap at the latch',
      'latch side',
      'for the latch',
      'latch clearance',
      'at the latch',
    ],
    things: ['latch'],
    sides: ['latch', 'gap', 'clearance'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '3 in' },
  usual: {
    value: '1/2 in',
    metric: '12 mm',
    because: 'most latches for wood gates want about that',
    from: 'trade rule, no source',
  },
})

export const meetingGap = word<'length'>('meetingGap', {
  kind: 'length',
  label: 'gap where two leaves meet',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the two leaves when both are shut.',
  ask: 'What gap do you want where the two leaves meet?',
  called: {
    names: [
      'middle gap',
      'in the middle',
      'at the middle',
      'meeting gap',
      'gap in the middle',
      'between the leaves',
      'where they meet',
      'centre gap',
      'center gap',
    ],
    sides: ['middle', 'meet'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '3 in' },
  usual: {
    value: '1/2 in',
    metric: '12 mm',
    because: 'the two leaves need room to pass each other',
    from: 'trade rule, no source',
  },
})

export const leafWidth = word<'length'>('leafWidth', {
  kind: 'length',
  label: 'leaf width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across one leaf of the gate, outside to outside.',
  ask: 'How wide is the leaf of the gate, outside to outside?',
  called: {
    names: ['leaf width', 'gate width', 'width of the gate', 'width of the leaf', 'outside width'],
    things: ['gate', 'leaf', 'gate leaf', 'gate frame'],
    sides: ['wide', 'width', 'across'],
    plainly: true,
    asks: [
      'how wide is the leaf',
      'how wide should the gate',
      'how wide do i make the gate',
      'how wide do i make the leaf',
      'how wide to make the leaf',
      'how wide should the leaf',
      'how wide a leaf',
      'how wide to build the gate',
      'width of the gate',
      'what width gate',
      'what size gate',
      'how big should the gate',
      'how wide a gate',
      'leaf width',
      'how wide is each leaf',
      'size of the gate',
      'gate be',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '18 in', to: '10 ft' },
})

export const leafHeight = word<'length'>('leafHeight', {
  kind: 'length',
  label: 'leaf height',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The leaf of the gate from its bottom edge to its top edge.',
  ask: 'How tall is the leaf of the gate, bottom edge to top edge?',
  called: {
    names: ['leaf height', 'gate height', 'height of the gate', 'height of the leaf', 'outside height'],
    things: ['gate', 'leaf', 'gate frame'],
    sides: ['tall', 'high', 'height'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '18 in', to: '8 ft' },
})

export const memberWidth = word<'length'>('memberWidth', {
  kind: 'length',
  label: 'width of the frame members',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the face of a stile or rail of the leaf: a 2x4 laid flat is 3 1/2 in.',
  ask: 'How wide are the frame members of the leaf, across their face?',
  called: {
    names: [
      'frame member',
      'frame members',
      'width of the frame members',
      'stile width',
      'width of the stiles',
      'frame width',
      'frame stock',
      'frame sticks',
      'frame timber',
      'frame all round',
      'frame all around',
    ],
    things: ['stile', 'frame member', 'member', 'frame stick', 'frame timber'],
    sides: ['wide', 'width', 'face'],
  },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '8 in' },
})

export const leafRail = word<'length'>('leafRail', {
  kind: 'length',
  label: 'rail of the leaf, between its stiles',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Leaf width less the two stiles.',
  ask: 'How long are the rails of the leaf?',
  called: {
    names: ['gate rail', 'leaf rail'],
    asks: ['how long are the gate rails', 'gate rail length', 'rails of the gate'],
  },
})

export const hardwareRoom = word<'length'>('hardwareRoom', {
  kind: 'length',
  label: 'room the hardware takes',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'All gaps together.',
  ask: 'How much room does the hardware take?',
  called: {
    names: ['room for the hardware', 'hardware clearance'],
    asks: ['how much smaller than the opening', 'how much narrower', 'how much clearance'],
  },
})
