// This file is about what-ifs: “what about 12 in holes?”, “and with 5 1/2 in boards?”. What was told before is told anew, and the same is asked as before.
import type { Heard } from '../reader.ts'
import type { Hit } from './lexicon.ts'
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
