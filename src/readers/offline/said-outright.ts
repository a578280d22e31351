// This file is about quantities whose place in the sentence says what they are, however near another name stands.
import type { Word } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { cutsIn } from './cuts-said.ts'
import { diagonalsIn } from './diagonals-said.ts'
import type { Token } from './stems.ts'

/** What a message says outright of the words of a calculation. */
export function saidOutright(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  const needed = new Set(Object.keys(needs))
  return [...cutsIn(message, needed), ...diagonalsIn(message, needed)]
}
