// A hole for a post that stands at the frost line, with stone under it.
//
//   ───┤ ├─── ground
//      │ │    frostDepth
//      └─┘
//     :::::   stoneDepth
import { calculation } from '../../calculation.ts'
import { frostDepth, holeDepth, stoneDepth } from '../../words/posts.ts'

export const holeToFrost = calculation({
  name: 'hole-to-frost',
  title: 'A hole down to the frost line, and its stone',
  answers: 'How deep to dig where the post’s foot stands at the frost line and stone lies under it.',
  needs: { frostDepth, stoneDepth },
  gives: { holeDepth },
  headlines: ['holeDepth'],
  lines: { holeDepth: ['frostDepth + stoneDepth', 'down to the frost line, and the stone below the post'] },
  work(_, { line, remark }) {
    line('holeDepth')
    remark('Tell me how tall the post stands, and I hold this against the one-third rule as well.')
  },
  sources: [
    { fact: 'the foot at the frost line, the stone below it', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole'],
  examples: [
    // 30 + 4
    {
      ask: 'Frost line at 30 in, the foot of the post stands on it with 4 in of gravel below: how deep a hole?',
      given: { frostDepth: '30 in', stoneDepth: '4 in' },
      expect: { holeDepth: '34 in' },
    },
    // 800 + 100
    {
      ask: 'The post stands at the frost line, 800 mm down, with 100 mm of gravel under it: how deep do I dig?',
      given: { frostDepth: '800 mm', stoneDepth: '100 mm' },
      expect: { holeDepth: '900 mm' },
    },
  ],
})
