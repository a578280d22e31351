// This file is about the air that wood lies in, and the moisture it settles at there.
import { word } from './word.ts'

export const airTemperature = word<'temperature'>('airTemperature', {
  kind: 'temperature',
  label: 'air temperature',
  units: { imperial: 'F', metric: 'C' },
  measure: 'The average over the weeks the wood has stood there, in the shade.',
  ask: 'What is the usual air temperature there, over the last weeks?',
  called: {
    names: ['temperature', 'air temperature', 'degrees', 'outside temperature', 'temp'],
    things: ['air', 'weather', 'outside'],
    sides: ['temperature', 'warm', 'temp'],
    plainly: true,
    byDefault: true,
  },
  plausible: { from: '30 F', to: '130 F' },
})

export const humidity = word<'percent'>('humidity', {
  kind: 'percent',
  label: 'relative humidity',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'The average over the weeks the wood has stood there.',
  ask: 'What is the usual relative humidity there?',
  called: {
    names: ['humidity', 'relative humidity', 'rh', 'humid'],
    things: ['air', 'weather', 'humidity'],
    sides: ['humidity', 'rh', 'humid', 'damp'],
    plainly: true,
  },
  possible: { least: '0 %', most: '100 %' },
  plausible: { from: '5 %', to: '95 %' },
})

export const equilibriumMoisture = word<'percent'>('equilibriumMoisture', {
  kind: 'percent',
  label: 'moisture the wood settles at',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Where wood left in this air ends up, wet or dry to begin with.',
  ask: 'At what moisture does the wood settle? Or give the usual air temperature and humidity there.',
  called: {
    names: [
      'equilibrium moisture',
      'emc',
      'equilibrium',
      'settle at',
      'settles at',
      'moisture content will',
      'equilibrium moisture content',
      'dries to',
      'dry to',
      'will dry to',
      'down to',
      'end up at',
      'when dry',
      'in summer',
    ],
    things: ['moisture', 'wood'],
    sides: ['later', 'dries', 'settle', 'settles'],
    plainly: true,
    asks: [
      'where will the wood settle',
      'wood settle',
      'what moisture will',
      'how dry can',
      'how dry will',
      'settle at',
      'emc',
      'equilibrium',
      'end up at',
      'as dry as it gets',
      'how dry does',
    ],
  },
  possible: { least: '0 %', most: '200 %' },
  // Between desert air and air full of water.
  plausible: { from: '2 %', to: '30 %' },
})

export const wantedMoisture = word<'percent'>('wantedMoisture', {
  kind: 'percent',
  label: 'moisture wanted in the wood',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'What the wood is to settle at: the limit on the can, or what it will have in use.',
  ask: 'At what moisture do you want the wood to settle?',
  called: {
    names: [
      'wood at',
      'wood to be at',
      'get wood to',
      'get the wood to',
      'bring wood to',
      'dry wood to',
      'dries wood to',
      'dry the wood to',
      'wood down to',
      'moisture wanted',
      'wanted moisture',
    ],
    things: ['wood', 'moisture', 'board'],
    sides: ['settle', 'wanted', 'dry'],
    plainly: true,
  },
  possible: { above: '0 %', most: '100 %' },
  plausible: { from: '4 %', to: '24 %' },
})

export const humidityNeeded = word<'percent'>('humidityNeeded', {
  kind: 'percent',
  label: 'humidity that gives it',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'In air drier than that the wood settles drier.',
  ask: 'What humidity does it take?',
  called: {
    asks: [
      'what humidity',
      'how humid must the air be',
      'how humid should the air be',
      'how humid may the air be',
      'how humid does the air',
      'what rh',
      'what relative humidity',
      'which humidity',
      'how dry must the air be',
      'how dry does the air have to be',
      'humidity do i need',
      'humidity needed',
    ],
  },
})
