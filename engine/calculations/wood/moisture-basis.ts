// From moisture by the wet weight to moisture by the dry weight.
//
//   of 100 wet:  w is water, 1 − w is wood;  by the dry weight that is w / (1 − w), always the larger figure
import { calculation } from '../../calculation.ts'
import { dryBasis, wetBasis } from '../../words/weighed-wood.ts'

export const moistureBasis = calculation({
  name: 'moisture-basis',
  title: 'Moisture by the wet weight, as meters give it',
  answers:
    'What a moisture given by the wet weight, as for firewood, is by the dry weight, as meters and cans mean it.',
  needs: { wetBasis },
  gives: { dryBasis },
  headlines: ['dryBasis'],
  lines: {
    wood: ['1 - wetBasis', 'what is wood, of the whole wet piece'],
    dryBasis: ['wetBasis / wood', 'the same water, against the dry wood alone'],
  },
  work(_given, { line, remark }) {
    line('wood')
    line('dryBasis')
    remark('Limits on cans and figures from pin meters are by the dry weight.')
  },
  sources: [
    {
      fact: 'u = w / (1 − w); 20 % by the dry weight is 16.7 % by the wet',
      from: 'Wood Handbook, FPL-GTR-282 (2021), chapter 4, as quoted in a public fact sheet',
    },
  ],
  cautions: [],
  examples: [
    // 0.2 / 0.8
    {
      ask: 'What is 20 % on a wet basis by dry weight?',
      given: { wetBasis: '20 %' },
      expect: { dryBasis: '25 %' },
    },
    // 0.5 / 0.5
    {
      ask: '50 % of the total weight is water: what is that on the dry basis?',
      given: { wetBasis: '50 %' },
      expect: { dryBasis: '100 %' },
    },
  ],
})
