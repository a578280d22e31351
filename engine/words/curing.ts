// This file is about waiting for concrete: what the bag says, how warm it was when the bag was tried, and how warm it is here.
import { word } from './word.ts'

const bagSays = ['bag says', 'bag says wait', 'bag says to wait', 'sack says', 'label says', 'it says', 'maker says']
const braceBefore = [
  'before the braces',
  'before the bracing',
  'before bracing',
  'before braces',
  'before i take the braces',
  'before you take the braces',
]
const railBefore = [
  'before rails',
  'before the rails',
  'before hanging rails',
  'before hanging the rails',
  'before i hang rails',
  'before i hang the rails',
  'before you hang rails',
  'before you hang the rails',
]
const gateBefore = [
  'before a gate',
  'before the gate',
  'before hanging a gate',
  'before hanging the gate',
  'before i hang a gate',
  'before i hang the gate',
  'before you hang a gate',
  'before you hang the gate',
  'before heavy loads',
]
const printed = 'Printed on the bag or on its maker’s sheet, and it comes first.'

export const braceWait = word<'duration'>('braceWait', {
  kind: 'duration',
  label: 'bag’s wait for braces',
  units: { imperial: 'h', metric: 'h' },
  measure: `How long the bag says to leave the braces on. ${printed}`,
  ask: 'How long does the bag say to wait before the braces come off?',
  called: {
    names: [...bagSays, ...braceBefore],
    things: ['brace', 'bracing', 'prop'],
    sides: [...braceBefore, 'braces', 'bracing', 'braces off'],
  },
  possible: { above: '0 h' },
  plausible: { from: '20 minutes', to: '28 days' },
})

export const railWait = word<'duration'>('railWait', {
  kind: 'duration',
  label: 'bag’s wait for rails',
  units: { imperial: 'h', metric: 'h' },
  measure: `How long the bag says to wait before rails load the posts. ${printed} A day or two is common practice, no source.`,
  ask: 'How long does the bag say to wait before rails are hung?',
  called: {
    names: [...bagSays, ...railBefore],
    things: ['rail'],
    sides: [...railBefore, 'rails', 'rails are hung'],
  },
  possible: { above: '0 h' },
  plausible: { from: '2 h', to: '60 days' },
})

export const gateWait = word<'duration'>('gateWait', {
  kind: 'duration',
  label: 'bag’s wait for a gate',
  units: { imperial: 'h', metric: 'h' },
  measure: `How long the bag says to wait before a heavy load. ${printed} Several days are common practice, no source.`,
  ask: 'How long does the bag say to wait before a gate is hung?',
  called: {
    names: [...bagSays, ...gateBefore],
    things: ['gate', 'heavy load'],
    sides: [...gateBefore, 'gate', 'heavy loads', 'gate is hung'],
  },
  possible: { above: '0 h' },
  plausible: { from: '4 h', to: '60 days' },
})

export const bagTemperature = word<'temperature'>('bagTemperature', {
  kind: 'temperature',
  label: 'temperature on the bag',
  units: { imperial: 'F', metric: 'C' },
  measure: 'At which the bag’s waiting time holds: it stands beside it.',
  ask: 'At what temperature does the bag’s waiting time hold?',
  called: {
    names: [
      ...bagSays,
      ...braceBefore,
      ...railBefore,
      ...gateBefore,
      'bag temperature',
      'on the bag',
      'by the bag',
      'printed',
    ],
    things: ['bag', 'label', 'sack'],
    sides: ['bag', 'on the bag'],
    plainly: true,
  },
  plausible: { from: '45 F', to: '100 F' },
  usual: {
    value: '73 F',
    metric: '23 C',
    because: 'concrete is tried in a laboratory at that warmth; say what your bag says',
    from: 'ASTM standard curing temperature (from memory)',
  },
})

