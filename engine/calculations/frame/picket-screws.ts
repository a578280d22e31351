// Screws for the pickets, and the boxes they come in.
import { calculation } from '../../calculation.ts'
import { picketCrossings } from '../../words/fence.ts'
import { boxCount, screwBoxes, screws, screwsEachJoint, screwSpare, screwsToBuy } from '../../words/screws.ts'
import { rails } from '../../words/rails.ts'
import { picketsHung } from '../../words/picket-count.ts'

export const picketScrews = calculation({
  name: 'picket-screws',
  title: 'Screws for the pickets',
  answers: 'How many screws the pickets take, with spares, and how many boxes.',
  needs: { picketsHung, picketCrossings, rails, screwsEachJoint, screwSpare, boxCount },
  onlyFor: { boxCount: ['screwBoxes'] },
  may: ['picketCrossings', 'boxCount'],
  gives: { screws, screwsToBuy, screwBoxes },
  headlines: ['screwsToBuy', 'screwBoxes'],
  together: { screws: ['screwsToBuy', 'screws', 'screwBoxes'], screwBoxes: ['screwBoxes', 'screwsToBuy', 'screws'] },
  lines: {
    screws: ['picketsHung * rails * screwsEachJoint', 'so many wherever a picket crosses a rail'],
    screwsOfAll: ['picketCrossings * screwsEachJoint', 'so many wherever a picket crosses a rail'],
    screwsToBuy: ['ceil(screws * (1 + screwSpare))', 'spares added, rounded up once'],
    screwBoxes: ['ceil(screwsToBuy / boxCount)', 'whole boxes'],
  },
  work(_given, { line, has, tell, remark }) {
    if (has('picketCrossings')) tell('screws', { ...line('screwsOfAll'), kind: 'count', unit: 'screw' })
    else line('screws')
    line('screwsToBuy')
    if (has('boxCount')) line('screwBoxes')
    remark(
      'Boxes sold by weight: count what is in a pound or a kilogram once, and give me that for the box. In treated wood and cedar use stainless or coated screws made for it; bright ones stain and rust.',
    )
  },
  sources: [{ fact: 'screws = pickets × rails × screws at each crossing', from: 'common practice, no source' }],
  cautions: ['tools'],
  examples: [
    // 60 × 2 × 2 = 240; × 1.1 = 264; /100 → 3
    {
      ask: 'How many screws for 60 pickets on 2 rails with 2 screws at each rail, 10 % spare, in boxes of 100?',
      given: { picketsHung: '60', rails: '2', screwsEachJoint: '2', screwSpare: '10 %', boxCount: '100' },
      expect: { screws: '240 screws', screwsToBuy: '264 screws', screwBoxes: '3 boxes' },
    },
    // 215 × 3 × 2 = 1290; × 1.1 = 1419
    {
      ask: '215 pickets and 3 rails: how many screws?',
      given: { picketsHung: '215', rails: '3' },
      expect: { screws: '1,290 screws', screwsToBuy: '1,419 screws' },
    },
  ],
})
