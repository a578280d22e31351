// This file is about the mortar under a row of bricks.
import { word } from './word.ts'

export const mortarDepth = word<'length'>('mortarDepth', {
  kind: 'length',
  label: 'depth of the mortar bed',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the bricks sit on.',
  ask: 'How deep is the bed of mortar under the bricks?',
  called: {
    names: ['depth of the mortar', 'bed of mortar', 'mortar bed', 'mortar depth'],
    things: ['mortar', 'mortar bed'],
    sides: ['deep', 'thick', 'of mortar'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '4 in' },
})

export const mortarBed = word<'volume'>('mortarBed', {
  kind: 'volume',
  label: 'mortar under the bricks',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The bed alone; what goes between the bricks comes on top.',
  ask: 'How much mortar is under the bricks?',
  called: { names: ['mortar under the bricks'], asks: ['how much mortar', 'litres of mortar', 'cubic feet of mortar'] },
})
