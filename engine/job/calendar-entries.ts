// This file is about the days of a job as entries of a calendar, read off the table of its parts.
import type { Table } from '../outcome.ts'
import { isoDate } from '../quantities/calendar.ts'
import { readQuantities } from '../quantities/read.ts'
import type { CalendarEntry } from './sheets.ts'

/** The table in which a calendar of the job says when each of its parts is. */
export const partByPart = 'Part by part'

/** The entries that such a table holds; a row without a day is left out. */
export const entriesIn = ({ rows }: Table): CalendarEntry[] =>
  rows.flatMap(([what, from, to, decides, slip]) => {
    const [first, last] = [dayIn(from), dayIn(to)]
    if (!first || !last) return []
    const isFixed = decides === 'yes' || Number(slip) === 0
    const note = isFixed ? 'A day lost here moves the end.' : `May slip ${slip} ${Number(slip) === 1 ? 'day' : 'days'}.`
    return [{ what: String(what), first, last, note }]
  })

function dayIn(text: number | string | undefined): string | undefined {
  const read = readQuantities(String(text))[0]?.quantity
  return read?.kind === 'date' ? isoDate(read) : undefined
}
