import { caution } from './caution.ts'

export const lifting = caution({
  code: 'lifting',
  full: 'Bags of mix and buckets of stone are heavy: lift with a straight back, close to you, or share the load. A barrow beats a strong back.',
  from: 'NIOSH revised lifting equation',
})
