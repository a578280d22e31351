// This file is about which answers of a talk still stand: the latest of each calculation and place, while what it was worked from is still so.
import type { Call, Figure, Turn } from '../answer.ts'
import { jobSheet } from '../sheet.ts'

/** In the order in which they were first asked. */
export function standingCalls(turns: readonly Turn[]): Call[] {
  const latest = new Map<string, Call>()
  for (const turn of turns)
    for (const call of turn.answer.calls) if (call.results.length > 0) latest.set(nameOf(call), call)
  const said = jobSheet(turns).filter((it) => it.from === 'said')
  const isStill = (input: Figure): boolean =>
    (input.role !== 'said' && input.role !== 'known') ||
    said.every(
      (it) => it.word !== input.word || it.at !== input.at || it.value === input.value || it.unit !== input.unit,
    )
  return [...latest.values()].filter((call) => call.inputs.every(isStill))
}

const nameOf = (call: Call): string =>
  `${call.calculation} ${[...new Set(call.results.map((it) => it.at))].sort().join(' ')}`
