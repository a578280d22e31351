// This file is about advice on standing posts up: order, plumb, braces, and when the tops are cut.
import type { Note } from './note.ts'

export const plumbAndBrace: readonly Note[] = [
  {
    name: 'crooked-after-the-concrete',
    title: 'A post that set out of plumb',
    text: 'While the concrete is still soft, push the post plumb, brace it on two faces again, and press the concrete back round it. Once it is hard, leave it: rocking a post loose breaks it free and makes a cup for water. A little out of plumb is taken up where rails and pickets meet the post, and only you see it. Much out, or a gate post at all: dig it out with its footing and set it anew.',
    called: [
      'plumb|crooked|leaning|leans|tilted|straight concrete|cement set|hard|cured|dry|dried|after|already',
      'post crooked|leaning|plumb|tilted concrete|cement fix|straighten|what|how',
    ],
    asks: [
      'what if the post is not plumb after the concrete set',
      'My post set crooked in the concrete, can I straighten it?',
      'how do i push a leaning post back?',
      'which way do i shift a post that is out of place?',
    ],
    from: 'common practice, no source',
    cautions: ['open-hole', 'lifting'],
  },
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
    asks: [
      'Do I cut the posts before or after setting them?',
      'when do i trim the post tops to height?',
      'do i cut the posts before or after?',
      'the post tops are all different heights, how do i get them level?',
    ],
    from: 'common practice, no source',
    cautions: ['tools', 'preserved-wood'],
  },
]
