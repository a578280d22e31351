// What a post of given length leaves above the ground, where it is told how much of it is buried; and the hole for it.
//
//   postLength ┃ ┃ postAbove: what is left
//          ────┃ ┃──── ground
//              └─┘ embedment
//             :::::  stoneDepth
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { embedment, holeDepth, postAbove, postLength, stoneDepth } from '../../words/posts.ts'

export const postAboveOf = calculation({
  name: 'post-above',
  title: 'What a post leaves above ground, set as deep as you say',
  answers:
    'How much of a post of given length stands above the ground when a given part of it is buried, and how deep its hole is with stone under it.',
  needs: { postLength, embedment, stoneDepth },
  may: ['stoneDepth'],
  onlyFor: { stoneDepth: ['holeDepth'] },
  gives: { postAbove, holeDepth },
  headlines: ['postAbove'],
  lines: {
    postAbove: ['postLength - embedment', 'what is not in the ground stands above it'],
    holeOfPost: ['embedment', 'nothing lies under the post'],
    holeOnStone: ['embedment + stoneDepth', 'dig for the stone as well; it does not count as depth'],
  },
  work({ postLength, embedment }, { line, has, tell, refuse, remark, system }) {
    if (!less(embedment, postLength))
      refuse(
        'embedment',
        `A ${show(postLength)} post cannot be ${show(embedment)} in the ground and stand above it. Check both measurements.`,
      )
    tell('postAbove', { ...line('postAbove'), unit: system === 'metric' ? 'mm' : 'in' })
    tell('holeDepth', line(has('stoneDepth') ? 'holeOnStone' : 'holeOfPost'))
    remark('That is what you told me, and no check: ask me whether it is deep enough, and I hold it against the rule.')
  },
  sources: [
    {
      fact: 'what is above and what is below are the whole post',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole'],
  examples: [
    // 78 − 26 = 52
    {
      ask: 'Posts 78 in long with 26 in of each in the ground: how much of the post sticks up?',
      given: { postLength: '78 in', embedment: '26 in' },
      expect: { postAbove: '52 in', holeDepth: '26 in' },
    },
    // 2100 − 700 = 1400; 700 + 150 = 850
    {
      ask: 'A post 2100 mm long, 700 mm of it below ground on 150 mm of gravel: how much of the post stands above the ground?',
      given: { postLength: '2100 mm', embedment: '700 mm', stoneDepth: '150 mm' },
      expect: { postAbove: '1,400 mm', holeDepth: '850 mm' },
    },
  ],
})
