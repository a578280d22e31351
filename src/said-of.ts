// This file is about what “they” and “that” were taken for: what was counted before, and goes into this sum.
import { isQuantity, show, vocabulary, type Worked } from '../engine/index.ts'
import type { Held } from './guard/bindings.ts'

/** For each word that was told to be what another sum gives: which figure that was. */
export const takenFor = (held: readonly Held[], worked: readonly Worked[]): string[] => [
  ...new Set(
    held.flatMap(({ of }) => {
      const by = of && worked.find(({ outcome }) => outcome.ok && outcome.values.has(of.word))
      const value = of && by?.outcome.ok ? by.outcome.values.get(of.word) : undefined
      const label = of && vocabulary.get(of.word)?.label
      return isQuantity(value) ? [`I took it that this is of the ${show(value)}: ${label}.`] : []
    }),
  ),
]
