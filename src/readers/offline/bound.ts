// This file is about what binding gives: a quantity of the message, the word it was taken for, and how surely.
import type { Tagged } from '../reader.ts'

export interface Bound {
  readonly reading: Tagged
  readonly word: string
  readonly at: string
  readonly score: number
}
