// This file is about the slip: the one small sheet that says where a figure comes from, lets it be copied, and written anew.
import type { Figure } from '../../answer.ts'
import { element, found } from './element.ts'
import { capital } from './origin.ts'

export interface OnSlip {
  /** Large: the figure itself, or what is touched. */
  readonly head: string
  readonly label: string
  readonly tells: string
  readonly figure: Figure | null
}

export const ofFigure = (figure: Figure, origin: string): OnSlip => ({
  head: figure.text,
  label: figure.text.endsWith(figure.label) ? '' : figure.label,
  tells: origin,
  figure,
})
/** “picket 5 of 16: left edge at 24 7/8 in”. */
export const ofPart = (says: string): OnSlip => {
  const [name = '', ...rest] = says.split(': ')
  return { head: capital(name), label: '', tells: `${capital(rest.join(': '))}.`, figure: null }
}

interface Changing {
  /** Decides the word anew; resolves when it is written in. */
  readonly change: (figure: Figure, value: string) => Promise<void>
  /** What may be chosen, where the word is a choice. */
  readonly choices: (word: string) => Promise<readonly { readonly value: string; readonly label: string }[]>
}

const slip = found('slip')
let owner: HTMLElement | SVGElement | null = null
let isPinned = false
let leaving: ReturnType<typeof setTimeout> | undefined
let changing: Changing | null = null

export function letChange(how: Changing): void {
  changing = how
}

/** Shown while the figure is pointed at or has the focus; it stays when it is pressed. */
export function offerSlip(button: HTMLElement, on: OnSlip): void {
  showWhileAt(button, on)
  button.addEventListener('click', () => pin(button, on))
}

/** Shown only while it is pointed at or has the focus. */
export function showWhileAt(button: HTMLElement | SVGElement, on: OnSlip): void {
  const hear = (event: string, act: (event: Event) => void): void => button.addEventListener(event, act)
  hear('pointerenter', (event) => {
    if ((event as PointerEvent).pointerType === 'mouse' && !isPinned) show(button, on)
  })
  hear('pointerleave', leave)
  hear('focus', () => {
    if (!isPinned && button.matches(':focus-visible')) show(button, on)
  })
  hear('blur', leave)
}

/** The slip with a line to write the figure anew. */
export function openToChange(button: HTMLElement, figure: Figure, origin: string): void {
  pin(button, ofFigure(figure, origin))
  void writeAnew(figure)
}

/** Shown and kept until it is put away. */
export function pin(button: HTMLElement | SVGElement, on: OnSlip): void {
  show(button, on)
  isPinned = true
  const copy = element('button', { type: 'button' }, on.figure ? 'Copy the figure' : 'Copy this')
  copy.addEventListener('click', () => {
    void navigator.clipboard.writeText(on.figure?.text ?? `${on.head}: ${on.tells}`).then(() => {
      copy.textContent = 'Copied'
    })
  })
  const close = element('button', { type: 'button' }, 'Put away')
  close.addEventListener('click', () => putAway(true))
  const row = element('div', { class: 'acts' }, copy)
  if (on.figure && canChange(on.figure)) {
    const { figure } = on
    const change = element('button', { type: 'button' }, 'Change it')
    change.addEventListener('click', () => void writeAnew(figure))
    row.append(change)
  }
  row.append(close)
  slip.append(row)
  place(button)
  copy.focus({ preventScroll: true })
}

/** What stands on the page that lies open can be written anew; in a form one fills in the line above. */
const canChange = ({ role, word }: Figure): boolean =>
  changing !== null &&
  owner?.closest('#entries, #sheet') !== null &&
  owner?.closest('.struck') === null &&
  (role === 'said' || role === 'known' || role === 'assumed') &&
  word !== 'cited' &&
  word !== 'note'

function show(button: HTMLElement | SVGElement, { head, label, tells }: OnSlip): void {
  clearTimeout(leaving)
  owner = button
  isPinned = false
  slip.setAttribute('aria-label', `What ${head} is`)
  slip.replaceChildren(element('p', { class: 'of' }, element('strong', {}, head), ` ${label}`), element('p', {}, tells))
  slip.hidden = false
  place(button)
}

/** Beside its figure where there is room for both, else over the line to write on: that can be pressed all the while. */
function place(button: HTMLElement | SVGElement): void {
  slip.classList.toggle('at-foot', innerWidth < 736)
  slip.style.removeProperty('left')
  slip.style.removeProperty('top')
  slip.style.removeProperty('bottom')
  if (innerWidth < 736) {
    const foot = innerHeight - found('ask').getBoundingClientRect().top
    if (foot < innerHeight / 2) slip.style.bottom = `${Math.max(0, foot) + 8}px`
    return
  }
  const at = button.getBoundingClientRect()
  const { width, height } = slip.getBoundingClientRect()
  const under = at.bottom + 6 + height < innerHeight
  slip.style.left = `${Math.max(8, Math.min(at.left, innerWidth - width - 8))}px`
  slip.style.top = `${under ? at.bottom + 6 : Math.max(8, at.top - height - 6)}px`
}

async function writeAnew(figure: Figure): Promise<void> {
  const choices = figure.unit === 'choice' ? ((await changing?.choices(figure.word)) ?? []) : []
  const field =
    choices.length > 0
      ? element(
          'select',
          { id: 'anew' },
          ...choices.map(({ value, label }) =>
            element('option', { value, ...(label === figure.text ? { selected: '' } : {}) }, label),
          ),
        )
      : element('input', { id: 'anew', type: 'text', maxlength: '200', autocomplete: 'off', value: figure.text })
  const fault = element('p', { class: 'wrong', role: 'alert' })
  const form = element(
    'form',
    {},
    element('label', { for: 'anew' }, `Write ${figure.label} anew`),
    field,
    fault,
    element('div', { class: 'acts' }, element('button', { type: 'submit', class: 'main' }, 'Write it in')),
  )
  const leaveIt = element('button', { type: 'button' }, 'Leave it')
  leaveIt.addEventListener('click', () => putAway(true))
  form.lastElementChild?.append(leaveIt)
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    const value = field.value.trim()
    if (value === '' || value === figure.text) return
    changing?.change(figure, value).then(
      () => putAway(true),
      (wrong: unknown) => {
        fault.textContent = wrong instanceof Error ? wrong.message : 'That could not be written in.'
        field.focus()
      },
    )
  })
  slip.querySelector('.acts')?.remove()
  slip.append(form)
  if (owner) place(owner)
  field.focus()
  if (field instanceof HTMLInputElement) field.select()
}

function leave(): void {
  clearTimeout(leaving)
  // Long enough to move the pointer onto the slip.
  leaving = setTimeout(() => {
    if (!isPinned && !slip.matches(':hover')) putAway(false)
  }, 200)
}

export function putAway(withFocus: boolean): void {
  if (slip.hidden) return
  const last = owner
  slip.hidden = true
  isPinned = false
  owner = null
  if (withFocus) last?.focus({ preventScroll: true })
  slip.hidden = true
}

slip.addEventListener('pointerleave', leave)
document.addEventListener('keydown', (event) => {
  if (event.key === 'Escape' && !slip.hidden) {
    event.stopPropagation()
    putAway(isPinned)
  }
})
document.addEventListener('pointerdown', (event) => {
  const on = event.target as Element
  if (!slip.contains(on) && !on.closest('.fig, .part')) putAway(false)
})
addEventListener(
  'scroll',
  () => {
    if (!isPinned) putAway(false)
  },
  { passive: true },
)
