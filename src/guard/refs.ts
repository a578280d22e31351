// This file is about refs: what a slot may stand for.

export interface Ref {
  readonly value: number | string | boolean | null
  readonly unit: string | null
  /** exact, about, min or at-least, max or at-most, ceil or rounded-up, range, term, user or said. */
  readonly kind: string
  /** The nouns it may stand before, for what is counted. */
  readonly noun?: readonly string[]
  readonly label: string
  readonly state?: 'good' | 'superseded' | 'failed'
  /** What the program prints for it, unit included. */
  readonly text?: string
  /** How the person spelled it, for what they said. */
  readonly said?: string
}
export type Refs = Readonly<Record<string, Ref>>

export const printed = (ref: Ref): string =>
  ref.text ?? (ref.unit === null ? String(ref.value) : `${ref.value} ${ref.unit}`)
export const isExactKind = (ref: Ref): boolean => /^(exact|term|user|said|ceil|rounded-up)$/.test(ref.kind)
/** Counted things: the number goes with a noun. */
export const isCount = (ref: Ref): boolean =>
  ref.noun !== undefined || (ref.unit === null && typeof ref.value === 'number')
