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
    names: ['sight triangle of', 'sight triangle is', 'legs of the triangle', 'legs are', 'triangle of', 'legs', 'leg'],
    things: ['triangle', 'sight triangle', 'vision triangle', 'leg', 'legs', 'other leg'],
    sides: ['legs', 'along one street', 'along the other', 'each way', 'each street'],
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
  measure: 'From the street corner to the nearest part of the fence: two figures, one along each street.',
  ask: 'How far from the street corner is the nearest part of the fence, along each street?',
  called: {
    names: [
      'fence corner',
      'fence is',
      'back from the corner',
      'from the corner',
      'fence stands',
      'fence set back',
      'back from the streets',
    ],
    things: ['fence', 'fence corner'],
    sides: [
      'back',
      'from the corner',
      'away',
      'along one street',
      'along the other',
      'along the first',
      'along the second',
    ],
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
  measure:
    'Whether the nearest part of the fence lies inside the triangle, and whether it is lower than your rule allows there.',
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
    yes: 'nothing checked here fails',
    no: 'fails: inside the sight triangle',
    unknown: 'cannot say: a distance or a height is missing, or just at the rule',
  },
})

export const sightHeight = word<'length'>('sightHeight', {
  kind: 'length',
  label: 'height allowed inside the triangle',
  units: { imperial: 'in', metric: 'mm' },
  measure: `Counted from the ground, the curb or the street, as the rule says. ${ruled}`,
  ask: 'How high does your rule let a fence stand inside the triangle?',
  called: {
    names: [
      'rule says no fence over',
      'inside the triangle',
      'in the triangle',
      'no fence over',
      'nothing over',
      'nothing higher than',
      'no fence higher than',
      'allowed in the triangle',
      'allowed inside the triangle',
      'allows inside the triangle',
    ],
    things: ['triangle', 'rule'],
    sides: ['high', 'higher', 'allowed', 'over', 'tall'],
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '6 ft' },
})

export const leavesFirst = word<'length'>('leavesFirst', {
  kind: 'length',
  label: 'along the first street, fence out of the triangle from',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the street corner, along the first street. Nearer than that the fence stands inside.',
  ask: 'Where does the fence along the first street leave the triangle?',
  called: {
    names: ['out of the triangle'],
    asks: [
      'where does the triangle begin and end',
      'where does the triangle end',
      'where does the fence leave the triangle',
      'where does the fence come out of the triangle',
      'where along the fence',
      'how much of the fence is in the triangle',
      'how far along the fence',
    ],
  },
})

export const leavesSecond = word<'length'>('leavesSecond', {
  kind: 'length',
  label: 'along the second street, fence out of the triangle from',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the street corner, along the second street.',
  ask: 'Where does the fence along the second street leave the triangle?',
  called: { names: ['out of the triangle along the second street'] },
})

export const fenceInside = word<'length'>('fenceInside', {
  kind: 'length',
  label: 'fence inside the triangle',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the corner of the fence, along both streets, to where it comes out.',
  ask: 'How much of the fence stands inside the triangle?',
  called: { names: ['fence inside the triangle'], asks: ['how much fence is inside the triangle'] },
})
