// This file is about the bed under bricks: stone that is tamped, sand on it, and what is bought of both.
import { word } from './word.ts'

export const baseDepth = word<'length'>('baseDepth', {
  kind: 'length',
  label: 'base depth',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The stone under the sand, tamped. 4 to 6 in (100 to 150 mm) is common practice, no source.',
  ask: 'How deep is the base of stone, tamped?',
  called: {
    names: [
      'base depth',
      'of base',
      'of compacted base',
      'compacted base',
      'tamped base',
      'base course',
      'road base',
      'roadbase',
      'sub-base',
      'subbase',
      'hardcore',
      'of hardcore',
      'crusher run',
    ],
    things: ['base', 'hardcore', 'roadbase', 'road base', 'crusher run', 'sub-base', 'subbase'],
    sides: ['deep', 'depth', 'thick', 'base', 'tamped', 'compacted'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '18 in' },
})

export const sandDepth = word<'length'>('sandDepth', {
  kind: 'length',
  label: 'sand depth',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The sand that the bricks lie in, struck off level. 1 in (25 mm) is common practice, no source.',
  ask: 'How deep is the sand under the bricks?',
  called: {
    names: [
      'sand depth',
      'of sand',
      'sand bed',
      'bed of sand',
      'bedding sand',
      'of bedding sand',
      'of sharp sand',
      'of grit sand',
    ],
    things: ['sand', 'bedding sand', 'sharp sand', 'grit sand'],
    sides: ['deep', 'depth', 'thick', 'sand'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '6 in' },
})

export const sandDensity = word<'density'>('sandDensity', {
  kind: 'density',
  label: 'weight of loose sand',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'The yard that sells it knows; wet sand weighs more.',
  ask: 'What does the sand weigh?',
  called: {
    names: ['sand density', 'density of the sand', 'sand weighs'],
    things: ['sand'],
    sides: ['weighs', 'density'],
    plainly: true,
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '70 lb/ft3', to: '140 lb/ft3' },
  usual: {
    value: '100 lb/ft3',
    metric: '1600 kg/m3',
    because: 'it is the middle of 90 to 110 lb/ft³ for dry sand',
    from: 'common practice, no source',
  },
})

export const baseToBuy = word<'volume'>('baseToBuy', {
  kind: 'volume',
  label: 'base to buy, loose',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Loose, as it is sold.',
  ask: 'How much base is bought, loose?',
  called: {
    names: ['base to buy'],
    asks: [
      'how much base',
      'how much road base',
      'how much roadbase',
      'how much hardcore',
      'how much sub-base',
      'how much crusher run',
      'base do i need',
      'base to buy',
      'how much base and sand',
    ],
  },
})

export const sandToBuy = word<'volume'>('sandToBuy', {
  kind: 'volume',
  label: 'sand to buy, loose',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Loose, as it is sold. Sand for the joints is not in it.',
  ask: 'How much sand is bought, loose?',
  called: {
    names: ['sand to buy'],
    asks: ['how much sand', 'how much bedding sand', 'how much sharp sand', 'sand do i need'],
  },
})

export const baseWeight = word<'mass'>('baseWeight', {
  kind: 'mass',
  label: 'weight of the base',
  units: { imperial: 'ton', metric: 'tonne' },
  measure: 'All that is bought.',
  ask: 'What does the base weigh?',
  called: {
    names: ['weight of base'],
    asks: [
      'what does the base weigh',
      'how many tons of base',
      'how many tonnes of base',
      'how many tonnes of hardcore',
    ],
  },
})

export const sandWeight = word<'mass'>('sandWeight', {
  kind: 'mass',
  label: 'weight of the sand',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All that is bought.',
  ask: 'What does the sand weigh?',
  called: {
    names: ['weight of sand'],
    asks: ['what does the sand weigh', 'how many pounds of sand', 'how many tons of sand', 'how many tonnes of sand'],
  },
})

export const brickRoom = word<'length'>('brickRoom', {
  kind: 'length',
  label: 'room left above the sand',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the sand up to the grass.',
  ask: 'How much room is left for the bricks?',
  called: {
    names: ['room for the bricks'],
    asks: ['how much room is left for the bricks', 'room left for the bricks', 'how much is left for the bricks'],
  },
})
