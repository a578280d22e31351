// This file is about a fence around a pool, as a model code looks at it.
import { word } from './word.ts'

export const barrierHeight = word<'length'>('barrierHeight', {
  kind: 'length',
  label: 'height, on the side away from the pool',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground outside to the top, at the lowest place of the fence.',
  ask: 'How high is the fence, measured on the side away from the pool?',
  called: {
    names: [
      'pool fence height',
      'barrier height',
      'pool fence is',
      'height on the outside',
      'high on the outside',
      'pool fence',
    ],
    things: ['pool fence', 'barrier', 'fence'],
    sides: ['high', 'tall', 'height'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '24 in', to: '10 ft' },
})

export const gapUnderBarrier = word<'length'>('gapUnderBarrier', {
  kind: 'length',
  label: 'gap under the fence',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'At the worst place, between ground and fence.',
  ask: 'How big is the gap under the fence, at the worst place?',
  called: {
    names: [
      'gap under the fence',
      'gap below the fence',
      'gap underneath',
      'under the fence',
      'below the fence',
      'gap at the bottom',
      'bottom gap',
    ],
    sides: ['under', 'underneath', 'below'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const groundUnder = word<'choice'>('groundUnder', {
  kind: 'choice',
  label: 'ground under the fence',
  measure: 'Grass, soil or gravel; or concrete and the like.',
  ask: 'Is the ground under the fence soft (grass, soil, gravel) or solid (concrete, paving)?',
  called: { names: ['ground under the fence'] },
  options: {
    soft: { label: 'soft', called: ['grass', 'soil', 'gravel', 'dirt', 'over grass', 'soft ground'] },
    solid: { label: 'solid', called: ['concrete', 'paving', 'slab', 'patio', 'solid surface'] },
  },
  usual: {
    value: 'soft',
    because: 'most fences stand on grass or soil, and the rule is stricter there',
    from: 'Decided here, to be on the safe side.',
  },
})

export const barrierGap = word<'length'>('barrierGap', {
  kind: 'length',
  label: 'widest gap between pickets',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The widest there is, bowed pickets included.',
  ask: 'How wide is the widest gap between pickets?',
  called: {
    names: ['gap between pickets', 'picket gap', 'gaps of', 'gaps between', 'picket gaps', 'gaps are', 'gaps'],
    things: ['gap', 'gaps'],
    sides: ['wide', 'between'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
})

export const railSide = word<'choice'>('railSide', {
  kind: 'choice',
  label: 'side of the rails',
  measure: 'Rails on the outside are a ladder.',
  ask: 'Are the rails on the pool side, or on the outside?',
  called: { names: ['side of the rails'] },
  options: {
    pool: {
      label: 'pool side',
      called: ['rails on the pool side', 'pool side', 'rails inside', 'rails on the inside'],
    },
    outside: { label: 'outside', called: ['rails on the outside', 'rails outside', 'rails facing out'] },
  },
})

export const latchHeight = word<'length'>('latchHeight', {
  kind: 'length',
  label: 'latch release above ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground to what opens the latch.',
  ask: 'How high above the ground is the latch release?',
  called: {
    names: ['latch height', 'latch release', 'latch is', 'latch at'],
    things: ['latch', 'release'],
    sides: ['high', 'height', 'above', 'at'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '24 in', to: '8 ft' },
})

export const poolHolds = word<'verdict'>('poolHolds', {
  kind: 'verdict',
  label: 'pool fence, by the figures checked',
  measure: 'Against the model code of the US. Your own place’s rule decides.',
  ask: 'Does the pool fence fail the figures?',
  called: {
    names: ['pool fence check'],
    asks: [
      'is my pool fence ok',
      'pool fence',
      'pool barrier',
      'does my pool fence pass',
      'is that ok for a pool',
      'ok around a pool',
      'fence around a pool',
      'legal for a pool',
      'around the pool',
      'for a pool',
      'pool code',
    ],
  },
  says: { yes: 'nothing checked here fails', no: 'fails', unknown: 'cannot say: ask your own building office' },
})
