// This file is about sums without talking: each calculation as a short form made of its words. What is filled in stands in the address, so that it can be handed on.
import type { Direct, Field, Listed } from '../../direct.ts'
import { careOf } from './care.ts'
import { element, found } from './element.ts'
import { sayFault } from './fault.ts'
import { capital, type Within } from './origin.ts'
import { resultsOf } from './results.ts'
import { calculations, work } from './server.ts'
import { sketchOf } from './sketch.ts'
import { assumedOf, sourcesOf, tablesOf, workingOf } from './working.ts'

const mark = 'sums'
let isOpen = false
let goesTo: {
  readonly into: HTMLElement
  readonly shown: (isShown: boolean) => void
  readonly back: (page: string) => void
  /** Works it once more as an entry of the page that lies open. */
  readonly writeIn: (calculation: string, inputs: Readonly<Record<string, unknown>>) => Promise<void>
} | null = null

export const isForm = (hash: string): boolean => hash === mark || hash.startsWith(`${mark}/`)

export function keepForms(where: NonNullable<typeof goesTo>): void {
  goesTo = where
  found('to-forms').addEventListener('click', () => {
    location.hash = mark
  })
  addEventListener('hashchange', follow)
  if (isForm(location.hash.slice(1))) follow()
}

/** Back to the book, where it lay open. */
export function leaveForms(): void {
  if (!isOpen || !goesTo) return
  isOpen = false
  goesTo.into.hidden = true
  goesTo.shown(false)
}

function follow(): void {
  const hash = location.hash.slice(1)
  if (!isForm(hash)) {
    leaveForms()
    if (hash !== '') goesTo?.back(hash)
    return
  }
  calculations()
    .then((all) => {
      const [path = '', filled = ''] = hash.slice(mark.length + 1).split('?')
      const one = all.find((it) => it.name === path)
      show(one ? formOf(one, new URLSearchParams(filled)) : listOf(all))
    })
    .catch(sayFault)
}

function show(content: readonly HTMLElement[]): void {
  if (!goesTo) return
  isOpen = true
  goesTo.shown(true)
  goesTo.into.hidden = false
  goesTo.into.replaceChildren(...content)
  scrollTo({ top: 0, behavior: 'instant' })
  content[0]?.focus({ preventScroll: true })
}

/** All of them, by the part of the job they belong to, and a line to find one by. */
function listOf(all: readonly Listed[]): HTMLElement[] {
  const field = element('input', { id: 'find', type: 'search', autocomplete: 'off' })
  const none = element('p', { role: 'status' })
  const rows = all.map((it) => ({
    text: `${it.subject} ${it.title} ${it.answers} ${it.fields.map((one) => one.label).join(' ')}`.toLowerCase(),
    subject: it.subject,
    row: element(
      'li',
      {},
      element(
        'a',
        { href: `#${mark}/${it.name}` },
        element('strong', {}, it.title),
        ' ',
        element('span', { class: 'of' }, it.answers),
      ),
    ),
  }))
  const parts = [...new Set(all.map((it) => it.subject))].map((subject) => {
    const own = rows.filter((it) => it.subject === subject).map((it) => it.row)
    const part = element(
      'details',
      { class: 'fold' },
      element('summary', {}, element('h3', {}, capital(subject)), element('span', { class: 'whose' }, `${own.length}`)),
      element('ul', { class: 'list', role: 'list' }, ...own),
    )
    return { part, own }
  })
  field.addEventListener('input', () => {
    const words = field.value.toLowerCase().split(/\s+/)
    for (const { text, row } of rows) row.hidden = !words.every((it) => text.includes(it))
    for (const { part, own } of parts) {
      part.hidden = own.every((it) => it.hidden)
      part.open = field.value.trim() !== '' && !part.hidden
    }
    none.textContent = parts.every((it) => it.part.hidden) ? 'None has those words. Try fewer.' : ''
  })
  return [
    element('h2', { tabindex: '-1' }, 'Sums without talking'),
    element('label', { for: 'find' }, 'Find one by its words'),
    field,
    none,
    ...parts.map((it) => it.part),
  ]
}

