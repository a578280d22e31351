// This file is about runs in a message: “the front is 60 ft, with a 42 in gate 20 ft along; the left side falls 40 in”.
// It finds where each run is spoken of, and cuts the message into the stretches that belong to one run, or to the whole yard.
import {
  amountIn,
  isRun,
  landmarks,
  type Job,
  ofRuns,
  partOf,
  runNames,
  runOf,
  runPlaces,
  toNumber,
  yard,
} from '../../../engine/index.ts'
import { stem, type Token } from './stems.ts'

/** A place where the message names one run or several: “the front and back”. */
export interface RunSaid {
  readonly places: readonly string[]
  readonly from: number
  readonly to: number
  /** “On the front, …”, “Front: …”: the whole sentence is about it. */
  readonly leads: boolean
}

/** A stretch of the message that one bind reads by itself, and the place of what it tells. */
export interface Stretch {
  readonly from: number
  readonly to: number
  readonly places: readonly string[]
  /** Told of the run itself, and not of the yard, as far as this token. */
  readonly ownTo: number
}

const byName = new Map(
  Object.entries(runNames).flatMap(([name, called]) => [name, ...called].map((it) => [stem(it), name] as const)),
)
/** The run that a word may name: “rear” is the back. */
export const runNamed = (token: Token | undefined): string | undefined =>
  token && !token.tag ? byName.get(token.stem) : undefined
// “The left” stays a side where it is said; a road or a house is one only with a word that makes it so.
const plainSides = new Set(['front', 'back', 'left', 'right', 'north', 'south', 'east', 'west', 'side'])
const nouns = new Set(
  [
    'run',
    'side',
    'fence',
    'stretch',
    'leg',
    'boundary',
    'line',
    'edge',
    'section',
    'length',
    'end',
    'yard',
    'row',
    'frontage',
    'one',
  ].map(stem),
)
const beside = new Set('along down across beside by facing on at for in to of'.split(' ').map(stem))
const after = new Set(
  'is has are be measure run will need have take get come go fall drop slope and & , : = ? . ; ('.split(' ').map(stem),
)
const notSides = new Set('post gate of to over with and'.split(' ').map(stem))
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth']
const numbered = new Set(['run', 'side', 'leg', 'stretch'].map(stem))

const isLength = (token: Token | undefined): boolean => token?.reading?.quantity?.kind === 'length'
const isStop = (token: Token | undefined): boolean => token !== undefined && /^[.;?!\n]$/.test(token.text)
/** “60 ft.” may end a sentence with its own stop: where the next word begins one. */
const endsSentence = (message: readonly Token[], at: number): boolean =>
  isStop(message[at]) ||
  (message[at]?.reading?.said.endsWith('.') === true &&
    (/^[\p{Lu}\d]/u.test(message[at + 1]?.text ?? 'A') ||
      byName.has(message[at + 1]?.stem ?? '') ||
      /^(the|posts?|bays?|pickets?|max)$/.test(message[at + 1]?.stem ?? '')))
const isBreak = (token: Token | undefined): boolean =>
  token !== undefined && (/^[,.;:?!()\n]$/.test(token.text) || /^(and|but|then|plus)$/.test(token.stem))

const wholeOf = (token: Token | undefined): number | undefined => {
  const bare = token?.reading?.bare
  return bare?.d === 1n && bare.compare(0) > 0 && bare.compare(100) < 0 ? Number(bare.n) : undefined
}

const along = new Set(Object.entries(landmarks).flat(2).map(stem))

