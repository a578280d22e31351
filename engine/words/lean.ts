// This file is about a post that leans: how far, and whether it goes on leaning.
import { word } from './word.ts'

export const leanSlope = word<'percent'>('leanSlope', {
  kind: 'percent',
  label: 'lean, of the height',
  measure: 'Out of plumb over the height it was measured at: 2 % is about 1/4 in in each foot, or 20 mm in each metre.',
  ask: 'How much does it lean, as a share of its height?',
  called: { names: ['lean in percent'], asks: ['lean in percent', 'what percent does it lean'] },
})

export const topOffset = word<'length'>('topOffset', {
  kind: 'length',
  label: 'top of the post out of line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far its top stands out over its foot at the ground.',
  ask: 'How far is the top of the post out of line?',
  called: {
    names: ['top offset', 'out at the top'],
    asks: [
      'how far out is the top',
      'how far is the top out',
      'how far out at the top',
      'how far over is the top',
      'how far does the top lean',
    ],
  },
})

export const plumbReadings = word<'length'>('plumbReadings', {
  kind: 'length',
  list: true,
  label: 'plumb readings, the oldest first',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'Each time the same face, the same way, over the same height: how far the level or the plumb line stands off.',
  ask: 'How far out of plumb was the post each time, the oldest reading first?',
  called: {
    names: ['plumb readings', 'plumb reading', 'out of plumb readings', 'readings of the lean', 'read out of plumb'],
    things: ['plumb reading'],
    sides: ['plumb'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const plumbDates = word<'date'>('plumbDates', {
  kind: 'date',
  list: true,
  label: 'days of those readings, in the same order',
  measure: 'Write the day beside each reading.',
  ask: 'On which days were they read, in the same order?',
  called: {
    names: ['read on', 'measured on', 'taken on', 'days of the readings', 'on'],
    byDefault: true,
    plainly: true,
  },
})

export const leanGrowth = word<'length'>('leanGrowth', {
  kind: 'length',
  label: 'further out in a year, over that height',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the first reading to the last, at the same pace for a year.',
  ask: 'How much further does it lean in a year?',
  called: {
    names: ['lean per year'],
    asks: [
      'how fast does it lean',
      'how fast is it leaning',
      'how much further in a year',
      'how much more each year',
      'lean per year',
    ],
  },
})

export const leanMoves = word<'verdict'>('leanMoves', {
  kind: 'verdict',
  label: 'the post moves',
  measure: 'The change between the first reading and the last, against what a level can tell.',
  ask: 'Is the post still moving?',
  called: {
    names: ['still moving', 'still leaning'],
    asks: [
      'is it still moving',
      'is the post still moving',
      'is it still leaning',
      'is the post still leaning',
      'does it go on leaning',
      'is the lean getting worse',
      'getting worse',
    ],
  },
  says: {
    yes: 'it moves',
    no: 'no movement that a level shows',
    unknown: 'cannot say whether it moves',
  },
})
