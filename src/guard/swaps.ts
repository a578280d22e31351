// This file is about the right tag in the wrong place: where a model and the offline reader bind a message differently, the person is asked.
import {
  fittedReading,
  inPlace,
  isPlace,
  isRun,
  kindsIn,
  ofStick,
  postKinds,
  landmarks,
  runNames,
  runOf,
  sameValue,
  systemOf,
  vocabulary,
  type Wanted,
  type Word,
  yard,
} from '../../engine/index.ts'
import { isDenied } from '../readers/offline/denied.ts'
import { placesIn } from '../readers/offline/places.ts'
import { messageOf, stem } from '../readers/offline/stems.ts'
import type { Heard, Tagged } from '../readers/reader.ts'
import type { Request, Told } from '../request.ts'
import { folded } from './form.ts'

/** A quantity that two readers take differently: for another word, for another place, or where the other takes another quantity. The person is asked. */
export interface Torn {
  readonly tag: string
  readonly said: string
  readonly words: readonly [string, string]
  readonly places: readonly [string, string]
  /** What the other reader takes for the same word at the same place. */
  readonly rival?: string
}

/** Quantities that both readers bind, and bind differently; and words that each tells by another quantity. */
export function tornBetween(request: Request, own: Request, heard: Heard): Torn[] {
  const { readings, job } = heard
  const torn: Torn[] = []
  const reading = (tag: string | null): Tagged | undefined => readings.find((it) => it.tag === tag)
  const valueIn = (word: Word, it: Tagged) =>
    it.section ? ofStick(word, it.section) : fittedReading(word, it, systemOf(job))
  const isNew = (tag: string): boolean => !torn.some((it) => it.tag === tag)
  for (const theirs of request.told) {
    const [word, it] = [vocabulary.get(theirs.word), reading(theirs.from.tag)]
    if (!word || !it || it.firmness === 'range' || valueIn(word, it) === undefined) continue
    const mine = own.told.filter((other) => other.from.tag === it.tag)
    const sameWord = mine.filter((other) => other.word === theirs.word)
    // A tag that a model gives to two words, one of them rightly, is simply taken already.
    const [other] = mine
    const isAgreed = request.told.some(
      ({ word: name, from }) => from.tag === it.tag && mine.some((own) => own.word === name),
    )
    if (other && !isAgreed && theirs.word !== vocabulary.get(other.word)?.otherSide && isNew(it.tag))
      torn.push({ tag: it.tag, said: it.said, words: [theirs.word, other.word], places: [theirs.at, other.at] })
    const [elsewhere] = sameWord
    if (
      elsewhere &&
      !sameWord.some(({ at }) => at === theirs.at) &&
      !isFiner(theirs, elsewhere.at, heard) &&
      isNew(it.tag)
    )
      torn.push({ tag: it.tag, said: it.said, words: [theirs.word, theirs.word], places: [theirs.at, elsewhere.at] })
    const nearer = sameWord.some(({ at }) => at === theirs.at) ? undefined : placeBeside(it, theirs.at, heard)
    if (nearer && isNew(it.tag))
      torn.push({ tag: it.tag, said: it.said, words: [theirs.word, theirs.word], places: [theirs.at, nearer] })
    if (mine.length > 0 || word.list) continue
    const rival = own.told.find(
      ({ word: name, at, from }) =>
        name === theirs.word &&
        at === theirs.at &&
        from.tag !== null &&
        !request.told.some((told) => told.from.tag === from.tag),
    )
    const instead = rival && reading(rival.from.tag)
    if (instead && isNew(it.tag) && !isSame(valueIn(word, it), valueIn(word, instead)))
      torn.push({
        tag: it.tag,
        said: it.said,
        words: [theirs.word, theirs.word],
        places: [theirs.at, theirs.at],
        rival: instead.said,
      })
  }
  return torn
}

/** Quantities of which a reader itself says that they may be either of two things. */
export const eitherOf = (request: Request, readings: readonly Tagged[]): Torn[] =>
  (request.either ?? []).flatMap(({ tag, words }) => {
    const reading = readings.find((it) => it.tag === tag)
    const [one, other] = [...new Set(words)].filter((it) => vocabulary.has(it))
    return reading && one && other ? [{ tag, said: reading.said, words: [one, other], places: [yard, yard] }] : []
  })

/**
 * Where a message names several places, the one that a quantity stands with, if it is none of those it was given to:
 * the one named last before it, where a place is named before the first quantity, else the one named first after it.
 */
function placeBeside(reading: Tagged, given: string, heard: Heard): string | undefined {
  const named = placesNamed(heard)
  if (new Set(named.map((it) => it.place)).size < 2) return undefined
  const isBefore = (named[0]?.start ?? 0) < (heard.readings[0]?.start ?? 0)
  const beside = isBefore
    ? named.findLast((it) => it.start < reading.start)
    : named.find((it) => it.start >= reading.end)
  const isOfIt =
    beside === undefined ||
    runOf(given) === beside.place ||
    /^run-/.test(runOf(given)) ||
    kindsIn(given).some((kind) => kindsIn(beside.place).includes(kind))
  return isOfIt ? undefined : beside.place
}

