// This file is about advice on setting posts: gravel or concrete, plumbing, bracing, and how long to wait.
import type { Note } from './note.ts'

export const settingPosts: readonly Note[] = [
  {
    name: 'gravel-or-concrete',
    title: 'Gravel or concrete for the posts',
    text: 'Where the soil drains and holds its shape, line posts stand well in tamped gravel: water runs away from the wood, and a post can be pulled and reset. Use concrete for gate, corner and end posts, and in loose sand or soft fill. In heavy clay neither stays dry: dig below the wet layer, put {{stone}} of stone under the post, and slope the top so that water runs off. Never close the hole under the post with concrete.',
    figures: { stone: { label: 'stone under the post', value: '6 in', metric: '150 mm' } },
    called: [
      'gravel|stone|rock concrete|cement post|hole|soil|better|or',
      'concrete|cement really|necessary|need post',
      'set|setting post gravel|stone',
    ],
    asks: [
      'Should I set my posts in gravel or concrete?',
      'Is concrete really necessary for fence posts?',
      'gravel vs concrete in clay soil, which is better for posts?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities', 'wet-cement', 'dust'],
  },
]
