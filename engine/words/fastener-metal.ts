// This file is about what screws, nails and brackets are made of, for the wood that they hold.
import { word } from './word.ts'

export const saltAir = word<'choice'>('saltAir', {
  kind: 'choice',
  label: 'how near the sea',
  measure: 'Within about 5 miles (8 km) of salt water, or further.',
  ask: 'Is it within about 5 miles (8 km) of salt water?',
  called: { names: ['salt air'] },
  options: {
    near: {
      label: 'near salt water',
      called: [
        'near the sea',
        'by the sea',
        'near the coast',
        'on the coast',
        'coastal',
        'salt air',
        'salt spray',
        'near the ocean',
        'by the ocean',
        'near salt water',
        'seaside',
        'near the beach',
        'by the beach',
      ],
    },
    far: {
      label: 'far from salt water',
      called: [
        'inland',
        'far from the sea',
        'not near the sea',
        'nowhere near the sea',
        'miles from the sea',
        'away from the coast',
      ],
    },
  },
  usual: { value: 'far', because: 'you did not speak of the sea', from: 'Decided here; say so if salt water is near.' },
})

export const metalInHand = word<'choice'>('metalInHand', {
  kind: 'choice',
  label: 'metal in hand',
  measure: 'On the box. Bright shiny zinc is electroplated, dull grey and rough is hot-dip.',
  ask: 'Which screws or nails have you: hot-dip galvanised, stainless, electroplated, plain steel, aluminium or copper?',
  called: { names: ['metal in hand'] },
  options: {
    plain: {
      label: 'plain steel',
      called: [
        'plain steel',
        'bright nails',
        'bright steel',
        'uncoated',
        'black screws',
        'drywall screws',
        'common nails',
      ],
    },
    electroplated: {
      label: 'electroplated zinc',
      called: [
        'electroplated',
        'electro-galvanized',
        'electrogalvanized',
        'electro galvanized',
        'electro galvanised',
        'zinc plated',
        'zinc-plated',
        'bright zinc',
        'bzp',
        'yellow zinc',
      ],
    },
    hotDip: {
      label: 'hot-dip galvanised',
      called: [
        'hot dip',
        'hot-dip',
        'hot dipped',
        'hot-dipped',
        'hot dip galvanized',
        'hot-dip galvanized',
        'hot dip galvanised',
        'hot-dipped galvanized',
        'hdg',
      ],
    },
    stainless: { label: 'stainless', called: ['stainless', 'stainless steel'] },
    aluminium: { label: 'aluminium', called: ['aluminium', 'aluminum'] },
    copper: { label: 'copper', called: ['copper nails', 'copper screws', 'brass', 'bronze'] },
  },
})

export const fastenerMetal = word<'choice'>('fastenerMetal', {
  kind: 'choice',
  label: 'metal for screws, nails and brackets',
  measure: 'The same family for screws and brackets.',
  ask: 'Which metal should the screws be?',
  called: {
    names: ['fastener metal', 'screw metal'],
    asks: [
      'metal for screws',
      'what kind of screws',
      'which screws',
      'which nails',
      'what screws',
      'what nails',
      'what kind of nails',
      'what type of screws',
      'what type of nails',
      'what metal',
      'which metal',
      'what fasteners',
      'which fasteners',
      'what kind of fasteners',
      'stainless or galvanized',
      'stainless or galvanised',
      'galvanized or stainless',
      'galvanised or stainless',
      'do i need stainless',
    ],
  },
  options: {
    'hot-dip galvanised': { label: 'hot-dip galvanised', called: [] },
    stainless: { label: 'stainless', called: [] },
  },
})

export const metalHolds = word<'verdict'>('metalHolds', {
  kind: 'verdict',
  label: 'metal suits the wood',
  measure: 'The metal in hand against the wood, its treatment, its finish and salt air.',
  ask: 'Does the metal suit the wood?',
  called: {
    names: ['metal suits'],
    asks: [
      'do screws suit',
      'do nails suit',
      'do electroplated screws suit',
      'do the screws suit',
      'do these screws suit',
      'do galvanized screws suit',
      'do galvanised screws suit',
      'do stainless screws suit',
      'will they stain',
      'will they rust',
      'will it rust',
      'screws ok',
      'nails ok',
      'screws all right',
      'nails all right',
    ],
  },
  says: { yes: 'the metal suits', no: 'the metal does not suit', unknown: 'cannot say whether the metal suits' },
})
