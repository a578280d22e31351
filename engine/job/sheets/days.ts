// This file is about the sheet of days: the calendar of the job, and the last day of the ticket to dig.
import { yard } from '../../places.ts'
import { isoDate } from '../../quantities/calendar.ts'
import { show } from '../../quantities/show.ts'
import { entriesIn, partByPart } from '../calendar-entries.ts'
import type { Block, CalendarEntry, Sheet } from '../sheets.ts'
import { columns, remarksOf, type Site, sizeIn, workedAt } from './site.ts'

export interface Days {
  readonly sheet: Sheet | undefined
  readonly entries: readonly CalendarEntry[]
}

export function daysOf(site: Site): Days {
  const calendar = workedAt(site, 'finishDate', yard)
  const ticket = workedAt(site, 'firstDigDay', yard)
  if (!calendar && !ticket) return { sheet: undefined, entries: [] }
  const table = calendar?.outcome.tables.find((it) => it.title === partByPart)
  const parts = table ? entriesIn(table) : []
  const [first, last, renew] = ['firstDigDay', 'lastTicketDay', 'renewBy'].map((it) => sizeIn(ticket, it))
  const digs = parts.find((it) => it.what === 'holes')
  const isLate = last !== undefined && digs !== undefined && digs.last > isoDate(last)
  const late = `The holes would go on until after the ticket runs out, ${last ? show(last) : ''}. Renew it in time: no hole is dug without a ticket that holds.`
  const days = [
    ['earliest day to dig, if every utility has answered', first],
    ['call again for the ticket by', renew],
    ['ticket runs out', last],
  ] as const
  const known = days.flatMap(([what, day]) => (day ? [{ what, day }] : []))
  const entries: CalendarEntry[] = known
    .filter((it) => it.day !== first)
    .map(({ what, day }) => ({
      what,
      first: isoDate(day),
      last: isoDate(day),
      note: isLate ? late : 'After the last day of the ticket no hole is dug without a new one.',
    }))
  return {
    entries: [...parts, ...entries].sort((a, b) => (a.first < b.first ? -1 : a.first > b.first ? 1 : 0)),
    sheet: {
      title: 'Calendar',
      blocks: [
        ...(isLate ? [{ kind: 'lines', lines: [`• ${late}`] } satisfies Block] : []),
        ...(table ? [{ kind: 'table', table, blanks: ['done'] } satisfies Block] : []),
        ...(known.length > 0
          ? [
              {
                kind: 'table',
                table: {
                  title: 'The ticket to dig',
                  columns: columns('what', 'day'),
                  rows: known.map(({ what, day }) => [what, show(day)]),
                },
              } satisfies Block,
            ]
          : []),
        ...(calendar?.outcome.drawing
          ? [{ kind: 'drawing', svg: calendar.outcome.drawing, caption: 'The job day by day.' } satisfies Block]
          : []),
        { kind: 'lines', lines: remarksOf([calendar, ticket]) },
      ],
    },
  }
}
