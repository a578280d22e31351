// This file is about one entry in the book. It is written from top to bottom, and nothing that is written moves: the question, how it was read,
// the figures, the sentences, what to take care of, what was assumed, and how it was worked.
import { careOf } from './care.ts'
import { element } from './element.ts'
import { figureButton, touchable } from './figure.ts'
import type { Within } from './origin.ts'
import { placeInWords, theBy } from './places.ts'
import { questionsOf } from './questions.ts'
import { answers, resultsOf } from './results.ts'
import type { ShownAnswer, ShownTurn } from './server.ts'
import { sketchOf } from './sketch.ts'
import { assumedOf, sourcesOf, tablesOf, workingOf } from './working.ts'

const longestQuestion = 400

/** What can be done with an entry from within it. */
export interface Does {
  readonly send: (text: string) => void
  readonly again: (turn: number, said: string) => void
}

/** An entry as it is written in: begun with the question, and finished with the answer. */
export interface Entry {
  readonly element: HTMLElement
  readonly heading: HTMLElement
  /** How each quantity was read. */
  read(readAs: ShownAnswer['readAs']): void
  /** The whole entry but for a model's sentences, for which lines are kept free. */
  card(answer: ShownAnswer): void
  /** Sentences as they come. */
  prose(text: string): void
  /** The whole. */
  finish(answer: ShownAnswer): void
}

export function beginEntry(said: string, turn: number, before: readonly ShownAnswer[], does: Does): Entry {
  const id = `asked-${turn + 1}`
  const shown = said.length > longestQuestion ? `${said.slice(0, longestQuestion)} …` : said
  const heading = element('h2', { id, tabindex: '-1', class: 'asked' }, shown)
  const article = element(
    'article',
    { class: 'entry', 'aria-labelledby': id, 'data-number': String(turn + 1), 'aria-busy': 'true' },
    heading,
  )
  let isRead = false
  let carded: ShownAnswer | null = null
  let lines: HTMLElement | null = null

  const read = (readAs: ShownAnswer['readAs']): void => {
    if (isRead) return
    isRead = true
    const within: Within = { answer: { turn, calls: [], advice: [], readAs }, before }
    if (readAs.length > 0) article.append(readingOf(readAs, within))
  }
  const card = (answer: ShownAnswer): void => {
    if (carded) return
    carded = answer
    read(answer.readAs)
    const within: Within = { answer, before }
    lines =
      answer.prose !== ''
        ? proseOf(answer, within)
        : answer.unwritten
          ? element('p', { class: 'prose' }, answer.unwritten)
          : null
    article.append(...bodyOf(answer, before, lines, does), footOf(said, answer, does))
  }
  return {
    element: article,
    heading,
    read,
    card(answer) {
      card({ ...answer, prose: ' ' })
      if (lines) lines.textContent = 'A sentence or two is being written …'
      lines?.classList.add('free', 'waiting')
    },
    prose(text) {
      if (!lines) return
      lines.classList.remove('waiting')
      lines.textContent = text
    },
    finish(answer) {
      article.setAttribute('aria-busy', 'false')
      if (!carded) return card(answer)
      if (!lines) return
      lines.classList.remove('waiting')
      if (answer.prose !== '') lines.replaceChildren(...proseOf(answer, { answer, before }).childNodes)
      else
        lines.textContent =
          answer.halted === 'writing'
            ? 'Halted here. The figures are whole.'
            : (answer.unwritten ?? 'No sentence was written. The figures are whole.')
      // What outgrows its free lines opens when it is pressed: by itself nothing moves.
      if (lines.scrollHeight > lines.clientHeight + 4) {
        const more = element('button', { type: 'button', class: 'more' }, 'Read on')
        more.addEventListener('click', () => {
          lines?.classList.add('whole')
          more.remove()
        })
        lines.append(more)
      }
    },
  }
}

/** “60 lb” → weight of a bag: 60 lb. */
function readingOf(readAs: ShownAnswer['readAs'], within: Within): HTMLElement {
  const isSame = (a: (typeof readAs)[number], b: (typeof readAs)[number]): boolean =>
    a.figure.word === b.figure.word && a.figure.at === b.figure.at
  const firsts = readAs.filter((it) => readAs.find((other) => isSame(other, it)) === it)
  return element(
    'div',
    { class: 'read' },
    element('h3', {}, 'How I read it'),
    element(
      'ul',
      { role: 'list' },
      ...firsts.map((first) => {
        const all = readAs.filter((it) => isSame(it, first))
        const place = placeInWords(first.figure.at)
        const isAsSaid = all.every((it) => it.said.trim() === it.figure.text)
        return element(
          'li',
          {},
          `${first.figure.label}${place && !place.endsWith(first.figure.label) ? `, ${place}` : ''}: `,
          isAsSaid ? null : element('q', {}, all.map((it) => it.said).join('; ')),
          isAsSaid ? null : ' → ',
          ...all.flatMap((it) => [figureButton(it.figure, within, 'within'), ' ']),
        )
      }),
    ),
  )
}

