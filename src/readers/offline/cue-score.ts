// This file is about how strongly the words around a quantity speak for a word of the vocabulary: by name, thing and side, and by nearness.
// Every weight is here, in one table, so that it can be read and argued with.
import { vocabulary, type Word } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Hit } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import type { Token } from './stems.ts'

export const weight = {
  name: 3.2,
  side: 2.4,
  thing: 2,
  /** The cue stands right behind the quantity, "10 in holes", or right before it, "gaps at most 2 in": it is as good as said. */
  touching: 3,
  leading: 2.2,
  /** What each step away takes off. */
  step: 0.25,
  /** What stands between them. */
  overQuantity: 0.5,
  overComma: 0.85,
  overSentence: 0.3,
  /** A cue that touches another quantity speaks for that one. */
  owned: 0.2,
  ledTo: 0.4,
  /** It stands ahead of the quantity without touching it. */
  ahead: 0.75,
  /** A side touches the quantity, and the word has no such side. */
  otherSide: 0.35,
  /** A name stands right behind the quantity, "12 % at depth", and it is another word's. */
  otherName: 0.6,
  /** The wanted calculation needs it. */
  needed: 0.9,
  /** Something is asked, and this has nothing to do with it. */
  unneeded: -0.8,
  /** For each calculation that stands between it and the wanted one. */
  behind: -0.1,
  /** So much of a stray word's score is enough for one that the question needs. */
  stray: 0.45,
  /** And where a talk goes on, which is about those. */
  strayInTalk: 0.35,
  /** So much of an unlikely word's score is enough for a likely one. */
  likelier: 0.6,
  /** It was just asked for, and the message says nothing against it. */
  asked: 4,
  /** A stick called by its name, which only one thing is: "6x6". */
  section: 2.6,
  /** Its place says what it is, however near another cue stands: "12 in by 36 in" of a hole, a column of a table, so many at such a price. */
  byPlace: 9,
  /** Both of two sizes are said of one word in so many words. */
  clash: 5.5,
  /** Unless it may as well mean something else. */
  rival: 0.6,
  /** A binding this sure is kept, whether or not the question needs it. */
  strong: 4,
  /** The size is a limit and the word is one. */
  limit: 2.2,
  /** The size is one that the word can well have, or cannot. Narrow words say more. */
  likely: 0.6,
  unlikely: -4.5,
  least: 1.7,
} as const

/** "deep reading" names one thing: the "reading" in it names nothing else. Small words make a name no longer: "legs of" is "legs". */
export function withoutInner(hits: readonly Hit[], message: readonly Token[]): Hit[] {
  const longNames = new Map<number, Hit[]>()
  for (const hit of hits)
    if (hit.sort === 'name' && hit.to - hit.from > 1) longNames.set(hit.from, [...(longNames.get(hit.from) ?? []), hit])
  const longest = 8
  return hits.filter((hit) => {
    if (hit.sort === 'ask') return true
    // In "20 % dry to 12 %" the “dry” is none of the 20 %'s: “dry to” leads on.
    const around = (other: Hit): boolean => other.word === hit.word && other.length > hit.length && other.to >= hit.to
    if (hit.sort === 'side' && longNames.get(hit.from)?.some((other) => around(other) && leadsOn(other, message)))
      return false
    if (message[hit.from - 1]?.tag) return true
    for (let from = hit.from; from > hit.from - longest; from--)
      if (
        longNames
          .get(from)
          ?.some(
            (other) =>
              Math.floor(other.length) > Math.floor(hit.length) && other.to >= hit.to && other.word !== hit.word,
          )
      )
        return false
    return true
  })
}

const dimensions = new Set(
  'wide width deep depth long length tall high height thick thickness diameter across center o.c round'.split(' '),
)

/** "opening 93, …" is a size; "opening three times" is not: nothing that could be counted may follow. */
const endsThere = (token: Token | undefined): boolean =>
  token === undefined ||
  token.tag !== undefined ||
  !/^\p{L}/u.test(token.text) ||
  phraseEnds.has(token.stem) ||
  dimensions.has(token.stem) ||
  /^(max|maximum|clear|most|or|wide|between)$/.test(token.stem)

