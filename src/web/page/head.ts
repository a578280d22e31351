// This file is about the head of the page: units, country and paper.
import type { SheetLine } from '../../sheet.ts'
import { found } from './element.ts'

const country = found<HTMLSelectElement>('country')
const units = found<HTMLSelectElement>('units')
const paper = found<HTMLSelectElement>('paper')
const keptAs = 'plumbpost.paper'

/** The head says what the job sheet says. */
export function showHead(lines: readonly SheetLine[]): void {
  country.value = String(lines.find((it) => it.word === 'country')?.value ?? '')
}

/** The units of the talk, as its last turn left them. */
export function showUnits(system: string | null | undefined): void {
  units.value = system === 'metric' ? 'metric' : 'imperial'
}

export function keepHead(decide: (word: string, value: string) => void, measureIn: (system: string) => void): void {
  units.addEventListener('change', () => measureIn(units.value))
  country.addEventListener('change', () => {
    if (country.value !== '') decide('country', country.value)
  })
}

// Where the window is narrow the head shows its name alone until it is opened.
const inside = found('inside')
inside.addEventListener('click', () => {
  const isOpen = inside.parentElement?.classList.toggle('open') ?? false
  inside.setAttribute('aria-expanded', String(isOpen))
})

paper.addEventListener('change', () => {
  lay(paper.value)
  if (paper.value === '') localStorage.removeItem(keptAs)
  else localStorage.setItem(keptAs, paper.value)
})

/** Day and night paper; by itself the page goes with the device. */
function lay(kind: string): void {
  if (kind === '') delete document.documentElement.dataset.paper
  else document.documentElement.dataset.paper = kind
}

const kept = localStorage.getItem(keptAs)
if (kept === 'day' || kept === 'night') {
  paper.value = kept
  lay(kept)
}
