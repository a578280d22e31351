// This file is about the lot line, what must stay behind it, and heights and corners that a rule looks at.
import { word } from './word.ts'

const ruled = 'The rule is your place’s own: ask for it.'

export const setback = word<'length'>('setback', {
  kind: 'length',
  label: 'setback from the lot line',
  units: { imperial: 'in', metric: 'mm' },
  measure: `How far inside the line the fence must stay, above the ground. ${ruled} 0 if it may stand on the line.`,
  ask: 'How far from the lot line must the fence stay?',
  called: {
    names: [
      'setback',
      'set back',
      'from the lot line',
      'from the property line',
      'from the boundary',
      'off the line',
      'inside the line',
      'inside the lot line',
      'from the line',
    ],
    things: ['lot line', 'property line', 'boundary'],
    sides: ['setback', 'inside', 'back', 'from'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '30 ft' },
})

export const picketSide = word<'choice'>('picketSide', {
  kind: 'choice',
  label: 'what stands on the far side of the posts',
  measure: 'What reaches from the posts toward the lot line: pickets and rails, or only the posts.',
  ask: 'Do the pickets hang on the side of the lot line, or on your own side?',
  called: { names: ['side of the pickets'] },
  options: {
    outside: {
      label: 'rails and pickets toward the line',
      called: [
        'pickets outside',
        'pickets on the outside',
        'good side out',
        'facing out',
        'pickets facing the neighbor',
        'pickets on the street side',
        'pickets toward the line',
        'outside face',
      ],
    },
    between: {
      label: 'rails between the posts, pickets toward the line',
      called: ['rails between posts', 'rails between the posts'],
    },
    inside: {
      label: 'only the posts toward the line',
      called: ['pickets inside', 'pickets on the inside', 'pickets on my side', 'facing in', 'pickets facing me'],
    },
  },
  usual: {
    value: 'outside',
    because: 'with rails and pickets toward the line the posts stand furthest back, so nothing is left over the line',
    from: 'Decided here, to be on the safe side.',
  },
})

export const lineRun = word<'length'>('lineRun', {
  kind: 'length',
  label: 'length of fence along the line',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Along the lot line, end to end.',
  ask: 'How long is the fence along the line?',
  called: {
    names: ['along the line', 'length along the line', 'along the lot line', 'along the boundary'],
    things: ['fence', 'run'],
    sides: ['long', 'along'],
  },
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '2000 ft' },
})

export const postLineOffset = word<'length'>('postLineOffset', {
  kind: 'length',
  label: 'from the lot line to the middle of the posts',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Stretch the string for post centres this far inside the lot line.',
  ask: 'How far inside the line do the post centres stand?',
  called: {
    names: ['post line'],
    asks: [
      'how far from the line do the posts',
      'how far inside the line',
      'where do the post centers go',
      'where do the post centres go',
      'where does the post line',
      'how far back do the posts',
      'offset of the posts',
      'where do i put the posts',
      'how far in from the lot line',
      'how far from the property line',
      'post line',
    ],
  },
})

export const landGivenUp = word<'area'>('landGivenUp', {
  kind: 'area',
  label: 'land left outside the fence',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'Between the lot line and the outer face of the fence.',
  ask: 'How much land is left outside the fence?',
  called: {
    names: ['land given up'],
    asks: [
      'how much land do i give up',
      'how much land do i lose',
      'how much yard do i lose',
      'land given up',
      'land lost',
    ],
  },
})

export const holeInside = word<'length'>('holeInside', {
  kind: 'length',
  label: 'edge of the hole, inside the lot line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is left between the lot line and the edge of the hole; less than nothing when the hole reaches over.',
  ask: 'How far inside the line is the edge of the hole?',
  called: {
    names: ['edge of the hole'],
    asks: [
      'does the hole cross the line',
      'does the footing cross the line',
      'will the concrete cross',
      'hole over the line',
      'footing over the line',
    ],
  },
})

export const nothingOver = word<'verdict'>('nothingOver', {
  kind: 'verdict',
  label: 'over the lot line',
  measure: 'Whether fence, post or hole reaches over the lot line, by these measures.',
  ask: 'Does anything reach over the lot line?',
  called: {
    names: ['anything over the line'],
    asks: ['anything over the line', 'does anything cross the line', 'stay on my side', 'over the line'],
  },
  says: {
    yes: 'by these measures nothing reaches over',
    no: 'something reaches over the lot line',
    unknown: 'cannot say whether anything reaches over',
  },
})

