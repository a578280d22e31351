// This file is about what a store of conversations does. An answer acknowledged is an answer kept.
import type { Turn } from '../answer.ts'
import type { TurnEvent } from '../turn-event.ts'
import type { InMaking } from './makings.ts'
import type { LeftRow } from './leaving.ts'
import type { Put, WholeTalk } from './whole-talks.ts'

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
  /** What a model was asked and answered for it, counted or guessed. */
  readonly tokens?: number
}

/** A turn of the talk as it stands. */
export interface TalkTurn extends KeptTurn {
  /** What stood in its place before, once for each time it was asked anew: that turn, and those that followed it. */
  readonly aside: readonly (readonly TalkTurn[])[]
}

/** Somebody else has written a turn, or used that key, meanwhile. */
export class Conflict extends Error {}

/** The database cannot do it now, or the server is about to stop. The message is for whoever asked, the cause for whoever runs the server. */
export class Unavailable extends Error {
  constructor(
    readonly code:
      | 'database-away'
      | 'database-busy'
      | 'database-full'
      | 'database-read-only'
      | 'database-damaged'
      | 'server-stopping',
    message: string,
    cause: unknown,
  ) {
    super(message, { cause })
  }
}

export interface Talk {
  readonly conversation: Conversation
  readonly turns: readonly TalkTurn[]
  /** How many turns were ever written, those set aside among them. */
  readonly written: number
}

export interface Store {
  /** Of nobody in particular where no owner is named. */
  create(owner?: string): Promise<Conversation>
  /** Newest first: the owner's, or all there are where none is named. */
  list(owner?: string): Promise<Conversation[]>
  isOf(id: string, owner: string): Promise<boolean>
  /** Nobody is let in as that owner any more, and the links to their talks are withdrawn. What they kept stays. */
  leave(owner: string): Promise<void>
  hasLeft(owner: string): Promise<boolean>
  /** Keeps the hash of the one link by which it may be read; null withdraws it. False where there is no such conversation. */
  share(id: string, link: string | null): Promise<boolean>
  sharedBy(id: string): Promise<string | null>
  /** What models were asked and answered: in one conversation, or in all of them from one moment until before the other. */
  tokens(of: { readonly id: string } | { readonly since: Date; readonly before: Date }): Promise<number>
  read(id: string): Promise<Talk | null>
  /** How many turns the talk has as it stands. Null where there is none. */
  turnsIn(id: string): Promise<number | null>
  /** A turn that was set aside is found too. */
  turnByKey(id: string, key: string): Promise<KeptTurn | null>
  /**
   * Resolves once the turn is on disk. It stands on the talk as it was when so many turns were `written`: throws Conflict when there are more by now,
   * its key is taken, or the conversation was deleted. One whose number is given already sets that turn and those after it aside.
   * Under a key it is safe to write again where the connection broke meanwhile, and that is done for a while: it stands once. Else throws Unavailable.
   */
  append(id: string, turn: Omit<KeptTurn, 'at'>, written: number): Promise<KeptTurn>
  remove(id: string): Promise<boolean>
  /** Says that a turn is in the making here, with its pieces where there are new ones; hears whether it is to be halted. */
  announce(id: string, key: string, beat: number, events: readonly TurnEvent[] | null): Promise<'go on' | 'halt'>
  /** What any server has announced of that conversation and not withdrawn. */
  announced(id: string): Promise<InMaking[]>
  askToHalt(id: string, key: string): Promise<void>
  withdraw(id: string, key: string): Promise<void>
  /** Every talk, for a backup, one at a time. */
  takeTalks(): AsyncIterable<WholeTalk>
  /** Everybody who has left, for a backup, and from one. */
  takeLeft(): Promise<readonly LeftRow[]>
  putLeft(left: LeftRow): Promise<void>
  /** A talk of a backup. What is there is never written over. */
  putTalk(talk: WholeTalk): Promise<Put>
  /** How often a write was turned back by the database and tried again, since the store was opened. */
  retries(): number
  close(): Promise<void>
}
