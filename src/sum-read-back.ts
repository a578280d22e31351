// This file is about a sum that the reader hardly knows to be the one that is meant: it is said back to the person before any figure.
import { inSentence, isQuantity, show, type Worked } from '../engine/index.ts'
import { wordNamed } from './calls.ts'
import type { Held } from './guard/bindings.ts'
import { heldBack } from './held-back.ts'
import type { Request } from './request.ts'

const called = (name: string): string => inSentence(wordNamed(name))

/**
 * The same, or a question where the reader was not sure: what would be worked, and what each number of the message was taken for.
 * “Yes” is a confirmation of the word that is asked about, and what was wanted is worked then.
 */
export function sumReadBack(worked: readonly Worked[], { unsure }: Request, held: readonly Held[]): readonly Worked[] {
  if (!unsure || worked.length === 0 || worked.some((it) => !it.outcome.ok)) return worked
  const given = new Set(worked.flatMap((it) => [...it.outcome.given.keys()]))
  const own = held.filter(({ word, tag }) => tag !== null && given.has(word))
  const wanted = worked.at(-1)?.wanted ?? []
  const read = own.map(
    ({ word, value }) => `${wordNamed(word).label} ${isQuantity(value) ? show(value) : String(value)}`,
  )
  const told = read.length > 0 ? `, and told me: ${read.join('; ')}` : ''
  const problem = {
    code: 'unreadable',
    word: own.at(-1)?.word ?? wanted[0] ?? '',
    message: 'I am not sure that I understood you, and would rather ask than give you a wrong figure.',
  } as const
  const ask = `Is this what you mean? You want ${wanted.slice(0, mostNamed).map(called).join(' and ')}${told}. Say yes, or say what is different.`
  return worked.map((it, i) => heldBack(it, i < worked.length - 1 ? problem : { ...problem, ask }))
}

const mostNamed = 2
