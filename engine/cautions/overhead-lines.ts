import { caution } from './caution.ts'

export const overheadLines = caution({
  code: 'overhead-lines',
  full: 'Look up before you raise a post, a ladder or a metal tape near overhead wires.',
  from: 'common practice, no source',
})
