// This file is about cautions: they are always there, and nothing puts them away.
import type { Answer } from '../../answer.ts'
import { element } from './element.ts'

/** Those said in full stand in a box; those that only remind are one quiet line each. */
export function careOf(cautions: Answer['cautions']): HTMLElement {
  const isQuiet = cautions.every((it) => it.standing)
  return element(
    'section',
    { class: isQuiet ? 'care quiet' : 'care' },
    element('h3', {}, 'Take care'),
    element('ul', {}, ...cautions.map((it) => element('li', it.standing ? { class: 'standing' } : {}, it.text))),
  )
}
