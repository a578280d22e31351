import { caution } from './caution.ts'

export const fire = caution({
  code: 'fire',
  full: 'Oily rags can catch fire by themselves, hours later. Spread each flat outdoors, away from buildings, until stiff, or put them in a metal can full of water, lid tight. Ask your waste office where they go. Smoking or burning: keep back and ring the fire brigade; a hose only from a distance.',
  standing: 'Oily rags: flat outdoors or under water in a closed metal can, never in a heap.',
  from: 'National Fire Protection Association, as cited at greatamericaninsurancegroup.com; the last sentence is common practice, no source',
})
