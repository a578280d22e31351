// This file is about the next coat: which finish there is, when the last coat went on, and when it is due again.
import { word } from './word.ts'

export const lastCoat = word<'date'>('lastCoat', {
  kind: 'date',
  label: 'day of the last coat',
  measure: 'The day on which the last coat went on, with its year.',
  ask: 'On which day did the last coat go on? Give the date with its year.',
  called: {
    names: [
      'painted on',
      'stained on',
      'last coat',
      'last coated',
      'finished on',
      'last painted',
      'last stained',
      'coated on',
      'last coat on',
    ],
    things: ['coat', 'paint', 'stain'],
    sides: ['last', 'painted', 'stained', 'coated'],
    plainly: true,
    byDefault: true,
  },
})

export const finishType = word<'choice'>('finishType', {
  kind: 'choice',
  label: 'which finish it has',
  measure: 'On the can: what it calls itself.',
  ask: 'Which finish has it: water repellent, tinted clear, semi-transparent stain, solid stain or paint?',
  called: { names: ['type of finish'] },
  options: {
    repellent: {
      label: 'water-repellent preservative',
      called: [
        'water repellent',
        'water-repellent',
        'repellent',
        'wood preservative',
        'clear sealer',
        'sealer',
        'waterproofer',
      ],
    },
    tinted: {
      label: 'tinted clear finish',
      called: [
        'tinted clear',
        'toner',
        'transparent stain',
        'tinted oil',
        'decking oil',
        'clear finish',
        'translucent',
      ],
    },
    semitransparent: {
      label: 'semi-transparent stain',
      called: [
        'semi-transparent',
        'semitransparent',
        'semi transparent',
        'semi-transparent stain',
        'semi transparent stain',
        'penetrating stain',
      ],
    },
    solid: {
      label: 'solid-colour stain',
      called: [
        'solid stain',
        'solid color',
        'solid colour',
        'solid-color',
        'solid-colour',
        'opaque stain',
        'solid color stain',
        'solid colour stain',
      ],
    },
    paint: {
      label: 'paint',
      called: ['paint', 'painted', 'paint system', 'latex paint', 'acrylic paint', 'oil paint', 'gloss'],
    },
  },
})

export const recoatFrom = word<'date'>('recoatFrom', {
  kind: 'date',
  label: 'look at it from',
  measure:
    'The early end of the published range. South and west faces go first; on the southern half of the earth north and west.',
  ask: 'From when may it be due?',
  called: {
    names: ['recoat'],
    asks: [
      'when is it due',
      'when is the next coat',
      'when do i recoat',
      'when do i repaint',
      'when do i restain',
      'when should i recoat',
      'when should i repaint',
      'when should i restain',
      'when does it need another coat',
      'when does it need painting again',
      'when does it need staining again',
      'next coat due',
      'recoat date',
      'when to recoat',
      'when will it need',
      'how long will the paint last',
      'how long will the stain last',
      'how long does paint last',
      'how long does stain last',
      'how long will it last',
    ],
  },
})

export const recoatBy = word<'date'>('recoatBy', {
  kind: 'date',
  label: 'due by',
  measure: 'The late end of the published range.',
  ask: 'By when is it due at the latest?',
  called: {},
})
