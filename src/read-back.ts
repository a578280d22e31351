// This file is about a fence that was told over several messages, or with a size that nothing took: it is read back to the person before its first figure.
import {
  amountIn,
  isQuantity,
  sameValue,
  toNumber,
  calculationNamed,
  fenceInWords,
  type Decision,
  isRun,
  type Job,
  type Reading,
  runOf,
  runPlaces,
  type Worked,
  wholeFence,
} from '../engine/index.ts'
import { heldBack } from './held-back.ts'

/** What is said once of a fence is easily heard wrong when it comes in pieces: a side left out makes another fence of it. */
const tells = new Set(['runLength', 'gateOpening', 'gates', 'gateStart'])

// A figure of all of it was given: what comes later changes a fence that is known.
const isOfFence = (name: string): boolean => calculationNamed(name)?.ofTheFence === true

const isLengthOfRun = ({ word, at }: Decision): boolean =>
  (word === 'runLength' || word === 'runPieces') && isRun(runOf(at))
const mayBeSide = ({ quantity, bare, said }: Reading): boolean =>
  quantity?.kind === 'length' || (bare !== null && !/^\p{L}/u.test(said) && bare.compare(4) > 0)

/** “In one of the 6 m”: a side called by its length. */
const isKnownSide = ({ quantity, bare }: Reading, { decisions }: Job): boolean =>
  decisions.some(
    ({ word, value }) =>
      word === 'runLength' &&
      isQuantity(value) &&
      (quantity ? sameValue(value, quantity) : bare?.valueOf() === toNumber(amountIn(value, value.unit))),
  )

/** Bags for its posts, screws for its pickets: what the fence itself gave, and nobody said. */
const isFedBy = ({ outcome }: Worked, { decisions }: Job): boolean =>
  ['posts', 'bays', 'picketsHung', 'railsInAll'].some(
    (word) => outcome.given.has(word) && !decisions.some((it) => it.word === word),
  )

/**
 * The same, or a question where the figures would be the first of a fence of several runs that was told in pieces and not said to be right yet, or of one that leaves a size of its message over.
 * “Yes” is a confirmation of `runLength`, and what was wanted is worked then.
 */
export function readBack(
  worked: readonly Worked[],
  job: Job,
  { turn, unused }: { readonly turn: number; readonly unused: readonly Reading[] },
): readonly Worked[] {
  const runs = runPlaces(job)
  const left = job.decisions.some((it) => it.turn === turn && isLengthOfRun(it))
    ? unused.filter((it) => mayBeSide(it) && !isKnownSide(it, job))
    : []
  const turns = new Set(job.decisions.filter((it) => tells.has(it.word) && isRun(runOf(it.at))).map((it) => it.turn))
  const isKnown =
    job.results.some((it) => isRun(runOf(it.at)) || wholeFence.gives[it.word] || isOfFence(it.calculation)) ||
    job.moves.some((it) => it.confirms.includes('runLength'))
  const fence = fenceInWords(job)
  const isInPieces = runs.length >= 2 && turns.size >= 2 && !isKnown
  if (!fence || (!isInPieces && left.length === 0)) return worked
  return worked.map((it) => {
    if (!it.outcome.ok || !(it.calculation.ofTheFence || isRun(runOf(it.at)) || isFedBy(it, job))) return it
    const problem = {
      code: 'unreadable',
      word: 'runLength',
      message:
        left.length > 0
          ? `I found no place in this fence for ${left.map((it) => `“${it.said}”`).join(' and ')}, and one piece left out makes another fence of it.`
          : 'You told me this fence in pieces, and one piece left out or heard wrong makes another fence of it.',
      ask: `Is this the whole of it? ${fence} Say yes, or say what is different.`,
    } as const
    return heldBack(it, problem)
  })
}
