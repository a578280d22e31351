// This file is about advice on rails: how many, where they go, how they are joined and how they are fixed.
import type { Note } from './note.ts'

export const rails: readonly Note[] = [
  {
    name: 'two-or-three-rails',
    title: 'A middle rail, or none',
    text: 'A top rail and a bottom rail carry pickets up to about {{low}} high. Add one in the middle for taller pickets, for wide or wet boards that want to bow, and for solid fences. It is cheap now and hard to add later. Set the middle one a little above half, where it looks right.',
    figures: { low: { label: 'height that two rails carry', value: '4 ft', metric: '1200 mm' } },
    called: [
      'rail|stringer|runner middle|third need|enough|add|should',
      'rail|stringer top bottom enough|middle',
      'rail two|2 three|3 or',
    ],
    asks: ['Do I need a middle rail?', 'is a top and bottom rail enough or do i need another in the middle?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'rails-between-or-across',
    title: 'Rails between the posts or across them',
    text: 'Across the faces is quicker and stronger: one rail spans several posts, and small differences between bays vanish. Between the posts looks finished from both sides and shows the posts, but every rail must be cut to its own bay and hangs on its brackets. Between them, buy rails long enough for the widest bay.',
    called: [
      'rail|stringer between|across|over|face|front post or|better|stronger',
      'rail|stringer attach|go|mount between|across|over|front or|should|which',
    ],
    asks: [
      'Do the rails go between the posts or across the front?',
      'rails over the posts, is that stronger?',
      'do the rails go in front of the posts or between them?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'rail-on-edge-or-flat',
    title: 'Rails on edge or flat',
    text: 'On edge a rail is several times as stiff against sagging, and sheds water better. Flat, it is stiffer against a push from the side, and people sit on it. For a picket fence, put it on edge, with the bow up: the weight will bring it down. Where a flat one suits the look, slope its top a little or add a post.',
    called: [
      'rail edge|flat|upright or|better|best|which|stronger|stiffer|should',
      'rail crown|bow|bowed up|down|which',
    ],
    asks: ['Should the rails go on edge or flat?', 'rail has a bow in it, does it go up or down?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'rail-joints',
    title: 'Where rails are joined',
    text: 'Join rails on a post, never in the air between two. Keep the joint of the top rail on another post than that of the bottom rail, so that no post carries all of them. Leave a hair between wet ends, seal them, and drill before you screw so near an end. A piece shorter than two bays is for the end of the run.',
    called: [
      'rail|stringer join|joined|joining|splice|butt where|how|on',
      'rail|stringer joint|seam land|stagger|staggered|post|same should|must|can|better|ok',
    ],
    asks: [
      'Where do I join the rails?',
      'should rail joints land on a post?',
      'is it ok to join rails between the posts?',
      'should the rails meet on the post or in the air?',
      'are splices in the middle of a bay any good?',
      'do rail ends have to land on a post?',
      'can two rails meet halfway between posts?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'brackets-or-screws-for-rails',
    title: 'Brackets, or screws at a slant',
    text: 'A bracket carries the rail on its floor, lets you set it to a line and take it out again: fill every hole, with the screws made for it. Screws driven at a slant look cleaner and hold less, in the end of the rail, where a screw holds least. Notched posts are strong and handsome, and every notch must be sealed. For gates and tall fences, brackets or notches.',
    called: [
      'bracket|hanger toenail|toenailing|slant|notch|notched or|better|best|enough|strong rail|post',
      'rail bracket|hanger or|better|best|strong',
    ],
    asks: ['Are rail brackets better than toenailing?', 'should i notch the posts for the rails or use brackets?'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'fastening-to-a-wall',
    title: 'Fastening the fence to a wall of the house',
    text: 'Best not at all: stand a post of its own beside the wall with a finger’s width between, and the wall gets no water and no wind. If it must be fixed, screw a batten with plugs or anchors made for that wall, into brick and not into the joint, with spacers behind it. Never into cladding, insulation or a wall that is not yours. See first that no pipe or cable runs there.',
    called: [
      'wall|brick|house|shed|garage fence|rail|post|panel fasten|fix|attach|join|screw|anchor|bolt',
      'end|ends house|wall|shed|garage fence|rail how|join|finish',
    ],
    asks: [
      'How do I fasten the fence to a brick wall?',
      'the fence ends at the house wall, how do I fix it there?',
      'how do i join the fence to my shed?',
      'fence runs right up to the garage wall, how do i finish it there?',
    ],
    from: 'common practice, no source',
    cautions: ['dust', 'tools'],
  },
]
