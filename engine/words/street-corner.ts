// This file is about corners that drivers must see round.
import { word } from './word.ts'

const ruled = 'The rule is your place’s own: ask for it.'

export const sightLegs = word<'length'>('sightLegs', {
  kind: 'length',
  list: true,
  label: 'legs of the sight triangle along the two streets',
  units: { imperial: 'ft', metric: 'm' },
  measure: `From the corner along each street; one figure if both are alike. ${ruled}`,
  ask: 'How long are the legs of the sight triangle along the two streets?',
  called: {
    names: ['sight triangle', 'legs of the triangle', 'legs are', 'triangle of', 'vision triangle', 'legs'],
    things: ['triangle', 'leg', 'legs'],
    sides: ['legs', 'along', 'each way', 'each street'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '5 ft', to: '200 ft' },
})

export const fenceAlong = word<'length'>('fenceAlong', {
  kind: 'length',
  list: true,
  label: 'fence corner, back from the street corner along each street',
  units: { imperial: 'ft', metric: 'm' },
  measure:
    'From the street corner to the nearest part of the fence, measured along the one street and along the other.',
  ask: 'How far from the street corner is the nearest part of the fence, along each street?',
  called: {
    names: ['fence corner', 'fence is', 'back from the corner', 'from the corner', 'fence stands'],
    things: ['fence', 'fence corner'],
    sides: ['back', 'from the corner', 'away'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 ft', to: '300 ft' },
})

export const sightArea = word<'area'>('sightArea', {
  kind: 'area',
  label: 'area of the sight triangle',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'Half of leg times leg, at a square corner.',
  ask: 'How big is the sight triangle?',
  called: {
    names: ['area of the sight triangle'],
    asks: [
      'how big is the sight triangle',
      'area of the sight triangle',
      'sight triangle',
      'vision triangle',
      'clear corner',
    ],
  },
})

export const sightSide = word<'length'>('sightSide', {
  kind: 'length',
  label: 'long side of the sight triangle',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Straight across, from the end of one leg to the end of the other: the fence may not reach over it.',
  ask: 'How long is the long side?',
  called: {
    names: ['long side of the sight triangle'],
    asks: ['long side of the sight triangle', 'across the sight triangle'],
  },
})

export const outsideSight = word<'verdict'>('outsideSight', {
  kind: 'verdict',
  label: 'fence and sight triangle',
  measure: 'Whether the nearest part of the fence lies inside the triangle.',
  ask: 'Is the fence inside the sight triangle?',
  called: {
    names: ['inside the sight triangle'],
    asks: [
      'is my fence in the sight triangle',
      'is the fence inside',
      'inside the sight triangle',
      'in the sight triangle',
      'clear the sight triangle',
      'block the view',
    ],
  },
  says: {
    yes: 'nothing checked here fails: that place lies outside the triangle',
    no: 'fails: that place lies inside the sight triangle',
    unknown: 'cannot say whether the fence lies inside',
  },
})
