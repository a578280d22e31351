// This file is about the tops of pickets: arches over a bay, points, rounds.
import { word } from './word.ts'

export const archRise = word<'length'>('archRise', {
  kind: 'length',
  label: 'rise of the arch',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ends of the curve to its highest (or lowest) place.',
  ask: 'How much does the arch rise (or dip) in the middle?',
  called: {
    names: ['rise of the arch', 'arch rise', 'rises', 'rise', 'sag', 'dip', 'swoop', 'drop in the middle', 'rising'],
    things: ['arch', 'arc', 'curve', 'scallop', 'swoop'],
    sides: ['rise', 'high', 'dip', 'sag', 'tall', 'deep'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '3 ft' },
})

export const archShape = word<'choice'>('archShape', {
  kind: 'choice',
  label: 'way the arch goes',
  measure: 'High in the middle, or dipping in the middle.',
  ask: 'Is the arch high in the middle, or does it dip in the middle?',
  called: { names: ['way of the arch'] },
  options: {
    convex: {
      label: 'high in the middle',
      called: ['convex', 'high in the middle', 'arched up', 'crown', 'crowned', 'higher in the middle'],
    },
    concave: {
      label: 'dipping in the middle',
      called: [
        'concave',
        'scallop',
        'scalloped',
        'dip in the middle',
        'dips in the middle',
        'dipping',
        'swoop',
        'low in the middle',
        'lower in the middle',
        'dipped',
      ],
    },
  },
  usual: {
    value: 'convex',
    because: 'you did not say that it dips in the middle',
    from: 'Decided here; say “dipping” if it does.',
  },
})

export const archCurve = word<'choice'>('archCurve', {
  kind: 'choice',
  label: 'kind of curve',
  measure: 'Part of a circle, a parabola, or the curve that a chain hangs in.',
  ask: 'Is it part of a circle, a parabola, or a hanging chain’s curve?',
  called: { names: ['kind of curve'] },
  options: {
    circle: { label: 'part of a circle', called: ['circle', 'circular', 'arc of a circle', 'part of a circle'] },
    parabola: { label: 'parabola', called: ['parabola', 'parabolic'] },
    chain: {
      label: 'curve of a hanging chain',
      called: ['hanging chain', 'chain', 'catenary', 'hanging curve', 'hanging rope', 'rope'],
    },
  },
  usual: {
    value: 'circle',
    because: 'a part of a circle is drawn with a stick and a nail',
    from: 'Decided here; say if it is another.',
  },
})

export const shortestPicket = word<'length'>('shortestPicket', {
  kind: 'length',
  label: 'picket at the ends of a rising arch, or in the middle of a dip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The least length that the curve leaves: its base.',
  ask: 'How long is the shortest picket to be?',
  called: {
    names: ['shortest picket', 'lowest picket', 'base height', 'base length', 'end pickets', 'shortest', 'lowest'],
    things: ['picket', 'pickets'],
    sides: ['shortest', 'lowest', 'base'],
    plainly: false,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '7 ft' },
})

export const archRadius = word<'length'>('archRadius', {
  kind: 'length',
  label: 'radius of the arch',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The length of the stick that draws it, from nail to pencil.',
  ask: 'What is the radius of the arch?',
  called: {
    names: ['radius of the arch', 'arch radius', 'trammel'],
    asks: [
      'what radius',
      'radius of the arch',
      'radius for the arch',
      'trammel length',
      'how long a trammel',
      'radius do i need',
      'what is the radius',
      'how do i lay out an arch',
      'lay out the arch',
      'draw the arch',
      'arched top',
      'swoop',
    ],
  },
})

export const archLength = word<'length'>('archLength', {
  kind: 'length',
  label: 'length along the arch',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the curve, post to post.',
  ask: 'How long is the arch along the curve?',
  called: { names: ['length along the arch'], asks: ['length along the arch', 'arc length', 'length of the arch'] },
})

export const tallestPicket = word<'length'>('tallestPicket', {
  kind: 'length',
  label: 'tallest picket, at its highest corner',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The one that a height rule looks at.',
  ask: 'How tall is the tallest picket?',
  called: {
    names: ['tallest picket'],
    asks: [
      'tallest picket',
      'how tall is the tallest',
      'longest picket',
      'length of each picket',
      'how long is each picket',
      'picket lengths',
      'lengths of the pickets',
      'cut each picket',
      'how long to cut each picket',
      'picket heights',
    ],
  },
})

export const templateLong = word<'length'>('templateLong', {
  kind: 'length',
  label: 'template sheet, length',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The opening and a margin at both ends.',
  ask: 'How long must the template sheet be?',
  called: {
    names: ['template length'],
    asks: ['how big a template', 'template size', 'size of the template', 'template sheet'],
  },
})

export const templateWide = word<'length'>('templateWide', {
  kind: 'length',
  label: 'template sheet, width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The rise and the margin.',
  ask: 'How wide must the template sheet be?',
  called: { names: ['template width'], asks: ['template width'] },
})

export const templateMargin = word<'length'>('templateMargin', {
  kind: 'length',
  label: 'margin round the template',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is left to hold and clamp.',
  ask: 'How much margin do you want round the template?',
  called: { names: ['template margin', 'margin'], things: ['margin'], sides: ['margin'], plainly: true },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
  usual: { value: '2 in', metric: '50 mm', because: 'enough to clamp it', from: 'common practice, no source' },
})

// ── one curve over unequal bays ──

export const standardChord = word<'length'>('standardChord', {
  kind: 'length',
  label: 'opening that the arch was drawn for',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The bay whose rise you gave.',
  ask: 'For which opening was the rise chosen?',
  called: {
    names: ['standard bay', 'full bay', 'drawn for', 'usual bay', 'standard opening', 'main bay'],
    things: ['standard bay', 'full bay'],
    sides: ['standard', 'full', 'usual'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '24 in', to: '16 ft' },
})

export const otherChord = word<'length'>('otherChord', {
  kind: 'length',
  label: 'opening of the odd bay',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between its post faces.',
  ask: 'How wide is the odd bay?',
  called: {
    names: ['odd bay', 'short bay', 'shorter bay', 'other bay', 'narrow bay', 'small bay'],
    things: ['odd bay', 'short bay', 'other bay'],
    sides: ['odd', 'short', 'other', 'narrow'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '16 ft' },
})

export const riseSameRadius = word<'length'>('riseSameRadius', {
  kind: 'length',
  label: 'rise in the odd bay, with the same radius',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'One template serves all bays; the odd one rises less.',
  ask: 'How much does the odd bay rise with the same radius?',
  called: {
    names: ['rise with the same radius'],
    asks: [
      'same radius in the short bay',
      'same radius',
      'arch in the odd bay',
      'arch over the short bay',
      'unequal bays',
      'one short bay',
      'arch the short bay',
      'same template',
      'same curve in a short bay',
    ],
  },
})

export const radiusSameRise = word<'length'>('radiusSameRise', {
  kind: 'length',
  label: 'radius in the odd bay, with the same rise',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'All bays rise alike; the odd one needs a template of its own.',
  ask: 'What radius has the odd bay with the same rise?',
  called: {
    names: ['radius with the same rise'],
    asks: ['same rise in the short bay', 'same rise', 'same dip', 'radius for the short bay'],
  },
})

// ── points and rounds ──

export const pointAngle = word<'angle'>('pointAngle', {
  kind: 'angle',
  label: 'angle of the point',
  measure: 'Between its two slopes: 90° is a right-angled point.',
  ask: 'What is the angle of the point?',
  called: {
    names: ['point angle', 'angle of the point', 'degree point', 'point of', 'pointed at'],
    things: ['point', 'points', 'tip'],
    sides: ['angle', 'degrees'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '179 deg' },
  plausible: { from: '30 deg', to: '150 deg' },
  usual: { value: '90 deg', because: 'both slopes at 45° are the commonest', from: 'common practice, no source' },
})

export const pointRise = word<'length'>('pointRise', {
  kind: 'length',
  label: 'height of the point',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the shoulders to the tip.',
  ask: 'How high is the point?',
  called: {
    names: ['height of the point'],
    asks: [
      'how high is the point',
      'height of the point',
      'how tall is the point',
      'how far down do i mark the point',
      'pointed pickets',
      'cut the points',
      'shoulder of the point',
      'where do i start the point',
      'how do i cut points',
    ],
  },
})

export const pointCut = word<'angle'>('pointCut', {
  kind: 'angle',
  label: 'cut of the point, from square',
  measure: 'Set the saw over by this much from a square cut.',
  ask: 'At what angle is the point cut?',
  called: {
    names: ['cut of the point'],
    asks: [
      'angle to cut the point',
      'what angle for the points',
      'saw angle for the points',
      'what angle do i cut the points',
      'angle for pointed tops',
    ],
  },
})

export const shoulderHeight = word<'length'>('shoulderHeight', {
  kind: 'length',
  label: 'shoulder of the point, from the foot',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Mark both edges there, and the middle of the top.',
  ask: 'How far from the foot is the shoulder?',
  called: { names: ['shoulder height'], asks: ['shoulder height', 'where is the shoulder'] },
})

export const roundRadius = word<'length'>('roundRadius', {
  kind: 'length',
  label: 'radius of a half-round top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Half the picket’s width: the compass stands that far below the top.',
  ask: 'What radius has a half-round top?',
  called: {
    names: ['half-round', 'half round radius'],
    asks: ['radius for round tops', 'half round top', 'half-round top', 'round the tops', 'rounded tops', 'round tops'],
  },
})
