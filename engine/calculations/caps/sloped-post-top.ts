// A post's top cut aslant, so that water runs off.
//
//      ╱│     drop = width × tan(angle), face = width ÷ cos(angle)
//    ╱  │
import { calculation } from '../../calculation.ts'
import { postWidth } from '../../words/posts.ts'
import { topDrop, topFace, topSlope } from '../../words/caps.ts'

export const slopedPostTop = calculation({
  name: 'sloped-post-top',
  title: 'A sloping post top',
  answers: 'How much lower one side of a post’s top is when it is cut aslant to shed water, and the length of the cut.',
  needs: { postWidth, topSlope },
  gives: { topDrop, topFace },
  headlines: ['topDrop'],
  together: { topDrop: ['topDrop', 'topFace'], topFace: ['topFace', 'topDrop'] },
  called: ['sloped top', 'slope the tops', 'shed cut', 'shed water', 'sloped post top', 'bevel the post'],
  lines: {
    topDrop: ['postWidth * tan(topSlope)', 'across the width of the post'],
    topFace: ['postWidth / cos(topSlope)', 'along the cut'],
  },
  work(_given, { line, remark }) {
    line('topDrop')
    line('topFace')
    remark(
      'Slope it away from the pickets, mark all four sides, and saw from both. Brush preservative on the cut end grain.',
    )
  },
  sources: [{ fact: 'drop = width × tan(angle)', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools', 'preserved-wood'],
  examples: [
    // 3.5 × tan 15° = 0.93782; 3.5 ÷ cos 15° = 3.62347
    {
      ask: 'How much lower is one side of a 3 1/2 in post with the sloped top cut at 15 degrees?',
      given: { postWidth: '3 1/2 in', topSlope: '15 deg' },
      expect: { topDrop: '0.9378 in', topFace: '3.623 in' },
    },
    // 90 × tan 20° = 32.76
    {
      ask: 'Slope the post tops of 90 mm posts at an angle of 20 degrees: how far down do I mark?',
      given: { postWidth: '90 mm', topSlope: '20 deg' },
      expect: { topDrop: '32.76 mm' },
    },
  ],
})
