// This file is about faults: said in place, in plain words, with a way to try again where that may help.
import { found } from './element.ts'
import { Refused } from './server.ts'

const box = found('fault')
const button = found<HTMLButtonElement>('again')
let tryAgain: (() => void) | null = null

export function sayFault(fault: unknown, again: (() => void) | null = null): void {
  const known = fault instanceof Refused
  found('fault-text').textContent = known
    ? fault.message
    : 'Something went wrong on this page. What you wrote is kept here.'
  tryAgain = known && !fault.passing ? null : again
  button.hidden = tryAgain === null
  box.hidden = false
}

export function clearFault(): void {
  box.hidden = true
  tryAgain = null
}

button.addEventListener('click', () => tryAgain?.())
