// This file is about what a store of conversations does. An answer acknowledged is an answer kept.
import type { Turn } from '../answer.ts'
import type { TurnEvent } from '../turn-event.ts'

export interface Conversation {
  readonly id: string
  /** The first message, cut at a word. */
  readonly title: string
  readonly created: string
  readonly changed: string
  readonly turns: number
}

export interface KeptTurn extends Turn {
  /** The Idempotency-Key it came with. */
  readonly key: string | null
  readonly at: string
  /** The pieces it was told in, so that a stream can go on after a restart. */
  readonly events: readonly TurnEvent[]
}

/** Somebody else has written that turn, or used that key, meanwhile. */
export class Conflict extends Error {}

export interface Store {
  create(): Promise<Conversation>
  /** Newest first. */
  list(): Promise<Conversation[]>
  read(id: string): Promise<{ readonly conversation: Conversation; readonly turns: readonly KeptTurn[] } | null>
  turnByKey(id: string, key: string): Promise<KeptTurn | null>
  /** Resolves once the turn is on disk. Throws Conflict when its number or key is taken. */
  append(id: string, turn: Omit<KeptTurn, 'at'>): Promise<KeptTurn>
  remove(id: string): Promise<boolean>
  close(): Promise<void>
}
