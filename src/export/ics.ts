// This file is about the calendar as a file that other calendars read: whole days, each with a name of its own that stays.
import type { CalendarEntry, FieldPack } from '../../engine/index.ts'

export interface CalendarFile {
  /** The conversation's. A calendar that reads the file again changes its entries and makes no second ones. */
  readonly id: string
  /** When the plan was last changed, as 2026-11-26T09:30:00.000Z. */
  readonly stamp: string
  /** Said in every entry. */
  readonly caution: string
}

export async function calendarFile(pack: FieldPack, { id, stamp, caution }: CalendarFile): Promise<string> {
  const { createEvents } = await import('ics')
  const seen = new Map<string, number>()
  const events = pack.calendar.map((entry) => {
    const times = (seen.get(entry.what) ?? 0) + 1
    seen.set(entry.what, times)
    return {
      uid: `${id}-${slug(entry.what)}${times > 1 ? `-${times}` : ''}@plumbpost`,
      timestamp: Date.parse(stamp),
      title: `Fence: ${entry.what}`,
      description: [entry.note, `Plan as of ${pack.version}.`, caution].filter((it) => it !== '').join('\n'),
      start: daysOf(entry.first, 0),
      // A calendar counts the day after the last one as the end.
      end: daysOf(entry.last, 1),
      // You may still be asked to supper.
      transp: 'TRANSPARENT' as const,
    }
  })
  const header = { productId: '-//Plumbpost//Field pack//EN', calName: pack.title }
  const { error, value } = createEvents(events, header)
  if (error || !value) throw new Error(`the calendar cannot be written: ${error?.message ?? 'nothing came of it'}`)
  return folded(value)
}

type Day = [year: number, month: number, day: number]

function daysOf(iso: CalendarEntry['first'], later: number): Day {
  const day = new Date(`${iso}T00:00:00Z`)
  day.setUTCDate(day.getUTCDate() + later)
  return [day.getUTCFullYear(), day.getUTCMonth() + 1, day.getUTCDate()]
}

const slug = (what: string): string =>
  what
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')

/** A line has at most 75 octets (RFC 5545, 3.1); the package counts signs, and “–” is three octets. */
function folded(text: string): string {
  const size = (it: string): number => Buffer.byteLength(it)
  return text
    .replace(/\r\n[ \t]/g, '')
    .split('\r\n')
    .map((line) => {
      const parts = ['']
      for (const sign of line) {
        const room = parts.length === 1 ? 75 : 74
        if (size(`${parts.at(-1)}${sign}`) > room) parts.push(sign)
        else parts[parts.length - 1] += sign
      }
      return parts.join('\r\n ')
    })
    .join('\r\n')
}
