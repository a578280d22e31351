// This file is about the page at work: a question goes out, an entry is written in, the job sheet fills.
import { element, found } from './element.ts'
import { entryOf } from './entry.ts'
import { askTurn, health, page, pages, Refused, remove, sheet, startPage } from './server.ts'
import { showSheet } from './sheet.ts'

const text = found<HTMLTextAreaElement>('text')
const form = found<HTMLFormElement>('ask')
const entries = found('entries')
const progress = found('progress')
const fault = found('fault')
const button = form.querySelector('button') as HTMLButtonElement

let current: string | null = null
/** The key of the question that is under way or failed: asking again is the same question, not another. */
let pending: { readonly text: string; readonly key: string } | null = null

const newKey = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((it) => it.toString(16).padStart(2, '0')).join('')
const sayFault = (it: unknown): void => {
  fault.textContent = it instanceof Refused ? it.message : 'Something went wrong on this page. What you wrote is kept.'
  fault.hidden = false
}

async function send(said: string): Promise<void> {
  if (button.disabled) return
  button.disabled = true
  fault.hidden = true
  if (pending?.text !== said) pending = { text: said, key: newKey() }
  progress.textContent = 'Working …'
  try {
    current ??= await startPage()
    history.replaceState(null, '', `#${current}`)
    const answer = await askTurn(current, said, pending.key, (event) => {
      if (event === 'again') progress.textContent = 'The line was cut. Taking it up again …'
    })
    pending = null
    if (text.value.trim() === said) text.value = ''
    const entry = entryOf(said, answer, (more) => void send(more))
    entries.append(entry)
    showEmpty()
    entry.querySelector<HTMLElement>('.asked')?.focus({ preventScroll: true })
    entry.scrollIntoView({
      block: 'start',
      behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth',
    })
    showSheet(await sheet(current))
  } catch (it) {
    if (text.value.trim() === '') text.value = said
    sayFault(it)
  } finally {
    progress.textContent = ''
    button.disabled = false
  }
}

const showEmpty = (): void => {
  found('empty').hidden = entries.childElementCount > 0
}

async function open(id: string | null): Promise<void> {
  current = id
  entries.replaceChildren()
  showSheet([])
  history.replaceState(null, '', id ? `#${id}` : location.pathname)
  if (id) {
    const { turns } = await page(id)
    entries.append(...turns.map((turn) => entryOf(turn.said, turn.answer, (more) => void send(more))))
    showSheet(await sheet(id))
  }
  showEmpty()
}

async function showPages(): Promise<void> {
  const list = (await pages()).filter((it) => it.turns > 0)
  found('pages').replaceChildren(
    ...list.map((it) => {
      const name = it.title || 'A page without a question'
      const turnTo = element('button', { type: 'button', class: 'turn-to' }, name)
      turnTo.addEventListener('click', () => {
        found<HTMLDetailsElement>('earlier').open = false
        open(it.id).catch(sayFault)
      })
      const tear = element('button', { type: 'button', class: 'tear', 'aria-label': `Tear out: ${name}` }, 'Tear out')
      tear.addEventListener('click', () => {
        if (!confirm(`Tear out this page for good?\n\n${name}`)) return
        remove(it.id)
          .then(async () => {
            if (current === it.id) await open(null)
            await showPages()
          })
          .catch(sayFault)
      })
      return element('li', {}, turnTo, tear)
    }),
  )
  if (list.length === 0) found('pages').replaceChildren(element('li', {}, 'None yet.'))
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
  open(null)
    .then(() => text.focus())
    .catch(sayFault)
})
found<HTMLDetailsElement>('earlier').addEventListener('toggle', () => {
  if (found<HTMLDetailsElement>('earlier').open) showPages().catch(sayFault)
})
addEventListener('beforeprint', () => {
  for (const fold of document.querySelectorAll<HTMLDetailsElement>('.fold')) fold.open = true
})

health()
  .then(({ front }) => {
    found('front').textContent =
      front === 'model'
        ? 'A model reads your questions; every figure is worked here.'
        : 'Your questions are read and worked on this machine.'
  })
  .catch(sayFault)
const asked = location.hash.slice(1)
if (asked)
  open(asked).catch((it: unknown) => {
    void open(null)
    sayFault(it)
  })
