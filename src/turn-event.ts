// This file is about the pieces an answer arrives in, when a front asks for it in pieces.

/** `read`: how each quantity was understood. `call`: one calculation. `figures`: all of them. `prose`: guarded sentences. `answer`: the whole. */
export interface TurnEvent {
  readonly event: 'read' | 'call' | 'figures' | 'prose' | 'answer'
  readonly data: unknown
}
