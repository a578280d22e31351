// This file is about one entry in the book: what was asked, the answer first, its sketch beside it, and how it was worked under it.
import { element } from './element.ts'
import { asking, questionsOf } from './questions.ts'
import { layOut, type Section } from './reply.ts'
import type { ShownAnswer } from './server.ts'

/** Long, and seldom read on site: folded where the page is narrow, unfolded when printed. */
const long = new Set(['Working', 'Where it comes from'])
const wide = '(min-width: 46rem)'

const longestQuestion = 400

export function entryOf(said: string, answer: ShownAnswer, send: (text: string) => void): HTMLElement {
  const id = `asked-${answer.turn + 1}`
  const reply = layOut(answer.html)
  const sketches = answer.calls.flatMap((call) => (call.drawing ? [sketchOf(call.drawing)] : []))
  return element(
    'article',
    { class: 'entry', 'aria-labelledby': id },
    element(
      'h2',
      { id, tabindex: '-1', class: 'asked' },
      said.length > longestQuestion ? `${said.slice(0, longestQuestion)} …` : said,
    ),
    element(
      'div',
      { class: 'body' },
      element('div', { class: 'answer' }, reply.answer, questionsOf(answer, send)),
      sketches.length > 0 ? element('div', { class: 'sketches' }, ...sketches) : null,
    ),
    ...reply.rest.filter((it) => it.title !== asking).map((it) => sectionOf(it, answer)),
  )
}

function sectionOf({ title, content }: Section, answer: ShownAnswer): HTMLElement {
  if (title === 'Take care') return careOf({ title, content }, answer.cautions)
  if (!long.has(title)) return element('section', { class: 'open' }, element('h3', {}, title), content)
  const fold = element('details', { class: 'fold' }, element('summary', {}, element('h3', {}, title)), content)
  fold.open = matchMedia(wide).matches
  return fold
}

/** Cautions said in full stand in a box; those that only remind are one quiet line each. */
function careOf({ title, content }: Section, cautions: ShownAnswer['cautions']): HTMLElement {
  const standing = new Set(cautions.filter((it) => it.standing).map((it) => it.text))
  for (const line of content.querySelectorAll('li'))
    if (standing.has(line.textContent?.trim() ?? '')) line.classList.add('standing')
  return element('section', { class: 'care' }, element('h3', {}, title), content)
}

/** The sketch as a picture: it can neither run nor reach anything. Its own description is its text alternative. */
function sketchOf(svg: string): HTMLElement {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml')
  const words = parsed.querySelector('desc')?.textContent ?? parsed.querySelector('title')?.textContent ?? 'Sketch'
  return element(
    'figure',
    { class: 'sketch' },
    element('img', { src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`, alt: words }),
  )
}
