// What is taken along, read back by programs that are not ours: papaparse (RFC 4180), ical.js (RFC 5545), saxes (XML 1.0), marked (CommonMark).
import ICAL from 'ical.js'
import { marked } from 'marked'
import Papa from 'papaparse'
import { SaxesParser } from 'saxes'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../engine/catalogue.ts'
import { runCalculation } from '../../../src/direct.ts'
import { spreadsheet } from '../../../src/export/csv.ts'
import { calendarFile } from '../../../src/export/ics.ts'
import { talkInMarkdown } from '../../../src/export/md.ts'
import { packOf, standingLine } from '../../../src/export/pack.ts'
import { drawingsInOne } from '../../../src/export/svg.ts'
import { calendar, spacing, turnsOf } from './turns.ts'

/** What an XML parser finds: elements, and attributes by which a picture could act or fetch. Throws where it is not well-formed. */
function read(svg: string): { elements: string[]; acting: string[] } {
  const parser = new SaxesParser({ xmlns: true })
  const [elements, acting]: [string[], string[]] = [[], []]
  parser.on('error', (fault) => {
    throw fault
  })
  parser.on('opentag', ({ name, attributes, uri }) => {
    expect(uri).toBe('http://www.w3.org/2000/svg')
    elements.push(name)
    if (/^(script|foreignObject|image|use|a|iframe|animate|set)$/i.test(name)) acting.push(name)
    acting.push(...Object.keys(attributes).filter((it) => /^on|href/i.test(it)))
  })
  parser.write(svg).close()
  return { elements, acting }
}

describe('CSV', () => {
  it('gives every figure back as the number and the unit that the answer has', async () => {
    const turns = await turnsOf(spacing, calendar)
    const text = await spreadsheet(turns, packOf(turns), { title: 'A talk', caution: standingLine })
    const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: true })
    expect(errors).toEqual([])
    const results = turns.flatMap(({ answer }) => answer.calls.flatMap((call) => call.results))
    expect(results.length).toBeGreaterThan(5)
    for (const { label, value, unit, text: written } of results.filter((it) => typeof it.value === 'number')) {
      const row = data.find((it) => it[0] === label && it[4] === written && it[5] === 'worked')
      expect([label, row?.[3]]).toEqual([label, unit])
      expect(Number(row?.[2])).toBeCloseTo(value as number, 9)
    }
  })

  it('no cell begins a formula, whatever the talk is called', async () => {
    for (const title of ['=cmd|" /C calc"!A0', '+1+1', '-1+1', '@SUM(1)', '\t=1', '\r=1', '＝1+1']) {
      const turns = await turnsOf(spacing)
      const text = await spreadsheet(turns, packOf(turns), { title, caution: standingLine })
      for (const cell of Papa.parse<string[]>(text.replace(/^\uFEFF/, '')).data.flat())
        expect(cell).not.toMatch(/^[=+@\t\r＝]|^-(?!\d+(\.\d+)?$)/)
    }
  })
})

describe('iCalendar', () => {
  it('gives every entry back with its days, its name and what is said of it', async () => {
    const turns = await turnsOf(calendar)
    const pack = packOf(turns)
    expect(pack.calendar.length).toBeGreaterThan(4)
    const text = await calendarFile(pack, { id: 'abc', stamp: '2026-05-20T09:30:00.000Z', caution: standingLine })
    const parsed = new ICAL.Component(ICAL.parse(text))
    const events = parsed.getAllSubcomponents('vevent').map((it) => new ICAL.Event(it))
    expect(
      events.map((it) => {
        // The end that is written is the day after the last.
        const last = it.endDate.clone()
        last.adjust(-1, 0, 0, 0)
        return [it.summary, it.startDate.toString(), last.toString(), it.startDate.isDate]
      }),
    ).toEqual(pack.calendar.map((it) => [`Fence: ${it.what}`, it.first, it.last, true]))
    expect(new Set(events.map((it) => it.uid)).size).toBe(events.length)
    for (const [i, it] of events.entries()) {
      expect(it.description).toContain(standingLine)
      expect(it.description).toContain(pack.calendar[i]?.note)
    }
  })
})

describe('SVG', () => {
  it('the drawings of a talk are one well-formed picture that does nothing and fetches nothing', async () => {
    const { elements, acting } = read(drawingsInOne(await turnsOf(spacing), '5 < 6 & "so"') ?? '')
    expect([elements[0], acting]).toEqual(['svg', []])
    expect(elements.length).toBeGreaterThan(20)
  })

  it('so is the drawing of every calculation that has one', async () => {
    let drawn = 0
    for (const { name, examples } of catalogue) {
      const { drawing } = (await runCalculation(name, { ...examples[0]?.given })) ?? { drawing: null }
      if (drawing === null) continue
      drawn++
      expect([name, read(drawing).acting]).toEqual([name, []])
    }
    expect(drawn).toBeGreaterThan(60)
  }, 60_000)
})

describe('Markdown', () => {
  it('gives back as quotations what was said, one a turn, whatever signs are in it', async () => {
    const said = [
      spacing,
      '# make *the* bay <b>93 in</b> & [x](y) `z` | \\ 1. a',
      '- and with\n---\n    2 in\n===\n1. pickets &lt; 3 in?\n+ wide',
    ]
    const turns = await turnsOf(...said)
    const text = talkInMarkdown(turns, { title: 'A talk', version: packOf(turns).version, date: '2026-11-26' })
    const quoted = marked.lexer(text).flatMap((it) => (it.type === 'blockquote' ? [it.tokens ?? []] : []))
    const plain = quoted.map((tokens) => {
      const html = marked.parser(tokens)
      expect(html).not.toMatch(/<(?!\/?(p|br)\b)/)
      return html
        .replace(/<[^>]+>/g, ' ')
        .replace(/&lt;/g, '<')
        .replace(/&gt;/g, '>')
        .replace(/&quot;/g, '"')
        .replace(/&#39;/g, "'")
        .replace(/&amp;/g, '&')
    })
    expect(plain.map((it) => it.replace(/\s+/g, ' ').trim())).toEqual(said.map((it) => it.replace(/\s+/g, ' ').trim()))
  })
})
