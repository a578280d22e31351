// What hangs and shuts the gates: hinges, latches, and a rod that holds the second leaf of a double gate.
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { gates } from '../../words/bays.ts'
import { dropRods, hinges, hingesEach, latches, leavesInAll } from '../../words/take-off.ts'

export const gateHardware = calculation({
  name: 'gate-hardware',
  title: 'Hinges and latches',
  answers: 'How many hinges, latches and drop rods the gates take.',
  needs: { gates, leavesInAll, hingesEach },
  gives: { hinges, latches, dropRods },
  headlines: ['hinges'],
  ofTheFence: true,
  lines: {
    hinges: ['leavesInAll * hingesEach', 'on every leaf'],
    latches: ['gates', 'one for each gate'],
    dropRods: ['leavesInAll - gates', 'each double gate has one leaf more, held to the ground by a rod'],
  },
  work({ gates, leavesInAll }, { line, refuse, remark }) {
    if (less(leavesInAll, gates))
      refuse('leavesInAll', `${show(leavesInAll)} are fewer than ${show(gates)}. Each gate has one leaf or two.`)
    for (const name of ['hinges', 'latches', 'dropRods'] as const) line(name)
    remark('Buy the hinges and the latch before you set the gate posts: they decide the gaps.')
  },
  sources: [
    {
      fact: 'one latch for each gate, and a rod for the second leaf of a double one',
      from: 'common practice, no source',
    },
  ],
  cautions: [],
  examples: [
    // 3 × 2 = 6; 2; 3 − 2 = 1
    {
      ask: 'Two gates, one of them double: how many hinges, latches and drop rods?',
      given: { gates: '2', leavesInAll: '3' },
      expect: { hinges: '6 hinges', latches: '2 latches', dropRods: '1 rod' },
    },
    {
      ask: 'One heavy gate with three hinges: what hardware?',
      given: { gates: '1', leavesInAll: '1', hingesEach: '3' },
      expect: { hinges: '3 hinges', latches: '1 latch', dropRods: '0 rods' },
    },
  ],
})
