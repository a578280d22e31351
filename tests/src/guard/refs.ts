// This file is about the slots that the guard's tests write around.
import type { Refs } from '../../../src/guard/refs.ts'

export const refs: Refs = {
  'r1.bags': {
    value: 23,
    unit: 'bag',
    kind: 'rounded-up',
    noun: ['bag', 'bags'],
    label: 'bags, bought together',
    text: '23 bags',
  },
  'r1.posts': { value: 11, unit: 'post', kind: 'exact', noun: ['post', 'posts'], label: 'posts', text: '11 posts' },
  'r1.pickets': {
    value: 12,
    unit: 'picket',
    kind: 'exact',
    noun: ['picket', 'pickets'],
    label: 'pickets',
    text: '12 pickets',
  },
  'r1.tapeGap': { value: 2.1875, unit: 'in', kind: 'exact', label: 'gap by the tape', text: '2 3/16 in' },
  'r1.holeDepth': { value: 30, unit: 'in', kind: 'at-least', label: 'hole depth', text: '30 in' },
  'r1.concrete': { value: 10.13, unit: 'ft3', kind: 'about', label: 'concrete in all', text: '10.13 ft³' },
  'r2.dryEnough': { value: false, unit: 'verdict', kind: 'exact', label: 'dry enough', text: 'not dry enough' },
  'r0.bags': {
    value: 20,
    unit: 'bag',
    kind: 'rounded-up',
    noun: ['bag', 'bags'],
    label: 'bags',
    text: '20 bags',
    state: 'superseded',
  },
  u1: { value: 70.625, unit: 'in', kind: 'said', label: 'opening', text: '70 5/8 in', said: '70 5/8 in' },
}
