// This file is about senses: which calculation a question means, where its words alone would leave it open or lead astray.
// Each sense is tried on the whole message. The one that leaves the fewest quantities over, and the fewest things to ask, is meant.
import { tableOf } from '../../../engine/index.ts'
import { type Calculation, askable, needsFor, usualFor, type Wanted, type Word, yard } from '../../../engine/index.ts'
import type { Heard } from '../reader.ts'
import type { Bound } from './bound.ts'
import { thatGiveAll, thatNeed } from './calculations-by-word.ts'
import { isFed } from './feeds.ts'
import { calculationsIn, type Hit } from './lexicon.ts'
import { filler, type Token, tokens } from './stems.ts'

/** What is asked for, and by which calculation where one is meant. */
export interface Sense {
  readonly asks: readonly Wanted[]
  readonly meant: Calculation | undefined
  /** How much the words of the question alone speak for it. */
  readonly prior?: number
  /** How many of its needs are spoken of. */
  readonly near?: number
}

/** The word by which a calculation answers what was asked, if it can. */
export type Own = (calc: Calculation, want: Wanted) => string | undefined

const weigh = {
  /** The sense that the words of the question gave. */
  first: 1.6,
  /** It gives the very word that was asked for, or one that is asked for in the same words. */
  asked: 1.5,
  /** It answers what was asked with a word of its own. */
  own: 0.6,
  /** It gives something that the question speaks of. */
  sort: 1.2,
  least: 0.3,
  near: 0.3,
  /** It is called by a phrase of its own. */
  called: 1.2,
  bound: 1.5,
  /** It belongs to what stands behind, and so speaks less for this one. */
  behind: 0.6,
  left: -1,
  missing: -0.7,
  /** Another sense must be this much better than the first. */
  margin: 0.8,
} as const

/** What is wanted of a calculation: its own word for what was asked, or its headline where nothing was. */
export const askedOf = (meant: Calculation | undefined, wants: readonly Wanted[], own: Own): Wanted[] =>
  !meant
    ? [...wants]
    : wants.length === 0
      ? meant.headlines.slice(0, 1).map((word) => ({ word, at: yard }))
      : wants.map((it) => ({ ...it, word: own(meant, it) ?? it.word }))

