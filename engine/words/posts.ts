// This file is about posts and their holes.
import { word } from './word.ts'

const rule = 'trade rule, no source'

export const posts = word<'count'>('posts', {
  kind: 'count',
  noun: 'post',
  label: 'posts',
  whole: true,
  inherits: false,
  measure: 'Count the posts of this kind, one hole each.',
  ask: 'How many posts are there?',
  called: {
    names: ['number of posts', 'post count', 'holes to dig'],
    things: ['post', 'hole', 'footing', 'post hole', 'posthole'],
    asks: [
      'how many posts',
      'how many fence posts',
      'posts do i need',
      'posts needed',
      'posts will i need',
      'posts are needed',
      'number of posts',
      'many posts',
    ],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '400' },
})

export const postWidth = word<'length'>('postWidth', {
  kind: 'length',
  label: 'post width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure the post itself across one face: a 4x4 is 3 1/2 in.',
  ask: 'How wide is a post, measured across one face?',
  called: {
    names: ['post width', 'post size', 'post thickness', 'thickness of the post', 'width of the post'],
    things: ['post', 'upright'],
    sides: ['wide', 'width', 'thick', 'thickness', 'square', 'actual', 'across', 'sq'],
    plainly: true,
  },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '1 1/2 in', to: '12 in' },
  usual: {
    value: '3 1/2 in',
    metric: '90 mm',
    because: 'a nominal 4x4 is dressed to 3 1/2 in, and metric fence posts are often 90 mm',
    from: 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source',
  },
})

