// This file is about wood: how wet it is, and whether it can be finished.
import { word } from './word.ts'

const reading = {
  kind: 'percent', units: { imperial: 'percent', metric: 'percent' },
  possible: { least: '0 %', most: '300 %' }, plausible: { from: '4 %', to: '60 %' },
} as const

export const moistureReading = word<'percent'>('moistureReading', {
  replaces: ['surfaceReading', 'depthReading'],
  ...reading, label: 'moisture reading, depth not said',
  measure: 'Push the pins in along the grain, away from ends and knots, and note how deep they go.',
  ask: 'What does the moisture meter read, and how deep were the pins?',
  called: { names: ['moisture', 'moisture content', 'meter reads', 'meter says', 'reading', 'reads', 'mc', 'moisture meter', 'meter', 'readings', 'reading of', 'pin meter'], things: ['wood', 'picket', 'board', 'fence', 'meter', 'post', 'rail', 'cedar', 'pine', 'timber'], sides: ['wet', 'tests', 'showing', 'shows', 'says'], plainly: true },
})

export const surfaceReading = word<'percent'>('surfaceReading', {
  replaces: ['moistureReading', 'depthReading'],
  ...reading, label: 'reading at the surface', measure: 'Pins just into the face.', ask: 'What does the meter read at the surface?',
  called: { names: ['surface reading', 'face reading', 'at the surface', 'on the surface', 'at surface', 'surface moisture', 'on the face', 'at the face', 'outside', 'on top', 'skin'], things: ['surface', 'face', 'shell', 'skin', 'outside'], plainly: true },
})

export const depthReading = word<'percent'>('depthReading', {
  replaces: ['moistureReading', 'surfaceReading'],
  ...reading, label: 'reading at depth', measure: 'Insulated pins, a fifth to a quarter of the thickness in, or the middle of a fresh cut.', ask: 'What does the meter read at depth?',
  called: { names: ['deep reading', 'depth reading', 'core reading', 'deep pins', 'pins deep', 'at depth', 'in the core', 'core reading', 'inside', 'deep', 'in the middle', 'at the core', 'deeper', 'deeper in', 'further in', 'down inside', 'pins driven in', 'half an inch in', 'in the heart', 'below the surface', 'pushed in', 'hammered in', 'at the center', 'at the centre'], things: ['core', 'depth', 'inside', 'middle', 'heart', 'center', 'centre'], plainly: true },
})

export const moistureLimit = word<'percent'>('moistureLimit', {
  ...reading, label: 'moisture limit', measure: 'Read the can or its data sheet. Its own limit comes first.', ask: 'What moisture limit is on the can?',
  called: { names: ['limit', 'can says', 'the can', 'on the can', 'below', 'or less', 'data sheet', 'tin says', 'label says', 'maximum moisture', 'max moisture', 'must be under', 'must be below', 'manufacturer', 'under', 'paint says', 'stain says', 'instructions say', 'allows', 'stain wants', 'paint wants', 'up to'], things: ['can', 'tin', 'label', 'limit', 'stain', 'paint', 'datasheet', 'maker'], sides: ['limit', 'max', 'maximum', 'allows', 'says', 'wants', 'under', 'below', 'calls for'] },
  usual: { value: '15 %', because: 'no limit from your can yet: the can’s own limit comes first (common practice, no source). Published beside it: about 12 % where most houses stand, 12 to 15 % wanted, and over 20 % raises the risk of blisters and peeling', from: 'Iowa State University Extension, Finishing Exterior Wood (12 to 15 %); Wood Handbook, FPL-GTR-190, chapter 16 (about 12 %; over 20 %)' },
})

export const waterTest = word<'choice'>('waterTest', {
  kind: 'choice', label: 'water on the wood', measure: 'Sprinkle a little water on the face and watch it for half a minute.',
  ask: 'Sprinkle a few drops of water on the face. Do they soak in within half a minute, or bead?',
  called: { names: ['water test'] },
  options: {
    beads: { label: 'still beads', called: ['bead', 'beads', 'beading', 'beaded', 'sits on top', 'rolls off', 'runs off', "doesn't soak", 'does not soak', "won't soak", 'not soaking', "isn't soaking", 'sits there', 'stands on', 'stays on top', "doesn't absorb", 'does not absorb', 'not absorbing', "didn't soak", 'did not soak', 'still on top', 'droplets stay', 'repels', "don't soak", 'do not soak', 'pools on'] },
    soaks: { label: 'soaks in', called: ['soak', 'soaks', 'soaking', 'soaked', 'soaks in', 'soaks right in', 'absorbs', 'absorbed', 'absorbing', 'drinks it', 'drinks', 'goes in', 'disappears', 'sinks in', 'sucks it up', 'sucks up', 'soaks up', 'drank'] },
  },
})