function bodyOf(
  answer: ShownAnswer,
  before: readonly ShownAnswer[],
  prose: HTMLElement | null,
  does: Does,
): HTMLElement[] {
  const within: Within = { answer, before }
  const { html } = answer
  const order = answer.calls.toSorted((a, b) => Number(answers(b)) - Number(answers(a)))
  const questions = questionsOf(answer, does.send)
  // Where nothing answers yet, what is still to be told comes before what was worked meanwhile.
  const asksFirst = !order.some(answers)
  const text = element(
    'div',
    { class: 'answer' },
    asksFirst ? questions : null,
    ...html.notices.map((it) => wordsOf(it, answer, within)),
    ...order.flatMap((call, i) => [
      ...resultsOf(call, answer, within, i === 0 ? prose : null),
      ...html.remarks.filter((it) => it.call === call.id).map((it) => wordsOf(it.html, answer, within)),
    ]),
    order.length === 0 ? prose : null,
    ...answer.advice.map((it, i) =>
      element('section', {}, element('h3', {}, it.title), wordsOf(html.advice[i] ?? '', answer, within)),
    ),
    ...html.leftOver.map((it) => wordsOf(it, answer, within)),
    changesOf(answer, within),
    asksFirst ? null : questions,
  )
  const sketches = answer.calls.flatMap((call) => {
    const { drawing } = call
    return drawing ? [sketchOf({ ...call, drawing }, within)] : []
  })
  return [
    element(
      'div',
      { class: 'body' },
      text,
      sketches.length > 0 ? element('div', { class: 'sketches' }, ...sketches) : null,
    ),
    // A comparison answers by its table alone.
    ...(asksFirst ? tablesOf(answer) : []),
    careOf(answer, before),
    ...(asksFirst ? [] : tablesOf(answer)),
    ...assumedOf(answer, within),
    ...workingOf(answer, within),
    ...sourcesOf(answer, within),
  ]
}

/** Words of the program or a model, cleaned on the server and parsed apart from the page, so that nothing in them runs. */
function wordsOf(html: string, answer: ShownAnswer, within: Within): HTMLElement {
  const parsed = new DOMParser().parseFromString(html, 'text/html')
  const text = element('div', { class: 'text' }, ...[...parsed.body.childNodes].map((it) => document.adoptNode(it)))
  for (const table of text.querySelectorAll('table')) {
    const box = element('div', { class: 'table', tabindex: '0', role: 'group', 'aria-label': 'Table' })
    table.replaceWith(box)
    box.append(table)
  }
  touchable(text, answer.figures, within)
  return text
}

function proseOf(answer: ShownAnswer, within: Within): HTMLElement {
  const text = wordsOf(answer.html.prose, answer, within)
  text.classList.add('prose')
  return text
}

function changesOf(answer: ShownAnswer, within: Within): HTMLElement | null {
  if (answer.changed.length === 0) return null
  return element(
    'section',
    { class: 'changed' },
    element('h3', {}, 'What changed'),
    element(
      'ul',
      { class: 'rows', role: 'list' },
      ...answer.changed.map(({ before, after, at }) => {
        const place = placeInWords(at)
        return element(
          'li',
          { class: 'row' },
          element('span', {}, after.label, place ? `, for ${theBy(place)}` : ''),
          element(
            'span',
            { class: 'value' },
            element('del', {}, before.text),
            ' ',
            element('ins', {}, figureButton(after, within)),
          ),
        )
      }),
    ),
  )
}

/** What is done with a whole entry stands at its foot, out of the way of what is read. */
function footOf(said: string, answer: ShownAnswer, { again }: Does): HTMLElement {
  const anew = element('button', { type: 'button' }, 'Strike and write again')
  anew.addEventListener('click', () => again(answer.turn, said))
  const copy = element('button', { type: 'button' }, 'Copy this entry')
  copy.addEventListener('click', () => {
    void navigator.clipboard.writeText(`${said}\n\n${answer.reply}\n`).then(() => {
      copy.textContent = 'Copied'
    })
  })
  return element('footer', { class: 'acts' }, anew, copy)
}

/** An earlier figure that comes out differently now is struck where it stands, and written again beside it. */
export function strikeIn(entries: HTMLElement, { turn, calls, changed }: ShownAnswer): void {
  if (changed.length === 0) return
  // What is worked again in this entry replaces what stood there, whether or not it was counted among the changes.
  const now = new Map(
    [...calls.flatMap((it) => it.results), ...changed.map((it) => it.after)].map((it) => [
      `${it.word} ${it.at}`,
      it.text,
    ]),
  )
  for (const fig of entries.querySelectorAll<HTMLElement>(
    `.entry:not([data-number="${turn + 1}"]) .answer .value .fig`,
  )) {
    const { word, at, text } = fig.dataset
    const anew = now.get(`${word} ${at}`)
    if (anew === undefined || anew === text || fig.closest('del, ins, .struck')) continue
    const old = element('del', {})
    fig.replaceWith(old, element('ins', { class: 'now' }, anew, element('small', {}, ` entry ${turn + 1}`)))
    old.append(fig)
  }
  // In rows of what was assumed too, where the person has said it since.
  for (const { word, at, before, after } of changed)
    for (const fig of entries.querySelectorAll<HTMLElement>(
      `.entry:not([data-number="${turn + 1}"]) .assumed .value .fig`,
    )) {
      if (fig.dataset.word !== word || fig.dataset.at !== at || fig.dataset.text !== before.text || fig.closest('del'))
        continue
      const old = element('del', {})
      fig.replaceWith(old, element('ins', { class: 'now' }, after.text, element('small', {}, ` entry ${turn + 1}`)))
      old.append(fig)
    }
}

/** A whole entry, of a page that is opened again. */
export function wholeEntry({ n, said, answer }: ShownTurn, before: readonly ShownAnswer[], does: Does): Entry {
  const entry = beginEntry(said, n, before, does)
  entry.finish(answer)
  return entry
}
