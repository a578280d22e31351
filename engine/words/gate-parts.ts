// This file is about what a leaf of a gate is made of, and how it stands over its ground and its diagonal.
import { word } from './word.ts'

const ofParts = 'Part by part, in one order: pickets, rails, brace.'

export const gatePartCounts = word<'count'>('gatePartCounts', {
  kind: 'count',
  noun: 'piece',
  list: true,
  whole: true,
  label: 'how many of each part of the gate',
  measure: ofParts,
  ask: 'How many of each part has the gate: pickets, rails, braces?',
  called: { names: ['parts of the gate'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '100' },
})

export const gatePartLengths = word<'length'>('gatePartLengths', {
  kind: 'length',
  list: true,
  label: 'length of each part of the gate',
  units: { imperial: 'in', metric: 'mm' },
  measure: ofParts,
  ask: 'How long is each of those parts?',
  called: { names: ['lengths of the gate parts'] },
  possible: { above: '0 in' },
  plausible: { from: '4 in', to: '12 ft' },
})

export const gatePartWidths = word<'length'>('gatePartWidths', {
  kind: 'length',
  list: true,
  label: 'width of each part of the gate',
  units: { imperial: 'in', metric: 'mm' },
  measure: ofParts,
  ask: 'How wide is each of those parts?',
  called: { names: ['widths of the gate parts'] },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '12 in' },
})

export const gatePartThicknesses = word<'length'>('gatePartThicknesses', {
  kind: 'length',
  list: true,
  label: 'thickness of each part of the gate',
  units: { imperial: 'in', metric: 'mm' },
  measure: ofParts,
  ask: 'How thick is each of those parts?',
  called: { names: ['thicknesses of the gate parts'] },
  ofStick: 'thickness',
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '6 in' },
})

export const leafWood = word<'volume'>('leafWood', {
  kind: 'volume',
  label: 'wood in the leaf',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'All its parts together.',
  ask: 'How much wood is in the gate?',
  called: { names: ['wood in the gate'] },
})

export const leafDiagonal = word<'length'>('leafDiagonal', {
  kind: 'length',
  label: 'leaf from corner to corner',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Outer corner to outer corner. Where both diagonals have it, the leaf is square.',
  ask: 'How long is the leaf from corner to corner?',
  called: { names: ['diagonal of the gate', 'gate diagonal'] },
})

export const clearOver = word<'length'>('clearOver', {
  kind: 'length',
  label: 'gap wanted everywhere under the leaf',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is left over the highest ground that the leaf swings across.',
  ask: 'What gap do you want under the leaf, wherever it stands?',
  called: { names: ['clear everywhere', 'clearance everywhere', 'clear all the way'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const picketsOnLeaf = word<'count'>('picketsOnLeaf', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets on each leaf',
  measure: 'One at each edge of the leaf, and equal gaps between.',
  ask: 'How many pickets on each leaf?',
  called: { names: ['pickets on a leaf'], asks: ['pickets per leaf', 'pickets on the gate', 'pickets on each leaf'] },
})
