// This file is about taking out an old fence: its posts and the concrete they stand in.
import { word } from './word.ts'

export const oldPosts = word<'count'>('oldPosts', {
  kind: 'count',
  noun: 'old post',
  label: 'old posts',
  whole: true,
  measure: 'Count the posts of the old fence that come out.',
  ask: 'How many old posts come out?',
  called: {
    names: ['old posts', 'old fence posts', 'old footings', 'posts to take out', 'posts to pull', 'posts come out'],
    things: ['old post', 'old fence post', 'old footing', 'rotten post', 'old gate post'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '200' },
})

export const footingSet = word<'choice'>('footingSet', {
  kind: 'choice',
  label: 'what the old posts stand in',
  measure: 'Dig down beside one post and look.',
  ask: 'Do the old posts stand in concrete, or in soil alone?',
  called: { names: ['footing set'] },
  options: {
    concrete: { label: 'concrete', called: ['set in concrete', 'in concrete', 'concreted in'] },
    soil: {
      label: 'soil alone, no footing',
      called: [
        'no footing',
        'no footings',
        'without footings',
        'no concrete',
        'without concrete',
        'in soil',
        'in dirt',
        'in earth',
        'in the ground only',
        'tamped soil',
        'tamped earth',
        'set in soil',
      ],
    },
  },
})

export const footingWidth = word<'length'>('footingWidth', {
  kind: 'length',
  label: 'footing width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Clear the soil off one and measure straight across; old ones often bulge below.',
  ask: 'How wide is an old footing, straight across? If the posts stand in soil alone, say there is no concrete.',
  called: {
    names: [
      'footing width',
      'width of the footing',
      'in concrete',
      'old concrete',
      'lump of concrete',
      'concrete plug',
    ],
    things: ['footing', 'old footing', 'concrete', 'plug', 'lump', 'ball'],
    sides: ['wide', 'width', 'diameter', 'dia', 'diam', 'across', 'round'],
  },
  possible: { above: '0 in' },
  plausible: { from: '4 in', to: '4 ft' },
})

export const footingDepth = word<'length'>('footingDepth', {
  kind: 'length',
  label: 'footing depth',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From its top to its bottom: dig down beside one, or push a rod down along it.',
  ask: 'How deep is an old footing, top to bottom?',
  called: {
    names: ['footing depth', 'depth of the footing'],
    things: ['footing', 'old footing', 'concrete', 'plug', 'lump'],
    sides: ['deep', 'depth', 'high', 'tall', 'top to bottom'],
  },
  possible: { above: '0 in' },
  plausible: { from: '4 in', to: '6 ft' },
})

export const oldPostWidth = word<'length'>('oldPostWidth', {
  kind: 'length',
  label: 'old post width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across one face. Give it when the post has come out of its concrete, or rotted away in it.',
  ask: 'How wide is an old post, across one face?',
  called: {
    names: ['old post width', 'old posts are', 'width of the old post', 'post hole in it'],
    things: ['old post', 'old posts', 'old fence post'],
    sides: ['wide', 'width', 'thick', 'square', 'across'],
    plainly: true,
  },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '1 1/2 in', to: '12 in' },
})

export const hardDensity = word<'density'>('hardDensity', {
  kind: 'density',
  label: 'weight of old concrete',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'Hard and moist, as it comes out.',
  ask: 'What does old concrete weigh?',
  called: {
    names: ['density of the old concrete', 'concrete weighs', 'old concrete weighs'],
    things: ['concrete', 'old concrete'],
    sides: ['weighs', 'density'],
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '100 lb/ft3', to: '170 lb/ft3' },
  usual: {
    value: '150 lb/ft3',
    metric: '2400 kg/m3',
    because: 'of the two figures in use it is the heavier, and it is to be lifted',
    from: 'common practice, no source',
  },
})

export const oneLift = word<'mass'>('oneLift', {
  kind: 'mass',
  label: 'most that one person lifts',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Held close, at waist height, now and then. Out of a hole it is less.',
  ask: 'What is the most that one person should lift?',
  called: {
    names: ['one person lifts', 'i can lift', 'can lift', 'lift limit', 'most i lift'],
    things: ['lift'],
    sides: ['lift', 'lifts'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '10 lb', to: '80 lb' },
  usual: {
    value: '51 lb',
    metric: '23 kg',
    because: 'the lifting equation allows no more under the best conditions',
    from: 'NIOSH revised lifting equation, load constant 51 lb (23 kg)',
  },
})

export const footingWeight = word<'mass'>('footingWeight', {
  kind: 'mass',
  label: 'weight of one footing',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'The concrete alone; soil clings to it and weighs too.',
  ask: 'What does one footing weigh?',
  called: {
    names: ['weight of a footing'],
    asks: [
      'how heavy is one footing',
      'how heavy is a footing',
      'how heavy is each footing',
      'how heavy is an old footing',
      'how heavy are the old footings',
      'how heavy are the footings',
      'what does one footing weigh',
      'what does a footing weigh',
      'what does each footing weigh',
      'what does an old footing weigh',
      'how much does one footing weigh',
      'how much does a footing weigh',
      'how much does each footing weigh',
      'weight of each footing',
      'weight of one footing',
    ],
  },
})

export const footingsWeight = word<'mass'>('footingsWeight', {
  kind: 'mass',
  label: 'weight of all footings',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All of them together.',
  ask: 'What do the footings weigh together?',
  called: {
    names: ['weight of the footings', 'weight of the old concrete'],
    asks: [
      'what do the footings weigh',
      'what do the old footings weigh',
      'how much do the footings weigh',
      'how much do the old footings weigh',
      'how much old concrete',
      'how heavy is the old concrete',
      'what does the old concrete weigh',
      'weight of all the footings',
    ],
  },
})

export const footingsVolume = word<'volume'>('footingsVolume', {
  kind: 'volume',
  label: 'volume of all footings',
  units: { imperial: 'ft3', metric: 'm3' },
  measure: 'Whole; broken up, they take about half as much again.',
  ask: 'What is the volume of the footings?',
  called: { names: ['volume of the footings'], asks: ['volume of the old footings', 'volume of the footings'] },
})

export const footingPieces = word<'count'>('footingPieces', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces to break each into',
  whole: true,
  measure: 'At least so many, for one person to lift each.',
  ask: 'Into how many pieces is each footing broken?',
  called: {
    names: ['pieces of a footing'],
    asks: ['how many pieces', 'into how many pieces', 'how small do i break', 'how small must i break'],
  },
})

export const liftedByOne = word<'verdict'>('liftedByOne', {
  kind: 'verdict',
  label: 'one person lifting a footing',
  measure: 'Its weight against the most that one person lifts at best.',
  ask: 'Can one person lift a footing?',
  called: {
    names: ['lift a footing'],
    asks: [
      'can i lift a footing',
      'can i lift the footing',
      'can i lift one footing',
      'can i lift the footings',
      'can i lift them out',
      'can i lift it out',
      'can one person lift',
      'too heavy to lift',
    ],
  },
  says: {
    yes: 'can be lifted by one',
    no: 'too heavy for one person',
    unknown: 'cannot say: light enough at best, but out of a hole is not at best',
  },
})
