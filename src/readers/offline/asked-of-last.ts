// This file is about the parts of a request that goes on from the last answer, and the words that ask for one.
import { yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import { empty, from, type Kind } from './plain-phrases.ts'

export const told = (word: string, tag: string): Told => ({ word, at: yard, from: from(tag) })
export const chosenBy = (word: string, option: string, quote: string): Told => ({
  word,
  at: yard,
  from: { tag: null, quote, option, usual: null },
})
export const asks = (calculation: string, word: string, all: readonly Told[]): Request => ({
  ...empty,
  told: [...all],
  wants: [{ word, at: yard }],
  calculation,
})

export const comparedAs: Partial<Record<Kind, string>> = {
  volume: 'volume',
  mass: 'mass',
  length: 'length',
  money: 'money',
}

export const asksEnough =
  /\b(enough|how many more|how many (?:do i|do we|are)|short|still need|many more|need to buy|to buy|suffice|do it|cover it|be ok|will that do|left over)\b/i
