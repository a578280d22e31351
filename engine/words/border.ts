// This file is about the mowing edge under and beside the fence: bricks, a cast strip, fabric, stone.
import { word } from './word.ts'

export const edgeRun = word<'length'>('edgeRun', {
  kind: 'length',
  label: 'length of the edge',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Along the fence, all of it together.',
  ask: 'How long is the edge?',
  called: {
    names: [
      'length of the edge',
      'length of the strip',
      'edge is',
      'strip is',
      'run of edging',
      'edging run',
      'long strip',
      'mow strip',
      'mowing strip',
      'mowing edge',
      'edge of',
      'strip of',
    ],
    things: ['edge', 'strip', 'edging', 'border', 'mow strip', 'mowing strip', 'mowing edge', 'run'],
    sides: ['long', 'length'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '3000 ft' },
})

export const edgeWidth = word<'length'>('edgeWidth', {
  kind: 'length',
  label: 'width of the strip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the strip.',
  ask: 'How wide is the strip?',
  called: {
    names: ['strip width', 'width of the strip', 'wide strip', 'width of the edge'],
    things: ['strip', 'edge', 'bed', 'edging', 'border', 'trench'],
    sides: ['wide', 'width', 'across'],
  },
  possible: { above: '0 in' },
  plausible: { from: '2 in', to: '10 ft' },
})

export const edgeDepth = word<'length'>('edgeDepth', {
  kind: 'length',
  label: 'depth of the strip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How thick the stone or concrete lies.',
  ask: 'How deep is the strip filled?',
  called: {
    names: ['strip depth', 'depth of the strip', 'depth of stone', 'depth of the stone', 'inches deep', 'thick'],
    things: ['strip', 'stone', 'gravel', 'bed', 'edge', 'concrete'],
    sides: ['deep', 'depth', 'thick', 'thickness'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '2 ft' },
})

export const brickAlong = word<'length'>('brickAlong', {
  replaces: ['brickLies'],
  kind: 'length',
  label: 'side of a brick that lies along the edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Its length for bricks laid end to end, its thickness or width for bricks set across (a soldier course).',
  ask: 'Which side of the brick lies along the edge, and how long is that side?',
  called: {
    names: [
      'along the edge',
      'brick along',
      'side along the edge',
      'brick face',
      'bricks of',
      'pavers of',
      'brick is',
      'paver is',
    ],
    things: ['brick', 'bricks', 'paver', 'pavers'],
    sides: ['along'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '2 ft' },
})

export const brickJoint = word<'length'>('brickJoint', {
  kind: 'length',
  label: 'joint between bricks',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Mortar or sand between two bricks; 0 when they are laid tight.',
  ask: 'How wide is the joint between bricks?',
  called: {
    names: ['joint', 'joints', 'mortar joint', 'gap between bricks'],
    things: ['joint', 'joints', 'mortar'],
    sides: ['joint', 'wide'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '1 in' },
  usual: {
    value: '3/8 in',
    metric: '10 mm',
    because: 'a mortar joint is commonly so wide; bricks in sand have less',
    from: 'Joint of the modular brick, https://www.engineeringtoolbox.com/amp/brick-mortar-consumption-d_1549.html',
  },
})

export const brickRows = word<'count'>('brickRows', {
  kind: 'count',
  noun: 'row',
  label: 'rows of bricks',
  whole: true,
  measure: 'Side by side.',
  ask: 'How many rows of bricks lie side by side?',
  called: { names: ['rows of bricks', 'rows'], things: ['row', 'rows', 'course', 'courses'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '12' },
  usual: { value: '1', because: 'you did not speak of several rows', from: 'Decided here; say how many there are.' },
})

export const breakage = word<'percent'>('breakage', {
  kind: 'percent',
  label: 'broken and cut',
  measure: 'For what breaks, chips or is cut at the ends.',
  ask: 'How much do you add for breakage, in percent?',
  called: {
    names: ['breakage', 'broken', 'waste', 'extra', 'spare', 'for cuts'],
    things: ['breakage', 'waste', 'extra', 'spare'],
    sides: ['extra', 'waste', 'breakage', 'spare'],
  },
  possible: { least: '0 %' },
  plausible: { from: '0 %', to: '30 %' },
  usual: { value: '5 %', because: 'some break, and the ends are cut', from: 'common practice, no source' },
})

export const bricks = word<'count'>('bricks', {
  kind: 'count',
  noun: 'brick',
  label: 'bricks laid',
  whole: true,
  measure: 'All rows.',
  ask: 'How many bricks?',
  called: {
    names: ['bricks laid'],
    things: ['brick', 'bricks', 'paver', 'pavers'],
    asks: ['how many bricks', 'how many pavers', 'bricks do i need', 'pavers do i need', 'number of bricks'],
  },
})

export const bricksToBuy = word<'count'>('bricksToBuy', {
  kind: 'count',
  noun: 'brick',
  label: 'bricks to buy',
  whole: true,
  measure: 'Breakage included.',
  ask: 'How many bricks to buy?',
  called: {
    names: ['bricks to buy'],
    asks: ['how many bricks to buy', 'how many bricks do i buy', 'how many pavers to buy'],
  },
})

export const stripConcrete = word<'volume'>('stripConcrete', {
  kind: 'volume',
  label: 'concrete for the strip',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Length times width times depth, with what is added.',
  ask: 'How much concrete does the strip take?',
  called: {
    names: ['concrete for the strip'],
    asks: [
      'concrete for the strip',
      'concrete for a mow strip',
      'concrete for the edging',
      'concrete for the mowing strip',
      'how much concrete for the strip',
      'concrete edge',
    ],
  },
})

export const stripBags = word<'count'>('stripBags', {
  kind: 'count',
  noun: 'bag',
  label: 'bags for the strip',
  whole: true,
  measure: 'Rounded up once for all of it.',
  ask: 'How many bags for the strip?',
  called: {
    names: ['bags for the strip'],
    asks: [
      'bags for the strip',
      'bags for a mow strip',
      'how many bags for the strip',
      'how many bags for the mowing strip',
      'how many bags for the edge',
      'bags for the edging',
      'bags for the mow strip',
    ],
  },
})

export const rollLength = word<'length'>('rollLength', {
  kind: 'length',
  label: 'length of a roll',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Printed on the roll.',
  ask: 'How long is a roll of fabric?',
  called: {
    names: ['roll length', 'rolls of', 'roll is', 'roll of', 'foot roll', 'long rolls'],
    things: ['roll', 'rolls', 'fabric'],
    sides: ['long', 'length'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '5 ft', to: '500 ft' },
})

export const fabricLap = word<'length'>('fabricLap', {
  kind: 'length',
  label: 'lap where fabric is joined',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'One piece over the other.',
  ask: 'How far do the pieces of fabric lap?',
  called: {
    names: ['fabric lap', 'lap', 'overlap', 'overlapping', 'lapped'],
    things: ['lap', 'overlap'],
    sides: ['lap', 'overlap'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '2 ft' },
  usual: { value: '6 in', metric: '150 mm', because: 'weeds find a narrower lap', from: 'common practice, no source' },
})

export const fabricRolls = word<'count'>('fabricRolls', {
  kind: 'count',
  noun: 'roll',
  label: 'rolls of fabric',
  whole: true,
  measure: 'Laid end to end with laps, one strip wide.',
  ask: 'How many rolls of fabric?',
  called: {
    names: ['rolls of fabric'],
    things: ['roll', 'rolls'],
    asks: [
      'how many rolls',
      'rolls of fabric',
      'how much landscape fabric',
      'how much weed fabric',
      'rolls do i need',
      'how many rolls of fabric',
    ],
  },
})

export const fabricReach = word<'length'>('fabricReach', {
  kind: 'length',
  label: 'that they reach',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'All rolls, less the laps.',
  ask: 'How far do the rolls reach?',
  called: { names: ['reach of the rolls'], asks: ['how far do the rolls reach'] },
})

export const stripStone = word<'volume'>('stripStone', {
  kind: 'volume',
  label: 'stone for the strip',
  units: { imperial: 'ft3', metric: 'm3' },
  measure: 'Length times width times depth.',
  ask: 'How much stone does the strip take?',
  called: {
    names: ['stone for the strip'],
    asks: [
      'stone for the strip',
      'how much stone',
      'gravel for the strip',
      'how much gravel for the strip',
      'stone for a strip',
      'how much stone for',
      'how much river rock',
      'decorative stone',
      'stone along the fence',
    ],
  },
})

export const stripStoneWeight = word<'mass'>('stripStoneWeight', {
  kind: 'mass',
  label: 'weight of that stone',
  units: { imperial: 'ton', metric: 'tonne' },
  measure: 'Loose, by the density given.',
  ask: 'What does the stone weigh?',
  called: {
    names: ['weight of the stone'],
    asks: ['how many tons', 'how many tonnes', 'tons of stone', 'weight of the stone', 'what does the stone weigh'],
  },
})

export const tonCovers = word<'area'>('tonCovers', {
  kind: 'area',
  label: 'a ton of it covers',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'At the depth given; a US ton of 2,000 lb, or a tonne in metric.',
  ask: 'How much does a ton cover?',
  called: {
    names: ['coverage of a ton'],
    asks: [
      'how much does a ton cover',
      'how far does a ton go',
      'coverage of a ton',
      'what does a ton cover',
      'how much does a tonne cover',
    ],
  },
})

export const tonSize = word<'mass'>('tonSize', {
  kind: 'mass',
  label: 'load that is sold as one',
  units: { imperial: 'ton', metric: 'tonne' },
  measure: 'A US ton is 2,000 lb, a tonne 1,000 kg.',
  ask: 'What load is the stone sold by?',
  called: { names: ['sold by', 'load of', 'a load is'], things: ['load'], sides: ['load'] },
  possible: { above: '0 lb' },
  plausible: { from: '20 lb', to: '30 ton' },
  usual: {
    value: '1 ton',
    metric: '1 tonne',
    because: 'yards sell stone by the ton',
    from: 'common practice, no source',
  },
})
