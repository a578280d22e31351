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

export const tripCost = word<'money'>('tripCost', {
  kind: 'money',
  label: 'what one trip costs you',
  measure: 'Fuel and tolls, there and back; wear too, if you count it.',
  ask: 'What does one trip with your own vehicle cost you, there and back?',
  called: {
    names: [
      'fuel',
      'gas',
      'petrol',
      'diesel',
      'each trip costs',
      'a trip costs',
      'per trip',
      'a trip',
      'each trip',
      'costs me',
      'one trip',
    ],
    things: ['trip', 'fuel', 'petrol'],
    plainly: true,
  },
  possible: { least: '$0' },
})

export const tripTime = word<'duration'>('tripTime', {
  kind: 'duration',
  label: 'time for one trip',
  units: { imperial: 'h', metric: 'h' },
  measure: 'There, loading, back and unloading.',
  ask: 'How long does one trip take, loading and unloading counted in?',
  called: {
    names: ['trip takes', 'each trip takes', 'a trip takes', 'round trip', 'there and back', 'each run takes'],
    things: ['trip', 'run', 'drive'],
    plainly: true,
  },
  possible: { above: '0 h' },
  plausible: { from: '5 minutes', to: '12 h' },
})

export const ownHaulCost = word<'money'>('ownHaulCost', {
  kind: 'money',
  label: 'hauling it yourself',
  measure: 'Every trip, and your hours if you say what they are worth.',
  ask: 'What does hauling it yourself cost?',
  called: {
    names: ['cost of hauling it myself'],
    asks: ['what does hauling cost', 'what does it cost to haul it myself'],
  },
})

export const ownHaulTime = word<'duration'>('ownHaulTime', {
  kind: 'duration',
  label: 'your hours on the road',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Every trip.',
  ask: 'How long does hauling it yourself take?',
  called: { names: ['hours on the road'], asks: ['how long will the hauling take', 'how long does hauling take'] },
})

export const haulSaves = word<'money'>('haulSaves', {
  kind: 'money',
  label: 'between the two',
  measure: 'The dearer less the cheaper.',
  ask: 'How much is between the two?',
  called: { names: ['saved by hauling'], asks: ['how much do i save by hauling', 'what do i save by hauling'] },
})

export const cheaperHaul = word<'choice'>('cheaperHaul', {
  kind: 'choice',
  label: 'cheaper',
  measure: 'The delivery against all the trips.',
  ask: 'Which is cheaper, the delivery or your own vehicle?',
  called: {
    names: ['delivery or own vehicle'],
    asks: [
      'delivery or my own truck',
      'delivery or haul it myself',
      'have it delivered or haul',
      'worth having it delivered',
      'worth the delivery',
      'is delivery worth it',
      'is the delivery worth it',
      'delivered or pick it up',
      'cheaper to haul it myself',
      'cheaper to fetch it myself',
      'cheaper to have it delivered',
      'pay for delivery or',
      'delivery cheaper',
      'delivered cheaper',
    ],
  },
  options: {
    'your own vehicle': { label: 'your own vehicle', called: [] },
    'the delivery': { label: 'the delivery', called: [] },
    'both alike': { label: 'both alike', called: [] },
  },
})
