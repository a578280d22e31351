import { caution } from './caution.ts'

export const tools = caution({
  code: 'tools',
  full: 'Eye and ear protection, guards on, both hands away from the blade, and the work clamped.',
  from: 'common practice, no source',
})
