// This file is about binding a message that speaks of several runs: each run's stretch is read by itself, so that
// four lengths for four sides are not four values of one word.
import { type Calculation, ofRuns, partOf, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import { bind } from './bind.ts'
import type { Bound } from './bound.ts'
import type { Hit } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import { asRunWord, lengthOf, partIn, placesFor, type RunSaid, type Stretch } from './runs.ts'
import type { Token } from './stems.ts'

export interface Parts {
  readonly heard: Heard
  readonly message: readonly Token[]
  readonly hits: readonly Hit[]
  readonly places: readonly PlaceSaid[]
  readonly runs: readonly RunSaid[]
  readonly stretches: readonly Stretch[]
}

/** Binds each stretch, and says for which run what it tells holds. */
export function bindByRuns(
  { heard, message, hits, places, runs, stretches }: Parts,
  wanted: readonly string[],
  asksNow: boolean,
  named?: Calculation,
): { bound: Bound[]; loose: Tagged[] } {
  if (runs.length === 0) return bind(heard, message, hits, places, wanted, asksNow, named)
  const bound: Bound[] = []
  const loose: Tagged[] = []
  for (const stretch of stretches) {
    const { from, to } = stretch
    const isYard = stretch.places[0] === yard
    const known = isYard ? [] : lengthsIn(message, runs, stretch)
    for (const { at, places: of, word } of known)
      bound.push(
        ...of.map((place): Bound => ({ reading: (message[at] as Token).reading as Tagged, word, at: place, score: 1 })),
      )
    const named_ = new Set(namesIn(message, runs, stretch))
    const taken = new Set([...known.map((it) => it.at), ...named_])
    const part = message.slice(from, to).map((token, i) => (taken.has(from + i) ? withoutQuantity(token) : token))
    const inside = <T extends { from: number; to: number }>(list: readonly T[]): T[] =>
      list
        .filter((it) => it.from >= from && it.to <= to && ![...named_].some((at) => it.from <= at && at < it.to))
        .map((it) => ({ ...it, from: it.from - from, to: it.to - from }))
    const tags = new Set(part.flatMap((token) => token.tag ?? []))
    const here: Heard = { ...heard, readings: heard.readings.filter((it) => tags.has(it.tag)) }
    const result = bind(here, part, inside(hits), inside(places), wanted, asksNow && isYard, isYard ? named : undefined)
    const spotOf = (it: Tagged): number => message.findIndex((token) => token.tag === it.tag)
    for (const it of result.bound) {
      const word = isYard ? it.word : asRunWord(it.word)
      const own = it.at === yard ? placesFor(word, spotOf(it.reading), stretch, message) : [it.at]
      bound.push(...own.map((at): Bound => ({ ...it, word, at })))
    }
    // “Bay 3 on the front came out 93 1/4”: what nothing names is the bay's own opening.
    const which = isYard ? undefined : partIn(message, stretch)
    const [only] = result.loose
    if (which?.part === 'bay' && result.loose.length === 1 && only && ofRuns.has('opening') && isMeasured(only))
      bound.push(
        ...stretch.places.map(
          (run): Bound => ({ reading: only, word: 'opening', at: partOf(run, 'bay', which.number), score: 1 }),
        ),
      )
    else loose.push(...result.loose)
  }
  return { bound, loose }
}

const isMeasured = (it: Tagged): boolean => it.quantity?.kind === 'length' || it.bare !== null

/** The lengths of the runs that a stretch names, where they stand. */
function lengthsIn(
  message: readonly Token[],
  runs: readonly RunSaid[],
  { from, to }: Stretch,
): { at: number; places: readonly string[]; word: string }[] {
  return runs
    .filter((run) => run.from >= from && run.from < to)
    .flatMap((run) => {
      const at = lengthOf(message, run)
      return at !== undefined && at >= from && at < to && !partIn(message, { from, to, places: run.places, ownTo: to })
        ? [{ at, places: run.places, word: 'runLength' }]
        : []
    })
}

/** Tokens that name a run or a part of it, its number among them: they measure nothing. */
function namesIn(message: readonly Token[], runs: readonly RunSaid[], stretch: Stretch): number[] {
  const { from, to } = stretch
  const named = runs
    .filter((run) => run.from >= from && run.from < to)
    .flatMap((run) => Array.from({ length: run.to - run.from }, (_, i) => run.from + i))
  const part = partIn(message, stretch)
  return part ? [...named, part.at, ...(message[part.at + 1]?.reading?.bare ? [part.at + 1] : [])] : named
}

const withoutQuantity = ({ tag: _, reading: __, measured: ___, ...token }: Token): Token => token
