// This file is about why a gate hangs low: its leaf, its hinges or its post.
import { word } from './word.ts'

export const hingeGapTop = word<'length'>('hingeGapTop', {
  kind: 'length',
  label: 'hinge-side gap at the top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Gate shut: from the post’s face to the leaf, level with the top hinge.',
  ask: 'How wide is the gap between post and leaf at the top hinge?',
  called: {
    names: ['gap at the top hinge', 'gap at the top', 'top hinge gap', 'hinge gap at the top', 'gap by the top hinge'],
    things: ['top gap'],
    sides: ['at the top'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '3 in' },
})

export const hingeGapBottom = word<'length'>('hingeGapBottom', {
  kind: 'length',
  label: 'hinge-side gap at the bottom',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Gate shut: from the post’s face to the leaf, level with the bottom hinge.',
  ask: 'How wide is the gap between post and leaf at the bottom hinge?',
  called: {
    names: [
      'gap at the bottom hinge',
      'gap at the bottom',
      'bottom hinge gap',
      'hinge gap at the bottom',
      'gap by the bottom hinge',
      'at the bottom hinge',
      'at the bottom',
    ],
    things: ['bottom gap'],
    sides: ['at the bottom'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '3 in' },
})

export const hingeDrop = word<'length'>('hingeDrop', {
  kind: 'length',
  label: 'let down at the latch by the hinges',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Leaf width times the difference of the gaps, over the hinges’ distance.',
  ask: 'How far do the hinges let the latch end down?',
  called: { names: ['drop from the hinges'], asks: ['how far do the hinges let', 'drop from the hinges'] },
})

const verdict = (
  name: string,
  label: string,
  measure: string,
  ask: string,
  asks: readonly string[],
  yes: string,
  no: string,
) =>
  word<'verdict'>(name, {
    kind: 'verdict',
    label,
    measure,
    ask,
    called: { names: [label], asks },
    says: { yes, no, unknown: `cannot say: ${label}` },
  })

export const leafRacked = verdict(
  'leafRacked',
  'leaf out of square',
  'By its two diagonals.',
  'Is the leaf out of square?',
  ['is the leaf out of square', 'is the leaf racked', 'has the leaf racked'],
  'the leaf is out of square',
  'the leaf is square',
)

export const hingesGive = verdict(
  'hingesGive',
  'hinges that give',
  'By the gap at the hinge side, top against bottom.',
  'Do the hinges give?',
  ['do the hinges give', 'are the hinges loose', 'have the hinges pulled out'],
  'the hinges give',
  'the hinges hold',
)

export const postLeaning = verdict(
  'postLeaning',
  'leaning post',
  'By the plumb reading of the hinge post, toward the opening.',
  'Does the hinge post lean?',
  ['does the hinge post lean', 'is the hinge post leaning'],
  'the post leans',
  'the post stands plumb',
)

export const sagCause = word<'choice'>('sagCause', {
  kind: 'choice',
  label: 'what lets the gate down most',
  measure: 'Whichever of the three lets the latch end down furthest.',
  ask: 'What lets the gate down?',
  called: {
    names: ['cause of the sag'],
    asks: [
      'why does the gate sag',
      'why is the gate sagging',
      'why does my gate sag',
      'why does the gate drag',
      'why is my gate sagging',
      'what makes the gate sag',
      'what lets the gate down',
      'leaf hinges or post',
      'leaf or hinges or post',
      'is it the leaf or the post',
      'is it the post or the leaf',
      'is it the post or the hinges',
      'what is wrong with the gate',
    ],
  },
  options: {
    leaf: { label: 'leaf', called: [] },
    hinges: { label: 'hinges', called: [] },
    post: { label: 'post', called: [] },
    none: { label: 'none', called: [] },
    unsure: { label: 'unsure', called: [] },
  },
})
