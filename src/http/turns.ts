// This file is about turns: each made once, one after the other, kept before it is handed out, and halted when its owner says so.
import { randomUUID } from 'node:crypto'
import type { Answer, Turn } from '../answer.ts'
import type { Answered } from '../assistant.ts'
import { Conflict, type KeptTurn, type Store, Unavailable } from '../store/store.ts'
import type { TurnEvent } from '../turn-event.ts'
import { Elsewhere, type Pace, usualPace } from './elsewhere.ts'
import { type Asked, type Fault, Running } from './running.ts'
import { Stopping } from './stopping.ts'

type Making = (before: readonly Turn[], watch: (event: TurnEvent) => void, signal: AbortSignal) => Promise<Answered>

export class Turns {
  /** The turns in the making of each conversation, in the order they were asked. */
  private readonly running = new Map<string, readonly Running[]>()

  /** What could not be kept for certain, under its key or the one it got here: it may stand. Sent again in the same words without a key, it is that one. */
  private readonly uncertain = new Map<string, Asked>()

  private readonly elsewhere: Elsewhere

  constructor(
    private readonly store: Store,
    private readonly withHtml: (answer: Answer) => unknown,
    private readonly patienceMs: number,
    private readonly mostTurns: number,
    pace: Pace = usualPace,
    private readonly stopping = new Stopping(),
  ) {
    this.elsewhere = new Elsewhere(store, pace)
  }

  /** Begins a turn, or finds the one that the key began. */
  async begin(id: string, asked: Asked, make: Making): Promise<Running | Fault> {
    const inMaking = this.inMaking(id).length
    const turns = await this.store.turnsIn(id)
    if (turns === null) return noConversation
    const { key, inPlaceOf } = asked
    const isKept = inPlaceOf !== null && key !== null && (await this.isBegun(id, key))
    if (inPlaceOf !== null && !isKept && inPlaceOf < turns) await this.elsewhere.haltAll(id)
    // From here to the end nothing is waited for, so that one key begins one turn.
    const known = key === null ? undefined : this.inMaking(id).find((it) => it.asked.key === key)
    if (known) return isSame(known.asked, asked) ? known : keyReused
    this.stopping.check()
    if (inPlaceOf !== null && !isKept) {
      if (inPlaceOf >= turns + inMaking) return noTurn(inPlaceOf, turns)
      // They come after it, so they are set aside with it: nobody waits for their answers.
      for (const it of this.inMaking(id)) it.halt()
    }
    const before = this.inMaking(id)
      .at(-1)
      ?.done.catch(() => undefined)
    const running = new Running(asked, this.patienceMs, async (it) => {
      await before
      return this.make(id, it, make)
    })
    this.running.set(id, [...this.inMaking(id), running])
    this.stopping.watch(running)
    void running.done
      .catch(() => undefined)
      .then(() => {
        const others = this.inMaking(id).filter((it) => it !== running)
        if (others.length > 0) this.running.set(id, others)
        else this.running.delete(id)
      })
    return running
  }

  /** Halts the turn of that key; without a key the one that is being made. What is returned is what it has come to. */
  async halt(id: string, key: string | null): Promise<KeptTurn | Fault> {
    const running = this.inMaking(id).find((it) => key === null || it.asked.key === key)
    running?.halt()
    if (running) return running.done
    if ((await this.store.turnsIn(id)) === null) return noConversation
    // A moment too late is no fault: the turn is there, and whole.
    const kept = (await this.elsewhere.halt(id, key)) ?? (key === null ? null : await this.store.turnByKey(id, key))
    return kept ?? { code: 'nothing-to-halt', status: 409, message: 'No turn is in the making here.' }
  }

  /** Takes a branch that was set aside up again, turn by turn as it was; what stands there now is set aside for it. */
  async resume(id: string, n: number, branch: number): Promise<readonly KeptTurn[] | Fault> {
    await this.haltAll(id)
    const talk = await this.store.read(id)
    if (!talk) return noConversation
    const turns = talk.turns[n]?.aside[branch]
    if (!turns)
      return { code: 'no-branch', status: 404, message: `Nothing was set aside at turn ${n} under that number.` }
    if (talk.written + turns.length > this.mostTurns) return talkFull(this.mostTurns)
    const written: KeptTurn[] = []
    try {
      for (const { said, answer, job, events } of turns)
        written.push(
          await this.store.append(
            id,
            { n: n + written.length, said, answer, job, key: randomUUID(), events },
            talk.written + written.length,
          ),
        )
    } catch (fault) {
      if (!(fault instanceof Conflict)) throw fault
      return {
        code: 'asked-meanwhile',
        status: 409,
        message: 'Something was asked meanwhile. Look again before you go on.',
      }
    }
    return written
  }

