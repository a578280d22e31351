// This file is about how much of a fence is open.
import { word } from './word.ts'

export const openShare = word<'percent'>('openShare', {
  kind: 'percent',
  label: 'open, seen straight on',
  measure: 'Gap as a share of gap and picket.',
  ask: 'How much of the fence is open?',
  called: {
    names: ['open share', 'see-through share'],
    asks: [
      'how see through',
      'how much can you see through',
      'how open is',
      'percent open',
      'what percent open',
      'see through',
      'see-through',
      'how much is open',
      'openness',
    ],
  },
})

export const solidShare = word<'percent'>('solidShare', {
  kind: 'percent',
  label: 'solid, seen straight on',
  measure: 'Picket as a share of gap and picket; rails not counted.',
  ask: 'How much of the fence is solid?',
  called: {
    names: ['solid share'],
    asks: ['how solid is', 'percent solid', 'what percent solid', 'how much is solid', 'solid share'],
  },
})

export const blindAngle = word<'angle'>('blindAngle', {
  kind: 'angle',
  label: 'from here on nothing is seen through',
  measure: 'The angle from straight on at which one picket hides behind the next.',
  ask: 'From which angle is nothing seen through?',
  called: { names: ['blind angle'], asks: ['from what angle', 'at an angle', 'blind angle'] },
})
