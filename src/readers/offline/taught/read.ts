// This file is about what the taught reading hands to the offline reader: what is asked, by which calculation, and what each quantity is.
import { type Calculation, vocabulary, type Wanted, type Word, yard } from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import type { Bound } from '../bound.ts'
import { isAsked } from '../asked-of-fence.ts'
import { heights, isHeightOfFence, isOfPeople } from '../fits.ts'
import { saysAnew } from '../said-anew.ts'
import { depthOfHoles, saidOutright } from '../said-outright.ts'
import { weight } from '../cue-score.ts'
import { knownIn } from '../feeds.ts'
import type { Hit } from '../lexicon.ts'
import { likelihood } from '../likelihood.ts'
import { foundIn, plains, unitTold, units } from '../plain-phrases.ts'
import { quoted } from '../stems.ts'
import { withWholeRows } from '../rows-said.ts'
import { canBe } from './can-be.ts'
import { type Binding, type Reading, readingsOf, weights } from './decode.ts'
import { lackingFor } from './takes.ts'
import { talkedOf } from './talked.ts'
import { cues, isLater, type Looked, sizedAt } from './features.ts'
import type { MessageKind } from './kinds.ts'
import { kindsOf, optionSaid, resultsAsked } from './weights.ts'
import type { Told } from '../../../request.ts'

export interface Taught {
  /** Empty where the message only tells, or goes on with what the talk was about. */
  readonly asks: readonly Wanted[]
  readonly calculation: Calculation
  readonly bound: readonly Bound[]
  readonly chosen: readonly Told[]
  readonly loose: readonly Tagged[]
  /** A quantity that may be either of two words. */
  readonly either?: Either | undefined
  /** The one to ask about where all of it together is not sure enough. */
  readonly doubtful?: Either | undefined
  /** How sure all of it is together, in logarithms: the calculation, each quantity, and what is asked. */
  readonly sure: number
  readonly missing: number
}

/** A quantity of which the reader cannot tell which of two words it is: the person is asked. */
export interface Either {
  readonly tag: string
  readonly words: [string, string]
}

/** What a message wants, and how sure the weights are of it. */
export interface Sort {
  readonly kind: MessageKind
  readonly share: number
  /** How surely it has to do with a sum: asks for one, or tells something for one. */
  readonly ofSums: number
  readonly ofAdvice: number
  readonly ofTold: number
}

export function sortOf(looked: Looked): Sort {
  const shares = kindsOf(weights(), looked)
  const [kind, share] = [...shares].reduce((a, b) => (b[1] > a[1] ? b : a))
  return {
    kind,
    share,
    ofSums: (shares.get('sum') ?? 0) + (shares.get('told') ?? 0),
    ofAdvice: shares.get('advice') ?? 0,
    ofTold: shares.get('told') ?? 0,
  }
}

