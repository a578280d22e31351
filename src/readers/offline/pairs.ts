// This file is about two quantities that one small word joins, and that tell two things in that order:
// "holes 12 in by 36 in", "300 lbf at 3 ft", "leans 3/4 in over 4 ft".
import { yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { type Owned, weight } from './cue-score.ts'
import type { Token } from './stems.ts'

/** What is known of a message when its pairs are read. */
export interface Told {
  readonly heard: Heard
  readonly message: readonly Token[]
  readonly hits: readonly Owned[]
  readonly needed: ReadonlySet<string>
  /** Which kind of post a hole at that spot is of. */
  readonly holeAt: (spot: number) => string
}

interface Pair {
  readonly joint: RegExp
  readonly first: (it: Tagged) => boolean
  readonly second: (it: Tagged) => boolean
  readonly words: readonly [string, string]
  readonly where: (told: Told, spot: number) => boolean
  readonly at?: (told: Told, spot: number) => string
}

const isLength = (it: Tagged): boolean => it.bare !== null || it.quantity?.kind === 'length'
const isMeasured = (it: Tagged): boolean => it.quantity?.kind === 'length'
const isShare = (it: Tagged): boolean => it.quantity?.kind === 'percent'
const pushes = (it: Tagged): boolean => it.quantity?.kind === 'force' || it.quantity?.kind === 'mass'

const pairs: readonly Pair[] = [
  {
    joint: /^(x|by)$/,
    first: isLength,
    second: isLength,
    words: ['legs', 'legs'],
    where: ({ needed }) => needed.has('legs'),
  },
  {
    joint: /^(x|by)$/,
    first: isLength,
    second: isLength,
    words: ['holeDiameter', 'holeDepth'],
    where: ({ needed, hits }, spot) =>
      (needed.has('holeDiameter') && needed.has('holeDepth')) ||
      hits.some(
        (hit) => hit.word === 'holeDiameter' && hit.sort === 'thing' && hit.to <= spot + 5 && hit.to >= spot - 3,
      ),
    at: ({ holeAt }, spot) => holeAt(spot),
  },
  {
    joint: /^at$/,
    first: pushes,
    second: isMeasured,
    words: ['sideForce', 'forceHeight'],
    where: ({ needed }) => needed.has('sideForce') && needed.has('forceHeight'),
  },
  {
    joint: /^to$/,
    first: isShare,
    second: isShare,
    words: ['moistureNow', 'equilibriumMoisture'],
    where: ({ needed }) => needed.has('moistureNow') && needed.has('equilibriumMoisture'),
  },
  {
    joint: /^(over|in|per|to)$/,
    first: isMeasured,
    second: isMeasured,
    words: ['outOfPlumb', 'plumbOver'],
    where: ({ message }) => message.some(({ stem }) => /^(lean|leaning|plumb|leant|tilt|tilted)$/.test(stem)),
  },
]

/** Every such pair of the message, bound to its two words. */
export function pairsTold(told: Told): Bound[] {
  const { message } = told
  return message.flatMap((token, spot) => {
    const [first, second] = [token.reading, message[spot + 2]?.reading]
    if (!first || !second) return []
    const joint = message[spot + 1]?.stem ?? ''
    return pairs
      .filter((it) => it.joint.test(joint) && it.first(first) && it.second(second) && it.where(told, spot))
      .flatMap(({ words, at }) =>
        [first, second].map((reading, i) => ({
          reading,
          word: words[i] as string,
          at: at?.(told, spot) ?? yard,
          score: weight.byPlace,
        })),
      )
  })
}
