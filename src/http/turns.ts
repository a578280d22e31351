// This file is about turns: each made once, kept before it is handed out, whole or in pieces that can be taken up again.
import type { Answer, Turn } from '../answer.ts'
import type { Answered } from '../assistant.ts'
import { Conflict, type KeptTurn, type Store } from '../store/store.ts'
import type { TurnEvent } from '../turn-event.ts'

export interface Fault {
  readonly code: string
  readonly status: 422 | 404 | 500
  readonly message: string
}
type Making = (before: readonly Turn[], watch: (event: TurnEvent) => void) => Promise<Answered>

/** A turn as it is being made: its pieces so far, and whoever listens. */
export interface Running {
  readonly said: string
  readonly events: TurnEvent[]
  readonly done: Promise<KeptTurn | Fault>
  listen(hear: (event: TurnEvent, index: number) => void): () => void
}

export class Turns {
  private readonly queues = new Map<string, Promise<unknown>>()
  private readonly running = new Map<string, Running>()

  constructor(
    private readonly store: Store,
    private readonly withHtml: (answer: Answer) => unknown,
  ) {}

  /** Begins a turn, or finds the one that the key began. Turns of one conversation are made one after the other. */
  begin(id: string, said: string, key: string | null, make: Making): Running {
    const known = key === null ? undefined : this.running.get(`${id}\n${key}`)
    if (known) return known
    const events: TurnEvent[] = []
    const listeners = new Set<(event: TurnEvent, index: number) => void>()
    const tell = (event: TurnEvent): void => {
      const index = events.push(event) - 1
      for (const hear of listeners) hear(event, index)
    }
    const before = this.queues.get(id) ?? Promise.resolve()
    const done = before.then(() => this.make(id, said, key, make, tell))
    const quiet = done.catch(() => undefined)
    this.queues.set(id, quiet)
    const running: Running = {
      said,
      events,
      done,
      listen: (hear) => {
        listeners.add(hear)
        return () => void listeners.delete(hear)
      },
    }
    if (key !== null) this.running.set(`${id}\n${key}`, running)
    void quiet.then(() => {
      if (key !== null) this.running.delete(`${id}\n${key}`)
      if (this.queues.get(id) === quiet) this.queues.delete(id)
    })
    return running
  }

  private async make(
    id: string,
    said: string,
    key: string | null,
    make: Making,
    tell: (event: TurnEvent) => void,
  ): Promise<KeptTurn | Fault> {
    const earlier = key === null ? null : await this.store.turnByKey(id, key)
    if (earlier) {
      if (earlier.said !== said)
        return {
          code: 'key-reused',
          status: 422,
          message: 'This Idempotency-Key came before with another text. Use a new key for a new question.',
        }
      for (const event of earlier.events) tell(event)
      return earlier
    }
    // Another process may write the same turn first: then the talk is read again and the turn is made on top of it.
    for (let attempt = 0; ; attempt++) {
      const found = await this.store.read(id)
      if (!found) return { code: 'no-conversation', status: 404, message: 'This conversation was deleted meanwhile.' }
      const pieces: TurnEvent[] = []
      const { answer, job } = await make(found.turns, (event) => {
        pieces.push(event)
        tell(event)
      })
      const events = [...pieces, { event: 'answer' as const, data: this.withHtml(answer) }]
      const turn = { n: found.turns.length, said, answer, job, key, events }
      let kept: KeptTurn
      try {
        kept = await this.store.append(id, turn)
      } catch (fault) {
        if (!(fault instanceof Conflict) || attempt >= 5) throw fault
        const theirs = key === null ? null : await this.store.turnByKey(id, key)
        if (theirs) return theirs
        continue
      }
      tell(events.at(-1) as TurnEvent)
      return kept
    }
  }
}

export const isFault = (it: KeptTurn | Fault): it is Fault => 'status' in it
