// This file is about the sheets a person takes outside: what stands on each, before anybody decides how paper is filled.
import type { Table } from '../outcome.ts'

/** One part of a sheet. Parts stand one under the other, in their order. */
export type Block =
  /** Plain lines. “label: figure” is set as a ruled row, “Worked from:” as a heading; a line that begins with “• ” or “☐ ” hangs on its sign. */
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  /** `blanks` are the headings of empty columns, to write in on site. */
  | { readonly kind: 'table'; readonly table: Table; readonly blanks?: readonly string[] }
  | { readonly kind: 'drawing'; readonly svg: string; readonly caption: string }
  /** Printed at its true size, over several pages where it must be. `wide` and `high` are millimetres, and so is the viewBox of the svg. */
  | {
      readonly kind: 'full-size'
      readonly svg: string
      readonly wide: number
      readonly high: number
      /** From where to where along it words stand, in millimetres: no cut goes through them. */
      readonly words?: readonly (readonly [from: number, to: number])[]
      readonly caption: string
    }

/** One sheet to print: a title, and its parts one under the other. */
export interface Sheet {
  readonly title: string
  readonly blocks: readonly Block[]
}

/** A day or days in the calendar: ISO dates, the last day included. */
export interface CalendarEntry {
  readonly what: string
  readonly first: string
  readonly last: string
  readonly note: string
}

/** All sheets of one plan, with the days that go into a calendar. */
export interface FieldPack {
  readonly title: string
  /** The plan's version: the turn that it stands at, and a short mark of what was decided. */
  readonly version: string
  readonly paper: 'letter' | 'a4'
  readonly sheets: readonly Sheet[]
  readonly calendar: readonly CalendarEntry[]
}
