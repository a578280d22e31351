// This file is about rot in a post: how deep it goes, and what it leaves.
import { word } from './word.ts'

export const rotDepth = word<'length'>('rotDepth', {
  kind: 'length',
  label: 'depth of the rot',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'Push a thin screwdriver in at the ground line, where it is worst, square to the face: how far it goes before the wood holds it.',
  ask: 'How deep does a screwdriver go into the rot, at its worst place?',
  called: {
    names: [
      'rotted',
      'rotten',
      'rotten in by',
      'depth of the rot',
      'rot goes',
      'rot is',
      'rotten to',
      'rot of',
      'soft to',
      'probe goes in',
      'screwdriver goes in',
      'goes in',
      'sinks in',
    ],
    things: ['rot', 'probe', 'screwdriver', 'soft wood', 'awl', 'decay'],
    sides: ['deep', 'depth', 'in'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '6 in' },
})

export const rotWhere = word<'choice'>('rotWhere', {
  kind: 'choice',
  label: 'place of the rot',
  measure:
    'Probe all four faces. A hollow sound under the hammer, with sound faces, is rot inside: bore a small hole to find how thick the sound wood is.',
  ask: 'Where is the rot: on one face, on two opposite faces, on two faces that meet, all round, or inside with sound faces?',
  called: {},
  options: {
    one: {
      label: 'one face',
      called: [
        'on one face',
        'on one side',
        'deep on one side',
        'one face only',
        'only one face',
        'rot on one side',
        'rotten on one side',
        'soft on one side',
      ],
    },
    opposite: {
      label: 'two opposite faces',
      called: ['two opposite faces', 'opposite faces', 'rot front and back', 'rotten front and back'],
    },
    corner: { label: 'two faces that meet', called: ['two faces that meet', 'faces that meet', 'adjoining faces'] },
    all: {
      label: 'all round',
      called: [
        'all around',
        'all round',
        'all the way round',
        'rot all round',
        'rot all around',
        'rotten all round',
        'rotten all around',
        'soft all round',
        'soft all around',
        'deep all round',
        'deep all around',
        'all round the post',
        'all around the post',
        'all four faces',
        'every face',
      ],
    },
    inside: {
      label: 'inside, the faces sound',
      called: [
        'rotten inside',
        'rot inside',
        'hollow inside',
        'hollow post',
        'heart rot',
        'rotten heart',
        'rotten in the middle',
      ],
    },
  },
})

export const soundShell = word<'length'>('soundShell', {
  kind: 'length',
  label: 'sound wood round the rot',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Bore a thin hole toward the middle: how far the bit goes through hard wood before it drops into soft.',
  ask: 'How thick is the sound wood round the rotten heart?',
  called: {
    names: ['sound wood', 'sound shell', 'of sound wood', 'hard wood left', 'of good wood'],
    things: ['shell'],
    sides: ['sound'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '6 in' },
})

export const postSection = word<'choice'>('postSection', {
  kind: 'choice',
  label: 'square or round post',
  measure: 'As it is seen from above.',
  ask: 'Is the post square or round?',
  called: {},
  options: {
    square: { label: 'square', called: ['square post', 'square posts'] },
    round: { label: 'round', called: ['round post', 'round posts', 'round pole'] },
  },
  usual: {
    value: 'square',
    because: 'most picket fences stand on square posts',
    from: 'Decided here; say “round post” if it is.',
  },
})

export const soundWidth = word<'length'>('soundWidth', {
  kind: 'length',
  label: 'sound width left, across the thinnest way',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From sound wood to sound wood.',
  ask: 'How much sound width is left?',
  called: {
    names: ['width left', 'sound width'],
    asks: ['how much sound wood is left', 'how much sound width is left'],
  },
})

export const sectionLeft = word<'percent'>('sectionLeft', {
  kind: 'percent',
  label: 'strength left in bending',
  measure: 'Section modulus left, of the whole post’s, bent the weaker way. The wood that is left is taken as sound.',
  ask: 'How much of the post’s strength is left?',
  called: {
    names: ['strength left', 'section left'],
    asks: [
      'strength left',
      'how strong still',
      'still strong',
      'how much strength',
      'how much strength is left',
      'how much of the post is left',
      'how much strength does it have left',
      'how much strength has it lost',
      'how strong is the rotten post',
      'how much of its strength is left',
      'how much of the strength is left',
      'strength left',
      'what does the rot leave',
      'what has the rot left',
    ],
  },
  possible: { least: '0 %', most: '100 %' },
})

export const stiffnessLeft = word<'percent'>('stiffnessLeft', {
  kind: 'percent',
  label: 'stiffness left',
  measure: 'Second moment of area left, of the whole post’s, bent the weaker way: how much less it resists swaying.',
  ask: 'How much of the post’s stiffness is left?',
  called: { names: ['stiffness left'], asks: ['how much stiffness is left', 'stiffness left'] },
})

export const postServes = word<'verdict'>('postServes', {
  kind: 'verdict',
  label: 'the post, by what the rot left',
  measure: 'Two thirds of the strength, as line companies keep it for their poles. No code for fences.',
  ask: 'Can the post stay?',
  called: {
    names: ['post can stay'],
    asks: [
      'keep it or not',
      'keep it or replace',
      'can i keep it',
      'keep the post',
      'can the post stay',
      'is the post still good',
      'is the post still sound',
      'is the rotten post still good',
      'must the post go',
      'does the post have to go',
      'is the post too rotten',
      'too rotten',
    ],
  },
  says: {
    yes: 'it may stay by this rule; watch it',
    no: 'too little left by this rule',
    unknown: 'cannot say whether it may stay',
  },
})

// ── sister or replace ──

export const rotHeight = word<'length'>('rotHeight', {
  kind: 'length',
  label: 'rot up the post, above the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Probe upward from the ground until the wood is hard all round.',
  ask: 'How far up the post from the ground does the rot go?',
  called: {
    names: [
      'above grade',
      'above the grade',
      'rot is',
      'rot goes',
      'rotten up to',
      'rot up the post',
      'up the post',
      'above the ground',
      'rot reaches',
      'rotten up to',
      'up from the ground',
      'above ground',
    ],
    things: ['rot'],
    sides: ['up', 'high', 'reaches', 'above'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '6 ft' },
})

export const sisterLap = word<'length'>('sisterLap', {
  kind: 'length',
  label: 'lap of the sister on sound wood',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the new piece runs up beside sound wood, bolted through.',
  ask: 'How far shall the sister run up beside sound wood?',
  called: { names: ['lap of the sister', 'sister lap', 'lap on sound wood'], things: ['lap'], sides: ['lap'] },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '5 ft' },
  usual: {
    value: '24 in',
    metric: '600 mm',
    because: 'two bolts well apart, with wood beyond them',
    from: 'trade rule, no source',
  },
})

export const sisterLength = word<'length'>('sisterLength', {
  kind: 'length',
  label: 'length of the sister post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From its foot to its top: in the ground as deep as the trade’s rule says, past the rot, and along the lap.',
  ask: 'How long is the sister post?',
  called: {
    names: ['sister length'],
    asks: [
      'how long a sister',
      'how long is the sister',
      'how long must the sister',
      'how long should the sister',
      'length of the sister',
      'what length of sister',
    ],
  },
})

export const sisterServes = word<'verdict'>('sisterServes', {
  kind: 'verdict',
  label: 'a sister post, by this rule',
  measure:
    'A new length of post for the ground, bolted beside the old one, needs sound wood above the rot to be bolted to.',
  ask: 'Sister the post or replace it?',
  called: {
    names: ['sister or replace'],
    asks: [
      'sister',
      'sistered',
      'sister or replace',
      'sister it or replace it',
      'sister the post or replace',
      'can i sister',
      'can i sister the post',
      'can it be sistered',
      'will a sister do',
      'sister post or new post',
      'sister or new post',
      'repair or replace',
      'mend or replace',
      'splint or replace',
    ],
  },
  says: {
    yes: 'a sister will do by this trade rule',
    no: 'replace the post',
    unknown: 'cannot say: sister or replace',
  },
})
