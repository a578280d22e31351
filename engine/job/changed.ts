// This file is about a value that changes by so much: “2 in wider”, “3 more posts”, “half that gap”. What it comes to hangs on what it was.
import { add, isExact, subtract, times } from '../quantities/amount.ts'
import { isList, isQuantity, type Quantity } from '../quantities/quantity.ts'
import type { Reading } from '../quantities/reading.ts'
import { declaredValue, fittedReading } from '../words/value.ts'
import type { Word } from '../words/word.ts'
import { decided, type Job, systemOf } from './job.ts'

/** What a change is made to: what was decided of the word at the place or above it, else what was worked, else what is taken as usual. Of a list it is the value of that thing. */
export function valueBefore(job: Job, word: Word, at: string, thing?: string): Quantity | undefined {
  if (word.difference) return undefined
  const told = decided(job, word.name, at)
  if (word.list) return isList(told?.value) && thing ? told.value[told.called?.indexOf(thing) ?? -1] : undefined
  const value = told?.value
  if (value !== undefined) return isQuantity(value) ? value : undefined
  // “One picket less”, where 16 were worked.
  const worked = job.results.findLast((it) => it.word === word.name && it.at === at)?.value
  if (isQuantity(worked)) return worked
  const system = systemOf(job)
  const usual = word.usual && (system === 'metric' ? (word.usual.metric ?? word.usual.value) : word.usual.value)
  return usual === undefined || word.kind === 'choice' ? undefined : declaredValue(word, usual, system)
}

/** What a word comes to where it changes by what was read; nothing where it was not known, where the change is of another kind, or leaves nothing of it. */
export function valueAfter(job: Job, word: Word, at: string, reading: Reading, thing?: string): Quantity | undefined {
  const before = valueBefore(job, word, at, thing)
  const { change, bare } = reading
  if (!before || !change) return undefined
  if (change.way === 'times') return bare ? { ...before, amount: times(before.amount, bare) } : undefined
  const by = fittedReading(word, reading, systemOf(job))
  if (!by || by.kind !== before.kind) return undefined
  const isMore = (change.way === 'more') !== (change.moves === true && word.downward === true)
  const amount = (isMore ? add : subtract)(before.amount, by.amount)
  const isSome = isExact(amount) ? amount.compare(0) > 0 : amount.value > 0
  return isSome ? { ...before, amount } : undefined
}
