// This file is about a fence that goes round corners: its sides, and the posts they share.
import { word } from './word.ts'

export const fenceSides = word<'length'>('fenceSides', {
  kind: 'length',
  list: true,
  label: 'sides of the fence, in order',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Level, from corner post centre to corner post centre, in the order you walk along the fence.',
  ask: 'How long are the sides of the fence, in order, from corner to corner?',
  called: {
    names: [
      'sides of the fence',
      'fence sides',
      'sides of fence',
      'runs of',
      'runs are',
      'sides are',
      'sides of',
      'stretches of',
      'round the corner',
      'around the corner',
      'down one side',
      'along the back',
      'across the front',
      'down the other',
      'l shape',
      'u shape',
      'l-shaped',
      'u-shaped',
    ],
    things: ['side', 'sides', 'run', 'runs', 'stretch', 'stretches', 'back', 'front'],
    sides: ['long'],
    plainly: true,
  },
  possible: { above: '0 ft' },
  plausible: { from: '1 ft', to: '3000 ft' },
})

export const cornersShared = word<'count'>('cornersShared', {
  kind: 'count',
  noun: 'post',
  label: 'corner posts among them',
  whole: true,
  measure: 'Posts that two sides share.',
  ask: 'How many corner posts are there?',
  called: { asks: ['how many corner posts', 'how many of them are corner posts', 'how many are corner posts'] },
})

export const gateSides = word<'count'>('gateSides', {
  kind: 'count',
  noun: 'side',
  list: true,
  label: 'sides, counted up to each gate’s',
  whole: true,
  measure: 'Count the sides in the order you gave them; one number for each gate.',
  ask: 'In which side is each gate? Count the sides in the order you gave them, and say one number for each gate.',
  called: {
    names: [
      'gate in side',
      'gate on side',
      'gates in sides',
      'gates on sides',
      'gates in side',
      'gates on side',
      'in side',
      'on side',
      'side number',
    ],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '40' },
})
