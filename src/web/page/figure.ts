// This file is about figures on the page: each is a button that tells where it comes from.
import type { Figure } from '../../answer.ts'
import { element } from './element.ts'
import { originOf, type Within } from './origin.ts'
import { offerSlip, ofFigure } from './slip.ts'

/** A figure to be touched. What it tells is its description too, so that it is read out with it. */
export function figureButton(figure: Figure, within: Within, kind = ''): HTMLElement {
  const origin = originOf(figure, within)
  const button = element(
    'button',
    {
      type: 'button',
      class: `fig ${kind}`.trim(),
      'data-word': figure.word,
      'data-at': figure.at,
      'data-text': figure.text,
      'aria-description': origin,
    },
    figure.text,
  )
  offerSlip(button, ofFigure(figure, origin))
  return button
}

/** Figures that stand in sentences become figures to be touched: the longest first, and whole ones only. */
export function touchable(root: HTMLElement, figures: readonly Figure[], within: Within): void {
  const byText = new Map(figures.filter((it) => /\d/.test(it.text) && it.text.length > 2).map((it) => [it.text, it]))
  if (byText.size === 0) return
  const longestFirst = [...byText.keys()].sort((a, b) => b.length - a.length)
  const any = new RegExp(
    `(?<![\\d./′″,])(?:${longestFirst.map((it) => it.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')).join('|')})(?![\\d/]|[.,]\\d|[a-z])`,
    'gu',
  )
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT)
  const texts: Text[] = []
  while (walker.nextNode()) texts.push(walker.currentNode as Text)
  for (const text of texts) {
    if (text.parentElement?.closest('button, a, h3')) continue
    const parts: (Node | string)[] = []
    let from = 0
    for (const match of text.data.matchAll(any)) {
      parts.push(text.data.slice(from, match.index), figureButton(byText.get(match[0]) as Figure, within, 'within'))
      from = match.index + match[0].length
    }
    if (parts.length > 0) text.replaceWith(...parts, text.data.slice(from))
  }
}
