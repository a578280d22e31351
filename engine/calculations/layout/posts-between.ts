// Two posts that stand already, and the new ones that go between them.
//
//   ●━━━━○━━━━○━━━━○━━━━●      four bays: three new posts, one less than the bays
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, runLength, widestBay } from '../../words/bays.ts'
import { word } from '../../words/word.ts'

const newPosts = word<'count'>('newPosts', {
  kind: 'count',
  noun: 'post',
  label: 'new posts between the two',
  measure: 'Those that are set; the two that stand are none of them.',
  ask: 'How many new posts are there?',
  called: { asks: ['how many new posts between', 'how many posts between the old ones', 'new posts between'] },
})

export const postsBetweenOld = calculation({
  name: 'posts-between',
  title: 'New posts between two that stand',
  answers: 'How many new posts go between two that stand.',
  needs: { runLength, widestBay },
  gives: { newPosts, bays },
  headlines: ['newPosts'],
  together: { newPosts: ['newPosts', 'bays'] },
  lines: {
    bays: ['ceil(runLength / widestBay)', 'no bay may be wider, so any left over makes one more'],
    newPosts: ['bays - 1', 'one less than the bays, since both ends have their post'],
    eachBay: ['runLength / bays', 'shared equally'],
  },
  work({ runLength, widestBay }, { line, cite, refuse, remark }) {
    if (less(runLength, widestBay))
      refuse('runLength', `${show(runLength)} is less than ${show(widestBay)}: no post is needed between the two.`)
    line('bays')
    line('newPosts')
    const each = line('eachBay')
    remark(
      `All bays alike, each is ${cite(each, 'each bay')} from post centre to post centre. I took the length from the middle of one standing post to the middle of the other. If you measured between their faces, add one post’s width first: near a whole number of bays it may make one more.`,
    )
  },
  sources: [
    {
      fact: 'between two posts stands one less than there are bays',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 20/2.5 = 8 bays, 8 − 1
    {
      ask: 'The two end posts stay and stand 20 m apart. At most 2.5 m apart, how many new posts between them?',
      given: { runLength: '20 m', widestBay: '2.5 m' },
      expect: { newPosts: '7 posts', bays: '8 bays' },
    },
    // 50/8 = 6.25, so 7 bays; 50/7 = 7 1/7 ft
    {
      ask: 'Both end posts are sound and stay. The side is 50 ft long, posts no more than 8 ft apart: how many new posts in between?',
      given: { runLength: '50 ft', widestBay: '8 ft' },
      expect: { newPosts: '6 posts', bays: '7 bays' },
    },
  ],
})
