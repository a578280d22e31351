import { caution } from './caution.ts'

export const pool = caution({
  code: 'pool',
  full: 'A fence around a pool, pond or hot tub is a life-saving barrier with a law of its own: height, gaps, things to climb, and a gate that closes and latches by itself. A child can drown in the time it takes to fetch a towel. Ask your building office, and never prop the gate.',
  from: 'common practice; the rules are those of your place',
})
