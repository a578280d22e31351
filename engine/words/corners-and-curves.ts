// This file is about corners that are not square, curved runs, and a post that has to move.
import { word } from './word.ts'

export const miterCut = word<'angle'>('miterCut', {
  kind: 'angle',
  label: 'miter at the corner, from square',
  measure: 'Set the saw over by this much from a square cut; both rails are cut alike.',
  ask: 'At what angle is the miter cut?',
  called: {
    names: ['miter', 'mitre', 'miter angle', 'mitre angle'],
    asks: [
      'what miter',
      'what mitre',
      'miter angle',
      'mitre angle',
      'saw setting',
      'what angle do i cut the rails',
      'what angle for the corner',
      'cut the corner',
      'cut the rails at the corner',
      'angle to cut the rails',
      'saw angle',
    ],
  },
})

export const buttCut = word<'angle'>('buttCut', {
  kind: 'angle',
  label: 'cut of a rail that butts against the other, from square',
  measure: 'One rail runs through; the other is cut aslant against it.',
  ask: 'At what angle is a butting rail cut?',
  called: { names: ['butt cut'], asks: ['butt cut', 'butt joint at the corner', 'if they butt'] },
})

export const miterFace = word<'length'>('miterFace', {
  kind: 'length',
  label: 'face of the miter',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the cut, across the thickness of the rail.',
  ask: 'How long is the face of the miter?',
  called: { names: ['face of the miter'], asks: ['face of the miter', 'length of the miter'] },
})

export const curveRadius = word<'length'>('curveRadius', {
  kind: 'length',
  label: 'radius of the curve',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the centre stake to the post centres.',
  ask: 'What is the radius of the curve?',
  called: {
    names: ['radius', 'curve radius', 'radius of the curve'],
    things: ['curve', 'radius', 'arc'],
    sides: ['radius'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '5 ft', to: '1000 ft' },
})

export const curveLength = word<'length'>('curveLength', {
  kind: 'length',
  label: 'length along the curve',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Along the curve, from the first post centre to the last.',
  ask: 'How long is the curve, along the arc?',
  called: {
    names: ['along the curve', 'length of the curve', 'arc length', 'curve length', 'along the arc', 'long curve'],
    things: ['curve', 'arc'],
    sides: ['long', 'length', 'along'],
  },
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '1000 ft' },
})

export const chords = word<'count'>('chords', {
  kind: 'count',
  noun: 'bay',
  label: 'straight bays round the curve',
  whole: true,
  measure: 'The fewest that keep every bay within your limit.',
  ask: 'How many straight bays go round the curve?',
  called: {
    names: ['bays round the curve'],
    asks: [
      'how many bays round the curve',
      'how many bays around the curve',
      'how many bays on the curve',
      'how many chords',
      'posts on a curve',
      'posts around a curve',
      'lay out a curve',
      'set out a curve',
      'set out the curve',
      'curved fence',
    ],
  },
})

export const chord = word<'length'>('chord', {
  kind: 'length',
  label: 'post to post, straight',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The straight distance between neighbouring post centres on the curve.',
  ask: 'How far is it straight from post to post?',
  called: {
    names: ['chord'],
    asks: ['how long is each chord', 'straight from post to post', 'chord length', 'how far from post to post'],
  },
})

export const deflection = word<'angle'>('deflection', {
  kind: 'angle',
  label: 'turn at each post',
  measure: 'How far each bay turns from the line of the one before.',
  ask: 'How far does each bay turn?',
  called: {
    names: ['deflection'],
    asks: ['how far does each bay turn', 'deflection angle', 'angle at each post', 'turn at each post'],
  },
})

export const bulge = word<'length'>('bulge', {
  kind: 'length',
  label: 'curve outside the straight bay, in its middle',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the curve stands off the middle of a straight rail.',
  ask: 'How far is the curve from the straight rail?',
  called: {
    names: ['middle offset', 'bulge'],
    asks: ['how far off the curve', 'middle ordinate', 'offset in the middle', 'how much does the curve bulge'],
  },
})

export const longChord = word<'length'>('longChord', {
  kind: 'length',
  label: 'string from the first post to the last',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Straight across the curve, between the end post centres.',
  ask: 'How long is the string across the curve?',
  called: {
    names: ['long chord', 'string across the curve'],
    asks: [
      'long chord',
      'offsets from a string',
      'offsets from the string',
      'set out the curve with a string',
      'set the curve out with a string',
      'set out a curve with a string',
      'stakes on a curve with a string',
    ],
  },
})

