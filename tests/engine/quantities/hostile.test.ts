// What nobody types by mistake must be read to its end, and with work in proportion to its length.
// Work is counted, not timed: how often the reader looks at a piece of the message. What is not seen by counting
// (a pattern that starts over at every space) would take minutes at this length, and the test would not end.
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import type { Scanned } from '../../../engine/quantities/scan.ts'
import { hostileMessages } from './hostile-messages.ts'

const count = vi.hoisted(() => ({ on: false, looks: 0, tokens: 0 }))
vi.mock('../../../engine/quantities/scan.ts', async (original) => {
  const actual = await original<typeof import('../../../engine/quantities/scan.ts')>()
  const watched = (tokens: Scanned[]): Scanned[] =>
    new Proxy(tokens, {
      get(target, key, receiver) {
        if (typeof key === 'string' && /^\d/.test(key)) count.looks++
        return Reflect.get(target, key, receiver)
      },
    })
  return {
    ...actual,
    scan: (text: string) => {
      const tokens = actual.scan(text)
      count.tokens += tokens.length
      return count.on ? watched(tokens) : tokens
    },
  }
})

const long = 100_000
const step = 2000

interface Seen {
  readonly looks: number
  readonly tokens: number
}

function looksAt(message: string): Seen {
  Object.assign(count, { on: true, looks: 0, tokens: 0 })
  readQuantities(message)
  return { looks: count.looks, tokens: count.tokens }
}

beforeEach(() => {
  count.on = false
})

describe('hostile messages', () => {
  it.each(hostileMessages)('$what, a hundred thousand characters of it, are read to the end', ({ ofLength }) => {
    const message = ofLength(long)
    let before = 0
    for (const { start, end, said } of readQuantities(message)) {
      // In order, none over another, and where they were typed.
      if (start < before || message.slice(start, end) !== said) expect.fail(`“${said}” stands wrong at ${start}`)
      before = end
    }
  })

  it.each(hostileMessages)('as much again of $what takes as many looks again, and no more', ({ ofLength }) => {
    const [once, twice, thrice] = [1, 2, 3].map((times) => looksAt(ofLength(times * step))) as [Seen, Seen, Seen]
    // A few looks are at the ends of a message, and do not grow with it.
    expect(thrice.looks - twice.looks).toBeLessThanOrEqual((twice.looks - once.looks) * 1.05 + 500)
    expect(thrice.looks).toBeLessThanOrEqual(thrice.tokens * 400 + 500)
  })
})
