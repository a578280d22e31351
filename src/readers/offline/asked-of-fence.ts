// This file is about what is asked in the midst of a fence that is told run by run, and what such a message may tell.
import {
  askable,
  calculationNamed,
  gatesTold,
  type Job,
  looksAt,
  ofRuns,
  partOf,
  runOf,
  sameValue,
  vocabulary,
  type Wanted,
  wholeFence,
  yard,
} from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Heard } from '../reader.ts'
import type { Bound } from './bound.ts'
import type { Hit } from './lexicon.ts'
import { groupedBy } from './phrases.ts'
import { isOfAll, partIn, type RunSaid, runNamed, saysInAll, type Stretch } from './runs.ts'
import { stem, type Token } from './stems.ts'
import { gatesOfKind } from './walk/gates.ts'

/** As it was typed: “scrap” is no slip for “scrape”. */
const dropping = /^(scrap|bin|drop|remove|skip|delete|omit|forget|lose|cancel)$/i

/** What of a message asks in bare nouns: all of it, or its end, “…, 8 max. Posts and bays”; nothing where none does. */
export function bareQuestion(message: readonly Token[], heard: Heard): readonly Token[] {
  if (isBareQuestion(message, heard)) return message
  const end = message.findLastIndex((it) => /\p{L}/u.test(it.text)) + 1
  const start = message.slice(0, end).findLastIndex((it) => /^[.,;?!\n]$/.test(it.text) || it.reading !== undefined) + 1
  const last = message.slice(start, end)
  return last.length > 0 && last.every((it) => bareNouns.test(it.stem)) ? last : []
}

const bareNouns =
  /^(post|bay|picket|rail|bag|hole|section|panel|and|&|plus|please|pls|total|count|all|in|told|so|for|the|lot|them)$/

/** “Posts”, “total posts”, “take-off”: a few words, nothing measured, nothing done, in the midst of a fence. */
const isBareQuestion = (message: readonly Token[], { readings }: Heard): boolean =>
  readings.length === 0 &&
  !message.some((it) => dropping.test(it.text)) &&
  message.filter((it) => /\p{L}/u.test(it.text)).length <= 5 &&
  !message.some((it) =>
    /^(is|are|step|fall|drop|rise|follow|close|set|dug|hung|up|done|bought|end|start|no|make|put|add|remove|delete)$/.test(
      it.stem,
    ),
  )

/** “And how many on the left?”: what was wanted last, of that run. */
export function onwardAt(message: readonly Token[], stretches: readonly Stretch[], job: Job): Wanted[] {
  const places = stretches.flatMap((it) => (it.places[0] === yard ? [] : it.places))
  const names = /^(how|many|much|and|so|what|about|on|for|in|the|run|side|long|along|at|of|is|are|there)$/
  const isBare = message.every((it) => names.test(it.stem) || !/\p{L}/u.test(it.text) || runNamed(it) !== undefined)
  return isBare && places.length > 0 && message.some((it) => it.stem === 'many' || it.stem === 'about')
    ? places.flatMap((at) => job.wanted.map(({ word }) => ({ word, at })))
    : []
}

/** “Pickets for the left run”, “posts all told”, “bags?”: what is counted, of the run that is named or of all. */
export function bareWants(message: readonly Token[], stretches: readonly Stretch[]): Wanted[] {
  const at = stretches.find((it) => it.places[0] !== yard)?.places[0] ?? yard
  const speaks = (pattern: RegExp): boolean => message.some((it) => pattern.test(it.stem))
  if (speaks(/^(cost|price|total|money|bill)$/)) return [{ word: 'takeOffCost', at: yard }]
  if (speaks(/^(hour|time|labour|labor)$/)) return [{ word: 'workTime', at: yard }]
  if (speaks(/^(weight|weigh|heavy)$/)) return [{ word: 'takeOffWeight', at: yard }]
  const word = looksAt.find((it) => {
    const noun = vocabulary.get(it)?.noun
    return noun !== undefined && message.some((token) => token.stem === stem(noun))
  })
  return word ? [inAll({ word, at }, message)] : []
}

