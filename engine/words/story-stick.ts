// This file is about a story stick laid aslant between two posts.
import { word } from './word.ts'

export const stickPitch = word<'length'>('stickPitch', {
  kind: 'length',
  label: 'step marked on the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A handy step, longer than from picket to picket: laid aslant, the stick shortens it to fit.',
  ask: 'How far apart are the marks on the stick?',
  called: {
    names: [
      'marks on the stick',
      'step on the stick',
      'stick marked every',
      'marked every',
      'stick marks',
      'marks every',
    ],
    things: ['stick', 'story stick', 'storey stick', 'marks'],
    sides: ['marked', 'marks', 'every'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '24 in' },
})

export const stickAngle = word<'angle'>('stickAngle', {
  kind: 'angle',
  label: 'stick, from level',
  measure: 'How steeply the stick lies between the posts.',
  ask: 'How steeply does the stick lie?',
  called: {
    names: ['angle of the stick'],
    asks: [
      'what angle for the stick',
      'how do i lay the stick',
      'lay the stick',
      'slanted stick',
      'story stick at an angle',
      'story stick',
      'storey stick',
      'stick aslant',
    ],
  },
})

export const stickLength = word<'length'>('stickLength', {
  kind: 'length',
  label: 'stick, from post face to post face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the stick.',
  ask: 'How long is the stick between the posts?',
  called: { names: ['length of the stick'], asks: ['how long is the stick', 'how long a stick'] },
})

export const stickDrop = word<'length'>('stickDrop', {
  kind: 'length',
  label: 'one end of the stick lower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between its two ends at the post faces.',
  ask: 'How much lower is one end of the stick?',
  called: { names: ['drop of the stick'], asks: ['how much lower is one end', 'drop of the stick'] },
})

export const firstStickMark = word<'length'>('firstStickMark', {
  kind: 'length',
  label: 'first mark, along the stick from the post face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The middle of the first picket.',
  ask: 'Where on the stick is the first mark?',
  called: { names: ['first mark'], asks: ['where is the first mark', 'first mark on the stick'] },
})
