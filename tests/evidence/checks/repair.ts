// This file is about the evidence for the calculations in repair/.
import { isQuantity, numberIn } from '../../../engine/quantities/quantity.ts'
import type { Ran } from '../../engine/run-named.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const shareOf =
  (name: string) =>
  ({ outcome }: Ran): number => {
    const value = outcome.ok ? outcome.values.get(name) : undefined
    if (!isQuantity(value)) throw new Error(`no ${name}`)
    return numberIn(value, 'percent')
  }

const days = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 86_400_000

/** Percent of the section modulus left: the post cut into small squares, the sound ones' second moment about their own middle. */
function modulusBySquares(
  isSound: (x: number, y: number) => boolean,
  isPost: (x: number, y: number) => boolean,
): number {
  const cells = 700
  /** Bent in x or in y: second moment over the distance to the furthest wood. */
  const modulus = (inside: (x: number, y: number) => boolean, along: 'x' | 'y'): number => {
    let [area, first, second, low, high] = [0, 0, 0, 1, 0]
    for (let i = 0; i < cells; i++)
      for (let j = 0; j < cells; j++) {
        const [x, y] = [(i + 0.5) / cells, (j + 0.5) / cells]
        if (!inside(x, y)) continue
        const at = along === 'x' ? x : y
        area++
        first += at
        second += at * at
        low = Math.min(low, at - 0.5 / cells)
        high = Math.max(high, at + 0.5 / cells)
      }
    const middle = first / area
    return (second - area * middle * middle) / Math.max(high - middle, middle - low)
  }
  return 100 * Math.min(modulus(isSound, 'x') / modulus(isPost, 'x'), modulus(isSound, 'y') / modulus(isPost, 'y'))
}
const square = (): boolean => true
const round = (x: number, y: number): boolean => Math.hypot(x - 0.5, y - 0.5) <= 0.5

/** A leaf as a rigid square hung on its two hinges, which stand off the post unlike: how far its latch corner sinks. */
function sinkByTurning(leaf: number, hinges: number, top: number, bottom: number): number {
  const turn = Math.atan2(top - bottom, hinges)
  return leaf * Math.sin(turn)
}

