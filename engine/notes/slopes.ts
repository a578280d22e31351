// This file is about advice on sloping ground: stepping, raking, humps, and what is left below.
import type { Note } from './note.ts'

export const slopes: readonly Note[] = [
  {
    name: 'step-or-rake',
    title: 'Step or rake',
    text: 'Raking follows the ground: rails run parallel to it, pickets stay plumb, and no wedge is left below. It suits gentle and rolling ground, and dogs. Stepping keeps each bay level and drops at the posts: it suits steep ground and formal fences, leaves a wedge under each bay, and wants longer posts. Whichever you take, keep it for the whole run, and make the steps alike.',
    called: [
      'step|stepped|stepping rake|raked|raking|rack|racked',
      'follow|following|step|stepped|rake|raked ground|slope|hill or better|best|should|which',
    ],
    asks: [
      'Should I step or rake the fence on a slope?',
      'is it better to follow the ground on a hill or use level steps?',
      'which looks better on a slope, stepping or raking?',
      'what looks nicer, stepped or following the ground?',
      'is raking better than stepping for a low fence?',
    ],
    onward: [
      {
        after: [
          'stepped-run',
          'step-of-run',
          'raked-run',
          'fall-of-slope',
          'slope-of-ground',
          'slope-from-levels',
          'slope-from-angle',
        ],
        asks: [
          'which looks better?',
          'what looks nicer, stepped or following the ground?',
          'would following the ground be better?',
          'steps or straight along?',
          'is it prettier if it just follows?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'plumb-pickets-on-a-slope',
    title: 'Pickets on a slope stand plumb',
    text: 'Pickets stand plumb on any slope; only the rails lean. Square to the rail they look like a fence that is falling over. Set each with the level, and cut the bottoms to the ground if they must follow it. The gap is measured level, not along the rail.',
    called: [
      'picket plumb|vertical|upright slope|hill|sloping|raked or|should|stay',
      'picket lean|square slope|hill|rail or|should|stand',
    ],
    asks: [
      'Do pickets stay plumb on a slope or square to the rail?',
      'should the pickets lean with the hill or stand upright?',
      'how do i keep the pickets upright on a slope?',
    ],
    onward: [
      {
        after: ['raked-run', 'fall-of-slope', 'slope-of-ground'],
        asks: ['do they stay upright?', 'how do i keep them upright on that?', 'square to the rail or plumb?'],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'humps-and-hollows',
    title: 'Humps and hollows',
    text: 'Do not copy every bump. Stretch a string from post to post and pull it into one easy line: cut the top of a hump down with a spade, let the hollow have a larger gap below, and change the slope only at a post. The top line is what people see; the bottom is hidden by grass. Fill hollows with stone, not with soil against the wood.',
    called: [
      'hump|bump|bumpy|hollow|uneven|wavy|lumpy ground|yard|fence smooth|follow',
      'ground|yard uneven|bumpy|lumpy|hump fence|top follow|smooth|wavy|should',
    ],
    asks: [
      'The ground is bumpy, how do I get a smooth top line?',
      'uneven yard, should the fence follow all the humps?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'dog-digging-under',
    title: 'A dog that digs under',
    text: 'Lay wire mesh flat on the ground on the dog’s side, fixed to nothing but pegs, cover it with a little stone, and he finds nothing to dig at. A strip of stone or slabs along the foot does the same. Do not pile soil against the fence or bury boards: they rot within a few years. See first why he wants out.',
    called: [
      'dog|puppy|pup dig|digging|burrow|tunnel',
      'dog|puppy|rabbit|animal gap|out under|below|underneath|bottom fence',
    ],
    asks: [
      'How do I stop the dog digging under the fence?',
      'my dog gets out through the gap below the fence',
      'can a cat get under it?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
]
