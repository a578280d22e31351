// This file is about lending a page: a link by which somebody else reads it, until it is withdrawn.
import { found } from './element.ts'
import { sayFault } from './fault.ts'
import { share, withdraw } from './server.ts'

const says = found('lent-says')
const field = found<HTMLInputElement>('lent-link')
const lend = found('lend')
const copy = found('copy-link')
const end = found('withdraw')

let lent: string | null = null

/** Offered of the page that lies open. The server keeps no link, only what it is known by: one that was made before cannot be shown again. */
export function offerToLend(id: string | null, isOut = false): void {
  if (isOut && id === lent && field.value !== '') return
  lent = id
  show('', isOut)
}

function show(link: string, isOut: boolean): void {
  field.value = link
  for (const it of [field, found('lent-label'), copy]) it.hidden = link === ''
  end.hidden = !isOut
  lend.textContent = isOut ? 'Make another link' : 'Make a link'
  copy.textContent = 'Copy the link'
  says.textContent = !isOut
    ? 'Whoever has the link reads this page, with what you write on it later, and can change nothing.'
    : link === ''
      ? 'A link to read this page is out. Another one takes its place.'
      : `Whoever has this link can read the page. ${isHereAlone ? 'It opens on this machine alone, since the server listens to no other.' : ''}`.trim()
}

const isHereAlone = /^(localhost|127\.|\[::1\])/.test(location.hostname)

lend.addEventListener('click', () => {
  const id = lent
  if (id === null) return
  share(id)
    .then((link) => {
      if (lent !== id) return
      show(link, true)
      field.select()
    })
    .catch(sayFault)
})
copy.addEventListener('click', () => {
  void navigator.clipboard.writeText(field.value).then(() => {
    copy.textContent = 'Copied'
  })
})
end.addEventListener('click', () => {
  const id = lent
  if (id === null) return
  withdraw(id)
    .then(() => {
      if (lent !== id) return
      show('', false)
      says.textContent = 'It is withdrawn. Nobody reads the page by it any more.'
      // The button that had the focus is gone.
      lend.focus()
    })
    .catch(sayFault)
})

show('', false)
