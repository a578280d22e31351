// This file is about lines that are struck through and written again. The old ones stay legible, and can be taken up again.
import { element } from './element.ts'
import { wholeEntry } from './entry.ts'
import type { ShownTurn } from './server.ts'

/** The question of an entry becomes a line to be written again; what was said stands in it. */
export function writeAgain(entry: HTMLElement, said: string, send: (text: string) => void): void {
  const heading = entry.querySelector<HTMLElement>('.asked')
  if (!heading || entry.querySelector('form.anew')) return
  const field = element('textarea', { id: 'anew-text', rows: '3', maxlength: '20000' })
  field.value = said
  const leave = element('button', { type: 'button' }, 'Leave it')
  const form = element(
    'form',
    { class: 'anew' },
    element('label', { for: 'anew-text' }, 'Strike this, and write instead'),
    field,
    element('div', { class: 'acts' }, element('button', { type: 'submit', class: 'main' }, 'Write it again'), leave),
  )
  const done = (): void => {
    form.remove()
    heading.hidden = false
    heading.focus()
  }
  leave.addEventListener('click', done)
  form.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') done()
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    const text = field.value.trim()
    if (text === '' || text === said) return done()
    done()
    send(text)
  })
  heading.hidden = true
  heading.after(form)
  field.focus()
  form.scrollIntoView({ block: 'nearest', behavior: 'instant' })
}

/** What stood in an entry's place before, struck: its question is seen at once, its entries when it is unfolded. */
export const struckOf = (turn: ShownTurn, takeUp: (turn: ShownTurn, branch: number) => void): HTMLElement[] =>
  turn.aside.map((branch, i) => {
    const [first, ...later] = branch
    const words = later.length > 0 ? ` and ${later.length} after it` : ''
    const old = element(
      'details',
      { class: 'struck' },
      element(
        'summary',
        {},
        element('del', {}, first?.said ?? ''),
        element('span', { class: 'whose' }, `struck${words}`),
      ),
    )
    old.addEventListener(
      'toggle',
      () => {
        const again = element('button', { type: 'button' }, 'Take this up again')
        again.addEventListener('click', () => takeUp(turn, i))
        old.append(
          element('div', { class: 'acts' }, again),
          ...branch.map((it, k) => {
            const before = branch.slice(0, k).map((one) => one.answer)
            const entry = wholeEntry(it, before, { send: () => {}, again: () => {} }).element
            for (const act of entry.querySelectorAll(':scope > .acts, form, .change')) act.remove()
            // Its heading stands elsewhere on the page under the same name.
            entry.removeAttribute('aria-labelledby')
            entry.querySelector('.asked')?.removeAttribute('id')
            entry.removeAttribute('data-number')
            return entry
          }),
        )
      },
      { once: true },
    )
    return old
  })
