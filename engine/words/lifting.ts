// This file is about lifting one thing by hand: what it weighs, where the hands are, how it is gripped.
import { liftingEquation } from '../tables/lifting-equation.ts'
import { word } from './word.ts'

export const liftWeight = word<'mass'>('liftWeight', {
  kind: 'mass',
  label: 'weight of what is lifted',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'One bag, bucket, post or footing, with all that clings to it.',
  ask: 'What does it weigh, the one thing that is lifted?',
  called: {
    names: [
      'lifting a',
      'lifting an',
      'lift a',
      'lift an',
      'lifting one',
      'lifting',
      'lifted',
      'picking up a',
      'pick up a',
    ],
    things: ['bag', 'bucket', 'post', 'footing', 'load'],
    sides: ['lift', 'lifting', 'lifted'],
  },
  possible: { above: '0 lb' },
  plausible: { from: '5 lb', to: '500 lb' },
})

export const liftReach = word<'length'>('liftReach', {
  kind: 'length',
  label: 'hands in front of the ankles',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'Level, from between the ankles out to the middle of the hands, as the lift begins. Nearer than 10 in counts as 10 in.',
  ask: 'How far in front of your ankles are your hands when the lift begins?',
  called: {
    names: [
      'in front of my ankles',
      'in front of the ankles',
      'from my ankles',
      'out from my ankles',
      'ahead of my ankles',
      'in front of me',
      'in front of my feet',
      'out from my body',
      'reach',
    ],
    things: ['hands', 'ankles'],
    sides: ['in front', 'out', 'ahead'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '4 in', to: '40 in' },
})

export const liftFrom = word<'length'>('liftFrom', {
  kind: 'length',
  label: 'hands above the floor, where the lift begins',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From what you stand on up to the middle of the hands.',
  ask: 'How high above the floor are your hands when the lift begins?',
  called: {
    names: [
      'lift begins at',
      'starts at',
      'start at',
      'from a height of',
      'up from',
      'from a tailgate at',
      'begins at',
    ],
    things: ['tailgate', 'pallet'],
    sides: ['begins', 'starts', 'from'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '72 in' },
  usual: {
    value: '0 in',
    because: 'things to be lifted mostly lie on the ground',
    from: 'Decided here; say where it begins.',
  },
})

export const liftTo = word<'length'>('liftTo', {
  kind: 'length',
  label: 'hands above the floor, where the lift ends',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From what you stand on up to the middle of the hands, as it is set down.',
  ask: 'How high above the floor are your hands when it is set down?',
  called: {
    names: [
      'lift it to',
      'up to a height of',
      'to a height of',
      'to a tailgate at',
      'onto a tailgate at',
      'into a barrow at',
      'on to a tailgate at',
      'ends at',
      'set down at',
      'lifted to',
      'raised to',
      'up to',
    ],
    things: ['tailgate', 'barrow', 'truck bed', 'bench'],
    sides: ['ends', 'up to', 'high'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '84 in' },
})

export const liftTwist = word<'angle'>('liftTwist', {
  kind: 'angle',
  label: 'twist of the body',
  measure: 'How far to the side the hands are from straight ahead, feet planted.',
  ask: 'How far do you twist to the side?',
  called: {
    names: ['twist', 'twisting', 'twisted', 'turned to the side', 'to the side'],
    things: ['twist'],
    sides: ['twist', 'twisted', 'turned'],
    plainly: true,
  },
  possible: { least: '0 deg', most: '180 deg' },
  plausible: { from: '0 deg', to: '135 deg' },
  usual: {
    value: '0 deg',
    because: 'you did not say that you twist; turn your feet instead',
    from: 'Decided here; say if you do.',
  },
})

export const liftGrip = word<'choice'>('liftGrip', {
  kind: 'choice',
  label: 'grip',
  measure: 'Handles that fit the hand, something to get the fingers under, or neither.',
  ask: 'Has it handles, something to get your fingers under, or neither?',
  called: { names: ['grip'] },
  options: {
    good: { label: 'handles that fit the hand', called: ['good grip', 'good handles', 'with handles', 'has handles'] },
    fair: { label: 'fingers under it', called: ['fair grip', 'fingers under it', 'fingers under'] },
    poor: { label: 'sags, slips or has no hold', called: ['poor grip', 'no handles', 'bad grip', 'sagging'] },
  },
  usual: {
    value: 'poor',
    because: 'bags sag, and posts and footings have no hold for the hands',
    from: liftingEquation.gripFrom,
  },
})

export const liftLimit = word<'mass'>('liftLimit', {
  kind: 'mass',
  label: 'recommended weight limit for this lift',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'By the lifting equation, where the lift begins. A check, not a permission.',
  ask: 'What is the recommended weight limit for this lift?',
  called: {
    names: ['recommended weight limit'],
    asks: [
      'recommended weight limit',
      'recommended weight for',
      'what is the limit for lifting',
      'lifting limit',
      'limit for this lift',
      'how heavy may it be',
      'check this lift',
    ],
  },
})

export const liftIndex = word<'number'>('liftIndex', {
  kind: 'number',
  label: 'weight, against that limit',
  measure: 'The weight divided by the limit: over 1 the risk is raised, over 3 it is high.',
  ask: 'How many times the limit is it?',
  called: {
    names: ['lifting index'],
    asks: ['lifting index', 'how many times the limit', 'how far over the limit is the lift'],
  },
})

export const liftChecked = word<'verdict'>('liftChecked', {
  kind: 'verdict',
  label: 'this lift, by the lifting equation',
  measure: 'The weight against the recommended limit. It knows nothing of your back, your footing or your day.',
  ask: 'Is it too heavy by the lifting equation?',
  called: {
    names: ['too heavy by the equation'],
    asks: [
      'is that too heavy for me',
      'is it too heavy for me',
      'too heavy for one lift',
      'too heavy by the lifting equation',
      'is lifting it too much',
      'too heavy to pick up',
      'is that bag too heavy',
      'is the bag too heavy',
      'is that too heavy',
    ],
  },
  says: {
    yes: 'nothing checked here fails',
    no: 'fails: heavier than the recommended limit',
    unknown: 'cannot say: it is just at the limit',
  },
})