const questions = /^(how|what|what's|whats|which|when|where|is|are|am|can|do|does|will|would|should|find|need)$/

/** Whether a message asks at all, and does not only tell. */
export const asksSomething = (message: readonly Token[]): boolean =>
  message.some((token) => token.text === '?' || questions.test(token.stem))

/** The other senses that the message may have: calculations whose things it speaks of, and that give something like what is asked. */
export function sensesOf(wants: readonly Wanted[], message: readonly Token[], hits: readonly Hit[], own: Own): Sense[] {
  const called = calculationsIn(message)
  const spoken = new Set(hits.filter((hit) => hit.sort !== 'side').map((hit) => hit.word))
  const askedFor = new Set(hits.filter((hit) => hit.sort === 'ask').map((hit) => hit.word))
  const question = questionIn(message)
  const distinct = hits.filter((hit) => hit.sort === 'ask' && isDistinct(hit, message))
  const wanted = distinct.filter((hit) => wants.some((it) => it.word === hit.word))
  // Others that are asked for by the same phrase are asked for as plainly.
  const plainly = new Set(
    distinct.filter((hit) => wanted.some((it) => hit.from < it.to && it.from < hit.to)).map((hit) => hit.word),
  )
  const isPlainlyAsked = plainly.size > 0
  const needing = new Map<Calculation, number>()
  for (const word of spoken) for (const calc of thatNeed(word)) needing.set(calc, (needing.get(calc) ?? 0) + 1)
  return askable.flatMap((calc) => {
    const isCalled = called.includes(calc.name)
    const near = needing.get(calc) ?? 0
    if (!isCalled && near === 0) return []
    // What was asked for by a phrase of its own, "board feet", is not swapped for something else.
    if (isPlainlyAsked && !Object.keys(calc.gives).some((word) => plainly.has(word))) return []
    const likeness = (word: Word): number => {
      if (question.kinds && !question.kinds.includes(word.kind)) return 0
      const shared = question.words.filter((it) => nameStems(word).has(it)).length
      const headline = calc.headlines.includes(word.name) ? 0.1 : 0
      return weigh.sort * (question.words.length === 0 ? 0.5 : shared / question.words.length + headline)
    }
    const rated = Object.values(calc.gives)
      .map((word) => {
        const isAsked = askedFor.has(word.name) || wants.some((it) => it.word === word.name)
        return { word: word.name, prior: isAsked ? weigh.asked : likeness(word) }
      })
      .sort((a, b) => b.prior - a.prior)
    const [want] = wants
    const answer = want && own(calc, want)
    const best = answer ? { word: answer, prior: Math.max(weigh.own, rated[0]?.prior ?? 0) } : rated[0]
    const prior = (best?.prior ?? 0) + (isCalled ? weigh.called : 0)
    if (!best || prior < weigh.least) return []
    return [{ asks: [{ word: best.word, at: want?.at ?? yard }], meant: calc, prior, near }]
  })
}

/** A phrase of two words and more beside its question words, which no other thing is asked by: "how many board feet". */
const isDistinct = (hit: Hit, message: readonly Token[]): boolean =>
  message
    .slice(hit.from, hit.to)
    .filter(({ stem }) => !questions.test(stem) && !filler.has(stem) && !measures.has(stem) && !sizes.has(stem))
    .length >= 2

/** What the question is about: the words that mean something in its sentence, and what kind of thing answers it. */
function questionIn(message: readonly Token[]): { words: string[]; kinds: readonly Word['kind'][] | undefined } {
  const at = message.findLastIndex((token) => questions.test(token.stem))
  if (at < 0) return { words: [], kinds: undefined }
  const end = message.findIndex((token, i) => i > at && /^[.;?!\n:]$/.test(token.text))
  const clause = message.slice(at, end < 0 ? message.length : end)
  const [first, second] = [clause[0]?.stem ?? '', clause[1]?.stem ?? '']
  const words = clause.filter((token) => !token.tag && /^\p{L}/u.test(token.text)).map((token) => token.stem)
  return {
    words: [...new Set(words.filter((it) => !filler.has(it) && !questions.test(it) && !measures.has(it)))],
    kinds: first === 'how' ? kindsAsked[second] : undefined,
  }
}

// What most things have: it tells none of them apart.
const sizes = new Set(
  'length width height depth weight weigh volume area cost price size total number amount both all they them'.split(
    ' ',
  ),
)

const measures = new Set(
  'many much long wide high deep far tall big heavy in on each at with by as so or and what'.split(' '),
)
const kindsAsked = tableOf<readonly Word['kind'][]>({
  many: ['count'],
  long: ['length', 'duration'],
  wide: ['length'],
  high: ['length'],
  deep: ['length'],
  far: ['length'],
  tall: ['length'],
  heavy: ['mass'],
})

const stemsByWord = new Map<string, ReadonlySet<string>>()

/** Everything that a word is called, as single words. */
function nameStems(word: Word): ReadonlySet<string> {
  const known = stemsByWord.get(word.name)
  if (known) return known
  const { names = [], things = [], asks = [] } = word.called
  const stems = new Set([word.label, ...names, ...things, ...asks].flatMap((text) => tokens(text).map((it) => it.stem)))
  stemsByWord.set(word.name, stems)
  return stems
}

const hope = ({ prior = 0, near = 0 }: Sense): number => prior + near * weigh.near

// A question has a dozen senses at most that are worth a try, and a list of sizes is no question.
const mostSenses = 12
const mostReadings = 30

/** The sense that explains the message best. The first stands unless another is clearly better. `isBoundOnce` where no quantity is told at several places. */
export function bestSense(
  first: Sense,
  others: readonly Sense[],
  bindFor: (sense: Sense) => { readonly bound: readonly Bound[] },
  heard: Heard,
  isBoundOnce: boolean,
): Sense {
  if (others.length === 0 || heard.readings.length > mostReadings) return first
  const likeliest = [...others].sort((a, b) => hope(b) - hope(a)).slice(0, mostSenses)
  const mine = explains(
    { ...first, prior: weigh.first + (first.meant ? weigh.called : 0) },
    bindFor(first).bound,
    heard,
    // What stands behind the very thing that was asked for is part of the question.
    1,
  )
  let best = { sense: first, score: mine + weigh.margin }
  for (const sense of likeliest) {
    // Each quantity is bound once at most. What could not be better even so need not be tried.
    const most = (sense.prior ?? 0) + heard.readings.length * weigh.bound
    if (isBoundOnce && most <= best.score) continue
    const score = explains(sense, bindFor(sense).bound, heard, weigh.behind)
    if (score > best.score) best = { sense, score }
  }
  return best.sense
}

/** How well a sense explains the message: what it binds, what it leaves over, and what would have to be asked. */
function explains({ asks, meant, prior = 0 }: Sense, bound: readonly Bound[], heard: Heard, behind: number): number {
  const answering = meant ? [meant] : thatGiveAll(asks.map((it) => it.word))
  const scores = answering.map((calc) => {
    const mine = bound.filter((it) => calc.needs[it.word] || isBehind(calc, it.word))
    const strength = mine.reduce((sum, it) => sum + Math.min(1, it.score / 4) * (calc.needs[it.word] ? 1 : behind), 0)
    const left = heard.readings.length - mine.length
    const wanted = asks.map((it) => it.word)
    const told = new Set([...mine.map((it) => it.word), ...heard.job.decisions.map((it) => it.word)])
    const missing = needsFor(calc, wanted).filter(
      (word) => !told.has(word.name) && !usualFor(calc, word) && word.kind !== 'choice' && !isFed(word.name, told),
    )
    return strength * weigh.bound + left * weigh.left + missing.length * weigh.missing
  })
  return prior + (scores.length > 0 ? Math.max(...scores) : heard.readings.length * weigh.left)
}

const wordsBehind = new Map(
  askable.map((calc) => [
    calc.name,
    new Set(
      askable
        .filter((other) => other.joins && Object.keys(other.gives).some((it) => calc.needs[it]))
        .flatMap((other) => Object.keys(other.needs)),
    ),
  ]),
)

/** Whether a word belongs to a calculation that may stand in for what this one needs. */
const isBehind = (calc: Calculation, word: string): boolean => wordsBehind.get(calc.name)?.has(word) ?? false
