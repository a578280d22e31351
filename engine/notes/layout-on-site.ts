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
    asks: [
      'How do I keep the fence line straight?',
      'whats the best way to get a row of posts straight?',
      'my string sags, what do i do?',
      'how do i keep a string straight over a hump?',
    ],
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
  {
    name: 'moving-a-corner-square',
    title: 'A corner that is not square',
    text: 'A picket fence does not mind a corner that is out by a hand, and neither does the eye: what must be right is the lot line. Where it should be square, leave the longest side alone and swing the other about the corner post until both diagonals agree. The longer diagonal has the corners that must come in. Measure again before you dig, because one tape that was read wrong is more common than a crooked yard.',
    called: [
      'corner square out|wrong|shift|move|matter|which|fix|right',
      'diagonal|diagonals differ|longer|unequal|agree move|shift|which|what',
    ],
    asks: [
      'My corner is out of square, does it matter?',
      'which way do I move a post to get the corner square?',
      'the diagonals differ, what do I shift?',
      'the corner is not a right angle, is that a problem?',
      'the diagonals do not match, which post do i move?',
    ],
    onward: [
      {
        after: ['rectangle-diagonals', 'square-corner', 'yard-closure'],
        asks: [
          'which way do i shift it?',
          'does it matter?',
          'what do i do about that?',
          'how do i put it right?',
          'which one is wrong?',
        ],
      },
    ],
    from: 'Derived from the rectangle; how much matters is common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'square-corner-alone',
    title: 'A square corner without a helper',
    text: 'Drive a nail at the corner and hook the tape on it. Any triangle whose sides are as three to four to five is square, in feet, metres or lengths of a stick; the larger, the better. Swing one mark on the ground for each side and drive a stake where they cross. A long mason’s square only serves to begin with.',
    called: [
      'square|right corner|angle alone|without|helper|myself|trick|easy',
      'three four five|triangle',
      '3 4 5|metric|triangle',
    ],
    asks: [
      'How do I get a square corner without a helper?',
      'does the triangle trick work in metric?',
      'how do I set out a right angle by myself?',
    ],
    from: 'Derived: the converse of Pythagoras; needs no table',
    cautions: [],
  },
  {
    name: 'something-in-the-way',
    title: 'Something in the way of a post',
    text: 'Nothing is set over a manhole, a meter, a valve or a drain: whoever owns it must get at it, and the lid must open. Move the post along the string and share the change between both bays, span it with a longer rail, or put a gate or a panel that lifts out there. Ask the owner how much room they want.',
    called: [
      'manhole|hydrant|meter|drain|valve|utility|box|culvert way|past|over|round|around|post|fence',
      'gas|water|electric meter fence|post|near|away|clear|clearance',
    ],
    asks: [
      'How do I get the fence past a manhole cover?',
      'there is a drain where a post should go',
      'does the fence have to be away from the gas meter?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'fence-along-a-drive',
    title: 'A fence along a drive',
    text: 'Keep it back by the width of a door or a mirror, and further where a car turns: wheels follow, bumpers hang over. Set the corner nearest the road stouter and deeper, or put a rock before it. Snow that is ploughed leans on it too. Low pickets near the road let drivers and children see each other.',
    called: [
      'drive|driveway|parking fence|post along|beside|next|close|near|distance|matter',
      'snow|plough|plow fence pile|piled|ploughed|plowed|push',
    ],
    asks: [
      'The fence runs along the driveway, does that matter?',
      'how close to the drive can a fence be?',
      'snow gets piled against the fence, will it hold?',
      'the plough throws snow on the fence',
    ],
    from: 'common practice, no source',
    cautions: ['local-code'],
  },
]
