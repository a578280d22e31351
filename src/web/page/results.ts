// This file is about the results of one calculation: those that answer large, the others as ruled rows.
import type { Call, Figure } from '../../answer.ts'
import { element } from './element.ts'
import { figureButton } from './figure.ts'
import type { Within } from './origin.ts'
import { placeInWords, theBy } from './places.ts'

/** Whether a calculation answers what was asked, or only fed one that does. */
export const answers = (call: Call): boolean => call.results.some((it) => it.headline)

/** `prose` are a model's sentences: they come after what answers, and before the rest. */
export function resultsOf(
  call: Call,
  { calls }: { calls: readonly Call[] },
  within: Within,
  prose: HTMLElement | null = null,
): HTMLElement[] {
  if (call.problems.length > 0 || call.results.length === 0)
    return [
      ...call.problems
        .filter((it) => it.code !== 'missing')
        .map((it) => element('p', { class: 'problem' }, it.message)),
      ...(prose ? [prose] : []),
    ]
  const leads = call.results.filter((it) => it.headline)
  const others = call.results.filter((it) => !it.headline)
  const places = new Set(call.results.map((it) => it.at))
  return [
    leads.length === 0 && calls.length > 1
      ? element('h3', {}, `Worked first: ${call.title.charAt(0).toLowerCase()}${call.title.slice(1)}`)
      : null,
    ...leads.map((it) => leadOf(it, call, within)),
    prose,
    others.length > 0
      ? element('ul', { class: 'rows', role: 'list' }, ...others.map((it) => rowOf(it, call, within, places.size > 1)))
      : null,
  ].filter((it) => it !== null)
}

/** `23 bags` large, and what it is of. */
function leadOf(figure: Figure, call: Call, within: Within): HTMLElement {
  const place = placeInWords(figure.at)
  const noun = figure.text.split(' ').at(-1) ?? ''
  const label =
    figure.unit === 'verdict' || figure.text.endsWith(figure.label)
      ? ''
      : // “16 pickets”, and not pickets again: “in one bay”.
        figure.label.startsWith(`${noun}, `) || figure.label.startsWith(`${noun} `)
        ? figure.label.slice(noun.length).replace(/^,? /, '')
        : figure.label
  const of = [label, place ? `for ${theBy(place)}` : ''].filter((it) => it !== '').join(', ')
  return element(
    'p',
    { class: `lead ${figure.unit === 'verdict' ? 'verdict' : ''}`.trim() },
    element('span', { class: 'value' }, figureButton(figure, within)),
    ' ',
    element('span', { class: 'of' }, of, tapeOf(figure, call)),
  )
}

function rowOf(figure: Figure, call: Call, within: Within, withPlace: boolean): HTMLElement {
  const place = withPlace ? placeInWords(figure.at) : ''
  return element(
    'li',
    { class: 'row' },
    element(
      'span',
      {},
      figure.label.charAt(0).toUpperCase() + figure.label.slice(1),
      place ? `, for ${theBy(place)}` : '',
      tapeOf(figure, call),
    ),
    element('span', { class: 'value' }, figureButton(figure, within)),
  )
}

/** A length that no mark of the tape stands for, as the tape has it; not where another result says just that. */
const tapeOf = ({ byTape, at, ref }: Figure, call: Call): string =>
  !byTape || call.results.some((it) => it.ref !== ref && it.at === at && it.text === byTape.text)
    ? ''
    : // No line ends between 2 and 11/16.
      ` (${byTape.text.replaceAll(' ', '\u00a0')} by the tape)`
