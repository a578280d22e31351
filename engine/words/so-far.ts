// This file is about what is already bought and built: a change that touches it is said.
import { word } from './word.ts'

const bought = (name: string, noun: string, things: readonly string[]) =>
  word<'count'>(name, {
    kind: 'count',
    noun,
    label: `${noun}s bought so far`,
    whole: true,
    measure: 'As many as lie in your yard, or are paid for.',
    ask: `How many ${noun}s have you bought?`,
    called: { things },
    unsaid: true,
    possible: { least: '0' },
  })

export const postsBought = bought('postsBought', 'post', ['post'])
export const railsBought = bought('railsBought', 'rail', ['rail'])
export const picketsBought = bought('picketsBought', 'picket', ['picket', 'paling', 'slat'])
export const bagsBought = bought('bagsBought', 'bag', ['bag'])
export const bracketsBought = bought('bracketsBought', 'bracket', ['bracket'])

export const doneSoFar = word<'choice'>('doneSoFar', {
  kind: 'choice',
  label: 'done so far',
  measure: 'The last thing that is finished there.',
  ask: 'What is done so far: holes, posts, rails, pickets?',
  called: {},
  unsaid: true,
  options: {
    holes: { label: 'holes dug', called: ['dug'] },
    posts: { label: 'posts set', called: ['set', 'in the ground', 'concreted'] },
    rails: { label: 'rails hung', called: ['hung', 'up', 'on'] },
    pickets: { label: 'pickets hung', called: ['hung', 'on'] },
  },
})

/** What is bought, beside what the fence takes of it. */
export const boughtOf = [
  { bought: postsBought, needed: 'posts' },
  { bought: railsBought, needed: 'railsInAll' },
  { bought: picketsBought, needed: 'picketsToBuy' },
  { bought: bagsBought, needed: 'bags' },
  { bought: bracketsBought, needed: 'brackets' },
] as const

export const soFarWords = [...boughtOf.map((it) => it.bought), doneSoFar]
