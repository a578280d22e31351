// This file is about the page at work: a question goes out, an entry is written in, the job sheet fills.
import type { Answer } from '../../answer.ts'
import type { Open } from '../../next.ts'
import type { SheetLine } from '../../sheet.ts'
import { keepEarlierPages } from './earlier.ts'
import { element, found } from './element.ts'
import { isForm, keepForms, leaveForms } from './forms.ts'
import { beginEntry, type Does, strikeIn, wholeEntry } from './entry.ts'
import { clearFault, sayFault } from './fault.ts'
import {
  calculations,
  change,
  halt,
  open as openQuestions,
  page,
  resume,
  sheet,
  startPage,
  undo,
  units,
  workIn,
} from './server.ts'
import { askTurn, example, type Asking, type ShownAnswer, type ShownTurn } from './server.ts'
import { keepLeaving } from './leave.ts'
import { keepHead, showHead, showUnits } from './head.ts'
import { pushIn, showSheet } from './sheet.ts'
import { letChange, putAway } from './slip.ts'
import { struckOf, writeAgain } from './struck.ts'
import { offerToLend } from './lend.ts'
import { offerToTake } from './take.ts'

const text = found<HTMLTextAreaElement>('text')
const form = found<HTMLFormElement>('ask')
const entries = found('entries')
const progress = found('progress')
const button = found<HTMLButtonElement>('send')

/** The page that lies open; null while nothing has been written on it. */
let current: string | null = null
/** Every answer on it, in order. */
let answers: ShownAnswer[] = []
/** The question that is under way or failed: asking again is the same question, not another. */
let pending: Asking | null = null
let busy = false

const newKey = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((it) => it.toString(16).padStart(2, '0')).join('')

const does: Does = {
  send: (said) => void send(said),
  again: (turn, said) => writeAgain(entryNumbered(turn), said, (anew) => void send(anew, turn)),
}

async function send(said: string, inPlaceOf: number | null = null): Promise<void> {
  if (busy) return
  setBusy(true)
  clearFault()
  putAway(false)
  pushIn()
  lieOpen(current)
  if (pending?.text !== said || pending.inPlaceOf !== inPlaceOf) pending = { text: said, key: newKey(), inPlaceOf }
  const asking = pending
  // It stands in the entry from now on; should that fail it is put back here.
  if (text.value.trim() === said) text.value = ''
  say('Reading …')
  let asked: string | null = current
  const before = answers.slice(0, inPlaceOf ?? answers.length)
  const entry = beginEntry(said, before.length, before, does)
  try {
    asked = current ?? (await startPage())
    if (current === null) lieOpen(asked)
    if (inPlaceOf === null) bring(entry.element)
    const answer = await askTurn(asked, asking, (event, data) => {
      sayProgress(event, data)
      if (event === 'read') entry.read(data as Answer['readAs'])
      if (event === 'card') entry.card(data as ShownAnswer)
      if (event === 'prose') entry.prose((data as { markdown: string }).markdown)
    })
    pending = null
    say('')
    // Another page may have been turned to meanwhile. The answer stands on its own page.
    if (current !== asked) return
    if (inPlaceOf !== null) {
      await turnTo(asked)
      bringUp(entryNumbered(inPlaceOf))
      say('Written again. The old lines are struck, and can still be read.')
    } else if (answer.turn !== before.length) {
      await turnTo(asked)
      bringUp(entryNumbered(answer.turn))
      say(`${inShort(answer)} ${fromElsewhere}`)
    } else {
      entry.finish(answer)
      written(answer)
      say(inShort(answer), true)
    }
    fillSheet(asked)
  } catch (fault) {
    say('')
    entry.element.remove()
    showEmpty()
    if (text.value.trim() === '') text.value = said
    sayFault(fault, () => void send(said, inPlaceOf))
  } finally {
    setBusy(false)
  }
}

/** Written in at the end, and brought to the top of the window: what comes is written below it. */
function bring(entry: HTMLElement): void {
  entries.append(entry)
  showEmpty()
  bringUp(entry)
}

function bringUp(entry: HTMLElement): void {
  entry.querySelector<HTMLElement>('.asked')?.focus({ preventScroll: true })
  entry.scrollIntoView({ block: 'start', behavior: 'instant' })
}

const entryNumbered = (turn: number): HTMLElement =>
  entries.querySelector<HTMLElement>(`[data-number="${turn + 1}"]`) ?? entries