/** One name of a run at a token, and where it ends. */
function nameAt(
  message: readonly Token[],
  at: number,
  known: ReadonlySet<string>,
): { place: string; to: number } | undefined {
  const token = message[at] as Token
  const next = message[at + 1]
  // “Run 3”, “side 2”.
  const number = numbered.has(token.stem) ? wholeOf(next) : undefined
  if (number !== undefined) return { place: `run-${number}`, to: at + 2 }
  // “Side A”, “run B”.
  const letter =
    numbered.has(token.stem) && /^[A-H]$/.test(next?.text ?? '') ? (next?.text.charCodeAt(0) ?? 65) - 64 : 0
  if (letter > 0) return { place: `run-${letter}`, to: at + 2 }
  // “The third run”.
  const ordinal = ordinals.indexOf(token.stem)
  if (ordinal >= 0 && next && next.stem !== 'side' && numbered.has(next.stem))
    return { place: `run-${ordinal + 1}`, to: at + 2 }
  // “Both sides are 30 ft”, “30 on each side”: the two beside the front or the back.
  const isBoth =
    (/^(both|each|two|either)$/.test(token.stem) && next?.stem === 'side') ||
    (/^sides$/i.test(token.text) && isLength(next))
  if (isBoth && message.some((it) => /^(front|back|street|road|rear)$/.test(it.stem)))
    return { place: 'left+right', to: token.stem === 'side' ? at + 1 : at + 2 }
  // “The barn side” is the barn's, and no run called “side”.
  if (token.stem === 'side' && along.has(message[at - 1]?.stem ?? '')) return undefined
  const name = runNamed(token)
  if (!name || sidesAt(message, at) !== undefined || isJustThere(message, at)) return undefined
  const hasNoun = next !== undefined && nouns.has(next.stem)
  const to = at + (hasNoun ? (next.stem === 'yard' && nouns.has(message[at + 2]?.stem ?? '') ? 3 : 2) : 1)
  const isThe = /^(the|my|our|your)$/.test(message[at - 1]?.stem ?? '')
  const before = message[at - (isThe ? 2 : 1)]
  const follows = message[to]
  // Of a run that was told before, most things may be said.
  const stands =
    known.has(name) ||
    follows === undefined ||
    isLength(follows) ||
    follows.tag !== undefined ||
    after.has(follows.stem)
  if ((name === 'long' || name === 'short') && !(isThe && hasNoun)) return undefined
  if (hasNoun && (isThe || isLength(follows) || stands)) return { place: name, to }
  const isBeside = before !== undefined && beside.has(before.stem)
  if (isBeside && known.has(name) && !/^(gate|post)$/.test(follows?.stem ?? '')) return { place: name, to }
  if (isBeside && isThe && plainSides.has(name) && !/^(gate|post|of)$/.test(follows?.stem ?? ''))
    return { place: name, to }
  if (plainSides.has(name)) {
    if (follows && notSides.has(follows.stem) && follows.stem !== 'and') return undefined
    const starts = before === undefined || isBreak(before) || before.tag !== undefined
    if (isThe ? stands : (starts || isLength(follows)) && stands) return { place: name, to }
    return undefined
  }
  const isBareName = isLength(follows) && (before === undefined || isBreak(before) || before.tag !== undefined)
  if (isBareName) return { place: name, to }
  return isThe && before !== undefined && beside.has(before.stem) && stands ? { place: name, to } : undefined
}

/** “Right by the house”, “back at the road”: how near something is, and no side, as it is in “right at 32 ft”; nor is a “Right, so” to begin with. */
const isJustThere = (message: readonly Token[], at: number): boolean =>
  (at === 0 && message[0]?.stem === 'right' && message[1]?.text === ',' && message[2]?.tag === undefined) ||
  (/^(right|back)$/.test(message[at]?.stem ?? '') &&
    !/^(the|my|our|your)$/.test(message[at - 1]?.stem ?? '') &&
    /^(by|next|beside|at|against|up|on|in|under|over|through|before|after|where)$/.test(message[at + 1]?.stem ?? '') &&
    message[at + 2]?.tag === undefined)

/** “Three sides.”: how many there are, and no run called “side”. */
const sidesAt = (message: readonly Token[], at: number): number | undefined =>
  /^sides$/i.test(message[at]?.text ?? '') && !isLength(message[at + 1]) ? wholeOf(message[at - 1]) : undefined

/** Whether the message says how many sides there are (two may be those of a board), and sizes fewer: “four sides, the back is 48 ft, the left 32 ft”. */
export function lacksSides(message: readonly Token[], runs: readonly RunSaid[]): boolean {
  const said = message.flatMap((_, at) => sidesAt(message, at) ?? [])
  const sized = new Set(runs.flatMap((run) => lengthsOf(message, run).flatMap((it) => it.places)))
  return said.some((it) => it > 2 && it > sized.size)
}

/** “How many posts in total?” asks of the whole fence. */
export const saysInAll = (message: readonly Token[]): boolean =>
  message.some(
    ({ stem: it }, at) =>
      /^(altogether|overall)$/.test(it) ||
      (/^(total|all)$/.test(it) && message[at - 1]?.stem === 'in') ||
      (it === 'all' && message[at + 1]?.stem === 'told'),
  )

