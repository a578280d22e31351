// This file is about what the last answer came to: “they are 3.29 each”, “is that a yard?”, “we only have ten” go on from it.
import {
  type GivenBy,
  type Job,
  calculationNamed,
  isQuantity,
  type Quantity,
  type Result,
  runPlaces,
  yard,
} from '../../../engine/index.ts'
import type { Heard } from '../reader.ts'
import { type Kind, resultsWanted } from './plain-phrases.ts'
import { stem, type Token } from './stems.ts'

/** A figure of the last answer, and the tag by which a word is told to be that, however it comes out later. */
export interface LastFigure {
  readonly word: string
  readonly value: Quantity
  readonly tag: string
}

/** What points at the last answer. */
const pointsBack =
  /\b(they|them|those|these|that|it|its|all of (it|them)|(they|it|that)['’]?(s|re)|thats|theyre|em|thems|each|apiece|a piece|ea|every one|a pop)\b/i

/** The figures that the last answer led with, of that kind; what was asked for first. */
export function lastFigures(heard: Heard, kind: Kind): LastFigure[] {
  const direct = resultsWanted(heard).filter((it) => (it.value as Quantity).kind === kind)
  if (direct.length > 0) return direct.map((it) => figureOf(it, heard))
  // “Is that over 250?”, “add 10 % to it”: of what was held against the 250.
  const { job } = heard
  const by = new Set(job.wanted.flatMap((want) => job.results.find((it) => it.word === want.word)?.calculation ?? []))
  // A weight of gravel was asked for, and its volume told beside it.
  const beside = job.results.filter((it) => by.has(it.calculation) && isQuantity(it.value) && it.value.kind === kind)
  if ((kind === 'volume' || kind === 'mass') && beside.length === 1) return beside.map((it) => figureOf(it, heard))
  return job.decisions.flatMap(({ word, of }) => {
    const isGoneOnFrom = of && [...by].some((name) => calculationNamed(name)?.needs[word])
    const found = isGoneOnFrom ? job.results.findLast((it) => it.word === of.word) : undefined
    return found && isQuantity(found.value) && found.value.kind === kind ? [figureOf(found, heard)] : []
  })
}

function figureOf(it: Result, { job }: Heard): LastFigure {
  const calc = calculationNamed(it.calculation)
  const isLinked =
    it.at === yard && runPlaces(job).length === 0 && calc?.gives[it.word] !== undefined && !calc.ofTheFence
  return { word: it.word, value: it.value as Quantity, tag: isLinked ? workedBy(it.calculation, it.word) : it.ref }
}

/** The tag of what a calculation gives, worked anew whenever it changes. */
export const workedBy = (calculation: string, word: string): string => `worked.${calculation}.${word}`

/** Whether a message names what was counted, a pack by whatever it is called. */
export const isNamedIn = (message: readonly Token[], { unit }: Quantity): boolean =>
  message.some((it) => !it.tag && (it.stem === stem(unit) || (unit === 'pack' && packed.test(it.stem))))

const packed = /^(bundle|pack|packet|box|carton|pallet|sleeve|tub)$/
/** “Pieces” may be called by whatever they are. */
const ofAny = /^(piece|item|pack)$/

/** How many of a thing the last answer counted: the thing that is named, else the one that was asked for; with its spares where the same sum has them. */
export function lastCount(heard: Heard, message: readonly Token[], isPointed = false): LastFigure | undefined {
  const words = new Set(message.filter((it) => it.tag === undefined).map((it) => it.stem))
  const isNamed = ({ unit }: Quantity): boolean => words.has(stem(unit))
  const lacking = heard.job.wanted.some((it) => it.word === 'enoughPieces')
    ? heard.job.results.find((it) => it.word === 'piecesShort')
    : undefined
  if (lacking) return figureOf(lacking, heard)
  const wanted = lastFigures(heard, 'count')
  const known = heard.job.results
    .filter(
      (it) => isQuantity(it.value) && it.value.kind === 'count' && !/PerHole|Each|InPack|AtOnce|Over$/.test(it.word),
    )
    .map((it) => figureOf(it, heard))
  const named = known.filter((it) => isNamed(it.value))
  const [first] = wanted
  const of =
    wanted.find((it) => isNamed(it.value) && !/PerHole|Each/.test(it.word)) ??
    named.find((it) => it.word.endsWith('ToBuy')) ??
    named[0] ??
    (first &&
    (isPointed || pointsBack.test(heard.said) || isNamedIn(message, first.value) || ofAny.test(first.value.unit))
      ? first
      : undefined)
  // What was asked for is not worked yet, and only one thing was counted on the way to it.
  const onTheWay = known.filter((it) => it.tag.split('.')[1] === heard.job.named)
  const found =
    of ?? (wanted.length === 0 && pointsBack.test(heard.said) && onTheWay.length === 1 ? onTheWay[0] : undefined)
  return found && withSpares(found, known)
}

/** The same with its spares, or for all of them, where the sum that counted it has that. */
function withSpares(of: LastFigure, known: readonly LastFigure[]): LastFigure {
  const alike = known.filter((it) => it.value.unit === of.value.unit && it.tag.split('.')[1] === of.tag.split('.')[1])
  const all = /PerHole|Each/.test(of.word) ? alike.find((it) => !/PerHole|Each/.test(it.word)) : undefined
  return alike.find((it) => it.word.endsWith('ToBuy')) ?? all ?? of
}

/** The calculation that gave it: the one that is named, else the one that the talk has worked it by. */
export const sumOf = ({ calculation, word }: GivenBy, { results }: Job): string =>
  calculation === '*' ? (results.findLast((it) => it.word === word)?.calculation ?? '') : calculation
