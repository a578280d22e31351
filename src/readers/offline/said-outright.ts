// This file is about quantities whose place in the sentence says what they are, however near another name stands.
import { type Job, type Word, yard } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import { cutsIn } from './cuts-said.ts'
import { diagonalsIn } from './diagonals-said.ts'
import { namedAfter } from './named-after.ts'
import type { Token } from './stems.ts'

/** What a message says outright of the words of a calculation. */
export function saidOutright(
  message: readonly Token[],
  needs: Readonly<Record<string, Word>>,
  { asked }: Job,
): Bound[] {
  const needed = new Set(Object.keys(needs))
  // “12 % or less”: a meter reads no such thing.
  const limit = needed.has('moistureLimit') ? message.find(({ reading }) => isLimit(reading))?.reading : undefined
  // “It went up a week ago”: so long it has been out.
  const age = needed.has('woodAge')
    ? message.find(({ reading }, i) => reading?.quantity?.kind === 'duration' && message[i + 1]?.stem === 'ago')
        ?.reading
    : undefined
  return [
    ...(age ? [{ reading: age, word: 'woodAge', at: yard, score: weight.byPlace }] : []),
    ...(limit ? [{ reading: limit, word: 'moistureLimit', at: yard, score: weight.byPlace }] : []),
    ...cutsIn(message, needed),
    ...diagonalsIn(message, needed),
    ...namedAfter(message, needs, new Set(asked.map((it) => it.word))),
  ]
}

const isLimit = (reading: Tagged | undefined): boolean =>
  reading?.quantity?.kind === 'percent' && (reading.firmness === 'at-most' || reading.firmness === 'less-than')
