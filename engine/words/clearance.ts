// This file is about room around meters, hydrants and the like.
import { word } from './word.ts'

export const clearanceRule = word<'length'>('clearanceRule', {
  kind: 'length',
  label: 'clearance that the rule asks',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the utility or the fire office asks, all round or in front: ask them.',
  ask: 'How much room does the rule ask around it?',
  called: {
    names: [
      'clearance required',
      'clearance of',
      'must stay',
      'needs',
      'required',
      'rule is',
      'rule says',
      'clear of',
      'keep clear',
      'clearance',
    ],
    things: ['rule', 'clearance'],
    sides: ['required', 'clear', 'clearance', 'must', 'rule'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '3 in', to: '30 ft' },
})

export const clearanceMeasured = word<'length'>('clearanceMeasured', {
  kind: 'length',
  label: 'room as measured, nearest face to nearest face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the nearest face of the meter or hydrant to the nearest part of the fence or gate, the gate open too.',
  ask: 'How much room is there, from its nearest face to the nearest part of the fence?',
  called: {
    names: [
      'from the meter',
      'from the hydrant',
      'to the meter',
      'to the hydrant',
      'away from the meter',
      'measured',
      'i have',
      'fence is',
      'room as measured',
    ],
    things: ['meter', 'hydrant', 'box', 'transformer', 'pole'],
    sides: ['away', 'from', 'clear'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '100 ft' },
})

export const clearanceShort = word<'length'>('clearanceShort', {
  kind: 'length',
  label: 'move the fence by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is missing to the clearance; nothing when there is enough.',
  ask: 'How far must the fence move?',
  called: {
    names: ['short of the clearance'],
    asks: ['how far must i move the fence', 'how much short', 'how far to move the fence'],
  },
})

export const clearanceHolds = word<'verdict'>('clearanceHolds', {
  kind: 'verdict',
  label: 'clearance against the rule',
  measure: 'The room measured, against the rule you gave.',
  ask: 'Is there enough room?',
  called: {
    names: ['enough clearance'],
    asks: [
      'is that enough clearance',
      'enough room around the meter',
      'too close to the meter',
      'too close to the hydrant',
      'far enough from the meter',
      'far enough from the hydrant',
      'clear of the meter',
      'clear of the hydrant',
      'is it too close',
    ],
  },
  says: {
    yes: 'nothing checked here fails',
    no: 'fails: closer than the rule you gave',
    unknown: 'cannot say whether there is enough room',
  },
})
