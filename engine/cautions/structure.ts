import { caution } from './caution.ts'

export const structure = caution({
  code: 'structure',
  full: 'The trade’s rule is a habit, not a design. Wind, soft ground, tall or solid fences and heavy gates need more; where it matters, ask a licensed engineer or your building office.',
  from: 'common practice, no source',
})