/** “Front 40 ft, back 50 ft, how many posts”: asked of all that are sized, or in total, unless the question itself names one, “how many on the back”. */
export function isOfAll(
  message: readonly Token[],
  runs: readonly RunSaid[],
  question: Pick<RunSaid, 'from' | 'to'>,
): boolean {
  const sized = new Set(runs.flatMap((run) => lengthsOf(message, run).flatMap((it) => it.places)))
  const joins = (from: number, to: number): boolean =>
    !message.slice(from, to).some((it, i) => it.tag !== undefined || isBreak(it) || endsSentence(message, from + i))
  return (
    (sized.size > 1 || saysInAll(message)) &&
    !runs.some((it) => joins(Math.min(it.to, question.to), Math.max(it.from, question.from)))
  )
}

/** Where the message speaks of runs. Empty where it does not mean any: “what is left”, “go back”. */
export function runsIn(message: readonly Token[], job: Job): RunSaid[] {
  const known = new Set([...job.decisions.map((it) => runOf(it.at)).filter(isRun), ...runPlaces(job)])
  const told = namedIn(message, known).filter((it) => isRunLong(message, lengthOf(message, it, known)))
  const fresh = new Set(told.flatMap((it) => it.places))
  const asks = message.some((it) => it.text === '?' || it.stem === 'how')
  if (known.size === 0 && (fresh.size === 0 || (fresh.size === 1 && asks))) return []
  // Of a run that is told in this very message, most things may be said as well.
  const all = new Set([...known, ...fresh])
  return namedIn(message, all).filter((it) => it.places.every((place) => all.has(place)))
}

/** “Covers it by an inch each side”: so short is no run of a fence. */
const isRunLong = (message: readonly Token[], at: number | undefined): boolean => {
  const size = message[at ?? -1]?.reading?.quantity
  return at !== undefined && !(size && toNumber(amountIn(size, 'ft')) < 1)
}

function namedIn(message: readonly Token[], known: ReadonlySet<string>): RunSaid[] {
  const found: RunSaid[] = []
  for (let at = 0; at < message.length; at++) {
    const name = nameAt(message, at, known)
    if (!name) continue
    const places = name.place === 'left+right' ? ['left', 'right'] : [name.place]
    let { to } = name
    // “The front and the back”, “front, left and right: …”: where no length stands between.
    while (/^(and|&|,)$/.test(message[to]?.stem ?? message[to]?.text ?? '')) {
      const skip = /^(the|my|and)$/.test(message[to + 1]?.stem ?? '') ? 2 : 1
      const more = message[to + skip] ? nameAt(message, to + skip, known) : undefined
      if (!more || isLength(message[to - 1]) || more.place === 'left+right') break
      places.push(more.place)
      to = more.to
    }
    const start = startOfSentence(message, at)
    const lead = message
      .slice(start, at)
      .filter((it) => !/^(the|my|our|your|on|for|in|along|at|down|now|and|then|so)$/.test(it.stem))
    found.push({ places, from: at, to, leads: lead.length === 0 })
    at = to - 1
  }
  return found
}

const startOfSentence = (message: readonly Token[], at: number): number =>
  message.slice(0, at).findLastIndex((_, i) => endsSentence(message, i)) + 1

const between = new Set(
  'is are be will it a the actually now really should about roughly around only just exactly measure run go come long in length at of to : = ( - – and each both total is'
    .split(' ')
    .map(stem),
)
const leading = new Set('along down across on in for of at the my our and with by'.split(' ').map(stem))

/** The token that says how long the run is: right after its name, or right before “along the front”. */
export function lengthOf(
  message: readonly Token[],
  { from, to, places }: RunSaid,
  known: ReadonlySet<string> = none,
): number | undefined {
  // “Gate in the front run: 4 ft” is the gate's, where the front has its length already.
  if (places.every((it) => known.has(it)) && isOfGate(message, from)) return undefined
  const isOne = (token: Token | undefined): boolean =>
    token?.reading !== undefined && (isLength(token) || (token.reading.bare !== null && token.reading.clock !== true))
  const ahead = lengthAhead(message, { from, places })
  // “18 m along the street and 12 m down the side”: what stands before “along the” is its own.
  const prep = message[from - (/^(the|my|our)$/.test(message[from - 1]?.stem ?? '') ? 2 : 1)]?.stem ?? ''
  if (ahead !== undefined && /^(along|down|across|on|at|beside|by|for)$/.test(prep)) return ahead
  let at = to
  while (message[at] && !message[at]?.tag && between.has((message[at] as Token).stem)) at++
  if (
    isOne(message[at]) &&
    !(at === to || endsSentence(message, at) ? isOfThing(message, at) : isOfAnother(message, at))
  )
    return at
  return ahead
}

