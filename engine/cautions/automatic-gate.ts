import { caution } from './caution.ts'

export const automaticGate = caution({
  code: 'automatic-gate',
  full: 'A gate with a motor can crush and kill a child. If it does not stop and turn back when something is in the way: power off, use it by hand, and call a qualified installer. Nobody plays on it. Standards of its own apply: US ASTM F2200 and UL 325, UK and Europe EN 12453.',
  standing: 'Gate with a motor: it can crush, so nobody plays on it, and a qualified installer fits it.',
  from: 'ASTM F2200, scope: gates that are to be automated; EN 12453: croneri.co.uk; what to do is common practice, no source',
})
