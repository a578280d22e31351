import { caution } from './caution.ts'

export const openHole = caution({
  code: 'open-hole',
  full: 'Cover or fence every open hole before you leave it, even for lunch. A child or a dog fits in.',
  from: 'common practice, no source',
})
