// This file is about how strongly wood has to be treated for the place where it stands.
import { word } from './word.ts'

export const fenceMember = word<'choice'>('fenceMember', {
  kind: 'choice',
  label: 'part of the fence',
  measure: 'Post, rail, picket, gate, cap, or the board along the ground.',
  ask: 'Which part of the fence is it: post, rail, picket, gate, post cap, or a board along the ground?',
  called: { names: ['part of the fence'] },
  options: {
    post: { label: 'post', called: ['post', 'posts', 'gate post', 'corner post', 'upright'] },
    rail: { label: 'rail', called: ['rail', 'rails', 'stringer', 'arris rail'] },
    picket: { label: 'picket', called: ['picket', 'pickets', 'pale', 'paling', 'palings', 'slat'] },
    gate: { label: 'gate', called: ['gate', 'gate frame', 'gate leaf'] },
    cap: { label: 'post cap', called: ['post cap', 'post caps', 'cap', 'caps'] },
    groundBoard: {
      label: 'board along the ground',
      called: [
        'gravel board',
        'kickboard',
        'kick board',
        'rot board',
        'plinth',
        'plinth board',
        'bottom board',
        'board along the ground',
      ],
    },
  },
})

export const memberStands = word<'choice'>('memberStands', {
  kind: 'choice',
  label: 'where that part stands',
  measure: 'In the ground; within 6 in (150 mm) of it or where it stays damp; or clear of it.',
  ask: 'Does it stand in the ground, close to it (within 6 in or 150 mm), or clear of it?',
  called: { names: ['where it stands'] },
  options: {
    ground: {
      label: 'in the ground',
      called: [
        'in the ground',
        'in ground',
        'into the ground',
        'ground contact',
        'touches the ground',
        'touching the ground',
      ],
    },
    close: {
      label: 'close to the ground',
      called: ['close to the ground', 'near the ground', 'close to the soil', 'near the soil'],
    },
    clear: {
      label: 'clear of the ground',
      called: ['clear of the ground', 'above the ground', 'above ground', 'off the ground'],
    },
  },
})

export const decayRisk = word<'choice'>('decayRisk', {
  kind: 'choice',
  label: 'how hard the place is on wood',
  measure: 'Severe: always wet soil, salt spray, the tropics, or a post that is very hard to replace.',
  ask: 'Is the place hard on wood: always wet, in the tropics, or very hard to replace?',
  called: { names: ['decay risk'] },
  options: {
    usual: { label: 'as usual', called: ['usual ground', 'ordinary ground'] },
    severe: {
      label: 'severe',
      called: ['severe', 'always wet', 'swampy', 'boggy', 'tropics', 'tropical', 'hard to replace', 'critical'],
    },
  },
  usual: {
    value: 'usual',
    because: 'you did not speak of wet or tropical ground',
    from: 'Decided here; say so if the ground is always wet, or the post is very hard to replace.',
  },
})

export const useClass = word<'choice'>('useClass', {
  kind: 'choice',
  label: 'class of treatment',
  measure: 'Look for it on the tag of each stick.',
  ask: 'Which class of treatment is it?',
  called: {
    names: ['use class', 'hazard class', 'treatment class'],
    asks: [
      'use class',
      'hazard class',
      'treatment class',
      'which treatment',
      'what treatment',
      'what class of treatment',
      'what level of treatment',
      'how strongly treated',
      'ground contact rating',
      'what rating',
      'what h class',
      'what should the tag say',
      'what tag',
    ],
  },
  options: Object.fromEntries(
    ['UC3B', 'UC4A', 'UC4B', 'UC3.2', 'UC4.1', 'UC4.2', 'use class 3', 'use class 4', 'H3', 'H3.2', 'H4', 'H5'].map(
      (it) => [it, { label: it, called: [] }],
    ),
  ),
})
