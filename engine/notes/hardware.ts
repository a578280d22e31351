// This file is about advice on screws, nails, hinges and other metal, and what it does to wood.
import type { Note } from './note.ts'

export const hardware: readonly Note[] = [
  {
    name: 'hardware-before-posts',
    title: 'Hinges and latch before the posts',
    text: 'Buy hinges, latch and drop rod before you set a gate post. They decide the gap on each side, how wide a post the hinge leaf needs, and on which face the gate hangs. Lay them on a piece of post and a piece of rail, and see that every screw lands in wood. A hinge made for a wider post than yours cannot be argued with later.',
    called: [
      'hinge|latch|hardware before|first|after|when post|set|setting|building gate|buy|get|choose|order|need|have',
      'buy|choose|order hinge|latch|hardware before|first|when',
    ],
    asks: [
      'Should I buy the hinges before setting the gate posts?',
      'when do i buy the gate hardware, before or after the posts?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'nails-or-screws',
    title: 'Nails or screws',
    text: 'Screws hold and come out again: use them for gates, for rails, and wherever you may have to mend. Ring-shank nails are quicker for pickets, and give a little as the wood moves. Smooth nails work loose within a few winters. Either must suit the wood: hot-dip galvanised or stainless.',
    called: [
      'deck|wood|exterior|drywall screw ok|okay|fine|right|kind|which|use|need',
      'nail screw or|vs|versus|better|instead',
      'nail|nailing|nailgun picket|rail|fence|board ok|okay|enough|better|best|hold|instead|which',
    ],
    asks: ['Nails or screws for the pickets?', 'is it ok to nail the pickets on?', 'brass screws?'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'black-streaks',
    title: 'Black streaks under screws',
    text: 'The tannin in cedar, redwood and oak turns black where it meets iron, so plain and thinly plated screws streak with the first rain. Use stainless under a clear or half-clear finish; hot-dip galvanised will do under primer and solid paint. Streaks come off with an oxalic acid wood cleaner, with gloves and glasses on, and come back until the screws are changed.',
    called: [
      'black|dark|blue streak|stain|mark|runs screw|nail|fastener|hinge|cedar|redwood|oak',
      'screw|nail|fastener stain|streak|bleed|discolour|discolor cedar|redwood|oak which|why|how|not|without',
    ],
    asks: [
      'Why are there black streaks under my screws?',
      'which nails will not stain the cedar?',
      'what screws are right for cedar?',
      'the nail heads are rusting, why?',
    ],
    from: 'the fasteners as a lumber yard tells it, the trade and no standard; the cleaner is common practice (from memory)',
    cautions: [],
  },
  {
    name: 'metal-in-treated-wood',
    title: 'Metal in treated wood',
    text: 'The copper in treated wood eats thin zinc. Use hot-dip galvanised or stainless for screws, nails, brackets and bolts alike, and no electroplated ones. Never put aluminium against it. Where two metals touch, keep to one family: a galvanised screw in a stainless bracket is soon eaten away.',
    called: [
      'galvanized|galvanised|stainless|coated or|use|need|should|which|screw|nail|hardware',
      'screw|nail|fastener|bracket|bolt|metal treated|pt|preserved which|kind|type|corrode|rust',
      'aluminum|galvanized|galvanised|stainless|zinc treated|pt|preserved|pressure ok|okay|can|safe|corrode',
      'mix|mixing stainless galvanized|galvanised',
    ],
    asks: [
      'Which screws do I use in treated wood?',
      'can i put aluminum brackets on pressure treated posts?',
      'galvanised or stainless?',
      'can i use drywall screws outside?',
    ],
    from: 'fs.fed.us/t-d/pubs/htmlpubs/htm06772809/page10.htm for galvanised connectors; a bolt maker’s page on the zinc standard, portlandbolt.com, for the copper; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'metal-near-the-sea',
    title: 'Metal near the sea',
    text: 'In salt air use stainless steel for every screw, hinge and latch, the marine grade where you can get it. Hot-dip galvanised dies young there, and plated hardware in a season or two. Rinse the gate hardware with fresh water now and then.',
    called: [
      'sea|ocean|coast|coastal|salt|beach|seaside screw|nail|hinge|hardware|latch|metal|fastener|rust',
      'salt|sea|ocean air|water|spray stainless|galvanized|galvanised|rust',
    ],
    asks: ['What screws should I use near the ocean?', 'we live by the sea, will galvanized hinges rust?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'drilling-before-screwing',
    title: 'Drilling before you screw',
    text: 'Near the end of a board, near an edge, in dry cedar and in any hard wood, yes: drill first, a little thinner than the core of the screw. In the middle of a soft board a sharp screw needs no hole. Let the screw spin freely in the picket and bite only in the rail, and it pulls the two tight. Do not bury the head: a crushed ring holds water.',
    called: [
      'predrill|pilot need|hole|picket|board|screw|should|why',
      'drill|drilling first|before screw|screwing|nail picket|board|rail|need',
      'split|splitting screw|screwing|nail|nailing board|picket|end|cedar stop|keep|why|avoid|how',
    ],
    asks: ['Do I need to predrill the pickets?', 'how do i stop the boards splitting when I screw them?'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
]
