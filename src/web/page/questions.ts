// This file is about what the program needs to know: a line to fill in for each question, sent as plain words.
import type { Answer } from '../../answer.ts'
import { element } from './element.ts'
import { placeInWords, theBy } from './places.ts'

type Ask = Answer['asks'][number]

/** The heading that the reply gives its questions. The form asks them, in the same words. */
export const asking = 'I need to know'

const most = 4

export function questionsOf({ asks, turn }: Answer, send: (text: string) => void): HTMLElement | null {
  if (asks.length === 0) return null
  const lines = asks.slice(0, most).map((ask, i) => {
    const id = `ask-${turn}-${i}`
    const place = placeInWords(ask.at)
    const input = element('input', { id, name: ask.word, type: 'text', maxlength: '200', autocomplete: 'off' })
    const where = place ? element('span', { class: 'whose' }, `for ${theBy(place)}`) : null
    return {
      ask,
      input,
      row: element('div', { class: 'question' }, element('label', { for: id }, ask.question, ' ', where), input),
    }
  })
  const form = element(
    'form',
    { class: 'questions' },
    element('h3', {}, asking),
    ...lines.map((it) => it.row),
    element('button', { type: 'submit' }, 'Write it in'),
  )
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    const said = lines.flatMap(({ ask, input }) => {
      const value = input.value.trim()
      return value === '' ? [] : [inWords(ask, value)]
    })
    if (said.length > 0) send(said.join('\n'))
    else lines[0]?.input.focus()
  })
  return form
}

/** `hole diameter: 10 in`, and `corner posts: 4` where the place itself says what is counted. */
function inWords({ word, at, question }: Ask, value: string): string {
  // “… Is that the hole width, or the post width?” is answered by a name, not by a size.
  if (/^You said “/.test(question) && !/\d/.test(value)) return value
  const label = word.replace(/[A-Z]/g, (sign) => ` ${sign.toLowerCase()}`)
  const place = placeInWords(at)
  // A run, or a part of one, is named first: what follows is told of it.
  if (place && !place.endsWith('posts')) return `The ${place}: ${label} ${value}`
  return `${place.endsWith(label) ? place : label}: ${value}`
}
