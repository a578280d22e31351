// This file is about the words that go on from the last answer: what there is already, and what an amount is held against.
import type { Kind } from './plain-phrases.ts'

export const comparedAs: Partial<Record<Kind, string>> = {
  volume: 'volume',
  mass: 'mass',
  length: 'length',
  money: 'money',
}

export const asksEnough =
  /\b(enough|how many more|how many (?:do i|do we|are)|short|still need|many more|need to buy|to buy|suffice|do it|cover it|be ok|will that do|left over)\b/i
