// So many pickets side by side: how long they are together, from the first to the last, and with a gap at both ends.
//
//   █ gap █ gap █ gap █         one gap fewer than pickets
//  ┃ gap █ gap █ gap █ gap ┃    one more, where posts stand
import { calculation } from '../../calculation.ts'
import { picketsHung } from '../../words/picket-count.ts'
import { picketWidth, wantedGap } from '../../words/pickets.ts'
import { word } from '../../words/word.ts'

const picketRow = word<'length'>('picketRow', {
  kind: 'length',
  label: 'from the first picket to the last',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Over all, no gap outside.',
  ask: 'How long is the row of pickets?',
  called: { names: ['end to end'] },
})

const picketRowGaps = word<'length'>('picketRowGaps', {
  kind: 'length',
  label: 'with a gap at both ends',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Between the posts.',
  ask: 'How long is the row with its outer gaps?',
  called: { names: ['gap at both ends'] },
})

export const picketsEndToEnd = calculation({
  name: 'pickets-end-to-end',
  title: 'So many pickets end to end',
  answers: 'How long a row of so many pickets is, without a gap at its ends and with one at both.',
  needs: { picketsHung, picketWidth, wantedGap },
  gives: { picketRow, picketRowGaps },
  headlines: ['picketRow'],
  together: { picketRow: ['picketRow', 'picketRowGaps'], picketRowGaps: ['picketRowGaps', 'picketRow'] },
  lines: {
    picketRow: ['picketsHung * picketWidth + (picketsHung - 1) * wantedGap', 'one gap fewer than pickets'],
    picketRowGaps: ['picketsHung * picketWidth + (picketsHung + 1) * wantedGap', 'a gap at both ends too: one more'],
  },
  work(_given, { line, remark }) {
    line('picketRow')
    line('picketRowGaps')
    remark('Whether a gap stands at an end depends on what is there: against a post there is one.')
  },
  sources: [{ fact: 'n pickets have n − 1 gaps between them', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 15 × 3 1/2 = 52 1/2; 14 × 2 1/2 = 35; 87 1/2 in; and two gaps of 2 1/2: 92 1/2
    {
      ask: '15 pickets 3 1/2 in wide with 2 1/2 in gaps: how long is that row end to end?',
      given: { picketsHung: '15', picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' },
      expect: { picketRow: '7 ft 3 1/2 in', picketRowGaps: '7 ft 8 1/2 in' },
    },
    // 24 × 70 = 1680; 23 × 30 = 690
    {
      ask: 'How long are 24 palings of 70 mm end to end with gaps of 30 mm?',
      given: { picketsHung: '24', picketWidth: '70 mm', wantedGap: '30 mm' },
      expect: { picketRow: '2,370 mm', picketRowGaps: '2,430 mm' },
    },
  ],
})