// ── heights on a grade ──

export const fenceHeight = word<'length'>('fenceHeight', {
  kind: 'length',
  label: 'height of the fence on your side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground on your own side to the highest point: picket, cap or post top.',
  ask: 'How high is the fence, from the ground on your side to its highest point?',
  called: {
    names: [
      'height on my side',
      'fence height',
      'height of the fence',
      'tall on my side',
      'high on my side',
      'my side',
    ],
    things: ['fence'],
    sides: ['tall', 'high', 'height', 'my side'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '12 ft' },
})

export const gradeDifference = word<'length'>('gradeDifference', {
  difference: true,
  kind: 'length',
  label: 'other side lower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much lower the ground is on the other side of the fence. Level across and measure down.',
  ask: 'How much lower is the ground on the other side?',
  called: {
    names: [
      'other side is lower',
      'lower on the other side',
      'lower on their side',
      'their side is lower',
      'neighbor side is lower',
      'grade difference',
      'lower',
      'drop to the other side',
      'step down',
    ],
    things: ['other side', 'their side', 'neighbor'],
    sides: ['lower', 'below', 'drop'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '10 ft' },
})

export const heightLimit = word<'length'>('heightLimit', {
  kind: 'length',
  label: 'height limit',
  units: { imperial: 'in', metric: 'mm' },
  measure: `The most your rule allows. ${ruled}`,
  ask: 'How high does your rule allow the fence to be?',
  called: {
    names: ['height limit', 'limit is', 'allowed', 'maximum height', 'max height', 'may be', 'limit'],
    things: ['rule', 'limit', 'code', 'town', 'council'],
    sides: ['limit', 'max', 'maximum', 'allowed', 'allows'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '15 ft' },
})

export const heightDatum = word<'choice'>('heightDatum', {
  kind: 'choice',
  label: 'side the rule measures from',
  measure: `From the higher ground, the lower, or half way between. ${ruled}`,
  ask: 'From which side does your rule measure: the higher ground, the lower, or half way between?',
  called: { names: ['measured from'] },
  options: {
    lower: {
      label: 'the lower ground',
      called: [
        'from the lower ground',
        'from the low side',
        'lower side',
        'from the lower side',
        'measured low',
        'lowest ground',
      ],
    },
    higher: {
      label: 'the higher ground',
      called: ['from the higher ground', 'from the high side', 'higher side', 'from the higher side', 'highest ground'],
    },
    mean: { label: 'half way between', called: ['half way between', 'the average', 'mean of both', 'average grade'] },
  },
})

export const heightOtherSide = word<'length'>('heightOtherSide', {
  kind: 'length',
  label: 'height seen from the other side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the lower ground to the highest point.',
  ask: 'How high is it from the other side?',
  called: {
    names: ['height from the other side'],
    asks: [
      'how high is it from',
      'how tall is it from',
      'how high from the other side',
      'height from the other side',
      'how tall from their side',
      'height on the neighbor',
      'how high does my neighbor',
      'seen from the other side',
    ],
  },
})

export const heightByRule = word<'length'>('heightByRule', {
  kind: 'length',
  label: 'height as the rule measures it',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground that the rule names.',
  ask: 'How high is it by the rule?',
  called: { names: ['height by the rule'], asks: ['height by the rule', 'how does the rule measure it'] },
})

export const heightHolds = word<'verdict'>('heightHolds', {
  kind: 'verdict',
  label: 'height against the limit',
  measure: 'The height as the rule measures it, against the limit given.',
  ask: 'Is it within the limit?',
  called: {
    names: ['too tall', 'too high'],
    asks: [
      'is it too tall',
      'is it too high',
      'within the limit',
      'is my fence too high',
      'over the limit',
      'is that allowed',
    ],
  },
  says: {
    yes: 'nothing checked here fails',
    no: 'fails: higher than the limit you gave',
    unknown: 'cannot say: it depends on the side your rule measures from',
  },
})

export const picketFaceOut = word<'length'>('picketFaceOut', {
  kind: 'length',
  label: 'face of the pickets in front of the post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the front of the post out to the face of the pickets, rail and all.',
  ask: 'How far does the face of the pickets stand in front of the post?',
  called: { names: ['in front of the post', 'proud of the post'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
})
