// This file is about hauling with one’s own vehicle.
import { word } from './word.ts'

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
