// This file is about what-ifs: “what about 12 in holes?”, “and with 5 1/2 in boards?”. What was told before is told anew, and the same is asked as before.
import { type Calculation, calculationNamed, type Wanted } from '../../../engine/index.ts'
import type { Heard } from '../reader.ts'
import { calculationsIn, type Hit } from './lexicon.ts'
import { filler, type Token } from './stems.ts'

const whatIf = new Set(
  'what how about if and or with but say try then use used using go went make made instead now were was at no not sorry actually change changed only just so maybe ok okay ones one for in be hm hmm well by as to most least'.split(
    ' ',
  ),
)

/** Whether a message holds sizes, names of what was told before, and no other word. */
export function saysAnew({ job, readings }: Heard, message: readonly Token[], hits: readonly Hit[]): boolean {
  if (job.wanted.length === 0 || job.asked.length > 0 || readings.length === 0) return false
  const told = new Set(job.decisions.map((it) => it.word))
  const cues = hits.filter((it) => told.has(it.word) && it.sort !== 'ask')
  const isNamed = (at: number): boolean => cues.some((it) => it.from <= at && at < it.to)
  return (
    message.some((_, at) => isNamed(at)) &&
    message.every(
      ({ tag, stem, text }, at) =>
        tag !== undefined || !/^\p{L}/u.test(text) || filler.has(stem) || whatIf.has(stem) || isNamed(at),
    )
  )
}

const isOf = (one: Wanted, other: Wanted): boolean => one.word === other.word && one.at === other.at

const changing =
  /\b(?:without|instead|rather than|no|not|add|plus|minus|less|more|leave|left|skip|drop|swap|switch|(?:and|what|but|or) if|if (?:i|we|he|she|they|it|you|my|the)|straight|quits?|bail(?:s|ed|ing)?|(?:dropped|backed|pulled) out|called in sick|can['’]?t make it)\b/i
const repeats = /\b(?:again|repeat|remind|what was|how did|why|mean|does that|is that|did you)\b/i

/** Whether a message that told nothing speaks of a change, and asks for what was just asked and answered: “and straight holes, no bell?”, where the bell was not understood. The old figure is no answer to it. */
export const isUnmetChange = (
  { job, said }: Heard,
  meant: Calculation | undefined,
  wanted: readonly Wanted[],
): boolean =>
  wanted.length > 0 &&
  (!meant || job.results.some((it) => it.calculation === meant.name)) &&
  wanted.every((it) => job.results.some((of) => isOf(of, it))) &&
  wanted.some((it) => job.wanted.some((of) => isOf(of, it))) &&
  changing.test(said) &&
  !repeats.test(said)

/** “What if the pickets stand tight against the posts?”: what is wanted in the talk is given by a sum that is called so, too. */
export const isOfOneCalled = ({ job, said }: Heard, message: readonly Token[]): boolean =>
  /\bwhat if\b/i.test(said) &&
  calculationsIn(message).some((name) => job.wanted.some(({ word }) => calculationNamed(name)?.gives[word]))

/** “What about without gravel?”: of what was worked something is left out, and no advice is asked for. */
export const leavesOut = ({ job, said }: Heard): boolean =>
  job.wanted.length > 0 &&
  /^\s*(?:(?:and|so|ok|okay|but|or)[ ,]+)*(?:what|how) (?:about|if)\b[^.?!]*\b(?:without|no|skip|skipped|left out|leave out|leaving out)\b/i.test(
    said,
  )
