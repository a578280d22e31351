// This file is about advice on the string: straight, true to the plan, and nobody falling over it.
import type { Note } from './note.ts'

export const layoutOnSite: readonly Note[] = [
  {
    name: 'keeping-the-line-straight',
    title: 'Keeping the line straight',
    text: 'Stretch a thin string tight between boards set beyond both ends, so that digging does not disturb it. Prop it up along a long run, and sight along it from one end with your eye low. Set end posts first and bring the others to the string. Flag it, because a string at shin height trips people.',
    called: [
      'straight keep|get|getting|make line|fence|post|row|run',
      'string|stringline stay|sag|blow|moves|tight straight|line|long|wind',
    ],
    asks: ['How do I keep the fence line straight?', 'whats the best way to get a row of posts straight?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'string-on-face-or-centre',
    title: 'String on the face or the centre',
    text: 'Set posts by a string along one face, not through their centres: you can see a face, and the string may stay up while you work. Keep it a hair off the wood, because a post that touches pushes the string, and the next post follows. Remember half a post when you set the string out from the centres on the plan.',
    called: ['string face|outside|front center go|goes|should|better', 'post touch|touching|against|push string'],
    asks: ['Does the string go on the face or the centre of the posts?', 'should the posts be touching the string?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'marking-from-one-end',
    title: 'Marking posts from one end',
    text: 'Mark all posts from one end with the tape lying still, by the running figures on your list. Stepping from post to post adds the same small mistake each time, and the last bay gets all of it. Check at the far end before you dig, while a stake is all that has to move.',
    called: [
      'mark|marking|measure|measuring|stake|step|stepping post|stake|bay end|start each|same|last|next or|from|all',
      'post|bay step|stepping|mark|marking|measure|measuring last|next or|everything start|end|all',
    ],
    asks: [
      'Do I mark the posts all from the same end, or from post to post?',
      'should i measure each bay from the last post, or everything from the start?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
]
