import { caution } from './caution.ts'

export const localCode = caution({
  code: 'local-code',
  full: 'Ask your building office or council before you buy: permit, height, setback, corner sight lines, frost depth, pool rules, and any association’s rules. Local rules come before anything said here.',
  standing: 'Local code: your building office’s rules come before anything here.',
  from: 'common practice, no source',
})
