// This file is about binding a message that speaks of several runs: each run's stretch is read by itself, so that
// four lengths for four sides are not four values of one word.
import { type Calculation, partOf, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import { bind } from './bind.ts'
import type { Bound } from './bound.ts'
import type { Hit } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import { asRunWord, lengthsOf, partIn, placesFor, type RunSaid, type Stretch } from './runs.ts'
import { sceneOf } from './scene.ts'
import type { Token } from './stems.ts'

export interface Parts {
  readonly heard: Heard
  readonly message: readonly Token[]
  readonly hits: readonly Hit[]
  readonly places: readonly PlaceSaid[]
  readonly runs: readonly RunSaid[]
  readonly stretches: readonly Stretch[]
  /** What was read apart already, and is no matter of nearness. */
  readonly apart?: readonly Bound[]
  /** Tags that only name something: “bay 3”. */
  readonly names?: readonly string[]
}

/** What a message says, bound to the words that are wanted or to those of one calculation. */
export type Bind = (
  wanted: readonly string[],
  asksNow: boolean,
  named?: Calculation,
) => { bound: Bound[]; loose: Tagged[] }

/** Binds each stretch, and says for which run what it tells holds. What was bound once, to try a sense, is not bound again. */
export function bindingByRuns(parts: Parts): Bind {
  const bindTo = bindingAnew(parts)
  const known = new Map<string, ReturnType<Bind>>()
  return (wanted, asksNow, named) => {
    const key = `${wanted.join()} ${asksNow} ${named?.name}`
    const found = known.get(key) ?? bindTo(wanted, asksNow, named)
    known.set(key, found)
    return found
  }
}

function bindingAnew({
  heard,
  message,
  hits,
  places,
  runs,
  stretches,
  apart = [],
  names: onlyNames = [],
}: Parts): Bind {
  if (runs.length === 0 && apart.length === 0 && onlyNames.length === 0) {
    const scene = sceneOf(heard, message, hits, places)
    return (wanted, asksNow, named) => bind(scene, wanted, asksNow, named)
  }
  const own = new Set([...apart.map((it) => it.reading.tag), ...onlyNames])
  const spots = new Map(message.map((token, at) => [token.tag, at]))
  const scenes = stretches.map((stretch) => {
    const { from, to } = stretch
    const names = new Set(namesIn(message, runs, stretch))
    const part = message
      .slice(from, to)
      .map((token, i) => (names.has(from + i) || own.has(token.tag ?? '') ? withoutQuantity(token) : token))
    const inside = <T extends { from: number; to: number }>(list: readonly T[]): T[] =>
      list
        .filter((it) => it.from >= from && it.to <= to && ![...names].some((at) => it.from <= at && at < it.to))
        .map((it) => ({ ...it, from: it.from - from, to: it.to - from }))
    const tags = new Set(part.flatMap((token) => token.tag ?? []))
    const here: Heard = { ...heard, readings: heard.readings.filter((it) => tags.has(it.tag)) }
    return { stretch, scene: sceneOf(here, part, inside(hits), inside(places)) }
  })
  return (wanted, asksNow, named) => {
    const bound: Bound[] = [...apart]
    const loose: Tagged[] = []
    for (const { stretch, scene } of scenes) {
      const isYard = stretch.places[0] === yard
      const result = bind(scene, wanted, asksNow && isYard, isYard ? named : undefined)
      for (const it of result.bound) {
        const word = isYard ? it.word : asRunWord(it.word)
        const at = it.at === yard ? placesFor(word, spots.get(it.reading.tag) ?? -1, stretch, message) : [it.at]
        bound.push(...at.map((at): Bound => ({ ...it, word, at })))
      }
      loose.push(...result.loose)
    }
    return { bound, loose }
  }
}

/** “Bay 3 on the front came out 93 1/4”: the one size told of a bay by its number is its opening, between the posts, unless their centres are spoken of. */
function asBuilt(
  message: readonly Token[],
  stretch: Stretch,
  names: ReadonlySet<number>,
): { at: number; word: 'opening' | 'bayCentres'; places: readonly string[] } | undefined {
  const which = partIn(message, stretch)
  const sizes = Array.from({ length: stretch.to - stretch.from }, (_, i) => stretch.from + i).filter((at) => {
    const reading = message[at]?.reading
    return !names.has(at) && (reading?.quantity?.kind === 'length' || (reading !== undefined && reading.bare !== null))
  })
  const [only] = sizes
  if (which?.part !== 'bay' || only === undefined || sizes.length > 1) return undefined
  // “…, pickets?” asks after it; what the size is of stands in its own clause.
  const stop = message.findIndex((token, at) => at > only && at < stretch.to && /^[,.;:?!\n]$/.test(token.text))
  const own = message.slice(stretch.from, stop < 0 ? stretch.to : stop)
  const speaks = (pattern: RegExp): boolean => own.some((it) => pattern.test(it.stem))
  if (speaks(/^(picket|rail|gate|gap|height|tall|high|deep)$/)) return undefined
  return {
    at: only,
    word: speaks(/^(center|o\.c\.?|c\/c)$/) ? 'bayCentres' : 'opening',
    places: stretch.places.map((run) => partOf(run, 'bay', which.number)),
  }
}

/** The lengths of the runs, and the openings of bays as they were built, each where it stands. */
export function sizesOfRuns(
  { message, runs, stretches }: Pick<Parts, 'message' | 'runs' | 'stretches'>,
  known: readonly string[],
): Bound[] {
  const told = new Set(known)
  const lengths = runs.flatMap((run) => {
    const within = stretches.find((it) => it.from <= run.from && run.from < it.to)
    if (within && partIn(message, within)) return []
    return lengthsOf(message, run, told).flatMap(({ at, places }) =>
      places.map((place): Bound => ({ reading: readingAt(message, at), word: 'runLength', at: place, score: 1 })),
    )
  })
  const built = stretches.flatMap((stretch) => {
    // Of the only run there is, a bay need not say where it is.
    const only = stretch.places[0] === yard && known.length === 1 ? { ...stretch, places: known } : stretch
    const found = only.places[0] === yard ? undefined : asBuilt(message, only, new Set(namesIn(message, runs, only)))
    if (!found) return []
    return found.places.map((at): Bound => ({ reading: readingAt(message, found.at), word: found.word, at, score: 1 }))
  })
  const seen = new Set<string>()
  return [...lengths, ...built].filter((it) => !seen.has(`${it.word}@${it.at}`) && seen.add(`${it.word}@${it.at}`))
}

const readingAt = (message: readonly Token[], at: number): Tagged => (message[at] as Token).reading as Tagged

/** Numbers that name a run or a part of it. */
export const tagsOfNames = (
  message: readonly Token[],
  runs: readonly RunSaid[],
  stretches: readonly Stretch[],
): string[] => stretches.flatMap((it) => namesIn(message, runs, it)).flatMap((at) => message[at]?.tag ?? [])

/** Tokens that name a run or a part of it, its number among them: they measure nothing. */
function namesIn(message: readonly Token[], runs: readonly RunSaid[], stretch: Stretch): number[] {
  const { from, to } = stretch
  const named = runs
    .filter((run) => run.from >= from && run.from < to)
    .flatMap((run) => Array.from({ length: run.to - run.from }, (_, i) => run.from + i))
  // Every “bay 3” of it, since one may be told of and asked after in one breath.
  const numbers: number[] = []
  for (let at = from; at < to; at++) {
    const part = partIn(message, { ...stretch, from: at })
    if (!part) break
    numbers.push(part.at, ...(message[part.at + 1]?.reading?.bare ? [part.at + 1] : []))
    at = part.at
  }
  return [...named, ...numbers]
}

const withoutQuantity = ({ tag: _, reading: __, measured: ___, ...token }: Token): Token => token