/** The best reading of a message; nothing where one size was measured twice, and not alike. */
export function taughtReading(looked: Looked, sort: Sort): Taught | undefined {
  const { job } = looked.heard
  const talk = talkedOf(job).now
  const readings = readingsOf(looked, weights())
  const told = new Set(job.decisions.map((it) => it.word))
  const again = saysAnew(looked.heard, looked.message, looked.hits)
    ? readings.find(
        (it) =>
          talk.includes(it.calculation.name) && it.left.length === 0 && it.bound.every(({ word }) => told.has(word)),
      )
    : undefined
  const [first] = again ? [again] : goingOn(looked, readings, talk)
  if (!first || first.repeated) return undefined
  const { calculation } = first
  // “What about just the sawdust?”: no size, no name of anything, and no talk before it ask for no sum.
  const isAboutIt = looked.hits.some(({ word }) => calculation.gives[word] ?? calculation.needs[word])
  if (looked.heard.readings.length === 0 && !isLater(job) && !isAboutIt) return undefined
  const best = { ...first, ...wholeRows(looked, first) }
  const asks = again ? [] : resultsOf(looked, sort, best, talk)
  const isVerdict = calculation.headlines.some((it) => calculation.gives[it]?.kind === 'verdict')
  const outright = [
    ...depthOfHoles(looked.message, calculation.needs),
    ...saidOutright(looked.message, calculation.needs, job),
    ...peopleIn(looked, best),
    ...railsIn(looked, best),
    ...heightIn(looked, best),
  ]
  const isOutright = ({ reading, word }: Pick<Binding, 'reading' | 'word'>): boolean =>
    outright.some((it) => it.reading === reading || (it.word === word && !calculation.needs[word]?.list))
  // “A 6x6 post (5 1/2 in square)” says the post’s size, and no shape of its hole.
  const placed = [...outright, ...best.bound.filter((it) => !isOutright(it))]
  const chosen = Object.values(calculation.needs).flatMap((word) =>
    word.kind === 'choice' ? (unitAsked(looked, word) ?? optionTold(looked, word, placed)) : [],
  )
  const open = new Set(job.asked.map((it) => it.word))
  const sure = best.bound.filter(
    (it) => isSure(it, isVerdict && !open.has(it.word)) && !isOutright(it) && !isOfUnknown(it, looked),
  )
  const taken = new Set([...outright, ...sure].map((it) => it.reading))
  // What is hardly surer to be that word than another, or none, is left for a question.
  const loose = [...best.left, ...best.bound.map((it) => it.reading)].filter((it) => !taken.has(it))
  const has = new Set([...knownIn(job), ...[...outright, ...sure].map((it) => it.word)])
  // What is lacking is what the results that are asked for lack, and not those that could be.
  const results = [...asks, ...job.wanted.map((it) => it.word)].filter((it) => calculation.gives[it])
  const missing = lackingFor(
    calculation,
    has,
    results.length > 0 ? results.slice(0, Math.max(1, asks.length)) : undefined,
  )
  const only = theOneLacking(looked, { ...best, missing }, loose, has)
  const [either] = best.bound
    .filter(({ reading }) => loose.includes(reading) && reading !== only?.reading)
    .flatMap((it) => eitherOf(it, calculation))
  const isClear = Math.log(sumOf(asks.length > 0 ? readings : [], best.score)) < oneCalculation
  const [doubtful] = isClear
    ? [...sure]
        .sort((a, b) => a.sure - b.sure)
        .filter((it) => it.sure < hardlySure)
        .flatMap((it) => eitherOf(it, calculation))
    : []
  return {
    asks: asks.map((word) => ({ word, at: yard })),
    calculation,
    either,
    doubtful,
    bound: [
      ...outright,
      ...sure.map((it) => ({ reading: it.reading, word: strict(it, calculation), at: yard, score: it.sure })),
      ...(only ? [only] : []),
    ],
    chosen,
    loose: only ? loose.filter((it) => it !== only.reading) : loose,
    missing: missing.filter((it) => it.name !== only?.word).length,
    sure: surenessOf(
      {
        ...best,
        bound: best.bound.filter((it) => !isOutright(it)),
        left: best.left.filter((it) => it.change?.way !== 'times' && !outright.some(({ reading }) => reading === it)),
      },
      asks.length > 0 ? readings : [],
    ),
  }
}

// What each part counts, beside how much likelier the reading is than the others: found by a logistic regression on the two parts that readings are
// measured by, of which readings were right. How likely the result is that was asked for said nothing there.
const counts = { sizes: 1.4, leastSure: 1, left: 0.5 } as const
// What is taken because nothing else is left, and what stands behind a sum, is mostly right.
const byItself = 0.75

/** “How many bags again?”: no size, and what was wanted last is asked for once more, of the sum that the talk is about. */
function goingOn(looked: Looked, readings: readonly Reading[], talk: readonly string[]): readonly Reading[] {
  const { readings: sizes, job, said } = looked.heard
  const [first] = readings
  const before = readings.find((it) => talk.includes(it.calculation.name))
  if (sizes.length > 0 || !first || !before || first === before || !/\bagain\b/i.test(said)) return readings
  const [asked] = resultsAsked(weights(), looked, first.calculation).likely
  const isSame = job.wanted.some((it) => it.word === asked?.result && before.calculation.gives[it.word])
  return isSame ? [before, ...readings.filter((it) => it !== before)] : readings
}

/** How likely all readings are together, where the best is 1. */
const sumOf = (readings: readonly Reading[], best: number): number =>
  Math.max(
    1,
    readings.reduce((sum, it) => sum + Math.exp(it.score - best), 0),
  )

// Which calculation is meant is clear, and one quantity in it is not: then it is asked what that one is.
const oneCalculation = 0.3
const hardlySure = 2

