// This file is about the job sheet: what is known, and who said it.
import type { SheetLine } from '../../sheet.ts'
import { element, found } from './element.ts'

const whose: Record<SheetLine['from'], string> = {
  said: 'you said',
  usual: 'taken as usual',
  worked: 'worked',
  published: 'published',
}

export function showSheet(lines: readonly SheetLine[]): void {
  found('sheet-empty').hidden = lines.length > 0
  found('sheet').replaceChildren(
    ...lines.map((line) =>
      element(
        'div',
        { class: `line ${line.from}` },
        element(
          'dt',
          {},
          line.at === 'yard'
            ? line.label
            : `${line.label} (${line.at.replace(/-posts/g, '').replace(/\+/g, ' and ')} posts)`,
        ),
        element('dd', {}, line.text, ' ', element('span', { class: 'whose' }, whose[line.from])),
      ),
    ),
  )
}
