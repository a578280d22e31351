// This file is about advice on standing posts up: order, plumb, braces, and when the tops are cut.
import type { Note } from './note.ts'

export const plumbAndBrace: readonly Note[] = [
  {
    name: 'order-of-setting-posts',
    title: 'Which posts to set first',
    text: 'Set the end, corner and gate posts first, plumb and braced, and stretch the string between them. Then set the line posts to the string. Both posts of a gate are set on the same day, held at their distance top and bottom by a board across. A crooked end post makes every post between crooked.',
    called: ['which|order post first|start set|setting|goes|go', 'corner|end set|setting post first|order|before line'],
    asks: ['Which posts do I set first?', 'do i set the corner posts before the line posts?'],
    from: 'common practice, no source',
    cautions: ['open-hole'],
  },
  {
    name: 'plumb-on-two-faces',
    title: 'Plumb on two faces',
    text: 'Check on two faces that meet at a corner: one face can be plumb while the post leans the other way. Use a long level, or a plumb line, because a short level rides on every bump. Check again after filling, after tamping, and before you walk away. On a bent post, average it: hold the straight part plumb.',
    called: [
      'plumb|level|upright|vertical face|side|way both|two|one|check post|enough',
      'check|get|keep|make post plumb|upright|vertical how|while|when|both|level',
    ],
    asks: ['How do I check that a post is plumb?', 'do i check both faces of the post with the level?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'bracing-a-post',
    title: 'Bracing a post',
    text: 'Use two braces on faces at right angles, each screwed to a stake and to the post at about two thirds of its height. Screw the stakes first, plumb the post, then screw the top, one face at a time. Keep braces out of the way of the string. Mark the stakes with a rag: people trip on them.',
    called: [
      'brace|bracing|prop|support|hold post while|plumb|upright how',
      'brace|bracing|temporary post stake|plumb|upright|way|best',
    ],
    asks: ['How do I brace a post while the concrete sets?', 'how do i hold posts upright until they set?'],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'cutting-tops-after-setting',
    title: 'Cutting posts after they stand',
    text: 'After, nearly always: no hole comes out exactly as deep as planned. Stretch a string at the cut height from end post to end post, mark each post on all its faces with a square, and cut with the saw held level. Stand on something firm, because a saw at shoulder height is a poor place to lose your footing. Slope or cap the cut and brush it with preservative.',
    called: [
      'cut|cutting|trim|saw|trimmed post before|after|first setting|set|top|height|length',
      'cut|cutting|trim|saw post top|height|level when|string|same|all',
    ],
    asks: ['Do I cut the posts before or after setting them?', 'when do i trim the post tops to height?'],
    from: 'common practice, no source',
    cautions: ['tools', 'preserved-wood'],
  },
]
