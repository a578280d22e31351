import { caution } from './caution.ts'

export const utilities = caution({
  code: 'utilities',
  full: 'Before any hole, post, stake or edging trench: have the buried lines located, and wait for the answer. In the US call 811, it is free; elsewhere use your country’s or province’s dig service. Private lines (sprinklers, lighting, gas to a grill) are not marked for you. Dig by hand near marks. If you smell gas, leave and call.',
  standing: 'Buried lines: have them located and marked before you dig.',
  from: 'US one-call practice, https://digline.com/utility-color-codes; rules differ by place',
})
