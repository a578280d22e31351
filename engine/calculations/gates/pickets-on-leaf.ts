// Pickets on one leaf: one at each edge, and equal gaps between.
//
//   █   █   █   █      one gap fewer than pickets: leaf = n × width + (n − 1) × gap
//   └─── leaf ───┘
import { calculation } from '../../calculation.ts'
import { compare, exact, times } from '../../quantities/amount.ts'
import { exactly, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { mostPickets } from '../../running-marks.ts'
import { picketsOnLeaf } from '../../words/gate-parts.ts'
import { leafWidth } from '../../words/gates.ts'
import { gap, picketWidth, tapeGap, tapeMark, wantedGap } from '../../words/pickets.ts'

export const picketsOnLeafOf = calculation({
  name: 'pickets-on-leaf',
  title: 'Pickets on one leaf of a gate',
  answers: 'How many pickets one leaf takes, one at each of its edges, and the one gap between them.',
  needs: { leafWidth, picketWidth, wantedGap, tapeMark },
  gives: { picketsOnLeaf, gap, tapeGap },
  headlines: ['picketsOnLeaf', 'tapeGap'],
  together: { picketsOnLeaf: ['picketsOnLeaf', 'gap', 'tapeGap'] },
  locals: { picketsOnLeaf: 'count' },
  lines: {
    nearest: [
      '(leafWidth + wantedGap) / (picketWidth + wantedGap)',
      'how many would give just the gap you would like, with one gap fewer than pickets',
    ],
    gap: ['(leafWidth - picketsOnLeaf * picketWidth) / (picketsOnLeaf - 1)', 'what is left is shared by the gaps'],
    tapeGap: ['round(gap, tapeMark)', 'the nearest mark on a tape'],
  },
  work({ leafWidth, picketWidth, wantedGap }, { line, tell, refuse, remark }) {
    const two: Quantity = { ...picketWidth, amount: times(exact(2), picketWidth.amount) }
    if (less(leafWidth, two))
      refuse(
        'leafWidth',
        `One picket at each edge takes two, and two of ${show(picketWidth)} do not fit on a leaf of ${show(leafWidth)}. Check both measurements.`,
      )
    const nearest = line('nearest')
    if (compare(nearest.amount, mostPickets) === 1)
      refuse('leafWidth', `${show(leafWidth)} is more than one leaf can hold. Check the units.`)
    const [space, width, liked] = [leafWidth, picketWidth, wantedGap].map(exactly) as [
      ReturnType<typeof exactly>,
      ReturnType<typeof exactly>,
      ReturnType<typeof exactly>,
    ]
    const off = (n: ReturnType<typeof exactly>) => space.sub(n.mul(width)).div(n.sub(1)).sub(liked).abs()
    const low = exactly(nearest).floor()
    const fewer = low.compare(2) < 0 ? exact(2) : low
    const more = fewer.add(1)
    const isMore = more.mul(width).compare(space) < 0 && off(more).compare(off(fewer)) < 0
    const count = tell('picketsOnLeaf', quantity(isMore ? more : fewer, 'picket'))
    line('gap')
    line('tapeGap')
    remark(
      `${show(count)} come nearest to the gap you would like, ${show(wantedGap)}. The first and the last are flush with the edges of the leaf; where yours stand back, take the width between them.`,
    )
  },
  sources: [
    { fact: 'leaf = pickets × width + (pickets − 1) × gap', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  examples: [
    // (46 + 2)/(3.5 + 2) = 8.73; 9: (46 − 31.5)/8 = 1.8125, 8: 18/7 = 2.571: 9 is nearer to 2
    {
      ask: 'How many pickets on the gate? The leaf is 46 in wide, pickets 3 1/2 in, a gap of about 2 in.',
      given: { leafWidth: '46 in', picketWidth: '3 1/2 in', wantedGap: '2 in' },
      expect: { picketsOnLeaf: '9 pickets', gap: '1 13/16 in', tapeGap: '1 13/16 in' },
    },
    // (1200 + 40)/(70 + 40) = 11.27; 11: 430/10 = 43; 12: 360/11 = 32.7: 11 is nearer to 40
    {
      ask: 'Pickets on each leaf: leaf width 1200 mm, pickets 70 mm wide, gap about 40 mm?',
      given: { leafWidth: '1200 mm', picketWidth: '70 mm', wantedGap: '40 mm' },
      expect: { picketsOnLeaf: '11 pickets', gap: '43 mm' },
    },
  ],
})
