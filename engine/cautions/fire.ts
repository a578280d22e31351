import { caution } from './caution.ts'

export const fire = caution({
  code: 'fire',
  full: 'Oily rags can catch fire by themselves. Lay them flat outdoors to dry, or keep them under water in a closed metal can.',
  from: 'common practice, no source',
})
