// This file is about fences on a slope: steps, rails that follow the ground, posts cut to a string.
import { word } from './word.ts'

export const slopeBays = word<'count'>('slopeBays', {
  kind: 'count',
  noun: 'bay',
  label: 'bays on the slope',
  whole: true,
  measure: 'Equal bays, measured level.',
  ask: 'How many bays does the slope take?',
  called: {
    names: ['bays on the slope'],
    things: ['bay', 'step', 'panel', 'section'],
    asks: ['how many bays on the slope', 'how many panels', 'how many steps'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '200' },
})

export const stepEach = word<'length'>('stepEach', {
  kind: 'length',
  label: 'step at each post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much lower each bay is than the one before.',
  ask: 'How big is the step at each post?',
  called: {
    names: ['step', 'step each'],
    asks: [
      'per step',
      'step per bay',
      'how much per step',
      'step height',
      'how tall is each step',
      'does each bay step',
      'drop per bay',
      'steps on the',
      'how big a step',
      'how big is the step',
      'how much do i step',
      'how far do i step',
      'step down at each post',
      'step per bay',
      'step each bay',
      'how big are the steps',
      'stepped fence',
      'step the fence',
      'step it down',
    ],
  },
})

export const stepTape = word<'length'>('stepTape', {
  kind: 'length',
  label: 'step by the tape',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'At the nearest mark. Measure each step from the top of the run, so that rounding does not add up.',
  ask: 'What is the step by the tape?',
  called: { names: ['step by the tape'], asks: ['step by the tape'] },
})

export const gapUnderStep = word<'length'>('gapUnderStep', {
  kind: 'length',
  label: 'gap under the low end of each bay',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Under a level bay the ground falls away: the gap at its low end is the gap at its high end and the step.',
  ask: 'How big is the gap under the low end?',
  called: {
    names: ['gap under each bay'],
    asks: [
      'gap under the panel',
      'gap under each panel',
      'gap under the fence',
      'how big is the gap under',
      'gap at the low end',
      'will the dog get under',
      'gap at the bottom',
    ],
  },
})

export const highEndGap = word<'length'>('highEndGap', {
  kind: 'length',
  label: 'gap under the high end of each bay',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground to the bottom of the pickets, where the ground is highest under them.',
  ask: 'How much gap do you leave under the pickets at the high end?',
  called: {
    names: ['gap at the high end', 'bottom gap', 'gap under the pickets', 'off the ground', 'clearance under'],
    sides: ['under', 'high end'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
  usual: {
    value: '2 in',
    metric: '50 mm',
    because: 'wood lasts longer clear of soil and wet grass',
    from: 'common practice, no source',
  },
})

export const widestUnder = word<'length'>('widestUnder', {
  kind: 'length',
  label: 'widest gap allowed underneath',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What your dog, or your rule, lets you leave.',
  ask: 'How big may the gap underneath be at most?',
  called: {
    names: [
      'gap underneath at most',
      'under it at most',
      'underneath',
      'no more than underneath',
      'dog gap',
      'gap underneath',
    ],
    sides: ['underneath', 'dog'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '24 in' },
})

export const underHolds = word<'verdict'>('underHolds', {
  kind: 'verdict',
  label: 'gap underneath against your limit',
  measure: 'The gap at the low end of a bay against the limit you gave.',
  ask: 'Is the gap underneath small enough?',
  called: { names: ['gap underneath small enough'], asks: ['is the gap small enough', 'small enough for the dog'] },
  says: {
    yes: 'every gap underneath is within your limit',
    no: 'the gap underneath is over your limit',
    unknown: 'cannot say: no limit was given',
  },
})

export const longerPost = word<'length'>('longerPost', {
  kind: 'length',
  label: 'post that stands at a step, longer by',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'A post between two bays carries the rails of the higher one: it is longer by the step than on level ground.',
  ask: 'How much longer are the posts?',
  called: {
    names: ['longer posts'],
    asks: ['how much longer are the posts', 'how much longer do the posts', 'posts longer', 'longer posts'],
  },
})

export const dropPerBay = word<'length'>('dropPerBay', {
  kind: 'length',
  label: 'drop over one bay',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From one post to the next.',
  ask: 'How much does the ground drop over one bay?',
  called: { names: ['drop per bay'], asks: ['drop per bay', 'how much drop per bay', 'drop over one bay'] },
})

export const rakedRail = word<'length'>('rakedRail', {
  kind: 'length',
  label: 'rail along the slope, one edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the post faces, measured along the rail’s top or bottom edge.',
  ask: 'How long is a rail along the slope?',
  called: {
    names: ['raked rail', 'rail along the slope'],
    asks: [
      'how long is the rail on a slope',
      'how long are the raked rails',
      'rail length on the slope',
      'rail on the slope',
      'raked rail',
      'rails that follow the slope',
      'rails that follow the ground',
      'length of the sloping rail',
    ],
  },
})

export const rakedBay = word<'length'>('rakedBay', {
  kind: 'length',
  label: 'along the slope, post centre to post centre',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A rail that runs over the faces of the posts takes so much for each bay.',
  ask: 'How long is a bay along the slope?',
  called: { names: ['bay along the slope'] },
})

export const rakedBlank = word<'length'>('rakedBlank', {
  kind: 'length',
  label: 'rail along the slope, as cut',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Long point to long point: both ends are cut plumb, so one edge is set off against the other.',
  ask: 'How long must the blank be?',
  called: { names: ['blank for the rail'], asks: ['how long a blank', 'length to cut the rail'] },
})

export const plumbCut = word<'angle'>('plumbCut', {
  kind: 'angle',
  label: 'end cut of the rail, from square',
  measure: 'Set the saw over by this much; the ends stand plumb against the posts.',
  ask: 'At what angle are the rail ends cut?',
  called: {
    names: ['plumb cut', 'end cut'],
    asks: [
      'what angle do i cut the rail',
      'rail end cut',
      'angle of the rail ends',
      'cut the ends of the rails',
      'plumb cut',
      'what angle for the rails',
    ],
  },
})

export const pitchAlongRail = word<'length'>('pitchAlongRail', {
  kind: 'length',
  label: 'picket to picket, along the rail',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From one picket’s centre to the next, marked along the sloping rail.',
  ask: 'How far apart are the pickets along the rail?',
  called: {
    names: ['pitch along the rail'],
    asks: ['pitch along the rail', 'spacing along the rail', 'marks along the rail'],
  },
})

export const bottomBevel = word<'length'>('bottomBevel', {
  kind: 'length',
  label: 'picket’s bottom, one edge lower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A plumb picket that follows the ground is cut aslant at its foot.',
  ask: 'How much is the foot of a picket cut aslant?',
  called: {
    names: ['bevel of the picket'],
    asks: ['how are the bottoms cut', 'cut the bottoms of the pickets', 'bottom of each picket'],
  },
})

export const groundReadings = word<'length'>('groundReadings', {
  kind: 'length',
  list: true,
  label: 'string above ground at each post, in order',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'Stretch the string at the height of the post tops, from the first post to the last. At every post measure from the ground up to it.',
  ask: 'How high is the string above the ground at each post, in order?',
  called: {
    names: [
      'string heights',
      'string above ground',
      'ground to the string',
      'ground to string',
      'string is',
      'up to the string',
      'heights at the posts',
    ],
    things: ['string'],
    sides: ['above', 'string', 'up'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '12 ft' },
})

export const tallestPost = word<'length'>('tallestPost', {
  kind: 'length',
  label: 'longest post needed',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The highest place of the string above ground, and what is in the ground.',
  ask: 'How long is the longest post?',
  called: {
    names: ['longest post'],
    asks: [
      'how long is the longest post',
      'longest post',
      'what length of posts',
      'how long must the posts be',
      'how long do the posts need',
      'cut heights',
      'cut the posts',
      'cut height of the posts',
      'where do i cut the posts',
      'post heights',
    ],
  },
})

export const shortestPost = word<'length'>('shortestPost', {
  kind: 'length',
  label: 'shortest post needed',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The lowest place of the string above ground, and what is in the ground.',
  ask: 'How long is the shortest post?',
  called: { names: ['shortest post'], asks: ['shortest post', 'how long is the shortest post'] },
})