/** In a fence “how many pickets” are all of them, unless a bay is spoken of; and what there is to buy is the take-off, unless something is cut. */
export function inAll(want: Wanted, message: readonly Token[]): Wanted {
  const speaksOf = (...stems: string[]): boolean => message.some((it) => stems.includes(it.stem))
  if (want.word === 'pickets' && !speaksOf('bay', 'opening', 'panel', 'section'))
    return { ...want, word: 'picketsToBuy' }
  // How wide the bays of a run are, and where its posts stand, is in its table.
  if (want.at !== yard && /^(bayCentres|opening|bayRow|postStations|evenBay)$/.test(want.word))
    return { ...want, word: 'bays' }
  if (calculationNamed('cut-plan')?.gives[want.word] && !speaksOf('cut', 'piece', 'board', 'offcut'))
    return { ...want, word: 'takeOffLines' }
  return want
}

/** Words that a message may tell in the midst of a fence: what its parts take, and what the question needs. */
export function isOfFence(word: string, asked: readonly Wanted[]): boolean {
  if (wholeFence.needs[word] || ofRuns.has(word)) return true
  if (asked.some((it) => it.word === word)) return true
  return asked.length > 0 && (usersOf.get(word) ?? []).some((calc) => asked.some((it) => calc.gives[it.word]))
}

/** The calculations that need a word or give it. */
const usersOf = groupedBy(askable, ({ needs, gives }) => new Set([...Object.keys(needs), ...Object.keys(gives)]))

/** Whether it asks: “the front is 60 ft” tells, “is the front 60 ft” would ask. */
export const isAsked = (message: readonly Token[]): boolean =>
  message.some(
    (token, at) =>
      token.text === '?' ||
      /^(how|what|what's|whats|which|when|where|why|should|can|do|does|will|would|give|show|list|tell|find)$/.test(
        token.stem,
      ) ||
      (/^(is|are|am)$/.test(token.stem) && (at === 0 || /^[.;!\n]$/.test(message[at - 1]?.text ?? ''))),
  )

/** “Take the 5 ft gate out”, “no gate on the left after all”: the gate that is meant, by its size, its run, or as the only one. */
export function gatesOut(
  message: readonly Token[],
  runs: readonly RunSaid[],
  { said, job }: Heard,
): Told[] | undefined {
  const at = message.findIndex((it) => it.stem === 'gate')
  const isOut =
    message.some((it) => dropping.test(it.text)) ||
    /\b(take|leave)\b.{0,24}\bout\b|\bget rid\b|\bno (more |walk |drive |double |single |small |big |little )?gate\b/i.test(
      said,
    ) ||
    (/\bwithout (?:the|that|a|any) (?:\w+ )?gate\b/i.test(said) &&
      !message.some((it) => /^(picket|rail|pale|paling)$/.test(it.stem)))
  if (at < 0 || !isOut) return undefined
  const size = message.find((it) => it.reading?.quantity?.kind === 'length')?.reading?.quantity
  const named = runs.flatMap((it) => it.places)
  const meant = gatesOfKind(gatesTold(job), message)
    .filter(({ place }) => named.length === 0 || named.includes(runOf(place)))
    .filter(({ opening }) => !size || (opening && sameValue(opening, size)))
  if (meant.length !== 1) return []
  const token = message[at] as Token
  const quote = said.slice(token.start, token.end)
  return [
    {
      word: 'leftOut',
      at: (meant[0] as { place: string }).place,
      from: { tag: null, quote, option: 'out', usual: null },
    },
  ]
}

