// The post between two panels of a fence that steps down a slope.
//
//   ┃▔▔▔▔▔▔▔┃ ─┬─
//   ┃       ┃  │ panel           the ground at that post is a step lower than at the panel's high end,
//   ┃_______┃ ─┼─                so under the higher panel stand the gap at its high end and the step
//   ▔▔──__  ┃  │ gap + step
//         ▔▔┃ ─┼─ ground
//           ┃ ─┴─ in the ground
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { embedment } from '../../words/posts.ts'
import { highEndGap, stepEach } from '../../words/sloping-fence.ts'
import { endStepPost, panelHeight, stepPost } from '../../words/step-posts.ts'

export const postBetweenSteps = calculation({
  name: 'post-between-steps',
  title: 'Posts of a stepped fence',
  answers: 'How long a post between two panels must be where the fence steps down a slope, and the one at the top.',
  needs: { panelHeight, highEndGap, stepEach, embedment },
  gives: { stepPost, endStepPost },
  headlines: ['stepPost'],
  together: { stepPost: ['stepPost', 'endStepPost'] },
  lines: {
    stepPost: [
      'embedment + highEndGap + stepEach + panelHeight',
      'the higher panel ends here, over ground that has fallen by the step',
    ],
    endStepPost: ['embedment + highEndGap + panelHeight', 'the first panel begins here, at its high end'],
  },
  work({ stepEach }, { line, remark }) {
    line('stepPost')
    line('endStepPost')
    remark(
      `The post at the foot of the run is as long as one between two panels. The lower panel is fixed ${show(stepEach)} below the higher one. Add what you want to stand above the panels, and buy the next longer length.`,
    )
  },
  sources: [
    { fact: 'post = in the ground + gap + step + panel', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 30 + 2 + 6 + 48 = 86; 30 + 2 + 48 = 80
    {
      ask: 'Stepped fence: panels 48 in tall, 2 in gap at the high end, step at each post 6 in, posts 30 in the ground: how long is a post between two panels?',
      given: { panelHeight: '48 in', highEndGap: '2 in', stepEach: '6 in', embedment: '30 in' },
      expect: { stepPost: '86 in', endStepPost: '80 in' },
    },
    {
      ask: 'Panels 1000 mm high, 40 mm gap at the high end, each step 150 mm, 600 mm of post in the ground: length of the post between two panels?',
      given: { panelHeight: '1000 mm', highEndGap: '40 mm', stepEach: '150 mm', embedment: '600 mm' },
      expect: { stepPost: '1,790 mm', endStepPost: '1,640 mm' },
    },
  ],
})
