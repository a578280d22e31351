// This file is about a refusal as a person's browser shows it: on the book's own paper, in the words a program gets too.

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
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="robots" content="noindex" />
        <title>{what} · Plumbpost</title>
        <link rel="icon" href="/web/mark.svg" type="image/svg+xml" />
        <link rel="stylesheet" href="/web/page.css" />
      </head>
      <body>
        <header class="cover">
          <h1>Plumbpost</h1>
        </header>
        <main class="shared">
          <h2 class="asked">{what}</h2>
          {rest && <p>{rest}</p>}
          {hasBook && (
            <a class="back" href="/">
              Open the book
            </a>
          )}
        </main>
      </body>
    </html>
  )
}
