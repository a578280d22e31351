// This file is about one run of the bench beside another that was kept: ratios to the references of each run, since the machines may differ.
import type { Measured } from './measure.ts'

export interface KeptBench {
  readonly measures: readonly Pick<Measured, 'what' | 'ratio'>[]
}

/** Below this a difference is the machine's noise. */
const noise = 1.25

/** What takes more or less of its reference than before, the worst first; what is new, and what is gone. */
export function againstInWords(before: KeptBench, now: KeptBench): string {
  const known = new Map(before.measures.map((it) => [it.what, it.ratio]))
  const both = now.measures.flatMap(({ what, ratio }) => {
    const then = known.get(what)
    return then === undefined ? [] : [{ what, then, ratio, factor: ratio / then }]
  })
  const moved = both.filter(({ factor }) => factor > noise || factor < 1 / noise).sort((a, b) => b.factor - a.factor)
  const names = new Set(now.measures.map((it) => it.what))
  const fresh = now.measures.filter((it) => !known.has(it.what)).map((it) => it.what)
  const gone = before.measures.filter((it) => !names.has(it.what)).map((it) => it.what)
  return [
    `beside the run that was kept: ${both.length} measures in both, ${moved.length} moved by more than ${Math.round((noise - 1) * 100)} %`,
    ...moved.map(
      (it) => `  ${it.factor.toFixed(2)} times as much: ${it.what}, ${it.then.toFixed(2)} → ${it.ratio.toFixed(2)}`,
    ),
    ...(fresh.length > 0 ? [`  new: ${fresh.join('; ')}`] : []),
    ...(gone.length > 0 ? [`  gone: ${gone.join('; ')}`] : []),
  ].join('\n')
}
