// The calendar file, held against RFC 5545: lines, escapes, whole days, names that stay.
import { describe, expect, it } from 'vitest'
import type { CalendarEntry, FieldPack } from '../../../engine/index.ts'
import { calendarFile } from '../../../src/export/ics.ts'

const file = { id: '7c1d', stamp: '2026-05-20T09:30:00.000Z', caution: 'Buried lines: have them located, and wait.' }
const pack = (...calendar: CalendarEntry[]): FieldPack => ({
  title: 'Field pack',
  version: 'turn 3, mark 4F2A90',
  paper: 'letter',
  sheets: [],
  calendar,
})
const holes: CalendarEntry = { what: 'holes', first: '2026-06-05', last: '2026-06-06', note: 'May slip 3 days.' }
const unfolded = (text: string): string[] => text.replace(/\r\n[ \t]/g, '').split('\r\n')

describe('a calendar file', () => {
  it('is one VCALENDAR with a VEVENT for each entry, every line ended by CR and LF', async () => {
    const text = await calendarFile(pack(holes, { ...holes, what: 'posts' }), file)
    expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/)
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
    const lines = unfolded(text)
    expect(lines[0]).toBe('BEGIN:VCALENDAR')
    expect(lines).toContain('VERSION:2.0')
    expect(lines.filter((it) => it.startsWith('PRODID:'))).toHaveLength(1)
    expect(lines.filter((it) => it === 'BEGIN:VEVENT')).toHaveLength(2)
    expect(lines.filter((it) => it === 'END:VEVENT')).toHaveLength(2)
  })

  it('gives whole days, the end the day after the last, over the end of a month and a leap day too', async () => {
    const ends = async (first: string, last: string): Promise<string[]> =>
      unfolded(await calendarFile(pack({ ...holes, first, last }), file)).filter((it) => /^DT(START|END)/.test(it))
    expect(await ends('2026-06-05', '2026-06-06')).toEqual(['DTSTART;VALUE=DATE:20260605', 'DTEND;VALUE=DATE:20260607'])
    expect(await ends('2026-06-30', '2026-06-30')).toEqual(['DTSTART;VALUE=DATE:20260630', 'DTEND;VALUE=DATE:20260701'])
    expect(await ends('2028-02-28', '2028-02-28')).toEqual(['DTSTART;VALUE=DATE:20280228', 'DTEND;VALUE=DATE:20280229'])
    expect(await ends('2026-12-31', '2026-12-31')).toEqual(['DTSTART;VALUE=DATE:20261231', 'DTEND;VALUE=DATE:20270101'])
  })

  it('has no line of more than 75 octets, and none that is cut within a sign', async () => {
    const long = { ...holes, what: 'Löcher – 7′ 10″ × 90°, “tief”', note: '½ → ″ '.repeat(60).trim() }
    const text = await calendarFile(pack(long), file)
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
    expect(unfolded(text).join('\n')).toContain(long.note)
    expect(text).not.toContain('\uFFFD')
  })

  it('escapes commas, semicolons, backslashes and line ends, so that no text becomes a property', async () => {
    const sly = { ...holes, what: 'holes, posts; \\rails', note: 'one\nATTENDEE:mailto:x@example.org' }
    const lines = unfolded(await calendarFile(pack(sly), file))
    expect(lines).toContain('SUMMARY:Fence: holes\\, posts\\; \\\\rails')
    expect(lines.some((it) => it.startsWith('ATTENDEE'))).toBe(false)
    expect(lines.find((it) => it.startsWith('DESCRIPTION:'))).toContain('one\\nATTENDEE')
  })

  it('names each entry by the talk and what it is, the same tomorrow, and never two alike', async () => {
    const uids = async (...entries: CalendarEntry[]): Promise<string[]> =>
      unfolded(await calendarFile(pack(...entries), file)).filter((it) => it.startsWith('UID:'))
    const moved = { ...holes, first: '2026-07-01', last: '2026-07-02' }
    expect(await uids(holes)).toEqual(['UID:7c1d-holes@plumbpost'])
    expect(await uids(moved)).toEqual(await uids(holes))
    expect(new Set(await uids(holes, moved)).size).toBe(2)
  })

  it('carries the stamp that it was handed, the plan and the caution, and no clock of its own', async () => {
    const text = await calendarFile(pack(holes), file)
    const lines = unfolded(text)
    expect(lines).toContain('DTSTAMP:20260520T093000Z')
    const words = lines.find((it) => it.startsWith('DESCRIPTION:'))
    expect(words).toContain('Buried lines: have them located\\, and wait.')
    expect(words).toContain('turn 3\\, mark 4F2A90')
    expect(await calendarFile(pack(holes), file)).toBe(text)
  })
})
