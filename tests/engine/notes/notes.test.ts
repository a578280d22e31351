// This file is about the notes: each is called up by its own questions, holds no figure outside a slot, and says where it comes from.
import { describe, expect, it } from 'vitest'
import { cautionFor } from '../../../engine/cautions/cautions.ts'
import { calculationNamed } from '../../../engine/catalogue.ts'
import { notes } from '../../../engine/notes/notes.ts'
import { type Note, showNote } from '../../../engine/notes/note.ts'
import { show } from '../../../engine/quantities/show.ts'

describe('every note', () => {
  it('has a name of its own', () => {
    expect(new Set(notes.map((it) => it.name)).size).toBe(notes.length)
  })

  it.each(notes.map((it) => [it.name, it] as const))(
    '%s holds its figures in slots, and reads well in both systems',
    (_, note) => {
      const written = note.text.replace(/\{\{\w+\}\}/g, '')
      // Names of standard sections are names: a 4x4.
      expect(written.replace(/\b\dx\d{1,2}\b/g, '')).not.toMatch(/\d/)
      for (const name of Object.keys({ ...note.figures, ...note.asWritten })) expect(note.text).toContain(`{{${name}}}`)
      for (const system of ['imperial', 'metric'] as const) {
        const { text } = showNote(note, system)
        expect(text).not.toMatch(/[{}]|undefined|NaN/)
        expect(text.length).toBeLessThan(800)
      }
      // “1 qt” that is not read as a volume would be shown as 1.
      for (const { name, value } of showNote(note, 'imperial').figures)
        if (/[^\d\s/.,]/.test(note.figures?.[name]?.value ?? '')) expect(value.kind, name).not.toBe('number')
      const sentences = note.text.split(/[.!?]\s+/).length
      expect(sentences).toBeGreaterThanOrEqual(2)
      // Whoever is frightened reads one short sentence after the other.
      expect(sentences).toBeLessThanOrEqual(note.emergency ? 9 : 5)
      expect(note.title).not.toMatch(/[.?!]$/)
      expect(note.from).not.toBe('')
      for (const code of note.cautions) expect(cautionFor(code).full).not.toBe('')
    },
  )

  // Law and ownership are decided by others.
  it.each(notes.map((it) => [it.name, it.text] as const))('%s decides no law and no ownership', (_, text) => {
    expect(text).not.toMatch(
      /\b(?:is|are) (?:legal|illegal|lawful|permitted|allowed by law)\b|\byou (?:own|may legally|have the right)\b|\b(?:belongs to|is owned by) (?:you|your neighbou?r)\b|\b(?:meets|complies with) (?:the )?code\b|\bno permit (?:is )?needed\b/i,
    )
  })

  it.each(notes.map((it) => [it.name, it] as const))(
    '%s gives at least two questions and two ways to call it up',
    (_, note) => {
      expect(note.asks.length).toBeGreaterThanOrEqual(2)
      expect(note.called.length).toBeGreaterThanOrEqual(2)
      for (const line of note.called) expect(line.split(' ').length, line).toBeGreaterThanOrEqual(2)
      for (const { after, asks } of note.onward ?? []) {
        expect(asks).not.toEqual([])
        for (const name of after) expect(calculationNamed(name), name).toBeDefined()
      }
    },
  )
})

describe('a note as it is read out', () => {
  const note = (text: string, more: Partial<Note> = {}): Note => ({
    name: 'made-up',
    title: 'Made up',
    text,
    called: [],
    asks: [],
    from: 'common practice, no source',
    cautions: [],
    ...more,
  })

  it('has each figure in the units of whoever reads, and its own where there is no other', () => {
    const both = note('Leave {{gap}}, and {{other}}; {{gap}} again.', {
      figures: { gap: { label: 'gap', value: '1/2 in', metric: '12 mm' }, other: { label: 'other', value: '3' } },
    })
    expect(showNote(both, 'imperial').text).toBe('Leave 1/2 in, and 3; 1/2 in again.')
    expect(showNote(both, 'metric').text).toBe('Leave 12 mm, and 3; 12 mm again.')
    expect(showNote(both, 'metric').figures.map((it) => `${it.name} ${it.label} ${show(it.value)}`)).toEqual([
      'gap gap 12 mm',
      'other other 3',
    ])
  })

  it('says what is ours to mend: a slot without a figure, and a figure that is none', () => {
    expect(() => showNote(note('Leave {{gap}}.'), 'metric')).toThrow('the note “made-up” has no figure “gap”')
    const none = { figures: { gap: { label: 'gap', value: 'a bit' } } }
    expect(() => showNote(note('Leave {{gap}}.', none), 'metric')).toThrow(
      'the note “made-up” has a figure that cannot be read: “a bit”',
    )
  })

  it('has what is written as it is dialled, also where that is nothing', () => {
    expect(showNote(note('Dial {{a}}{{b}}.', { asWritten: { a: '0123', b: '' } }), 'metric').text).toBe('Dial 0123.')
  })

  it.each([
    ['{{whom}}, then dig.', 'Your uncle, then dig.'],
    ['Ask first. {{whom}}, then dig.', 'Ask first. Your uncle, then dig.'],
    ['Ask first? {{whom}}.', 'Ask first? Your uncle.'],
    ['Ask first! {{whom}}.', 'Ask first! Your uncle.'],
    ['Ask {{whom}}.', 'Ask your uncle.'],
    ['Ask first, {{whom}}.', 'Ask first, your uncle.'],
    ['At the site.{{whom}}', 'At the site.your uncle'],
    ['Ask first. Ask {{whom}}.', 'Ask first. Ask your uncle.'],
  ])('%s begins its sentence with a capital, and nothing else', (text, said) => {
    const local = note(text, { byCountry: { whom: { unknown: 'your uncle', elsewhere: 'your aunt' } } })
    expect(showNote(local, 'metric').text).toBe(said)
    expect(showNote(local, 'metric', 'ireland').text).toBe(said.replace('uncle', 'aunt'))
  })
})
