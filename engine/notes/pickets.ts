// This file is about advice on hanging pickets: the stick, the order, the faces, and wet wood.
import type { Note } from './note.ts'

export const pickets: readonly Note[] = [
  {
    name: 'one-stick-or-several',
    title: 'One story stick or several',
    text: 'One stick serves all bays that are alike to a hair. Measure each bay between its posts, at both rails, before you trust it: where bays differ, make one stick for each width, or one for the shortest and share out the rest. Write on every stick which bay it is for and which end is the gate end. Never make a stick from the last stick: copy the first.',
    called: [
      'stick one|single|same|several|different bay enough|need|or|can|should',
      'storystick one|single|same|several|different|each bay',
    ],
    asks: ['Do I need a different story stick for each bay?', 'is one stick enough for bays that are not the same?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'stick-or-spacer',
    title: 'Story stick or spacer block',
    text: 'A spacer block is quick, and its error grows: a block a hair fat is off by the width of a finger at the end of a long bay. A stick with all the marks from one end keeps every picket where it belongs. Use the stick for the marks, and a block only to hold a picket while you screw. Check with the tape at the middle of the bay.',
    called: [
      'spacer|block|jig stick|story or|better|best|accurate',
      'spacer|block|jig picket|gap|bay drift|creep|off|uneven|accurate why|stop',
    ],
    asks: ['Is a spacer block or a story stick better?', 'why does my spacer drift off by the end of the bay?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'wet-pickets-butt-or-gap',
    title: 'Hanging wet pickets',
    text: 'Wet pickets shrink in width and gaps grow. In a fence that should be closed, push wet boards tight together and the gaps come by themselves; dry boards want a little room, or they swell and buckle. With open pickets, set the gap for the dry picket, and judge by a board you have dried indoors. Let the very wet ones dry in the stack first.',
    called: [
      'wet|green|damp board|picket|wood|lumber butt|tight|touching|together or|leave|should',
      'wet|green board|picket hang|install|put|nail wait|first|ok|should',
    ],
    asks: [
      'My pickets are still wet, do I butt them tight or leave a gap?',
      'should i hang wet pickets now or let them dry first?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'which-face-of-a-picket',
    title: 'Which face of a picket goes out',
    text: 'The better face goes out, and that settles most boards. A drying board turns hollow on the side that was nearer the bark, so in wet flat boards put that side to the rail: the edges then stay tight. With one rough face and one smooth, smooth out for paint, rough out for stain, which soaks in better there.',
    called: [
      'bark|heart|ring|grain picket|board side|face|out|outward',
      'rough|smooth picket|board face|side out|outward|outside|front',
      'face|side picket|board out|outward which bark|heart|rough|smooth|better|goes',
    ],
    asks: [
      'Which face of the picket goes out, bark side or heart side?',
      'rough side or smooth side out on the boards?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'order-of-hanging',
    title: 'Where to start hanging',
    text: 'Mark the whole bay before you hang anything. Hang the first picket at each post, plumb, stretch a string along their tops, and fill in from one end to the marks. Put the level on every fourth or fifth one, because rails are seldom straight. Let the bottoms fall where they will and the tops follow the string.',
    called: [
      'picket|paling even|level|same|line|straight height|top|tops how|keep|get',
      'start|begin|first|from hang|hanging|install|mount picket|board middle|end|center|which|where|how',
      'top picket straight|line|level keep|hanging',
    ],
    asks: [
      'Do I start hanging pickets from the middle or from an end?',
      'how do i keep the picket tops in a straight line?',
      'do I start with a picket at the post or with a gap?',
    ],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'screws-at-each-rail',
    title: 'Fixings at each rail',
    text: 'Two at each rail for a picket, side by side but not in the same line of the grain, so that it neither turns nor splits. A narrow one may do with a single screw in its middle, which lets it move. Wide boards want theirs a third in from each edge: at the very edges a drying board tears itself apart.',
    called: [
      'single|one screw|nail rail|crossing enough|ok|okay',
      'where|place|position screw|nail picket|board edge|go|put',
    ],
    asks: ['Is a single screw at each rail enough?', 'where do the screws go in the picket, near the edges?'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'gap-at-the-post',
    title: 'The gap against a post',
    text: 'Begin and end each bay with a gap, as wide as the others: it looks even, it lets the wood swell, and no water stands between picket and post. A picket that touches a post stays wet there, and both rot. Where pickets run across the front of the posts there is no such gap, and one picket may stand over a post.',
    called: [
      'picket|slat|board touch|touching|against|tight|butt post|posts',
      'gap|space|spacing each|both end|ends|post|posts bay|start|too|leave',
    ],
    asks: [
      'Is it bad if a picket touches the post?',
      'do I leave a space at each end of the bay?',
      'do the spaces go at the posts too or do i start with a picket?',
      'should the first slat be tight against the post?',
    ],
    onward: [
      {
        after: [
          'picket-spacing',
          'gap-for-pickets',
          'picket-count',
          'as-many-gaps',
          'pickets-past-posts',
          'story-stick',
          'stick-errors',
          'bays-alike',
          'gap-now',
        ],
        asks: [
          'do i start with a picket or a gap?',
          'should the first one touch the post?',
          'is there a space at the posts too?',

          'do i need the gap at the ends?',
          'is it bad if they touch?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
]
