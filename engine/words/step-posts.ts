// This file is about the posts between panels that step down a slope.
import { word } from './word.ts'

export const panelHeight = word<'length'>('panelHeight', {
  kind: 'length',
  label: 'height of a panel',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The panel itself, bottom edge to top edge.',
  ask: 'How tall is a panel, from its bottom edge to its top edge?',
  called: { names: ['height of the panel', 'panel height'], things: ['panel'], sides: ['tall', 'high', 'height'] },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '8 ft' },
})

export const stepPost = word<'length'>('stepPost', {
  kind: 'length',
  label: 'post between two panels',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the bottom of the post to the top of the higher panel.',
  ask: 'How long must a post between two panels be?',
  called: {
    names: ['post between two panels'],
    asks: ['post between two panels', 'posts between the panels', 'post between panels'],
  },
})

export const endStepPost = word<'length'>('endStepPost', {
  kind: 'length',
  label: 'post at the very top of the run',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'It carries one panel, at that panel’s high end.',
  ask: 'How long must the post at the top of the run be?',
  called: { names: ['post at the top of the run'] },
})
