// This file is about cautions: they are always there, and nothing puts them away.
import type { Answer } from '../../answer.ts'
import { element } from './element.ts'

/** Those said in full stand in a box, the danger first and bold; those that only remind are one quiet line each. */
export function careOf(cautions: Answer['cautions']): HTMLElement {
  const isQuiet = cautions.every((it) => it.standing)
  return element(
    'section',
    { class: isQuiet ? 'care quiet' : 'care' },
    element('h3', {}, 'Take care'),
    element('ul', {}, ...cautions.map(lineOf)),
  )
}

function lineOf({ text, standing }: Answer['cautions'][number]): HTMLElement {
  if (standing) return element('li', { class: 'standing' }, text)
  const [, danger = text, rest = ''] = /^(.+?[.!?]) (.+)$/s.exec(text) ?? []
  return element('li', {}, element('strong', {}, danger), rest === '' ? '' : ` ${rest}`)
}