export const bayBeforePost = word<'length'>('bayBeforePost', {
  kind: 'length',
  label: 'bay before the post, centre to centre',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'As it was planned, to the post before.',
  ask: 'How long is the bay before the post, as planned?',
  called: {
    names: ['bay before', 'bays of', 'bays are', 'bay before the post', 'planned bays', 'bays'],
    things: ['bay', 'bays'],
    sides: ['before', 'centers', 'centres', 'planned'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '2 ft', to: '12 ft' },
})

export const postMoved = word<'length'>('postMoved', {
  difference: true,
  kind: 'length',
  label: 'post moved along the run by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Toward the next post. Off the line it cannot go without bending the fence.',
  ask: 'How far must the post move along the run?',
  called: {
    names: ['moved', 'move', 'must move', 'shift', 'shifted', 'has to move', 'move the post', 'over by', 'moved by'],
    things: ['rock', 'root', 'post'],
    sides: ['moved', 'move', 'shift', 'over'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '1/2 in', to: '4 ft' },
})

export const longerBay = word<'length'>('longerBay', {
  kind: 'length',
  label: 'bay that grows',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Centre to centre, on the side the post moves away from.',
  ask: 'How long does the one bay become?',
  called: {
    names: ['new bays', 'bay that grows'],
    asks: [
      'what are the two new bays',
      'what are the new bays',
      'new bays',
      'what happens to the bays',
      'two new bays',
      'how long are the bays then',
      'what do the bays become',
    ],
  },
})

export const shorterBay = word<'length'>('shorterBay', {
  kind: 'length',
  label: 'bay that shrinks',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Centre to centre, on the side the post moves toward.',
  ask: 'How long does the other bay become?',
  called: { names: ['bay that shrinks'], asks: ['shorter bay'] },
})

export const longerOpening = word<'length'>('longerOpening', {
  kind: 'length',
  label: 'opening of the bay that grows',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the post faces.',
  ask: 'How wide is the opening that grows?',
  called: { names: ['opening that grows'], asks: ['new openings'] },
})

export const shorterOpening = word<'length'>('shorterOpening', {
  kind: 'length',
  label: 'opening of the bay that shrinks',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the post faces.',
  ask: 'How wide is the opening that shrinks?',
  called: { names: ['opening that shrinks'], asks: ['smaller opening'] },
})

export const longerPickets = word<'count'>('longerPickets', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets in the bay that grows',
  whole: true,
  measure: 'The fewest that keep every gap within your limit.',
  ask: 'How many pickets does the longer bay take?',
  called: {
    names: ['pickets in the longer bay'],
    asks: ['pickets in the longer bay', 'pickets in the bay that grows'],
  },
})

export const longerGap = word<'length'>('longerGap', {
  kind: 'length',
  label: 'gap in the bay that grows',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Shared equally, against the posts too.',
  ask: 'What gap has the longer bay?',
  called: {
    names: ['new gaps', 'gap in the longer bay'],
    asks: ['what are the new gaps', 'what do the gaps become', 'new gaps', 'new spacing', 'gap in the longer bay'],
  },
})

export const shorterPickets = word<'count'>('shorterPickets', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets in the bay that shrinks',
  whole: true,
  measure: 'The fewest that keep every gap within your limit.',
  ask: 'How many pickets does the shorter bay take?',
  called: {
    names: ['pickets in the shorter bay'],
    asks: ['pickets in the shorter bay', 'pickets in the bay that shrinks'],
  },
})

export const shorterGap = word<'length'>('shorterGap', {
  kind: 'length',
  label: 'gap in the bay that shrinks',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Shared equally, against the posts too.',
  ask: 'What gap has the shorter bay?',
  called: { names: ['gap in the shorter bay'], asks: ['gap in the shorter bay'] },
})

export const stockReaches = word<'verdict'>('stockReaches', {
  kind: 'verdict',
  label: 'rail boards against the longer opening',
  measure: 'The board you have against the opening that grows.',
  ask: 'Are the boards for the rails still long enough?',
  called: {
    names: ['boards still long enough'],
    asks: [
      'do the rails still fit',
      'are the rails still long enough',
      'are the boards still long enough',
      'do the boards still fit',
      'do my boards still reach',
      'will my rails still fit',
    ],
  },
  says: {
    yes: 'your boards still reach from post to post',
    no: 'your boards are too short for the longer bay',
    unknown: 'cannot say: no length of board was given',
  },
})

export const moveHolds = word<'verdict'>('moveHolds', {
  kind: 'verdict',
  label: 'longer bay against your limit',
  measure: 'The bay that grows against the widest bay you allow.',
  ask: 'Is the longer bay still within your limit?',
  called: {
    names: ['still within the limit'],
    asks: ['is that too long', 'still ok', 'too wide then', 'still within the limit'],
  },
  says: {
    yes: 'both bays are within your limit',
    no: 'the longer bay is over your limit',
    unknown: 'cannot say: no widest bay was given',
  },
})
