// This file is about one run of the bench as a list of ratios, each to its reference in the same run, so that two runs can be held beside each other.
import type { CuttingMeasures } from './cutting.ts'
import type { Growth } from './growth.ts'
import type { GuardMeasures } from './guard.ts'
import type { Measured } from './measure.ts'
import type { Overhead } from './own-reading.ts'
import type { PageMeasured } from './page.ts'
import { counted, type Heard, type Part } from './reading/measure.ts'

export interface Report {
  readonly measures: readonly Measured[]
  /** Reading quantities, and reading messages, at twice and four times the length. */
  readonly growth: readonly Growth[]
  readonly readGrowth: readonly Growth[]
  readonly guard: GuardMeasures
  readonly cutting: CuttingMeasures
  readonly reading: readonly { readonly part: Part; readonly heard: readonly Heard[] }[]
  readonly overhead: Overhead
  /** Nothing where no browser could be started. */
  readonly page?: readonly PageMeasured[]
}

export interface Ratio {
  readonly what: string
  readonly ratio: number
  /** A part of a whole, out of one: it is the same on every machine, so the least change of it is one. */
  readonly isShare?: true
}

export const ratiosOf = ({
  measures,
  growth,
  readGrowth,
  guard,
  cutting,
  reading,
  overhead,
  page,
}: Report): Ratio[] => [
  ...measures.map(({ what, ratio }) => ({ what, ratio })),
  ...grown('reading quantities', growth, 5),
  ...grown('reading messages', readGrowth, 20),
  { what: 'guard: an answer of three sentences, beside cutting it into words', ratio: guard.ratio },
  share('guard: contradictions refused', guard.contradictionsRefused),
  share('guard: planted figures refused', guard.figuresRefused),
  share('guard: harmless sentences refused', guard.harmlessRefused),
  { what: 'a cut plan, beside longest-first', ratio: cutting.ms.median / cutting.longestFirst.ms },
  {
    what: 'a cut plan of a small job, beside the same solver laying each piece on each stick',
    ratio: cutting.assignment.msHere.median / cutting.assignment.ms.median,
  },
  share('cut plans: price proved least', cutting.proved.price),
  share('cut plans: dearer by longest-first, on average', cutting.longestFirst.mean / 100),
  ...reading.flatMap(({ part, heard }) => judged(part, heard)),
  { what: 'a turn with a model that takes no time, beside one without', ratio: overhead.ratio },
  ...(page ?? []).map(({ what, ms, limitMs }) => ({
    what: `the page, beside ${limitMs} ms: ${what}`,
    ratio: ms / limitMs,
  })),
]

const share = (what: string, ratio: number): Ratio => ({ what, ratio, isShare: true })

/** The worst growth for twice as much, beside work in proportion; only kinds that take long enough to be timed at once count. */
const grown = (what: string, growth: readonly Growth[], timed: number): Ratio[] => {
  const slow = growth.filter((it) => (it.ms[0] as number) >= timed)
  return slow.length === 0
    ? []
    : [
        {
          what: `${what}: growing most for twice as much, beside in proportion`,
          ratio: Math.max(...slow.flatMap((it) => it.ratios)) / 2,
        },
      ]
}

const judged = (part: Part, heard: readonly Heard[]): Ratio[] =>
  Object.entries(counted(heard)).flatMap(([kind, verdicts]) => {
    const of = Object.values(verdicts).reduce((sum, it) => sum + it, 0)
    return (['right', 'wrong'] as const).map((verdict) =>
      share(`reading without a model, ${part} part, ${kind}: ${verdict}`, verdicts[verdict] / of),
    )
  })
