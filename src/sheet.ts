// This file is about the job sheet: every word that is known, with its value and who said it.
import { yard } from '../engine/index.ts'
import type { Figure, Turn } from './answer.ts'
import { jobAfter } from './hearing.ts'
import { wordNamed } from './calls.ts'
import { figureOf } from './figures.ts'

export interface SheetLine {
  readonly word: string
  readonly at: string
  readonly label: string
  readonly value: Figure['value']
  readonly unit: string
  readonly text: string
  readonly figure: Figure
  readonly from: 'said' | 'usual' | 'worked' | 'published'
}

const lineOf = (figure: Figure, from: SheetLine['from']): SheetLine => ({
  word: figure.word,
  at: figure.at,
  label: figure.label,
  value: figure.value,
  unit: figure.unit,
  text: figure.text,
  figure,
  from,
})

/** What was said first, then what was taken as usual in the last answers, then what was worked. */
export function jobSheet(turns: readonly Turn[]): SheetLine[] {
  const job = jobAfter(turns)
  const said = job.decisions
    .filter((it) => !it.of)
    .map((it): SheetLine => {
      const word = wordNamed(it.word)
      return lineOf(figureOf({ ref: `job.${word.name}`, word, at: it.at, value: it.value, role: 'said' }), 'said')
    })
  const worked = job.results.map((it): SheetLine => {
    const word = wordNamed(it.word)
    return lineOf(figureOf({ ref: `job.${word.name}`, word, at: it.at, value: it.value, role: 'result' }), 'worked')
  })
  const usual: SheetLine[] = []
  for (const figure of turns.flatMap((turn) => turn.answer.calls.flatMap((call) => call.inputs))) {
    const isSaid = said.some((it) => it.word === figure.word && (it.at === figure.at || it.at === yard))
    if (figure.role !== 'assumed' || isSaid || usual.some((it) => it.word === figure.word)) continue
    usual.push(lineOf(figure, 'usual'))
  }
  return [...said, ...usual, ...worked]
}
