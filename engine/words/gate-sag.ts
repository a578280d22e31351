// This file is about the two diagonals of a leaf, and how far it has sagged.
import { word } from './word.ts'

export const strutDiagonal = word<'length'>('strutDiagonal', {
  kind: 'length',
  label: 'diagonal from the bottom hinge corner to the top latch corner',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Corner to corner of the leaf, from the bottom at the hinges to the top at the latch.',
  ask: 'What is the diagonal from the bottom hinge corner to the top latch corner?',
  called: {
    names: [
      'bottom hinge to top latch',
      'bottom hinge corner to top latch corner',
      'from bottom hinge',
      'rising diagonal',
      'brace diagonal',
    ],
    things: ['diagonal'],
    sides: ['rising', 'bottom hinge'],
  },
  possible: { above: '0 in' },
  plausible: { from: '20 in', to: '15 ft' },
})

export const tieDiagonal = word<'length'>('tieDiagonal', {
  kind: 'length',
  label: 'diagonal from the top hinge corner to the bottom latch corner',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Corner to corner of the leaf, from the top at the hinges to the bottom at the latch.',
  ask: 'What is the diagonal from the top hinge corner to the bottom latch corner?',
  called: {
    names: [
      'top hinge to bottom latch',
      'top hinge corner to bottom latch corner',
      'from top hinge',
      'falling diagonal',
      'cable diagonal',
    ],
    things: ['diagonal'],
    sides: ['falling', 'top hinge'],
  },
  possible: { above: '0 in' },
  plausible: { from: '20 in', to: '15 ft' },
})

export const latchDrop = word<'length'>('latchDrop', {
  kind: 'length',
  label: 'drop of the latch side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the latch side has sunk below square.',
  ask: 'How far has the latch side dropped?',
  called: {
    names: ['sag', 'drop of the latch side', 'gate drop'],
    asks: [
      'how much has it sagged',
      'how far has it dropped',
      'how far has the gate dropped',
      'how far out of square',
      'how much sag',
      'is the gate square',
      'has the gate sagged',
      'how much has the gate sagged',
      'sagged',
      'gate sagging',
      'gate sags',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '1/8 in', to: '12 in' },
})

export const takeUp = word<'length'>('takeUp', {
  kind: 'length',
  label: 'take-up of a cable to bring it square',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much shorter the cable from the top hinge to the bottom latch must become.',
  ask: 'How much must the cable be taken up?',
  called: {
    names: ['take-up', 'take up', 'turnbuckle'],
    asks: [
      'how much take up',
      'how far do i turn',
      'how much do i tighten',
      'how much must the cable',
      'turnbuckle take-up',
      'how much to tighten',
      'tighten the cable',
      'take up the turnbuckle',
    ],
  },
})

export const squareDiagonal = word<'length'>('squareDiagonal', {
  kind: 'length',
  label: 'both diagonals when it is square',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The two diagonals of a square leaf are alike.',
  ask: 'What should both diagonals be?',
  called: {
    names: ['right diagonal of the gate'],
    asks: ['what should the diagonals be', 'what should both diagonals be', 'right diagonal'],
  },
})
