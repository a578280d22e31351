// This file is about pickets along a length of fence: how many to the metre, and how far those in hand go.
import { word } from './word.ts'

export const perMetre = word<'number'>('perMetre', {
  kind: 'number',
  label: 'pickets to the metre',
  measure: 'On the long run; a short bay takes a whole number.',
  ask: 'How many pickets to the metre?',
  called: {
    names: ['pickets to the metre'],
    asks: ['to the metre', 'to the meter', 'pickets per metre', 'pickets per meter', 'pickets a metre'],
  },
})

export const perFoot = word<'number'>('perFoot', {
  kind: 'number',
  label: 'pickets to the foot',
  measure: 'On the long run; a short bay takes a whole number.',
  ask: 'How many pickets to the foot?',
  called: {
    names: ['pickets to the foot'],
    asks: ['to the foot', 'pickets per foot', 'pickets a foot'],
  },
})

export const fenceCovered = word<'length'>('fenceCovered', {
  kind: 'length',
  label: 'fence that they cover',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Along the fence, gates left out.',
  ask: 'How much fence do they cover?',
  called: {
    names: ['fence covered'],
    asks: [
      'how far will',
      'how far do',
      'how much fence',
      'how many feet will',
      'how many metres will',
      'will they cover',
    ],
  },
})
