// This file is about what one place in a message was found to hold, before it becomes a reading.
import type Fraction from 'fraction.js'
import type { Quantity, System } from './quantity.ts'
import type { Reading } from './reading.ts'

/** How the person writes: the system they measure in, and whether a comma is their decimal point. */
export interface Habits {
  readonly system?: System
  readonly decimalComma?: boolean
  /** A date that the talk is about: one without its year is near it. */
  readonly near?: Quantity
}

export interface Found {
  /** The token after it. */
  readonly next: number
  readonly quantity: Quantity | null
  readonly bare: Fraction | null
  readonly high?: Quantity
  readonly bareHigh?: Fraction
  readonly section?: Reading['section']
  readonly rivals?: readonly Quantity[]
  /** A price: the unit that it is for. */
  readonly per?: string
  /** An hour of the clock. */
  readonly clock?: true
  /** So many people at work. */
  readonly people?: true
  /** So many rails, one of them in the middle. */
  readonly rails?: true
  /** It is so many times what it was. */
  readonly change?: Reading['change']
  readonly note?: string
}
