// This file is about holes that are not plain cylinders, what comes out of them, and what is carried.
import { word } from './word.ts'

export const bellWidth = word<'length'>('bellWidth', {
  kind: 'length',
  label: 'width of the bell at the bottom',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the hole at its very bottom, where it is widest.',
  ask: 'How wide is the bell at the bottom of the hole?',
  called: {
    names: [
      'bell',
      'belled to',
      'bell width',
      'flared to',
      'wider at the bottom',
      'at the bottom',
      'bottom width',
      'widens to',
      'bell of',
    ],
    things: ['bell', 'flare', 'bottom'],
    sides: ['bell', 'belled', 'flared', 'widens'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '8 in', to: '4 ft' },
})

export const bellHeight = word<'length'>('bellHeight', {
  kind: 'length',
  label: 'height of the bell',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the bottom up to where the hole becomes straight.',
  ask: 'How high is the bell, from the bottom up to the straight part?',
  called: {
    names: ['bell height', 'height of the bell', 'bottom', 'lowest', 'last', 'over the bottom'],
    things: ['bell', 'flare'],
    sides: ['high', 'height', 'tall'],
  },
  possible: { above: '0 in' },
  plausible: { from: '3 in', to: '3 ft' },
})

export const bellConcrete = word<'volume'>('bellConcrete', {
  kind: 'volume',
  label: 'concrete in the bell, post not taken out',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The flared part alone.',
  ask: 'How much concrete is in the bell?',
  called: { names: ['concrete in the bell'], asks: ['concrete in the bell'] },
})

export const crownRise = word<'length'>('crownRise', {
  kind: 'length',
  label: 'crown of concrete above the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How high the concrete is sloped up to the post, so that water runs off.',
  ask: 'How high is the crown of concrete round the post?',
  called: {
    names: ['crown', 'crowned', 'domed', 'dome', 'sloped top', 'crown of', 'dome of', 'mounded'],
    things: ['crown', 'dome'],
    sides: ['crown', 'crowned', 'dome', 'domed', 'high'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '6 in' },
})

export const crownConcrete = word<'volume'>('crownConcrete', {
  kind: 'volume',
  label: 'concrete in one crown',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Above the ground, round the post.',
  ask: 'How much concrete is in a crown?',
  called: {
    names: ['concrete in the crown'],
    asks: [
      'concrete in the crown',
      'concrete for the crown',
      'concrete for a dome',
      'how much for the crown',
      'concrete for the dome',
    ],
  },
})

export const postName = word<'length'>('postName', {
  kind: 'length',
  label: 'post’s size by its name',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the yard calls it: a 4x4 is called four inches, and is less.',
  ask: 'What is the post called at the yard, in inches?',
  called: { names: ['nominal', 'by name', 'called'], things: ['nominal post'], sides: ['nominal'] },
  possible: { above: '0 in' },
  plausible: { from: '2 in', to: '14 in' },
})

export const holeByRule = word<'length'>('holeByRule', {
  kind: 'length',
  label: 'hole, three times the post’s actual width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A trade rule; the auger you can get decides.',
  ask: 'How wide is the hole by the rule?',
  called: {
    names: ['hole by the rule'],
    asks: [
      'how wide should the hole',
      'how wide should the holes',
      'how wide do i dig',
      'what diameter hole',
      'what size hole',
      'how big should the hole',
      'what size auger',
      'hole diameter for',
      'width of the hole for',
      'how wide a hole',
      'how big a hole',
    ],
  },
})

export const holeByName = word<'length'>('holeByName', {
  kind: 'length',
  label: 'hole, three times the post’s name',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The same rule, if the name is taken for the size.',
  ask: 'How wide is the hole by the post’s name?',
  called: { names: ['hole by the name'], asks: ['hole by the nominal size'] },
})

export const volumeWanted = word<'volume'>('volumeWanted', {
  kind: 'volume',
  label: 'concrete wanted',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The volume you have worked out or been told.',
  ask: 'How much concrete do you want, by volume?',
  called: {
    names: ['of concrete', 'concrete wanted', 'need to fill', 'volume'],
    things: ['concrete', 'volume', 'yard', 'metre', 'cube'],
    sides: ['concrete'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 ft3' },
  plausible: { from: '0.05 ft3', to: '30 yd3' },
})

export const bagsForVolume = word<'count'>('bagsForVolume', {
  kind: 'count',
  noun: 'bag',
  label: 'bags for that volume',
  whole: true,
  measure: 'Rounded up once.',
  ask: 'How many bags make that volume?',
  called: {
    names: ['bags for a volume'],
    asks: [
      'how many bags in a yard',
      'bags in a yard',
      'bags make a yard',
      'how many bags make',
      'bags to a yard',
      'bags per yard',
      'bags in a cubic',
      'bags for a cubic',
      'how many bags in a cubic',
      'bags of concrete in',
      'how many bags to make',
      'bags in a metre',
      'how many bags for a yard',
      'bags per cubic',
    ],
  },
})

export const freshWeight = word<'mass'>('freshWeight', {
  kind: 'mass',
  label: 'weight of it, mixed',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'As it stands in the barrow.',
  ask: 'What does it weigh when it is mixed?',
  called: {
    names: ['weight of the concrete'],
    asks: [
      'what does the concrete weigh',
      'weight of the concrete',
      'how heavy is the concrete',
      'how much does the concrete weigh',
    ],
  },
})

export const freshDensity = word<'density'>('freshDensity', {
  kind: 'density',
  label: 'weight of fresh concrete',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'For ordinary concrete, mixed.',
  ask: 'What does fresh concrete weigh?',
  called: { names: ['concrete density', 'density of concrete'], sides: ['density'] },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '120 lb/ft3', to: '160 lb/ft3' },
  usual: {
    value: '145 lb/ft3',
    metric: '2300 kg/m3',
    because: 'ordinary concrete weighs about that',
    from: 'common practice, no source',
  },
})

export const waterEach = word<'volume'>('waterEach', {
  kind: 'volume',
  label: 'water for one bag',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'Printed on the bag, often as a range: take the least first.',
  ask: 'How much water does one bag take, by its print?',
  called: {
    names: ['water per bag', 'water each', 'water a bag', 'per bag', 'water for one bag', 'of water'],
    things: ['water'],
    sides: ['water', 'per bag'],
    plainly: true,
  },
  possible: { above: '0 gal' },
  plausible: { from: '0.2 gal', to: '3 gal' },
})

export const bagsToMix = word<'count'>('bagsToMix', {
  kind: 'count',
  noun: 'bag',
  label: 'bags to mix',
  whole: true,
  measure: 'All together.',
  ask: 'How many bags do you mix?',
  called: { names: ['bags to mix', 'number of bags'], things: ['bag', 'bags', 'sack', 'sacks'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '500' },
})

export const waterAll = word<'volume'>('waterAll', {
  kind: 'volume',
  label: 'water for all bags',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'By the amount printed on the bag.',
  ask: 'How much water in all?',
  called: {
    names: ['water for the bags'],
    asks: [
      'how much water',
      'water for the bags',
      'water to mix',
      'how much water do i need',
      'water for mixing',
      'gallons of water',
      'litres of water',
    ],
  },
})

export const waterWeight = word<'mass'>('waterWeight', {
  kind: 'mass',
  label: 'weight of that water',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'To be carried as well.',
  ask: 'What does the water weigh?',
  called: { names: ['weight of the water'], asks: ['what does the water weigh', 'weight of the water'] },
})

export const spoilInGround = word<'volume'>('spoilInGround', {
  kind: 'volume',
  label: 'soil as it lay in the ground',
  units: { imperial: 'ft3', metric: 'm3' },
  measure: 'All holes together.',
  ask: 'How much soil was in the holes?',
  called: { names: ['soil in the ground'], asks: ['volume of the holes'] },
})

export const spoilWeight = word<'mass'>('spoilWeight', {
  kind: 'mass',
  label: 'weight of the soil',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Swelling changes its volume, never its weight.',
  ask: 'What does the soil weigh?',
  called: {
    names: ['weight of the soil'],
    asks: ['what does the soil weigh', 'how heavy is the dirt', 'weight of the dirt', 'weight of the spoil'],
  },
})

export const soilDensity = word<'density'>('soilDensity', {
  kind: 'density',
  label: 'weight of soil in the ground',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'Moist, as it lies.',
  ask: 'What does your soil weigh?',
  called: {
    names: ['soil density', 'soil weighs', 'dirt weighs'],
    things: ['soil', 'dirt'],
    sides: ['weighs', 'density'],
  },
  possible: { above: '0 lb/ft3' },
  plausible: { from: '60 lb/ft3', to: '150 lb/ft3' },
  usual: {
    value: '100 lb/ft3',
    metric: '1600 kg/m3',
    because: 'common moist soil weighs about that',
    from: 'common practice, no source',
  },
})

export const loadWeight = word<'mass'>('loadWeight', {
  kind: 'mass',
  label: 'all that is hauled',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Bags, stone, wood: everything that goes in.',
  ask: 'What does everything weigh that must be hauled?',
  called: {
    names: ['to haul', 'hauled', 'load of', 'total weight', 'weighs in all', 'load is', 'load'],
    things: ['load', 'haul', 'everything'],
    sides: ['haul', 'weighs', 'load'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '50 lb', to: '100000 lb' },
})

export const payload = word<'mass'>('payload', {
  kind: 'mass',
  label: 'payload of the vehicle',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'From the sticker in its door; people and tools are taken off it, and a trailer’s tongue too.',
  ask: 'What payload does the sticker in the door give, less people and tools?',
  called: {
    names: [
      'payload',
      'sticker',
      'carries',
      'can carry',
      'truck takes',
      'truck carries',
      'rated for',
      'trailer takes',
      'limit',
    ],
    things: ['truck', 'pickup', 'trailer', 'ute', 'van', 'car'],
    sides: ['payload', 'carries', 'rated', 'takes', 'carry'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '200 lb', to: '20000 lb' },
})

export const haulTrips = word<'count'>('haulTrips', {
  kind: 'count',
  noun: 'trip',
  label: 'trips',
  whole: true,
  measure: 'Whole trips, by weight.',
  ask: 'How many trips?',
  called: {
    names: ['hauling trips'],
    asks: [
      'how many trips',
      'how many loads',
      'trips to haul',
      'can i haul it in one',
      'trips with the truck',
      'trips with my truck',
      'one trip or two',
      'how many truck loads',
    ],
  },
})

export const eachTrip = word<'mass'>('eachTrip', {
  kind: 'mass',
  label: 'on each trip, shared evenly',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All trips alike.',
  ask: 'How much goes on each trip?',
  called: { names: ['weight each trip'], asks: ['how much each trip', 'weight per trip'] },
})
