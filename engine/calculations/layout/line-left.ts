// What is left of a line for the fence when hedges, trees or setbacks take a piece at its ends.
//
//   ├ hedge ┤●━━━━━━━ fence ━━━━━━━●┤ hedge ├
import { calculation } from '../../calculation.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { runLength } from '../../words/bays.ts'
import { word } from '../../words/word.ts'

const wholeLine = word<'length'>('wholeLine', {
  kind: 'length',
  label: 'whole line',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From one neighbour, wall or corner to the other.',
  ask: 'How long is the whole line?',
  called: { names: ['whole line', 'whole boundary'] },
  possible: { above: '0 ft' },
  plausible: { from: '3 ft', to: '3000 ft' },
})

const offEachEnd = word<'length'>('offEachEnd', {
  kind: 'length',
  label: 'taken off at each end',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the line, the same at both ends.',
  ask: 'How much is taken off at each end?',
  called: { names: ['at each end', 'at both ends', 'off each end'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '100 ft' },
})

const takenOff = word<'length'>('takenOff', {
  kind: 'length',
  list: true,
  label: 'taken off the line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the line: each piece where no fence goes.',
  ask: 'How long is each piece where no fence goes?',
  called: { names: ['taken off the line'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '1000 ft' },
})

export const lineLeft = calculation({
  name: 'line-left',
  title: 'What is left of a line for the fence',
  answers: 'How long the fence is when a hedge, a tree or a drive takes pieces of its line.',
  needs: { wholeLine, offEachEnd, takenOff },
  may: ['offEachEnd', 'takenOff'],
  oneOf: [['offEachEnd', 'takenOff']],
  gives: { runLength },
  headlines: ['runLength'],
  lines: {
    lessEnds: ['wholeLine - 2 * offEachEnd', 'the same at both ends'],
    pieces: ['sum(takenOff)', 'the pieces without fence together'],
    lessPieces: ['wholeLine - pieces', 'what is left is fence'],
    lessBoth: ['wholeLine - 2 * offEachEnd - pieces', 'what is left is fence'],
  },
  work({ wholeLine }, { line, has, tell, refuse, system }) {
    if (has('takenOff')) line('pieces')
    const way = has('takenOff') ? (has('offEachEnd') ? 'lessBoth' : 'lessPieces') : 'lessEnds'
    const left = line(way, system === 'metric' ? 'm' : 'ft')
    if (!less(zero('length', 'in'), left))
      refuse('wholeLine', `Nothing is left of ${show(wholeLine)}. Check the measurements.`)
    tell('runLength', left)
  },
  sources: [{ fact: 'what is left is the whole less its pieces', from: 'Derived here; needs no table.' }],
  cautions: ['lot-line', 'local-code'],
  examples: [
    // 16 − 2 × 0.5 = 15
    {
      ask: 'The line is 16 m and a hedge takes up 500 mm at each end: how long will the fence be?',
      given: { wholeLine: '16 m', offEachEnd: '500 mm' },
      expect: { runLength: '15 m' },
    },
    // 80 − 12 − 4 = 64
    {
      ask: 'The line is 80 ft, a drive takes 12 ft and a tree takes 4 ft: how much fence is left?',
      given: { wholeLine: '80 ft', takenOff: ['12 ft', '4 ft'] },
      expect: { runLength: '64 ft' },
    },
  ],
})
