// Pickets for a length of fence whose bays are not known yet: one picket and one gap, over and over.
//
//   █ gap █ gap █ gap   ┆ gate ┆   █ gap █ gap          pickets = (length − gates) ÷ (width + gap)
//
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { gateOpening, gates, runLength } from '../../words/bays.ts'
import { picketSpare, picketsHung, picketsToBuy } from '../../words/picket-count.ts'
import { boardLap } from '../../words/picket-patterns.ts'
import { picketWidth, wantedGap, widestGap } from '../../words/pickets.ts'

export const picketsByLength = calculation({
  name: 'pickets-by-length',
  title: 'Pickets for a length of fence, before its bays are known',
  answers:
    'How many pickets a length of fence takes, gates left out, from the width of a picket and the gap alone, and how many to buy with some to spare.',
  needs: { runLength, picketWidth, wantedGap, widestGap, boardLap, gates, gateOpening, picketSpare },
  may: ['wantedGap', 'widestGap', 'boardLap', 'gates', 'gateOpening'],
  oneOf: [['wantedGap', 'widestGap', 'boardLap']],
  gives: { picketsHung, picketsToBuy },
  headlines: ['picketsHung', 'picketsToBuy'],
  untilBays: true,
  together: { picketsHung: ['picketsHung', 'picketsToBuy'], picketsToBuy: ['picketsToBuy', 'picketsHung'] },
  called: ['pickets for a length', 'feet of fence', 'metres of fence', 'meters of fence'],
  locals: { gateCount: 'count', gapTaken: 'length' },
  lines: {
    withPickets: ['runLength - gateCount * gateOpening', 'no pickets stand in a gate opening'],
    picketsHung: [
      'ceil(withPickets / (picketWidth + gapTaken))',
      'each picket takes its own width and one gap; what is left over takes one more',
    ],
    lapped: [
      'max(ceil((withPickets - boardLap) / (picketWidth - boardLap)), 1)',
      'each board after the first covers its width less the lap',
    ],
    picketsToBuy: ['ceil(picketsHung * (1 + picketSpare))', 'spares added, rounded up once'],
  },
  work(given, { line, put, has, tell, need, refuse, remark }) {
    const { runLength, picketWidth } = given
    if (less(runLength, picketWidth))
      refuse(
        'runLength',
        `A ${show(picketWidth)} picket is wider than ${show(runLength)} of fence. Check both measurements.`,
      )
    if (has('boardLap') && !less(given.boardLap, picketWidth))
      refuse(
        'boardLap',
        `A lap of ${show(given.boardLap)} is as wide as the ${show(picketWidth)} board. Check both measurements.`,
      )
    if (!has('boardLap')) put('gapTaken', has('wantedGap') ? given.wantedGap : given.widestGap)
    const hasGates = has('gates') ? compare(given.gates.amount, exact(0)) === 1 : has('gateOpening')
    if (hasGates) {
      if (!has('gateOpening')) need('gateOpening')
      put('gateCount', has('gates') ? given.gates : quantity(1, 'gate'))
      const left = line('withPickets')
      if (less(left, picketWidth))
        refuse(
          'gateOpening',
          `${show(runLength)} of fence less the gates leaves ${show(left)}, which takes no ${show(picketWidth)} picket. Check the length and the gates.`,
        )
      remark('Pickets on a gate are not among these: a gate takes about as many as its leaf is wide.')
    } else put('withPickets', runLength)
    if (has('boardLap')) tell('picketsHung', { ...line('lapped'), kind: 'count', unit: 'picket' })
    else line('picketsHung')
    line('picketsToBuy')
    if (has('boardLap')) {
      remark(`Every board laps its neighbour by ${show(given.boardLap)}, so no gap is reckoned in.`)
      return
    }
    remark(
      'This counts straight along, as pickets run past the fronts of the posts. Where they stand between posts, each bay takes a whole number of them: tell me how far apart the posts are, and I count them bay by bay, with the gap that comes out even.',
    )
  },
  sources: [{ fact: 'pickets = length ÷ (width + gap)', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 21000 / (85 + 60) = 144.83 → 145; × 1.05 = 152.25 → 153
    {
      ask: 'How many pickets for 21 metres of fence, 85 mm wide with 60 mm gaps?',
      given: { runLength: '21 m', picketWidth: '85 mm', wantedGap: '60 mm' },
      expect: { picketsHung: '145 pickets', picketsToBuy: '153 pickets' },
    },
    // (26,000 − 20)/(140 − 20) = 216.5 → 217; × 1.05 = 227.85 → 228
    {
      ask: 'How many palings for 26 m of fence, 140 mm wide and lapped by 20 mm?',
      given: { runLength: '26 m', picketWidth: '140 mm', boardLap: '20 mm' },
      expect: { picketsHung: '217 pickets', picketsToBuy: '228 pickets' },
    },
    // 48 × 12 / 6 = 96; × 1.1 = 105.6 → 106
    {
      ask: 'The fence is 48 ft, 3 1/2 in pickets, 2 1/2 in spacing. How many do I buy with 10 % spare?',
      given: { runLength: '48 ft', picketWidth: '3 1/2 in', wantedGap: '2 1/2 in', picketSpare: '10 %' },
      expect: { picketsHung: '96 pickets', picketsToBuy: '106 pickets' },
    },
    // 60 × 12 − 2 × 42 = 636; / 5 = 127.2 → 128; × 1.05 = 134.4 → 135
    {
      ask: 'About how many 3 in pickets for 60 feet of fence with two gates of 42 in, gap 2 in?',
      given: { runLength: '60 ft', picketWidth: '3 in', wantedGap: '2 in', gates: '2', gateOpening: '42 in' },
      expect: { picketsHung: '128 pickets', picketsToBuy: '135 pickets' },
    },
  ],
})
