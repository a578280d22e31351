// This file is about hauling with one’s own vehicle.
import { word } from './word.ts'

export const loadWeight = word<'mass'>('loadWeight', {
  kind: 'mass',
  label: 'weight of all that is hauled',
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
      'hauls',
      'can haul',
      'pickup hauls',
      'truck hauls',
      'trailer hauls',
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
  replaces: ['piecesEachTrip'],
})

export const loadVolume = word<'volume'>('loadVolume', {
  kind: 'volume',
  label: 'room that all of it takes',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Loose, as it is tipped or heaped: soil, stone, mulch.',
  ask: 'How much room does everything take that must be hauled?',
  called: {
    names: ['to haul', 'hauled', 'load of', 'loose', 'to haul away'],
    things: ['load', 'haul', 'heap', 'soil', 'dirt', 'gravel', 'stone', 'mulch', 'spoil'],
    sides: ['haul', 'load'],
  },
  possible: { above: '0 yd3' },
  plausible: { from: '0.1 yd3', to: '100 yd3' },
})

export const bedVolume = word<'volume'>('bedVolume', {
  kind: 'volume',
  label: 'room in the bed or trailer',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Length × width × height, level with the sides.',
  ask: 'How much does the bed or trailer hold, by volume?',
  called: {
    names: ['bed holds', 'bed takes', 'bed of', 'truck bed', 'trailer holds', 'bed is', 'tray holds', 'box holds'],
    things: ['bed', 'truck bed', 'trailer', 'tray'],
    sides: ['holds', 'bed'],
    plainly: true,
  },
  possible: { above: '0 yd3' },
  plausible: { from: '0.2 yd3', to: '20 yd3' },
})

const pieces = ['bag', 'bucket', 'sack', 'pail', 'post', 'board', 'piece', 'block', 'stone', 'brick']

export const piecesToHaul = word<'count'>('piecesToHaul', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces to haul',
  whole: true,
  measure: 'Bags, buckets, posts: whatever is counted.',
  ask: 'How many pieces are there to haul?',
  called: { names: ['pieces to haul'], things: pieces },
  possible: { least: '1' },
  plausible: { from: '1', to: '5000' },
})

export const pieceWeight = word<'mass'>('pieceWeight', {
  kind: 'mass',
  label: 'weight of one piece',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'It is printed on a bag; weigh one board or bucket.',
  ask: 'What does one piece weigh?',
  called: {
    names: ['weighs each', 'each weighing', 'weigh each', 'lb each', 'pounds each', 'kg each', 'a piece', 'apiece'],
    things: pieces,
    sides: ['each', 'weigh', 'weighs', 'weighing', 'apiece', 'heavy'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '1 lb', to: '2000 lb' },
})

export const weightAboard = word<'mass'>('weightAboard', {
  kind: 'mass',
  list: true,
  label: 'people and tools aboard',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Everybody who rides along, and what lies in the vehicle already: each, or all together.',
  ask: 'What do the people and tools aboard weigh, each of them?',
  called: {
    names: [
      'i weigh',
      'he weighs',
      'she weighs',
      'driver weighs',
      'driver is',
      'aboard',
      'rides along',
      'riding along',
    ],
    things: ['driver', 'passenger', 'wife', 'husband', 'partner', 'son', 'helper', 'mate', 'dog', 'tools'],
    sides: ['weigh', 'weighs', 'aboard', 'rides', 'comes along'],
    plainly: true,
  },
  possible: { least: '0 lb' },
  plausible: { from: '5 lb', to: '1500 lb' },
})

export const payloadLeft = word<'mass'>('payloadLeft', {
  kind: 'mass',
  label: 'payload left for the load',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'The payload on the sticker, less the people and tools aboard.',
  ask: 'What is left of the payload for the load?',
  called: {
    names: ['payload left'],
    asks: [
      'how much payload is left',
      'what is left of the payload',
      'how much payload have i left',
      'left for the load',
    ],
  },
})

export const piecesAtOnce = word<'count'>('piecesAtOnce', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces that go at once',
  whole: true,
  measure: 'What the payload leaves, over the weight of one piece, rounded down.',
  ask: 'How many pieces go at once?',
  called: {
    names: ['most pieces at once'],
    asks: pieces.flatMap((it) => [
      `how many ${it}s can i carry at once`,
      `how many ${it}s at once`,
      `how many ${it}s can i haul`,
      `how many ${it}s can my truck`,
      `how many ${it}s go at once`,
    ]),
  },
})

export const hauledWeight = word<'mass'>('hauledWeight', {
  kind: 'mass',
  label: 'all the pieces together',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Their number times the weight of one.',
  ask: 'What do all the pieces weigh together?',
  called: {
    names: ['weight of all the pieces'],
    asks: ['what do they all weigh', 'what does it all weigh', 'what do the bags weigh together'],
  },
})

