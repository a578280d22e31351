// This file is about lessons: a message as it was heard, and what it means.
import type { Calculation } from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import type { Looked } from './features.ts'
import type { MessageKind } from './kinds.ts'

export interface Lesson {
  readonly looked: Looked
  readonly calculation: Calculation
  /** What it asks for; empty where it only tells. */
  readonly results: readonly string[]
  /** Options that it says, by their words. */
  readonly options: ReadonlyMap<string, string>
  /** The words and pairs of words that say so, as `holeShape square`. */
  readonly saying: readonly string[]
  /** Each quantity of the sentence and the word it means; nothing where it means none. */
  readonly meant: readonly { readonly reading: Tagged; readonly spot: number; readonly word: string | null }[]
}

/** A message and what kind of message it is. */
export interface KindLesson {
  readonly looked: Looked
  readonly kind: MessageKind
}

/** A message that tells of a fence side by side, the tag of each of its tokens, and what it asks for. */
export interface WalkLesson {
  readonly looked: Looked
  readonly tags: readonly string[]
  readonly asks: readonly string[]
}
