import { caution } from './caution.ts'

export const preservedWood = caution({
  code: 'preserved-wood',
  full: 'Treated wood is never burned, not even offcuts: the smoke and ash are poisonous. Mask and glasses when you saw it, wash before you eat, and put offcuts in the trash as your place allows.',
  from: 'https://twwdisposal.org/tww-basics/handling/',
})