export const piecesEachTrip = word<'count'>('piecesEachTrip', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces on each trip',
  whole: true,
  measure: 'As many as you would take at once.',
  ask: 'How many pieces do you take on each trip?',
  called: {
    names: [
      ...pieces.flatMap((it) => [`${it}s each trip`, `${it}s a trip`, `${it}s per trip`, `${it}s at a time`]),
      'each trip',
      'per trip',
      'at a time',
    ],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '500' },
})

export const eachTrip = word<'mass'>('eachTrip', {
  kind: 'mass',
  label: 'on each trip, shared evenly',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All trips alike.',
  ask: 'How much goes on each trip?',
  called: { names: ['weight each trip'], asks: ['how much each trip', 'weight per trip'] },
})

const by = (name: string, label: string, what: string) =>
  word<'count'>(name, {
    kind: 'count',
    noun: 'trip',
    label: `trips by ${label}`,
    whole: true,
    measure: `${what}, rounded up.`,
    ask: `How many trips by ${label}?`,
    called: { names: [`trips by ${label}`] },
  })

export const tripsByWeight = by('tripsByWeight', 'weight', 'All of it over the payload')
export const tripsByVolume = by('tripsByVolume', 'room', 'All of it over what the bed holds')
export const tripsByCount = by('tripsByCount', 'count', 'All the pieces over those taken at once')

export const longestPiece = word<'length'>('longestPiece', {
  kind: 'length',
  label: 'longest piece that is hauled',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'The longest board, post or rail as it is loaded.',
  ask: 'How long is the longest piece that must be hauled?',
  called: {
    names: [
      'longest piece',
      'longest board',
      'longest stick',
      'longest post',
      'longest rail',
      'longest timber',
      'long boards',
      'to haul',
      'haul',
      'carry',
      'bring home',
      'get home',
    ],
    things: ['board', 'post', 'rail', 'stick', 'timber', 'lumber', 'length', 'plank'],
    sides: ['long', 'longest'],
  },
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '24 ft' },
})

export const bedLength = word<'length'>('bedLength', {
  kind: 'length',
  label: 'length that carries the load',
  units: { imperial: 'ft', metric: 'm' },
  measure:
    'From the headboard to the last edge that the load lies on. A tailgate that is down counts only if it is rated to carry.',
  ask: 'How long is the bed, trailer or rack, from its front to the last edge that carries the load?',
  called: {
    names: [
      'bed is',
      'bed of',
      'truck bed',
      'pickup bed',
      'bed length',
      'trailer is',
      'trailer of',
      'tray is',
      'tray of',
      'ute tray',
      'box is',
      'roof rack',
      'load space',
      'load bed',
      'van is',
    ],
    things: ['bed', 'truck', 'pickup', 'trailer', 'ute', 'tray', 'rack', 'van'],
    sides: ['long'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '24 ft' },
})

export const overhang = word<'length'>('overhang', {
  kind: 'length',
  label: 'sticks out behind',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'The longest piece, pushed up to the front, less what it lies on.',
  ask: 'How far does it stick out behind?',
  called: {
    names: ['overhang'],
    asks: [
      'how far will it stick out',
      'how far do they stick out',
      'how far does it stick out',
      'how much sticks out',
      'how much hangs out',
      'how much hangs over',
      'how far will they hang out',
      'how far over the tailgate',
      'how much overhang',
      'what is the overhang',
      'hang out the back',
      'stick out the back',
      'hanging out the back',
    ],
  },
})

export const overhangShare = word<'percent'>('overhangShare', {
  kind: 'percent',
  label: 'of its length lies behind the bed',
  measure: 'What sticks out, over the whole length.',
  ask: 'What share of it sticks out?',
  called: { names: ['share that sticks out'] },
})

export const overhangChecked = word<'verdict'>('overhangChecked', {
  kind: 'verdict',
  label: 'the longest piece on this bed',
  measure: 'No more than a third of it behind the bed. How it is tied, and what the road law says, is not checked.',
  ask: 'Does it lie safely on the bed?',
  called: {
    names: ['fits the bed'],
    asks: [
      'will it fit in the truck',
      'will they fit in the truck',
      'do they fit in the bed',
      'will they fit on the trailer',
      'will it fit on the trailer',
      'too long for my truck',
      'too long for the truck',
      'too long for the bed',
      'too long for my trailer',
      'too long for the trailer',
      'too long for the ute',
      'too long for the van',
      'can i haul',
      'can i carry',
    ],
  },
  says: {
    yes: 'nothing checked here fails',
    no: 'fails: more than a third of it is behind the bed',
    unknown: 'cannot say: just a third of it is behind the bed',
  },
})
