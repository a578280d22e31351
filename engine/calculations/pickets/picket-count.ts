// Pickets for the whole fence: every bay, the gates, and some to spare.
import { calculation } from '../../calculation.ts'
import {
  gatePickets,
  picketsEachGate,
  picketsHung,
  picketSpare,
  picketsToBuy,
  shortBayPickets,
  shortBays,
} from '../../words/picket-count.ts'
import { equal, less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, gates } from '../../words/bays.ts'
import { pickets } from '../../words/pickets.ts'

export const picketCount = calculation({
  name: 'picket-count',
  title: 'Pickets for the whole fence',
  answers: 'How many pickets all bays and gates take, and how many to buy with some to spare.',
  needs: { pickets, bays, shortBays, shortBayPickets, gatePickets, gates, picketsEachGate, picketSpare },
  may: ['gates', 'picketsEachGate', 'shortBays', 'shortBayPickets'],
  locals: { onGates: 'count' },
  gives: { picketsToBuy, picketsHung },
  headlines: ['picketsToBuy'],
  joins: true,
  together: { picketsToBuy: ['picketsToBuy', 'picketsHung'], picketsHung: ['picketsHung', 'picketsToBuy'] },
  lines: {
    eachGate: ['gates * picketsEachGate', 'so many on each'],
    picketsHung: ['pickets * bays + onGates', 'all bays, and the gates'],
    hungWithShort: [
      'pickets * (bays - shortBays) + shortBayPickets * shortBays + onGates',
      'the whole bays, the short ones, and the gates',
    ],
    picketsToBuy: ['ceil(picketsHung * (1 + picketSpare))', 'spares added, rounded up once'],
  },
  work({ gatePickets }, { line, has, assumed, put, tell, need, refuse, rows, remark }) {
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
    if (has('shortBays') || has('shortBayPickets')) {
      if (!has('shortBays')) need('shortBays')
      if (!has('shortBayPickets')) need('shortBayPickets')
      const [all, short] = [rows('bays')[0], rows('shortBays')[0]] as [Quantity, Quantity]
      if (less(all, short))
        refuse('shortBays', `${show(short)} cannot be short of ${show(all)} in all. Check both numbers.`)
      tell('picketsHung', { ...line('hungWithShort'), kind: 'count', unit: 'picket' })
    } else line('picketsHung')
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
    // 6 × 18 + 2 × 7 = 122; × 1.05 = 128.1 → 129
    {
      ask: '8 sections of 18 pickets, but 2 short sections take only 7 pickets each: how many pickets in all?',
      given: { pickets: '18', bays: '8', shortBays: '2', shortBayPickets: '7' },
      expect: { picketsHung: '122 pickets', picketsToBuy: '129 pickets' },
    },
    // 24 × 10 = 240; × 1.1 = 264
    {
      ask: '10 bays with 24 pickets in each bay and 10 % extra: how many pickets in all?',
      given: { pickets: '24', bays: '10', picketSpare: '10 %' },
      expect: { picketsHung: '240 pickets', picketsToBuy: '264 pickets' },
    },
  ],
})
