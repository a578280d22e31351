import { caution } from './caution.ts'

export const pool = caution({
  code: 'pool',
  full: 'Only if it closes off water: a child can drown in the time it takes to fetch a towel. Many places set height, gaps, nothing to climb, and a gate that closes and latches by itself: ask your building office or council. Never prop the gate. While the fence is down or open, put up a temporary barrier or have an adult watch the water all the time.',
  standing: 'Water: never prop a gate that keeps a child from it, and guard the water while the fence is open.',
  from: 'common practice, no source; the rules are those of your place',
})
