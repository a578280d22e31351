// This file is about corners told as points: how far across and how far along each lies from one stake.
import { word } from './word.ts'

const points = (name: string, label: string, measure: string) =>
  word<'length'>(name, {
    kind: 'length',
    list: true,
    label,
    units: { imperial: 'ft', metric: 'm' },
    measure,
    ask: 'Where are the corners? Give each as two measures from one stake: so far across, so far along.',
    called: {},
    unsaid: true,
  })

export const pointsAcross = points(
  'pointsAcross',
  'corners, across',
  'Square to the line you measure along, from one stake; to the other side with a minus.',
)
export const pointsAlong = points('pointsAlong', 'corners, along', 'Along one straight line, from one stake.')

export const cornersInside = word<'angle'>('cornersInside', {
  kind: 'angle',
  list: true,
  label: 'angles at the corners',
  measure: 'Between the runs that meet there.',
  ask: 'What are the angles at the corners?',
  called: {},
  unsaid: true,
})
