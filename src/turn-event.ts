// This file is about the pieces an answer arrives in, when a front asks for it in pieces.

/**
 * `read`: how each quantity was understood. `cautions`: what goes with the figures, and comes before any. `call`: one calculation.
 * `figures`: all of them. `card`: the whole answer but for a model's sentences, when there will be some. `prose`: these, guarded. `answer`: the whole.
 */
export interface TurnEvent {
  readonly event: 'read' | 'cautions' | 'call' | 'figures' | 'card' | 'prose' | 'answer'
  readonly data: unknown
}
