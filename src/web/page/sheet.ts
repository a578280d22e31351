// This file is about the job sheet: what is known, where it holds and who said it; what is still open; and taking the last change back.
import type { Figure } from '../../answer.ts'
import type { Open } from '../../next.ts'
import type { SheetLine } from '../../sheet.ts'
import { element, found } from './element.ts'
import { figureButton } from './figure.ts'
import { placeInWords, theBy } from './places.ts'
import type { ShownAnswer } from './server.ts'

const whose: Record<SheetLine['from'], string> = {
  said: 'you said',
  usual: 'taken as usual',
  worked: 'worked',
  published: 'published',
}
const roles: Record<SheetLine['from'], Figure['role']> = {
  said: 'known',
  usual: 'assumed',
  worked: 'result',
  published: 'published',
}

const column = found('job')
const lip = found<HTMLButtonElement>('lip')
const narrow = matchMedia('(max-width: 59.99rem)')

export interface OnSheet {
  readonly lines: readonly SheetLine[]
  readonly open: readonly Open[]
  /** Every answer of the page, in order. */
  readonly answers: readonly ShownAnswer[]
}

/** `settle` writes the answer to an open question in. */
export function showSheet({ lines, open, answers }: OnSheet, settle: (ask: Open, value: string) => void): void {
  found('sheet-empty').hidden = lines.length > 0
  lip.textContent = lines.length > 0 ? `Sheet, ${lines.length}` : 'Job sheet'
  const last =
    document.activeElement instanceof HTMLElement && found('sheet').contains(document.activeElement)
      ? document.activeElement.dataset
      : null
  const places = [...new Set(lines.map((it) => it.at))]
  found('sheet').replaceChildren(
    ...openOf(open, settle),
    ...places.flatMap((at) => {
      const place = placeInWords(at)
      const rows = lines.filter((it) => it.at === at).map((it) => rowOf(it, answers))
      return [place ? element('h3', {}, `For ${theBy(place)}`) : null, element('dl', {}, ...rows)].filter(
        (it) => it !== null,
      )
    }),
  )
  // Whoever was at a figure is at the same one still.
  if (last?.word)
    found('sheet')
      .querySelector<HTMLElement>(`[data-word="${CSS.escape(last.word)}"][data-at="${CSS.escape(last.at ?? '')}"]`)
      ?.focus({ preventScroll: true })
}

function rowOf(line: SheetLine, answers: readonly ShownAnswer[]): HTMLElement {
  const last = answers.at(-1)
  const figure = { ...line.figure, role: roles[line.from] }
  return element(
    'div',
    { class: `line ${line.from}` },
    element('dt', {}, line.label),
    element(
      'dd',
      {},
      last ? figureButton(figure, { answer: last, before: answers.slice(0, -1) }) : line.text,
      element('span', { class: 'whose' }, whose[line.from]),
    ),
  )
}

/** The next question first, with a line to answer it on; the others wait their turn. */
function openOf(open: readonly Open[], settle: (ask: Open, value: string) => void): HTMLElement[] {
  const [next, ...others] = open
  if (!next) return []
  const field = element('input', { id: 'next', type: 'text', maxlength: '200', autocomplete: 'off' })
  const place = placeInWords(next.at)
  const form = element(
    'form',
    { class: 'next' },
    element('h3', {}, 'To settle next'),
    element('label', { for: 'next' }, next.question, place && !next.question.startsWith('For ') ? ` (${place})` : ''),
    next.waits.length > 0 ? element('p', { class: 'whose' }, `For ${waitingInWords(next.waits)}.`) : null,
    element('div', { class: 'told' }, field, element('button', { type: 'submit' }, 'Settle it')),
    others.length > 0
      ? element(
          'details',
          { class: 'waiting' },
          element('summary', {}, `${others.length} more after it`),
          element('ul', {}, ...others.map((it) => element('li', {}, it.question))),
        )
      : null,
  )
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    if (field.value.trim() === '') field.focus()
    else settle(next, field.value.trim())
  })
  return [form]
}

/** The first of what waits for an answer, and how many more. */
const waitingInWords = ([first = '', second, ...more]: readonly string[]): string =>
  [first, second, more.length > 0 ? `${more.length} more` : undefined].filter((it) => it !== undefined).join('; ')

/** Where the window is narrow the sheet lies under the book, and is pulled out by its lip. */
function pull(isOut: boolean): void {
  // Inert, each thing written in a long book would be styled anew, twice.
  found('book').classList.toggle('under', isOut)
  column.classList.toggle('out', isOut)
  lip.setAttribute('aria-expanded', String(isOut))
  // Not the whole foot: how far things are is told while the sheet is out too.
  for (const under of document.querySelectorAll<HTMLElement>('#cover, #lip, #ask > .line, #fault')) under.inert = isOut
  if (isOut) found('sheet-title').focus()
}
export function pushIn(): void {
  if (column.classList.contains('out')) pull(false)
}
lip.addEventListener('click', () => pull(!column.classList.contains('out')))
found('sheet-back').addEventListener('click', () => {
  pull(false)
  lip.focus()
})
column.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape' || !column.classList.contains('out')) return
  pull(false)
  lip.focus()
})
narrow.addEventListener('change', pushIn)
