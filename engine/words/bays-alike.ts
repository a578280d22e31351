// This file is about bays of different widths that should look alike, story sticks, and wood that is still wet.
import { word } from './word.ts'

export const openings = word<'length'>('openings', {
  kind: 'length',
  list: true,
  label: 'openings of the bays',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Each from post face to post face, in order.',
  ask: 'How wide are the openings, each in order?',
  called: {
    names: ['openings', 'openings of', 'openings are', 'bays of', 'bays are', 'bay openings'],
    things: ['opening', 'openings', 'bay', 'bays'],
    sides: ['wide', 'clear', 'openings'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '16 ft' },
})

export const seenFrom = word<'length'>('seenFrom', {
  kind: 'length',
  label: 'difference that would be seen',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Gaps that differ by less than this pass for alike, a few steps off.',
  ask: 'From what difference on would you see that gaps differ?',
  called: { names: ['difference that would be seen', 'would be seen', 'noticeable'], sides: ['noticeable', 'seen'] },
  possible: { above: '0 in' },
  plausible: { from: '1/32 in', to: '1 in' },
  usual: {
    value: '1/8 in',
    metric: '3 mm',
    because: 'gaps side by side pass for alike below that',
    from: 'common practice, no source',
  },
})

export const gapsDiffer = word<'length'>('gapsDiffer', {
  kind: 'length',
  label: 'widest and narrowest gap differ by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Over all bays, with the best counts.',
  ask: 'By how much do the gaps differ?',
  called: {
    names: ['difference of the gaps'],
    asks: [
      'how much do the gaps differ',
      'make the bays look alike',
      'bays look alike',
      'bays look the same',
      'look alike',
      'look the same',
      'same look',
      'match the bays',
      'gaps look the same',
      'different bays',
    ],
  },
})

export const alike = word<'verdict'>('alike', {
  kind: 'verdict',
  label: 'bays side by side',
  measure: 'The difference of the gaps against what would be seen.',
  ask: 'Will the bays look alike?',
  called: {
    names: ['will be noticed'],
    asks: ['will anyone notice', 'would you notice', 'will it show', 'will you see the difference'],
  },
  says: {
    yes: 'the difference would hardly be seen',
    no: 'the difference would be seen',
    unknown: 'cannot say whether it would be seen',
  },
})

export const stickPitch = word<'length'>('stickPitch', {
  kind: 'length',
  label: 'step marked on the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A handy step, longer than from picket to picket: laid aslant, the stick shortens it to fit.',
  ask: 'How far apart are the marks on the stick?',
  called: {
    names: [
      'marks on the stick',
      'step on the stick',
      'stick marked every',
      'marked every',
      'stick marks',
      'marks every',
    ],
    things: ['stick', 'story stick', 'storey stick', 'marks'],
    sides: ['marked', 'marks', 'every'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '24 in' },
})

export const stickAngle = word<'angle'>('stickAngle', {
  kind: 'angle',
  label: 'stick, from level',
  measure: 'How steeply the stick lies between the posts.',
  ask: 'How steeply does the stick lie?',
  called: {
    names: ['angle of the stick'],
    asks: [
      'what angle for the stick',
      'how do i lay the stick',
      'lay the stick',
      'slanted stick',
      'story stick at an angle',
      'story stick',
      'storey stick',
      'stick aslant',
    ],
  },
})

export const stickLength = word<'length'>('stickLength', {
  kind: 'length',
  label: 'stick, from post face to post face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the stick.',
  ask: 'How long is the stick between the posts?',
  called: { names: ['length of the stick'], asks: ['how long is the stick', 'how long a stick'] },
})

export const stickDrop = word<'length'>('stickDrop', {
  kind: 'length',
  label: 'one end of the stick lower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between its two ends at the post faces.',
  ask: 'How much lower is one end of the stick?',
  called: { names: ['drop of the stick'], asks: ['how much lower is one end', 'drop of the stick'] },
})

export const firstStickMark = word<'length'>('firstStickMark', {
  kind: 'length',
  label: 'first mark, along the stick from the post face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The middle of the first picket.',
  ask: 'Where on the stick is the first mark?',
  called: { names: ['first mark'], asks: ['where is the first mark', 'first mark on the stick'] },
})

// ── wet wood ──

export const species = word<'choice'>('species', {
  kind: 'choice',
  label: 'kind of wood',
  measure: 'As it is called at the yard.',
  ask: 'Which wood is it: western redcedar, northern white-cedar, Douglas-fir, southern pine (loblolly), white fir, white ash or black locust?',
  called: { names: ['species', 'kind of wood'] },
  options: {
    'western-redcedar': {
      label: 'western redcedar',
      called: ['western redcedar', 'western red cedar', 'red cedar', 'redcedar', 'cedar'],
    },
    'northern-white-cedar': {
      label: 'northern white-cedar',
      called: ['northern white cedar', 'northern white-cedar', 'white cedar'],
    },
    'douglas-fir': { label: 'Douglas-fir (coast)', called: ['douglas fir', 'douglas-fir', 'oregon', 'doug fir'] },
    'white-fir': { label: 'white fir', called: ['white fir'] },
    'black-locust': { label: 'black locust', called: ['black locust', 'locust', 'robinia'] },
    'white-ash': { label: 'white ash', called: ['white ash', 'ash'] },
  },
})

export const grain = word<'choice'>('grain', {
  kind: 'choice',
  label: 'grain of the boards',
  measure: 'Look at the end: rings lying flat across the width are flat grain, rings standing up are edge grain.',
  ask: 'Is it flat grain (rings lying across the width) or edge grain (rings standing up)?',
  called: { names: ['grain'] },
  options: {
    flat: { label: 'flat grain', called: ['flat grain', 'flatsawn', 'flat sawn', 'plain sawn', 'tangential'] },
    edge: { label: 'edge grain', called: ['edge grain', 'quartersawn', 'quarter sawn', 'vertical grain', 'radial'] },
  },
  usual: {
    value: 'flat',
    because: 'most pickets are flat grain, which moves more',
    from: 'common practice, no source',
  },
})

export const moistureNow = word<'percent'>('moistureNow', {
  kind: 'percent',
  label: 'moisture of the wood now',
  measure: 'With a pin meter, a quarter deep.',
  ask: 'What moisture has the wood now?',
  called: {
    names: ['moisture now', 'now at', 'is at', 'reads', 'right now', 'wet at', 'now'],
    things: ['moisture', 'meter', 'wood'],
    sides: ['now', 'reads', 'today'],
    plainly: true,
  },
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '6 %', to: '60 %' },
})

export const moistureLater = word<'percent'>('moistureLater', {
  kind: 'percent',
  label: 'moisture it will settle at',
  measure: 'Outdoors it settles by the air: ask me for the equilibrium moisture of your air.',
  ask: 'What moisture will the wood settle at?',
  called: {
    names: [
      'settles at',
      'settle at',
      'dries to',
      'dry to',
      'will dry to',
      'down to',
      'later',
      'end up at',
      'when dry',
      'in summer',
    ],
    things: ['moisture', 'wood'],
    sides: ['later', 'dries', 'settle', 'settles'],
    plainly: true,
  },
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '5 %', to: '25 %' },
})

