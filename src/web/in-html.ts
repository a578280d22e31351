// This file is about an answer's sentences as the page shows them: each cleaned by itself, so that none can reach into another.
import { cautionFor } from '../../engine/index.ts'
import type { Answer } from '../answer.ts'

export interface InHtml {
  readonly prose: string
  readonly notices: readonly string[]
  readonly leftOver: readonly string[]
  readonly remarks: readonly { readonly call: string; readonly html: string }[]
  readonly advice: readonly string[]
  /** Of each caution the one line that reminds of it, as text: for the page, where the whole of it stands further up already. */
  readonly reminders: readonly string[]
}

export const inHtml = (
  { prose, words, advice, calls, cautions, reply }: Answer,
  render: (markdown: string) => string,
): InHtml => ({
  prose: render(prose),
  // A talk that was kept before sentences were told apart has them in its reply alone; beside sums they say nothing that the figures do not.
  notices: words?.notices.map(render) ?? (calls.length === 0 ? [render(reply.split('\n\n### ')[0] ?? '')] : []),
  leftOver: words?.leftOver.map(render) ?? [],
  remarks: words?.remarks.map(({ call, text }) => ({ call, html: render(text) })) ?? [],
  advice: advice.map((it) => render(it.text)),
  reminders: cautions.map(({ code }) => cautionFor(code).standing),
})
