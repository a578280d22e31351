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
