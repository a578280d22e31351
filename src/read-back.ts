// This file is about a fence that was told over several messages: it is read back to the person before its first figure.
import { fenceInWords, isRun, type Job, runOf, runPlaces, type Worked, wholeFence } from '../engine/index.ts'

/** What is said once of a fence is easily heard wrong when it comes in pieces: a side left out makes another fence of it. */
const tells = new Set(['runLength', 'gateOpening', 'gates', 'gateStart'])

/**
 * The same, or a question where the figures would be the first of a fence of several runs that was told in pieces and not said to be right yet.
 * “Yes” is a confirmation of `runLength`, and what was wanted is worked then.
 */
export function readBack(worked: readonly Worked[], job: Job): readonly Worked[] {
  const runs = runPlaces(job)
  const turns = new Set(job.decisions.filter((it) => tells.has(it.word) && isRun(runOf(it.at))).map((it) => it.turn))
  const isKnown =
    job.results.some((it) => isRun(runOf(it.at)) || wholeFence.gives[it.word]) ||
    job.moves.some((it) => it.confirms.includes('runLength'))
  const fence = fenceInWords(job)
  if (runs.length < 2 || turns.size < 2 || isKnown || !fence) return worked
  return worked.map((it) => {
    if (!it.outcome.ok || !(it.calculation.ofTheFence || isRun(runOf(it.at)))) return it
    const problem = {
      code: 'unreadable',
      word: 'runLength',
      message: 'You told me this fence in pieces, and one piece left out or heard wrong makes another fence of it.',
      ask: `Is this the whole of it? ${fence} Say yes, or say what is different.`,
    } as const
    return { ...it, outcome: { ok: false, given: it.outcome.given, problems: [problem], cited: [] } }
  })
}
