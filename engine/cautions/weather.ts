import { caution } from './caution.ts'

export const weather = caution({
  code: 'weather',
  full: 'Read the can: temperature, humidity, dew and rain limits are its maker’s, and they come first.',
  standing: 'Weather: the limits on the can come first.',
  from: 'common practice, no source',
})
