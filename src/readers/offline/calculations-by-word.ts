// This file is about finding calculations by their words: by what they give, and by what they need. The catalogue is gone through once, and not for each message.
import { askable, type Calculation } from '../../../engine/index.ts'
import { groupedBy } from './phrases.ts'

const giving = groupedBy(askable, ({ gives }) => Object.keys(gives))
const needing = groupedBy(askable, ({ needs }) => Object.keys(needs))

/** The calculations that give a word, in the order of the catalogue. */
export const thatGive = (word: string): readonly Calculation[] => giving.get(word) ?? []
/** The calculations that need a word, in the order of the catalogue. */
export const thatNeed = (word: string): readonly Calculation[] => needing.get(word) ?? []

/** The calculations that give one of the words or more. */
export function thatGiveAny(words: readonly string[]): readonly Calculation[] {
  if (words.length === 1) return thatGive(words[0] as string)
  const found = new Set(words.flatMap(thatGive))
  return askable.filter((it) => found.has(it))
}

/** The calculations that give all of the words; none where there are none. */
export const thatGiveAll = ([first, ...more]: readonly string[]): readonly Calculation[] =>
  first === undefined ? [] : thatGive(first).filter(({ gives }) => more.every((it) => gives[it]))
