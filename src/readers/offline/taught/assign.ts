// This file is about assigning: each quantity of a message to one word, or to none, so that all together are as sure as can be.
// They are taken in the order in which they were said, since what was said before tells what comes next; the surest beginnings are kept (beam search).

import type { Word } from '../../../../engine/index.ts'
import { ends, followsOf } from './belongs.ts'
import type { Table } from './table.ts'

/** A beginning: what its last quantity was taken for, what was said before that, and how sure it is so far. */
interface Beginning {
  readonly word: number
  /** The last word of all, whatever was none passed over; -1 where there is none yet. */
  readonly last: number
  readonly before: Beginning | undefined
  readonly sum: number
}

// So many beginnings are kept; what is less sure by so much than that it means nothing is not tried.
const kept = 24
const hopeless = -5

const isTaken = (beginning: Beginning | undefined, word: number): boolean => {
  for (let it = beginning; it; it = it.before) if (it.word === word) return true
  return false
}

/**
 * For each quantity the number of its word, or -1 for none. `gain` is how much surer a quantity is to be a word than to be none; `isList` says which words
 * take more than one; `follows` how well a word follows another, with -1 for the beginning and the end.
 */
export function bestInOrder(
  gain: readonly (readonly number[])[],
  isList: readonly boolean[],
  follows: (before: number, after: number) => number,
): number[] {
  let beginnings: Beginning[] = [{ word: -1, last: -1, before: undefined, sum: 0 }]
  for (const row of gain) {
    const next: Beginning[] = []
    for (const before of beginnings) {
      next.push({ word: -1, last: before.last, before, sum: before.sum })
      for (const [word, own] of row.entries())
        if (own > hopeless && (isList[word] || !isTaken(before, word)))
          next.push({ word, last: word, before, sum: before.sum + own + follows(before.last, word) })
    }
    next.sort((a, b) => b.sum - a.sum)
    beginnings = next.slice(0, kept)
  }
  const whole = ({ last, sum }: Beginning): number => sum + (last < 0 ? 0 : follows(last, -1))
  let best = beginnings.reduce((a, b) => (whole(b) > whole(a) ? b : a))
  const words: number[] = []
  for (; best.before; best = best.before) words.unshift(best.word)
  return words
}

/** Each quantity and the number of its word: all together as sure as can be, and every word that is no list once; and how sure each is of any, beside what the others are. */
export function assigned(
  alone: readonly (readonly number[])[],
  words: readonly Word[],
  follows: Table,
  isSame: (i: number, j: number) => boolean,
): { chosen: (number | undefined)[]; scores: number[][] } {
  const nameOf = (at: number, end: string): string => words[at]?.name ?? end
  const after = (before: number, at: number): number =>
    followsOf(follows, nameOf(before, ends.first), nameOf(at, ends.last))
  const best = bestInOrder(
    alone,
    words.map((it) => it.list === true),
    after,
  )
  const scores = alone.map((row, i) => {
    const before = best.slice(0, i).findLast((it) => it >= 0) ?? -1
    const next = best.slice(i + 1).find((it) => it >= 0) ?? -1
    const without = before < 0 && next < 0 ? 0 : after(before, next)
    return row.map((own, at) =>
      own === Number.NEGATIVE_INFINITY ? own : own + after(before, at) + after(at, next) - without,
    )
  })
  const given = best.map((at, i) => (at >= 0 && ((scores[i] as number[])[at] as number) > 0 ? at : undefined))
  // “9 cm by 9 cm” says one thing twice.
  const chosen = given.map((at, i) => {
    const own = alone[i] as readonly number[]
    const twice = given.find(
      (other, j) =>
        i !== j &&
        other !== undefined &&
        isSame(i, j) &&
        (own[other] as number) > (at === undefined ? 0 : (own[at] as number)),
    )
    return twice ?? at
  })
  return { chosen, scores }
}
