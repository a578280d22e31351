// This file is about measuring: a piece of work against a reference in the same run, since machines are noisy and clocks differ.

export interface Measured {
  readonly what: string
  /** Where it is no time: what `ms` and `referenceMs` count. */
  readonly unit?: string
  /** Median time of one run, warm, in milliseconds. */
  readonly ms: number
  readonly reference: string
  readonly referenceMs: number
  /** How many times as long as the reference. */
  readonly ratio: number
  /** The most it may take, where a promise was made, in milliseconds; and whether it was kept. */
  readonly limitMs?: number
  readonly kept?: boolean
}

export interface Reference {
  readonly name: string
  readonly run: () => unknown
}

/** Measures work and reference in turns, so that a busy moment falls on both. */
export function measure(
  what: string,
  run: () => unknown,
  reference: Reference,
  { limitMs, rounds = 60 }: { readonly limitMs?: number; readonly rounds?: number } = {},
): Measured {
  const batch = batchFor(run)
  const referenceBatch = batchFor(reference.run)
  const [times, referenceTimes]: [number[], number[]] = [[], []]
  for (let i = 0; i < rounds; i++) {
    times.push(timeOf(run, batch))
    referenceTimes.push(timeOf(reference.run, referenceBatch))
  }
  const [ms, referenceMs] = [median(times), median(referenceTimes)]
  return {
    what,
    ms,
    reference: reference.name,
    referenceMs,
    ratio: ms / referenceMs,
    ...(limitMs === undefined ? {} : { limitMs, kept: ms <= limitMs }),
  }
}

/** How many runs make up about a millisecond, after warming up. */
function batchFor(run: () => unknown): number {
  const until = performance.now() + 40
  let runs = 0
  while (performance.now() < until) {
    run()
    runs++
  }
  return Math.max(1, Math.round(runs / 40))
}

function timeOf(run: () => unknown, batch: number): number {
  const start = performance.now()
  for (let i = 0; i < batch; i++) run()
  return (performance.now() - start) / batch
}

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number