/** Right behind a run's name only what is joined to it takes the length away: “front 4 ft gate”; “front 24 ft, posts …” does not. */
const isOfThing = (message: readonly Token[], at: number): boolean =>
  /^(gate|double|walk|wide|tall|high|deep|gap)$/.test(message[at + 1]?.stem ?? '')
const none: ReadonlySet<string> = new Set()
/** Whether a gate or a slope is spoken of in the clause before, with no size of its own there. */
function isOfGate(message: readonly Token[], from: number): boolean {
  let at = from - 1
  while (at >= 0 && !isStop(message[at]) && !isLength(message[at])) {
    if (/^(gate|rise|fall|drop|slope|climb)$/.test(message[at]?.stem ?? '')) return true
    at--
  }
  return false
}
/** “Front 12 m left 9 m”: what stands right behind another run's name is that run's. */
const isTaken = (message: readonly Token[], at: number): boolean =>
  byName.has(message[at - 1]?.stem ?? '') && !/^(in|on|along)$/.test(message[at + 1]?.stem ?? '')

/** Each run's length: one for all that are named together, or one for each after a colon, “front, left, right: 42 ft, 30 ft, 30 ft”. */
export function lengthsOf(
  message: readonly Token[],
  run: RunSaid,
  known?: ReadonlySet<string>,
): { at: number; places: readonly string[] }[] {
  const at = lengthOf(message, run, known)
  if (at === undefined) return []
  if (run.places.length === 1 || at < run.from) return [{ at, places: run.places }]
  const each = [at]
  for (let next = at + 1; next < message.length && each.length < run.places.length; next++) {
    if (isLength(message[next])) each.push(next)
    else if (!/^(,|and|&)$/.test(message[next]?.text ?? '')) break
  }
  return each.length === run.places.length
    ? each.map((one, i) => ({ at: one, places: [run.places[i] as string] }))
    : [{ at, places: run.places }]
}

/** “60 ft along the front”, “12.5 m front”: a length before the name. */
function lengthAhead(
  message: readonly Token[],
  { from, places }: Pick<RunSaid, 'from' | 'places'>,
): number | undefined {
  let at = from - 1
  while (message[at] && !message[at]?.tag && leading.has((message[at] as Token).stem)) at--
  const token = message[at]
  const isBare = token?.reading !== undefined && token.reading.bare !== null && (places.length > 1 || at === from - 1)
  const isOf = isLength(token) || isBare
  return isOf && from - at <= 4 && !isOfAnother(message, at) && !isTaken(message, at) && !isOfGate(message, at)
    ? at
    : undefined
}

/** “The front has a 42 in gate”, “the left falls 40 in”: a size of something else. */
const isOfAnother = (message: readonly Token[], at: number): boolean =>
  /^(gate|gap|bay|picket|post|rail|wide|tall|high|deep|apart|thick|space|pale|board|fall|drop|double|walk|fence|hole)/.test(
    message[at + 1]?.stem ?? '',
  )

/** What sticks to the run that was spoken of last, even after a comma: its gates, its slope, its ends. */
const sticks = new Set([
  'gates',
  'gateOpening',
  'gateStart',
  'fall',
  'slope',
  'levelDistance',
  'runEnds',
  'slopeWay',
  'gateLeaves',
])

/** The message cut into stretches: each run's from where it is named to the next, or to the end of its sentence. */
export function stretchesByRun(message: readonly Token[], runs: readonly RunSaid[]): Stretch[] {
  if (runs.length === 0) return [{ from: 0, to: message.length, places: [yard], ownTo: message.length }]
  const stretches: Stretch[] = []
  const yardTo = (from: number, to: number): void => {
    if (to > from) stretches.push({ from, to, places: [yard], ownTo: to })
  }
  let done = 0
  runs.forEach((run, i) => {
    const start = Math.max(done, beginOf(message, run))
    yardTo(done, start)
    const ends = message.findIndex((_, at) => at >= run.to && endsSentence(message, at))
    const next = runs[i + 1]
    let to = ends < 0 ? message.length : ends + 1
    // “It falls 40 in”: the next sentence is still about this run.
    while (to < message.length && !(next && next.from < endOfSentence(message, to)) && goesOn(message, to))
      to = endOfSentence(message, to)
    if (next) to = Math.min(to, Math.max(beginOf(message, next), run.to))
    const clause = message.findIndex(
      (token, at) =>
        at >= run.to && (isBreak(token) || endsSentence(message, at - 1)) && token.text !== ':' && !isWith(message, at),
    )
    stretches.push({
      from: start,
      to,
      places: run.places,
      ownTo: run.leads && !lengthOf(message, run) ? to : clause < 0 ? to : Math.min(clause, to),
    })
    done = to
  })
  yardTo(done, message.length)
  return stretches
}