/** The cues within reach of one quantity: by word, and those that stand right behind it. */
export interface Around {
  readonly byWord: ReadonlyMap<string, readonly Owned[]>
  readonly touching: readonly Owned[]
}

// Further away a cue is worth next to nothing.
const reach = 30

export function around(spot: number, hits: readonly Owned[]): Around {
  const byWord = new Map<string, Owned[]>()
  const touching: Owned[] = []
  for (const hit of hits) {
    if (hit.to < spot - reach || hit.from > spot + reach) continue
    const own = byWord.get(hit.word)
    if (own) own.push(hit)
    else byWord.set(hit.word, [hit])
    if (hit.owner === spot && hit.behind) touching.push(hit)
  }
  return { byWord, touching }
}

/** How strongly the words around speak for it: the best name, the best thing and the best side, each by how near it stands. */
export function cueScore(
  word: Word,
  reading: Tagged,
  spot: number,
  around: Around,
  message: readonly Token[],
  plainly: boolean,
): number {
  const { touching } = around
  const best = { name: 0, thing: 0, side: 0 }
  for (const hit of around.byWord.get(word.name) ?? []) {
    if (hit.sort === 'ask' || hit.sort === 'option') continue
    const value =
      (weight[hit.sort] + bonus(word, hit, spot, plainly)) *
      nearness(hit, spot, message) *
      (1 + 0.08 * (hit.length - 1))
    if (value > best[hit.sort]) best[hit.sort] = value
  }
  // A count belongs to what is counted, and nothing else makes it one.
  if (reading.bare !== null && word.kind === 'count')
    return Math.max(best.thing, best.name) > weight.thing + 1 ? Math.max(best.thing, best.name * 0.8) : 0
  // A bare number measures only where a dimension touches it ("holes 10 wide"), or its name leads up to it ("opening 93");
  // a percentage, where the meter is named.
  if (reading.bare !== null && word.kind !== 'percent') {
    // "22 round holes" are counted; "holes 10 round" are measured.
    const isCounted =
      /^(round|square)$/.test(message[spot + 1]?.stem ?? '') &&
      /^(hole|post|footing)$/.test(message[spot + 2]?.stem ?? '')
    const dimension =
      !isCounted &&
      touching.some(
        (hit) => hit.word === word.name && hit.sort === 'side' && dimensions.has(message[hit.from]?.stem ?? ''),
      )
    const isWhole = reading.bare.d === 1n
    const led = isWhole
      ? best.name > weight.name && endsThere(message[spot + 1])
      : best.name > weight.name || best.thing > weight.thing
    if (word.kind !== 'length' || !(dimension || led)) return 0
  }
  if (reading.bare !== null && word.kind === 'percent' && best.name <= 2) return 0
  if (best.name < 1 && best.side < 1 && !plainly) return 0
  const spoken =
    best.name === 0 && best.thing === 0
      ? best.side * 0.55
      : Math.max(best.name, best.thing) + 0.5 * Math.min(best.name, best.thing) + best.side
  // "30 in deep" is a depth: a word that has no such side is hardly meant, however near its thing stands.
  const sideSaid = touching.some((hit) => hit.sort === 'side')
  const sideMine = touching.some((hit) => hit.word === word.name && hit.sort !== 'thing')
  if (sideSaid && !sideMine) return spoken * weight.otherSide
  const nameSaid = touching.some((hit) => hit.sort === 'name')
  return nameSaid && !sideMine && !(word.kind === 'count') ? spoken * weight.otherName : spoken
}

/** Words that set a limit: a size said as one belongs to them first. */
export const limits = new Set(['widestGap', 'widestBay', 'moistureLimit'])

/** Whether a size beside the thing alone means this word: always, or because the question needs it and no plainer word of that thing. */
export function plainlyMeant(word: Word, needed: ReadonlySet<string>, isStick: boolean): boolean {
  const { plainly } = word.called
  if (plainly === true || (plainly === 'sticks' && isStick)) return true
  if (!needed.has(word.name) || limits.has(word.name)) return false
  const things = word.called.things ?? []
  return ![...needed].some((name) => {
    const other = vocabulary.get(name)
    return (
      other !== word &&
      other?.kind === word.kind &&
      other.called.plainly === true &&
      other.called.things?.some((thing) => things.includes(thing))
    )
  })
}

