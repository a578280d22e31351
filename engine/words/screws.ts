// This file is about screws: how many, how long, in how many boxes.
import { word } from './word.ts'

export const screwsEachJoint = word<'count'>('screwsEachJoint', {
  kind: 'count',
  noun: 'screw',
  label: 'screws where a picket crosses a rail',
  whole: true,
  measure: 'Two side by side keep a picket from turning; one in the middle lets it move.',
  ask: 'How many screws where a picket crosses a rail?',
  called: {
    names: [
      'screws per joint',
      'screws each rail',
      'screws at each rail',
      'screws per crossing',
      'screws each crossing',
      'per rail',
      'at each rail',
    ],
    things: ['screw', 'screws', 'nail', 'nails'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '6' },
  usual: {
    value: '2',
    because: 'two screws side by side keep a picket from turning',
    from: 'common practice, no source',
  },
})

export const screwSpare = word<'percent'>('screwSpare', {
  kind: 'percent',
  label: 'spare screws',
  measure: 'For those that break, strip or fall in the grass.',
  ask: 'How many spare screws, in percent?',
  called: {
    names: ['spare screws', 'extra screws', 'waste', 'spare', 'extra'],
    things: ['spare', 'extra', 'waste'],
    sides: ['spare', 'extra', 'waste'],
  },
  possible: { least: '0 %' },
  plausible: { from: '0 %', to: '30 %' },
  usual: { value: '10 %', because: 'some break, strip or fall in the grass', from: 'common practice, no source' },
})

export const boxCount = word<'count'>('boxCount', {
  kind: 'count',
  noun: 'screw',
  label: 'screws in a box',
  whole: true,
  measure: 'Printed on the box.',
  ask: 'How many screws are in a box?',
  called: {
    names: ['screws in a box', 'screws per box', 'box of', 'boxes of', 'to a box', 'in a box', 'per box'],
    things: ['box', 'boxes'],
    plainly: true,
  },
  possible: { least: '1' },
  plausible: { from: '25', to: '5000' },
})

export const screws = word<'count'>('screws', {
  kind: 'count',
  noun: 'screw',
  label: 'screws for the pickets',
  whole: true,
  measure: 'Before spares.',
  ask: 'How many screws?',
  called: {
    names: ['screws for the pickets'],
    things: ['screw', 'screws', 'nail'],
    asks: ['how many screws', 'screws do i need', 'how many nails', 'screws for the pickets', 'number of screws'],
  },
})

export const screwsToBuy = word<'count'>('screwsToBuy', {
  kind: 'count',
  noun: 'screw',
  label: 'screws to buy',
  whole: true,
  measure: 'Spares included.',
  ask: 'How many screws to buy?',
  called: { names: ['screws to buy'], asks: ['how many screws to buy', 'how many screws should i buy'] },
})

export const screwBoxes = word<'count'>('screwBoxes', {
  kind: 'count',
  noun: 'box',
  label: 'boxes of screws',
  whole: true,
  measure: 'Whole boxes.',
  ask: 'How many boxes?',
  called: { names: ['boxes of screws'], asks: ['how many boxes', 'how many boxes of screws', 'boxes do i need'] },
})

export const screwDiameter = word<'length'>('screwDiameter', {
  kind: 'length',
  label: 'screw diameter',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the threads: a number 8 is about 0.164 in, a number 10 about 0.19 in.',
  ask: 'How thick is the screw, across its threads?',
  called: {
    names: ['screw diameter', 'diameter of the screw', 'screw gauge'],
    things: ['screw', 'screws'],
    sides: ['diameter', 'thick'],
  },
  possible: { above: '0 in' },
  plausible: { from: '0.08 in', to: '1/2 in' },
  usual: {
    value: '0.164 in',
    metric: '4.2 mm',
    because: 'a number 8 wood screw is usual for pickets',
    from: 'ASME B18.6.1, number 8: 0.164 in; from memory, to be confirmed',
  },
})

export const wantedBite = word<'length'>('wantedBite', {
  kind: 'length',
  label: 'bite you want in the rail',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How deep the screw goes into the rail behind the picket.',
  ask: 'How deep do you want the screw in the rail?',
  called: {
    names: ['bite', 'into the rail', 'in the rail', 'bite into', 'penetration'],
    things: ['screw', 'screws'],
    sides: ['into', 'bite', 'grab'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '4 in' },
})

export const leastScrew = word<'length'>('leastScrew', {
  kind: 'length',
  label: 'shortest screw that holds',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Through the picket, and six diameters into the rail.',
  ask: 'How long must the screw be at least?',
  called: {
    names: ['shortest screw'],
    asks: [
      'how long a screw',
      'what length screw',
      'what size screws',
      'screw length',
      'how long should the screws',
      'how long must the screws',
      'what screws',
      'length of screw',
      'which screws',
    ],
  },
})

export const fullScrew = word<'length'>('fullScrew', {
  kind: 'length',
  label: 'screw with full bite',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Through the picket, and ten diameters into the rail.',
  ask: 'How long is a screw with full bite?',
  called: { names: ['full bite'], asks: ['screw with full bite', 'full bite'] },
})

export const mostScrew = word<'length'>('mostScrew', {
  kind: 'length',
  label: 'longest screw that stays in',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Longer ones come out of the back of the rail.',
  ask: 'How long may the screw be at most?',
  called: {
    names: ['longest screw'],
    asks: ['longest screw', 'how long can the screw be', 'poke through', 'come through the back', 'stick out the back'],
  },
})
