// A run that steps down a slope as it is laid out: how far the ground falls over its widest bay, and over its widest gate.
//
//   ┃▔▔▔▔▔▔▔┃
//   ┃       ┃▔▔▔▔▔┃      the step at a post is what the ground falls over the bay beside it;
//   ▔▔──__  ┃     ┃      beside a gate, what it falls over the gate
//         ▔▔──__  ┃
import { calculation } from '../../calculation.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayRow, gateOpenings, longerAtGates } from '../../words/fence.ts'
import { postWidth } from '../../words/posts.ts'
import { slope } from '../../words/slopes.ts'
import { gapUnderStep, highEndGap, longerPost, stepEach, underHolds, widestUnder } from '../../words/sloping-fence.ts'

export const stepOfRun = calculation({
  name: 'step-of-run',
  title: 'The steps of one run',
  answers: 'How big the step at each post of a run is, the gap under its bays, and how much longer its posts are.',
  needs: { slope, bayRow, gateOpenings, postWidth, highEndGap, widestUnder },
  may: ['gateOpenings', 'widestUnder'],
  onlyFor: { widestUnder: ['underHolds'] },
  gives: { stepEach, gapUnderStep, longerPost, longerAtGates, underHolds },
  headlines: ['stepEach', 'gapUnderStep'],
  together: { stepEach: ['stepEach', 'gapUnderStep', 'longerPost'], gapUnderStep: ['gapUnderStep', 'stepEach'] },
  ofTheFence: true,
  locals: { widestOfBays: 'length', widestOfGates: 'length' },
  lines: {
    stepEach: ['slope * widestOfBays', 'what the ground falls over the widest bay'],
    gapUnderStep: ['highEndGap + stepEach', 'the ground drops by a step over the length of a level bay'],
    longerPost: ['stepEach', 'it reaches from the lower ground to the higher bay'],
    longerAtGates: ['slope * (widestOfGates + postWidth)', 'and beside a gate, what the ground falls over the gate'],
  },
  work({ widestUnder: limit }, { line, has, rows, put, tell, remark }) {
    const widest = (of: readonly Quantity[]): Quantity => of.reduce((a, b) => (less(a, b) ? b : a))
    put('widestOfBays', widest(rows('bayRow')))
    line('stepEach')
    const under = line('gapUnderStep')
    line('longerPost')
    if (has('gateOpenings')) {
      put('widestOfGates', widest(rows('gateOpenings')))
      line('longerAtGates')
    }
    if (has('widestUnder')) {
      const holds = !less(limit, under)
      tell('underHolds', holds)
      remark(`Decided by: ${show(under)} under the low end against your ${show(limit)}.`)
    }
    remark(
      'I took the ground to fall evenly along the run. Where it does not, measure the fall bay by bay, and cut each post to its own bay.',
    )
  },
  sources: [
    {
      fact: 'step = slope × bay; the gap at a low end is the gap at the high end and the step',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 5 % × 96 = 4.8 = 4 4/5; + 2; 5 % × (120 + 3 1/2) = 6.175 = 6 7/40
    {
      ask: 'A run that falls 5 % steps down in bays of 7 ft and 8 ft, with a 10 ft gate: how big is the step?',
      given: { slope: '5 %', bayRow: ['7 ft', '8 ft'], gateOpenings: ['10 ft'] },
      expect: { stepEach: '4 4/5 in', gapUnderStep: '6 4/5 in', longerAtGates: '6 7/40 in' },
    },
    // 8 % × 2000 = 160; + 50 = 210 > 150
    {
      ask: 'Bays of 2 m on ground that falls 8 %, at most 150 mm under the fence: how big are the steps?',
      given: { slope: '8 %', bayRow: ['2000 mm'], highEndGap: '50 mm', widestUnder: '150 mm', postWidth: '90 mm' },
      expect: { stepEach: '160 mm', gapUnderStep: '210 mm', underHolds: 'the gap underneath is over your limit' },
    },
  ],
})
