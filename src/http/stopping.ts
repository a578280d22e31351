// This file is about a server that is to stop: what is in the making is finished, or halted and kept as far as it got, within a bounded time.
import { Unavailable } from '../store/store.ts'
import type { Running } from './running.ts'

export interface StopPace {
  /** How long answers in the making are waited for, in ms. */
  readonly finishMs: number
  /** How long they are waited for once they are halted, in ms. */
  readonly haltMs: number
}
// Together within the ten seconds that a container is given before it is killed.
const usualPace: StopPace = { finishMs: 5000, haltMs: 3000 }

export class Stopping {
  private readonly running = new Set<Running>()
  private isBegun = false

  /** Whether no new question is taken any more. */
  get begun(): boolean {
    return this.isBegun
  }

  /** Throws when it is too late to begin. */
  check(): void {
    if (this.isBegun)
      throw new Unavailable(
        'server-stopping',
        'This server is about to stop, so I did not begin. Ask again in a moment.',
        new Error('asked while stopping'),
      )
  }

  watch(running: Running): void {
    this.running.add(running)
    const forget = (): void => void this.running.delete(running)
    running.done.then(forget, forget)
  }

  /** Resolves when nothing is in the making any more, or time is up. */
  async finish({ finishMs, haltMs }: StopPace = usualPace): Promise<void> {
    this.isBegun = true
    if (await this.isDoneWithin(finishMs)) return
    for (const it of this.running) it.halt()
    await this.isDoneWithin(haltMs)
  }

  private async isDoneWithin(ms: number): Promise<boolean> {
    let timer: ReturnType<typeof setTimeout> | undefined
    const isLate = new Promise<boolean>((resolve) => {
      timer = setTimeout(() => resolve(false), ms)
    })
    const isDone = Promise.allSettled([...this.running].map((it) => it.done)).then(() => true)
    return Promise.race([isDone, isLate]).finally(() => clearTimeout(timer))
  }
}
