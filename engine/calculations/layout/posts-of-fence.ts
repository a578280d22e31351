// The posts of a whole fence: every run's own, with each corner post counted once.
//
//   ●──●──●──◆──●──●      5 posts… the corner post ◆ ends one run and begins the next:
//            │            it stands in both counts, and is dug once
import { calculation } from '../../calculation.ts'
import { toNumber } from '../../quantities/amount.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { bays, runEnds } from '../../words/bays.ts'
import { cornersShared } from '../../words/fence-sides.ts'
import { cornerPostCount, endPostCount, gatePostCount, linePostCount, runBays, runPosts } from '../../words/fence.ts'
import { posts } from '../../words/posts.ts'

const listed = (all: readonly string[]): string =>
  all.length > 1 ? `${all.slice(0, -1).join(', ')} and ${all.at(-1)}` : (all[0] ?? '')

export const postsOfFence = calculation({
  name: 'posts-of-fence',
  title: 'Posts and bays of the whole fence',
  answers:
    'How many bays and posts the whole fence has, with each corner post counted once, and how many of each kind.',
  needs: { runPosts, runBays, cornersShared, gatePostCount, cornerPostCount, endPostCount, runEnds },
  usually: {
    runEnds: {
      value: 'centres',
      because: 'nobody said that the last run comes back to the first; if it does, say that the fence is closed',
      from: 'decided here',
    },
  },
  gives: { posts, bays, linePostCount },
  headlines: ['posts'],
  together: { posts: ['posts', 'bays', 'linePostCount'], bays: ['bays', 'posts'] },
  ofTheFence: true,
  lines: {
    posts: ['sum(runPosts) - cornersShared', 'every run’s posts; each shared post was counted twice and is dug once'],
    bays: ['sum(runBays)', 'every run’s'],
    linePostCount: ['posts - gatePostCount - cornerPostCount - endPostCount', 'all that stand nowhere special'],
  },
  work(_given, { line, rows, cite, remark }) {
    line('posts')
    line('bays')
    line('linePostCount')
    const kinds = (['gatePostCount', 'cornerPostCount', 'endPostCount', 'linePostCount'] as const)
      .map((name) => [rows(name)[0] as Quantity, name.replace('PostCount', '')] as const)
      .filter(([count]) => toNumber(count.amount) > 0)
    remark(
      `Of them ${listed(kinds.map(([count, kind]) => `${cite({ ...count, unit: 'ratio', kind: 'number' }, `${kind} posts`)} ${kind}`))} posts.`,
    )
    if (toNumber((rows('gatePostCount')[0] as Quantity).amount) > 0)
      remark('A post that stands at a corner and beside a gate is counted as a gate post.')
  },
  sources: [
    { fact: 'runs that meet share the post they meet at', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 6 + 10 + 6 − 2 = 20; 20 − 2 − 2 − 2 = 14
    {
      ask: 'Runs with 6, 10 and 6 posts that share two corners, a gate in the middle run: how many posts?',
      given: {
        runPosts: ['6', '10', '6'],
        runBays: ['5', '8', '5'],
        cornersShared: '2',
        gatePostCount: '2',
        cornerPostCount: '2',
        endPostCount: '2',
      },
      expect: { posts: '20 posts', bays: '18 bays', linePostCount: '14 posts' },
    },
    // 9 + 7 + 9 + 7 − 4 = 28, closed; 28 − 0 − 4 − 0 = 24
    {
      ask: 'A closed yard with runs of 9, 7, 9 and 7 posts: how many posts?',
      given: {
        runPosts: ['9', '7', '9', '7'],
        runBays: ['8', '6', '8', '6'],
        cornersShared: '4',
        gatePostCount: '0',
        cornerPostCount: '4',
        endPostCount: '0',
      },
      expect: { posts: '28 posts', bays: '28 bays', linePostCount: '24 posts' },
    },
  ],
})