export const woodAge = word<'duration'>('woodAge', {
  kind: 'duration', label: 'time out in the weather', units: { imperial: 'month', metric: 'month' },
  measure: 'Since it was hung, or since its faces were bare to sun and rain.', ask: 'How long has the wood been out in the weather?',
  called: { names: ['old', 'ago', 'later', 'since', 'months later', 'weathered', 'been up', 'been out', 'outside for', 'hung', 'in the weather', 'after'], things: ['fence', 'wood', 'picket', 'board', 'cedar', 'pine'], sides: ['old', 'ago', 'later', 'outside', 'standing', 'up'], plainly: true },
  possible: { least: '0 day' }, plausible: { from: '0 day', to: '50 year' },
})

export const finishKind = word<'choice'>('finishKind', {
  kind: 'choice', label: 'kind of finish', measure: 'A film lies on the wood; a penetrating stain soaks in.',
  ask: 'Is it a film (paint, solid stain) or a finish that soaks in (clear, semi-transparent stain)?',
  called: {},
  options: {
    film: { label: 'film (paint or solid stain)', called: ['paint', 'painting', 'primer', 'prime', 'solid stain', 'solid color', 'solid colour', 'opaque', 'film', 'latex', 'acrylic', 'painted', 'solid-color', 'whitewash', 'white it'] },
    penetrating: { label: 'finish that soaks in', called: ['semi-transparent', 'semitransparent', 'semi transparent', 'penetrating', 'oil stain', 'clear', 'water repellent', 'penetrating oil', 'transparent', 'translucent', 'sealer', 'decking oil', 'tung oil', 'linseed'] },
  },
})

export const airTemperature = word<'temperature'>('airTemperature', {
  kind: 'temperature', label: 'air temperature', units: { imperial: 'F', metric: 'C' },
  measure: 'The average over the weeks the wood has stood there, in the shade.', ask: 'What is the usual air temperature there, over the last weeks?',
  called: { names: ['temperature', 'air temperature', 'degrees', 'outside temperature', 'temp'], things: ['air', 'weather', 'outside'], sides: ['temperature', 'warm', 'temp'], plainly: true },
  plausible: { from: '30 F', to: '130 F' },
})

export const humidity = word<'percent'>('humidity', {
  kind: 'percent', label: 'relative humidity', units: { imperial: 'percent', metric: 'percent' },
  measure: 'The average over the weeks the wood has stood there.', ask: 'What is the usual relative humidity there?',
  called: { names: ['humidity', 'relative humidity', 'rh', 'humid'], things: ['air', 'weather', 'humidity'], sides: ['humidity', 'rh', 'humid', 'damp'], plainly: true },
  possible: { least: '0 %', most: '100 %' }, plausible: { from: '5 %', to: '95 %' },
})

export const equilibriumMoisture = word<'percent'>('equilibriumMoisture', {
  kind: 'percent', label: 'moisture the wood settles at', units: { imperial: 'percent', metric: 'percent' },
  measure: 'Where wood left in this air ends up, wet or dry to begin with.', ask: 'At what moisture does the wood settle?',
  called: { names: ['equilibrium moisture', 'emc', 'equilibrium', 'settle at', 'settles at', 'moisture content will', 'equilibrium moisture content'], asks: ['what moisture will', 'how dry can', 'how dry will', 'settle at', 'emc', 'equilibrium', 'end up at', 'as dry as it gets', 'how dry does'] },
})

export const dryEnough = word<'verdict'>('dryEnough', {
  kind: 'verdict', label: 'dry enough', measure: 'The wettest reading against the limit.', ask: 'Is the wood dry enough?',
  called: { names: ['dry enough', 'ready to finish', 'ready to paint', 'ready to stain', 'ready for paint', 'ready for stain', 'ready for finish', 'too wet'], asks: [
      'dry enough', 'too wet', 'ready to', 'ready for', 'dry yet', 'should i wait', 'wait longer', 'paint yet', 'stain yet', 'finish yet', 'paint it', 'stain it', 'paint now', 'stain now', 'still wet',
      'can it be painted', 'can it be stained', 'paint my', 'stain my',
      ...['can i', 'can we', 'ok to', 'okay to', 'time to', 'good to', 'safe to', 'should i'].flatMap((start) => ['paint', 'stain', 'finish', 'seal', 'prime', 'coat', 'oil', 'varnish'].map((doing) => `${start} ${doing}`)),
    ] },
  says: { yes: 'dry enough', no: 'not dry enough', unknown: 'cannot say whether it is dry enough' },
})

export const surfaceReady = word<'verdict'>('surfaceReady', {
  kind: 'verdict', label: 'surface ready', measure: 'Water must soak in, and the face must be fresh or cleaned.', ask: 'Is the surface ready?',
  called: { names: ['surface ready', 'face ready'], asks: ['surface ready', 'need to sand', 'do i sand', 'should i sand', 'need to wash', 'should i wash', 'face ready', 'take the paint', 'take paint', 'take stain', 'mill glaze'] },
  says: { yes: 'surface ready', no: 'surface not ready', unknown: 'cannot say whether the surface is ready' },
})
