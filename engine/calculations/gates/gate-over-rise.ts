// How high a gate is hung where the ground rises across its swing.
//
//     ┃   ┌──────────┐
//     ┃   └──────────┘ ─┬─ clear everywhere
//     ┃             __▁▔─┴─ highest ground under the swing
//   ──┃─────────▁▔▔      rise: the gap under the shut gate is both together
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { clearOver } from '../../words/gate-parts.ts'
import { gateGapBelow, swingRise } from '../../words/gate-swing.ts'

export const gateOverRise = calculation({
  name: 'gate-over-rise',
  title: 'A gate hung over rising ground',
  answers:
    'How high the bottom of a gate must be at the hinge post so that it clears ground that rises so much across its swing.',
  needs: { swingRise, clearOver },
  gives: { gateGapBelow },
  headlines: ['gateGapBelow'],
  lines: { gateGapBelow: ['swingRise + clearOver', 'the rise, and what is to be left over it'] },
  work({ swingRise, clearOver }, { line, remark }) {
    line('gateGapBelow')
    remark(
      `A level leaf keeps its height all the way round: over the highest place ${show(clearOver)} is left, over the lowest ${show(swingRise)} more. Measure the rise from the ground at the hinge post to the highest place within the leaf’s reach.`,
    )
  },
  sources: [{ fact: 'gap at the hinge = rise + clearance', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['local-code'],
  examples: [
    {
      ask: 'The ground rises 3 in over the swing of the gate and I want 2 in clear everywhere. How high off the ground at the hinge post?',
      given: { swingRise: '3 in', clearOver: '2 in' },
      expect: { gateGapBelow: '5 in' },
    },
    {
      ask: 'Ground rises 75 mm over the swing, 50 mm clear everywhere: how high is the bottom of the shut gate?',
      given: { swingRise: '75 mm', clearOver: '50 mm' },
      expect: { gateGapBelow: '125 mm' },
    },
  ],
})