function formOf(calculation: Listed, filled: URLSearchParams): HTMLElement[] {
  const lines = calculation.fields.map((field) => ({ field, ...lineOf(field, filled.get(field.word) ?? '') }))
  const result = element('div', { class: 'result' })
  const writeIn = element('button', { type: 'button' }, 'Write it into the book')
  const copy = element('button', { type: 'button' }, 'Copy the link')
  const heading = element('h2', { tabindex: '-1' }, calculation.title)
  const form = element(
    'form',
    { class: 'sum-form', autocomplete: 'off' },
    ...lines.map((it) => it.row),
    element('div', { class: 'acts' }, element('button', { type: 'submit', class: 'main' }, 'Work it'), copy),
  )
  const told = (): URLSearchParams =>
    new URLSearchParams(
      lines.flatMap(({ field, input }) => (input.value.trim() === '' ? [] : [[field.word, input.value.trim()]])),
    )
  const address = (): string => {
    history.replaceState(null, '', `#${mark}/${calculation.name}?${told()}`)
    return location.href
  }
  const inputs = (): Readonly<Record<string, unknown>> =>
    Object.fromEntries(
      lines.flatMap(({ field, input }) => {
        const value = input.value.trim()
        return value === '' ? [] : [[field.word, field.isList ? value.split(/\s*;\s*/) : value]]
      }),
    )
  const workIt = async (): Promise<void> => {
    address()
    const worked = await work(calculation.name, inputs())
    for (const { field, input, wrong } of lines) {
      const problem = worked.problems.find((it) => it.word === field.word)
      wrong.textContent = problem ? problem.message : ''
      input.setAttribute('aria-invalid', String(problem !== undefined))
    }
    lines.find(({ field }) => worked.problems.some((it) => it.word === field.word))?.input.focus()
    result.replaceChildren(...resultOf(worked))
    if (worked.problems.length === 0) result.append(element('div', { class: 'acts' }, writeIn))
    if (worked.problems.length === 0)
      result.querySelector<HTMLElement>('.fig')?.scrollIntoView({ block: 'center', behavior: 'instant' })
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    workIt().catch(sayFault)
  })
  writeIn.addEventListener('click', () => {
    goesTo?.writeIn(calculation.name, inputs()).catch(sayFault)
  })
  copy.addEventListener('click', () => {
    void navigator.clipboard.writeText(address()).then(() => {
      copy.textContent = 'Copied'
    })
  })
  if (lines.some(({ input }) => input.value !== '')) workIt().catch(sayFault)
  return [
    heading,
    element('p', { class: 'of' }, calculation.answers),
    element('a', { class: 'back', href: `#${mark}` }, 'All sums'),
    form,
    result,
  ]
}

function lineOf(field: Field, value: string) {
  const id = `sum-${field.word}`
  const hints = [
    field.measure,
    field.isList ? 'Several, with a semicolon between them.' : '',
    field.usual ? `Left empty: ${field.usual}.` : '',
  ]
  const wrong = element('p', { id: `${id}-wrong`, class: 'wrong' })
  const told = { id, name: field.word, 'aria-describedby': `${id}-hint ${id}-wrong` }
  const input: HTMLInputElement | HTMLSelectElement = field.choices
    ? element(
        'select',
        told,
        element('option', { value: '' }, field.usual ? `${field.usual}, as usual` : 'choose'),
        ...field.choices.map((it) => element('option', { value: it.value }, it.label)),
      )
    : element('input', { ...told, type: 'text', maxlength: '2000' })
  input.value = value
  const row = element(
    'div',
    { class: 'question' },
    element(
      'label',
      { for: id },
      capital(field.label),
      field.isNeeded ? '' : element('span', { class: 'whose' }, ' (may be left empty)'),
    ),
    element('p', { id: `${id}-hint`, class: 'because' }, hints.filter((it) => it !== '').join(' ')),
    input,
    wrong,
  )
  return { row, input, wrong }
}

function resultOf(call: Direct): HTMLElement[] {
  const answer = { turn: 0, calls: [call], advice: [], readAs: [], words: call.words }
  const within: Within = { answer, before: [] }
  const missing = call.problems.filter((it) => it.code === 'missing')
  if (call.problems.length > 0)
    return missing.length > 0 ? [element('p', {}, 'Fill in what is marked above, and work it again.')] : []
  const assumed = assumedOf(answer, within)
  for (const it of assumed) for (const change of it.querySelectorAll('.change')) change.remove()
  return [
    element(
      'div',
      { class: 'body' },
      element(
        'div',
        { class: 'answer' },
        ...resultsOf(call, answer, within),
        ...call.words.remarks.map((it) => element('p', {}, it.text)),
      ),
      call.drawing ? element('div', { class: 'sketches' }, sketchOf({ ...call, drawing: call.drawing }, within)) : null,
    ),
    careOf(call),
    ...tablesOf(answer),
    ...assumed,
    ...workingOf(answer, within),
    ...sourcesOf(answer, within),
  ]
}
