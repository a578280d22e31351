// This file is about lengths written in feet and tenths.
import { word } from './word.ts'

export const platLength = word<'length'>('platLength', {
  kind: 'length',
  label: 'length as it is written',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'As the plat or the plan has it, 47.35 ft for instance.',
  ask: 'Which length do you want to turn into feet and inches?',
  called: {
    names: [
      'on the plat',
      'plat says',
      'plan says',
      'survey says',
      'decimal feet',
      'feet and tenths',
      'tenths',
      'convert',
      'on the plan',
      'plat',
    ],
    things: ['plat', 'plan'],
    sides: ['in feet and inches', 'on my tape', 'on the tape', 'in metres', 'in meters'],
    byDefault: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '5000 ft' },
})

export const onTape = word<'length'>('onTape', {
  kind: 'length',
  label: 'on a tape in feet and inches',
  units: { imperial: 'ft', metric: 'ft' },
  measure: 'At the nearest mark of the tape.',
  ask: 'What is that on a tape in feet and inches?',
  called: {
    names: ['on a tape', 'feet and inches'],
    asks: [
      'in feet and inches',
      'on my tape',
      'on a tape',
      'on the tape',
      'what is that in inches',
      'feet and inches',
      'what does that come to on',
      'to inches',
      'into inches',
      'read on a tape',
    ],
  },
})

export const tapeOff = word<'length'>('tapeOff', {
  kind: 'length',
  label: 'off by, for rounding to the mark',
  units: { imperial: 'in', metric: 'in' },
  measure: 'Never more than half a mark.',
  ask: 'How far off is the rounded length?',
  called: { names: ['rounding error'], asks: ['how far off is the tape'] },
})

export const inMetres = word<'length'>('inMetres', {
  kind: 'length',
  label: 'in metres',
  units: { imperial: 'm', metric: 'm' },
  measure: 'The same length in metres.',
  ask: 'What is that in metres?',
  called: { names: ['in metres'], asks: ['in metres', 'in meters', 'to metres', 'to meters', 'metric'] },
})

export const inTenths = word<'number'>('inTenths', {
  kind: 'number',
  label: 'in feet and tenths, as a plat writes it',
  measure: 'Feet with decimals: 3.25 is three feet and a quarter of a foot, which is 3 ft 3 in.',
  ask: 'What is that in feet and tenths?',
  called: { names: ['in tenths'], asks: ['in feet and tenths', 'in decimal feet', 'to tenths', 'in tenths'] },
})