/** What a quantity may be that is hardly surer to be one word than another: both must be words of the sum. */
const eitherOf = ({ reading, word, next }: Binding, { needs }: Calculation): Either[] =>
  next && needs[word] && needs[next] ? [{ tag: reading.tag, words: [word, next] }] : []

/** Where it asks for nothing new it does not matter by which calculation it is read. */
function surenessOf({ calculation, bound, left, score }: Reading, others: readonly Reading[]): number {
  const all = sumOf(others, score)
  // “9 cm by 9 cm” says one thing twice: the surer of the two counts.
  const isTwin = ({ word, sure, reading }: Binding): boolean =>
    !calculation.needs[word]?.list && bound.some((it) => it.word === word && it.reading !== reading && it.sure > sure)
  const own = bound.filter((it) => !isTwin(it))
  const sizes = own.map(({ word, sure }) =>
    Math.log(sure === 0 || !calculation.needs[word] ? byItself : 1 / (1 + Math.exp(-sure))),
  )
  return (
    -Math.log(all) +
    counts.sizes * sizes.reduce((sum, it) => sum + it, 0) +
    counts.leastSure * Math.min(0, ...sizes) -
    counts.left * left.length
  )
}

/** One quantity is left, and one word that it can be: one that is lacking, or that the vocabulary names beside it. “Every 8 feet” is how far the readings are apart, and none of them. */
function theOneLacking(
  looked: Looked,
  { calculation, missing }: Reading,
  loose: readonly Tagged[],
  has: ReadonlySet<string>,
): Bound | undefined {
  const [reading, more] = loose
  if (!reading || more) return undefined
  const needed = new Set(Object.keys(calculation.needs))
  const isAble = canBe(looked, reading)
  const spot = looked.message.findIndex((it) => it.tag === reading.tag)
  const size = sizedAt(looked, reading, spot)
  const able = Object.values(calculation.needs).filter(
    (it) =>
      !has.has(it.name) &&
      isAble(it, needed) &&
      likelihood(it, reading, looked.heard) > 0 &&
      (missing.includes(it) || cues(looked, size, it).cue > 0),
  )
  const [word] = able
  return able.length === 1 && word ? { reading, word: word.name, at: yard, score: weight.byPlace } : undefined
}

/** Its bindings with every row of values in one list, and what is left over and lacking then. */
function wholeRows(
  looked: Looked,
  { calculation, bound, left, missing }: Reading,
): Pick<Reading, 'bound' | 'left' | 'missing'> {
  const needed = new Set(Object.keys(calculation.needs))
  const lacking = (by: readonly Binding[]): Word[] =>
    lackingFor(calculation, new Set([...knownIn(looked.heard.job), ...by.map((it) => it.word)]))
  const whole = withWholeRows(looked.message, bound, calculation, lacking, (word, it) =>
    canBe(looked, it)(word, needed),
  )
  if (whole.every((it) => bound.includes(it)) && whole.length === bound.length) return { bound, left, missing }
  const taken = new Set(whole.map((it) => it.reading))
  return {
    bound: whole,
    left: [...left, ...bound.map((it) => it.reading)].filter((it) => !taken.has(it)),
    missing: lacking(whole),
  }
}

/** “Me and my brother”: how many work, where no number says it. */
function peopleIn({ message }: Looked, { calculation, bound }: Reading): Bound[] {
  const word = Object.values(calculation.needs).find(isOfPeople)
  const reading = message.find((it) => it.reading?.people)?.reading
  if (!word || !reading || bound.some((it) => it.word === word.name || it.word === 'helpers')) return []
  return [{ reading, word: word.name, at: yard, score: weight.byPlace }]
}

/** “Where is the middle rail”: there are three. */
function railsIn({ message }: Looked, { calculation, bound }: Reading): Bound[] {
  const reading = message.find((it) => it.reading?.rails)?.reading
  if (!calculation.needs.rails || !reading || bound.some((it) => it.word === 'rails')) return []
  return [{ reading, word: 'rails', at: yard, score: weight.byPlace }]
}

/** “A 4 ft picket fence”: told for whatever asks for it later, where this sum does not. */
function heightIn({ heard }: Looked, { calculation }: Reading): Bound[] {
  const reading = heard.readings.find((it) => isHeightOfFence(it, heard))
  const isTold = [...heights].some((it) => calculation.needs[it])
  return reading && !isTold ? [{ reading, word: 'postAbove', at: yard, score: weight.byPlace }] : []
}

