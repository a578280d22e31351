import { caution } from './caution.ts'

export const wetCement = caution({
  code: 'wet-cement',
  full: 'Wet concrete burns skin and eyes, slowly and without early pain. Wear waterproof gloves, boots and glasses; do not kneel in it; rinse it off at once with plenty of water.',
  from: 'http://precast.org/2010/05/cement-burns/',
})
