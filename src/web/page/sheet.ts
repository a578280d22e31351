// This file is about the job sheet: what is known, where it holds, and who said it.
import type { SheetLine } from '../../sheet.ts'
import { element, found } from './element.ts'
import { placeInWords, theBy } from './places.ts'

const whose: Record<SheetLine['from'], string> = {
  said: 'you said',
  usual: 'taken as usual',
  worked: 'worked',
  published: 'published',
}

export function showSheet(lines: readonly SheetLine[]): void {
  found('sheet-empty').hidden = lines.length > 0
  const places = [...new Set(lines.map((it) => it.at))]
  found('sheet').replaceChildren(
    ...places.flatMap((at) => {
      const place = placeInWords(at)
      const rows = lines.filter((it) => it.at === at).map(rowOf)
      return [place ? element('h3', {}, `For ${theBy(place)}`) : null, element('dl', {}, ...rows)].filter(
        (it) => it !== null,
      )
    }),
  )
}

const rowOf = (line: SheetLine): HTMLElement =>
  element(
    'div',
    { class: `line ${line.from}` },
    element('dt', {}, line.label),
    element('dd', {}, line.text, ' ', element('span', { class: 'whose' }, whose[line.from])),
  )