/** “Under 4 in” is less than a gap of 4 in, as a ball of 4 in has it that must not pass. */
const strict = ({ word, reading }: Binding, { needs }: Calculation): string =>
  word === 'widestGap' && reading.firmness === 'less-than' && needs.sphere ? 'sphere' : word

const wholeFrom = 4
// A second thing is asked for too where it is so likely, and where the message has so much room for two.
const secondToo = 0.25

/** What a message asks of the calculation; nothing where it only tells, or goes on with what was asked before. */
function resultsOf(
  looked: Looked,
  sort: Sort,
  { calculation, bound, missing, left }: Reading,
  talk: readonly string[],
): readonly string[] {
  const { job } = looked.heard
  const { likely: byWeight, none } = resultsAsked(weights(), looked, calculation)
  const likely = asNamed(looked, calculation, byWeight)
  const tooNamed = namedToo(looked, calculation, likely)
  const asked = likely
    .map((it) => ({ ...it, of: ofEach(it.result, { calculation, bound }, looked) }))
    // What is asked of all holes is not asked of one too.
    .filter(({ result, share, of }, i) => i === 0 || (share > secondToo && of === result) || tooNamed.has(result))
    .map((it) => it.of)
    // What is told together with the first is not asked apart.
    .filter((it, i, [first]) => i === 0 || !calculation.together?.[first as string]?.includes(it))
  const goesOn = talk.includes(calculation.name) && job.wanted.length > 0
  if (goesOn && none > 0.5) return []
  // “What about without gravel?”: where it is hardly clear what is asked, it is what was asked before.
  const before = job.wanted.flatMap(({ word }) => (calculation.gives[word] ? [word] : []))
  if (goesOn && (likely[0]?.share ?? 1) < 0.5 && before.length > 0) return before
  // “It's for a picket fence”: no size, no question and no name of a result ask for another sum.
  const isNamed = looked.hits.some((it) => it.word === likely[0]?.result)
  const isIdle = bound.length === 0 && looked.heard.readings.length === 0
  if (isLater(job) && isIdle && !talk.includes(calculation.name) && !isNamed && !isAsked(looked.message)) return []
  // What answers our own question, and asks nothing, goes on with what was asked before.
  const answersUs = bound.length > 0 && bound.every(({ word }) => job.asked.some((it) => it.word === word))
  if (answersUs && goesOn && !isAsked(looked.message)) return []
  // A message at the beginning of a talk that only tells asks nothing yet.
  // But where it tells all that a sum needs, and nothing else, the sum is what it is told for.
  const isWhole = missing.length === 0 && left.length === 0 && bound.length >= wholeFrom
  if (sort.kind === 'told' && sort.share > 0.7 && job.wanted.length === 0 && bound.length > 0 && !isWhole) return []
  return asked.length > 0 ? asked : calculation.headlines.slice(0, 1)
}

/** “How many 60 lb bags for 12 holes” asks in so many words for what can be counted: no volume is likelier than that. */
function asNamed<T extends { readonly result: string }>(
  { hits }: Looked,
  { gives, needs }: Calculation,
  likely: readonly T[],
): readonly T[] {
  const [first] = likely
  const kindOf = (word: string | undefined) => (word === undefined ? undefined : gives[word]?.kind)
  const kinds = hits.flatMap((it) => (it.sort === 'ask' && gives[it.word] && !needs[it.word] ? [kindOf(it.word)] : []))
  if (kinds.includes(kindOf(first?.result))) return likely
  const best = likely.find((it) => kinds.includes(kindOf(it.result)))
  return best ? [best, ...likely.filter((it) => it !== best)] : likely
}

// “Per hole”, “for one post”; but “each hole is 12 in wide” only tells of the holes.
const ofOneHole =
  /\b(?:per|(?:in|for|to|into) (?:each|every|one|an?|the))\s+(?:\w+\s+)?(?:hole|post|footing|pit)\b(?!s)|\b(?:a|each|every|one)\s+(?:hole|footing|pit)\s*(?:[?]|$)/i

/** “How many bags per hole?” asks for those of one, and so does who never says how many holes there are; else those of the job are meant. */
function ofEach(
  result: string,
  { calculation: { gives }, bound }: Pick<Reading, 'calculation' | 'bound'>,
  { heard: { said, job } }: Looked,
): string {
  const ofAll = result.replace(/PerHole$/, '')
  const ofOne = `${ofAll}PerHole`
  if (!gives[ofAll] || !gives[ofOne]) return result
  const isCounted = knownIn(job).has('posts') || bound.some((it) => it.word === 'posts')
  return ofOneHole.test(said) || (!isCounted && result === ofOne) ? ofOne : ofAll
}

