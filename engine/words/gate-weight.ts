// This file is about what a gate weighs, and how it pulls at its hinges.
import { word } from './word.ts'

export const leafWeight = word<'mass'>('leafWeight', {
  kind: 'mass',
  label: 'weight of the leaf',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Weigh it: stand on a bathroom scale with and without it. Or add up its boards.',
  ask: 'What does the leaf of the gate weigh?',
  called: {
    names: ['gate weight', 'weight of the gate', 'weight of the leaf', 'gate weighs', 'leaf weighs', 'weighs'],
    things: ['gate', 'leaf'],
    sides: ['weigh', 'weighs', 'weight', 'heavy'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '10 lb', to: '600 lb' },
})

export const hingeSpacing = word<'length'>('hingeSpacing', {
  kind: 'length',
  label: 'hinges apart',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the middle of the top hinge to the middle of the bottom hinge.',
  ask: 'How far apart are the two hinges, middle to middle?',
  called: {
    names: ['hinge spacing', 'hinges apart', 'between the hinges', 'distance between hinges', 'hinges'],
    things: ['hinge', 'hinges'],
    sides: ['apart', 'spacing', 'between', 'spaced'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '8 in', to: '8 ft' },
})

export const hangingWeight = word<'mass'>('hangingWeight', {
  kind: 'mass',
  label: 'weight hung on the latch end',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'A child swinging on the gate, or whoever leans on it.',
  ask: 'What weight may hang on the latch end?',
  called: {
    names: [
      'hanging on it',
      'hangs on it',
      'hanging on the latch',
      'swinging on it',
      'leaning on it',
      'on the latch end',
    ],
    things: ['child', 'kid', 'person', 'someone', 'somebody'],
    sides: ['hanging', 'hangs', 'swings', 'swinging'],
    plainly: true,
  },
  possible: { least: '0 lb' },
  plausible: { from: '0 lb', to: '400 lb' },
})

export const gateForce = word<'force'>('gateForce', {
  kind: 'force',
  label: 'weight of the leaf, as a force',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'The two hinges share it in a way nobody can foresee: size each of them for all of it.',
  ask: 'With what force does the leaf bear down?',
  called: { names: ['load on the hinges'], asks: ['load on the hinges', 'load on each hinge'] },
})

export const hingePull = word<'force'>('hingePull', {
  kind: 'force',
  label: 'pull at the top hinge',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'The top hinge is pulled away from the post with it; the bottom one is pushed against the post as hard.',
  ask: 'How hard does the gate pull at its top hinge?',
  called: {
    names: ['hinge pull', 'pull on the hinge'],
    asks: [
      'how hard does it pull',
      'how hard does the gate pull',
      'pull on the hinges',
      'pull on the top hinge',
      'hinge pull',
      'force on the hinges',
      'force on the top hinge',
      'what do the hinges carry',
      'how strong must the hinges',
      'how strong do the hinges',
    ],
  },
})

export const hingePullHung = word<'force'>('hingePullHung', {
  kind: 'force',
  label: 'pull at the top hinge with that weight on the latch end',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'The same, with somebody on the gate.',
  ask: 'How hard does it pull with somebody on it?',
  called: {
    names: ['pull with a child on it'],
    asks: ['pull with someone on it', 'if a child swings on it', 'with a kid hanging'],
  },
})

export const postCouple = word<'moment'>('postCouple', {
  kind: 'moment',
  label: 'turning force on the hinge post',
  units: { imperial: 'lbf-ft', metric: 'N-m' },
  measure: 'What tries to tip the post toward the opening.',
  ask: 'What turning force does the gate put on its post?',
  called: {
    names: ['moment on the post', 'couple on the post'],
    asks: ['moment on the post', 'couple on the post', 'turning force on the post', 'torque on the post'],
  },
})
