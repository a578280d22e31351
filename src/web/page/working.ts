// This file is about how an entry was worked: what was taken as usual, the sums line by line, tables, and where it all comes from.
import type { Answer, Call } from '../../answer.ts'
import { element } from './element.ts'
import { figureButton } from './figure.ts'
import { originOf, reasonOf, type Within } from './origin.ts'
import { placeInWords, theBy } from './places.ts'
import { openToChange } from './slip.ts'

const wide = '(min-width: 46rem)'

/** Long, and seldom read on site: folded where the page is narrow or an earlier entry shows the like, unfolded when printed. */
function fold(title: string, isNew: boolean, ...content: HTMLElement[]): HTMLElement {
  const it = element('details', { class: 'fold' }, element('summary', {}, element('h3', {}, title)), ...content)
  it.open = isNew && matchMedia(wide).matches
  return it
}

/** Whether a sum is worked that no earlier entry of the page has worked. */
const isNewIn = (calls: readonly Call[], { before }: Within): boolean =>
  calls.some((call) => !before.some((it) => it.calls.some((one) => one.calculation === call.calculation)))

type Told = Pick<Answer, 'calls' | 'words' | 'turn' | 'advice' | 'readAs'>

/** Each figure that nobody said, with the reason for it, and a way to say it. */
export function assumedOf({ calls, words }: Told, within: Within): HTMLElement[] {
  const isTold = new Set<string>()
  const reasonsBefore = new Set(within.before.flatMap((it) => it.words?.usual ?? []).map((it) => it.because))
  const places = new Set(calls.flatMap((it) => it.inputs.filter((one) => one.role === 'assumed')).map((it) => it.at))
  const [one = 'yard'] = places
  // Where all hold at one place, it is named once.
  const everywhere = places.size === 1 ? placeInWords(one) : ''
  const rows = calls.flatMap((call) =>
    call.inputs.flatMap((figure) => {
      const reason = figure.role === 'assumed' ? reasonOf(figure, { words } as Told) : undefined
      const key = `${figure.word} ${figure.at} ${figure.text}`
      if (!reason || isTold.has(key)) return []
      isTold.add(key)
      const place = everywhere ? '' : placeInWords(figure.at)
      const button = figureButton(figure, within)
      const change = element(
        'button',
        { type: 'button', class: 'change', 'aria-label': `Change ${figure.label}` },
        'Change',
      )
      change.addEventListener('click', () => openToChange(button, figure, originOf(figure, within)))
      return [
        element(
          'li',
          { class: 'row' },
          element('span', {}, figure.label.charAt(0).toUpperCase() + figure.label.slice(1), place ? `, ${place}` : ''),
          element('span', { class: 'value' }, button),
          change,
          reasonsBefore.has(reason.because)
            ? null
            : element('span', { class: 'because' }, `since ${reason.because} (${reason.from})`),
        ),
      ]
    }),
  )
  if (rows.length === 0) return []
  return [
    element(
      'section',
      { class: 'assumed' },
      element('h3', {}, everywhere ? `Taken as usual for ${theBy(everywhere)}` : 'Taken as usual'),
      element('ul', { class: 'rows', role: 'list' }, ...rows),
    ),
  ]
}

/** “, for bay 1 of run 2”, where the same is worked for more places than one. */
function whereOf(call: Call, calls: readonly Call[]): string {
  const at = call.results[0]?.at
  const place = at === undefined ? '' : placeInWords(at)
  return place && calls.some((it) => it !== call && it.title === call.title) ? `, for ${theBy(place)}` : ''
}

export const workingOf = ({ calls }: Pick<Answer, 'calls'>, within: Within): HTMLElement[] => {
  const worked = calls.filter((it) => it.steps.length > 0)
  if (worked.length === 0) return []
  return [
    fold(
      'Working',
      isNewIn(worked, within),
      ...worked.map((call) =>
        element(
          'section',
          { class: 'sums' },
          element('h4', {}, call.title + whereOf(call, calls)),
          putInOf(call, within),
          element('ol', { class: 'steps', role: 'list' }, ...call.steps.map(stepOf)),
        ),
      ),
    ),
  ]
}

/** The figures put in that this entry's message did not tell, and that were not taken as usual. */
function putInOf({ inputs }: Call, within: Within): HTMLElement | null {
  const known = inputs.filter((it) => it.role === 'known' || it.role === 'published' || it.role === 'result')
  if (known.length === 0) return null
  return element(
    'ul',
    { class: 'put-in', role: 'list' },
    ...known.map((it) => element('li', {}, `${it.label} `, figureButton(it, within))),
  )
}

/** The reason, then the formula, the numbers put in and the result, one under the other at their equals signs. */
function stepOf({ formula, substituted, result, because }: Call['steps'][number]): HTMLElement {
  const [name = '', ...rest] = formula.split(' = ')
  return element(
    'li',
    { class: 'step' },
    element('span', { class: 'because' }, because.charAt(0).toUpperCase() + because.slice(1)),
    element(
      'div',
      { class: 'sum' },
      element('code', { class: 'name' }, `${name} `),
      element('code', {}, `= ${rest.join(' = ')} `),
      element('span', {}, `= ${substituted} `),
      element('span', {}, '= ', element('strong', {}, result)),
    ),
  )
}

export const tablesOf = ({ calls }: Pick<Answer, 'calls'>): HTMLElement[] =>
  calls.flatMap((call) =>
    call.tables.map((table) => {
      const title = table.title + whereOf(call, calls)
      return element(
        'section',
        { class: 'open' },
        element('h3', {}, title),
        // A long table scrolls in its own box, also with the keyboard.
        element(
          'div',
          { class: 'table', tabindex: '0', role: 'group', 'aria-label': title },
          element(
            'table',
            {},
            element(
              'thead',
              {},
              element('tr', {}, ...table.columns.map((it) => element('th', { scope: 'col' }, it.label))),
            ),
            element('tbody', {}, ...table.rows.map((row) => element('tr', {}, ...row.map(cellOf)))),
          ),
        ),
        call.steps.length > 0
          ? element('p', { class: 'of' }, `Worked by “${call.title}”, as shown under Working.`)
          : null,
      )
    }),
  )

/** What a row is about, where it is said in words, heads the row. */
const cellOf = (cell: number | string, column: number): HTMLElement =>
  column === 0 && typeof cell === 'string' && !/\d/.test(cell)
    ? element('th', { scope: 'row' }, cell)
    : element('td', {}, cellText(cell))

const cellText = (cell: number | string): string =>
  typeof cell === 'number' ? String(Math.round(cell * 1000) / 1000) : cell

export function sourcesOf({ calls, advice }: Pick<Answer, 'calls' | 'advice'>, within: Within): HTMLElement[] {
  const lines = [
    ...calls
      .filter((call) => call.results.length > 0)
      .flatMap((call) => call.sources.map((it) => `${it.fact.charAt(0).toUpperCase()}${it.fact.slice(1)}: ${it.from}`)),
    ...advice.map((it) => `${it.title}: ${it.from}`),
  ]
  if (lines.length === 0) return []
  const isNew = advice.length > 0 || isNewIn(calls, within)
  return [
    fold('Where it comes from', isNew, element('ul', {}, ...[...new Set(lines)].map((it) => element('li', {}, it)))),
  ]
}
