import { caution } from './caution.ts'

export const overheadLines = caution({
  code: 'overhead-lines',
  full: 'Overhead wires can kill without being touched. Keep yourself, posts, ladders and tapes 10 ft (3 m) away, more at high voltage: ask the network. Carry long things level.',
  standing: 'Overhead wires: keep posts, ladders and tapes well away, and carry long things level.',
  from: '3 m: Electrical Safety Office Queensland, electricalsafety.qld.gov.au; 10 ft: we-energies.com; rules differ by place',
})
