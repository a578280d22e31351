// This file is about holes that are not plain cylinders, and how wide a hole is by the trade’s rule.
import { word } from './word.ts'

export const bellWidth = word<'length'>('bellWidth', {
  kind: 'length',
  label: 'width of the bell at the bottom',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the hole at its very bottom, where it is widest.',
  ask: 'How wide is the bell at the bottom of the hole?',
  called: {
    names: [
      'bell',
      'belled to',
      'bell width',
      'flared to',
      'wider at the bottom',
      'at the bottom',
      'bottom width',
      'widens to',
      'bell of',
    ],
    things: ['bell', 'flare', 'bottom'],
    sides: ['bell', 'belled', 'flared', 'widens'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '8 in', to: '4 ft' },
})

export const bellHeight = word<'length'>('bellHeight', {
  kind: 'length',
  label: 'height of the bell',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the bottom up to where the hole becomes straight.',
  ask: 'How high is the bell, from the bottom up to the straight part?',
  called: {
    names: ['bell height', 'height of the bell', 'bottom', 'lowest', 'last', 'over the bottom'],
    things: ['bell', 'flare'],
    sides: ['high', 'height', 'tall'],
  },
  possible: { above: '0 in' },
  plausible: { from: '3 in', to: '3 ft' },
})

export const bellConcrete = word<'volume'>('bellConcrete', {
  kind: 'volume',
  label: 'concrete in the bell, post not taken out',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The flared part alone.',
  ask: 'How much concrete is in the bell?',
  called: { names: ['concrete in the bell'], asks: ['concrete in the bell'] },
})

export const crownRise = word<'length'>('crownRise', {
  kind: 'length',
  label: 'crown of concrete above the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How high the concrete is sloped up to the post, so that water runs off.',
  ask: 'How high is the crown of concrete round the post?',
  called: {
    names: ['crown', 'crowned', 'domed', 'dome', 'sloped top', 'crown of', 'dome of', 'mounded'],
    things: ['crown', 'dome'],
    sides: ['crown', 'crowned', 'dome', 'domed', 'high'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '6 in' },
})

export const crownConcrete = word<'volume'>('crownConcrete', {
  kind: 'volume',
  label: 'concrete in one crown',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'Above the ground, round the post.',
  ask: 'How much concrete is in a crown?',
  called: {
    names: ['concrete in the crown'],
    asks: [
      'concrete in the crown',
      'concrete for the crown',
      'concrete for a dome',
      'how much for the crown',
      'concrete for the dome',
    ],
  },
})

export const postName = word<'length'>('postName', {
  kind: 'length',
  label: 'post’s size by its name',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the yard calls it: a 4x4 is called four inches, and is less.',
  ask: 'What is the post called at the yard, in inches?',
  called: { names: ['nominal', 'by name', 'called'], things: ['nominal post'], sides: ['nominal'] },
  ofStick: 'name',
  possible: { above: '0 in' },
  plausible: { from: '2 in', to: '14 in' },
})

export const holeByRule = word<'length'>('holeByRule', {
  kind: 'length',
  label: 'hole, three times the post’s actual width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A trade rule; the auger you can get decides.',
  ask: 'How wide is the hole by the rule?',
  called: {
    names: ['hole by the rule'],
    asks: [
      'how wide should the hole',
      'how wide should the holes',
      'how wide do i dig',
      'what diameter hole',
      'what size hole',
      'how big should the hole',
      'what size auger',
      'hole diameter for',
      'width of the hole for',
      'how wide a hole',
      'how big a hole',
    ],
  },
})

export const holeByName = word<'length'>('holeByName', {
  kind: 'length',
  label: 'hole, three times the post’s name',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The same rule, if the name is taken for the size.',
  ask: 'How wide is the hole by the post’s name?',
  called: { names: ['hole by the name'], asks: ['hole by the nominal size'] },
})
