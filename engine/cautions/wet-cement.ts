import { caution } from './caution.ts'

export const wetCement = caution({
  code: 'wet-cement',
  full: 'Wet concrete burns skin and eyes, slowly and without early pain. Waterproof gloves, boots and glasses; never kneel in it. On skin: take off what is soaked and rinse 20 minutes with plenty of running water. Red, sore or blistered: a doctor the same day. In an eye: rinse at least 15 minutes, lid held open, then to hospital, rinsing on the way.',
  standing: 'Wet concrete: gloves, boots and glasses, and rinse it off at once.',
  from: 'http://precast.org/2010/05/cement-burns/; 20 minutes: burnscentre.org; eye: Bispebjerg Hospital, bispebjerghospital.dk; the rest common practice, no source',
})
