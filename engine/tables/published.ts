// This file is about reading a figure of a table, which stands there as its source writes it: `20 %`, `48 in`.
import { readOne } from '../quantities/read.ts'
import type { Quantity } from '../quantities/quantity.ts'

const known = new Map<string, Quantity>()

/** The figure as a quantity. Throws where it cannot be read: that is our mistake. */
export function published(text: string): Quantity {
  const before = known.get(text)
  if (before) return before
  const read = readOne(text)?.quantity
  if (!read) throw new Error(`“${text}” in a table cannot be read`)
  known.set(text, read)
  return read
}
