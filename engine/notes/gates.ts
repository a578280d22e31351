// This file is about advice on gates: the brace, the hinges, the swing, and when each is made.
import type { Note } from './note.ts'

export const gates: readonly Note[] = [
  {
    name: 'gate-swings-by-itself',
    title: 'A gate that swings by itself',
    text: 'It goes to where its hinges let it down: the pins are not plumb above each other. Hold a level on the hinge side, on both faces of the post. Move the top hinge a little, or pack the lower one out, until the gate rests where you leave it. If the post itself leans, mend that first; a spring only hides it.',
    called: [
      'gate swing|swings|opens|closes|drifts itself|own|alone',
      "gate stay|stays|rest open|closed|put how|not|won't",
    ],
    asks: ['gate swings by itself, why', 'Why does my gate not stay where I put it, open or closed?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'latch-inside-or-outside',
    title: 'Which side the latch goes on',
    text: 'Put it where the hand that uses it most can reach, and make sure that it can be worked from both sides: over the top of a low gate, through a bored hole with a string, or with a latch made for both. On the inside it is out of the weather and out of sight. A gate to water is another matter: there its height and side are set by rule, so ask your building office.',
    called: ['latch inside|outside|in|out side|or|go|should|which|put', 'latch which side|face'],
    asks: ['should the latch be inside or outside', 'Which side of the gate does the latch go on?'],
    onward: [{ after: ['gate-leaf', 'gate-hardware'], asks: ['which side does the latch go?', 'inside or outside?'] }],
    from: 'common practice, no source',
    cautions: [],
  },
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
      'which corner does the gate brace start from?',
      'does the brace go from the hinge side or the latch side?',
    ],
    onward: [
      {
        after: ['gate-brace', 'gate-leaf', 'inside-of-frame', 'gate-for-passage'],
        asks: [
          'which corner does it start from?',
          'and which way does it go?',
          'from the hinge side or the latch side?',
          'bottom of the hinge side or the other?',
          'does it run up to the hinge or to the latch?',
          'top or bottom at the hinges?',
        ],
      },
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
    asks: [
      'Can I use a cable on the gate instead of a brace?',
      'which way does the turnbuckle go on a sagging gate?',
      'which end of the gate does the cable hook to?',
      'does the cable on a gate run from the top hinge or the bottom one?',
    ],
    onward: [
      {
        after: ['gate-sag', 'sag-triage'],
        asks: ['which way does the cable run?', 'which end does it hook to?', 'from which corner?'],
      },
    ],
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
    text: 'Into the yard, as a rule, so that it hits nobody on the path; many places forbid a gate that swings over a public walk. Where the ground rises inwards, let it open the other way or hang it higher. Put hinges on the side you want to walk along, and see where the leaf rests when it is open. Round a pool many places want it to open away from the water: ask.',
    called: [
      'gate open|swing in|out|inward|outward|inside|outside or|should|which',
      'which way gate open|swing',
      'hinge side gate which|left|right',
    ],
    asks: ['Should the gate open in or out?', 'which side do the gate hinges go on?'],
    onward: [
      { after: ['gate-leaf', 'gate-swing', 'gate-hardware'], asks: ['in or out?', 'which way should it open?'] },
    ],
    from: 'common practice, no source; for pools ask your place',
    cautions: ['local-code'],
  },
  {
    name: 'choosing-hinges',
    title: 'Choosing hinges',
    text: 'Long strap hinges spread the load over the rail and forgive much; the leaf on the post must not be wider than the post. Set them far apart, near the top and bottom rail: the further apart, the less the top one is pulled. Add a third for a tall or heavy leaf. Bolt through at the top hinge, where the pull is, and use every hole.',
    called: ['hinge kind|type|strap|butt|best|which gate|wooden|heavy', 'where|third hinge gate place|put|go|need|add'],
    asks: [
      'Which kind of hinge is best for a wooden gate?',
      'where do i put the hinges on the gate?',
      'how far apart should the hinges be?',
      'where do the hinges sit, up and down?',
      'how high up do the hinges go?',
      'hinge spacing on a gate?',
    ],
    onward: [
      {
        after: ['gate-leaf', 'gate-hardware', 'gate-pull', 'gate-for-passage'],
        asks: ['how tall from one another should they be?', 'where do they sit?'],
      },
    ],
    from: 'that hinges further apart are pulled less: https://scienceblogs.com/principles/2015/03/12/the-physics-of-our-back-gate; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'latch-that-forgives',
    title: 'A latch that forgives',
    text: 'Gates rise, drop, swell and shrink through the year, so choose a latch that closes with the bar a little high or low, and can be moved. See that it works from both sides and with a glove on. Put it where your hand falls, or out of a small child’s reach if that is the point. Round a pool many places set its height and how it closes.',
    called: [
      'latch kind|type|best|which|good|choose gate|wooden',
      'latch|catch miss|align|meet|reach|line gate winter|summer|season|anymore|up',
    ],
    asks: [
      'Which latch is best for a wooden gate?',
      'the latch does not line up in winter, what do I do with the gate?',
      'the gate will not latch in summer',
    ],
    from: 'common practice, no source',
    cautions: [],
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
    asks: [
      'The gate hits the ground on the slope when it opens',
      'how do i hang a gate on a hill?',
      'does the hinge go on the high side or the low side of the slope?',
      'hinge uphill or downhill?',
    ],
    onward: [
      {
        after: ['gate-leaf', 'gate-swing', 'gate-for-passage'],
        asks: [
          'what if the ground rises?',
          'hinge on the high side or the low side?',
          'which side do the hinges go on a slope?',
          'does the low end go at the hinge or the latch?',
        ],
      },
    ],
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
    text: 'A motor makes another thing of a gate: one that can crush and kill a child. Standards of its own then apply to its gaps, its edges and its sensors, and a garden gate is seldom built to them. Have it planned and fitted by a qualified installer, wiring and all, before you build the gate. If one that runs does not stop and turn back when something is in the way: power off, work it by hand, and call the installer.',
    called: [
      'gate|motor|opener stop|reverse|sensor child|kid|hits|way|automatic|motor',
      'gate motor|motorise|motorised|motorized|automatic|automate|opener|operator|electric|remote',
      'motor|opener|operator add|fit|put|automatic|install gate|fence',
    ],
    asks: ['Can I add an opener to the gate?', 'want to put a motor on my wooden gate, ok?'],
    from: 'ASTM F2200, scope, https://standards.iteh.ai/catalog/standards/astm/50ac0aa2-0c15-4041-9df9-57225fcb45ed/astm-f2200-20; the rest common practice, no source',
    cautions: ['automatic-gate'],
  },
]
