// This file is about the top of a single picket: points, rounds, clipped corners.
import { word } from './word.ts'

export const pointAngle = word<'angle'>('pointAngle', {
  kind: 'angle',
  label: 'angle of the point',
  measure: 'Between its two slopes: 90° is a right-angled point.',
  ask: 'What is the angle of the point?',
  called: {
    names: ['point angle', 'angle of the point', 'degree point', 'point of', 'pointed at'],
    things: ['point', 'points', 'tip'],
    sides: ['angle', 'degrees'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '179 deg' },
  plausible: { from: '30 deg', to: '150 deg' },
  usual: { value: '90 deg', because: 'both slopes at 45° are the commonest', from: 'common practice, no source' },
})

export const pointRise = word<'length'>('pointRise', {
  kind: 'length',
  label: 'height of the point',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the shoulders to the tip.',
  ask: 'How high is the point?',
  called: {
    names: ['height of the point'],
    asks: [
      'how high is the point',
      'height of the point',
      'how tall is the point',
      'how far down do i mark the point',
      'pointed pickets',
      'cut the points',
      'shoulder of the point',
      'where do i start the point',
      'how do i cut points',
    ],
  },
})

export const pointCut = word<'angle'>('pointCut', {
  kind: 'angle',
  label: 'cut of the point, from square',
  measure: 'Set the saw over by this much from a square cut.',
  ask: 'At what angle is the point cut?',
  called: {
    names: ['cut of the point'],
    asks: [
      'angle to cut the point',
      'what angle for the points',
      'saw angle for the points',
      'what angle do i cut the points',
      'angle for pointed tops',
    ],
  },
})

export const shoulderHeight = word<'length'>('shoulderHeight', {
  kind: 'length',
  label: 'shoulder of the top, from the foot',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Mark both edges there, and the middle of the top.',
  ask: 'How far from the foot is the shoulder?',
  called: { names: ['shoulder height'], asks: ['shoulder height', 'where is the shoulder'] },
})

export const wantedRadius = word<'length'>('wantedRadius', {
  kind: 'length',
  label: 'radius you want for a rounded top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'At least half the picket’s width; more makes it flatter. Left out, the top is half round.',
  ask: 'What radius do you want for the rounded top?',
  called: {
    names: ['radius of', 'with a radius', 'in radius', 'mm radius', 'rounded to a radius'],
    things: ['radius', 'curve'],
    sides: ['radius'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '24 in' },
})

export const wantedRise = word<'length'>('wantedRise', {
  kind: 'length',
  label: 'rise you want for a rounded top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the shoulders to the tip; at most half the picket’s width.',
  ask: 'How much do you want the rounded top to rise?',
  called: {
    names: ['rise of the round', 'rise of the rounded top', 'round top rises', 'rounded top rises', 'rises', 'rise'],
    things: ['round top', 'rounded top', 'top'],
    sides: ['rise', 'high'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/8 in', to: '6 in' },
})

export const roundRadius = word<'length'>('roundRadius', {
  kind: 'length',
  label: 'radius of the rounded top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Half the picket’s width for a half round, more for a flatter one.',
  ask: 'What radius has the rounded top?',
  called: {
    names: ['half-round', 'half round radius'],
    asks: [
      'radius for round tops',
      'radius for a rounded top',
      'what radius for a half round',
      'what radius for a rounded',
      'what radius for rounded tops',
      'what radius for round tops',
      'half round top',
      'half-round top',
      'round the tops',
      'rounded tops',
      'rounded top',
      'round tops',
      'round top',
    ],
  },
})

export const roundRise = word<'length'>('roundRise', {
  kind: 'length',
  label: 'rise of the rounded top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the shoulders to the tip: so much lower is the picket at its edges.',
  ask: 'How much does the rounded top rise?',
  called: {
    names: ['rise of a rounded top'],
    asks: ['how much does the rounded top rise', 'how much does the round rise'],
  },
})

export const roundLength = word<'length'>('roundLength', {
  kind: 'length',
  label: 'length along the rounded cut',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the curve, shoulder to shoulder: what is sawn, sanded and sealed on each picket.',
  ask: 'How long is the rounded cut?',
  called: { names: ['length of the rounded cut'], asks: ['how long is the rounded cut', 'length along the cut'] },
})

export const compassPoint = word<'length'>('compassPoint', {
  kind: 'length',
  label: 'compass point, below the tip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'On the middle line of the picket, measured down from its tip. Mark it on the template.',
  ask: 'Where does the compass point stand?',
  called: {
    names: ['compass point'],
    asks: ['where do i put the compass', 'where does the compass point', 'where do i set the compass', 'compass point'],
  },
})

export const cornersLost = word<'area'>('cornersLost', {
  kind: 'area',
  label: 'cut away at both corners',
  units: { imperial: 'in2', metric: 'cm2' },
  measure: 'Seen from the front, against a square top.',
  ask: 'How much is cut away at the corners?',
  called: { names: ['lost at the corners'], asks: ['how much is cut away', 'what does it lose at the corners'] },
})

// ── clipped corners ──

export const clipAcross = word<'length'>('clipAcross', {
  kind: 'length',
  label: 'clip, along the top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From each corner in along the square top.',
  ask: 'How far in along the top is each corner clipped?',
  called: {
    names: ['corners clipped', 'clipped', 'clip of', 'corner cut', 'corners cut off', 'corners cut', 'ear', 'ears'],
    things: ['corner', 'corners', 'clip', 'dog ear', 'ear'],
    sides: ['in', 'across', 'clipped', 'along the top'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '4 in' },
})

export const clipDown = word<'length'>('clipDown', {
  kind: 'length',
  label: 'clip, down the edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From each corner down the edge. Left out, it is as far as along the top: a cut at 45°.',
  ask: 'How far down the edge is each corner clipped?',
  called: {
    names: ['down the edge', 'down the side', 'down each edge', 'down each side'],
    things: ['edge'],
    sides: ['down'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '8 in' },
})

export const clipAngle = word<'angle'>('clipAngle', {
  kind: 'angle',
  label: 'angle of the clip, from square',
  measure: 'How far the saw is set over from a square cut. Left out, it is 45°.',
  ask: 'At what angle from square are the corners clipped?',
  called: {
    names: ['clipped at', 'clip at', 'corners at', 'cut at', 'degree corners'],
    things: ['corner', 'corners', 'clip'],
    sides: ['angle', 'degrees'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '89 deg' },
  plausible: { from: '15 deg', to: '75 deg' },
})

export const clipLength = word<'length'>('clipLength', {
  kind: 'length',
  label: 'length of each clipped cut',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the saw cut.',
  ask: 'How long is each clipped cut?',
  called: {
    names: ['length of the clip'],
    asks: [
      'clipped corners',
      'dog-eared',
      'dog eared',
      'dog ear',
      'dog ears',
      'clip the corners',
      'how long is each cut',
      'how long is the cut',
    ],
  },
})

export const clipShoulder = word<'length'>('clipShoulder', {
  kind: 'length',
  label: 'mark down each edge, from the top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Where the cut meets the edge of the picket.',
  ask: 'How far down the edge is the mark?',
  called: { names: ['mark down each edge'], asks: ['how far down the edge', 'how far down is the mark'] },
})

export const clipCut = word<'angle'>('clipCut', {
  kind: 'angle',
  label: 'saw set over from square',
  measure: 'For a cut across the picket at the corner.',
  ask: 'At what angle is the corner cut?',
  called: {
    names: ['cut of the corners'],
    asks: ['what angle for the corners', 'angle of the corners', 'what angle do i cut the corners'],
  },
})

export const flatTop = word<'length'>('flatTop', {
  kind: 'length',
  label: 'flat left between the corners',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the top, from cut to cut.',
  ask: 'How much flat is left on top?',
  called: { names: ['flat left on top'], asks: ['how much flat is left', 'how wide is the flat'] },
})
