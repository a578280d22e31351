// This file is about single places on a curved top: over the posts, in the middle, and one in between.
import { word } from './word.ts'

const foot = 'From the pickets’ feet up to the curve.'

export const heightAtPosts = word<'length'>('heightAtPosts', {
  kind: 'length',
  label: 'height of the curve at the posts',
  units: { imperial: 'in', metric: 'mm' },
  measure: foot,
  ask: 'How tall are the pickets at the posts?',
  called: { names: ['tall at the posts', 'high at the posts'] },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '10 ft' },
})

export const heightInMiddle = word<'length'>('heightInMiddle', {
  replaces: ['archRise'],
  kind: 'length',
  label: 'height of the curve in the middle',
  units: { imperial: 'in', metric: 'mm' },
  measure: foot,
  ask: 'How tall are the pickets in the middle?',
  called: { names: ['tall in the middle', 'high in the middle of the bay'] },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '10 ft' },
})

export const placeFromPost = word<'length'>('placeFromPost', {
  replaces: ['placeFromMiddle'],
  kind: 'length',
  label: 'place, measured from the post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the face of the post along the bay.',
  ask: 'How far from the post does the picket stand?',
  called: { names: ['stands from the post'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 ft' },
})

export const placeFromMiddle = word<'length'>('placeFromMiddle', {
  replaces: ['placeFromPost'],
  kind: 'length',
  label: 'place, measured from the middle of the bay',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the middle of the bay, either way.',
  ask: 'How far from the middle does the picket stand?',
  called: { names: ['stands from the middle'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 ft' },
})

export const heightAtPlace = word<'length'>('heightAtPlace', {
  kind: 'length',
  label: 'height of the curve at that place',
  units: { imperial: 'in', metric: 'mm' },
  measure: foot,
  ask: 'How tall is the picket at that place?',
  called: { names: ['height at that place'] },
})

export const curveOffEnds = word<'length'>('curveOffEnds', {
  kind: 'length',
  label: 'curve from the height of its ends, at that place',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Up from the ends of an arch, or down from those of a dip.',
  ask: 'How far is the curve from the height of its ends there?',
  called: { names: ['below the ends', 'above the ends'] },
})
