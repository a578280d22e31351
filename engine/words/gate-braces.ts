// This file is about braces with pointed ends, and what a brace carries.
import { word } from './word.ts'

export const pointedLength = word<'length'>('pointedLength', {
  kind: 'length',
  label: 'brace with pointed ends, tip to tip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Its middle line on the diagonal, both ends cut to a point that fills the corner.',
  ask: 'How long is a brace with pointed ends?',
  called: {
    names: ['pointed brace'],
    asks: ['brace with pointed ends', 'pointed ends', 'pointed brace', 'brace cut to a point'],
  },
})

export const pointedEdge = word<'length'>('pointedEdge', {
  kind: 'length',
  label: 'edge of a brace with pointed ends',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Each long edge of it, from shoulder to shoulder.',
  ask: 'How long is the edge of a brace with pointed ends?',
  called: { names: ['edge of the pointed brace'], asks: ['edge of the pointed brace'] },
})

export const braceForce = word<'force'>('braceForce', {
  kind: 'force',
  label: 'push along the brace',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'What the brace is pressed together with, from the weight of the leaf alone.',
  ask: 'How hard is the brace pressed?',
  called: {
    names: ['force in the brace', 'push in the brace'],
    asks: [
      'force in the brace',
      'how hard is the brace pressed',
      'compression in the brace',
      'what does the brace carry',
    ],
  },
})
