// A post of given length, shared between ground and air by the one-third rule.
//
//        ┃ ┃   aboveByRule: two thirds of the post
//   ─────┃ ┃─────
//        └─┘   thirdOfWhole
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { show } from '../../quantities/show.ts'
import { aboveByRule, holeDepth, postLength, stoneDepth, thirdOfWhole } from '../../words/posts.ts'

export const postSplit = calculation({
  name: 'post-split',
  title: 'What a post of given length leaves above ground',
  answers: 'How much of a post of given length goes in the ground by the one-third rule, and how much is left above.',
  needs: { postLength, stoneDepth },
  usually: {
    stoneDepth: {
      value: '6 in',
      metric: '150 mm',
      because: '4 to 6 in of stone under a post is common',
      from: 'trade rule, no source',
    },
  },
  gives: { thirdOfWhole, aboveByRule, holeDepth },
  headlines: ['aboveByRule', 'thirdOfWhole', 'holeDepth'],
  together: { aboveByRule: ['aboveByRule', 'thirdOfWhole'], holeDepth: ['holeDepth', 'thirdOfWhole'] },
  lines: {
    thirdOfWhole: ['postLength / 3', 'a third of the whole post goes in the ground'],
    aboveByRule: ['postLength - thirdOfWhole', 'what is left above'],
    holeDepth: ['thirdOfWhole + stoneDepth', 'dig for the stone as well; it does not count as depth'],
  },
  work({ stoneDepth }, { line, remark }) {
    line('thirdOfWhole')
    line('aboveByRule')
    line('holeDepth')
    remark('This is the trade’s rule, not a code. Your building office may set a frost depth or a post depth.')
    remark(`The ${show(stoneDepth)} of stone is dug for, and does not count as depth.`)
  },
  sources: [{ fact: 'a third of the whole post in the ground', from: 'trade rule, no source' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole'],
  drawing: holeDrawing,
  examples: [
    // 96/3 = 32; 96 − 32 = 64 in = 5 ft 4 in; 32 + 6 = 38
    {
      ask: 'How tall will an 8 ft post stand by the one-third rule?',
      given: { postLength: '8 ft', stoneDepth: '6 in' },
      expect: { thirdOfWhole: '32 in', aboveByRule: '5 ft 4 in', holeDepth: '38 in' },
    },
    // 2400/3 = 800; 1600; 800 + 150 = 950
    {
      ask: 'What does a 2.4 m post leave above ground?',
      given: { postLength: '2.4 m', stoneDepth: '150 mm' },
      expect: { thirdOfWhole: '800 mm', aboveByRule: '1,600 mm', holeDepth: '950 mm' },
    },
  ],
})