/** The kinds of post and the runs that a message names, in order, with where each begins. */
function placesNamed(heard: Heard): { place: string; start: number }[] {
  const message = messageOf(heard)
  const kinds = placesIn(message).map(({ place, from }) => ({ place, start: message[from]?.start ?? 0 }))
  const runs = message.flatMap(({ stem: word, start, tag }) =>
    tag === undefined && plainRuns.has(word) ? { place: plainRuns.get(word) as string, start } : [],
  )
  return [...kinds, ...runs].sort((a, b) => a.start - b.start)
}

const plainRuns = new Map(
  Object.entries(runNames)
    .filter(([run]) => !/^(?:side|long|short|house|garden)$/.test(run))
    .flatMap(([run, names]) => [run, ...names].map((it) => [stem(it), run] as const)),
)

const isSame = (a: ReturnType<typeof fittedReading>, b: typeof a): boolean =>
  a !== undefined && b !== undefined && sameValue(a, b)

/** Whether the message names the finer place, or corrects what was told of it, and the other reader only took it of everything. */
const isFiner = ({ word, at }: Told, mine: string, { said, job }: Heard): boolean =>
  mine === yard && (isNamed(at, said) || job.decisions.some((it) => it.word === word && it.at === at))

/** Whether what is torn takes this told value along. */
export const isTornBy = ({ tag, words, places, rival }: Torn, told: Told): boolean =>
  tag === told.from.tag ||
  (words[0] === words[1] && rival === undefined
    ? told.word === words[0] && places.includes(told.at)
    : words.includes(told.word) && (rival === undefined || told.at === places[0]))

/** What speaks against a told value in the offline reader's reading and in the message; in words for the person. */
export function againstOwn({ word: name, at, from }: Told, word: Word, own: Request, heard: Heard): string | undefined {
  const mine = own.told.filter((it) => it.word === name)
  const here = mine.filter((it) => it.at === at)
  if (from.option !== null) {
    const options = (here.length > 0 ? here : mine).flatMap((it) => it.from.option ?? [])
    const label = (option: string): string => word.options?.[option]?.label ?? option
    if (options.length > 0 && !options.includes(from.option))
      return `the message reads as “${label(options[0] as string)}”, not “${label(from.option)}”`
    const elsewhere = mine.filter((it) => it.from.option === from.option)
    if (here.length === 0 && elsewhere.some((it) => it.at !== yard))
      return `the message says it of ${placesOf(elsewhere)}, not of ${called(at)}`
  }
  const reading = heard.readings.find((it) => it.tag === from.tag)
  if (reading && isDenied(reading, heard)) return `“${reading.said}” is what you said it is not`
  return mine.some((it) => it.at === at) || isKnownPlace(at, heard)
    ? undefined
    : `the message does not say that it is of ${called(at)}`
}

/** “the gate posts”, and “the whole fence” for the yard. */
export const called = (place: string): string => (place === yard ? 'the whole fence' : inPlace(place))
const placesOf = (told: readonly Told[]): string => [...new Set(told.map((it) => called(it.at)))].join(' and ')

/** A place that the message names, or that was just asked or told about. */
const isKnownPlace = (place: string, { said, job }: Heard): boolean =>
  isNamed(place, said) || [...job.asked, ...job.wanted].some((it) => it.at === place)

const numbered = /^run-\d+$/

/** Whether the message names a place: each of its kinds of post, its run, and that it speaks of a bay or a gate. */
function isNamed(place: string, said: string): boolean {
  if (place === yard) return true
  const text = folded(said)
  const has = (names: readonly string[]): boolean => names.some((it) => new RegExp(`\\b${folded(it)}`).test(text))
  const run = runOf(place)
  if (!isRun(run)) return kindsIn(place).every((kind) => has(postKinds[kind] ?? []))
  const part = /\/(bay|gate)-/.exec(place)?.[1]
  const isRunSaid = numbered.test(run) || has([run, ...(runNames[run] ?? landmarks[run] ?? [])])
  return (
    isRunSaid && (part === undefined || has(part === 'bay' ? ['bay', 'section', 'panel', 'opening', 'post'] : ['gate']))
  )
}

/** What is wanted, at places that the message speaks of. Where the offline reader hears another place for it, both are answered. */
export function wantsSaid(wants: readonly Wanted[], own: Request, heard: Heard): Wanted[] {
  const found: Wanted[] = []
  const add = (it: Wanted): void => {
    if (!found.some((other) => other.word === it.word && other.at === it.at)) found.push(it)
  }
  for (const want of wants) {
    const mine = own.wants.filter((it) => it.word === want.word && isPlace(it.at))
    const isMine = mine.some((it) => it.at === want.at)
    if (isMine || isKnownPlace(want.at, heard)) add(want)
    else if (mine.length === 0) add({ ...want, at: yard })
    if (!isMine) for (const it of mine) if (it.at !== yard || !found.some((other) => other.word === it.word)) add(it)
  }
  return found
}
