import { caution } from './caution.ts'

export const tools = caution({
  code: 'tools',
  full: 'Blades and nails take fingers and eyes. Eye and ear protection, guards on, work clamped, two hands on the saw. Battery, plug or air hose off before you touch blade or nails. Mains tools outdoors: through an RCD or GFCI. Not for children.',
  standing: 'Tools: eye and ear protection, guards on, work clamped.',
  from: 'common practice, no source',
})
