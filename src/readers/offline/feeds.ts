// This file is about what stands behind a sum: a run gives the bays, the bays the pickets of each, and these the pickets to buy. The engine works such a chain by itself.
import { askable, type Job, needsFor, usualFor } from '../../../engine/index.ts'
import { groupedBy } from './phrases.ts'

/** Calculations that may stand in for others, by what they give. */
const feeders = groupedBy(
  askable.filter((calc) => calc.joins),
  (calc) => Object.keys(calc.gives),
)

/** What those need that may stand in for what is needed, by how far behind it stands: the pickets in all, a bay's, its opening, the run. */
export function neededBehind(needed: ReadonlySet<string>): Map<string, number> {
  const behind = new Map([...needed].map((word) => [word, 0]))
  // A map goes on to what is added to it on the way.
  for (const [word, steps] of behind)
    for (const calc of feeders.get(word) ?? [])
      for (const need of Object.keys(calc.needs)) if (!behind.has(need)) behind.set(need, steps + 1)
  return behind
}

// The pickets to buy, those of a bay, its opening, the run: no chain of ours is longer.
const longest = 3

/** Whether a calculation that stands in for others gives the word from what was told, or from what such a one gives in turn. */
export const isFed = (word: string, told: ReadonlySet<string>, steps = longest): boolean =>
  steps > 0 &&
  (feeders.get(word) ?? []).some((other) => {
    const needs = needsFor(other, [word])
    return (
      needs.some((need) => told.has(need.name)) &&
      needs.every(
        (need) => told.has(need.name) || usualFor(other, need) !== undefined || isFed(need.name, told, steps - 1),
      )
    )
  })

/** What a talk knows: what was told in it, and what was worked. */
export const knownIn = (job: Job): Set<string> => new Set([...job.decisions, ...job.results].map((it) => it.word))
