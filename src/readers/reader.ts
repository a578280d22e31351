// This file is about what a reader is: whoever turns a message into the typed request. It knows words, never sums.
import type { Job, Wanted, Reading } from '../../engine/index.ts'
import type { Allowance } from '../allowance.ts'
import type { Request } from '../request.ts'

/** A quantity found in the message, with the tag it is known by. */
export interface Tagged extends Reading {
  readonly tag: string
}

/** What a reader is handed: the message, the quantities the program found in it, and the job so far. */
export interface Heard {
  readonly said: string
  readonly readings: readonly Tagged[]
  readonly job: Job
  /** The word that the whole message picks, of the two that were asked about. */
  readonly picked?: Wanted
}

/** What a reader returns: the request, who read it in the end, and what the person should know about that. */
export interface Heed {
  readonly request: Request
  readonly by: 'offline' | 'model'
  readonly notice?: string
  /** The turn from which on the messages were read as one; not set where one was read alone. */
  readonly since?: number
}

export interface Reader {
  readonly front: 'offline' | 'model'
  /** Never throws for what the person wrote. `halted` where the signal came before it was read: then nobody read it, and nobody else does. */
  read(heard: Heard, allowance: Allowance, signal?: AbortSignal): Promise<Heed | 'halted'>
}
