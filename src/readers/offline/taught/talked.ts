// This file is about what a talk has been about so far, in calculations.
import { askable, type Job } from '../../../../engine/index.ts'

/** The calculations that the talk is about, and those that it was about before. */
export function talkedOf(job: Job): Talked {
  const known = talked.get(job)
  if (known) return known
  const { named, wanted, results } = job
  const giving = askable.filter((calc) => wanted.some((it) => calc.gives[it.word])).map((it) => it.name)
  const found = { now: named ? [named] : giving, before: new Set(results.map((it) => it.calculation)) }
  talked.set(job, found)
  return found
}

export interface Talked {
  readonly now: readonly string[]
  readonly before: ReadonlySet<string>
}
const talked = new WeakMap<Job, Talked>()
