// The pickets of a whole fence whose bays differ: every stretch of bays alike, the gates, and some to spare.
import { calculation } from '../../calculation.ts'
import { bayPickets, bayRails, picketCrossings, stretchBays } from '../../words/fence.ts'
import { gatePickets, picketsHung, picketSpare, picketsToBuy } from '../../words/picket-count.ts'

export const picketsOfFence = calculation({
  name: 'pickets-of-fence',
  title: 'Pickets of the whole fence',
  answers:
    'How many pickets all bays and gates take, how many to buy with some to spare, and how often a picket crosses a rail.',
  needs: { bayPickets, stretchBays, bayRails, gatePickets, picketSpare },
  gives: { picketsToBuy, picketsHung, picketCrossings },
  headlines: ['picketsToBuy'],
  together: { picketsToBuy: ['picketsToBuy', 'picketsHung'], picketsHung: ['picketsHung', 'picketsToBuy'] },
  ofTheFence: true,
  lines: {
    picketsHung: [
      'sum(bayPickets * stretchBays) + gatePickets',
      'every stretch: pickets in a bay times its bays; and the gates',
    ],
    picketsToBuy: ['ceil(picketsHung * (1 + picketSpare))', 'spares added, rounded up once'],
    picketCrossings: [
      'sum(bayPickets * stretchBays * bayRails) + 2 * gatePickets',
      'each picket crosses every rail of its bay; a gate’s frame has two',
    ],
  },
  work(_given, { line, rows, refuse, remark }) {
    const stretches = rows('stretchBays').length
    for (const name of ['bayPickets', 'bayRails'] as const)
      if (rows(name).length !== stretches)
        refuse(name, `I have ${rows(name).length} values, and ${stretches} stretches of bays. Give one for each.`)
    line('picketsHung')
    line('picketsToBuy')
    line('picketCrossings')
    remark('Pick through the pile before you pay.')
  },
  sources: [
    { fact: 'pickets of a stretch = pickets in a bay × bays', from: 'Derived here; needs no table.' },
    { fact: 'a gate’s frame with two rails', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 16 × 5 + 17 × 8 + 9 = 225; × 1.05 = 236.25 → 237; 2 × (80 + 136) + 18 = 450
    {
      ask: '5 bays with 16 pickets and 8 with 17, 2 rails, 9 pickets on the gate: how many pickets in all?',
      given: { bayPickets: ['16', '17'], stretchBays: ['5', '8'], bayRails: ['2', '2'], gatePickets: '9' },
      expect: { picketsHung: '225 pickets', picketsToBuy: '237 pickets', picketCrossings: '450 places' },
    },
    // 20 × 4 + 22 × 6 = 212; no spares; 3 × 80 + 2 × 132 = 504
    {
      ask: '4 bays with 20 pickets on 3 rails and 6 with 22 on 2 rails, no spares: how many pickets?',
      given: { bayPickets: ['20', '22'], stretchBays: ['4', '6'], bayRails: ['3', '2'], picketSpare: '0 %' },
      expect: { picketsHung: '212 pickets', picketsToBuy: '212 pickets', picketCrossings: '504 places' },
    },
  ],
})
