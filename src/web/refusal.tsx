// This file is about a refusal as a person's browser shows it: on the book's own paper, in the words a program gets too.
import { Leaf } from './leaf.tsx'

interface Refusal {
  /** What, why, and what to do. */
  readonly message: string
  /** The way to the book; none for who was not let in. */
  readonly hasBook: boolean
}

export const refusalPage = (refusal: Refusal): string => `<!doctype html>${String(<RefusalPage {...refusal} />)}`

const RefusalPage = ({ message, hasBook }: Refusal) => {
  const [, what = message, rest = ''] = /^(.*?[.?!])\s+(.*)$/s.exec(message) ?? []
  return (
    <Leaf title={what} isPrivate>
      <main class="shared">
        <h2 class="asked">{what}</h2>
        {rest && <p>{rest}</p>}
        {hasBook && (
          <a class="back" href="/">
            Open the book
          </a>
        )}
      </main>
    </Leaf>
  )
}
