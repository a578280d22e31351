// This file is about bays kept at one width, and what is left over where they do not come out even.
import { word } from './word.ts'

export const fixedBay = word<'length'>('fixedBay', {
  kind: 'length',
  label: 'width of a whole bay',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Centre to centre of the bays that are to stay as they are: a ready panel and a post, or a rail uncut.',
  ask: 'How wide is a whole bay, centre to centre?',
  called: {
    names: [
      'whole bay',
      'whole bays',
      'full bays of',
      'full bays',
      'fixed bay',
      'fixed bays',
      'standard bay',
      'standard bays',
      'bays of exactly',
      'bays kept at',
      'bays of',
      'full panel',
      'full panels',
      'panels of',
      'keep the bays',
      'posts every',
      'on center',
      'on centre',
      'on centers',
      'on centres',
      'center to center',
      'centre to centre',
    ],
  },
  possible: { above: '0 ft' },
  plausible: { from: '2 ft', to: '12 ft' },
})

export const wholeBays = word<'count'>('wholeBays', {
  kind: 'count',
  noun: 'bay',
  label: 'whole bays that fit',
  whole: true,
  measure: 'Bays of the full width.',
  ask: 'How many whole bays fit?',
  called: { asks: ['how many whole bays', 'how many full bays', 'how many full panels', 'how many standard bays'] },
})

export const oddBay = word<'length'>('oddBay', {
  kind: 'length',
  label: 'odd last bay',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is left after the whole bays, centre to centre.',
  ask: 'How wide is the odd last bay?',
  called: {
    asks: ['odd last bay', 'odd bay', 'last bay', 'short bay', 'bay is left over', 'leftover bay', 'bay left over'],
  },
})

export const endBays = word<'length'>('endBays', {
  kind: 'length',
  label: 'each of two matching end bays',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Centre to centre, the same at both ends.',
  ask: 'How wide are the two end bays?',
  called: {
    asks: [
      'matching end bays',
      'end bays match',
      'both ends match',
      'ends match',
      'same at both ends',
      'two end bays',
      'end bays',
      'centre the bays',
      'center the bays',
    ],
  },
})

export const evenBay = word<'length'>('evenBay', {
  kind: 'length',
  label: 'a bay, if all are alike',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Centre to centre, no wider than the whole bay.',
  ask: 'How wide is a bay if all are alike?',
  called: { asks: ['all alike', 'all the same instead'] },
})
