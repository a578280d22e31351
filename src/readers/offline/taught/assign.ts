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
    const able = row.flatMap((own, word) => (own > hopeless ? [word] : []))
    const next: Beginning[] = []
    // What comes later stands behind what is as sure.
    const keep = (before: Beginning, word: number, last: number, sum: number): void => {
      let at = next.length
      if (at === kept && sum <= (next[kept - 1] as Beginning).sum) return
      while (at > 0 && (next[at - 1] as Beginning).sum < sum) at--
      next.splice(at, 0, { word, last, before, sum })
      if (next.length > kept) next.pop()
    }
    for (const before of beginnings) {
      keep(before, -1, before.last, before.sum)
      for (const word of able)
        if (isList[word] || !isTaken(before, word))
          keep(before, word, word, before.sum + (row[word] as number) + follows(before.last, word))
    }
    beginnings = next
  }
  const whole = ({ last, sum }: Beginning): number => sum + (last < 0 ? 0 : follows(last, -1))
  let best = beginnings.reduce((a, b) => (whole(b) > whole(a) ? b : a))
  const words: number[] = []
  for (; best.before; best = best.before) words.unshift(best.word)
  return words
}

/** How well each word of a row of them follows each other one, with -1 for the beginning and the end. */
export function followingOf(follows: Table, words: readonly Word[]): (before: number, after: number) => number {
  const size = words.length + 1
  const names = words.map((it) => it.name)
  const [before, after] = [ends.first, ends.last].map((end) => [end, ...names]) as [string[], string[]]
  const all = Float64Array.from({ length: size * size }, (_, at) =>
    followsOf(follows, before[Math.floor(at / size)] as string, after[at % size] as string),
  )
  return (one, next) => all[(one + 1) * size + next + 1] as number
}

/** Each quantity and the number of its word: all together as sure as can be, and every word that is no list once; and how sure each is of any, beside what the others are. */
export function assigned(
  alone: readonly (readonly number[])[],
  isList: readonly boolean[],
  after: (before: number, after: number) => number,
  isSame: (i: number, j: number) => boolean,
): { chosen: (number | undefined)[]; scores: number[][] } {
  const best = bestInOrder(alone, isList, after)
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
