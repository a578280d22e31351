// This file is about what a note is: a short piece of advice that no sum settles, as a good builder would give it.
import { type ByCountry, type Country, wordingIn } from '../by-country.ts'
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
  /** Telephone numbers, as they are dialled, and grades with a number in them: slots too, and no figures. The text says beside each where it is right. */
  readonly asWritten?: Readonly<Record<string, string>>
  /** Slots whose words hold in one country and not in the next: whom to ring. */
  readonly byCountry?: Readonly<Record<string, ByCountry>>
  /** Its questions sound like a sum’s (“how deep are gas lines”, “is a 94 lb bag too heavy”), and it answers them alone. */
  readonly settles?: true
  /** Something has gone wrong and cannot wait: it is read out alone, before any sum, question or refusal. */
  readonly emergency?: true
  /**
   * What calls it up. Each line is words that must all be in one sentence, in any order and any form; a bar parts those that mean the same:
   * `gravel|stone concrete|cement post`.
   */
  readonly called: readonly string[]
  /** Questions it answers, as people ask them; each must call up this note and no other. */
  readonly asks: readonly string[]
  /** Questions that it answers where the talk is about one of these calculations: “which corner does it start from”, after the brace of a gate. */
  readonly onward?: readonly { readonly after: readonly string[]; readonly asks: readonly string[] }[]
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

/** A note as it is read out in one system of units, and in one country where it is known. */
export function showNote(note: Note, system: System, country?: Country): NoteShown {
  const figures = Object.entries(note.figures ?? {}).map(([name, { label, value, metric }]) => ({
    name,
    label,
    value: figureOf(note, system === 'metric' ? (metric ?? value) : value),
  }))
  const text = note.text.replace(slot, (_, name: string, at: number) => {
    const local = note.byCountry?.[name]
    if (local) return opening(wordingIn(local, country), note.text.slice(0, at))
    const phone = note.asWritten?.[name]
    if (phone !== undefined) return phone
    const found = figures.find((it) => it.name === name)
    if (!found) throw new Error(`the note “${note.name}” has no figure “${name}”`)
    return show(found.value)
  })
  return { text, figures }
}

/** With a capital where it opens a sentence. */
const opening = (words: string, before: string): string =>
  /(^|[.!?]\s)$/.test(before) ? words.charAt(0).toUpperCase() + words.slice(1) : words

function figureOf(note: Note, text: string): Quantity {
  const read = readOne(text)
  if (read?.quantity) return read.quantity
  if (read?.bare) return { kind: 'number', amount: read.bare, unit: 'ratio' }
  throw new Error(`the note “${note.name}” has a figure that cannot be read: “${text}”`)
}
