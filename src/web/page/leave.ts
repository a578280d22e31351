// This file is about leaving for good: the server knows this browser no more, and nothing of what was shown or typed stays in any of its windows.
import { found } from './element.ts'
import { clearFault, sayFault } from './fault.ts'
import { leave, Refused, shutOut } from './server.ts'

const sure =
  'Leave for good?\n\nNobody opens your pages after that, not even you, and links to them are withdrawn. They stay with whoever runs the server. Before you leave, take along what you need, and tear out what shall not be kept.'

/** `closeBook` takes the page that lies open off the screen. */
export function keepLeaving(closeBook: () => void, say: (words: string) => void): void {
  const otherWindows = new BroadcastChannel('plumbpost.left')
  otherWindows.addEventListener('message', () => {
    goOut()
    say('You left, in another window. Nothing of your pages is here any more.')
  })
  // Their time is over, or the secret is another: what stands here is nobody's to read. What is being typed stays.
  addEventListener(shutOut, putOut)
  // Only where a secret is asked is there anybody to leave.
  document.getElementById('leave')?.addEventListener('click', () => {
    if (confirm(sure)) go()
  })

  function go(): void {
    clearFault()
    goOut()
    leave()
      .then(() => {
        otherWindows.postMessage('left')
        say('You have left. Nothing of your pages is here any more. The browser knows the secret until it is closed.')
      })
      .catch(() =>
        sayFault(
          new Refused(
            'Nothing of your pages is on the screen any more, but the server could not be told that you leave, and still knows this browser.',
            true,
          ),
          go,
        ),
      )
  }

  function goOut(): void {
    putOut()
    for (const form of document.forms) form.reset()
    localStorage.clear()
  }

  function putOut(): void {
    closeBook()
    for (const id of ['pages', 'forms', 'slip']) found(id).replaceChildren()
  }
}
