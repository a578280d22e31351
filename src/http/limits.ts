// This file is about how much is taken from one owner, so that there is enough for the others, and what is said when it is too much.
import type { Context, MiddlewareHandler } from 'hono'
import type { Limits } from '../settings.ts'
import type { Store } from '../store/store.ts'
import { callerOf } from './caller.ts'
import { failed } from './errors.ts'
import { Rate } from './rate.ts'

/** What is worked for somebody: a turn, a change, a sum, a file to take along. Halting never waits. */
const isWork = ({ req }: Context): boolean =>
  (req.method === 'POST' && !req.path.endsWith('/turns/halt')) || /\/export\.[a-z]+$/.test(req.path)

export interface Guards {
  /** So many of these a minute. */
  readonly notTooOften: MiddlewareHandler
  /** One more talk, or the answer that says why not. */
  anotherTalk(c: Context): Promise<Response | null>
  /** A place among those under way, to be given back; or the answer that says that all are taken. */
  place(c: Context): (() => void) | Response
  /** Why no model is asked in this talk any more, for the person; nothing where one is. */
  spared(id: string): Promise<string | undefined>
}

export function createGuards(
  limits: Limits,
  store: Store,
  proxies: readonly string[],
  clock: () => Date = () => new Date(),
): Guards {
  const rate = new Rate(limits.turnsAMinute)
  const underWay = new Map<string, number>()
  const who = (c: Context): string => {
    const visitor = c.get('visitor')
    // A newcomer has no name yet, and could be somebody new each time.
    return visitor === 'newcomer' ? `at ${callerOf(c, proxies).address}` : visitor === 'everybody' ? '' : visitor.owner
  }
  return {
    async notTooOften(c, next) {
      if (limits.turnsAMinute === Infinity || !isWork(c)) return next()
      const seconds = rate.wait(who(c))
      if (seconds > 0)
        return tooMany(
          c,
          'too-often',
          `You asked ${limits.turnsAMinute} times within a minute, which is the most here. Ask again in ${seconds} s.`,
          seconds,
        )
      rate.count(who(c))
      return next()
    },

    async anotherTalk(c) {
      const visitor = c.get('visitor')
      if (limits.talks === Infinity || visitor === 'newcomer') return null
      const kept = (await store.list(visitor === 'everybody' ? undefined : visitor.owner)).length
      return kept < limits.talks
        ? null
        : failed(
            c,
            409,
            'too-many-talks',
            `You keep ${kept} talks, and ${limits.talks} is the most here. Delete one that you need no more, and start again.`,
          )
    },

    place(c) {
      const name = who(c)
      const taken = underWay.get(name) ?? 0
      if (taken >= limits.atOnce)
        return tooMany(
          c,
          'too-many-at-once',
          `You wait for ${taken} answers already, which is the most at once here. Ask again when one of them is there.`,
          2,
        )
      underWay.set(name, taken + 1)
      let isHeld = true
      return () => {
        if (!isHeld) return
        isHeld = false
        const left = (underWay.get(name) ?? 1) - 1
        if (left > 0) underWay.set(name, left)
        else underWay.delete(name)
      }
    },

    async spared(id) {
      const inTalk = limits.tokens === Infinity ? 0 : await store.tokens({ id })
      if (inTalk >= limits.tokens)
        return `This talk has used ${inTalk} of the ${limits.tokens} tokens that a model may be asked for in one. So I read this without a model, as I do from now on; a new talk has its own.`
      const since = new Date(`${clock().toISOString().slice(0, 10)}T00:00:00Z`)
      // What a clock that was wrong has put into another day is of that day.
      const before = new Date(since.getTime() + 86_400_000)
      const today = limits.tokensADay === Infinity ? 0 : await store.tokens({ since, before })
      if (today >= limits.tokensADay)
        return `Today ${today} of the ${limits.tokensADay} tokens were used that a model may be asked for here in a day. So I read this without a model, until midnight UTC.`
      return undefined
    },
  }
}

function tooMany(c: Context, code: string, message: string, seconds: number): Response {
  c.header('Retry-After', String(seconds))
  return failed(c, 429, code, message)
}
