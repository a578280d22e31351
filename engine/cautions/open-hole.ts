import { caution } from './caution.ts'

export const openHole = caution({
  code: 'open-hole',
  full: 'Cover every open hole before you leave it, even for lunch, with a board a child cannot shift, fixed or weighted. A child or a dog fits in. Never climb into a deep one: sides fall without warning. Chest deep or more is work for a professional.',
  standing: 'Open holes: cover each one before you leave it, with a board a child cannot shift.',
  from: 'common practice, no source',
})
