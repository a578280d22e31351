// A strip of concrete cast under or beside the fence.
import { calculation } from '../../calculation.ts'
import { edgeDepth, edgeRun, edgeWidth, stripBags, stripConcrete } from '../../words/border.ts'
import { bagYield, spare } from '../../words/concrete.ts'

export const castEdge = calculation({
  name: 'cast-edge',
  title: 'A cast strip along the fence',
  answers: 'How much concrete a cast mowing strip takes, and how many bags.',
  needs: { edgeRun, edgeWidth, edgeDepth, spare, bagYield },
  onlyFor: { bagYield: ['stripBags'] },
  gives: { stripConcrete, stripBags },
  headlines: ['stripConcrete', 'stripBags'],
  together: { stripConcrete: ['stripConcrete', 'stripBags'], stripBags: ['stripBags', 'stripConcrete'] },
  lines: {
    stripConcrete: [
      'edgeRun * edgeWidth * edgeDepth * (1 + spare)',
      'length times width times depth, and what is added',
    ],
    stripBags: ['ceil(stripConcrete / bagYield)', 'rounded up once for all of it'],
  },
  work(_given, { line, has, remark }) {
    line('stripConcrete')
    if (has('bagYield')) line('stripBags')
    remark(
      'Keep it clear of the wood and slope it away from the posts, or they stand in water. Cut or strike a joint every few feet, or it cracks where it likes. Past a few dozen bags ask what a small load of ready-mix costs.',
    )
  },
  sources: [{ fact: 'volume = length × width × depth', from: 'Derived here; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'wet-cement', 'dust', 'lifting'],
  examples: [
    // 50 × 8/12 × 4/12 = 11.111; × 1.05 = 11.667; ÷ 0.6 = 19.4 → 20
    {
      ask: 'Concrete for a mow strip 50 ft long, 8 in wide and 4 in thick, 5 % extra, in 80 lb bags of 0.6 ft3: how many bags for the strip?',
      given: { edgeRun: '50 ft', edgeWidth: '8 in', edgeDepth: '4 in', spare: '5 %', bagYield: '0.6 ft3' },
      expect: { stripConcrete: '11.67 ft³', stripBags: '20 bags' },
    },
    // 12 × 0.2 × 0.1 = 0.24 m³
    {
      ask: 'How much concrete for the strip, 12 m long, 200 mm wide, 100 mm deep?',
      given: { edgeRun: '12 m', edgeWidth: '200 mm', edgeDepth: '100 mm', spare: '0 %' },
      expect: { stripConcrete: '240 L' },
    },
  ],
})
