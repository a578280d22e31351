// This file is about a message before it is known what is asked of it: what stands around each of its quantities, and what each could be.
// A message is bound to a dozen senses, and this is the same for all of them.
import { askable, vocabulary, type Word, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { type Around, around, cueScore, type Owned, owners, phraseEnds, withoutInner } from './cue-score.ts'
import { readingsByDate } from './dated-readings.ts'
import { fitting, type Fits } from './fits.ts'
import { hoursInTable } from './hour-table.ts'
import type { Hit } from './lexicon.ts'
import { groupedBy } from './phrases.ts'
import { type Kinds, type PlaceSaid, stretchesByKind } from './places.ts'
import type { Token } from './stems.ts'

export interface Scene {
  readonly heard: Heard
  readonly message: readonly Token[]
  readonly usable: readonly Owned[]
  readonly kinds: Kinds
  readonly sized: readonly Sized[]
  /** The things and names that touch a quantity, by its tag. */
  readonly named: ReadonlyMap<string, readonly Owned[]>
  /** What the message's tables and its readings by their dates say by their place, and which of them say nothing of use. */
  readonly inRows: readonly Bound[]
  readonly idle: readonly Tagged[]
}

/** A quantity, and what stands around it. */
export interface Sized {
  readonly reading: Tagged
  readonly spot: number
  readonly near: Around
  readonly fits: Fits
  /** How strongly the words around speak for a word, by `cueScore`: worked once, since a message is bound to many senses. */
  readonly speaksFor: (word: Word, plainly: boolean) => number
  /** It is said as a limit. */
  readonly firm: boolean
  /** Sticks called by their size come next, “26 2x4s”. */
  readonly sticksAhead: boolean
  /** A temperature and a share side by side, “65 °F and 60 %”, are the air's. */
  readonly ofAir: boolean
  /** Words that could take it whatever is asked: those that something around speaks for, or all. */
  readonly words: readonly Word[]
}

export function sceneOf(
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  places: readonly PlaceSaid[],
): Scene {
  const insidePlace = (hit: Hit): boolean =>
    places.some((it) => hit.from < it.to - 1 && hit.to > it.from && hit.to <= it.to - 1)
  const usable = owners(
    withoutInner(hits, message).filter((hit) => !insidePlace(hit)),
    message,
    places,
  )
  const others = heard.job.decisions.some(
    (it) => it.word === 'posts' && it.at !== yard && !places.some(({ place }) => place === it.at),
  )
  const spots = new Map(message.flatMap((token, i) => (token.tag ? [[token.tag, i] as const] : [])))
  const asked = heard.job.asked.map((it) => it.word)
  const table = hoursInTable(heard)
  return {
    heard,
    message,
    usable,
    kinds: { places, ofKind: stretchesByKind(message, places, others) },
    sized: heard.readings.map((it) => sizedAt(it, spots.get(it.tag) ?? -1, { heard, message, usable, asked })),
    named: groupedBy(
      usable.filter((hit) => (hit.sort === 'thing' || hit.sort === 'name') && inputs.has(hit.word)),
      (hit) => {
        const tag = message[hit.owner ?? -1]?.tag
        return tag ? [tag] : []
      },
    ),
    inRows: [...table.bound, ...(readingsByDate(heard)?.bound ?? [])],
    idle: table.idle,
  }
}

function sizedAt(
  reading: Tagged,
  spot: number,
  {
    heard,
    message,
    usable,
    asked,
  }: Pick<Scene, 'heard' | 'message' | 'usable'> & { readonly asked: readonly string[] },
): Sized {
  const near = around(spot, usable)
  const kind = reading.quantity?.kind
  const sticksAhead = reading.bare !== null && isBeforeStick(spot, message)
  const ofAir =
    (kind === 'percent' && isBeside(spot, message, 'temperature')) ||
    (kind === 'temperature' && isBeside(spot, message, 'percent'))
  const spoken = { true: new Map<Word, number>(), false: new Map<Word, number>() }
  const speaksFor = (word: Word, plainly: boolean): number => {
    const known = spoken[`${plainly}`]
    const score =
      known.get(word) ?? (near.byWord.has(word.name) ? cueScore(word, reading, spot, near, message, plainly) : 0)
    known.set(word, score)
    return score
  }
  const isOpen = sticksAhead || ofAir || reading.section || reading.clock || reading.proportion
  return {
    reading,
    spot,
    near,
    fits: fitting(reading, heard),
    speaksFor,
    firm: reading.firmness === 'at-most' || reading.firmness === 'less-than',
    sticksAhead,
    ofAir,
    words: isOpen ? told : toldOf([...near.byWord.keys(), ...asked]),
  }
}

const inputs = new Set(askable.flatMap((calc) => Object.keys(calc.needs)))

/** Every word that a person can tell by a quantity. */
const told = [...vocabulary.values()].filter(
  (word) => word.kind !== 'choice' && word.kind !== 'verdict' && inputs.has(word.name),
)
const places = new Map(told.map((word, at) => [word.name, at]))

/** Those of the words that a person can tell, in their order. */
const toldOf = (names: Iterable<string>): Word[] =>
  [...new Set(names)]
    .flatMap((name) => places.get(name) ?? [])
    .sort((a, b) => a - b)
    .map((at) => told[at] as Word)

/** The words that could take a quantity, where a question needs some. */
export function wordsFor({ words }: Sized, needed: ReadonlySet<string>): readonly Word[] {
  if (words === told) return told
  const more = toldNeeded.get(needed) ?? toldOf(needed)
  toldNeeded.set(needed, more)
  // Both stand in the order of the vocabulary: so do the two together.
  const all: Word[] = []
  let at = 0
  for (const word of words) {
    const place = placeOf(word)
    while (at < more.length && placeOf(more[at] as Word) < place) all.push(more[at++] as Word)
    if (more[at] === word) at++
    all.push(word)
  }
  return [...all, ...more.slice(at)]
}

const toldNeeded = new WeakMap<ReadonlySet<string>, readonly Word[]>()
const placeOf = ({ name }: Word): number => places.get(name) as number

/** Whether a stick called by its size comes next, with nothing but what it is made of and its length between. */
function isBeforeStick(spot: number, message: readonly Token[]): boolean {
  let at = spot + 1
  while (
    at <= spot + 7 &&
    message[at] &&
    (message[at]?.reading?.quantity?.kind === 'length' ||
      (!message[at]?.tag &&
        /^[\p{L}’'-]+$/u.test((message[at] as Token).text) &&
        !phraseEnds.has((message[at] as Token).stem)))
  )
    at++
  return message[at]?.reading?.section !== undefined
}

/** Whether nothing but “and”, “at” or a comma parts it from a quantity of that kind. */
function isBeside(spot: number, message: readonly Token[], kind: 'temperature' | 'percent'): boolean {
  return [1, -1].some((step) => {
    // "20 °C at 65 %" is air; "15 % at 50 °F" may be the wood's.
    const joint = step === -1 ? /^(,|and|at|with|&)$/ : /^(,|and|with|&)$/
    let at = spot + step
    while (message[at] && joint.test((message[at] as Token).text)) at += step
    return message[at]?.reading?.quantity?.kind === kind
  })
}
