// This file is about what a moisture meter's reading is worth: the wood's temperature, its treatment, and water on its face.
import { word } from './word.ts'

export const woodTemperature = word<'temperature'>('woodTemperature', {
  kind: 'temperature',
  label: 'temperature of the wood',
  units: { imperial: 'F', metric: 'C' },
  measure: 'Of the wood itself, where the pins are: after a cold night it is colder than the air.',
  ask: 'How warm is the wood where you measure?',
  called: {
    names: [
      'wood temperature',
      'temperature of the wood',
      'wood at',
      'wood is at',
      'in wood at',
      'wood was',
      'wood is',
    ],
    things: ['wood'],
    sides: ['cold', 'warm', 'hot'],
  },
  possible: { least: '-60 F', most: '250 F' },
  plausible: { from: '0 F', to: '130 F' },
})

export const meterTemperature = word<'temperature'>('meterTemperature', {
  kind: 'temperature',
  label: 'temperature the meter is set for',
  units: { imperial: 'F', metric: 'C' },
  measure: 'In the meter’s leaflet: the temperature its scale was made at.',
  ask: 'At what temperature is the meter right, by its leaflet?',
  called: {
    names: ['calibrated at', 'calibrated for', 'calibration', 'meter is set for', 'set for', 'meter calibrated at'],
    things: ['meter', 'scale'],
    sides: ['calibrated', 'calibration', 'set'],
  },
  possible: { least: '-60 F', most: '250 F' },
  plausible: { from: '50 F', to: '90 F' },
  usual: {
    value: '70 F',
    metric: '20 C',
    because: 'most pin meters are right at room temperature; the leaflet says',
    from: 'two makers’ manuals (20 °C); 70 °F from memory',
  },
})

export const woodTreated = word<'choice'>('woodTreated', {
  kind: 'choice',
  label: 'treatment of the wood',
  measure: 'Look for the tag, or ask the yard: fence wood is mostly treated with copper.',
  ask: 'Is the wood treated with a copper preservative, or untreated?',
  called: { names: ['treatment'] },
  options: {
    treated: {
      label: 'treated with a copper preservative',
      called: [
        'treated',
        'pressure treated',
        'pressure-treated',
        'copper treated',
        'cca',
        'acq',
        'copper azole',
        'tanalised',
        'tanalized',
        'green treated',
      ],
    },
    untreated: { label: 'untreated', called: ['untreated', 'not treated', 'no treatment', 'natural wood'] },
  },
})

export const woodFace = word<'choice'>('woodFace', {
  kind: 'choice',
  label: 'face of the wood',
  measure: 'Wet from rain or dew, or dry to the hand.',
  ask: 'Is the face of the wood wet from rain or dew, or dry to the hand?',
  called: { names: ['face of the wood'] },
  options: {
    dry: {
      label: 'dry to the hand',
      called: ['face is dry', 'surface is dry', 'dry to the hand', 'dry to the touch', 'dry face'],
    },
    wet: {
      label: 'wet from rain or dew',
      called: [
        'wet face',
        'wet surface',
        'surface is wet',
        'face is wet',
        'just rained',
        'after rain',
        'after the rain',
        'in the rain',
        'dew on it',
        'with dew on',
        'wet with dew',
        'rained on',
      ],
    },
  },
})

export const correctedFrom = word<'percent'>('correctedFrom', {
  kind: 'percent',
  label: 'true moisture, from',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'The driest that the published corrections make of the reading.',
  ask: 'From what moisture is it?',
  called: {
    names: ['corrected reading', 'corrected moisture', 'true reading'],
    asks: [
      'what is it really',
      'really is it',
      'corrected reading',
      'correct the reading',
      'correct the meter',
      'corrected for temperature',
      'what does that mean in truth',
      'true moisture',
      'what is the true moisture',
      'is the reading right',
      'is that reading right',
      'can i trust the reading',
      'can i trust the meter',
      'trust that reading',
      'temperature correction',
    ],
  },
})

export const correctedTo = word<'percent'>('correctedTo', {
  kind: 'percent',
  label: 'true moisture, to',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'The wettest that the published corrections make of the reading.',
  ask: 'Up to what moisture is it?',
  called: {},
})

export const readingHolds = word<'verdict'>('readingHolds', {
  kind: 'verdict',
  label: 'reading can be used',
  measure: 'A dry face, wood that is not frozen, and a reading within the meter’s range.',
  ask: 'Can the reading be used?',
  called: { names: ['reading holds'] },
  says: {
    yes: 'the reading can be used',
    no: 'the reading cannot be used',
    unknown: 'cannot say what the reading is worth',
  },
})
