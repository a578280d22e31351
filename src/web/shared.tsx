// This file is about a talk as whoever holds its link reads it: what was said and answered, and nothing to press.
import { Leaf } from './leaf.tsx'

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
  <Leaf
    title={title || 'A blank page'}
    cover={
      <p class="by">A page that was shared with you, to read. Its figures were worked for somebody else’s yard.</p>
    }
    isPrivate
  >
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
  </Leaf>
)
