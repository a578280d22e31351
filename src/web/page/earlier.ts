// This file is about the earlier pages of the book: turned to again, or torn out for good.
import { element, found } from './element.ts'
import { sayFault } from './fault.ts'
import { type PageLine, pages, remove } from './server.ts'

const earlier = found<HTMLDetailsElement>('earlier')
const summary = earlier.querySelector('summary') as HTMLElement

export function keepEarlierPages(turnTo: (id: string) => void, tornOut: (id: string) => void): void {
  earlier.addEventListener('toggle', () => {
    if (earlier.open) list().catch(sayFault)
  })
  earlier.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return
    earlier.open = false
    summary.focus()
  })
  document.addEventListener('pointerdown', (event) => {
    if (!earlier.contains(event.target as Node)) earlier.open = false
  })

  async function list(): Promise<void> {
    const lines = (await pages()).filter((it) => it.turns > 0)
    found('pages').replaceChildren(
      ...(lines.length > 0 ? lines.map(lineOf) : [element('li', { class: 'none' }, 'None yet.')]),
    )
  }

  function lineOf({ id, title }: PageLine): HTMLElement {
    const open = element('button', { type: 'button', class: 'turn-to' }, title)
    open.addEventListener('click', () => {
      earlier.open = false
      turnTo(id)
    })
    const tear = element('button', { type: 'button', class: 'tear', 'aria-label': `Tear out: ${title}` }, 'Tear out')
    tear.addEventListener('click', () => {
      if (!confirm(`Tear out this page for good?\n\n${title}`)) return
      remove(id)
        .then(async () => {
          tornOut(id)
          await list()
          // The button that had the focus is gone.
          summary.focus()
        })
        .catch(sayFault)
    })
    return element('li', {}, open, tear)
  }
}