const isWith = (message: readonly Token[], at: number): boolean =>
  /^(with|which|where|falling|and)$/.test(message[at + 1]?.stem ?? '')
const goesOn = (message: readonly Token[], at: number): boolean =>
  /^(it|there|here|that|this)$/.test(message[at]?.stem ?? '') && !/^(all|is it)$/.test(message[at + 1]?.stem ?? '')
const endOfSentence = (message: readonly Token[], from: number): number => {
  const at = message.findIndex((_, i) => i >= from && endsSentence(message, i))
  return at < 0 ? message.length : at + 1
}

/** Where the clause begins that a run is named in: “60 ft along the front” starts at its length. */
function beginOf(message: readonly Token[], run: RunSaid): number {
  const length = lengthOf(message, run)
  const first = length !== undefined && length < run.from ? length : run.from
  let at = first
  while (at > 0 && !isBreak(message[at - 1]) && !isLength(message[at - 1])) at--
  return at
}

const parts = /^(bay|gate|section|panel)$/

/** “Bay 3”, “the second gate”: which of a run's bays or gates a stretch is about. */
export function partIn(
  message: readonly Token[],
  { from, to }: Stretch,
): { part: 'bay' | 'gate'; number: number; at: number } | undefined {
  for (let at = from; at < to; at++) {
    const token = message[at] as Token
    if (!parts.test(token.stem)) continue
    const part = token.stem === 'gate' ? 'gate' : 'bay'
    const before = ordinals.indexOf(message[at - 1]?.stem ?? '')
    const number = wholeOf(message[at + 1]) ?? (before >= 0 ? before + 1 : undefined)
    if (number !== undefined && !message[at + 1]?.measured) return { part, number, at }
    if (number !== undefined && before >= 0) return { part, number, at }
  }
  return undefined
}

const ofGates = new Set(['gateOpening', 'gateStart', 'gateLeaves', 'leafWidth', 'hingeGap', 'latchGap'])

/** The places that a word told in a stretch holds for. */
export function placesFor(word: string, spot: number, stretch: Stretch, message: readonly Token[]): readonly string[] {
  if (stretch.places[0] === yard) return stretch.places
  if (!ofRuns.has(word) || (spot >= stretch.ownTo && !sticks.has(word))) return [yard]
  const part = partIn(message, stretch)
  if (!part || (part.part === 'gate') !== ofGates.has(word)) return stretch.places
  return stretch.places.map((run) => partOf(run, part.part, part.number))
}

const walls = new Set('house wall garage shed barn building porch'.split(' ').map(stem))
const begins = new Set('from off starting start begins beginning begin'.split(' ').map(stem))
const finishes = new Set('to end ending finish until meet against into at'.split(' ').map(stem))

/** “From the house to the corner”, “ends at the garage”: an end of a run that stands against a wall, and the tokens that say so. */
export function wallsIn(
  message: readonly Token[],
  { from, to, places }: Stretch,
): { word: 'nearEnd' | 'farEnd'; places: readonly string[]; from: number; to: number }[] {
  if (places[0] === yard) return []
  return Array.from({ length: to - from }, (_, i) => from + i)
    .filter((at) => walls.has(message[at]?.stem ?? ''))
    .flatMap((at) => {
      const before = message.slice(Math.max(from, at - 5), at).map((it) => it.stem)
      const between = before.lastIndexOf('between')
      const far = between >= 0 && before.slice(between).includes('and')
      const last = before.findLast((it) => begins.has(it) || finishes.has(it))
      // “Starts at the house”: the start governs the at.
      const starts = before.some((it) => begins.has(it)) && !before.some((it) => it === 'to')
      const word = between >= 0 ? (far ? 'farEnd' : 'nearEnd') : starts ? 'nearEnd' : last ? 'farEnd' : undefined
      return word ? [{ word, places, from: Math.max(from, at - 1), to: at + 1 } as const] : []
    })
}

/** A side of the fence that is told as one of a list is that run's own length. */
export const asRunWord = (word: string): string =>
  word === 'fenceSides' || word === 'sides' || word === 'openings'
    ? word === 'openings'
      ? 'opening'
      : 'runLength'
    : word
