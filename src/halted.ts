// This file is about a turn that was halted before it was read: what was said is kept, and nothing is made up in its answer's place.
import { countryOf, type Job, writeJob } from '../engine/index.ts'
import type { Answer } from './answer.ts'
import { compose, wordsOf } from './compose.ts'
import { cautionsFor } from './guard/cautions.ts'

const notice = 'Halted before it was read. What you said is kept, and nothing was worked of it.'

/** The job stays as the turn before left it, so that the talk goes on from there. */
export function haltedTurn(job: Job, turn: number, front: Answer['front']): { answer: Answer; job: unknown } {
  const nothing = { calls: [], advice: [], asks: [], changed: [], readAs: [], prose: '' }
  const cautions = cautionsFor({ full: [], alreadyTold: job.told, country: countryOf(job) })
  const parts = { ...nothing, worked: [], cautions, notices: [notice], leftOver: [] }
  return {
    answer: {
      ...nothing,
      turn,
      figures: [],
      cautions,
      declined: null,
      front,
      heard: { request: { told: [], wants: [], calculation: null, confirms: [], declines: [] } },
      halted: 'reading',
      words: wordsOf(parts),
      reply: compose(parts),
    },
    job: writeJob(job),
  }
}
