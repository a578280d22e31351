// A post beside pickets that are known: how long it is, with its top so far below theirs.
//
//        ╱╲  picket
//   ┌─┐ │  │ ↕ post below the top of the pickets
//   │ │ │  │
//   │ │ └──┘ ↕ foot of the pickets above the ground
//   ┤ ├ ground
//   └─┘   embedment
import { calculation } from '../../calculation.ts'
import { subtract } from '../../quantities/amount.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { footGap } from '../../words/framing.ts'
import { picketLength } from '../../words/pickets.ts'
import { embedment, postLength } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const postBelowTop = word<'length'>('postBelowTop', {
  kind: 'length',
  label: 'post below the top of the pickets',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the top of the post up to the top of the pickets.',
  ask: 'How far below the top of the pickets does the post end?',
  called: { names: ['below the pickets', 'below picket top', 'below the top of the pickets'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '24 in' },
})

export const postBesidePickets = calculation({
  name: 'post-beside-pickets',
  title: 'A post beside pickets that are known',
  answers: 'How long a post must be that ends so far below the top of its pickets.',
  needs: { picketLength, footGap, postBelowTop, embedment },
  gives: { postLength },
  headlines: ['postLength'],
  lines: {
    postLength: [
      'footGap + picketLength - postBelowTop + embedment',
      'up to the top of the pickets, down to the post, and what is in the ground',
    ],
  },
  work({ picketLength, footGap, postBelowTop }, { line, refuse, remark }) {
    const shows = {
      ...picketLength,
      amount: subtract(picketLength.amount, subtract(postBelowTop.amount, footGap.amount)),
    }
    if (!less(zero('length', 'in'), shows))
      refuse(
        'postBelowTop',
        `A post that ends ${show(postBelowTop)} below the top of a ${show(picketLength)} picket does not show. Check both.`,
      )
    line('postLength')
    remark('Buy the next length that is sold, and cut the tops to a string when the posts stand.')
  },
  sources: [{ fact: 'a post is as long as its parts together', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole'],
  examples: [
    // 2 + 42 − 1 + 24 = 67 in
    {
      ask: 'Pickets 42 in long, their feet 2 in above the ground, the post ends 1 in below the pickets, 24 in in the ground: how long is the post?',
      given: { picketLength: '42 in', footGap: '2 in', postBelowTop: '1 in', embedment: '24 in' },
      expect: { postLength: '5 ft 7 in' },
    },
    // 60 + 1100 − 40 + 600
    {
      ask: 'Palings 1100 mm long and 60 mm above the ground, post 40 mm below the top of the palings, 600 mm in the ground. Post length?',
      given: { picketLength: '1100 mm', footGap: '60 mm', postBelowTop: '40 mm', embedment: '600 mm' },
      expect: { postLength: '1,720 mm' },
    },
  ],
})