export const gapDry = word<'length'>('gapDry', {
  kind: 'length',
  label: 'gap wanted when it is dry',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The gap you want to see in the end.',
  ask: 'What gap do you want when the wood is dry?',
  called: {
    names: ['gap when dry', 'dry gap', 'gap later', 'final gap', 'end up with a gap'],
    things: ['gap', 'gaps'],
    sides: ['dry', 'later', 'final', 'when dry'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '4 in' },
})

export const widthChange = word<'length'>('widthChange', {
  kind: 'length',
  label: 'each picket changes by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Less than nothing when it shrinks.',
  ask: 'How much does each picket change?',
  called: {
    names: ['shrinkage'],
    asks: [
      'how much will it shrink',
      'how much will they shrink',
      'how much does it shrink',
      'how much shrinkage',
      'how much will the pickets shrink',
      'how much will the boards shrink',
      'how much will it swell',
    ],
  },
})

export const gapNow = word<'length'>('gapNow', {
  kind: 'length',
  label: 'gap to set now',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'So that it is right when the wood has settled.',
  ask: 'What gap do I set now?',
  called: {
    names: ['gap now', 'gap to set now'],
    asks: [
      'what gap do i set now',
      'what gap now',
      'gap to set now',
      'what gap should i set',
      'gap with wet wood',
      'wet pickets',
      'wet wood gap',
      'butt them now',
      'how far apart now',
      'gap for wet',
    ],
  },
})
