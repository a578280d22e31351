// This file is about how a quantity was said: its own words and those right beside it, kept with what was decided, so that a later message can say it anew.
import type { AsSaid } from '../../engine/index.ts'
import type { Tagged } from './reader.ts'

// So many words on either side, within the sentence and up to the next quantity.
const beside = 4

/** The words of a quantity and those beside it. `readings` are all of the message, in order. */
export function asSaid(said: string, reading: Tagged, readings: readonly Tagged[]): AsSaid {
  const from = Math.max(0, ...readings.filter((it) => it.end <= reading.start).map((it) => it.end))
  const to = Math.min(said.length, ...readings.filter((it) => it.start >= reading.end).map((it) => it.start))
  const before = wordsIn(
    said
      .slice(from, reading.start)
      .split(/[.;?!\n]/)
      .at(-1) ?? '',
  )
  const behind = wordsIn(said.slice(reading.end, to).split(/[.;?!\n]/)[0] ?? '')
  return { said: reading.said, beside: [...before.slice(-beside), ...behind.slice(0, beside)].join(' ') }
}

const wordsIn = (text: string): string[] => text.match(/[\p{L}][\p{L}\p{M}'’]*/gu) ?? []
