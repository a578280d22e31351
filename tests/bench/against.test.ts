// One run of the bench beside another: what moved is named, what is within the noise is not, and a share counts as it is.
import { expect, it } from 'vitest'
import { againstInWords } from './against.ts'

it('names what takes more of its reference, the shares that changed, what is new and what is gone', () => {
  const before = [
    { what: 'one calculation', ratio: 2 },
    { what: 'a start', ratio: 3 },
    { what: 'read right', ratio: 0.95, isShare: true as const },
    { what: 'refused', ratio: 1, isShare: true as const },
    { what: 'left out since', ratio: 1 },
  ]
  const now = [
    // Half as much again is more than a quarter; a tenth is noise.
    { what: 'one calculation', ratio: 3 },
    { what: 'a start', ratio: 3.3 },
    { what: 'read right', ratio: 0.94, isShare: true as const },
    { what: 'refused', ratio: 1, isShare: true as const },
    { what: 'measured since', ratio: 1 },
  ]
  expect(againstInWords({ ratios: before }, { ratios: now }).split('\n')).toEqual([
    'beside the run that was kept: 4 ratios in both, 1 moved by more than 25 %, 1 shares changed',
    '  1.50 times as much: one calculation, 2.00 → 3.00',
    '  read right: 95.0 % → 94.0 %',
    '  new: measured since',
    '  gone: left out since',
  ])
})
