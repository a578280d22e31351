// This file is about the notes: each is called up by its own questions, holds no figure outside a slot, and says where it comes from.
import { describe, expect, it } from 'vitest'
import { cautionFor } from '../../../engine/cautions/cautions.ts'
import { calculationNamed } from '../../../engine/catalogue.ts'
import { notes } from '../../../engine/notes/notes.ts'
import { showNote } from '../../../engine/notes/note.ts'

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
