// This file is about advice: the notes that were called up, read out in the person's units and country, with their figures on record.
import { type Country, noteNamed, showNote, type System, yard } from '../engine/index.ts'
import type { Advice } from './answer.ts'
import { figureOf } from './figures.ts'

/** Each note once, in the order it was called up. A name that is no note is passed over. */
export const adviceFor = (names: readonly string[], system: System, country?: Country): Advice[] =>
  [...new Set(names)].flatMap((name, i) => {
    const note = noteNamed(name)
    if (!note) return []
    const id = `n${i + 1}`
    const { text, figures } = showNote(note, system, country)
    return [
      {
        id,
        note: note.name,
        title: note.title,
        text,
        from: note.from,
        figures: figures.map(({ name: figure, label, value }) =>
          figureOf({ ref: `${id}.${figure}`, word: { name: 'note', label }, at: yard, value, role: 'published' }),
        ),
      },
    ]
  })
