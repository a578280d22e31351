// This file is about how long the offline reader takes: by the length of a message, and on what nobody types by mistake.
import { newJob } from '../../engine/index.ts'
import { hear } from '../../src/hearing.ts'
import { readOffline } from '../../src/readers/offline/offline.ts'
import type { Heard } from '../../src/readers/reader.ts'
import { type Hostile, hostileMessages } from '../engine/quantities/hostile-messages.ts'
import { type Measured, measure, type Reference } from './measure.ts'

const usualLimit = 5
const longLimit = 50

const usual = 'How many 3 1/2 in pickets go in a 93 in opening with gaps no wider than 2 1/2 in?'

/** A question at the end of a long story, as people tell it: few sizes, many words. */
const longStory = (characters: number): string => {
  const told =
    'We moved in last spring and the old fence was leaning badly, so my brother and I took it out over two weekends. The neighbour asked us to keep his roses. '
  return `${told.repeat(Math.floor((characters - usual.length) / told.length))}${usual}`
}

const words = (text: string): number => text.split(/[^\p{L}]+/u).reduce((sum, it) => sum + it.toLowerCase().length, 0)
const plainLoop = (text: string, times: number): Reference => ({
  name: `cutting the same message into words ${times} times`,
  run: () => {
    for (let i = 0; i < times; i++) words(text)
  },
})

/** Reading is kept for a message that was heard: each time it is heard anew. */
const readAnew = (heard: Heard): unknown => readOffline({ ...heard })

export const readMeasures = (): Measured[] =>
  (
    [
      ['a usual message', usual, usualLimit],
      ['a message of 4,000 characters', longStory(4000), longLimit],
      ['a message of 16,000 characters', longStory(16_000), undefined],
    ] as const
  ).map(([what, said, limitMs]) => {
    const heard = hear(said, newJob)
    return measure(`reading ${what}, its quantities apart`, () => readAnew(heard), plainLoop(said, 10), {
      ...(limitMs === undefined ? {} : { limitMs }),
      rounds: 20,
    })
  })

const repeated = (what: string, part: string): Hostile => ({
  what,
  ofLength: (characters) => part.repeat(Math.ceil(characters / part.length)),
})

/** Made for the reader of words, beside those made for the reader of quantities. */
const hostile: readonly Hostile[] = [
  repeated('a sum, over and over', `${usual} `),
  repeated('questions with no end', 'how many bags of concrete do i need for the corner posts and the gate posts? '),
  repeated('one word of the trade', 'gate '),
  repeated(
    'sides with no end',
    'the front is 60 ft, then a corner and the left side is 40 ft with a gate 20 ft along, ',
  ),
  repeated('small words', 'do i '),
  repeated('things with prices', '20 bags at $5.98, '),
  repeated('letters of three scripts, in words', 'pickets столб 柵 12 ft '),
  { what: 'brackets in brackets', ofLength: (it) => `${'('.repeat(it / 2)}post${')'.repeat(it / 2)}` },
  ...hostileMessages.filter((_, i) => i % 8 === 0),
]

const kilobytes = [8, 16, 32] as const

export interface ReadingGrowth {
  readonly what: string
  readonly ms: readonly number[]
  /** How many times as long each length takes as the one half as long. */
  readonly ratios: readonly number[]
}

/** How the reader grows with what nobody types by mistake, its quantities read before. */
export const readingGrowth = (): ReadingGrowth[] =>
  hostile.map(({ what, ofLength }) => {
    const ms = kilobytes.map((size) => {
      const heard = hear(ofLength(size * 1000), newJob)
      const start = performance.now()
      readOffline(heard)
      return performance.now() - start
    })
    return { what, ms, ratios: ms.slice(1).map((each, i) => each / (ms[i] as number)) }
  })

// What is read in less is too quick to be timed once.
const timed = 20

export function inWords(growth: readonly ReadingGrowth[]): string {
  const line = ({ what, ms, ratios }: ReadingGrowth): string =>
    `${what}: ${ms.map((it) => it.toFixed(0)).join(', ')} ms, ${ratios.map((it) => it.toFixed(1)).join(' and ')} times for twice as much`
  const slow = growth.filter((it) => (it.ms[0] as number) >= timed)
  const worst = slow.toSorted((a, b) => Math.max(...b.ratios) - Math.max(...a.ratios)).slice(0, 3)
  const slowest = growth.toSorted((a, b) => (b.ms.at(-1) as number) - (a.ms.at(-1) as number)).slice(0, 1)
  return [
    `reading messages at ${kilobytes.join(', ')} kB, ${growth.length} kinds`,
    ...worst.map((it) => `  growing most: ${line(it)}`),
    ...slowest.map((it) => `  slowest: ${line(it)}`),
  ].join('\n')
}