export const cureTemperature = word<'temperature'>('cureTemperature', {
  kind: 'temperature',
  label: 'temperature round the concrete',
  units: { imperial: 'F', metric: 'C' },
  measure:
    'The mean of day and night over the whole wait. In a hole it is the ground’s, which in spring is colder than the air.',
  ask: 'How warm is it round the concrete, day and night together?',
  called: {
    names: ['day and night', 'round the concrete', 'in the hole', 'mean temperature'],
    things: ['weather', 'ground', 'outside', 'night', 'day', 'temperature'],
    sides: ['here', 'outside', 'out there', 'out here', 'temperature', 'cold', 'now', 'will be'],
    plainly: true,
  },
  plausible: { from: '-20 F', to: '110 F' },
})

export const datumTemperature = word<'temperature'>('datumTemperature', {
  kind: 'temperature',
  label: 'datum temperature',
  units: { imperial: 'F', metric: 'C' },
  measure: 'Below it the method counts no hardening.',
  ask: 'Which datum temperature is reckoned with?',
  called: { names: ['datum', 'datum temperature', 'datum of'], things: ['datum'], sides: ['datum'], plainly: true },
  plausible: { from: '10 F', to: '45 F' },
  usual: {
    value: '32 F',
    metric: '0 C',
    because: 'it is the usual datum of the method, and a lower one would give shorter waits in the cold',
    from: 'ASTM C1074 (from memory)',
  },
})

export const coldFactor = word<'number'>('coldFactor', {
  kind: 'number',
  label: 'times as long as on the bag',
  measure: 'Never less than once: a warm day is no reason to wait less than the bag says.',
  ask: 'How many times as long as the bag says?',
  called: {
    names: ['times as long'],
    asks: [
      'how much longer in the cold',
      'how much longer does concrete take',
      'how many times as long',
      'how much longer do i wait',
    ],
  },
})

export const braceOff = word<'duration'>('braceOff', {
  kind: 'duration',
  label: 'wait before the braces come off',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From the last of the water. Rounded up.',
  ask: 'How long before the braces come off?',
  called: {
    asks: [
      'how long before the braces',
      'how long should i wait before the braces',
      'how long do i wait before the braces',
      'how long before the bracing',
      'how long before i take the braces off',
      'how long do the braces stay',
      'how long do i leave the braces',
      'how long do i leave the bracing',
      'how long to leave the braces',
      'when can i take the braces off',
      'when can the braces come off',
      'when do the braces come off',
      'when can the bracing come off',
      'when does the bracing come off',
    ],
  },
})

export const railsUp = word<'duration'>('railsUp', {
  kind: 'duration',
  label: 'wait before rails are hung',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From the last of the water. Rounded up.',
  ask: 'How long before rails are hung?',
  called: {
    names: ['concrete cures', 'concrete hardens', 'cures for'],
    things: ['concrete'],
    asks: [
      'how long before rails',
      'how long should i wait before hanging rails',
      'how long should i wait before hanging the rails',
      'how long do i wait before i hang the rails',
      'how long before the rails',
      'how long before i hang rails',
      'how long before i hang the rails',
      'how long before i can hang rails',
      'how long before i can hang the rails',
      'how long before hanging rails',
      'when can i hang rails',
      'when can i hang the rails',
      'how long does the concrete take',
      'how long does concrete take',
      'how long for the concrete',
      'how long until the concrete',
      'how long does the concrete need',
      'how long do i wait for the concrete',
      'how long do i let the concrete',
      'how long to let the concrete',
      'how long do i let the posts',
    ],
  },
})

export const gateUp = word<'duration'>('gateUp', {
  kind: 'duration',
  label: 'wait before a gate is hung',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From the last of the water. Rounded up.',
  ask: 'How long before a gate is hung?',
  called: {
    asks: [
      'how long before a gate',
      'how long should i wait before hanging the gate',
      'how long should i wait before hanging a gate',
      'how long do i wait before i hang the gate',
      'how long before the gate',
      'how long before i hang a gate',
      'how long before i hang the gate',
      'how long before i can hang the gate',
      'how long before i can hang a gate',
      'how long before hanging the gate',
      'how long before hanging a gate',
      'when can i hang the gate',
      'when can i hang a gate',
      'when can the gate go on',
      'how soon can i hang the gate',
      'how soon can i hang a gate',
    ],
  },
})
