// This file is about one quantity that is told of two things: the gap on each side, two pieces of one length.
import type { Heard } from '../readers/reader.ts'

/** “10 mm each side”: the gap at the hinges, and the one at the latch. */
export function isEachSide(one: string, other: string, tag: string | null, { said, readings }: Heard): boolean {
  const reading = readings.find((it) => it.tag === tag)
  const isOfGaps = [one, other].every((it) => it === 'hingeGap' || it === 'latchGap') && one !== other
  return isOfGaps && reading !== undefined && /\b(?:each|either|both|every) (?:side|end|post)s?\b/i.test(said)
}

/** “Two 12 ft pieces”, “two pieces of 12 ft”: one size that is told of two. */
export function isTwice(tag: string | null, { said, readings }: Heard): boolean {
  const reading = readings.find((it) => it.tag === tag)
  return (
    reading !== undefined &&
    /\b(?:two|2|both|twin|pair of)\s+(?:\w+\s+){0,2}(?:of\s+)?$/i.test(said.slice(0, reading.start))
  )
}