export const repairChecks: readonly Check[] = [
  {
    calculation: 'post-lean',
    what: 'the top of a post that reads 3/4 in over 4 ft',
    kind: 'second derivation',
    source: 'second derivation: the foot’s plumb line and the post’s face walked up in steps of an inch',
    given: { outOfPlumb: '3/4 in', plumbOver: '48 in', postAbove: '70 in' },
    gives: 'topOffset',
    unit: 'in',
    expected: () => {
      let out = 0
      for (let inch = 0; inch < 70; inch++) out += 0.75 / 48
      return out
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'post-lean',
    what: 'the angle of that lean',
    kind: 'library',
    source: mathjsWorks,
    given: { outOfPlumb: '3/4 in', plumbOver: '48 in', postAbove: '70 in' },
    gives: 'leanAngle',
    unit: 'deg',
    expected: () => byMathjs('atan2(0.75, 48) rad', 'deg'),
    tolerance: 1e-9,
  },
  {
    calculation: 'lean-trend',
    what: 'the pace over a leap year',
    kind: 'second derivation',
    source: 'second derivation: the days counted by the platform’s own calendar',
    given: { plumbReadings: ['4 mm', '9 mm', '16 mm'], plumbDates: ['2023-11-15', '2024-05-02', '2025-03-09'] },
    system: 'metric',
    gives: 'leanGrowth',
    unit: 'mm',
    expected: () => (12 / days('2023-11-15', '2025-03-09')) * 365.25,
    tolerance: 1e-9,
  },
  {
    calculation: 'rot-left',
    what: 'a hollow round stem whose wall is 0.3 of its radius keeps 76 % of its bending moment',
    kind: 'published',
    source:
      'https://pmc.ncbi.nlm.nih.gov/articles/PMC5414253/figure/RSOS160972F6 : “a hollow trunk with t/R = 0.3 can resist 76% of a solid trunk’s failure bending moment”',
    given: { postWidth: '100 mm', postSection: 'round', rotWhere: 'inside', soundShell: '15 mm' },
    system: 'metric',
    gives: 'sectionLeft',
    unit: 'percent',
    expected: 76,
    tolerance: 0.5,
  },
  ...(
    [
      ['one', 'square', (x: number) => x > 0.2],
      ['opposite', 'square', (x: number) => x > 0.2 && x < 0.8],
      ['corner', 'square', (x: number, y: number) => x > 0.2 && y > 0.2],
      ['all', 'square', (x: number, y: number) => x > 0.2 && x < 0.8 && y > 0.2 && y < 0.8],
      ['all', 'round', (x: number, y: number) => Math.hypot(x - 0.5, y - 0.5) < 0.3],
    ] as const
  ).map(
    ([rotWhere, postSection, isSound]): Check => ({
      calculation: 'rot-left',
      what: `rot a fifth of the width deep, ${rotWhere}, ${postSection} post`,
      kind: 'second derivation',
      source:
        'second derivation: the section cut into half a million small squares, their second moment taken about their own middle',
      given: { postWidth: '100 mm', postSection, rotWhere, rotDepth: '20 mm' },
      system: 'metric',
      gives: 'sectionLeft',
      unit: 'percent',
      expected: () => modulusBySquares(isSound, postSection === 'round' ? round : square),
      tolerance: 0.3,
    }),
  ),
  {
    calculation: 'rot-left',
    what: 'stiffness left with rot all round',
    kind: 'library',
    source: mathjsWorks,
    given: { postWidth: '3 1/2 in', rotWhere: 'all', rotDepth: '3/8 in' },
    gives: 'stiffnessLeft',
    unit: 'percent',
    got: shareOf('stiffnessLeft'),
    expected: () => 100 * byMathjs('((3.5 inch - 2 * 0.375 inch) / (3.5 inch))^4 * 1 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'sister-or-replace',
    what: 'the sister, piece by piece',
    kind: 'second derivation',
    source:
      'second derivation: laid up from its foot inch by inch, below ground while it is less than half of what the old post shows, then past the rot, then the lap',
    given: { postAbove: '62 in', rotHeight: '9 in', sisterLap: '26 in' },
    gives: 'sisterLength',
    unit: 'in',
    expected: () => {
      let [inches, below] = [0, 0]
      while (below * 2 < 62) {
        below++
        inches++
      }
      for (let above = 0; above < 9; above++) inches++
      for (let lap = 0; lap < 26; lap++) inches++
      return inches
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'sag-triage',
    what: 'what the hinges let down, for a gap an eighth wider at the top',
    kind: 'second derivation',
    source:
      'second derivation: the leaf as a rigid square turned about its hinges by coordinates; for turns so small they agree to a thousandth',
    given: { leafWidth: '44 in', hingeSpacing: '28 in', hingeGapTop: '1/2 in', hingeGapBottom: '3/8 in' },
    gives: 'hingeDrop',
    unit: 'in',
    expected: () => sinkByTurning(44, 28, 0.5, 0.375),
    tolerance: 0.001,
  },
  {
    calculation: 'reset-hours',
    what: 'seven posts at 1 h 40 min',
    kind: 'library',
    source: mathjsWorks,
    given: { resetPosts: '7', resetTime: '100 minutes', dayHours: '6 h' },
    gives: 'resetHours',
    unit: 'h',
    expected: () => byMathjs('7 * 100 minute', 'hour'),
    tolerance: 1e-9,
  },
  {
    calculation: 'yearly-walk',
    what: 'the next walk after one in a leap year, in days',
    kind: 'second derivation',
    source: 'second derivation: counted by the platform’s own calendar',
    given: { walkDate: '2028-02-29' },
    gives: 'nextWalk',
    unit: 'date',
    expected: () => days('1970-01-01', '2029-02-28'),
    tolerance: 0,
  },
]
