// This file is about what a note is: a short piece of advice that no sum settles, as a good builder would give it.
import type { CautionCode } from '../cautions/caution.ts'
import type { Quantity, System } from '../quantities/quantity.ts'
import { readOne } from '../quantities/read.ts'
import { show } from '../quantities/show.ts'

export interface Note {
  /** `gravel-or-concrete`: how a request names it. */
  readonly name: string
  /** What it is about, as a heading. */
  readonly title: string
  /** The advice, in a few short sentences. Figures stand in it as slots, `{{wait}}`, and nowhere else. */
  readonly text: string
  /** As people would write them; the metric one where the trade's habit differs. */
  readonly figures?: Readonly<Record<string, NoteFigure>>
  /**
   * What calls it up. Each line is words that must all be in one sentence, in any order and any form; a bar parts those that mean the same:
   * `gravel|stone concrete|cement post`.
   */
  readonly called: readonly string[]
  /** Questions it answers, as people ask them; each must call up this note and no other. */
  readonly asks: readonly string[]
  /** Where it comes from, or “common practice, no source”. */
  readonly from: string
  readonly cautions: readonly CautionCode[]
}

export interface NoteFigure {
  readonly label: string
  readonly value: string
  readonly metric?: string
}

export interface NoteShown {
  readonly text: string
  readonly figures: readonly { readonly name: string; readonly label: string; readonly value: Quantity }[]
}

const slot = /\{\{(\w+)\}\}/g

/** A note as it is read out in one system of units. */
export function showNote(note: Note, system: System): NoteShown {
  const figures = Object.entries(note.figures ?? {}).map(([name, { label, value, metric }]) => ({
    name,
    label,
    value: figureOf(note, system === 'metric' ? (metric ?? value) : value),
  }))
  const text = note.text.replace(slot, (_, name: string) => {
    const found = figures.find((it) => it.name === name)
    if (!found) throw new Error(`the note “${note.name}” has no figure “${name}”`)
    return show(found.value)
  })
  return { text, figures }
}

function figureOf(note: Note, text: string): Quantity {
  const read = readOne(text)
  if (read?.quantity) return read.quantity
  if (read?.bare) return { kind: 'number', amount: read.bare, unit: 'ratio' }
  throw new Error(`the note “${note.name}” has a figure that cannot be read: “${text}”`)
}
