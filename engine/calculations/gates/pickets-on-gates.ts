// The pickets of all gates: every leaf's, added up.
import { calculation } from '../../calculation.ts'
import { leafPickets } from '../../words/fence.ts'
import { gatePickets } from '../../words/picket-count.ts'

export const picketsOnGates = calculation({
  name: 'pickets-on-gates',
  title: 'Pickets on all gates',
  answers: 'How many pickets all gate leaves take together.',
  needs: { leafPickets },
  gives: { gatePickets },
  headlines: ['gatePickets'],
  ofTheFence: true,
  lines: { gatePickets: ['sum(leafPickets)', 'every leaf’s'] },
  work(_given, { line }) {
    line('gatePickets')
  },
  sources: [{ fact: 'the leaves’ pickets added up', from: 'Derived here; needs no table.' }],
  cautions: [],
  examples: [
    {
      ask: 'Three gate leaves with 8, 10 and 10 pickets: how many pickets on the gates?',
      given: { leafPickets: ['8', '10', '10'] },
      expect: { gatePickets: '28 pickets' },
    },
    {
      ask: 'Two leaves with 7 pickets each: how many on the gates?',
      given: { leafPickets: ['7', '7'] },
      expect: { gatePickets: '14 pickets' },
    },
  ],
})
