// Pickets for the whole fence: every bay, the gates, and some to spare.
import { calculation } from '../../calculation.ts'
import { gatePickets, picketsHung, picketSpare, picketsToBuy } from '../../words/picket-count.ts'
import { bays } from '../../words/bays.ts'
import { pickets } from '../../words/pickets.ts'

export const picketCount = calculation({
  name: 'picket-count',
  title: 'Pickets for the whole fence',
  answers: 'How many pickets all bays and gates take, and how many to buy with some to spare.',
  needs: { pickets, bays, gatePickets, picketSpare },
  gives: { picketsToBuy, picketsHung },
  headlines: ['picketsToBuy'],
  joins: true,
  together: { picketsToBuy: ['picketsToBuy', 'picketsHung'], picketsHung: ['picketsHung', 'picketsToBuy'] },
  lines: {
    picketsHung: ['pickets * bays + gatePickets', 'all bays, and the gates'],
    picketsToBuy: ['ceil(picketsHung * (1 + picketSpare))', 'spares added, rounded up once'],
  },
  work(_given, { line, remark }) {
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
    // 24 × 10 = 240; × 1.1 = 264
    {
      ask: '10 bays with 24 pickets in each bay and 10 % extra: how many pickets in all?',
      given: { pickets: '24', bays: '10', picketSpare: '10 %' },
      expect: { picketsHung: '240 pickets', picketsToBuy: '264 pickets' },
    },
  ],
})
