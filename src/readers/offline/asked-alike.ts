// This file is about words that are asked for alike: by the same phrase, as the same sort of thing, or in the same measure.
import { vocabulary, type Word } from '../../../engine/index.ts'
import type { Hit } from './lexicon.ts'

/** The words that the same phrase asks for: “how much cement” is the concrete of one, and the plain cement of another. */
export const askedAlike = (word: string, hits: readonly Hit[]): string[] => {
  const mine = hits.filter((hit) => hit.sort === 'ask' && hit.word === word)
  return hits
    .filter((hit) => hit.sort === 'ask' && mine.some((it) => it.from === hit.from && it.to === hit.to))
    .map((hit) => hit.word)
}

/** Whether two words count the same thing, or one is the other of something: the crown's concrete, and concrete. */
export const isSameSort = (word: Word, other: string): boolean =>
  (word.kind === 'count' && word.noun !== undefined && vocabulary.get(other)?.noun === word.noun) ||
  (word.kind === vocabulary.get(other)?.kind && word.name.toLowerCase().endsWith(other.toLowerCase()))

/** "How heavy?" of an old fence is its own weight: a weight, a volume or a time is asked for, whatever it is of. */
export const isSameMeasure = (word: string, other: string): boolean => {
  const kind = vocabulary.get(word)?.kind
  return kind === vocabulary.get(other)?.kind && (kind === 'mass' || kind === 'volume' || kind === 'duration')
}
