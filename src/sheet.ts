// This file is about the job sheet: every word that is known, with its value and who said it.
import type { Turn } from './answer.ts'
import type { Figure } from './answer.ts'
import { jobAfter } from './assistant.ts'
import { wordNamed } from './calls.ts'
import { figureOf } from './figures.ts'

export interface SheetLine {
  readonly word: string
  readonly at: string
  readonly label: string
  readonly figure: Figure
  readonly from: 'said' | 'usual' | 'worked' | 'published'
}

/** What was said first, then what was taken as usual in the last answers, then what was worked. */
export function jobSheet(turns: readonly Turn[]): SheetLine[] {
  const job = jobAfter(turns)
  const said = job.decisions.map((it): SheetLine => {
    const word = wordNamed(it.word)
    return { word: word.name, at: it.at, label: word.label, from: 'said', figure: figureOf({ ref: `job.${word.name}`, word, at: it.at, value: it.value, role: 'said' }) }
  })
  const worked = job.results.map((it): SheetLine => {
    const word = wordNamed(it.word)
    return { word: word.name, at: it.at, label: word.label, from: 'worked', figure: figureOf({ ref: `job.${word.name}`, word, at: it.at, value: it.value, role: 'result' }) }
  })
  const usual: SheetLine[] = []
  for (const figure of turns.flatMap((turn) => turn.answer.calls.flatMap((call) => call.inputs))) {
    if (figure.role !== 'assumed' || [...said, ...usual].some((it) => it.word === figure.word)) continue
    usual.push({ word: figure.word, at: figure.at, label: figure.label, from: 'usual', figure })
  }
  return [...said, ...usual, ...worked]
}
