// This file is about cautions: they are always there, and nothing puts them away.
import type { Answer } from '../../answer.ts'
import { element } from './element.ts'

type Cautions = Answer['cautions']

/** These are read whole every time they are said. */
const everyTime: readonly string[] = ['utilities', 'lot-line', 'local-code']

/**
 * Those said in full stand in a box; those that only remind are one quiet line each.
 * What an earlier entry of the page said word for word is its first sentence here, and unfolds.
 */
export function careOf(cautions: Cautions, before: readonly { readonly cautions: Cautions }[] = []): HTMLElement {
  const isQuiet = cautions.every((it) => it.standing)
  const wasSaid = (it: Cautions[number]): boolean =>
    !everyTime.includes(it.code) &&
    before.some(({ cautions }) => cautions.some((one) => !one.standing && one.text === it.text))
  return element(
    'section',
    { class: isQuiet ? 'care quiet' : 'care' },
    element('h3', {}, 'Take care'),
    element('ul', {}, ...cautions.map((it) => lineOf(it, wasSaid(it)))),
  )
}

function lineOf({ text, standing }: Cautions[number], wasSaid: boolean): HTMLElement {
  if (standing) return element('li', { class: 'standing' }, text)
  const [, first = text, rest = ''] = /^(.+?[.!?]) (.+)$/s.exec(text) ?? []
  const danger = element('strong', {}, first)
  if (!wasSaid || rest === '') return element('li', {}, danger, ` ${rest}`)
  return element('li', {}, element('details', { class: 'said-before' }, element('summary', {}, danger), rest))
}
