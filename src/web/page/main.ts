// This file is about the page at work: a question goes out, an entry is written in, the job sheet fills.
import type { Answer } from '../../answer.ts'
import { keepEarlierPages } from './earlier.ts'
import { found } from './element.ts'
import { entryOf } from './entry.ts'
import { clearFault, sayFault } from './fault.ts'
import { askTurn, health, page, sheet, startPage } from './server.ts'
import { showSheet } from './sheet.ts'
import { offerToTake } from './take.ts'

const text = found<HTMLTextAreaElement>('text')
const form = found<HTMLFormElement>('ask')
const entries = found('entries')
const progress = found('progress')
const button = form.querySelector('button') as HTMLButtonElement

/** The page that lies open; null while nothing has been written on it. */
let current: string | null = null
/** The key of the question that is under way or failed: asking again is the same question, not another. */
let pending: { readonly text: string; readonly key: string } | null = null
let busy = false

const newKey = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((it) => it.toString(16).padStart(2, '0')).join('')

async function send(said: string): Promise<void> {
  if (busy) return
  setBusy(true)
  clearFault()
  if (pending?.text !== said) pending = { text: said, key: newKey() }
  progress.textContent = 'Reading …'
  try {
    const asked = current ?? (await startPage())
    if (current === null) lieOpen(asked)
    const answer = await askTurn(asked, said, pending.key, sayProgress)
    pending = null
    if (text.value.trim() === said) text.value = ''
    // Another page may have been turned to meanwhile. The answer stands on its own page.
    if (current !== asked) return
    const entry = writeIn(said, answer)
    entry.querySelector<HTMLElement>('.asked')?.focus({ preventScroll: true })
    entry.scrollIntoView({ block: 'start', behavior: calm() ? 'auto' : 'smooth' })
    fillSheet(asked)
  } catch (fault) {
    if (text.value.trim() === '') text.value = said
    sayFault(fault, () => void send(said))
  } finally {
    progress.textContent = ''
    setBusy(false)
  }
}

const calm = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches

// The button stays where the keyboard left it, and does nothing meanwhile.
function setBusy(now: boolean): void {
  busy = now
  button.setAttribute('aria-disabled', String(now))
}

function sayProgress(event: string, data: unknown): void {
  if (event === 'read') progress.textContent = 'Read. Working …'
  if (event === 'again') progress.textContent = 'The line was cut. Taking it up again …'
  if (event !== 'figures') return
  const found = (data as Answer['figures']).filter((it) => it.headline && it.role === 'result').map((it) => it.text)
  if (found.length > 0) progress.textContent = `Worked: ${found.join(', ')}. Writing it out …`
}

function writeIn(said: string, answer: Parameters<typeof entryOf>[1]): HTMLElement {
  const entry = entryOf(said, answer, (more) => void send(more))
  entries.append(entry)
  showEmpty()
  return entry
}

function showEmpty(): void {
  const isWritten = entries.childElementCount > 0
  found('empty').hidden = isWritten
  offerToTake(isWritten ? current : null)
}

function lieOpen(id: string | null): void {
  current = id
  history.replaceState(null, '', id ? `#${id}` : location.pathname)
}

async function turnTo(id: string | null): Promise<void> {
  clearFault()
  lieOpen(id)
  entries.replaceChildren()
  showSheet([])
  if (id) {
    const { turns } = await page(id)
    if (current !== id) return
    for (const turn of turns) writeIn(turn.said, turn.answer)
    fillSheet(id)
  }
  showEmpty()
}

function fillSheet(id: string): void {
  sheet(id)
    .then((lines) => {
      if (current === id) showSheet(lines)
    })
    .catch((fault: unknown) => sayFault(fault, () => retry(() => fillSheet(id))))
}

function open(id: string, byHand: boolean): void {
  turnTo(id)
    .then(() => {
      if (byHand) entries.querySelector<HTMLElement>('.asked')?.focus()
    })
    .catch((fault: unknown) => {
      void turnTo(null)
      sayFault(fault, () => retry(() => open(id, byHand)))
    })
}

function retry(action: () => void): void {
  clearFault()
  action()
}

form.addEventListener('submit', (event) => {
  event.preventDefault()
  const said = text.value.trim()
  if (said !== '') void send(said)
})
text.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return
  event.preventDefault()
  form.requestSubmit()
})
for (const example of document.querySelectorAll<HTMLButtonElement>('.example'))
  example.addEventListener('click', () => {
    text.value = example.textContent ?? ''
    text.focus()
  })
found('fresh').addEventListener('click', () => {
  void turnTo(null)
  text.focus()
})
// The address names the page that lies open, so the link must not write its own name there.
found('skip').addEventListener('click', (event) => {
  event.preventDefault()
  text.focus()
})
keepEarlierPages(
  (id) => open(id, true),
  (id) => {
    if (current === id) void turnTo(null)
  },
)

let unfolded: HTMLDetailsElement[] = []
addEventListener('beforeprint', () => {
  unfolded = [...document.querySelectorAll<HTMLDetailsElement>('.fold:not([open])')]
  for (const fold of unfolded) fold.open = true
})
addEventListener('afterprint', () => {
  for (const fold of unfolded) fold.open = false
})

health()
  .then(({ front }) => {
    found('front').textContent =
      front === 'model'
        ? 'A model reads your questions. Every figure is worked here.'
        : 'Your questions are read and worked on this machine.'
  })
  .catch(sayFault)
const named = location.hash.slice(1)
if (named) open(named, false)
