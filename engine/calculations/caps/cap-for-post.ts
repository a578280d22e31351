// How big a cap is that stands past its post by as much all round.
//
//   ┌──────────┐ ─┬─ overhang
//   │  ┌────┐  │ ─┴─
//   │  │post│  │       cap = post and an overhang on both sides
//   │  └────┘  │
//   └──────────┘
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { capOverhang, capSize } from '../../words/caps.ts'
import { postWidth } from '../../words/posts.ts'

export const capForPost = calculation({
  name: 'cap-for-post',
  title: 'The cap for a post',
  answers: 'How big a square cap must be to stand past its post by so much all round.',
  needs: { postWidth, capOverhang },
  gives: { capSize },
  headlines: ['capSize'],
  joins: true,
  lines: { capSize: ['postWidth + 2 * capOverhang', 'an overhang on the one side and on the other'] },
  work({ postWidth }, { line, remark }) {
    line('capSize')
    remark(
      `That is for posts of ${show(postWidth)}. Measure yours: rough or wet ones are bigger, and the biggest decides.`,
    )
  },
  sources: [{ fact: 'cap = post + twice the overhang', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 3 1/2 + 2 × 1 = 5 1/2
    {
      ask: 'What size cap for a 3 1/2 in post with an overhang of 1 in all round?',
      given: { postWidth: '3 1/2 in', capOverhang: '1 in' },
      expect: { capSize: '5 1/2 in' },
    },
    // 90 + 2 × 25 = 140
    {
      ask: 'Post 90 mm, cap 25 mm past the post on every side: how big a cap?',
      given: { postWidth: '90 mm', capOverhang: '25 mm' },
      expect: { capSize: '140 mm' },
    },
  ],
})
