// This file is about bays of different widths that should look alike.
import { word } from './word.ts'

export const openings = word<'length'>('openings', {
  kind: 'length',
  list: true,
  label: 'openings of the bays',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Each from post face to post face, in order.',
  ask: 'How wide are the openings, each in order?',
  called: {
    names: ['openings', 'openings of', 'openings are', 'bays of', 'bays are', 'bay openings'],
    things: ['opening', 'openings', 'bay', 'bays'],
    sides: ['wide', 'clear', 'openings'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '16 ft' },
})

export const seenFrom = word<'length'>('seenFrom', {
  kind: 'length',
  label: 'difference that would be seen',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Gaps that differ by less than this pass for alike, a few steps off.',
  ask: 'From what difference on would you see that gaps differ?',
  called: { names: ['difference that would be seen', 'would be seen', 'noticeable'], sides: ['noticeable', 'seen'] },
  possible: { above: '0 in' },
  plausible: { from: '1/32 in', to: '1 in' },
  usual: {
    value: '1/8 in',
    metric: '3 mm',
    because: 'gaps side by side pass for alike below that',
    from: 'common practice, no source',
  },
})

export const gapsDiffer = word<'length'>('gapsDiffer', {
  kind: 'length',
  label: 'widest and narrowest gap differ by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Over all bays, with the best counts.',
  ask: 'By how much do the gaps differ?',
  called: {
    names: ['difference of the gaps'],
    asks: [
      'how much do the gaps differ',
      'make the bays look alike',
      'bays look alike',
      'bays look the same',
      'look alike',
      'look the same',
      'same look',
      'match the bays',
      'gaps look the same',
      'different bays',
    ],
  },
})

export const alike = word<'verdict'>('alike', {
  kind: 'verdict',
  label: 'bays side by side',
  measure: 'The difference of the gaps against what would be seen.',
  ask: 'Will the bays look alike?',
  called: {
    names: ['will be noticed'],
    asks: ['will anyone notice', 'would you notice', 'will it show', 'will you see the difference'],
  },
  says: {
    yes: 'the difference would hardly be seen',
    no: 'the difference would be seen',
    unknown: 'cannot say whether it would be seen',
  },
})
