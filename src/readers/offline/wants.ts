// This file is about what a message wants to know.
import { type Job, vocabulary, type Wanted, yard } from '../../../engine/index.ts'
import { thatGive } from './calculations-by-word.ts'
import { calculationsIn, type Hit, isResult } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import { filler, type Token } from './stems.ts'

const asking = new Set([
  'what',
  "what's",
  'whats',
  'which',
  'find',
  'calculate',
  'out',
  'tell',
  'give',
  'know',
  'compute',
  'determine',
])

const rank: Record<Hit['sort'], number> = { ask: 0, name: 1, thing: 2, side: 3, option: 4 }

export interface Asked {
  readonly wants: Wanted[]
  /** The phrases that ask; their words are spent. */
  readonly spent: readonly Hit[]
}

/** The words asked for, each with its place, in the order they were asked. */
export function wantsIn(
  message: readonly Token[],
  hits: readonly Hit[],
  places: readonly PlaceSaid[],
  job: Job,
): Asked {
  const candidates = hits.filter(
    (hit) => isResult(hit.word) && (hit.sort === 'ask' ? asks(hit, message) : asksByName(hit, message, places)),
  )
  const things = new Set(hits.filter((hit) => hit.sort === 'thing' || hit.sort === 'name').map((hit) => hit.word))
  // The longest phrase wins where two overlap; then the one whose calculation the rest of the message speaks of.
  const spoken = oncePerWord((word) => needsAmong(things, word))
  // How much of what the word needs was decided before: "and the gravel?" after a talk about holes.
  const decided = new Set(job.decisions.map((it) => it.word))
  const known = oncePerWord((word) => needsAmong(decided, word))
  const settled: Hit[] = []
  const taken = new Set<number>()
  // Of phrases that overlap the first is meant.
  const settle = (hit: Hit): void => {
    const spots = Array.from({ length: hit.to - hit.from }, (_, i) => hit.from + i)
    if (spots.some((at) => taken.has(at))) return
    for (const at of spots) taken.add(at)
    settled.push(hit)
  }
  const ranked = [...candidates].sort(
    (a, b) =>
      b.length - a.length ||
      rank[a.sort] - rank[b.sort] ||
      spoken(b.word) - spoken(a.word) ||
      known(b.word) - known(a.word),
  )
  for (const hit of ranked) settle(hit)
  for (const hit of countsAsked(message, hits, places)) settle(hit)
  // "post length for a fence 1.2 m high": a result's name opens the message, and nothing else asks.
  const isOpening = job.wanted.length === 0 && job.asked.length === 0
  if (settled.length === 0 && (message.at(-1)?.text === '?' || isOpening))
    settled.push(
      ...hits
        .filter(
          (hit) =>
            hit.sort === 'name' &&
            hit.from === 0 &&
            isResult(hit.word) &&
            !givesValue.test(message[hit.to]?.stem ?? '') &&
            !message[hit.to]?.tag,
        )
        .sort((a, b) => b.length - a.length)
        .slice(0, 1),
    )
  settled.sort((a, b) => a.from - b.from)
  // "…3 ft deep, 60 lb bags?": where nothing else asks, the last thing before the question mark does, though a size stands before it.
  // Not where a calculation is called by its own phrase: "… tight against the posts?"
  if (settled.length === 0 && calculationsIn(message).length === 0)
    settled.push(
      ...hits
        .filter(
          (hit) =>
            hit.sort === 'thing' &&
            message[hit.to]?.text === '?' &&
            isResult(hit.word) &&
            vocabulary.get(hit.word)?.kind === 'count' &&
            !places.some((it) => hit.from >= it.from && hit.to <= it.to),
        )
        .slice(0, 1),
    )
  const wanted: Wanted[] = []
  const placeOf = placeAsked(message, places, job, hits)
  for (const hit of settled) {
    const at = placeOf(hit)
    if (!wanted.some((it) => it.word === hit.word && it.at === at)) wanted.push({ word: hit.word, at })
  }
  return { wants: wanted, spent: settled.filter((hit) => hit.sort === 'ask') }
}

// "Rail length is 8 ft" tells it, and does not ask.
const givesValue = /^(of|is|are|was|be|=|:|about|around|up|at most|under|over)$/

/** How many of these words a calculation needs that gives the word. */
const needsAmong = (words: ReadonlySet<string>, word: string): number =>
  Math.max(0, ...thatGive(word).map((calc) => Object.keys(calc.needs).filter((need) => words.has(need)).length))

function oncePerWord<T>(of: (word: string) => T): (word: string) => T {
  const found = new Map<string, T>()
  return (word) => {
    const it = found.get(word) ?? of(word)
    found.set(word, it)
    return it
  }
}

// "How many screws per picket" asks for screws, and "how many nails does a picket take" for nails.
const endsCount =
  /^([.;?!,\n]|per|of|for|in|with|to|at|on|do|does|will|would|should|can|are|is|did|a|an|the|each|every|go|fit|from|by)$/

/** "How many 3 1/2 in wide cedar pickets": the first thing counted after "how many", before the clause ends. */
function countsAsked(message: readonly Token[], hits: readonly Hit[], places: readonly PlaceSaid[]): Hit[] {
  const counted = new Map<number, Hit>()
  for (const hit of hits)
    if (
      hit.sort === 'thing' &&
      isResult(hit.word) &&
      vocabulary.get(hit.word)?.kind === 'count' &&
      !counted.has(hit.from)
    )
      counted.set(hit.from, hit)
  const ofPlaces = new Set(places.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, i) => from + i)))
  return message.flatMap((token, i) => {
    if (token.stem !== 'how' || message[i + 1]?.stem !== 'many') return []
    for (let at = i + 2; at <= i + 8 && at < message.length && !endsCount.test((message[at] as Token).stem); at++) {
      const hit = ofPlaces.has(at) ? undefined : counted.get(at)
      if (hit) return [{ ...hit, from: i, sort: 'ask' as const }]
    }
    return []
  })
}

