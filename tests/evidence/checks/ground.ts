// This file is about the evidence for calculations on the ground: holes, concrete, stone, spoil.
import type { Check } from '../check.ts'

export const groundChecks: readonly Check[] = [
  {
    calculation: 'bag-yield',
    what: 'an 80 lb bag makes 0.60 ft³',
    kind: 'published',
    source:
      'Yields printed on bags of dry concrete mix: 40 lb 0.30, 50 lb 0.375, 60 lb 0.45, 80 lb 0.60, 90 lb 0.675 ft³',
    reference: 'conc-01-pub',
    given: { bagWeight: '80 lb' },
    gives: 'bagYield',
    unit: 'ft3',
    expected: 0.6,
    tolerance: 0.005,
  },
]
