// How wide a leaf is built for its opening, once the hardware has its room.
//
//   ┃ ┌───────────────┐ ┃          ┃ ┌───────┐ ┌───────┐ ┃
//   ┃h│     leaf      │l┃          ┃h│ leaf  │m│ leaf  │h┃     h hinge gap, l latch gap, m gap where two leaves meet
//   ┃ └───────────────┘ ┃          ┃ └───────┘ └───────┘ ┃
import { calculation } from '../../calculation.ts'
import { leafDrawing } from '../../drawings/gate.ts'
import { exact, times } from '../../quantities/amount.ts'
import { less, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { gateOpening } from '../../words/bays.ts'
import {
  gateLeaves,
  hardwareRoom,
  hingeGap,
  latchGap,
  leafHeight,
  leafRail,
  leafWidth,
  meetingGap,
  memberWidth,
} from '../../words/gates.ts'

import { word } from '../../words/word.ts'

const otherLeaf = word<'length'>('otherLeaf', {
  kind: 'length',
  label: 'width of the other leaf',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Where the two leaves are not alike: the one that is settled already.',
  ask: 'How wide is the other leaf?',
  called: { names: ['other leaf', 'one leaf is'] },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '12 ft' },
})

export const gateLeaf = calculation({
  name: 'gate-leaf',
  title: 'A gate’s leaf for its opening',
  answers:
    'How wide the leaf of a gate is built, single or double, so that hinges and latch have their room, and how long its frame rails are.',
  needs: { gateOpening, gateLeaves, hingeGap, latchGap, meetingGap, memberWidth, leafHeight, otherLeaf },
  may: ['memberWidth', 'leafHeight', 'otherLeaf'],
  onlyFor: { memberWidth: ['leafRail'] },
  gives: { leafWidth, hardwareRoom, leafRail },
  headlines: ['leafWidth'],
  together: { leafWidth: ['leafWidth', 'hardwareRoom'] },
  locals: { leafWidth: 'length' },
  lines: {
    roomSingle: ['hingeGap + latchGap', 'the hinges on one side, the latch on the other'],
    leafSingle: ['gateOpening - roomSingle', 'what is left is the leaf'],
    roomDouble: ['2 * hingeGap + meetingGap', 'hinges on both sides, and a gap in the middle'],
    leafDouble: ['(gateOpening - roomDouble) / 2', 'what is left is shared by two leaves'],
    leafBeside: [
      'gateOpening - roomDouble - otherLeaf',
      'the other leaf is as wide as you said, and this has the rest',
    ],
    leafRail: ['leafWidth - 2 * memberWidth', 'the rails stand between the stiles'],
  },
  work(
    { gateOpening, gateLeaves, hingeGap, latchGap, leafHeight, memberWidth },
    { line, rows, tell, has, refuse, remark },
  ) {
    const isDouble = gateLeaves === 'double'
    const room = line(isDouble ? 'roomDouble' : 'roomSingle')
    if (!less(room, gateOpening))
      refuse(
        'gateOpening',
        `The hardware takes ${show(room)}, and the opening is ${show(gateOpening)}, so no leaf is left. Check the opening and the gaps.`,
      )
    const isUneven = isDouble && has('otherLeaf')
    const left = line(isUneven ? 'leafBeside' : isDouble ? 'leafDouble' : 'leafSingle')
    if (isUneven && !less(zero('length', 'in'), left))
      refuse(
        'otherLeaf',
        `A leaf of ${show(rows('otherLeaf')[0] as Quantity)} leaves nothing for another in an opening of ${show(gateOpening)}. Check both.`,
      )
    const leaf = tell('leafWidth', left)
    tell('hardwareRoom', room)
    if (has('memberWidth')) {
      if (!less({ ...memberWidth, amount: times(exact(2), memberWidth.amount) }, leaf))
        refuse(
          'memberWidth',
          `Two frame members of ${show(memberWidth)} leave no room for a rail in a leaf of ${show(leaf)}. Check both measurements.`,
        )
      line('leafRail')
    }
    remark(
      `Buy the hinges and the latch first. They decide the gaps: I took ${show(hingeGap)} at the hinges${isDouble ? '' : ` and ${show(latchGap)} at the latch`}.`,
    )
    remark('Measure the opening at the top, the middle and the bottom, and build for the narrowest.')
    if (has('leafHeight') && less(leafHeight, leaf))
      remark(
        `This leaf is wider (${show(leaf)}) than it is tall (${show(leafHeight)}). Its brace lies flat and holds less: two leaves, or a cable as well, hold better.`,
      )
  },
  sources: [
    { fact: 'opening = hinge gap + leaf + latch gap', from: 'Derived here from the sketch; needs no table.' },
    { fact: 'a leaf wider than it is tall wants two leaves or a cable', from: 'trade rule, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'tools'],
  // Two leaves that differ are not drawn: the sketch has them alike.
  drawing: (seen) => (seen.maybe('otherLeaf') ? null : leafDrawing(seen)),
  examples: [
    // 48 − 3/8 − 1/2 = 47 1/8
    {
      ask: 'Gate opening 48 in, hinge gap 3/8 in, latch gap 1/2 in: how wide is the leaf?',
      given: { gateOpening: '48 in', gateLeaves: 'single', hingeGap: '3/8 in', latchGap: '1/2 in' },
      expect: { leafWidth: '47 1/8 in', hardwareRoom: '7/8 in' },
    },
    // 96 − 2 × 3/8 − 1/2 = 94 3/4; / 2 = 47 3/8
    {
      ask: 'How wide should each leaf of a double gate be for a 96 in gate opening, 3/8 in at the hinges and 1/2 in in the middle?',
      given: { gateOpening: '96 in', gateLeaves: 'double', hingeGap: '3/8 in', meetingGap: '1/2 in' },
      expect: { leafWidth: '47 3/8 in', hardwareRoom: '1 1/4 in' },
    },
    // 1000 − 10 − 12 = 978; − 2 × 90 = 798
    {
      ask: 'A gate opening of 1000 mm, 10 mm hinge gap, 12 mm latch gap, frame members 90 mm: how wide a gate, and how long are the gate rails?',
      given: {
        gateOpening: '1000 mm',
        gateLeaves: 'single',
        hingeGap: '10 mm',
        latchGap: '12 mm',
        memberWidth: '90 mm',
      },
      expect: { leafWidth: '978 mm', leafRail: '798 mm' },
    },
    // 140 − 2 × 1/2 − 3/4 = 138 1/4; − 40 = 98 1/4
    {
      ask: 'Double gate, gate opening 140 in, 1/2 in at the hinges and 3/4 in in the middle, one leaf is 40 in: how wide is the leaf beside it?',
      given: {
        gateOpening: '140 in',
        gateLeaves: 'double',
        hingeGap: '1/2 in',
        meetingGap: '3/4 in',
        otherLeaf: '40 in',
      },
      expect: { leafWidth: '98 1/4 in' },
    },
  ],
})
