// This file is about advice on the work as a whole: order, helpers, season, heat, lifting and tools.
import type { Note } from './note.ts'

export const planning: readonly Note[] = [
  {
    name: 'order-of-the-work',
    title: 'The order of the work',
    text: 'Line and permit, then the locate, then hinges and latches in your hand. End and gate posts, line posts, a wait, then cut to height, rails, mowing strip, pickets, gates, finish. What must wait for others comes first on the list: the surveyor, the ticket, ordered wood, dry weather. Do one bay to the end before you cut boards for the rest.',
    called: [
      'order|sequence job|everything|project do|does|right|best|what|which',
      'order|sequence right|best|what build|building fence',
      'what|which comes|do|goes first|next fence|job|project build|building|task|work',
    ],
    asks: ['In what order do I do everything on the job?', 'what is the right order to build a fence?'],
    from: 'common practice, no source',
    cautions: ['utilities', 'lot-line'],
  },
  {
    name: 'helpers',
    title: 'Where helpers are needed',
    text: 'Two for a post: one watches the level and holds, one fills and tamps. Two for an auger, both grown. Two for rails and for hanging a gate; pickets go well alone, and quicker with a second at the saw. A third on concrete day keeps the mixer fed. Tell everybody beforehand where the marks, the holes and the first-aid box are.',
    called: [
      'helper|friend|crew need|what|where|use|who|do|give fence|day|building|build',
      'alone|solo|myself build|do possible|helper|second fence|it|job',
      'one person|man|woman build|building|set fence|it|post',
    ],
    asks: [
      'Do I need a helper, or can I build it alone?',
      'friends are coming to help build the fence, what should they do?',
    ],
    from: 'common practice, no source',
    cautions: ['lifting', 'open-hole'],
  },
  {
    name: 'children-helping',
    title: 'What children can help with',
    text: 'Reading out the tape, counting screws, carrying pickets one at a time, painting low boards in old clothes, and keeping the list. Not at the auger, the mixer, the saw or an open hole, and not where somebody digs near marks. Glasses and gloves in their size. Stop while it is still fun.',
    called: [
      'kid|child|children|son|daughter help|helping|helper with|what|can|fence|build',
      'kid|child|children safe|allow|let|use auger|saw|mixer|drill|dig|concrete',
    ],
    asks: ['What can the kids help with?', 'is it safe to let my children dig or use the drill?'],
    from: 'common practice, no source',
    cautions: ['tools', 'open-hole'],
  },
  {
    name: 'best-season',
    title: 'The best season',
    text: 'Dig in spring or autumn, when the ground is damp and the air is cool. Concrete wants no frost, finish wants dry mild days, and wet wood dries best in spring and early summer. So: posts in spring, pickets stacked to dry, hung and finished by early autumn. Rental yards, surveyors and building offices are quickest in winter: do the paper then.',
    called: [
      'season|time|month|spring|summer|autumn|fall|winter year|best|build|good|better fence|build|building|post best|good|year|when',
      'when|what best|good|right season|month|year|time build|fence|posts|put',
    ],
    asks: ['What time of year is best to build a fence?', 'is winter a good season to build the fence?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'working-in-heat',
    title: 'Working in the heat',
    text: 'Start early and have the heavy digging done before the day is hot. Drink before you are thirsty, about {{water}} an hour in small cups, and rest in the shade. Newcomers need some days to get used to it. Somebody who is confused, stumbles or stops sweating is in danger: into the shade, cool with water, and call for help at once.',
    figures: { water: { label: 'water an hour in moderate heat', value: '32 fl oz', metric: '1 L' } },
    called: [
      'heat|hot|heatwave|sweltering|boiling work|working|dig|digging safe|safely|ok|drink|careful|tip',
      'drink|water heat|hot work|working|dig|digging',
    ],
    asks: ['How do I work safely in the heat?', 'its boiling hot today, ok to dig?'],
    from: 'water: OSHA, https://www.osha.gov/heat/heat-index/protective-mod; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'lifting-safely',
    title: 'Lifting bags and posts',
    text: 'Get it off the ground first: have bags put on a tailgate or a table, and slide instead of lift. Close to the body, feet turned with the load, never twist. At its very best a lift should be no more than {{most}}, and low, far out or often makes it much less. Split bags between two people or two buckets, and use the barrow for everything else.',
    figures: {
      most: { label: 'most that one person should lift, under the best conditions', value: '51 lb', metric: '23 kg' },
    },
    called: [
      'lift|lifting|carry|carrying back|hurt|hurting|safely|alone|strain|spine bag|heavy|post|concrete|stone|how|without',
      'back hurts|sore|aches|pain lift|lifting|bags|digging|carry|carrying',
    ],
    asks: ['How do I lift heavy bags and not hurt my back?', 'is it ok to carry concrete bags alone?'],
    from: 'NIOSH revised lifting equation, load constant; the rest common practice, no source',
    cautions: ['lifting'],
  },
  {
    name: 'tools-to-have',
    title: 'Tools for the whole job',
    text: 'Long steel tape, string, stakes, long level, square, digging bar, clamshell digger, spade, barrow, tamper, saw, drill and driver, clamps, brushes. Borrow or rent what you use for a day: auger, mixer, nailer. Buy good gloves, glasses, ear protection and a dust mask for everybody, and have them on the site from the first day.',
    called: [
      'tool need|list|which|what|buy fence|job|build|building|project|whole',
      'tool rent|borrow|buy which|what|or|need',
    ],
    asks: ['What tools do I need to build a fence?', 'which tools should i buy and which rent?'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
]
