// This file is about any stick of lumber: what it is called, what it measures, what it weighs.
import { word } from './word.ts'

export const nominalThickness = word<'length'>('nominalThickness', {
  kind: 'length',
  label: 'thickness it is sold as',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The first figure of its name: 2 of a 2x4, 50 of a 50 × 100 sawn.',
  ask: 'What is the stick called: how thick is it sold as?',
  called: {
    names: ['nominal thickness', 'sold as', 'sawn thickness'],
    things: ['stick', 'board', 'timber', 'lumber', 'nominal'],
    sides: ['thick', 'nominal'],
  },
  ofStick: 'name thickness',
  otherSide: 'nominalWidth',
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '12 in' },
})

export const nominalWidth = word<'length'>('nominalWidth', {
  kind: 'length',
  label: 'width it is sold as',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The second figure of its name: 4 of a 2x4, 100 of a 50 × 100 sawn.',
  ask: 'And how wide is the stick sold as?',
  called: {
    names: ['nominal width', 'sawn width'],
    things: ['stick', 'board', 'timber', 'lumber', 'nominal'],
    sides: ['wide', 'width'],
  },
  ofStick: 'name',
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '16 in' },
})

export const soldGreen = word<'choice'>('soldGreen', {
  kind: 'choice',
  label: 'planed dry or green',
  measure: 'On the grade stamp: S-DRY or KD is planed dry, S-GRN green.',
  ask: 'Was it planed dry (S-DRY, KD) or green (S-GRN)?',
  called: { names: ['planed'] },
  options: {
    dry: { label: 'planed dry', called: ['s-dry', 'sdry', 'kiln dried', 'planed dry', 'kd'] },
    green: {
      label: 'planed green',
      called: ['green', 'sold green', 's-grn', 'planed green', 'surfaced green', 'green lumber', 'unseasoned'],
    },
  },
  usual: {
    value: 'dry',
    because: 'most framing lumber is planed dry; look for S-DRY or S-GRN on the stamp',
    from: 'common practice, no source',
  },
})

export const dressedThickness = word<'length'>('dressedThickness', {
  kind: 'length',
  label: 'thickness it measures',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Planed, at the moisture it was planed at.',
  ask: 'How thick does it measure?',
  called: {
    names: ['dressed thickness', 'actual thickness'],
    asks: [
      'what does measure',
      'what do measure',
      'what does actually measure',
      'what does measure really',
      'how big really',
      'how big actually',
      'how thick really',
      'what is actual size',
      'what is real size',
      'what is true size',
      'what is dressed size',
      'what is planed size',
      'actual size of',
      'real dimensions of',
      'actual dimensions of',
      'real dimensions',
      'actually measure',
      'really measure',
      'actually how wide',
      'actually how thick',
      'how wide really',
      'how wide actually',
      'what size really',
      'size is really',
      'real size of',
      'true size of',
      'dressed size of',
      'planed size of',
      'what is planed to',
      'what does plane to',
      'what is dressed to',
    ],
  },
})

export const dressedWidth = word<'length'>('dressedWidth', {
  kind: 'length',
  label: 'width it measures',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Planed, at the moisture it was planed at.',
  ask: 'How wide does it measure?',
  called: { names: ['dressed width', 'actual width'] },
})

export const lumberThickness = word<'length'>('lumberThickness', {
  kind: 'length',
  label: 'thickness of the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'With a tape, across its thin side: a 2x4 is 1 1/2 in.',
  ask: 'How thick is the stick, measured?',
  called: {
    names: ['stick thickness', 'thickness of the stick'],
    things: ['stick', 'post', 'rail', 'board', 'picket', 'timber', 'piece'],
    sides: ['thick', 'thickness'],
  },
  ofStick: 'thickness',
  otherSide: 'lumberWidth',
  possible: { above: '0 in' },
  plausible: { from: '3/8 in', to: '12 in' },
})

