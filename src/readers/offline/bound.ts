// This file is about what binding gives: a quantity of the message, the word it was taken for, and how surely.
import type { Told } from '../../request.ts'
import type { Tagged } from '../reader.ts'

export interface Bound {
  readonly reading: Tagged
  readonly word: string
  readonly at: string
  readonly score: number
}

/** As they stand in the message: the values of a list must keep their order. */
export const inOrder = (bound: readonly Bound[]): Bound[] =>
  [...bound].sort((a, b) => a.reading.start - b.reading.start)

export const fromTag = (it: Bound): Told => ({
  word: it.word,
  at: it.at,
  from: { tag: it.reading.tag, quote: null, option: null, usual: null },
})
