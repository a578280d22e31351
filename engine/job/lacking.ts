// This file is about what a plan lacks: what is asked for, at which place, and what keeps one sum from being of all.
import { vocabulary } from '../catalogue.ts'
import type { Outcome, Problem } from '../outcome.ts'
import { placeLabel, yard } from '../places.ts'
import { isQuantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { inSentence, type Word } from '../words/word.ts'
import type { Fence } from './fence.ts'
import { decidedAt, type Job } from './job.ts'
import type { Part } from './parts.ts'

export function gateWithoutRun(job: Job, fence: Fence): Problem[] {
  const opening = decidedAt(job, 'gateOpening', yard)?.value
  if (!fence.isByRuns || !isQuantity(opening) || fence.runs.some((it) => it.gates.length > 0)) return []
  return [
    {
      code: 'missing',
      word: 'gateOpening',
      at: yard,
      message: `You spoke of a gate of ${show(opening)}, and not of its run: it is in no count yet.`,
      ask: `Which run is the gate of ${show(opening)} in?`,
    },
  ]
}

export const missingAt = (word: Word, at: string): Problem => ({
  code: 'missing',
  word: word.name,
  at,
  message: `I need the ${word.label}${placeLabel(at) ? ` (${placeLabel(at)})` : ''}.`,
  ask: word.ask,
})

export const notOneOfRuns = (word: Word): Problem => ({
  code: 'contradictory',
  word: word.name,
  message: `The ${word.label} is not the same on all runs, and one sum over all of them needs one. What hangs on it is left out here.`,
})

export const notOne = (word: Word): Problem => ({
  code: 'contradictory',
  word: word.name,
  message: `The ${word.label} is not the same for all kinds of post, and I can work only one at a time: ask for each kind on its own.`,
})

/** Problems of an outcome, each with the place that it is about, and what is missing by the name the fence knows it by. */
export function placed(outcome: Outcome, at: string, { takes }: Part): Outcome {
  if (outcome.ok) return outcome
  const named = (it: Problem): Problem => {
    const word = it.code === 'missing' ? vocabulary.get(takes?.[it.word] ?? '') : undefined
    return word ? { ...it, word: word.name, message: `I need ${inSentence(word)}.`, ask: word.ask } : it
  }
  return { ...outcome, problems: outcome.problems.map((it) => ({ at, ...named(it) })) }
}