  /** Halts all that is in the making, and waits until it is kept. */
  async haltAll(id: string): Promise<void> {
    for (const it of this.inMaking(id)) it.halt()
    await Promise.allSettled([...this.inMaking(id).map((it) => it.done), this.elsewhere.haltAll(id)])
  }

  private async isBegun(id: string, key: string): Promise<boolean> {
    if ((await this.store.turnByKey(id, key)) !== null) return true
    return (await this.elsewhere.announced(id)).some((it) => it.key === key)
  }

  private inMaking(id: string): readonly Running[] {
    return this.running.get(id) ?? []
  }

  /** Makes the turn, or takes it from where it was made or is being made. */
  private async make(id: string, running: Running, make: Making): Promise<KeptTurn | Fault> {
    const { asked } = running
    const key = asked.key ?? this.keyFor(id, asked)
    const earlier =
      (await this.store.turnByKey(id, key)) ??
      (asked.key === null ? null : await this.elsewhere.follow(id, key, running))
    if (earlier) {
      this.uncertain.delete(id)
      if (earlier.said !== asked.said || (asked.inPlaceOf ?? earlier.n) !== earlier.n) return keyReused
      for (const event of earlier.events.slice(running.events.length)) running.tell(event)
      return earlier
    }
    const withdraw = this.elsewhere.announce(id, key, running)
    try {
      return await this.makeHere(id, key, running, make)
    } catch (fault) {
      if (fault instanceof Unavailable) this.remember(id, { ...asked, key })
      throw fault
    } finally {
      await withdraw()
    }
  }

  private async makeHere(id: string, key: string, running: Running, make: Making): Promise<KeptTurn | Fault> {
    const { said, inPlaceOf } = running.asked
    // Another process may write a turn first: then the talk is read again and the turn is made on top of it.
    for (let attempt = 0; ; attempt++) {
      const talk = await this.store.read(id)
      if (!talk) return noConversation
      if (talk.written >= this.mostTurns) return talkFull(this.mostTurns)
      if (inPlaceOf !== null && inPlaceOf >= talk.turns.length) return noTurn(inPlaceOf, talk.turns.length)
      const n = inPlaceOf ?? talk.turns.length
      const pieces: TurnEvent[] = []
      const watch = ({ event, data }: TurnEvent): void => {
        const piece = { event, data: event === 'card' ? this.withHtml(data as Answer) : data }
        pieces.push(piece)
        running.tell(piece)
      }
      const { answer, job, tokens } = await make(talk.turns.slice(0, n), watch, running.signal)
      const events = [...pieces, { event: 'answer' as const, data: this.withHtml(answer) }]
      let kept: KeptTurn
      try {
        kept = await this.store.append(
          id,
          { n, said, answer, job, key, events, ...(tokens === undefined ? {} : { tokens }) },
          talk.written,
        )
      } catch (fault) {
        if (!(fault instanceof Conflict) || attempt >= 5) throw fault
        const theirs = await this.store.turnByKey(id, key)
        if (theirs) return theirs
        continue
      }
      this.uncertain.delete(id)
      running.tell(events.at(-1) as TurnEvent)
      return kept
    }
  }

  private keyFor(id: string, asked: Asked): string {
    const uncertain = this.uncertain.get(id)
    return uncertain?.key && isSame(uncertain, asked) ? uncertain.key : randomUUID()
  }

  private remember(id: string, asked: Asked): void {
    this.uncertain.delete(id)
    this.uncertain.set(id, asked)
    const [oldest] = this.uncertain.keys()
    if (this.uncertain.size > mostUncertain && oldest !== undefined) this.uncertain.delete(oldest)
  }
}

/** A database that is away for long must not fill the memory. */
const mostUncertain = 10_000

const isSame = (a: Asked, b: Asked): boolean => a.said === b.said && a.inPlaceOf === b.inPlaceOf

const keyReused: Fault = {
  code: 'key-reused',
  status: 422,
  message: 'This Idempotency-Key came before with another question. Use a new key for a new question.',
}
const noConversation: Fault = {
  code: 'no-conversation',
  status: 404,
  message: 'This conversation was deleted meanwhile.',
}
const talkFull = (most: number): Fault => ({
  code: 'talk-full',
  status: 409,
  message: `This talk has its ${most} turns, those set aside among them; no talk here holds more. Start a new one.`,
})
const noTurn = (n: number, turns: number): Fault => ({
  code: 'no-turn',
  status: 404,
  message: `There is no turn ${n} here. ${turns === 0 ? 'Nothing has been asked yet.' : `The last is ${turns - 1}.`}`,
})
