// This file is about readings told with their dates: "26 % on 1 May 2025, 22 % on 11 May 2025", a moisture or a lean followed over time.
import { type Calculation, askable, type Word, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'

/** A calculation that follows something from date to date, by the kind of what is read. */
const followers = askable.flatMap((calc) => {
  const lists = Object.values(calc.needs).filter((word) => word.list)
  const dates = lists.find((word) => word.kind === 'date')
  const values = lists.find((word) => word.kind !== 'date')
  return dates && values ? [{ calc, dates, values }] : []
})

/** Two readings or more that stand each beside its own date, bound to their lists; nothing where a date has none. */
export function readingsByDate({ readings, said }: Heard): { bound: Bound[]; calculation: Calculation } | undefined {
  const dated = readings.flatMap((it, i) => (it.quantity?.kind === 'date' ? [i] : []))
  if (dated.length < 2) return undefined
  for (const { calc, dates, values } of followers)
    for (const step of [-1, 1]) {
      const read = dated.map((i) => readings[i + step])
      if (
        !read.every((it) => it !== undefined && isOf(values, it) && !(it.bare !== null && isCounted(it, said))) ||
        new Set(read).size < read.length
      )
        continue
      const bound = dated.flatMap((i) => [
        { reading: readings[i] as Tagged, word: dates.name, at: yard, score: weight.byPlace },
        { reading: readings[i + step] as Tagged, word: values.name, at: yard, score: weight.byPlace },
      ])
      return { bound, calculation: calc }
    }
  return undefined
}

/** “2 working days”, “28 calendar days”: counted, and no reading of a meter. */
const isCounted = ({ end }: Tagged, said: string): boolean =>
  /^\s+(?!on\b|at\b|in\b|and\b|then\b|by\b|for\b)\p{L}/u.test(said.slice(end))

// A bare number beside a date may be a share, since meters are read so; it is never a length.
const isOf = (word: Word, it: Tagged): boolean =>
  it.quantity ? it.quantity.kind === word.kind : word.kind === 'percent' && it.bare !== null && !it.clock
