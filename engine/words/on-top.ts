// This file is about an amount of money and so many percent of it on top: a contingency, a fee.
import { word } from './word.ts'

export const amountBefore = word<'money'>('amountBefore', {
  kind: 'money',
  label: 'amount before it',
  measure: 'What it comes to without.',
  ask: 'What amount does it come on top of?',
  called: {},
  possible: { least: '$0' },
})

export const shareOnTop = word<'percent'>('shareOnTop', {
  kind: 'percent',
  label: 'added on top',
  measure: 'For what nobody foresees, or a fee.',
  ask: 'How many percent come on top?',
  called: {},
  possible: { least: '0 %' },
})

export const shareAmount = word<'money'>('shareAmount', {
  kind: 'money',
  label: 'what comes on top',
  measure: 'So many percent of the amount, to the cent.',
  ask: 'What comes on top?',
  called: {},
})

export const amountWithShare = word<'money'>('amountWithShare', {
  kind: 'money',
  label: 'amount with it',
  measure: 'The amount, and what comes on top.',
  ask: 'What does it come to with that?',
  called: {},
})