/** A cue, and the quantity that it touches, if it touches one. */
export interface Owned extends Hit {
  readonly owner: number | null
  readonly behind: boolean
}

const between = new Set([
  'is',
  'are',
  'of',
  'at',
  'most',
  'about',
  'around',
  'no',
  'more',
  'than',
  'wide',
  'wider',
  'exactly',
  'only',
  'a',
  'the',
  '=',
  ':',
  'max',
  'maximum',
  'measure',
  'be',
  'was',
  'were',
  'to',
  'within',
  'under',
  'over',
  'not',
  'roughly',
  'came',
  'out',
  'read',
  'say',
  'said',
  'bigger',
  'larger',
  'less',
  'up',
  'should',
  'can',
  'may',
  'must',
  'will',
  'would',
  'could',
  'have',
  'has',
  'it',
  'i',
  'want',
  'like',
  'allow',
  'keep',
])

/** What lies ahead of each token of a message: worked once, from its end. */
interface Ahead {
  /** The quantity that a cue which ends there leads up to, with nothing but small words between. */
  readonly leadsTo: (at: number) => number | null
  /** "three sides: 40 ft, 60 ft and 40 ft": the first of a row of sizes later in the sentence. */
  readonly rowAfter: (at: number) => number | null
}

function aheadIn(message: readonly Token[]): Ahead {
  const lead: (number | null)[] = []
  const size: (number | null)[] = []
  for (let at = message.length - 1; at >= 0; at--) {
    const token = message[at] as Token
    lead[at] = token.tag ? at : between.has(token.stem) ? (lead[at + 1] ?? null) : null
    size[at] = /^[.;?!\n]$/.test(token.text) ? null : token.measured ? at : (size[at + 1] ?? null)
  }
  return {
    leadsTo: (at) => lead[at] ?? null,
    rowAfter: (at) => {
      const first = size[at] ?? null
      if (first === null) return null
      let next = first + 1
      while (/^(,|and|then|&)$/.test(message[next]?.text ?? '')) next++
      return next > first + 1 && message[next]?.measured ? first : null
    },
  }
}

/** "gap max 2 in board 5 1/2 in opening 93 in": names before sizes, all the way to the end. */
function saysNamesFirst(hits: readonly Hit[], message: readonly Token[]): boolean {
  const last = message.findLastIndex((token) => token.tag !== undefined)
  const named = new Set(hits.filter((hit) => hit.sort === 'thing' || hit.sort === 'name').map((hit) => hit.to))
  const tags = message.flatMap((token, i) => (token.tag ? [i] : []))
  return (
    tags.length > 1 &&
    named.has(last) &&
    !hits.some((hit) => hit.from === last + 1 && hit.sort !== 'ask') &&
    tags.filter((at) => named.has(at)).length >= tags.length - 1
  )
}

// Words that end a phrase: what stands behind them does not touch the quantity before them.
export const phraseEnds = new Set([
  'of',
  'in',
  'with',
  'on',
  'and',
  'at',
  'for',
  'is',
  'are',
  'between',
  'to',
  'from',
  'by',
  'or',
  'per',
  'each',
  'than',
  'the',
  'a',
  'an',
  'if',
  'but',
  'so',
  'that',
  'my',
  'our',
  'then',
  'into',
  'under',
])

const onward = new Set(['to', 'at', 'of', 'from', 'is', 'reads'])
/** Whether a name ends so that it speaks of the quantity right behind it. */
const leadsOn = (hit: Hit, message: readonly Token[]): boolean =>
  onward.has(message[hit.to - 1]?.stem ?? '') && message[hit.to]?.tag !== undefined

