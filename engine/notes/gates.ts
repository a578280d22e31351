// This file is about advice on gates: the brace, the hinges, the swing, and when each is made.
import type { Note } from './note.ts'

export const gates: readonly Note[] = [
  {
    name: 'which-way-the-brace-goes',
    title: 'Which way the gate brace goes',
    text: 'A wooden brace pushes: from the bottom corner at the hinges up to the top corner at the latch. The latch end wants to drop, and the brace carries it down to the bottom hinge. The other way round it hangs on its nails and pulls out of them. A cable or a rod pulls, so it goes from the top hinge down to the bottom of the latch side. The steeper the brace, the better it works: keep a leaf no wider than it is tall.',
    called: [
      'brace|diagonal|bracing way|direction|which|run|go gate|hinge|latch',
      'brace|bracing gate why|which|wrong|direction',
    ],
    asks: [
      'Which way does the gate brace go?',
      'does the diagonal go from the top hinge or the bottom hinge, and why?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'cable-for-a-gate',
    title: 'A cable instead of a brace',
    text: 'A cable with a turnbuckle pulls, so it runs from the top of the hinge side down to the bottom of the latch side, opposite to a wooden brace. Anchor it to the frame and not to pickets. Lift the latch end with a wedge first, then tighten: the cable holds a gate up better than it lifts one. Tighten again after the first dry summer.',
    called: [
      'cable|wire|turnbuckle gate instead|which|tighten|kit|better|run|go',
      'turnbuckle|cable brace|diagonal instead|or|better|wood|wooden',
    ],
    asks: ['Can I use a cable on the gate instead of a brace?', 'which way does the turnbuckle go on a sagging gate?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'gates-last',
    title: 'Build the gate last',
    text: 'Build the leaf when its posts stand and have set, to the opening that is there and not to the one on the plan. Measure it at top, middle and bottom, and go by the smallest. The hinges and latch, though, you have in your hand before the posts are set. Let wet wood dry before you make a gate of it.',
    called: [
      'build|make|making|building gate before|after|first|last|when post|set|fence',
      'gate build|make|making|made|building|built last|first|when',
    ],
    asks: ['Do I build the gate before or after the posts are set?', 'should i make the gates first or last?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'stouter-gate-posts',
    title: 'Stouter posts for the gate',
    text: 'The hinge post carries a weight that pulls sideways all day, so give it a stouter section, a deeper hole and concrete, or tie it to the next post with rails and a brace. The latch post may be as the others, but deep: people slam into it. Hang a heavy gate on a post that has stood for some days. Not on the corner of the house or on brick, unless somebody has looked at what is behind.',
    called: [
      'gate|hinge post bigger|stouter|thicker|stronger|heavier|larger why|need|should',
      'gate ordinary|normal|regular post hang|ok|enough|strong|use',
    ],
    asks: ['Do gate posts need to be bigger than the others?', 'can i hang the gate on an ordinary post?'],
    from: 'common practice, no source',
    cautions: ['structure'],
  },
  {
    name: 'which-way-a-gate-opens',
    title: 'Which way a gate opens',
    text: 'Into the yard, as a rule, so that it hits nobody on the path; many places forbid a gate that swings over a public walk. Where the ground rises inwards, let it open the other way or hang it higher. Put hinges on the side you want to walk along, and see where the leaf rests when it is open. Round a pool it opens away from the water, as its law says.',
    called: [
      'gate open|swing in|out|inward|outward|inside|outside or|should|which',
      'which way gate open|swing',
      'hinge side gate which|left|right',
    ],
    asks: ['Should the gate open in or out?', 'which side do the gate hinges go on?'],
    from: 'common practice, no source; for pools see the law of your place',
    cautions: ['local-code', 'pool'],
  },
  {
    name: 'choosing-hinges',
    title: 'Choosing hinges',
    text: 'Long strap hinges spread the load over the rail and forgive much; the leaf on the post must not be wider than the post. Set them far apart, near the top and bottom rail: the further apart, the less the top one is pulled. Add a third for a tall or heavy leaf. Bolt through at the top hinge, where the pull is, and use every hole.',
    called: ['hinge kind|type|strap|butt|best|which gate|wooden|heavy', 'where|third hinge gate place|put|go|need|add'],
    asks: ['Which kind of hinge is best for a wooden gate?', 'where do i put the hinges on the gate?'],
    from: 'that hinges further apart are pulled less: https://scienceblogs.com/principles/2015/03/12/the-physics-of-our-back-gate; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'latch-that-forgives',
    title: 'A latch that forgives',
    text: 'Gates rise, drop, swell and shrink through the year, so choose a latch that closes with the bar a little high or low, and can be moved. See that it works from both sides and with a glove on. Put it where your hand falls, or out of a small child’s reach if that is the point. Round a pool its height and its closing are laid down by law.',
    called: [
      'latch kind|type|best|which|good|choose gate|wooden',
      'latch|catch miss|align|meet|reach|line gate winter|summer|season|anymore|up',
    ],
    asks: [
      'Which latch is best for a wooden gate?',
      'the latch does not line up in winter, what do I do with the gate?',
    ],
    from: 'common practice, no source',
    cautions: ['pool'],
  },
  {
    name: 'double-gates',
    title: 'Double gates',
    text: 'Hold one leaf with a drop rod into a tube set in the ground, and latch the other to it. Set the tube in concrete with stone below, so that it drains and does not freeze. Give each leaf its own brace, and a stop in the middle so that they cannot swing through. Both hinge posts are gate posts.',
    called: [
      'double gate keep|hold|flap|flapping|stay|shut|closed|swinging',
      'drop|cane rod|bolt ground|gate|hole|tube|leaf',
    ],
    asks: ['How do I keep a double gate shut?', 'where does the drop rod of the gate go in the ground?'],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'gate-on-a-slope',
    title: 'A gate on sloping ground',
    text: 'Try the swing with a level board before you choose: hold it at the height of the bottom rail and walk it round. Where the ground rises along the fence, hinge on the lower post: as it opens, the leaf leaves the rise behind. Where it rises in the way of the swing, open the gate the other way, dig the bank back, or raise the leaf and hang a strip below. A rising hinge is for light leaves only.',
    called: [
      'gate slope|hill|bank|sloping|uphill rub|hits|scrapes ground|open|opening',
      'gate slope|hill|sloping hang|put|hinge|build which|how|side',
    ],
    asks: ['The gate hits the ground on the slope when it opens', 'how do i hang a gate on a hill?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'hanging-a-gate',
    title: 'Hanging a gate alone',
    text: 'Stand the leaf in the opening on two blocks of the height you want below it, with thin strips for the gap at each side, and wedge it tight. Mark and drill the hinges, top one first, screw one in each leaf, take the blocks away and try it. Only then drive the rest. Raise the latch end a hair when you set it: it will settle.',
    called: [
      'hang|hanging gate best|easiest|how way|level|straight',
      'hang|hanging gate alone|myself|blocks|shims|tip',
    ],
    asks: ['What is the best way to hang a gate by myself?', 'hanging a heavy gate alone, any tips?'],
    from: 'common practice, no source',
    cautions: ['lifting', 'tools'],
  },
  {
    name: 'gate-with-a-motor',
    title: 'A motor on a gate',
    text: 'A motor makes another thing of a gate: one that can crush. Standards of its own then apply to its gaps, its edges and its sensors, and a garden gate is seldom built to them. Have it planned and fitted by a qualified installer, wiring and all. Do it before you build the gate, not after.',
    called: [
      'gate motor|motorise|motorised|motorized|automatic|automate|opener|operator|electric|remote',
      'motor|opener|operator add|fit|put|automatic|install gate|fence',
    ],
    asks: ['Can I add an opener to the gate?', 'want to put a motor on my wooden gate, ok?'],
    from: 'ASTM F2200, scope, https://standards.iteh.ai/catalog/standards/astm/50ac0aa2-0c15-4041-9df9-57225fcb45ed/astm-f2200-20; the rest common practice, no source',
    cautions: ['automatic-gate'],
  },
]
