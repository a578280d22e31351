// This file is about what a message is about that asks nothing in so many words.
import { askable, kindsIn, together, type Wanted } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import { type Hit, isResult } from './lexicon.ts'

/** Nothing was asked in so many words: the subject is the calculation that most of what was said belongs to, if one stands out. */
export function whatItIsAbout(told: readonly Told[], hits: readonly Hit[]): Wanted[] {
  const chosen = hits.filter((hit) => hit.sort === 'option').map((hit) => hit.word)
  const words = new Set([...told.map((it) => it.word), ...(told.length > 0 ? chosen : [])])
  const named = new Set(hits.filter((hit) => isResult(hit.word) && hit.sort !== 'side').map((hit) => hit.word))
  const scored = askable
    .map((calc) => ({
      calc,
      score:
        Object.keys(calc.needs).filter((need) => words.has(need)).length +
        0.5 * Object.keys(calc.gives).filter((it) => named.has(it)).length,
    }))
    .sort((a, b) => b.score - a.score)
  // Of several that fit alike, the plain one is meant: the others are called by phrases of their own.
  const best = scored.filter((it) => it.score === scored[0]?.score)
  const plain = best.length > 1 ? best.filter((it) => !it.calc.called) : best
  const [first, second] = plain
  if (!first || first.score < 2 || second) return []
  const places = told.filter((it) => it.word === 'posts').flatMap((it) => kindsIn(it.at))
  return first.calc.headlines.slice(0, 1).map((word) => ({ word, at: together(places) }))
}
