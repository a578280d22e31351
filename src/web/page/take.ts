// This file is about taking a page along: on paper, into a calendar, into a spreadsheet. What cannot be had yet is said in place.
import { element, found } from './element.ts'
import { clearFault, sayFault } from './fault.ts'
import { takeAlong } from './server.ts'

const nav = found('take')
const links = [...nav.querySelectorAll('a')]

/** Offered of the page that lies open, as soon as something is written on it. Of none it names none. */
export function offerToTake(id: string | null): void {
  for (const link of links) {
    const { as } = link.dataset
    link.href = id === null ? `#${as}` : `/api/conversations/${id}/export.${as}`
  }
}

for (const link of links)
  link.addEventListener('click', (event) => {
    event.preventDefault()
    clearFault()
    save(link.href).catch(sayFault)
  })

async function save(href: string): Promise<void> {
  const { file, name } = await takeAlong(href)
  const address = URL.createObjectURL(file)
  element('a', { href: address, download: name }).click()
  // Some browsers begin to read only after the click is over.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
