// This file is about the parts of a request that a reader makes of words whose place says what they are.
import { yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import { empty, from } from './plain-phrases.ts'

/** What is told of a word by a quantity of the message, or by a ref of the talk. */
export const tell = (word: string, tag: string): Told => ({ word, at: yard, from: from(tag) })

/** An option that the words of the message are. */
export const chosenBy = (word: string, option: string, quote: string): Told => ({
  word,
  at: yard,
  from: { tag: null, quote, option, usual: null },
})

/** What is wanted of one calculation, with what is told. */
export const requestFor = (calculation: string, wants: readonly string[], all: readonly Told[]): Request => ({
  ...empty,
  told: [...all],
  wants: wants.map((word) => ({ word, at: yard })),
  calculation,
})
