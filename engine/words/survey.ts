// This file is about measuring the ground: corners, diagonals, sides of a yard.
import { word } from './word.ts'

const alongTheGround = 'Measure level, string to string or stake to stake, not along the ground.'

export const legs = word<'length'>('legs', {
  replacesAnew: ['measuredDiagonal'],
  kind: 'length',
  list: true,
  label: 'the two sides from the corner, first and second',
  units: { imperial: 'ft', metric: 'm' },
  measure: `From the corner stake along the first side to a mark, then along the second. ${alongTheGround}`,
  ask: 'How far did you measure from the corner along the first side, and how far along the second?',
  called: {
    names: [
      'sides of',
      'legs of',
      'first side',
      'second side',
      'down one side',
      'down the other',
      'along one',
      'along the other',
      'corner sides',
      'rectangle',
      'one side',
      'other side',
      'one way',
      'the other way',
      'first leg',
      'second leg',
      'along the house',
      'along the fence',
      'legs',
      'sides',
    ],
    things: ['leg', 'legs', 'side', 'sides'],
    sides: ['first', 'second', 'one', 'other', 'along'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '500 ft' },
})

export const measuredDiagonal = word<'length'>('measuredDiagonal', {
  kind: 'length',
  label: 'diagonal as measured',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the mark on the first side straight to the mark on the second.',
  ask: 'What did you measure straight across, from mark to mark?',
  called: {
    names: [
      'measured diagonal',
      'diagonal measures',
      'diagonal is',
      'diagonal came',
      'across',
      'straight across',
      'between the marks',
      'hypotenuse',
      'diagonal',
    ],
    things: ['diagonal', 'hypotenuse'],
    sides: ['across', 'measured'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '700 ft' },
})

export const squareAcross = word<'length'>('squareAcross', {
  kind: 'length',
  label: 'diagonal of a square corner',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'What the diagonal must be for the corner to be square.',
  ask: 'What must the diagonal be?',
  called: {
    names: ['right diagonal', 'diagonal for square'],
    asks: [
      'what should the diagonal',
      'what must the diagonal',
      'what is the diagonal',
      'diagonal should be',
      'diagonal be',
      'how long is the diagonal',
      'how long should the diagonal',
      'square a corner',
      'square up the corner',
      'make the corner square',
      'get a square corner',
      'square corner',
      'make it square',
      'diagonal for a',
      'right angle',
    ],
  },
})

export const cornerAngle = word<'angle'>('cornerAngle', {
  kind: 'angle',
  label: 'angle of the corner',
  measure: 'Inside the corner, between the two sides.',
  ask: 'What is the angle of the corner?',
  called: {
    names: ['corner angle', 'angle of the corner', 'inside angle'],
    things: ['corner', 'angle'],
    sides: ['degrees', 'angle'],
    plainly: true,
    asks: [
      'what angle is the corner',
      'is my corner square',
      'is the corner square',
      'is it square',
      'angle of the corner',
      'what is the angle',
      'how square is',
      'how far out of square is the corner',
      'am i square',
      'corner angle',
      'out of square',
    ],
  },
  possible: { above: '0 deg', most: '180 deg' },
  plausible: { from: '20 deg', to: '179 deg' },
})

export const outOfSquare = word<'angle'>('outOfSquare', {
  kind: 'angle',
  label: 'out of square by',
  measure: 'How far the corner is from 90°.',
  ask: 'How far is the corner from square?',
  called: { names: ['off square'], asks: ['how far off square', 'how much out of square'] },
})

export const moveStake = word<'length'>('moveStake', {
  kind: 'length',
  label: 'move the far stake by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the second side, at the far mark, so that the corner comes square.',
  ask: 'How far must the far stake move?',
  called: {
    names: ['move of the stake'],
    asks: [
      'how far do i move',
      'how far to move the stake',
      'how far must the stake move',
      'move the stake',
      'how much do i move',
      'which way do i move',
      'where do i move',
    ],
  },
})

export const offsetPerHundred = word<'length'>('offsetPerHundred', {
  kind: 'length',
  label: 'off the square line after a hundred feet',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the fence would run off in a hundred feet (30.48 m).',
  ask: 'How far off is that in a hundred feet?',
  called: {
    names: ['offset per hundred'],
    asks: ['how far off in 100', 'how far off over', 'out per', 'out in every', 'off per'],
  },
})

export const diagonals = word<'length'>('diagonals', {
  kind: 'length',
  list: true,
  label: 'the two diagonals, as measured',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Corner to opposite corner, both ways.',
  ask: 'What are the two diagonals, corner to opposite corner?',
  called: {
    names: [
      'one diagonal',
      'other diagonal',
      'diagonals are',
      'diagonals of',
      'first diagonal',
      'second diagonal',
      'diagonals',
    ],
    things: ['diagonal', 'diagonals'],
    sides: ['one', 'other', 'first', 'second'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '1000 ft' },
})

export const pushedSide = word<'length'>('pushedSide', {
  kind: 'length',
  label: 'side along which the corners are pushed',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'One side of the rectangle, corner to corner.',
  ask: 'How long is the side along which the corners can be pushed?',
  called: {
    names: ['side is', 'long side', 'first side', 'side of', 'rectangle of', 'one side'],
    things: ['side', 'rectangle'],
    sides: ['long', 'side'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '500 ft' },
})

export const diagonalsApart = word<'length'>('diagonalsApart', {
  kind: 'length',
  label: 'diagonals differ by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Nothing, when the four corners are square.',
  ask: 'By how much do the diagonals differ?',
  called: {
    names: ['difference of the diagonals'],
    asks: [
      'how much do the diagonals differ',
      'are the diagonals equal',
      'is the rectangle square',
      'is my rectangle square',
      'are the corners square',
    ],
  },
})

export const pushCorner = word<'length'>('pushCorner', {
  kind: 'length',
  label: 'push the two far corners along by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Both corners of one side, together, along that side, toward the shorter diagonal.',
  ask: 'How far must the corners be pushed?',
  called: {
    names: ['push of the corner'],
    asks: ['how far do i push', 'which corner do i move', 'which way to push', 'how far to shift'],
  },
})

export const sides = word<'length'>('sides', {
  kind: 'length',
  list: true,
  label: 'sides of the yard, in order round it',
  units: { imperial: 'ft', metric: 'm' },
  measure: `Go round the yard one way and write every side down in order. ${alongTheGround}`,
  ask: 'How long are the sides of the yard, in order round it?',
  called: {
    names: ['sides of the yard', 'sides are', 'yard sides', 'sides of', 'lot sides', 'sides'],
    things: ['side', 'sides', 'leg', 'legs'],
    sides: ['long'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '2000 ft' },
})

export const corners = word<'angle'>('corners', {
  kind: 'angle',
  list: true,
  label: 'inside angles, in the same order',
  measure: 'The angle inside each corner: the first between the first and the second side, and so on round.',
  ask: 'What are the inside angles, beginning between the first and the second side?',
  called: {
    names: ['inside angles', 'corner angles', 'angles are', 'angles'],
    things: ['angle', 'angles', 'corners'],
    sides: ['inside', 'degrees'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '360 deg' },
  plausible: { from: '10 deg', to: '350 deg' },
})

export const yardDiagonal = word<'length'>('yardDiagonal', {
  kind: 'length',
  label: 'diagonal that cuts off the first two sides',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the start of the first side to the end of the second.',
  ask: 'How long is the diagonal, from the start of the first side to the end of the second?',
  called: {
    names: ['diagonal of the yard', 'yard diagonal', 'corner to corner', 'one diagonal', 'diagonal'],
    things: ['diagonal'],
    sides: ['diagonal'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '3000 ft' },
})

export const yardArea = word<'area'>('yardArea', {
  kind: 'area',
  label: 'area of the yard',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'Inside the sides.',
  ask: 'What is the area of the yard?',
  called: {
    names: ['area of the yard', 'yard area'],
    asks: [
      'what is the area',
      'area of the yard',
      'area of my yard',
      'how big is the yard',
      'how big is my yard',
      'how many square feet',
      'how many square metres',
      'area of the lot',
      'square footage',
      'what area',
    ],
  },
})

export const yardPerimeter = word<'length'>('yardPerimeter', {
  kind: 'length',
  label: 'length all round',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'All sides together.',
  ask: 'How long is it all round?',
  called: {
    names: ['perimeter'],
    asks: [
      'what is the perimeter',
      'how long all round',
      'how far around',
      'how long around',
      'length all round',
      'total length of the sides',
      'perimeter',
    ],
  },
})

export const misclosure = word<'length'>('misclosure', {
  kind: 'length',
  label: 'misclosure',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the last side ends from where the first began, when the measures are drawn.',
  ask: 'By how much do the sides fail to close?',
  called: {
    names: ['closing error', 'misclosure'],
    asks: [
      'do my sides close',
      'does it close',
      'do the sides close',
      'closing error',
      'misclosure',
      'how far off do they close',
      'how well does it close',
      'do my measurements close',
      'does my survey close',
    ],
  },
})

export const closeRatio = word<'number'>('closeRatio', {
  kind: 'number',
  label: 'measured length for each one of misclosure',
  measure: 'One in so many: tape work round a yard often comes to one in a few hundred or better.',
  ask: 'One in how many?',
  called: { names: ['closing ratio'], asks: ['one in how many', 'closure ratio', 'closing ratio'] },
})
