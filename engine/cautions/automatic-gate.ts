import { caution } from './caution.ts'

export const automaticGate = caution({
  code: 'automatic-gate',
  full: 'A gate worked by a motor can crush. Once an operator is added, standards of its own apply (in the US, ASTM F2200 and UL 325): have it fitted by a qualified installer, with its sensors.',
  from: 'ASTM F2200, scope: gates for vehicular traffic that are to be automated',
})
