// This file is about one entry in the book: what was asked, the answer first, its sketch beside it, and the working folded under it.
import { element } from './element.ts'
import type { ShownAnswer } from './server.ts'

// Long or seldom read on site: folded, and unfolded when printed.
const folded = new Set(['How I read it', 'Working', 'Where it comes from'])

/** Its questions are asked by the form, in the same words. */
const asking = 'I need to know'

export function entryOf(said: string, answer: ShownAnswer, send: (text: string) => void): HTMLElement {
  const number = answer.turn + 1
  const sections = sectionsOf(answer.html)
  const drawings = answer.calls.flatMap((call) => (call.drawing ? [drawingOf(call.drawing)] : []))
  const entry = element(
    'article',
    { class: 'entry', 'aria-labelledby': `asked-${number}` },
    element(
      'h2',
      { id: `asked-${number}`, tabindex: '-1', class: 'asked' },
      said.length > 400 ? `${said.slice(0, 400)} …` : said,
    ),
    element(
      'div',
      { class: 'body' },
      element('div', { class: 'answer' }, sections.answer, questionsOf(answer, send)),
      drawings.length > 0 ? element('div', { class: 'sketches' }, ...drawings) : null,
    ),
    ...sections.rest.filter((it) => it.title !== asking).map(({ title, content }) => sectionOf(title, content)),
  )
  return entry
}

interface Section {
  readonly title: string
  readonly content: HTMLElement
}

/** The reply, cut at its headings. It was cleaned on the server; it is parsed apart from the page, so nothing in it runs. */
function sectionsOf(html: string): { answer: HTMLElement; rest: Section[] } {
  const parsed = new DOMParser().parseFromString(html, 'text/html')
  const answer = element('div', { class: 'text' })
  const rest: Section[] = []
  let into = answer
  for (const node of [...parsed.body.childNodes]) {
    if (node instanceof HTMLHeadingElement && node.tagName === 'H3') {
      into = element('div', { class: 'text' })
      rest.push({ title: node.textContent ?? '', content: into })
    } else into.append(document.adoptNode(node))
  }
  for (const table of [answer, ...rest.map((it) => it.content)].flatMap((it) => [...it.querySelectorAll('table')])) {
    const box = element('div', { class: 'table', tabindex: '0', role: 'region', 'aria-label': 'Table' })
    table.replaceWith(box)
    box.append(table)
  }
  return { answer, rest }
}

function sectionOf(title: string, content: HTMLElement): HTMLElement {
  if (title === 'Take care') return element('section', { class: 'care' }, element('h3', {}, title), content)
  if (folded.has(title)) return element('details', { class: 'fold' }, element('summary', {}, title), content)
  return element('section', { class: 'open' }, element('h3', {}, title), content)
}

/** The sketch as a picture: it can neither run nor reach anything. Its own description is its text alternative. */
function drawingOf(svg: string): HTMLElement {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml')
  const words = parsed.querySelector('desc')?.textContent ?? parsed.querySelector('title')?.textContent ?? 'Sketch'
  return element(
    'figure',
    { class: 'sketch' },
    element('img', { src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`, alt: words }),
  )
}

/** What the program needs to know: a line to fill in for each. */
function questionsOf(answer: ShownAnswer, send: (text: string) => void): HTMLElement | null {
  const asks = answer.asks.slice(0, 4)
  if (asks.length === 0) return null
  const inputs = asks.map((it, i) => {
    const id = `ask-${answer.turn}-${i}`
    return {
      ask: it,
      row: element(
        'div',
        { class: 'question' },
        element('label', { for: id }, it.question),
        element('input', { id, name: it.word, type: 'text', maxlength: '200' }),
      ),
    }
  })
  const form = element(
    'form',
    { class: 'questions' },
    element('h3', {}, asking),
    ...inputs.map((it) => it.row),
    element('button', { type: 'submit' }, 'Write it in'),
  )
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    const said = inputs.flatMap(({ ask, row }) => {
      const value = row.querySelector('input')?.value.trim() ?? ''
      return value === '' ? [] : [/[\d½¼¾⅛⅜⅝⅞]/.test(value) ? `${labelOf(ask.word)}: ${value}` : value]
    })
    if (said.length > 0) send(said.join('\n'))
  })
  return form
}

/** `holeDiameter` is said “hole diameter”. */
const labelOf = (word: string): string =>
  word.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
