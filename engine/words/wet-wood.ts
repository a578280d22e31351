// This file is about pickets that are still wet, and what they do as they dry.
import { word } from './word.ts'

export const species = word<'choice'>('species', {
  kind: 'choice',
  label: 'kind of wood',
  measure: 'As it is called at the yard.',
  ask: 'Which wood is it: western redcedar, northern white-cedar, redwood, southern pine, Douglas-fir, western hemlock, white fir, black locust or white ash? I have no published figures for others, radiata and spruce among them.',
  called: { names: ['species', 'kind of wood'] },
  options: {
    'western-redcedar': {
      label: 'western redcedar',
      called: ['western redcedar', 'western red cedar', 'western cedar', 'red cedar', 'redcedar', 'cedar', 'wrc'],
    },
    'northern-white-cedar': {
      label: 'northern white-cedar',
      called: ['northern white cedar', 'northern white-cedar', 'eastern white cedar', 'white cedar', 'arborvitae'],
    },
    redwood: { label: 'redwood (young)', called: ['redwood', 'california redwood', 'coast redwood'] },
    'southern-pine': {
      label: 'southern pine (loblolly)',
      called: [
        'southern pine',
        'southern yellow pine',
        'yellow pine',
        'loblolly',
        'loblolly pine',
        'syp',
        'treated southern pine',
      ],
    },
    'douglas-fir': {
      label: 'Douglas-fir (coast)',
      called: ['douglas fir', 'douglas-fir', 'oregon', 'oregon pine', 'doug fir', 'doug-fir'],
    },
    'western-hemlock': { label: 'western hemlock', called: ['western hemlock', 'hemlock', 'hem-fir', 'hem fir'] },
    'white-fir': { label: 'white fir', called: ['white fir'] },
    'black-locust': { label: 'black locust', called: ['black locust', 'locust', 'robinia', 'false acacia'] },
    'white-ash': { label: 'white ash', called: ['white ash', 'ash'] },
  },
})

export const grain = word<'choice'>('grain', {
  kind: 'choice',
  label: 'grain of the boards',
  measure: 'Look at the end: rings lying flat across the width are flat grain, rings standing up are edge grain.',
  ask: 'Is it flat grain (rings lying across the width) or edge grain (rings standing up)?',
  called: { names: ['grain'] },
  options: {
    flat: { label: 'flat grain', called: ['flat grain', 'flatsawn', 'flat sawn', 'plain sawn', 'tangential'] },
    edge: { label: 'edge grain', called: ['edge grain', 'quartersawn', 'quarter sawn', 'vertical grain', 'radial'] },
  },
  usual: {
    value: 'flat',
    because: 'most pickets are flat grain, which moves more',
    from: 'common practice, no source',
  },
})

export const moistureNow = word<'percent'>('moistureNow', {
  kind: 'percent',
  label: 'moisture of the wood now',
  measure: 'With a pin meter, a quarter deep.',
  ask: 'What moisture has the wood now?',
  called: {
    names: ['moisture now', 'now at', 'is at', 'reads', 'right now', 'wet at', 'now', 'at'],
    things: ['moisture', 'meter', 'wood'],
    sides: ['now', 'reads', 'today'],
    plainly: true,
  },
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '6 %', to: '120 %' },
})

export const gapDry = word<'length'>('gapDry', {
  kind: 'length',
  label: 'gap when the wood has settled',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between two pickets in the end, when the wood is as dry as it gets there.',
  ask: 'What gap do you want when the wood is dry?',
  called: {
    names: ['gap when dry', 'dry gap', 'gap later', 'final gap', 'end up with a gap'],
    things: ['gap', 'gaps'],
    sides: ['dry', 'later', 'final', 'when dry'],
    plainly: true,
    asks: [
      'what gap when dry',
      'gap when it is dry',
      'gap when dry',
      'gap later',
      'how wide will the gap',
      'how big will the gap',
      'what will the gap be',
      'how far will the gaps open',
      'what does the gap become',
    ],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '4 in' },
})

export const widthChange = word<'length'>('widthChange', {
  kind: 'length',
  label: 'each board changes by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Less than nothing when it shrinks.',
  ask: 'How much does each board change?',
  called: {
    names: ['shrinkage'],
    asks: [
      'how much will it shrink',
      'how much will they shrink',
      'how much does it shrink',
      'how much shrinkage',
      'how much will the pickets shrink',
      'how much will the boards shrink',
      'how much will it swell',
      'board shrink',
      'boards shrink',
      'picket shrink',
      'pickets shrink',
      'plank shrink',
      'board swell',
      'boards swell',
      'pickets swell',
      'board move',
      'boards move',
      'plank move',
      'wood move',
    ],
  },
})

export const widthLater = word<'length'>('widthLater', {
  kind: 'length',
  label: 'width of the board later',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'When it has settled.',
  ask: 'How wide is the board when it has settled?',
  called: {
    names: ['width later', 'width when dry', 'width it settles at'],
    asks: [
      'how wide will the board be',
      'how wide will it be',
      'how wide will the boards be',
      'how wide when it is dry',
    ],
  },
})

export const changeByCoefficient = word<'length'>('changeByCoefficient', {
  kind: 'length',
  label: 'change by the straight line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Holds from about 6 to 14 % moisture.',
  ask: 'How much does the board change by the straight line?',
  called: { names: ['change by the coefficient', 'change by the straight line'] },
})

export const changeByShrinkage = word<'length'>('changeByShrinkage', {
  kind: 'length',
  label: 'change by the wider formula',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Holds up to about 30 % moisture.',
  ask: 'How much does the board change by the wider formula?',
  called: { names: ['change by the wider formula', 'change by the shrinkage'] },
})

export const gapNow = word<'length'>('gapNow', {
  kind: 'length',
  label: 'gap now',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between two pickets with the wood as it is today: as they hang, or as they are to be set.',
  ask: 'What gap is between the pickets now?',
  called: {
    names: ['gap now', 'gap to set now', 'gap is now', 'gap today', 'wet gap'],
    things: ['gap', 'gaps'],
    sides: ['now', 'today', 'wet'],
    asks: [
      'what gap do i set now',
      'what gap now',
      'gap to set now',
      'what gap should i set',
      'gap with wet wood',
      'wet pickets',
      'wet wood gap',
      'butt them now',
      'how far apart now',
      'gap for wet',
    ],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '4 in' },
})