const questions = new Set([
  'how',
  'what',
  "what's",
  'which',
  'is',
  'are',
  'can',
  'should',
  'do',
  'does',
  'will',
  'would',
  'where',
  'when',
  'could',
  'ok',
  'okay',
  'need',
  'many',
  'much',
])

/** A way of asking counts where it begins with a question word, or stands in a clause that asks and has no quantity right before it. */
function asks(hit: Hit, message: readonly Token[]): boolean {
  if (questions.has((message[hit.from] as Token).stem)) return true
  // "Is a 4x4 strong enough?" asks for a verdict on it; a size before anything else is told of it.
  if (message[hit.from - 1]?.tag && vocabulary.get(hit.word)?.kind !== 'verdict') return false
  // "bags for 6 gate posts, …": a fragment that opens the message.
  if (hit.from === 0 && hit.length >= 2) return true
  // "…, cedar at 15 %, weight of all": or that ends it.
  if (hit.to === message.length && hit.length >= 2 && /^[.;,:\n]$/.test(message[hit.from - 1]?.text ?? '')) return true
  let at = hit.from - 1
  while (at >= 0 && !/^[.;?!,\n]$/.test((message[at] as Token).text))
    if (questions.has((message[at--] as Token).stem) || asking.has((message[at + 1] as Token).stem)) return true
  let end = hit.to
  while (message[end] && !/^[.;?!,\n]$/.test((message[end] as Token).text)) end++
  return message[end]?.text === '?'
}

/** "What is the gap", "… bags?", "and the gravel?": a result called by name, where a question asks for it and no quantity belongs to it. */
function asksByName(hit: Hit, message: readonly Token[], places: readonly PlaceSaid[]): boolean {
  if (hit.sort !== 'name' && hit.sort !== 'thing') return false
  if (places.some((it) => hit.from >= it.from && hit.to <= it.to)) return false
  let at = hit.from - 1
  while (at >= 0 && !message[at]?.tag && filler.has((message[at] as Token).stem)) at--
  if (message[at]?.tag || message[hit.to]?.tag) return false
  if (
    message[hit.to]?.text === '?' &&
    (hit.sort === 'name' ||
      vocabulary.get(hit.word)?.kind === 'count' ||
      vocabulary.get(hit.word)?.kind === 'volume') &&
    opensClause(at, message)
  )
    return true
  // Nothing but small words may stand between the question and what it asks for.
  return hit.sort === 'name' && vocabulary.get(hit.word)?.kind !== 'verdict' && asking.has(message[at]?.stem ?? '')
}

/** Nothing but "and", "what about" stands before it in its clause. */
function opensClause(at: number, message: readonly Token[]): boolean {
  while (at >= 0 && /^(and|what|how|about|also|then|plus|so|or)$/.test((message[at] as Token).stem)) at--
  return at < 0 || /^[.;?!,\n:]$/.test((message[at] as Token).text)
}

/** Whether it is worked for so many posts, or from something that is: the concrete of the holes, as ready-mix. */
const hangsOnPosts = oncePerWord((word) =>
  thatGive(word).some(
    (calc) =>
      calc.needs.posts ||
      Object.keys(calc.needs).some((need) => thatGive(need).some((other) => other.joins && other.needs.posts)),
  ),
)

/** "How many bags together?", "for both?": all kinds of post, unless one of them is named. */
const saysAll = (message: readonly Token[]): boolean => {
  const words = message.map((token) => token.stem)
  const phrase = words.join(' ')
  return (
    !words.some((it) => it === 'corner' || it === 'gate' || it === 'line' || it === 'end') &&
    /\b(?:together|altogether|in all|in total|all together|for both|for all|for every|all the post|whole (?:fence|job|lot)|everything)\b/.test(
      phrase,
    )
  )
}

/** The kinds of post the question is about: those named after it, the only ones named, or those of the talk so far. */
function placeAsked(
  message: readonly Token[],
  places: readonly PlaceSaid[],
  job: Job,
  hits: readonly Hit[],
): (hit: Hit) => string {
  if (saysAll(message)) return () => yard
  const all = [...new Set(places.map((it) => it.place))]
  // "20 posts, 4 corner posts": the question is about them all.
  const countsAll = hits.some(
    (it) =>
      it.word === 'posts' &&
      message[it.from - 1]?.tag &&
      !message[it.from - 1]?.measured &&
      !places.some((place) => it.from >= place.from && it.to <= place.to),
  )
  const counted = job.decisions.filter((it) => it.word === 'posts')
  const last =
    job.wanted.find((it) => counted.some((other) => other.at === it.at)) ??
    (counted.length === 1 ? counted[0] : undefined)
  return (hit) => {
    if (!hangsOnPosts(hit.word)) return yard
    if (all.length === 1 && !countsAll) return all[0] as string
    const after = places.find(
      (it) =>
        it.from >= hit.to &&
        it.from - hit.to <= 8 &&
        !message.slice(hit.to, it.from).some((token) => /^[.;?!\n]$/.test(token.text)),
    )
    return after || all.length > 0 ? (after?.place ?? yard) : (last?.at ?? yard)
  }
}
