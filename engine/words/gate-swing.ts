// This file is about how a leaf swings, and what a leaning post does to it.
import { word } from './word.ts'

export const swingRise = word<'length'>('swingRise', {
  kind: 'length',
  label: 'rise of the ground over the swing',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much higher the ground is under the latch end when the gate stands open.',
  ask: 'How much does the ground rise over the swing?',
  called: {
    names: ['rise over the swing', 'gap under the gate'],
    asks: [
      'will the gate clear',
      'will it drag',
      'will the gate drag',
      'how much gap under the gate',
      'gap under the gate',
      'clear the ground',
      'how much does the ground rise',
      'scrape',
      'hit the ground',
      'swing uphill',
      'swing up the slope',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '18 in' },
})

export const gateGapBelow = word<'length'>('gateGapBelow', {
  kind: 'length',
  label: 'gap under the shut gate',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground to the bottom of the leaf, with the gate shut.',
  ask: 'How high is the bottom of the shut gate above the ground?',
  called: {
    names: [
      'gap under the gate',
      'under the gate',
      'off the ground',
      'ground clearance',
      'bottom gap',
      'gap below the gate',
      'above the ground',
    ],
    things: ['gate'],
    sides: ['off the ground', 'clearance', 'under'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const gateClears = word<'verdict'>('gateClears', {
  kind: 'verdict',
  label: 'gate over the ground',
  measure: 'Whether the leaf swings open without touching the ground.',
  ask: 'Does the gate clear the ground?',
  called: { names: ['gate clears'] },
  says: {
    yes: 'the leaf clears the ground',
    no: 'the leaf drags on the ground',
    unknown: 'cannot say whether the leaf clears',
  },
})

export const edgeRoom = word<'length'>('edgeRoom', {
  kind: 'length',
  label: 'room for the square edge as it turns',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much further the leaf reaches while it turns than when it is shut, since its edge has a thickness.',
  ask: 'How much room does the edge need as it turns?',
  called: {
    names: ['swing clearance'],
    asks: ['swing clearance', 'how much room to swing', 'clear the latch post', 'corner clearance'],
  },
})

export const leafThickness = word<'length'>('leafThickness', {
  kind: 'length',
  label: 'leaf thickness',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The latch edge of the leaf, front to back.',
  ask: 'How thick is the leaf at its latch edge?',
  called: {
    names: ['leaf thickness', 'gate thickness', 'thickness of the gate'],
    things: ['gate', 'leaf'],
    sides: ['thick', 'thickness'],
  },
  ofStick: 'thickness',
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '6 in' },
  usual: {
    value: '1 1/2 in',
    metric: '45 mm',
    because: 'a frame of 2x4 is 1 1/2 in thick',
    from: 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source',
  },
})

export const outOfPlumb = word<'length'>('outOfPlumb', {
  kind: 'length',
  label: 'post out of plumb',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Hold a level upright against the post: how far it stands off at the end of the level.',
  ask: 'How far is the post out of plumb?',
  called: {
    names: ['out of plumb', 'off plumb', 'out of true', 'plumb', 'leans', 'leaning'],
    things: ['post', 'hinge post', 'gate post'],
    sides: ['lean', 'leans', 'leaning', 'plumb', 'out'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const plumbOver = word<'length'>('plumbOver', {
  kind: 'length',
  label: 'height over which it was measured',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The length of the level, or the height at which the string was held off.',
  ask: 'Over what height is it out of plumb?',
  called: {
    names: ['over a height of', 'in a height of', 'length of the level'],
    sides: ['over'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '10 ft' },
})

export const leanAngle = word<'angle'>('leanAngle', {
  kind: 'angle',
  label: 'lean',
  measure: 'How far the post stands from upright.',
  ask: 'At what angle does the post lean?',
  called: {
    names: ['angle of the lean', 'lean angle'],
    asks: ['what angle does it lean', 'lean angle', 'how many degrees'],
  },
})

export const latchMove = word<'length'>('latchMove', {
  kind: 'length',
  label: 'latch end, up or down',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the latch end of the leaf falls (or rises) when its post leans.',
  ask: 'How far does the latch end move when the post leans?',
  called: {
    names: ['drop from the lean'],
    asks: [
      'how much does the latch',
      'how far does the latch',
      'how far does the latch end',
      'how far does the gate drop',
      'how much will the gate drop',
      'how far will the latch',
      'latch end drop',
      'latch end move',
      'post leaning how much',
    ],
  },
})
