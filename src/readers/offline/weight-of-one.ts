// This file is about a weight that stands beside what it is of one of: “the 80 lb bags”, “32 lb a stick”. It is never that of the whole load.
import { type Word, yard } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

const piece = /^(bag|sack|post|block|paver|slab|board|picket|paling|rail|sleeper|stick|brick|bucket|pail|panel|piece)$/
const ofEach = /^(a|an|per|each|every|apiece)$/

/** What one piece weighs, where the sum has a word for that. */
export function weightOfOne(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  if (!needs.pieceWeight || !needs.loadWeight) return []
  return message.flatMap(({ reading }, at): Bound[] => {
    if (reading?.quantity?.kind !== 'mass' || reading.per) return []
    const [next, then] = [message[at + 1], message[at + 2]]
    const isOfOne =
      piece.test(next?.stem ?? '') ||
      /^(each|apiece)$/.test(next?.text ?? '') ||
      (ofEach.test(next?.text ?? '') && piece.test(then?.stem ?? ''))
    // “A load of 2,400 lb” says in so many words that it is all of it.
    const isOfAll = message[at - 1]?.text === 'of' && message[at - 2]?.stem === 'load'
    const word = isOfOne ? 'pieceWeight' : isOfAll ? 'loadWeight' : undefined
    return word ? [{ reading, word, at: yard, score: weight.byPlace }] : []
  })
}
