// This file is about advice on measuring the yard: tapes, levels, and how to catch a mistake.
import type { Note } from './note.ts'

export const surveying: readonly Note[] = [
  {
    name: 'measuring-level',
    title: 'Measuring level, not along the ground',
    text: 'Measure level: along a slope the ground is longer than the plan, and posts set out by it come too close together. Hold the tape level and drop a plumb line from its end; on steep ground take short steps. Pull the tape tight each time, and write the figure down at once.',
    called: [
      'measure|measuring|tape level|follow|along ground|slope or|should',
      'tape slope|hill|ground follow|level|flat should|do|hold',
    ],
    asks: ['Do I measure level or along the slope?', 'should the tape follow the ground when i measure the run?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'checking-measurements',
    title: 'Checking your measurements',
    text: 'Measure each length twice, the second time from the other end and by somebody who has not seen the first figure. Where the two disagree by more than you would leave in a joint, measure again; never split the difference of a mistake. Say each figure aloud and have it said back. A whole foot or metre misread is commoner than a fat inch.',
    called: [
      'measurement|measured|measuring twice|different|differ|disagree|mistake why|result',
      'measurement|measuring check|correct|trust|right know|sure|trust',
    ],
    asks: ['How do I know my measurements are right?', 'i measured it twice and got different numbers, why?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'tape-and-its-hook',
    title: 'The tape and its hook',
    text: 'The hook is loose on purpose: it slides by its own thickness, so that pushing against a wall and pulling from an edge give the same figure. Bent, or with its hole worn wide, it is wrong: start from a mark further along and take that off. Use one long steel tape for the whole run, laid once. A short one stepped along adds a little wrong at each step.',
    called: [
      'tape hook|tip|tab|end move|loose|wobble|slide|play|bent',
      'tape short|steel|cloth ok|okay|better|enough run|fence|yard|whole|measure|measuring',
    ],
    asks: ['Why is the hook on my tape loose?', 'is a short tape ok for measuring the whole fence?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'finding-level-across-the-yard',
    title: 'Finding level across the yard',
    text: 'A clear hose full of water is the surest over a long run: once the bubbles are out, the water stands equally high at both ends. A string level is good over short runs, hung at the middle of a tight string and turned round to check it. A laser is quick, and hard to see in the sun. Take all heights from one stake that nobody moves.',
    called: [
      'hose|laser|water yard|across|slope|fall|find level|height best|which|better|use|can',
      'string level|hose|laser best|better|or slope|fall|ground|yard|measure',
    ],
    asks: [
      'What is the best way to measure the fall of the ground, string level or laser?',
      'can i use a water hose to find level across the yard?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'wires-overhead',
    title: 'Wires overhead',
    text: 'Take every wire as live, the one to the house too, and one that looks insulated. Keep yourself, posts, ladders, long boards and metal tapes {{clear}} away, and more from high voltage: ask its owner how far, and believe the answer. Carry long things level and low, and have somebody watch the far end. Nothing leans on a power pole, and no post goes in at its foot unless its owner agrees.',
    figures: { clear: { label: 'distance to keep from overhead wires', value: '10 ft', metric: '3 m' } },
    called: [
      'phone|telephone|power|electric line|wire|cable low|hangs|sags fence|paint|under|post|over',
      'overhead wire|wires|line|lines|cable|power|pole pole|is|fence|post|dig|near|under|close|ladder|set|safe',
      'power|electric|electricity|utility|telephone pole fence|post|near|close|against|attach|nail|next|foot',
      'overhead|above wire|line|cable|power carry|carrying|fence|problem|post|watch|board|ladder|worry',
      'wire|lines|cables overhead|above|low|hanging raise|lift|carry|careful|watch|safe',
    ],
    asks: [
      'the pole for the power line is overhead, what do I watch?',
      'can I set posts under overhead wires?',
      'can I attach the fence to a power pole?',
      'There are wires overhead where the fence goes, is that a problem?',
      'what do i watch for carrying long boards, there are lines above?',
    ],
    from: 'Electrical Safety Office Queensland, electricalsafety.qld.gov.au (in metres); we-energies.com (in feet); the rest common practice, no source',
    cautions: ['overhead-lines'],
  },
]
