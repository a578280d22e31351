// This file is about what hauling with one’s own vehicle costs, against a delivery.
import { word } from './word.ts'

export const tripCost = word<'money'>('tripCost', {
  kind: 'money',
  label: 'what one trip costs you',
  measure: 'Fuel and tolls, there and back; wear too, if you count it.',
  ask: 'What does one trip with your own vehicle cost you, there and back?',
  called: {
    names: [
      'fuel',
      'gas',
      'petrol',
      'diesel',
      'each trip costs',
      'a trip costs',
      'per trip',
      'a trip',
      'each trip',
      'costs me',
      'one trip',
    ],
    things: ['trip', 'fuel', 'petrol'],
    plainly: true,
  },
  possible: { least: '$0' },
})

export const tripTime = word<'duration'>('tripTime', {
  kind: 'duration',
  label: 'time for one trip',
  units: { imperial: 'h', metric: 'h' },
  measure: 'There, loading, back and unloading.',
  ask: 'How long does one trip take, loading and unloading counted in?',
  called: {
    names: ['trip takes', 'each trip takes', 'a trip takes', 'round trip', 'there and back', 'each run takes'],
    things: ['trip', 'run', 'drive'],
    plainly: true,
  },
  possible: { above: '0 h' },
  plausible: { from: '5 minutes', to: '12 h' },
})

export const ownHaulCost = word<'money'>('ownHaulCost', {
  kind: 'money',
  label: 'hauling it yourself',
  measure: 'Every trip, and your hours if you say what they are worth.',
  ask: 'What does hauling it yourself cost?',
  called: {
    names: ['cost of hauling it myself'],
    asks: ['what does hauling cost', 'what does it cost to haul it myself'],
  },
})

export const ownHaulTime = word<'duration'>('ownHaulTime', {
  kind: 'duration',
  label: 'your hours on the road',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Every trip.',
  ask: 'How long does hauling it yourself take?',
  called: { names: ['hours on the road'], asks: ['how long will the hauling take', 'how long does hauling take'] },
})

export const haulSaves = word<'money'>('haulSaves', {
  kind: 'money',
  label: 'between the two',
  measure: 'The dearer less the cheaper.',
  ask: 'How much is between the two?',
  called: { names: ['saved by hauling'], asks: ['how much do i save by hauling', 'what do i save by hauling'] },
})

export const cheaperHaul = word<'choice'>('cheaperHaul', {
  kind: 'choice',
  label: 'cheaper',
  measure: 'The delivery against all the trips.',
  ask: 'Which is cheaper, the delivery or your own vehicle?',
  called: {
    names: ['delivery or own vehicle'],
    asks: [
      'delivery or my own truck',
      'delivery or haul it myself',
      'have it delivered or haul',
      'worth having it delivered',
      'worth the delivery',
      'is delivery worth it',
      'is the delivery worth it',
      'delivered or pick it up',
      'cheaper to haul it myself',
      'cheaper to fetch it myself',
      'cheaper to have it delivered',
      'pay for delivery or',
      'delivery cheaper',
      'delivered cheaper',
    ],
  },
  options: {
    'your own vehicle': { label: 'your own vehicle', called: [] },
    'the delivery': { label: 'the delivery', called: [] },
    'both alike': { label: 'both alike', called: [] },
  },
})
