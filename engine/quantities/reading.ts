// This file is about what the reader of quantities hands on: where in the message, how it was read, and what else it could mean.
import type Fraction from 'fraction.js'
import type { Quantity } from './quantity.ts'

/** How firmly a quantity was said. `range` runs from `quantity` to `high`. */
export type Firmness = 'exactly' | 'about' | 'at-most' | 'at-least' | 'less-than' | 'more-than' | 'range'

/** One quantity found in a message. */
export interface Reading {
  /** Offsets into the message as it was typed: `message.slice(start, end) === said`. */
  readonly start: number
  readonly end: number
  readonly said: string
  /** Null for a bare number ("12", "a dozen"): then `bare` holds it, and the words around it decide what it counts or measures. */
  readonly quantity: Quantity | null
  readonly bare: Fraction | null
  readonly firmness: Firmness
  /** The upper end of a range; same kind as `quantity` (or as `bare`, in `bareHigh`). */
  readonly high?: Quantity
  readonly bareHigh?: Fraction
  /** A stick of named size: "2x4", "4 by 4", "1x6", "70x19": its name and actual cross-section. `nominal` says the name is not the size. */
  readonly section?: {
    readonly name: string
    readonly thickness: Quantity
    readonly width: Quantity
    readonly nominal: boolean
  }
  /** A term of a proportion, “1:2:3”: a part of something, and nothing else. */
  readonly proportion?: true
  /** An hour of the clock, in `bare` from midnight on: it counts and measures nothing else. */
  readonly clock?: true
  /** People at work told without a number, “me and my brother”, in `bare`: it counts nothing else. */
  readonly people?: true
  /** Rails told without a number, “the middle rail”, in `bare`: it counts nothing else. */
  readonly rails?: true
  /** One of the two measures of a corner point. */
  readonly point?: 'across' | 'along'
  /** The measure that a price is for, “28 dollars a foot”: the whole of nothing. */
  readonly per?: string
  /** It says by how much something changes, “2 in wider”, or how many times it becomes, “half that”, and where the words stand that say so. */
  readonly change?: {
    readonly way: 'more' | 'less' | 'times'
    /** It is moved up or down so far: “drop the top rail by 2 in”. */
    readonly moves?: true
    readonly start: number
    readonly end: number
  }
  /** Other readings that would change the answer, e.g. "2,400 mm" or "2.4 mm"; empty when there is only one. */
  readonly rivals: readonly Quantity[]
  /** Said back to the person when something was decided in reading: "a couple is read as 2". */
  readonly note?: string
}
