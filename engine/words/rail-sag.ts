// This file is about how far a rail sags between its posts, and what makes it sag.
import { word } from './word.ts'

export const railLies = word<'choice'>('railLies', {
  kind: 'choice',
  label: 'how the rail lies',
  measure: 'On edge its broad face looks at you; on the flat it looks at the sky.',
  ask: 'Does the rail stand on edge, or does it lie flat?',
  called: {},
  options: {
    edge: { label: 'on edge', called: ['on edge', 'on its edge', 'on their edge', 'edge up', 'upright rail'] },
    flat: {
      label: 'on the flat',
      called: [
        'on the flat',
        'laid flat',
        'lying flat',
        'lies flat',
        'lie flat',
        'flatwise',
        'flat rail',
        'rail flat',
        'rails flat',
        'on its face',
      ],
    },
  },
})

export const woodStiffness = word<'pressure'>('woodStiffness', {
  kind: 'pressure',
  label: 'modulus of elasticity',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'E of its species and grade, dry, from a table of design values.',
  ask: 'How stiff is the wood? Give its modulus of elasticity E for dry wood from a table of design values, or say what wood it is: western redcedar, northern white-cedar, redwood, southern pine, Douglas-fir, western hemlock, white fir, black locust or white ash.',
  called: {
    names: [
      'modulus of elasticity',
      'elastic modulus',
      'young’s modulus',
      'modulus',
      'stiffness',
      'moe',
      'e of',
      'e is',
    ],
    things: ['wood', 'timber', 'lumber', 'rail'],
    sides: ['e', 'modulus', 'stiff'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 psi' },
  plausible: { from: '400000 psi', to: '3000000 psi' },
})

export const woodDensity = word<'density'>('woodDensity', {
  kind: 'density',
  label: 'density of the wood',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'Weigh a board and divide by its length, width and thickness.',
  ask: 'How heavy is the wood, by volume?',
  called: {
    names: ['density of the wood', 'wood density', 'wood weighs', 'timber weighs'],
    things: ['wood', 'timber', 'lumber'],
    sides: ['density', 'weighs', 'dense'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '15 lb/ft3', to: '75 lb/ft3' },
  usual: {
    value: '36 lb/ft3',
    metric: '580 kg/m3',
    because: 'softwood that is wet through weighs about that: cedar less, southern pine a little more',
    from: 'worked as water × specific gravity × 1.3, for 30 % moisture (Wood Handbook’s form, from memory)',
  },
})

export const hungWeight = word<'lineWeight'>('hungWeight', {
  kind: 'lineWeight',
  label: 'pickets’ weight on one rail',
  units: { imperial: 'lb/ft', metric: 'kg/m' },
  measure: 'Weigh the pickets of a foot or a metre of fence and share them among the rails.',
  ask: 'What do the pickets weigh on each foot or metre of one rail?',
  called: {
    names: ['pickets weigh', 'weight of the pickets', 'pickets add', 'pickets on it'],
    things: ['picket', 'pickets'],
    sides: ['weigh', 'weight', 'add'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '0 lb/ft' },
  plausible: { from: '0 lb/ft', to: '30 lb/ft' },
})

export const leanWeight = word<'mass'>('leanWeight', {
  kind: 'mass',
  label: 'person on the middle of the rail',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'The weight of whoever sits on it or leans against it, with all of it on one rail.',
  ask: 'What weight may lean on the middle of the rail?',
  called: {
    names: [
      'leans on it',
      'leaning on it',
      'lean on it',
      'sits on it',
      'sitting on it',
      'leans on the middle',
      'leans against it',
      'in the middle',
      'at the middle',
    ],
    things: ['person', 'someone', 'somebody', 'child', 'man', 'load'],
    sides: ['leans', 'leaning', 'sits', 'sitting', 'pushes', 'middle'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '20 lb', to: '400 lb' },
})

export const sagLimit = word<'length'>('sagLimit', {
  kind: 'length',
  label: 'sag allowed',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The most that you accept, or that your rule gives.',
  ask: 'How far may the rail sag at most?',
  called: {
    names: ['sag limit', 'sag at most', 'sag no more than', 'may sag', 'sag allowed', 'limit of sag', 'allowed sag'],
    things: ['sag'],
    sides: ['limit', 'allowed'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/32 in', to: '6 in' },
})

export const ownSag = word<'length'>('ownSag', {
  kind: 'length',
  label: 'sag of the rail by itself',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'In the middle, when it is new, under its own weight and what you say hangs on it.',
  ask: 'How far does the rail sag by itself?',
  called: {
    names: ['rail sag', 'sag of the rail'],
    asks: [
      'how much does the rail sag',
      'how far does the rail sag',
      'how much will the rail sag',
      'how far will the rail sag',
      'how much do the rails sag',
      'how much will the rails sag',
      'will the rail sag',
      'will the rails sag',
      'does the rail sag',
      'how much does the rail bend',
      'how far does the rail bend',
      'how much will the rail bend',
      'sag of the rail',
      'sag of a rail',
      'rail sag',
    ],
  },
})

export const longSag = word<'length'>('longSag', {
  kind: 'length',
  label: 'sag of the rail after years',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Wood under a lasting load goes on sagging.',
  ask: 'How far has it sagged after years?',
  called: {
    names: ['sag after years', 'long term sag'],
    asks: ['sag after years', 'sag over the years', 'sag in the long run', 'long term sag'],
  },
})

export const leanSag = word<'length'>('leanSag', {
  kind: 'length',
  label: 'sag under the person',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Further down in the middle, while the weight is on it.',
  ask: 'How far does it sag under a person?',
  called: {
    names: ['sag under a person'],
    asks: ['sag under a person', 'sag if someone sits on it', 'sag when someone sits on it', 'sag under someone'],
  },
})

export const pushBow = word<'length'>('pushBow', {
  kind: 'length',
  label: 'bow sideways under the same push',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Out of the line of the fence, in the middle, when somebody leans against it.',
  ask: 'How far does it bow sideways when somebody leans against it?',
  called: {
    names: ['bow sideways'],
    asks: [
      'how far does the rail bow',
      'how much does the rail bow',
      'bow sideways',
      'bend sideways',
      'bow if someone leans',
      'how far does the rail bend if someone leans',
    ],
  },
})

export const sagOneIn = word<'number'>('sagOneIn', {
  kind: 'number',
  label: 'one in so many of the span, after years',
  measure: 'The sag is one part in so many of the span.',
  ask: 'What part of the span is the sag?',
  called: { names: ['sag of the span'], asks: ['what part of the span', 'sag over span', 'span over sag'] },
})

export const sagHolds = word<'verdict'>('sagHolds', {
  kind: 'verdict',
  label: 'sag against your limit',
  measure: 'All that is worked here against the sag you allow.',
  ask: 'Does the rail keep within the sag allowed?',
  called: {
    names: ['within the sag allowed'],
    asks: ['does it sag too much', 'does the rail sag too much', 'sag too much', 'is the sag ok', 'too much sag'],
  },
  says: {
    yes: 'nothing worked here is over your limit',
    no: 'over your limit',
    unknown: 'cannot say: no limit was given',
  },
})
