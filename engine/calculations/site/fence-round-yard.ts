// A rectangular yard of which the house, or a wall, closes one side or more: how long the fence round the rest is.
//
//   ┌── house ──┐
//   │           │      all round, less what is closed; and less the gates
//   └───────────┘
import { calculation } from '../../calculation.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { gateOpening, gates } from '../../words/bays.ts'
import { gateOpenings } from '../../words/fence.ts'
import { word } from '../../words/word.ts'

const yardAcross = word<'length'>('yardAcross', {
  kind: 'length',
  label: 'yard, one way',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'One side of the yard, corner to corner.',
  ask: 'How long is one side of the yard?',
  called: { names: ['yard across'] },
  possible: { above: '0 ft' },
  plausible: { from: '5 ft', to: '3000 ft' },
})

const yardAlong = word<'length'>('yardAlong', {
  kind: 'length',
  label: 'yard, the other way',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'The side that goes off from it at the corner.',
  ask: 'How long is the yard the other way?',
  called: { names: ['yard along'] },
  possible: { above: '0 ft' },
  plausible: { from: '5 ft', to: '3000 ft' },
})

const closedSides = word<'length'>('closedSides', {
  kind: 'length',
  list: true,
  label: 'closed already',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Each side, or part of one, where the house or a wall stands and no fence goes.',
  ask: 'How long is each side that needs no fence?',
  called: { names: ['closed by the house', 'needs no fence'] },
  possible: { above: '0 ft' },
  plausible: { from: '1 ft', to: '3000 ft' },
})

const fenceAround = word<'length'>('fenceAround', {
  kind: 'length',
  label: 'fence with its gates',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'All round, less what is closed.',
  ask: 'How long is the fence, gates and all?',
  called: { asks: ['feet of fence with the gates', 'fence gates and all'] },
})

const fenceAlone = word<'length'>('fenceAlone', {
  kind: 'length',
  label: 'fence without the gates',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'What is left when the gates are taken off.',
  ask: 'How long is the fence without its gates?',
  called: { asks: ['not counting the gates', 'actual fence', 'without the gates', 'less the gates'] },
})

export const fenceRoundYard = calculation({
  name: 'fence-round-yard',
  title: 'Fence round a rectangular yard, with a side closed',
  answers: 'How long the fence round a rectangular yard is where the house closes a side, with its gates and without.',
  needs: { yardAcross, yardAlong, closedSides, gates, gateOpening, gateOpenings },
  may: ['closedSides', 'gates', 'gateOpening', 'gateOpenings'],
  gives: { fenceAround, fenceAlone },
  headlines: ['fenceAround', 'fenceAlone'],
  together: { fenceAround: ['fenceAround', 'fenceAlone'], fenceAlone: ['fenceAlone', 'fenceAround'] },
  lines: {
    allRound: ['2 * (yardAcross + yardAlong)', 'two sides each way'],
    closed: ['sum(closedSides)', 'where no fence goes'],
    fenceAround: ['allRound', 'no side is closed'],
    fenceOpen: ['allRound - closed', 'the sides that are left'],
    gatesAlike: ['gates * gateOpening', 'so many gates, all as wide'],
    gatesTold: ['sum(gateOpenings)', 'the gates together'],
    fenceLessAlike: ['fenceAround - gatesAlike', 'what is left is fence'],
    fenceLessTold: ['fenceAround - gatesTold', 'what is left is fence'],
  },
  work(_, { line, has, tell, need, refuse, remark, system }) {
    const unit = system === 'metric' ? 'm' : 'ft'
    line('allRound', unit)
    const none = zero('length', 'in')
    if (has('closedSides')) line('closed')
    const length = has('closedSides') ? tell('fenceAround', line('fenceOpen', unit)) : line('fenceAround')
    if (!less(none, length))
      refuse('closedSides', 'What is closed is as long as the yard all round. Check the measurements.')
    if (!has('closedSides')) remark('You named no side that is closed, so I took all four.')
    const told = has('gateOpenings')
    if (!told && !has('gates') && !has('gateOpening')) return
    if (!told && !has('gateOpening')) need('gateOpening')
    if (!told && !has('gates')) need('gates')
    line(told ? 'gatesTold' : 'gatesAlike')
    const alone = line(told ? 'fenceLessTold' : 'fenceLessAlike', unit)
    if (!less(none, alone)) refuse('gateOpening', `The gates take all of the ${show(length)}. Check the measurements.`)
    tell('fenceAlone', alone)
  },
  sources: [
    { fact: 'a rectangle has two sides of each length', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['lot-line', 'local-code'],
  examples: [
    // 2 × (50 + 70) = 240; − 50 = 190; − 3 − 12 = 175
    {
      ask: 'A yard of 50 ft by 70 ft, the house closes one 50 ft side, gates of 3 ft and 12 ft: how many feet of fence?',
      given: { yardAcross: '50 ft', yardAlong: '70 ft', closedSides: ['50 ft'], gateOpenings: ['3 ft', '12 ft'] },
      expect: { fenceAround: '190 ft', fenceAlone: '175 ft' },
    },
    // 2 × (12 + 20) = 64; − 20 = 44; − 2 × 1.2 = 41.6
    {
      ask: 'Yard 12 m by 20 m, the house closes one 20 m side, two gates of 1.2 m each: how much fence?',
      given: { yardAcross: '12 m', yardAlong: '20 m', closedSides: ['20 m'], gates: '2', gateOpening: '1.2 m' },
      expect: { fenceAround: '44 m', fenceAlone: '41.6 m' },
    },
  ],
})