export const postAbove = word<'length'>('postAbove', {
  kind: 'length',
  label: 'post height above ground',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Measure from the ground to the top of the post.',
  ask: 'How tall does the post stand above the ground?',
  called: {
    names: [
      'post height',
      'fence height',
      'height above ground',
      'height of the fence',
      'above ground',
      'above the ground',
      'above grade',
      'out of the ground',
      'sticking up',
    ],
    things: ['fence', 'picket fence'],
    sides: ['tall', 'high', 'height', 'above', 'exposed'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '10 ft' },
})

export const postLength = word<'length'>('postLength', {
  kind: 'length',
  label: 'post length',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'The whole post, end to end.',
  ask: 'How long is the whole post?',
  called: {
    names: [
      'post length',
      'length of the post',
      'length of post',
      'overall length',
      'whole length',
      'total length of the post',
    ],
    things: ['post'],
    sides: ['long', 'length', 'overall'],
    plainly: true,
    asks: [
      'what size post',
      'what size of post',
      'how long should each be',
      'how long each',
      'how long should the post',
      'how long a post',
      'what length post',
      'how long do the post',
      'what length of post',
      'how long are the post',
      'how long must the post',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '2 ft', to: '20 ft' },
})

export const holeDiameter = word<'length'>('holeDiameter', {
  kind: 'length',
  label: 'hole width',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'Measure straight across the hole, rim to rim: the diameter, not the radius. A square hole is measured side to side.',
  ask: 'How wide are the holes, measured straight across?',
  called: {
    names: [
      'hole width',
      'hole diameter',
      'width of the hole',
      'diameter of the hole',
      'auger size',
      'auger bit',
      'hole size',
    ],
    things: ['hole', 'auger', 'footing', 'posthole', 'post hole', 'bore', 'bit'],
    sides: ['wide', 'width', 'diameter', 'dia', 'diam', 'across', 'round', 'square', 'sq', 'ø'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '4 in', to: '36 in' },
})

export const holeShape = word<'choice'>('holeShape', {
  kind: 'choice',
  label: 'shape of the hole',
  measure: 'Seen from above. An auger bores a round hole; a spade may cut a square one.',
  ask: 'Are the holes round or square?',
  called: {},
  saidOf: 'holeDiameter',
  options: {
    round: {
      label: 'round',
      called: [
        'round',
        'circular',
        'round hole',
        'circular hole',
        'hole is round',
        'holes are round',
        'holes were round',
      ],
    },
    square: {
      label: 'square',
      called: [
        'square',
        'sq',
        'square hole',
        'square footing',
        'square post hole',
        'square posthole',
        'hole is square',
        'holes are square',
        'holes were square',
        'holes dug square',
      ],
    },
  },
  usual: {
    value: 'round',
    because: 'an auger or a post-hole digger makes it so; say “square” if yours are cut square',
    from: 'Decided here.',
  },
})

export const holeDepth = word<'length'>('holeDepth', {
  kind: 'length',
  label: 'hole depth',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure from the ground to the bottom of the hole, under any stone.',
  ask: 'How deep are the holes, stone included?',
  called: {
    names: ['hole depth', 'depth of the hole', 'depth of hole'],
    things: ['hole', 'footing', 'posthole', 'post hole'],
    sides: ['deep', 'depth'],
    asks: ['how deep', 'what depth', 'how far down'],
  },
  possible: { above: '0 in' },
  plausible: { from: '8 in', to: '8 ft' },
})

export const stoneDepth = word<'length'>('stoneDepth', {
  kind: 'length',
  label: 'stone under the post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure how deep the stone or gravel lies in the bottom of the hole, tamped.',
  ask: 'How deep is the stone in the bottom of each hole? Say none if there is none.',
  called: {
    names: [
      'gravel in the bottom',
      'stone in the bottom',
      'gravel base',
      'stone base',
      'gravel bed',
      'gravel under',
      'stone under',
      'of gravel',
      'of stone',
      'of crushed stone',
      'of pea gravel',
      'of drainage',
      'of crushed rock',
      'of rock',
      'of ballast',
      'of shingle',
      'of metal',
    ],
    things:
      'gravel,stone,rock,drainage,crushed stone,pea gravel,ballast,shingle,scoria,scalpings,hardcore,blue metal'.split(
        ',',
      ),
    sides: ['bottom', 'under', 'base', 'bed', 'deep', 'layer', 'on'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '18 in' },
})

export const concreteBelowGrade = word<'length'>('concreteBelowGrade', {
  downward: true,
  kind: 'length',
  label: 'concrete stops below the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure from the ground down to the top of the concrete.',
  ask: 'How far below the ground does the concrete stop?',
  called: {
    names: [
      'concrete stops',
      'stop the concrete',
      'below grade',
      'below the ground',
      'below ground',
      'below the surface',
      'soil on top',
      'dirt on top',
      'earth on top',
      'from the top',
      'short of the top',
      'below the top',
    ],
    things: ['soil', 'dirt', 'topsoil', 'turf', 'earth'],
    sides: ['below', 'short', 'top', 'over', 'on'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
  usual: {
    value: '0 in',
    metric: '0 mm',
    because: 'the concrete is filled to the ground, which takes the most',
    from: rule,
  },
})

export const concreteUnder = word<'length'>('concreteUnder', {
  kind: 'length',
  label: 'concrete under the post',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'From the foot of the post down to the stone, or to the bottom of the hole. None where the post stands on them.',
  ask: 'How much concrete is there under the foot of the post? Say none if it stands on stone or on the bottom.',
  called: {
    names: [
      'concrete under',
      'concrete below the post',
      'concrete beneath',
      'of concrete under',
      'of concrete below the post',
      'of concrete beneath',
      'off the bottom',
      'above the bottom of the hole',
      'hung',
      'hangs',
      'hanging',
    ],
    things: ['concrete', 'foot'],
    sides: ['under', 'beneath', 'underneath', 'hung', 'off the bottom'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '24 in' },
})

export const embedment = word<'length'>('embedment', {
  kind: 'length',
  label: 'post in the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground to the foot of the post. Stone under the post does not count.',
  ask: 'How much of the post is in the ground, stone not counted?',
  called: {
    names: ['in the ground', 'embedment', 'buried', 'below ground', 'underground', 'set in the ground'],
    things: ['post'],
    sides: ['deep', 'depth', 'buried', 'bury'],
    asks: [
      'how deep should the post',
      'how much of the post',
      'how deep do the post',
      'how deep to set',
      'how deep to bury',
      'how far in the ground',
      'how deep do i set',
      'how deep must',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '6 in', to: '8 ft' },
})

export const frostDepth = word<'length'>('frostDepth', {
  kind: 'length',
  label: 'local frost depth',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Ask the building office: it is set for each place.',
  ask: 'What frost depth does your building office give?',
  called: {
    names: ['frost depth', 'frost line', 'frostline', 'frost level', 'freezing depth'],
    things: ['frost'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '10 ft' },
})

export const officeDepth = word<'length'>('officeDepth', {
  kind: 'length',
  label: 'least post depth that the building office asks for',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Ask the building office or council. It is depth of the post in the ground, without the stone under it.',
  ask: 'What least depth of post does your building office ask for?',
  called: {
    names: [
      'code depth',
      'code says',
      'code wants',
      'code requires',
      'code calls for',
      'building office wants',
      'building office asks for',
      'building office says',
      'building department wants',
      'inspector wants',
      'inspector says',
      'council wants',
      'council says',
      'council asks for',
      'city wants',
      'city requires',
      'town requires',
      'county requires',
      'required by code',
      'minimum depth by code',
    ],
    things: ['code', 'building office', 'council', 'inspector'],
    sides: ['deep', 'in the ground', 'depth'],
  },
  possible: { least: '0 in' },
  plausible: { from: '6 in', to: '8 ft' },
})

export const depthByRule = word<'length'>('depthByRule', {
  kind: 'length',
  label: 'depth by the one-third rule',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Half the height above ground. A post that goes so deep has a third of itself in the ground.',
  ask: 'How deep does the one-third rule ask for?',
  called: {
    names: ['depth by the rule', 'one third rule', 'third rule', 'half of what shows', 'half the height above ground'],
  },
})

export const thirdOfWhole = word<'length'>('thirdOfWhole', {
  kind: 'length',
  label: 'one third of the whole post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The length of the post over three.',
  ask: 'How deep is a third of the whole post?',
  called: { names: ['third of the whole', 'third of the post', 'a third in the ground'] },
})

export const thirdOfAbove = word<'length'>('thirdOfAbove', {
  kind: 'length',
  label: 'one third of the height above ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A third of what stands above the ground: the other way people read the rule.',
  ask: 'How deep is a third of the height above ground?',
  called: { names: ['third of the height', 'third of the fence height', 'third of what shows'] },
})

export const aboveByRule = word<'length'>('aboveByRule', {
  kind: 'length',
  label: 'left above ground',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'What is left of the post above the ground.',
  ask: 'How much of the post is left above ground?',
  called: {
    names: ['left above ground', 'left above', 'showing above', 'stand above ground', 'tall will it stand'],
    asks: [
      'how tall will',
      'how much above',
      'how high will',
      'how tall a fence',
      'how much is left above',
      'how high does it stand',
      'how much sticks',
    ],
  },
})

export const deepEnoughByRule = word<'verdict'>('deepEnoughByRule', {
  kind: 'verdict',
  label: 'depth against the rules',
  measure:
    'The post in the ground against half its height above ground, which is a trade rule and no code, and against the frost depth where you gave one.',
  ask: 'Is the post deep enough?',
  called: {
    names: ['deep enough', 'too shallow', 'enough in the ground', 'sufficiently deep', 'deep enuf'],
    asks: [
      'long enough',
      'enough in the ground',
      'enough for the ground',
      'deep enough',
      'too shallow',
      'enough depth',
    ],
  },
  says: {
    yes: 'deep enough by the rules checked here',
    no: 'not deep enough',
    unknown: 'cannot say whether it is deep enough',
  },
})
