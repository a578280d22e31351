// This file is about advice on the drawing: gates first, bays that look right, and numbers for the posts.
import type { Note } from './note.ts'

export const layoutOnPaper: readonly Note[] = [
  {
    name: 'gates-first-on-the-plan',
    title: 'Gates first on the plan',
    text: 'Put the gates on the plan first, where feet already go: the worn path, the bins, the mower, the car. Keep them off soft and sloping ground where you can, and give each hinge post a firm place. Then share what is left of each run into equal bays. A gate squeezed in last is in the wrong place.',
    called: ['where gate go|put|place|best', 'gate first|before plan|draw|drawing post|bay|fence|run'],
    asks: ['Where is the best place to put the gate?', 'do i plan the gates or the posts first?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'equal-bays-or-one-short',
    title: 'Equal bays, or one short one',
    text: 'Equal bays look planned, and one picket stick serves them all. Where stock lengths rule, keep full bays and make the two end bays alike, or put the short one where nobody looks: behind a shrub, at the house, beside the gate. One narrow bay in the middle of a run always shows.',
    called: [
      'bay|section|panel equal|same|alike|even short|odd|narrow|small|or better|best|look',
      'odd|short|last bay|section|panel hide|look|where|ugly',
    ],
    asks: [
      'Is it better to make all bays equal or leave a short one at the end?',
      'where do i hide the odd last bay so it does not look wrong?',
      'is one short bay better or two short ones at the ends?',
      'where do I put the odd bay, at the gate or at the house?',
      'will it look wrong if one bay is shorter?',
      'is it better to hide the short bay in the middle or at the house?',
    ],
    onward: [
      {
        after: ['bays-in-run', 'bays-alike', 'bay-patterns', 'run-in-pieces', 'run-set-out', 'as-many-gaps'],
        asks: [
          'which looks better?',
          'one short one or two at the ends?',
          'where do i hide the odd one?',
          'does it matter if one is shorter?',
          'will it matter?',
          'in the middle or by the house?',
          'where is the leftover bay best put?',
          'all the same or one odd?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'both-sides-of-a-path',
    title: 'Both sides of a path',
    text: 'Where a path or a gate parts the fence, the eye compares the two sides. Start there and work outwards with the same first gap and the same first picket, and let any difference run out at the far ends. Posts must match only where both sides are seen at once.',
    called: [
      'side path|walk|walkway|gate match|symmetrical|same|mirror|alike both',
      'both sides match|symmetrical|mirror|alike path|walk|walkway|gate',
    ],
    asks: ['How do I get both sides of the walk to match?', 'both sides of the path should look alike, how?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'drawing-a-plan',
    title: 'Drawing a plan',
    text: 'Squared paper does, one square to {{square}}. Draw the house, the lot line, the setback, what is marked in the ground, trees, and the gates with the way they swing. Number the posts from one corner, and keep those numbers on the stakes, in the cutting list and on the yearly walk round. Write each length once, from the start of the run.',
    figures: { square: { label: 'one square of the paper', value: '1 ft', metric: '250 mm' } },
    called: [
      'draw|drawing|sketch plan|paper|map|scale fence|yard|garden how|should|what|do',
      'plan|drawing show|put|include|need|contain|what fence|permit|paper',
    ],
    asks: ['How do I draw a plan of my fence?', 'what do i put on the fence drawing?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'what-to-measure',
    title: 'What to measure for a first sum',
    text: 'For pickets: the clear opening between two posts, the true width of a picket, and the widest gap you will have. For posts and bays: the whole run and whether it is measured to faces or centres. For concrete: how many holes, how wide and how deep, and what stands on the bag. Measure in one unit, and write down what you measured to.',
    called: [
      'what measure|measurements|need|know pickets|posts|bags|work|number',
      'which|what measurements|sizes|dimensions need|give|take',
    ],
    asks: [
      'What do I need to measure to work out the pickets?',
      'what do you need from me to get the number of bags?',
      'what must a person know to get the number of pickets?',
      'what do i have to measure first?',
    ],
    from: 'The words that those calculations ask for',
    cautions: [],
  },
]
