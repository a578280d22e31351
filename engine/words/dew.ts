// This file is about dew: the air at the moment, the face of the wood, and how near the two are to water settling on it.
import { word } from './word.ts'

export const airNow = word<'temperature'>('airNow', {
  kind: 'temperature',
  label: 'air temperature now',
  units: { imperial: 'F', metric: 'C' },
  measure: 'In the shade beside the fence, at this hour.',
  ask: 'How warm is the air now, in the shade beside the fence?',
  called: {
    names: ['air temperature now', 'air now'],
    things: ['air', 'outside', 'shade', 'thermometer'],
    sides: ['temperature', 'now'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '-60 F', most: '140 F' },
  plausible: { from: '20 F', to: '115 F' },
})

export const humidityNow = word<'percent'>('humidityNow', {
  kind: 'percent',
  label: 'relative humidity now',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Beside the fence, at this hour.',
  ask: 'What is the relative humidity now?',
  called: {
    names: ['humidity', 'relative humidity', 'rh', 'humid', 'humidity now'],
    things: ['air', 'humidity', 'outside'],
    sides: ['humidity', 'rh', 'humid'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 %', most: '100 %' },
  plausible: { from: '5 %', to: '100 %' },
})

export const surfaceTemperature = word<'temperature'>('surfaceTemperature', {
  kind: 'temperature',
  label: 'temperature of the face',
  units: { imperial: 'F', metric: 'C' },
  measure: 'Of the wood’s face, with a contact or infrared thermometer, where it is coldest: in the shade, low down.',
  ask: 'How warm is the face of the wood, where it is coldest?',
  called: {
    names: [
      'surface temperature',
      'surface at',
      'surface is at',
      'surface is',
      'face is',
      'face is at',
      'boards are',
      'boards are at',
      'wood is at',
      'face at',
      'wood surface',
      'surface of the wood',
      'face of the wood',
    ],
    things: ['surface', 'face', 'wood'],
    sides: ['surface', 'face'],
    plainly: true,
  },
  possible: { least: '-60 F', most: '250 F' },
  plausible: { from: '20 F', to: '160 F' },
})

export const dewMargin = word<'temperatureDifference'>('dewMargin', {
  kind: 'temperatureDifference',
  label: 'margin over the dew point',
  units: { imperial: 'dF', metric: 'dC' },
  measure: 'The least the face must be warmer than the dew point. Your can may ask for more.',
  ask: 'How far above the dew point must the face be?',
  called: {
    names: ['margin', 'above the dew point', 'over the dew point', 'above dew point', 'warmer than the dew point'],
    things: ['margin', 'dew point'],
    sides: ['above', 'over', 'margin', 'warmer'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '0 F°' },
  plausible: { from: '1 F°', to: '20 F°' },
  usual: {
    value: '5 F°',
    metric: '3 C°',
    because: 'paint is not put on wood that may dew over before it is dry',
    from: 'paint inspection practice, as printed at https://fr.scribd.com/document/146044552/; your can comes first',
  },
})

export const humidityLimit = word<'percent'>('humidityLimit', {
  kind: 'percent',
  label: 'most humidity to paint in',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'On the can or its data sheet. Its own limit comes first.',
  ask: 'Up to what humidity may it be painted, by the can?',
  called: {
    names: [
      'humidity limit',
      'no more humidity than',
      'humidity under',
      'humidity below',
      'humidity up to',
      'max humidity',
      'maximum humidity',
    ],
    things: ['can', 'humidity limit'],
    sides: ['humidity limit', 'max humidity'],
  },
  possible: { above: '0 %', most: '100 %' },
  plausible: { from: '40 %', to: '100 %' },
  usual: {
    value: '85 %',
    because: 'over that most paints dry badly; your can comes first',
    from: 'paint inspection practice, as printed at https://fr.scribd.com/document/146044552/',
  },
})

export const dewPoint = word<'temperature'>('dewPoint', {
  kind: 'temperature',
  label: 'dew point',
  units: { imperial: 'F', metric: 'C' },
  measure: 'A face colder than that is wetted by the air.',
  ask: 'What is the dew point?',
  called: {
    names: ['dew point', 'dewpoint'],
    asks: ['dew point', 'dewpoint', 'when does dew fall', 'when does the dew fall', 'how cold before dew'],
  },
})

export const aboveDew = word<'temperatureDifference'>('aboveDew', {
  kind: 'temperatureDifference',
  label: 'face above the dew point by',
  units: { imperial: 'dF', metric: 'dC' },
  measure: 'Less than nothing where water already settles on it.',
  ask: 'How far is the face above the dew point?',
  called: { names: ['face above the dew point'], asks: ['how far above the dew point', 'how far over the dew point'] },
})

export const dewHolds = word<'verdict'>('dewHolds', {
  kind: 'verdict',
  label: 'face dry enough for paint, by the air',
  measure: 'The face against the dew point with its margin, and the humidity against its limit.',
  ask: 'Is the face far enough above the dew point?',
  called: {
    names: ['dew margin'],
    asks: [
      'can i paint now',
      'paint right now',
      'paint in this',
      'will dew settle',
      'dew on the paint',
      'will the paint get dew',
      'too damp to paint',
      'too humid to paint',
      'too close to the dew point',
      'far enough above the dew point',
      'paint in this humidity',
      'is the surface warm enough',
      'is the face warm enough',
      'surface warm enough',
    ],
  },
  says: { yes: 'far enough from dew', no: 'too near to dew', unknown: 'cannot say whether dew will settle' },
})
