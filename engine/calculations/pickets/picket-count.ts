// Pickets for the whole fence: every bay, the gates, and some to spare.
import { calculation } from '../../calculation.ts'
import { gatePickets, picketsEachGate, picketsHung, picketSpare, picketsToBuy } from '../../words/picket-count.ts'
import { equal, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, gates } from '../../words/bays.ts'
import { pickets } from '../../words/pickets.ts'

export const picketCount = calculation({
  name: 'picket-count',
  title: 'Pickets for the whole fence',
  answers: 'How many pickets all bays and gates take, and how many to buy with some to spare.',
  needs: { pickets, bays, gatePickets, gates, picketsEachGate, picketSpare },
  may: ['gates', 'picketsEachGate'],
  locals: { onGates: 'count' },
  gives: { picketsToBuy, picketsHung },
  headlines: ['picketsToBuy'],
  joins: true,
  together: { picketsToBuy: ['picketsToBuy', 'picketsHung'], picketsHung: ['picketsHung', 'picketsToBuy'] },
  lines: {
    eachGate: ['gates * picketsEachGate', 'so many on each'],
    picketsHung: ['pickets * bays + onGates', 'all bays, and the gates'],
    picketsToBuy: ['ceil(picketsHung * (1 + picketSpare))', 'spares added, rounded up once'],
  },
  work({ gatePickets }, { line, has, assumed, put, need, refuse, rows, remark }) {
    if (has('picketsEachGate')) {
      if (!has('gates')) need('gates')
      const together = line('eachGate')
      if (!assumed('gatePickets') && !equal(together, gatePickets))
        refuse(
          'gatePickets',
          `${show(rows('picketsEachGate')[0] as Quantity)} on each gate and ${show(gatePickets)} on all gates do not agree. Give one of the two.`,
        )
      put('onGates', { ...together, kind: 'count', unit: 'picket' })
    } else put('onGates', gatePickets)
    line('picketsHung')
    line('picketsToBuy')
    remark('If bays differ, count each kind and add them up. Pick through the pile before you pay.')
  },
  sources: [{ fact: 'pickets = bays × pickets in a bay + gates', from: 'Derived here; needs no table.' }],
  cautions: [],
  examples: [
    // 13 × 16 + 12 = 220; × 1.05 = 231
    {
      ask: 'How many pickets to buy for 13 bays with 16 pickets per bay, 12 pickets on the gate and 5 % spare?',
      given: { pickets: '16', bays: '13', gatePickets: '12', picketSpare: '5 %' },
      expect: { picketsHung: '220 pickets', picketsToBuy: '231 pickets' },
    },
    // 9 × 17 + 2 × 8 = 169; × 1.08 = 182.52 → 183
    {
      ask: '9 bays of 17 pickets, 2 gates with 8 pickets each and 8 % spare. How many pickets do I order?',
      given: { pickets: '17', bays: '9', gates: '2', picketsEachGate: '8', picketSpare: '8 %' },
      expect: { picketsHung: '169 pickets', picketsToBuy: '183 pickets' },
    },
    // 24 × 10 = 240; × 1.1 = 264
    {
      ask: '10 bays with 24 pickets in each bay and 10 % extra: how many pickets in all?',
      given: { pickets: '24', bays: '10', picketSpare: '10 %' },
      expect: { picketsHung: '240 pickets', picketsToBuy: '264 pickets' },
    },
  ],
})