/** “4 ft, not 3”, and “bags 6.50” among prices in dollars: numbers that tell nothing here. */
export function tagsDenied(message: readonly Token[]): string[] {
  const hasMoney = message.some((it) => it.reading?.quantity?.kind === 'money')
  return message.flatMap((token, at) => {
    if (!token.tag || !token.reading) return []
    const isDenied =
      message[at - 1]?.stem === 'not' && !/^(over|more|wider|under|less)$/.test(message[at + 1]?.stem ?? '')
    const isPrice = hasMoney && token.reading.bare !== null && /\.\d\d$/.test(token.reading.said)
    return isDenied || isPrice ? [token.tag] : []
  })
}

/** “How many pickets in bay 3?”: the bay that a question is about, of its run, or of the only one. */
export function bayAsked(
  message: readonly Token[],
  runs: readonly RunSaid[],
  known: readonly string[],
): { place: string; tag: string | undefined } | undefined {
  const part = partIn(message, { from: 0, to: message.length, places: [yard], ownTo: message.length })
  const [run] = runs.length === 1 ? (runs[0] as RunSaid).places : runs.length === 0 && known.length === 1 ? known : []
  if (part?.part !== 'bay' || !run) return undefined
  return {
    place: partOf(run, 'bay', part.number),
    tag: message[part.at + 1]?.reading?.bare ? message[part.at + 1]?.tag : undefined,
  }
}

/** “The front”, in answer to which run the gate is in that was told before. */
export function gateAnswered({ job }: Heard, runs: readonly RunSaid[], bound: readonly Bound[]): Told[] {
  const isAsked = job.asked.some((it) => it.word === 'gateOpening' && it.at === yard)
  if (!isAsked || bound.length > 0 || runs.length !== 1) return []
  return (runs[0] as RunSaid).places.map((at) => ({
    word: 'gateOpening',
    at,
    from: { tag: 'job.gateOpening', quote: null, option: null, usual: null },
  }))
}

/** “Scrap the right run”, “no fence on the left after all”: a run that is not built, with the words that say so. */
export function leftOutIn(message: readonly Token[], runs: readonly RunSaid[], said: string): Told[] {
  const verb = message.findIndex((it) => dropping.test(it.text))
  const [run] = runs
  const [from, to] = [message[verb], message[(run?.to ?? 0) - 1]]
  if (!run || runs.length > 1 || !from || !to || run.from < verb || run.from - verb > 3) return []
  return run.places.map((at) => ({
    word: 'leftOut',
    at,
    from: { tag: null, quote: said.slice(from.start, to.end), option: 'out', usual: null },
  }))
}

/** “How many pickets on the front?” is asked of that run. */
export function atRuns(
  want: Wanted,
  spent: readonly Hit[],
  stretches: readonly Stretch[],
  message: readonly Token[],
  runs: readonly RunSaid[],
): Wanted[] {
  const hit = spent.find((it) => it.word === want.word)
  if (hit ? isOfAll(message, runs, hit) : saysInAll(message)) return [want]
  const stretch = hit && stretches.find((it) => it.from <= hit.from && hit.from < it.to && it.places[0] !== yard)
  const own = stretch ?? (isOneQuestion(message) ? stretches.find((it) => it.places[0] !== yard) : undefined)
  if (!own || want.at !== yard) return [want]
  return own.places.map((at) => ({ ...want, at }))
}

const isOneQuestion = (message: readonly Token[]): boolean =>
  message.every((it, at) => !/^[.;?!\n]$/.test(it.text) || at === message.length - 1)

const ofBays = new Set(['pickets', 'gap', 'tapeGap', 'lastGap', 'railCut', 'opening', 'picketsHung', 'picketsToBuy'])
/** “How many pickets in bay 3?” */
export const atBay = (want: Wanted, bay: string | undefined): Wanted =>
  bay && ofBays.has(want.word)
    ? { word: want.word.startsWith('picketsHung') || want.word === 'picketsToBuy' ? 'pickets' : want.word, at: bay }
    : want