// So near a size stands what it is called by.
const named = { behind: 2, ahead: 4 } as const

/** “How many pickets, and what’s the exact gap?”: results that are named apart from the likeliest, with no size beside them. */
function namedToo(
  { message, hits }: Looked,
  { gives, needs }: Calculation,
  likely: readonly { readonly result: string }[],
): ReadonlySet<string> {
  const rank = (word: string): number => likely.findIndex((it) => it.result === word)
  // “With gaps no wider than 2 1/2 in”; but “how much sand for a strip 50 ft long”.
  const isOfSize = ({ from, to }: Hit): boolean => {
    const stop = message.slice(to).findIndex((it) => /^([.,;:?!\n]|for|with|in|if|on|from)$/.test(it.text))
    const ahead = message.slice(to, to + Math.min(named.ahead, stop < 0 ? named.ahead : stop))
    return [...message.slice(Math.max(0, from - named.behind), from), ...ahead].some((it) => it.reading)
  }
  const able = hits.filter((it) => gives[it.word] && !needs[it.word] && /^(ask|name)$/.test(it.sort) && !isOfSize(it))
  const spans = new Set(able.map((it) => `${it.from} ${it.to}`))
  const best = [...spans].map((span) =>
    able
      .filter((it) => `${it.from} ${it.to}` === span)
      .map((it) => it.word)
      .reduce((a, b) => (rank(b) < rank(a) ? b : a)),
  )
  return new Set(best.length > 1 ? best : [])
}

/** “With 7 thingummies”: a number of things that no sentence ever spoke of. */
function isOfUnknown({ reading, word }: Binding, { message }: Looked): boolean {
  const next = message[message.findIndex((it) => it.tag === reading.tag) + 1]
  const isThings = next !== undefined && /^\p{L}{4,}s$/u.test(next.text)
  return isThings && vocabulary.get(word)?.kind === 'count' && weights().asks.seen[next.stem] === undefined
}

// “The thingummy is 3 in”: no verdict is given on a size that nothing names and that is not very sure.
const enough = { named: 0.5, unnamed: 0.5, unnamedInVerdict: 2 } as const
const isSure = ({ sure, named }: Binding, isVerdict: boolean): boolean =>
  named
    ? sure === 0 || sure >= enough.named
    : isVerdict
      ? sure >= enough.unnamedInVerdict
      : sure === 0 || sure >= enough.unnamed

/** What a word is of: `post` of `postWidth`. */
const thingOf = (word: string): string | undefined => /^[a-z]+/.exec(word)?.[0]

/** “In mm”: the unit that a plain sum is wanted in. */
function unitAsked({ heard, message }: Looked, word: Word): Told[] | undefined {
  const plain = plains.find((it) => it.unit === word)
  const told = plain ? unitTold(plain, foundIn(message, units), heard, message) : []
  return told.length > 0 ? told : undefined
}

/** An option that a message says, with the words that say so. */
function optionTold(looked: Looked, word: Word, bound: readonly Pick<Binding, 'reading' | 'word'>[]): Told[] {
  const { heard, message } = looked
  const said = optionSaid(weights(), looked, word)
  if (!said || said.share < 0.6) return []
  const { from, to } = said
  // A size alone says no option: the vocabulary knows what is written beside it, as in “$28/ft”.
  if (from === to && message[from]?.tag) return []
  // “Posts 100 mm square. Holes 300 wide”: what stands right behind a size is said of the same thing.
  const size = bound.find(({ reading }) => [message[from - 1], message[from]].some((it) => it?.tag === reading.tag))
  if (size && to - from <= 1 && thingOf(size.word) !== thingOf(word.name)) return []
  // “Trees, not open country”: that is what it is not, and the vocabulary says what is meant.
  if (/^(no|not|nowhere|never|isn't|aren't|wasn't|ain't|hasn't|haven't)$/.test(message[from - 1]?.stem ?? '')) return []
  const quote = quoted(heard.said, message, from, to + 1)
  return [{ word: word.name, at: yard, from: { tag: null, quote, option: said.option, usual: null } }]
}
