// This file is about a talk as whoever holds its link reads it: what was said and answered, and nothing to press.

interface SharedTurn {
  readonly said: string
  /** The reply, cleaned. */
  readonly html: string
  readonly sketches: readonly { readonly title: string; readonly svg: string }[]
}

interface Shared {
  readonly title: string
  readonly turns: readonly SharedTurn[]
}

export const sharedTalk = (shared: Shared): string => `<!doctype html>${String(<SharedTalk {...shared} />)}`

/** No line ends between 2 and 11/16. */
const betweenInchAndFraction = /(?<=\d) (?=\d+\/\d)/g

const SharedTalk = ({ title, turns }: Shared) => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <meta name="robots" content="noindex" />
      <title>{title || 'A blank page'} · Plumbpost</title>
      <link rel="icon" href="/web/mark.svg" type="image/svg+xml" />
      <link rel="stylesheet" href="/web/page.css" />
    </head>
    <body>
      <header class="cover">
        <h1>Plumbpost</h1>
        <p class="by">A page that was shared with you, to read. Its figures were worked for somebody else’s yard.</p>
      </header>
      <main class="shared" aria-label="Entries">
        {turns.length === 0 ? <p>Nothing has been asked here yet.</p> : null}
        {turns.map(({ said, html, sketches }, i) => (
          <article class="entry" data-number={i + 1}>
            <h2 class="asked">{said}</h2>
            <div class="reply" dangerouslySetInnerHTML={{ __html: html.replace(betweenInchAndFraction, '\u00a0') }} />
            {sketches.map((it) => (
              <img alt={it.title} src={`data:image/svg+xml;base64,${Buffer.from(it.svg).toString('base64')}`} />
            ))}
          </article>
        ))}
      </main>
    </body>
  </html>
)
