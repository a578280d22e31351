// This file is about the evidence for the calculations in layout/.
import type { Check } from '../check.ts'

/** Posts laid one by one from the first, never further apart than the limit and all alike: the fewest bays that do. */
function baysBySearch(run: number, widest: number): number {
  let bays = 1
  while (run / bays > widest + 1e-12) bays++
  return bays
}

export const layoutChecks: readonly Check[] = [
  ...(
    [
      ['100 ft', '8 ft', 1200, 96],
      ['73 ft 4 in', '8 ft', 880, 96],
      ['48 ft', '6 ft', 576, 72],
    ] as const
  ).map(
    ([runLength, widestBay, run, widest]): Check => ({
      calculation: 'bays-in-run',
      what: `bays in ${runLength} at most ${widestBay} apart`,
      kind: 'second derivation',
      source: 'second derivation: one bay after another tried until none is too wide',
      given: { runLength, widestBay, runEnds: 'centres' },
      gives: 'bays',
      unit: 'bay',
      expected: () => baysBySearch(run, widest),
      tolerance: 0,
    }),
  ),
]
