// This file is about one run of the bench beside another that was kept: ratios to the references of each run, since the machines may differ.
import type { Ratio } from './ratios.ts'

export interface KeptBench {
  readonly ratios: readonly Ratio[]
}

/** Below this a difference is the machine's noise; a share has none. */
const noise = 1.25
const least = 0.001

/** What takes more or less of its reference than before, the worst first; shares that changed; what is new, and what is gone. */
export function againstInWords(before: KeptBench, now: KeptBench): string {
  const known = new Map(before.ratios.map((it) => [it.what, it.ratio]))
  const both = now.ratios.flatMap((it) => {
    const then = known.get(it.what)
    return then === undefined ? [] : [{ ...it, then, factor: it.ratio / then }]
  })
  const moved = both
    .filter(({ isShare, factor }) => !isShare && (factor > noise || factor < 1 / noise))
    .sort((a, b) => b.factor - a.factor)
  const shares = both.filter(({ isShare, ratio, then }) => isShare && Math.abs(ratio - then) >= least)
  const names = new Set(now.ratios.map((it) => it.what))
  const fresh = now.ratios.filter((it) => !known.has(it.what)).map((it) => it.what)
  const gone = before.ratios.filter((it) => !names.has(it.what)).map((it) => it.what)
  const percent = (it: number): string => `${(it * 100).toFixed(1)} %`
  return [
    `beside the run that was kept: ${both.length} ratios in both, ${moved.length} moved by more than ${Math.round((noise - 1) * 100)} %, ${shares.length} shares changed`,
    ...moved.map(
      (it) => `  ${it.factor.toFixed(2)} times as much: ${it.what}, ${it.then.toFixed(2)} → ${it.ratio.toFixed(2)}`,
    ),
    ...shares.map((it) => `  ${it.what}: ${percent(it.then)} → ${percent(it.ratio)}`),
    ...(fresh.length > 0 ? [`  new: ${fresh.join('; ')}`] : []),
    ...(gone.length > 0 ? [`  gone: ${gone.join('; ')}`] : []),
  ].join('\n')
}
