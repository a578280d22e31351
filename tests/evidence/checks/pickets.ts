// This file is about the evidence for the calculations in pickets/.
import type { Check } from '../check.ts'

const ours = 'Reference book, spacing (geometry)'

/** Pickets laid one by one: the fewest with which the gap, shared by one more than there are, keeps the limit. */
function fewest(opening: number, width: number, keeps: (gap: number) => boolean): number {
  for (let n = 1; n * width <= opening; n++) if (keeps((opening - n * width) / (n + 1))) return n
  throw new Error('none')
}
/** The gap found by laying: widen it by a little until the last one against the far post is alike. */
function gapByHalving(opening: number, width: number, count: number): number {
  let low = 0
  let high = opening
  for (let i = 0; i < 80; i++) {
    const gap = (low + high) / 2
    let at = gap
    for (let k = 0; k < count; k++) at += width + gap
    if (at > opening) high = gap
    else low = gap
  }
  return low
}

export const picketsChecks: readonly Check[] = [
  {
    calculation: 'picket-spacing',
    what: 'the fewest 3 1/2 in pickets in 94 1/2 in with no gap over 2 1/2 in',
    kind: 'second derivation',
    source: 'second derivation: pickets laid one by one until the gap keeps the limit',
    reference: 'n-from-target',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    gives: 'pickets',
    unit: 'picket',
    expected: () => fewest(94.5, 3.5, (gap) => gap <= 2.5),
    tolerance: 0,
  },
  {
    calculation: 'picket-spacing',
    what: 'their gap',
    kind: 'reference',
    source: ours,
    reference: 'gap-16',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    gives: 'gap',
    unit: 'in',
    expected: 2.2647059,
    tolerance: 5e-8,
  },
  {
    calculation: 'picket-spacing',
    what: 'a 4 in ball must not pass between 1 1/2 in pickets in 70 in',
    kind: 'second derivation',
    source:
      'second derivation: pickets laid one by one until every gap is less than the ball; rule text: https://codelibrary.amlegal.com/codes/camdencounty/latest/camdencounty_nc/0-0-0-3017',
    reference: 'sphere-4in',
    given: { opening: '70 in', picketWidth: '1 1/2 in', sphere: '4 in' },
    gives: 'pickets',
    unit: 'picket',
    expected: () => fewest(70, 1.5, (gap) => gap < 4),
    tolerance: 0,
  },
  {
    calculation: 'picket-spacing',
    what: '2400 mm with 70 mm pickets and no gap over 30 mm',
    kind: 'reference',
    source: ours,
    reference: 'gap-metric',
    given: { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm' },
    system: 'metric',
    gives: 'gap',
    unit: 'mm',
    expected: 28.8,
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-for-pickets',
    what: '15 pickets of 3 1/2 in in 94 1/2 in',
    kind: 'reference',
    source: ours,
    reference: 'gap-15',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15' },
    gives: 'gap',
    unit: 'in',
    expected: 2.625,
    tolerance: 0,
  },
  {
    calculation: 'gap-for-pickets',
    what: '15 pickets of 3 1/2 in in 94 1/2 in, laid by hand',
    kind: 'second derivation',
    source: 'second derivation: the gap halved until the pickets laid with it end at the far post',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15' },
    gives: 'gap',
    unit: 'in',
    expected: () => gapByHalving(94.5, 3.5, 15),
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-for-pickets',
    what: 'what is left at the far post when the rounded gap of 16 is stepped along',
    kind: 'reference',
    source: ours,
    reference: 'round-16ths',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '16' },
    gives: 'lastGap',
    unit: 'in',
    expected: 2.5,
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-for-pickets',
    what: 'what is left in millimetres, 23 pickets in 2385 mm',
    kind: 'reference',
    source: ours,
    reference: 'round-mm',
    given: { opening: '2385 mm', picketWidth: '70 mm', pickets: '23' },
    system: 'metric',
    gives: 'lastGap',
    unit: 'mm',
    expected: 39,
    tolerance: 1e-9,
  },
]
