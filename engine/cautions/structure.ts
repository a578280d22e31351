import { caution } from './caution.ts'

export const structure = caution({
  code: 'structure',
  full: 'A fence can blow over, and one at a drop can let somebody fall. The trade’s rule is a habit, not a design. A picket fence is not a guard: do not count on it above a wall, a bank or a deck. Tall, solid, on a wall, by a drop, in soft ground or with a heavy gate: ask a licensed engineer and your building office first.',
  standing: 'Strength: a rule of the trade is no design, and a picket fence is no guard at a drop.',
  from: 'guards at drops: International Residential Code, R312 (places differ); the rest common practice, no source',
})