/** Which quantity each cue touches: the one right before it, "10 in holes", "11 cedar posts"; else the one it leads up to, "gaps of at most 2 in". */
export function owners(hits: readonly Hit[], message: readonly Token[], places: readonly PlaceSaid[]): Owned[] {
  const leads = saysNamesFirst(hits, message)
  const { leadsTo, rowAfter } = aheadIn(message)
  const placeTo = new Map(places.map((it) => [it.to, it]))
  return hits.map((hit) => {
    const word = vocabulary.get(hit.word)
    const counts = word?.kind === 'count'
    const place = placeTo.get(hit.to)
    const kinds = place && place.from < hit.from ? place : undefined
    const start = kinds ? kinds.from : hit.from
    const [one, two] = [message[start - 1], message[start - 2]]
    // "picket width: 3 1/2 in": a colon gives what follows, whatever stood before.
    if (message[hit.to]?.text === ':' && message[hit.to + 1]?.tag) return ownedBy(hit, start, hit.to + 1, false)
    if (leads && message[hit.to]?.tag) return ownedBy(hit, start, hit.to, false)
    // "24 % dries to 12 %": a name that ends so speaks of what follows it.
    if (hit.sort === 'name' && leadsOn(hit, message)) return ownedBy(hit, start, hit.to, false)
    // "two 42 in gates": the number counts, the size measures.
    if (counts && one?.measured && two?.tag && !two.measured) return ownedBy(hit, start - 1, start - 2, true)
    // "ten 12 in square holes": the same, with one word between the size and the thing.
    const three = message[start - 3]
    const isWordBetween = (): boolean =>
      one !== undefined && !one.tag && /^\p{L}/u.test(one.text) && !phraseEnds.has(one.stem)
    if (counts && two?.measured && three?.tag && !three.measured && isWordBetween())
      return ownedBy(hit, start - 2, start - 3, true)
    // "10 holes of 10 inches": the holes are counted by the bare number, and measured by what comes after.
    // "900 mm in side 3": a name of something counted belongs to the number, not to the size before it.
    const led = leadsTo(hit.to)
    if (counts && hit.sort === 'name' && one?.measured && led !== null && !message[led]?.measured)
      return ownedBy(hit, start, led, false)
    const isBareOfOther = one?.tag !== undefined && !one.measured && !counts && hit.sort !== 'side'
    // "three sides, 40 ft, …": the bare number says how many values follow.
    const row = word?.list && !counts && hit.sort !== 'side' ? rowAfter(hit.to) : null
    if (row !== null && !one?.measured && !two?.measured) return ownedBy(hit, start, row, false)
    if (one?.tag && !(isBareOfOther && leadsTo(hit.to) !== null)) return ownedBy(hit, start, start - 1, true)
    if (two?.tag && one && /^[\p{L}]/u.test(one.text) && !phraseEnds.has(one.stem) && hit.sort !== 'side')
      return ownedBy(hit, start, start - 2, true)
    return ownedBy(hit, start, leadsTo(hit.to), false)
  })
}

/** A cue with the quantity that it touches. Its parts are named one by one: a long message has thousands of them. */
const ownedBy = (
  { word, sort, option, to, length }: Hit,
  from: number,
  owner: number | null,
  behind: boolean,
): Owned => ({
  word,
  sort,
  option,
  from,
  to,
  length,
  owner,
  behind,
})

function bonus(word: Word, hit: Owned, spot: number, plainly: boolean): number {
  // A thing alone says which word is meant only where that word is its plain measure: pickets have a width before they have a gap.
  if (hit.owner !== spot || (hit.sort === 'thing' && !plainly && word.kind !== 'count')) return 0
  return (hit.behind ? weight.touching : weight.leading) * (hit.sort === 'side' ? 0.5 : 1)
}

function nearness(hit: Owned, spot: number, message: readonly Token[]): number {
  const [from, to] = hit.from > spot ? [spot + 1, hit.from] : [hit.to, spot]
  let near = 1 / (1 + weight.step * Math.max(0, to - from))
  for (let i = from; i < to; i++) {
    const token = message[i] as Token
    if (token.tag) near *= weight.overQuantity
    else if (token.text === ',') near *= weight.overComma
    else if (/^[.;?!\n]$/.test(token.text)) near *= weight.overSentence
  }
  // What was spoken of before goes on being spoken of: "holes 30 in deep, 10 in across".
  if (hit.from > spot && hit.owner !== spot) near *= weight.ahead
  if (hit.owner === null || hit.owner === spot) return near
  return near * (hit.behind ? weight.owned : hit.sort === 'thing' ? 1 : weight.ledTo)
}
