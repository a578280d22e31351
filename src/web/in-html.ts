// This file is about an answer's sentences as the page shows them: each cleaned by itself, so that none can reach into another.
import type { Answer } from '../answer.ts'

export interface InHtml {
  readonly prose: string
  readonly notices: readonly string[]
  readonly leftOver: readonly string[]
  readonly remarks: readonly { readonly call: string; readonly html: string }[]
  readonly advice: readonly string[]
}

export const inHtml = ({ prose, words, advice }: Answer, render: (markdown: string) => string): InHtml => ({
  prose: render(prose),
  notices: words?.notices.map(render) ?? [],
  leftOver: words?.leftOver.map(render) ?? [],
  remarks: words?.remarks.map(({ call, text }) => ({ call, html: render(text) })) ?? [],
  advice: advice.map((it) => render(it.text)),
})
