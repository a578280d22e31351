// A run and the posts that are there for it: how far apart they stand when all of them are used.
//
//   ●────●────●────●────●      five posts, four bays: run ÷ 4
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres, bays, runEnds, runLength } from '../../words/bays.ts'
import { opening } from '../../words/pickets.ts'
import { posts, postWidth } from '../../words/posts.ts'

export const postsGiven = calculation({
  name: 'posts-given',
  title: 'A given number of posts along a run',
  answers:
    'How far apart a given number of posts stand along a run, all bays alike, and how much is clear between them.',
  needs: { runLength, posts, runEnds, postWidth },
  gives: { bayCentres, opening, bays },
  headlines: ['bayCentres', 'opening'],
  together: { bayCentres: ['bayCentres', 'bays', 'opening'], opening: ['opening', 'bayCentres'] },
  called: ['use all the posts', 'use all of them', 'use all of em', 'posts already'],
  locals: { centresRun: 'length', spaces: 'count' },
  lines: {
    centresClear: ['runLength - postWidth', 'half a post stands at each end, so the centres are one post width closer'],
    baysOpen: ['posts - 1', 'one less than the posts, since both ends have one'],
    baysLoop: ['posts', 'the last space ends at the first post'],
    bayCentres: ['centresRun / spaces', 'shared equally'],
    opening: ['bayCentres - postWidth', 'between post faces'],
  },
  work({ runLength, runEnds, posts: count, postWidth }, { line, put, tell, refuse, remark }) {
    const between = put('centresRun', runEnds === 'walls' || runEnds === 'outside' ? line('centresClear') : runLength)
    if (compare(count.amount, exact(2)) === -1)
      refuse('posts', 'One post has no other to stand apart from. Give two or more.')
    if (!less(zero('length', 'in'), between))
      refuse('runLength', `A run of ${show(runLength)} is no longer than a post is wide. Check the length.`)
    const spaces = put('spaces', line(runEnds === 'loop' ? 'baysLoop' : 'baysOpen'))
    tell('bays', { ...spaces, kind: 'count', unit: 'bay' })
    const each = line('bayCentres')
    if (!less(postWidth, each))
      refuse(
        'posts',
        `${show(count)} stand ${show(each)} apart, and ${show(postWidth)} posts leave nothing between them.`,
      )
    line('opening')
    remark('No gate is reckoned in. Mark every post from one end, so that no error adds up.')
  },
  sources: [
    {
      fact: 'an open run has one space less than it has posts; a closed loop has as many',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 9 bays: 81/9 = 9 ft; less 3 1/2 in = 104 1/2
    {
      ask: 'I have 10 posts for a run of 81 ft: how far apart if I use all of them?',
      given: { runLength: '81 ft', posts: '10' },
      expect: { bays: '9 bays', bayCentres: '9 ft', opening: '104 1/2 in' },
    },
    // 7 bays: 12,600/7 = 1,800; less 90
    {
      ask: 'I have 8 posts for a line of 12.6 m: how far apart do they stand?',
      given: { runLength: '12.6 m', posts: '8' },
      expect: { bays: '7 bays', bayCentres: '1,800 mm', opening: '1,710 mm' },
    },
  ],
})
