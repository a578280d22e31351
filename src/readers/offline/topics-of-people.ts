// This file is about the words in which people tell that somebody is hurt, or about to be. The notes are in engine/notes/emergencies.ts.
import type { Topic } from './topic.ts'
import { list, pairs } from './phrases.ts'

const others = list(
  'helper, friend, he, she, him, her, son, daughter, wife, husband, dad, father, mum, mom, mother, brother, sister, neighbor, neighbour, worker, man, guy, woman, buddy, mate, partner, kid, child, children, toddler, baby, boy, girl, somebody, someone, grandson, grandad, grandpa, uncle',
)
const people = [...others, 'i', 'me', "i'm", 'they', 'them']
const children = list('child, children, kid, toddler, baby, son, daughter, boy, girl, grandson, granddaughter')
const limbs = list('hand, finger, thumb, foot, leg, arm, wrist, knee, toe, eye, head, neck, face, palm, ankle')
const someones = pairs(list("my, his, her, their, helper's, son's, wife's, husband's, friend's, dad's, kid's"), limbs)
const inEyes = [
  ...pairs(
    list('in, into'),
    pairs(list('my, his, her, the, an, one, their, both, both my, both his, both her, both their'), ['eye']),
  ),
  ...pairs(list('in, into'), ['eye']),
]
export const topicsOfPeople: readonly Topic[] = [
  {
    note: 'heat-stroke',
    happened: list(
      'dizzy, disoriented, delirious, slurring, slurred, stumbling, staggering, fainted, fainting, feel faint, feels faint, feeling faint, passed out, blacked out, vomiting, throwing up, nauseous, stopped sweating, not sweating, seizure, lightheaded',
    ),
    near: [list('heat, hot, sun, sweat, sweating, heatwave, boiling, scorching, sunny, degree, digging, overheated')],
    within: 14,
  },
  {
    note: 'heat-stroke',
    happened: ['confused', 'collapsed', 'unconscious'],
    near: [list('heat, hot, sun, sweat, sweating, heatwave, boiling, scorching, overheated'), people],
    within: 14,
    unless: list(
      'confused about, confused by, confused as, confused on, confused which, confused how, confused what, heat treated, hole, fence',
    ),
  },
  {
    note: 'heat-stroke',
    happened: ['confused'],
    near: [list('sweating, sweat, heat, sunstroke')],
    within: 8,
    unless: list('confused about, confused by, heat treated, i am confused'),
  },
  {
    note: 'heat-stroke',
    happened: list('heatstroke, heat stroke, sunstroke, sun stroke, heat exhaustion'),
    unless: list('prevent, avoid, sign of, signs of, symptoms of'),
  },
  {
    note: 'burning',
    happened: list(
      'smoking, smoke, smouldering, smoldering, burning, alight, flame, on fire, caught fire, catching fire, caught alight, glowing, are hot, is hot, getting hot, feel hot, feels hot, hot to the touch, getting warm, are warm',
    ),
    near: [list('rag, cloth, cloths, steel wool, bin, pads')],
    within: 7,
    unless: list('why, what happens, could, would, how long, how do i stop, how to stop, prevent, rags catch'),
  },
  {
    note: 'burning',
    happened: list('on fire, caught fire, caught alight, in flames, up in flames, started burning, smoke coming'),
    near: [
      list(
        'fence, shed, house, garage, wood, grass, pile, gate, bin, tree, deck, lawn, hedge, can, bucket, stain, mulch, it, everything, something, yard, post, picket, help, rags',
      ),
    ],
    within: 6,
    unless: list(
      'in the fire pit, in the firepit, fireplace, stove, skin, eye, hand, set it on, set on, put it on, can i, could i, how do i, fire brick',
    ),
  },
  {
    note: 'burning',
    happened: list('is burning, are burning'),
    near: [list('fence, shed, house, garage, grass, gate, bin, tree, deck, lawn, hedge, mulch, everything, picket')],
    within: 6,
    unless: list('fire pit, firepit, fireplace, stove, skin, eye, hand, sun, stain, who is'),
  },
  {
    note: 'caught-by-a-gate',
    happened: list(
      'trapped, crushed, pinned, squashed, crushing, trapping, caught, stuck, jammed, closed on, shut on, ran over, hit',
    ),
    near: [
      [...others, ...limbs, 'me'],
      list(
        'motor, opener, operator, automatic gate, electric gate, sliding gate, powered gate, motorised gate, motorized gate, gate arm',
      ),
    ],
    within: 9,
  },
  {
    note: 'caught-by-a-gate',
    happened: list('trapped, crushed, pinned, squashed'),
    near: [[...others, ...limbs, 'me'], ['gate']],
    within: 8,
  },
  {
    note: 'head-between-pickets',
    happened: list('stuck, trapped, wedged, jammed, caught'),
    near: [
      ['head', 'neck', 'leg', 'arm', 'foot', 'hand'],
      list('picket, fence, gap, slat, board, paling, rail'),
      [...children, ...list('my, his, her, their, dog, cat, puppy, she, he')],
    ],
    within: 10,
    unless: list('screw, nail, bolt, hammer, screws, drill, bit, keep, stop'),
  },
  {
    note: 'badly-hurt',
    happened: list(
      'nail, nailed, shot, saw, sawed, sawn, cut, blade, auger, axe, crushed, smashed, broke, broken, staple, screw, drilled, sliced, stabbed, through, slipped, caught',
    ),
    near: [someones],
    within: 5,
    after: true,
    itself: true,
    unless: list(
      'hold, holding, held, hand saw, handsaw, protect, glove, gloves, ladder safe, eye level, height of, hand drill, hand tool, hand plane, hand auger, hand digger, hand truck, hand mixer, arm rest, will a, will the, could a, could the, how do i',
    ),
  },
  {
    note: 'badly-hurt',
    happened: list('stepped on, trod on, stood on, fell on'),
    near: [list('nail, screw, stake, rake, spike')],
    within: 4,
    unless: list('could, might'),
  },
  {
    note: 'badly-hurt',
    happened: list('bleeding, blood'),
    near: [[...people, ...limbs]],
    within: 8,
    unless: list('tannin, knot, paint, stain, primer, cedar, brown, rust, color, bleeding through'),
  },
  {
    note: 'badly-hurt',
    happened: list('severed, amputated, chopped off, sawed off, cut off, sawn off'),
    near: [someones],
    within: 5,
  },
  {
    note: 'badly-hurt',
    happened: list(
      "unconscious, unresponsive, not breathing, stopped breathing, can't breathe, cannot breathe, collapsed, fainted, passed out, not moving, isn't moving, heart attack, chest pain, chest pains, not waking",
    ),
    near: [people],
    within: 8,
    unless: list('hole collapsed, fence collapsed, wall collapsed, post, gate'),
  },
  {
    note: 'badly-hurt',
    happened: list('fell, fallen, falling'),
    near: [
      list('off, from, into, in, down'),
      list('ladder, stepladder, roof, scaffold, hole, trench, posthole, wall, fence'),
      [...others, 'i'],
    ],
    within: 6,
    unless: list(
      'tape, level, phone, hammer, soil, dirt, rock, stone, water, drill, key, keys, bit, tool, might, could, stop, keep, prevent',
    ),
  },
  {
    note: 'badly-hurt',
    happened: pairs(
      list('collapsed on, caved in on, fell in on, fell on, trapped in the hole, stuck in the hole, buried in'),
      ['him', 'her', 'me', 'my'],
    ),
  },
  {
    note: 'badly-hurt',
    happened: list('crushed, mangled, severed, amputated, smashed'),
    near: [list('hand, finger, thumb, foot, leg, arm, wrist, toe')],
    within: 3,
    unless: list('post foot, screw, crushed stone'),
  },
  {
    note: 'badly-hurt',
    happened: list('caught, trapped, stuck, pulled, wrapped'),
    near: [someones, list('auger, mixer, saw, machine, digger, chain, belt, spring')],
    within: 8,
    unless: list('glove, keep, could, might'),
  },
  {
    note: 'in-the-water',
    happened: list('fell, fallen, drowning, face down, floating, underwater, under water, went under'),
    near: [children, list('pool, pond, water, tub, spa, lake')],
    within: 10,
    unless: list('picket, gate latch, stop, keep'),
  },
  {
    note: 'in-the-water',
    happened: list("not breathing, isn't breathing, not moving, isn't moving, stopped breathing"),
    near: [children, list('pool, pond, water, tub, spa, lake')],
    within: 10,
  },
  {
    note: 'in-the-water',
    happened: ['drowning'],
    near: [[...children, 'he', 'she']],
    within: 6,
    unless: list('fence, picket, latch, stop, keep'),
  },
  {
    note: 'swallowed',
    happened: list('swallowed, drank, ate, licked, drinking, eaten, drunk'),
    near: [
      list(
        'preservative, stain, paint, thinner, turpentine, bleach, cement, cleaner, concrete, sealer, treated, creosote, antifreeze, petrol, gasoline',
      ),
      [...others, ...list('dog, cat, puppy, i')],
    ],
    within: 9,
    unless: list('food grade, the brush, wood drank'),
  },
  {
    note: 'cement-in-the-eye',
    happened: inEyes,
    near: [
      list(
        'cement, concrete, lime, mortar, mix, grout, paint, stain, bleach, preservative, sealer, thinner, cleaner, splashed, splash',
      ),
    ],
    within: 9,
    unless: list('screw eye, eye bolt, eye hook, hook'),
  },
  {
    note: 'cement-in-the-eye',
    happened: pairs(list('in, into'), [
      ...pairs(list('my, his, her, their'), ['eye']),
      ...pairs(list('both, both my, both his, both her, my left, my right, his left, his right, her left, her right'), [
        'eye',
      ]),
    ]),
    near: [list('got, blew, flew, splashed, sprayed')],
    within: 7,
    unless: list('sawdust, splinter'),
  },
  {
    note: 'jet-through-the-skin',
    happened: list('hit, went, through, broke, pierced, injected, shot, punctured, cut, small hole, wound'),
    near: [
      [...someones, ...pairs(list('my, his, her, the, their'), ['skin'])],
      list('sprayer, jet, airless, spray gun, paint gun, spray tip'),
    ],
    within: 9,
  },
  { note: 'jet-through-the-skin', happened: ['injected'], near: [list('paint, stain, oil, sprayer')], within: 8 },
]
