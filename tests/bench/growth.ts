// This file is about how reading quantities grows with the message: twice as long should take twice the time, whatever is in it.
import { readQuantities } from '../../engine/quantities/read.ts'
import { type Hostile, hostileMessages } from '../engine/quantities/hostile-messages.ts'

const kilobytes = [25, 50, 100] as const
const rounds = 2

export interface Growth {
  readonly what: string
  /** The best of a few runs at each length, in milliseconds. */
  readonly ms: readonly number[]
  /** How many times as long each length takes as the one half as long: 2 where the work is in proportion, 4 where it is in its square. */
  readonly ratios: readonly number[]
}

const plain: Hostile = {
  what: 'a plain message, over and over',
  ofLength: (characters) => {
    const said =
      'My opening is 7 ft 10 3/8 in, with 3 1/2 in pickets, no gap over 2 in. 14 posts at $12.40, 24 in deep. '
    return said.repeat(Math.ceil(characters / said.length))
  },
}

export const growthMeasures = (): Growth[] => [plain, ...hostileMessages].map(growthOf)

function growthOf({ what, ofLength }: Hostile): Growth {
  const ms = kilobytes.map((size) => {
    const message = ofLength(size * 1000)
    return Math.min(...Array.from({ length: rounds }, () => timeOf(message)))
  })
  return { what, ms, ratios: ms.slice(1).map((each, i) => each / (ms[i] as number)) }
}

function timeOf(message: string): number {
  const start = performance.now()
  readQuantities(message)
  return performance.now() - start
}

// What is read in less is too quick to be timed once.
const timed = 5

/** One line for plain messages, one for the worst of the hostile. */
export function inWords(growth: readonly Growth[]): string {
  const line = ({ what, ms, ratios }: Growth): string =>
    `${what}: ${ms.map((it) => it.toFixed(1)).join(', ')} ms, ${ratios.map((it) => it.toFixed(2)).join(' and ')} times for twice as much`
  const [first, ...hostile] = growth as [Growth, ...Growth[]]
  const slow = hostile.filter((it) => (it.ms[0] as number) >= timed)
  const worst = slow.toSorted((a, b) => Math.max(...b.ratios) - Math.max(...a.ratios)).slice(0, 3)
  const slowest = hostile.toSorted((a, b) => (b.ms.at(-1) as number) - (a.ms.at(-1) as number)).slice(0, 1)
  return [
    `reading quantities at ${kilobytes.join(', ')} kB, ${growth.length} kinds of message`,
    `  ${line(first)}`,
    ...worst.map((it) => `  growing most: ${line(it)}`),
    ...slowest.map((it) => `  slowest: ${line(it)}`),
  ].join('\n')
}
