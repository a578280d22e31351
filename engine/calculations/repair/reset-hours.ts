// How long it takes to set leaning posts straight, at the pace of the first.
//
//   brace  →  unfasten  →  dig out  →  plumb  →  fill and tamp  →  fasten        one post, timed; the others alike
import { calculation } from '../../calculation.ts'
import { dayHours } from '../../words/digging.ts'
import { resetDays, resetHours, resetPosts, resetTime } from '../../words/repair-work.ts'

export const resettingHours = calculation({
  name: 'reset-hours',
  title: 'Hours to set leaning posts straight',
  answers:
    'How many hours and days it takes to dig out leaning posts and set them straight, at the pace of your first.',
  needs: { resetPosts, resetTime, dayHours },
  onlyFor: { dayHours: ['resetDays'] },
  gives: { resetHours, resetDays },
  headlines: ['resetHours', 'resetDays'],
  together: { resetHours: ['resetHours'], resetDays: ['resetDays', 'resetHours'] },
  lines: {
    resetHours: ['resetPosts * resetTime', 'one post after the other'],
    resetDays: ['ceil(resetHours / dayHours)', 'a day begun counts'],
  },
  work(_given, { line, has, remark, table }) {
    line('resetHours')
    if (has('dayHours')) line('resetDays')
    remark(
      'It is your own pace with the hands you had. A post whose old concrete has to be broken up takes two or three times as long as one that stands in earth. Concrete that has to harden before the braces come off is not in it.',
    )
    table({
      title: 'One post, step by step',
      columns: [
        { label: 'step', unit: '' },
        { label: 'what to mind', unit: '' },
      ],
      rows: [
        ['marks', 'the digging notice holds for an old hole too'],
        ['brace', 'both neighbours, before anything is loosened'],
        ['unfasten', 'rails on both sides, or they pull the post back'],
        ['dig out', 'the low side first; look for rot a hand below the ground'],
        ['plumb', 'two faces; a touch past plumb where the soil gives'],
        ['fill', 'in layers, tamped; crown the top so that water runs off'],
        ['fasten', 'rails again, brace off once it holds'],
      ],
    })
  },
  sources: [
    { fact: 'hours = posts × time for one', from: 'Derived here; needs no table.' },
    { fact: 'the steps, and what to mind', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'lifting', 'structure', 'overhead-lines'],
  examples: [
    // 5 × 2.5 = 12.5 h; /6 = 2.08 → 3 days
    {
      ask: 'How many days to straighten 5 leaning posts at 2.5 hours a post, 6 hours a day?',
      given: { resetPosts: '5', resetTime: '2.5 h', dayHours: '6 h' },
      expect: { resetHours: '12.5 hours', resetDays: '3 resetting days' },
    },
    // 3 × 90 min = 4.5 h
    {
      ask: 'How long to reset 3 leaning posts if the first one took 90 minutes?',
      given: { resetPosts: '3', resetTime: '90 minutes' },
      expect: { resetHours: '4.5 hours' },
    },
  ],
})
