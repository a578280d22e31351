import { caution } from './caution.ts'

export const dust = caution({
  code: 'dust',
  full: 'Dry mix and sawn wood make dust that harms lungs. Wear a good mask when you pour dry mix, cut or sand, and work with the wind at your back.',
  from: 'OSHA silica rule for construction, 29 CFR 1926.1153',
})
