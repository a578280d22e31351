// This file is about what the reading of a fence told side by side has learned.
import type { Table } from '../taught/table.ts'

export interface WalkWeights {
  /** Tags that a token was ever seen with, by its shape; a word that was never seen may be nothing, or a side’s name. */
  readonly seen: Readonly<Record<string, readonly string[]>>
  /** For each tag, by the features of a token. */
  readonly tags: Table
  /** For each result, by the features of a message: whether it asks for that; `fence` where it tells a fence side by side at all. */
  readonly asks: Table
}