/** What an answer changes elsewhere on the page is struck and written again there. */
function written(answer: ShownAnswer): void {
  answers.push(answer)
  strikeIn(entries, answer)
}

/** The same page lies open in another window too. */
const fromElsewhere = 'What another window wrote is here too.'

/** Whoever comes back to this window finds what was written in another. */
async function catchUp(): Promise<void> {
  const id = current
  if (id === null || busy || document.visibilityState !== 'visible') return
  const { turns } = await page(id)
  if (current !== id || busy || turns.length === answers.length) return
  const top = scrollY
  await turnTo(id)
  scrollTo({ top, behavior: 'instant' })
  say(fromElsewhere)
}
document.addEventListener('visibilitychange', () => void catchUp().catch(() => undefined))

const inShort = ({ calls, asks, halted }: Answer): string => {
  if (halted) return 'Halted.'
  const leads = calls.flatMap((it) => it.results.filter((one) => one.headline)).map((it) => it.text)
  if (leads.length > 0) return `Answered: ${leads.join(', ')}.`
  return asks.length > 0 ? 'Something is to be told.' : 'Written in.'
}

/** Says how far things are. `isSeen`: it stands in the window already, and a narrow one has no room to say it twice. */
function say(words: string, isSeen = false): void {
  progress.classList.toggle('seen', isSeen)
  progress.textContent = words
}

// While a question is under way the same button halts it. It stays where the keyboard left it.
function setBusy(now: boolean): void {
  busy = now
  button.textContent = now ? 'Halt' : 'Ask'
  form.classList.toggle('busy', now)
}

function haltIt(): void {
  if (!busy || !pending || current === null) return
  say('Halting …')
  // What it came to arrives as the answer; a moment too late is no fault.
  halt(current, pending.key).catch(() => undefined)
}

function sayProgress(event: string, data: unknown): void {
  if (event === 'again') say('The line was cut. Taking it up again …')
  if (event !== 'figures') return
  const leads = (data as Answer['figures']).filter((it) => it.headline && it.role === 'result').map((it) => it.text)
  if (leads.length > 0) say(`Worked: ${leads.join(', ')}. Writing it out …`)
}

function showEmpty(): void {
  const isWritten = entries.childElementCount > 0
  found('empty').hidden = isWritten
  found('sheet-acts').hidden = !isWritten
  offerToTake(current)
}

function lieOpen(id: string | null): void {
  leaveForms()
  if (current !== id) offerToLend(id)
  current = id
  history.replaceState(null, '', id ? `#${id}` : location.pathname)
}

async function turnTo(id: string | null): Promise<void> {
  clearFault()
  putAway(false)
  lieOpen(id)
  const { turns, isShared } = id ? await page(id) : { turns: [], isShared: false }
  if (current !== id) return
  offerToLend(id, isShared)
  answers = []
  entries.replaceChildren()
  for (const turn of turns) {
    const entry = wholeEntry(turn, [...answers], does)
    entry.element.prepend(...struckOf(turn, takeUp))
    entries.append(entry.element)
    written(turn.answer)
  }
  if (id) fillSheet(id)
  else showOnSheet([], [])
  showEmpty()
}

/** A struck branch is taken up again as it was; what stands in its place is struck for it. */
function takeUp(turn: ShownTurn, branch: number): void {
  const id = current
  if (!id || busy) return
  resume(id, turn.n, branch)
    .then(() => turnTo(id))
    .then(() => {
      bringUp(entryNumbered(turn.n))
      say('Taken up again. What stood here is struck now.')
    })
    .catch(sayFault)
}

function fillSheet(id: string): void {
  Promise.all([sheet(id), openQuestions(id)])
    .then(([lines, { open, units }]) => {
      if (current !== id) return
      showOnSheet(lines, open)
      showUnits(units)
    })
    .catch((fault: unknown) => sayFault(fault, () => retry(() => fillSheet(id))))
}

function showOnSheet(lines: readonly SheetLine[], open: readonly Open[]): void {
  showSheet({ lines, open, answers }, ({ word, at }, value) => {
    changeTo(word, at, value).catch(sayFault)
  })
  showHead(lines)
}

/** Decides a word without a message. It is an entry like any other; whoever changes it stays where they are. */
async function changeTo(word: string, at: string, value: string): Promise<void> {
  const id = current ?? (await startPage())
  if (current === null) lieOpen(id)
  await change(id, word, at, value)
  await writtenApart(id)
}

