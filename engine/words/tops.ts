// This file is about tops that follow one curve over a bay: arches and dips.
import { word } from './word.ts'

export const archRise = word<'length'>('archRise', {
  replaces: ['heightInMiddle'],
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
  replaces: ['longestPicket', 'endPicket', 'curveBase'],
  kind: 'length',
  label: 'shortest picket, at its shorter edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Foot to curve: at the ends of a rising arch, in the middle of a dip.',
  ask: 'How long is the shortest picket to be, at its shorter edge? Or say how long the longest is to be.',
  called: {
    names: ['shortest picket', 'lowest picket', 'shortest', 'lowest'],
    things: ['picket', 'pickets'],
    sides: ['shortest', 'lowest'],
    plainly: false,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '7 ft' },
})

export const longestPicket = word<'length'>('longestPicket', {
  replaces: ['shortestPicket', 'endPicket', 'curveBase'],
  kind: 'length',
  label: 'longest picket to be, at its highest place',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Foot to curve: in the middle of a rising arch, at the ends of a dip.',
  ask: 'How long is the longest picket to be?',
  called: {
    names: ['longest picket', 'tallest picket', 'highest picket', 'longest', 'tallest'],
    things: ['picket', 'pickets'],
    sides: ['longest', 'tallest', 'highest'],
    plainly: false,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '10 ft' },
})

export const endPicket = word<'length'>('endPicket', {
  replaces: ['shortestPicket', 'longestPicket', 'curveBase'],
  kind: 'length',
  label: 'picket at each end, at its outer edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Foot to curve, at the edge by the post: the shortest place of a rising arch, the longest of a dip.',
  ask: 'How long is the picket at each end to be, at its outer edge?',
  called: {
    names: ['end pickets', 'end picket', 'outer pickets', 'picket at the post', 'pickets at the posts'],
    things: ['end picket', 'end pickets'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '10 ft' },
})

export const curveBase = word<'length'>('curveBase', {
  replaces: ['shortestPicket', 'longestPicket', 'endPicket'],
  kind: 'length',
  label: 'base of the curve, above the pickets’ feet',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Where the curve ends at the post faces, or the lowest place of a dip.',
  ask: 'How high above the pickets’ feet does the curve begin?',
  called: {
    names: ['base height', 'base length', 'base of the curve', 'curve starts at', 'curve begins at'],
    sides: ['base'],
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
