// This file is about turns in the making at other servers on the same database: a stream that began there goes on here, and what is halted here is halted there.
import { setTimeout as pause } from 'node:timers/promises'
import type { InMaking } from '../store/makings.ts'
import type { KeptTurn, Store } from '../store/store.ts'
import type { Running } from './running.ts'

/** All in ms. */
export interface Pace {
  /** A turn that is done before that is not spoken of: most are, where no model is asked. */
  readonly firstMs: number
  /** How often it is said that a turn is in the making, and how often that is looked for. */
  readonly beatMs: number
  /** Who has not been heard of for so long is taken for dead. By the clock of whoever listens: clocks of two machines are never held against each other. */
  readonly deadMs: number
}
export const usualPace: Pace = { firstMs: 300, beatMs: 1000, deadMs: 6000 }

export class Elsewhere {
  /** What is in the making at this server, and is none of its business here. */
  private readonly own = new Set<string>()

  constructor(
    private readonly store: Store,
    private readonly pace: Pace,
  ) {}

  /** Says from time to time that the turn is in the making here, and halts it when another server asks for that. What is returned ends it. */
  announce(id: string, key: string, running: Running): () => Promise<void> {
    let beat = 0
    let told = -1
    let saying: Promise<void> | undefined
    let isEnded = false
    const name = `${id} ${key}`
    this.own.add(name)
    const say = async (): Promise<void> => {
      try {
        const count = running.events.length
        const answer = await this.store.announce(id, key, beat++, count === told ? null : [...running.events])
        told = count
        if (answer === 'halt') running.halt()
      } catch {
        // Deleted, or the database is away: that is met and said when the turn is kept.
      }
      if (!isEnded) next = later(this.pace.beatMs)
    }
    const later = (ms: number) =>
      setTimeout(() => {
        saying = say()
      }, ms).unref()
    let next = later(this.pace.firstMs)
    return async () => {
      isEnded = true
      clearTimeout(next)
      await saying
      this.own.delete(name)
      if (beat > 0) await this.store.withdraw(id, key).catch(() => undefined)
    }
  }

  /** Tells the pieces of the turn as they come in from the server that makes it. Null where none does, or it has died over it. */
  async follow(id: string, key: string, running: Running): Promise<KeptTurn | null> {
    const heard = new Heard(this.pace.deadMs)
    let isHalting = false
    for (;;) {
      const making = (await this.announced(id)).find((it) => it.key === key)
      if (!making || heard.isDead(making)) return this.store.turnByKey(id, key)
      for (const event of making.events.slice(running.events.length)) running.tell(event)
      if (running.signal.aborted && !isHalting) {
        isHalting = true
        await this.store.askToHalt(id, key)
      }
      await pause(this.pace.beatMs)
    }
  }

  async announced(id: string): Promise<readonly InMaking[]> {
    return (await this.store.announced(id)).filter((it) => !this.own.has(`${id} ${it.key}`))
  }

  /** Halts the turn of that key, or without one whatever is in the making, and waits until it is kept. Null where there is none. */
  async halt(id: string, key: string | null): Promise<KeptTurn | null> {
    const making = (await this.announced(id)).find((it) => key === null || it.key === key)
    if (!making) return null
    await this.store.askToHalt(id, making.key)
    await this.end(id, making.key)
    return this.store.turnByKey(id, making.key)
  }

  async haltAll(id: string): Promise<void> {
    const makings = await this.announced(id)
    await Promise.all(
      makings.map(async ({ key }) => {
        await this.store.askToHalt(id, key)
        await this.end(id, key)
      }),
    )
  }

  /** Waits until it is in the making no more. What a dead server has left is cleared away. */
  private async end(id: string, key: string): Promise<void> {
    const heard = new Heard(this.pace.deadMs)
    for (;;) {
      const making = (await this.announced(id)).find((it) => it.key === key)
      if (!making) return
      if (heard.isDead(making)) return this.store.withdraw(id, key)
      await pause(this.pace.beatMs)
    }
  }
}

/** When the maker of a turn was last heard of, by the steady clock of this machine. */
class Heard {
  private beat: number | undefined
  private at = performance.now()

  constructor(private readonly deadMs: number) {}

  isDead({ beat }: InMaking): boolean {
    if (beat !== this.beat) {
      this.beat = beat
      this.at = performance.now()
    }
    return performance.now() - this.at > this.deadMs
  }
}
