// This file is about one turn in the making: its pieces so far, who listens to it, and how it is halted.
import type { KeptTurn } from '../store/store.ts'
import type { TurnEvent } from '../turn-event.ts'

/** What was asked: at the end of the talk, or in place of the turn of that number. */
export interface Asked {
  readonly said: string
  readonly key: string | null
  readonly inPlaceOf: number | null
}

export interface Fault {
  readonly code: string
  readonly status: 404 | 409 | 422
  readonly message: string
}
export const isFault = (it: object): it is Fault => 'status' in it

type Hear = (event: TurnEvent, index: number) => void

export class Running {
  readonly events: TurnEvent[] = []
  readonly done: Promise<KeptTurn | Fault>
  private readonly listeners = new Set<Hear>()
  private readonly halting = new AbortController()
  private patience: ReturnType<typeof setTimeout> | undefined
  private isDone = false

  constructor(
    readonly asked: Asked,
    /** How long a turn is worked on when nobody listens any more, so that a cut line can be taken up again. */
    private readonly patienceMs: number,
    make: (running: Running) => Promise<KeptTurn | Fault>,
  ) {
    this.done = make(this).finally(() => {
      this.isDone = true
      clearTimeout(this.patience)
    })
  }

  /** Hears what comes from now on. What is returned is to be called when nobody is there to hear. */
  listen(hear: Hear): () => void {
    clearTimeout(this.patience)
    this.listeners.add(hear)
    return () => {
      if (!this.listeners.delete(hear) || this.listeners.size > 0 || this.isDone) return
      // Without a key nobody can come back for it.
      if (this.asked.key === null) this.halt()
      else this.patience = setTimeout(() => this.halt(), this.patienceMs).unref()
    }
  }

  get signal(): AbortSignal {
    return this.halting.signal
  }

  /** Ends it as soon as may be: what it has come to by then is kept. */
  halt(): void {
    this.halting.abort()
  }

  /** The next piece of it. */
  tell(event: TurnEvent): void {
    const index = this.events.push(event) - 1
    for (const hear of this.listeners) hear(event, index)
  }
}
