// The crown of concrete that sheds water from a post.
//
//        ┃ ┃
//     ▁▄▆┃ ┃▆▄▁     from the hole's rim, round or square, up to the post: a frustum, less the post
import { calculation } from '../../calculation.ts'
import { crownDrawing } from '../../drawings/crown.ts'
import { refuseUnfitPost } from '../../holes.ts'
import { show } from '../../quantities/show.ts'
import { crownConcrete, crownRise } from '../../words/holes.ts'
import { holeDiameter, holeShape, postWidth } from '../../words/posts.ts'

export const crownedTop = calculation({
  name: 'crowned-top',
  title: 'A crown of concrete round the post',
  answers: 'How much concrete the crown above the ground takes that sheds water from a post.',
  needs: { holeDiameter, holeShape, crownRise, postWidth },
  gives: { crownConcrete },
  headlines: ['crownConcrete'],
  called: ['crown', 'crowned', 'dome', 'domed'],
  lines: {
    collar: ['sqrt(4 * postWidth ^ 2 / pi)', 'a round post of the same area, for the top of the frustum'],
    frustum: [
      'pi * crownRise / 12 * (holeDiameter ^ 2 + holeDiameter * collar + collar ^ 2)',
      'a cone cut off at the post',
    ],
    squareFrustum: [
      'crownRise / 3 * (holeDiameter ^ 2 + holeDiameter * postWidth + postWidth ^ 2)',
      'a pyramid cut off at the post',
    ],
    crownConcrete: ['frustum - postWidth ^ 2 * crownRise', 'less the post itself'],
  },
  work({ holeDiameter, holeShape, postWidth, crownRise }, { line, put, refuse, remark }) {
    refuseUnfitPost(postWidth, holeDiameter, holeShape, refuse)
    if (holeShape === 'square') put('frustum', line('squareFrustum'))
    else for (const name of ['collar', 'frustum']) line(name)
    line('crownConcrete')
    remark(
      `It is little beside a bag. Trowel it ${show(crownRise)} up to the post, and seal the joint when it opens. Where frost lifts, keep the concrete below the ground and the crown of soil instead.`,
    )
  },
  sources: [
    {
      fact: 'frustum = π h (D² + D d + d²) / 12, the square post taken as a round one of the same area; h (D² + D d + d²) / 3 over a square hole',
      from: 'Solid geometry; derived here from the sketch.',
    },
  ],
  cautions: ['wet-cement', 'dust'],
  drawing: crownDrawing,
  examples: [
    // collar √(49/π) = 3.9493; π/12 × (144 + 47.39 + 15.6) = 54.19; − 12.25 = 41.94 in³ = 0.02427 ft³
    {
      ask: 'How much concrete for the crown, 1 in high, round a 3 1/2 in post in a 12 in hole?',
      given: { holeDiameter: '12 in', crownRise: '1 in', postWidth: '3 1/2 in' },
      expect: { crownConcrete: '0.02427 ft³' },
    },
    // collar 101.55; π × 25/12 × (90000 + 30466 + 10313) − 8100 × 25 = 855,946 − 202,500 = 0.6534 L
    {
      ask: 'Concrete for the dome: 300 mm hole, 90 mm post, crowned 25 mm?',
      given: { holeDiameter: '300 mm', crownRise: '25 mm', postWidth: '90 mm' },
      expect: { crownConcrete: '0.6534 L' },
    },
    // square: 1/3 × (144 + 42 + 12.25) = 66.083; − 12.25 = 53.833 in³ = 0.03115 ft³
    {
      ask: 'How much concrete for the crown, 1 in high, round a 3 1/2 in post in a 12 in square hole?',
      given: { holeDiameter: '12 in', holeShape: 'square', crownRise: '1 in', postWidth: '3 1/2 in' },
      expect: { crownConcrete: '0.03115 ft³' },
    },
  ],
})
