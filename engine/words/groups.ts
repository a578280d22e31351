// This file is about things that are counted by groups: so many to each section, bay or panel.
import { word } from './word.ts'

export const groups = word<'count'>('groups', {
  kind: 'count',
  noun: 'group',
  label: 'sections, bays or panels',
  whole: true,
  measure: 'Those that have as many of the thing each.',
  ask: 'How many sections, bays or panels are there?',
  called: {},
  possible: { least: '1' },
})

export const piecesEach = word<'count'>('piecesEach', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces to each of them',
  measure: 'In one section, bay or panel.',
  ask: 'How many go to each?',
  called: {},
  possible: { above: '0' },
})

export const piecesInAll = word<'count'>('piecesInAll', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces in all',
  measure: 'So many to each, times how many of them there are.',
  ask: 'How many are there in all?',
  called: {},
})