export const lumberWidth = word<'length'>('lumberWidth', {
  kind: 'length',
  label: 'width of the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'With a tape, across its wide side: a 2x4 is 3 1/2 in.',
  ask: 'How wide is the stick, measured?',
  called: {
    names: ['stick width', 'width of the stick'],
    things: ['stick', 'post', 'rail', 'board', 'picket', 'timber', 'piece'],
    sides: ['wide', 'width'],
  },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '3/4 in', to: '16 in' },
})

export const lumberLength = word<'length'>('lumberLength', {
  kind: 'length',
  label: 'length of the stick',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'As it lies there.',
  ask: 'How long is the stick?',
  called: {
    names: ['stick length', 'length of the stick'],
    things: ['stick', 'post', 'rail', 'board', 'picket', 'timber', 'piece', 'lumber', 'footer'],
    sides: ['long', 'length'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '24 ft' },
})

export const sticks = word<'count'>('sticks', {
  kind: 'count',
  noun: 'stick',
  label: 'sticks',
  whole: true,
  measure: 'All of this size.',
  ask: 'How many sticks of this size?',
  called: {
    names: ['number of sticks', 'sticks of this size'],
    things: ['stick', 'board', 'post', 'rail', 'picket', 'timber', 'piece', 'footer', 'length'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '2000' },
  usual: { value: '1', because: 'you did not say how many', from: 'Decided here; say how many there are.' },
})

export const boardFeet = word<'count'>('boardFeet', {
  kind: 'count',
  noun: 'board foot',
  label: 'board feet',
  measure: 'By the size it is sold as; under 1 in thick counts as 1 in.',
  ask: 'How many board feet is it?',
  called: {
    names: ['board feet', 'board foot'],
    asks: ['how many board feet', 'board feet', 'board foot', 'board footage', 'bd ft'],
  },
})

export const soldVolume = word<'volume'>('soldVolume', {
  kind: 'volume',
  label: 'volume by the size it is sold as',
  units: { imperial: 'ft3', metric: 'm3' },
  measure: 'Sawn size times length; planed it is less.',
  ask: 'What volume of wood is it?',
  called: {
    names: ['volume of wood', 'volume of timber', 'volume of lumber'],
    asks: [
      'how many cubic metres of timber',
      'how many cubic meters of timber',
      'how many cubic metres of wood',
      'cubic metres of timber',
      'volume of timber',
      'volume of wood',
      'volume of lumber',
      'cubic metres are',
    ],
  },
})

export const stickWeight = word<'mass'>('stickWeight', {
  kind: 'mass',
  label: 'weight of one stick',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'An average for its kind of wood at that moisture.',
  ask: 'What does one stick weigh?',
  called: {
    names: ['weight of a stick', 'stick weight'],
    asks: [
      'how heavy is a post',
      'how heavy is a board',
      'how heavy is a rail',
      'how heavy is a picket',
      'how heavy is a stick',
      'how heavy are the posts',
      'how heavy are the boards',
      'how heavy are the pickets',
      'how heavy are the rails',
      'how much does a post weigh',
      'how much does a board weigh',
      'how much does a rail weigh',
      'how much does a picket weigh',
      'how much does one weigh',
      'what does a post weigh',
      'what does a board weigh',
      'what does a rail weigh',
      'what does a picket weigh',
      'what do the posts weigh',
      'what do the boards weigh',
      'what do the pickets weigh',
      'what do the rails weigh',
      'how much do the posts weigh',
      'how much do the boards weigh',
      'how much do the pickets weigh',
      'how much do the rails weigh',
      'weight of a post',
      'weight of a board',
      'weight of a picket',
      'weight of the lumber',
      'weight of the timber',
    ],
  },
})

export const sticksWeight = word<'mass'>('sticksWeight', {
  kind: 'mass',
  label: 'weight of all the sticks',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All of this size together.',
  ask: 'What do all the sticks weigh together?',
  called: {
    names: ['weight of the sticks', 'weight of all the sticks'],
    asks: ['weigh together', 'weigh in all', 'weight of all', 'weight in all', 'total weight', 'weigh altogether'],
  },
})