/** What a form was filled in with, as an entry: brought to the top of the window as one that was asked. */
async function writeIn(calculation: string, inputs: Readonly<Record<string, unknown>>): Promise<void> {
  const id = current ?? (await startPage())
  await workIn(id, calculation, inputs)
  lieOpen(id)
  await writtenApart(id)
  bringUp(entryNumbered(answers.length - 1))
}

async function measureIn(system: string): Promise<void> {
  const id = current ?? (await startPage())
  if (current === null) lieOpen(id)
  await units(id, system)
  await writtenApart(id)
}

async function takeBack(): Promise<void> {
  if (current === null) return
  await undo(current)
  await writtenApart(current)
}

/** Takes in what was written without a question: the last turn of the page. */
async function writtenApart(id: string): Promise<void> {
  const { turns } = await page(id)
  const last = turns.at(-1)
  if (current !== id || !last) return
  if (turns.length !== answers.length + 1) {
    await turnTo(id)
    say(fromElsewhere)
    return
  }
  entries.append(wholeEntry(last, [...answers], does).element)
  written(last.answer)
  showEmpty()
  const leads = new Set(
    last.answer.calls.flatMap((it) => it.results.filter((one) => one.headline)).map((it) => it.word),
  )
  const moved = last.answer.changed
    .filter((it) => it.after.role === 'result')
    .toSorted((a, b) => Number(leads.has(b.word)) - Number(leads.has(a.word)))
    .map((it) => `${it.after.label} ${it.before.text} → ${it.after.text}`)
  say(`Written in as entry ${last.n + 1}. ${moved.slice(0, 2).join(', ')}`.trim())
  fillSheet(id)
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
  if (busy) return haltIt()
  const said = text.value.trim()
  if (said === '') text.focus()
  else void send(said)
})
text.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return
  event.preventDefault()
  if (!busy) form.requestSubmit()
})
document.addEventListener('keydown', (event) => {
  if (event.key === 'Escape') haltIt()
})
for (const one of document.querySelectorAll<HTMLButtonElement>('.example'))
  one.addEventListener('click', () => {
    text.value = one.textContent ?? ''
    text.focus()
  })
for (const [id, said] of [
  ['compare', 'Compare the plans'],
  ['usual', 'What is still assumed?'],
] as const)
  found(id).addEventListener('click', () => void send(said))
found('undo').addEventListener('click', () => void takeBack().catch(sayFault))
found<HTMLFormElement>('keep').addEventListener('submit', (event) => {
  event.preventDefault()
  const name = found<HTMLInputElement>('keep-name')
  if (name.value.trim() === '') return name.focus()
  void send(`Keep this as ${name.value.trim()}`)
  name.value = ''
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
letChange({
  change: ({ word, at }, value) => changeTo(word, at, value),
  choices: async (word) =>
    (await calculations()).flatMap((it) => it.fields).find((it) => it.word === word)?.choices ?? [],
})
keepHead(
  (word, value) => void changeTo(word, 'yard', value).catch(sayFault),
  (system) => void measureIn(system).catch(sayFault),
)
keepEarlierPages(
  (id) => open(id, true),
  (id) => {
    if (current === id) void turnTo(null)
  },
)

keepLeaving(() => {
  pending = null
  say('')
  void turnTo(null)
}, say)

let unfolded: HTMLDetailsElement[] = []
addEventListener('beforeprint', () => {
  // A caution that was read further up stands whole there on paper too.
  unfolded = [...document.querySelectorAll<HTMLDetailsElement>('.fold:not([open], .care .fold)')]
  for (const fold of unfolded) fold.open = true
})
addEventListener('afterprint', () => {
  for (const fold of unfolded) fold.open = false
})

keepForms({
  into: found('forms'),
  shown(isShown) {
    for (const id of ['empty', 'entries']) found(id).classList.toggle('away', isShown)
    putAway(false)
    if (isShown) clearFault()
  },
  back(id) {
    if (id !== current) open(id, false)
  },
  writeIn,
})
const named = location.hash.slice(1)
if (named && !isForm(named)) open(named, false)
else
  example()
    .then(({ said, answer }) => {
      const shown = wholeEntry({ n: answer.turn, said, answer, job: null, aside: [] }, [], does)
      shown.element.querySelector(':scope > .acts')?.remove()
      // The first entry of the page has that name itself.
      shown.heading.id = 'asked-example'
      shown.element.setAttribute('aria-labelledby', shown.heading.id)
      found('example').replaceChildren(element('h2', {}, 'A worked entry, to see how it goes'), shown.element)
    })
    .catch(sayFault)
