// This file is about a sum that the reader hardly knows to be the one that is meant: it is said back to the person before any figure.
import { inSentence, isQuantity, type Job, show, type Worked } from '../engine/index.ts'
import { wordNamed } from './calls.ts'
import type { Held } from './guard/bindings.ts'
import { heldBack } from './held-back.ts'
import type { Request } from './request.ts'

const called = (name: string): string => inSentence(wordNamed(name))

/** What was read back and got no “yes”, and nothing put right, is no surer now. */
function isUnconfirmed(
  { asked, decisions }: Job,
  { confirms }: Request,
  told: readonly string[],
  held: readonly Held[],
): boolean {
  const open = asked.find((it) => it.sum)
  const isPutRight = held.some(({ word }) => decisions.some((it) => it.word === word))
  return open !== undefined && confirms.length === 0 && told.includes(open.word) && !isPutRight
}

/**
 * The same, or a question where the reader was not sure: what would be worked, and what each number of the message was taken for.
 * “Yes” is a confirmation of the word that is asked about, and what was wanted is worked then. Until then it stays a question.
 */
export function sumReadBack(
  worked: readonly Worked[],
  request: Request,
  held: readonly Held[],
  before: Job,
): readonly Worked[] {
  const given = new Map(worked.flatMap((it) => [...it.outcome.given]))
  const told = [...given].flatMap(([name, { role }]) => (role === 'said' || role === 'known' ? [name] : []))
  const waits = isUnconfirmed(before, request, told, held)
  if (!(request.unsure || waits) || worked.length === 0 || worked.some((it) => !it.outcome.ok)) return worked
  const own = waits
    ? told.map((word) => ({ word, value: given.get(word)?.value }))
    : held.filter(({ word, tag }) => tag !== null && given.has(word))
  const wanted = worked.at(-1)?.wanted ?? []
  const read = own.map(
    ({ word, value }) => `${wordNamed(word).label} ${isQuantity(value) ? show(value) : String(value)}`,
  )
  const readOut = read.length > 0 ? `, and told me: ${read.join('; ')}` : ''
  const problem = {
    code: 'unreadable',
    word: own.at(-1)?.word ?? wanted[0] ?? '',
    message: 'I am not sure that I understood you, and would rather ask than give you a wrong figure.',
  } as const
  const ask = `${asksBack} You want ${wanted.slice(0, mostNamed).map(called).join(' and ')}${readOut}. Say yes, or say what is different.`
  return worked.map((it, i) => heldBack(it, i < worked.length - 1 ? problem : { ...problem, ask }))
}

const mostNamed = 2
const asksBack = 'Is this what you mean?'
/** Whether a question is such a one. */
export const isSumReadBack = (question: string): boolean => question.startsWith(asksBack)
