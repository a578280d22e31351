// This file is about cautions: they are always there, and nothing puts them away.
import type { Answer } from '../../answer.ts'
import { element } from './element.ts'
import type { ShownAnswer } from './server.ts'

type Caution = Answer['cautions'][number]

/** Each in full where the page has it for the first time, the danger first and bold. Later its one line stands, and the whole of it unfolds below. */
export function careOf(
  { cautions, html }: Pick<ShownAnswer, 'cautions'> & { readonly html?: ShownAnswer['html'] },
  before: readonly Pick<Answer, 'cautions'>[] = [],
): HTMLElement {
  const isRead = ({ text }: Caution): boolean => before.some((it) => it.cautions.some((one) => one.text === text))
  const isQuiet = cautions.every((it) => it.standing)
  return element(
    'section',
    { class: isQuiet ? 'care quiet' : 'care' },
    element('h3', {}, 'Take care'),
    element(
      'ul',
      {},
      ...cautions.map((it, i) => {
        const reminder = html?.reminders[i]
        if (it.standing) return element('li', { class: 'standing' }, it.text)
        return reminder && isRead(it) ? shortOf(it, reminder) : wholeOf(it)
      }),
    ),
  )
}

function wholeOf({ text }: Caution): HTMLElement {
  const [, danger = text, rest = ''] = /^(.+?[.!?]) (.+)$/s.exec(text) ?? []
  return element('li', {}, element('strong', {}, danger), rest === '' ? '' : ` ${rest}`)
}

const shortOf = ({ text }: Caution, reminder: string): HTMLElement =>
  element(
    'li',
    { class: 'short' },
    element(
      'details',
      { class: 'fold' },
      element('summary', {}, element('strong', {}, reminder)),
      element('p', {}, text),
    ),
  )
