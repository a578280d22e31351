// This file is about choosing between the two readings of a message: the one by the vocabulary alone, and the one that was taught.
import {
  type Calculation,
  type Job,
  needsFor,
  runPlaces,
  usualFor,
  vocabulary,
  type Wanted,
  yard,
} from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { type Bound, fromTag, inOrder } from '../bound.ts'
import { thatGiveAll } from '../calculations-by-word.ts'
import { readingsByDate } from '../dated-readings.ts'
import { hoursInTable } from '../hour-table.ts'
import type { PlaceSaid } from '../places.ts'
import type { Token } from '../stems.ts'
import { countsList } from '../fits.ts'
import { isFed } from '../feeds.ts'
import { isLater } from './features.ts'
import type { Either, Taught } from './read.ts'

/** “At $6.48 each”: things are priced, and have a reader of their own. */
const isPriceOfEach = ({ quantity, end }: Tagged, { said }: Heard): boolean =>
  quantity?.kind === 'money' && /^\s*(each|apiece|a piece)\b/i.test(said.slice(end))

/** “3/8 out on 4/12/2024, 5/8 out on 4/10/2025”: a day beside each reading, and no other day. */
const followsOverTime = ({ said, readings }: Heard): boolean =>
  /\b(plumb|lean|leans|leaning|leant|tilt|tilted|tilting|out (?:on|over|in)|moving|moved|creep|creeping)\b/i.test(
    said,
  ) &&
  readings.filter((it) => it.quantity?.kind === 'date').length <
    readings.filter((it) => it.quantity?.kind === 'length' || it.bare !== null).length + 1

const mostTaught = 24
/** Whether the taught reading may try a message: no table and no readings by their dates, which have readers of their own. */
export const isPlain = (heard: Heard): boolean =>
  heard.readings.length <= mostTaught &&
  // A price by the measure, and several days of the calendar, too.
  heard.readings.every((it) => !it.per && !isPriceOfEach(it, heard)) &&
  (heard.readings.filter((it) => it.quantity?.kind === 'date').length <= 1 || followsOverTime(heard)) &&
  !/\t|\n[^\n]*\d[^\n]*\n/.test(heard.said) &&
  hoursInTable(heard).bound.length === 0 &&
  (readingsByDate(heard) === undefined || followsOverTime(heard))

/**
 * Whether a calculation is worked for posts of one kind apart from others: where they are named, or were, the vocabulary says which.
 * “Concrete for the two gate posts, holes 12 in and 36 deep” tells all of one sum, and speaks of no others.
 */
export function isOfKinds(
  { calculation, missing, bound }: Taught,
  { job }: Heard,
  places: readonly PlaceSaid[],
): boolean {
  if (calculation.needs.posts === undefined) return false
  if (job.decisions.some((it) => it.at !== yard)) return true
  const kinds = new Set(places.map((it) => it.place))
  const isWhole = missing === 0 && ownWords.every((it) => bound.some(({ word }) => word === it))
  return kinds.size > 1 || (kinds.size === 1 && !isWhole)
}
const ownWords = ['posts', 'holeDiameter', 'holeDepth']

/** The same reading, where it speaks of posts of one kind: so many of them, and what is asked is asked of them. */
export function atKind(taught: Taught, { job }: Heard, places: readonly PlaceSaid[]): Taught {
  const at = places[0]?.place
  if (at === undefined || !taught.bound.some((it) => it.word === 'posts')) return taught
  const asks = taught.asks.length > 0 ? taught.asks : job.wanted.filter((it) => taught.calculation.gives[it.word])
  return {
    ...taught,
    asks: asks.map(({ word }) => ({ word, at })),
    bound: taught.bound.map((it) => (it.word === 'posts' ? { ...it, at } : it)),
  }
}

/** What the reading by the vocabulary alone came to. */
interface Own {
  readonly meant: Calculation | undefined
  readonly bound: readonly Bound[]
  readonly loose: readonly Tagged[]
  readonly context: readonly Wanted[]
  /** What the message itself asks for by name. */
  readonly asks: readonly Wanted[]
}

// As likely as that a taught reading must be right in all its parts. In a talk more: what is read wrong there is built on.
const likely = { first: -1.2, later: -0.8, named: -0.3 } as const
// Less likely than that it is not worth reading back: nothing of it may be what was meant.
const hopeless = -4

/**
 * Which reading is taken. It is the taught one, which learned from many sentences, but where ours has a place for more of what was said.
 * `unsure` where the taught one has all that it needs, and is not likely enough to be right: it is read back before any figure. `torn` where it is hardly likely at all, or one quantity is the doubt and is asked about alone.
 */
export function chosenReading(taught: Taught, own: Own, heard: Heard): 'taught' | 'own' | 'torn' | 'unsure' {
  const gives = (it: Wanted): boolean => taught.calculation.gives[it.word] !== undefined
  if (lacksSides(taught, heard)) return 'torn'
  if (isBetter(own, taught, heard, gives)) return 'own'
  const isIdle = heard.readings.length === 0
  // “How many pickets in total?” asks by name for what the other sum does not give.
  const isNamed = isIdle && own.asks.length > 0 && !own.asks.some(gives)
  const goesOn = isLater(heard.job) && !standsAlone(taught, heard)
  const enough = isNamed ? likely.named : goesOn ? likely.later : likely.first
  if (taught.missing > 0 || taught.sure >= enough) return 'taught'
  const isSame = own.context.length > 0 && own.context.every(gives)
  const isWhole = isIdle
    ? own.asks.length > 0
    : isSame && own.loose.length === 0 && own.bound.length >= taught.bound.length
  if (isWhole && (isIdle || (!goesOn && agrees(own, taught)))) return 'own'
  return isIdle || taught.doubtful || taught.sure < hopeless ? 'torn' : 'unsure'
}

/** Whether it is another sum than the talk was about, or tells anew what was told of it: nothing is read into it then that was said for something else. */
const standsAlone = ({ calculation, bound }: Taught, { job }: Heard): boolean =>
  !job.results.some((it) => it.calculation === calculation.name) ||
  (bound.length > 0 && bound.every(({ word }) => job.decisions.some((it) => it.word === word)))

/** Whether both readings take each quantity for the same: what two see alike is likelier than one of them says. */
const agrees = (own: Own, taught: Taught): boolean =>
  own.bound.length === taught.bound.length &&
  own.bound.every((it) => taught.bound.some(({ word, reading }) => word === it.word && reading.tag === it.reading.tag))

const severalSides = /\b(?:both|two|each|either|all)\s+(?:of\s+)?(?:the\s+)?(?:\w+\s+)?sides?\b/i
/** “15 by 20, and I fence the two long sides and the bottom”: which sides, and how often, is said in words, and two sizes are not all of them. */
const lacksSides = ({ calculation, bound }: Taught, { said }: Heard): boolean =>
  calculation.needs.fenceSides !== undefined &&
  bound.filter((it) => it.word === 'fenceSides').length === 2 &&
  severalSides.test(said)

/** Whether ours has a place for more of what was said. */
function isBetter(
  { meant, bound, loose, context, asks }: Own,
  taught: Taught,
  heard: Heard,
  gives: (it: Wanted) => boolean,
): boolean {
  if (meant?.plain) return true
  if (isLater(heard.job)) {
    // “July 2 2025” to “on which day do you call?”: a day of the calendar is what it was asked for.
    const isDay = bound.some(
      (it) => it.reading.quantity?.kind === 'date' && heard.job.asked.some((asked) => asked.word === it.word),
    )
    const isSame = context.length > 0 && context.every(gives)
    return isDay || (isSame && loose.length < taught.loose.length && bound.length >= taught.bound.length)
  }
  const wanted = context.map((it) => it.word)
  const calcs = meant ? [meant] : thatGiveAll(wanted)
  const has = new Set(bound.flatMap((it) => [it.word, vocabulary.get(it.word)?.otherSide ?? it.word]))
  const lacks = (calc: Calculation): number =>
    needsFor(calc, wanted).filter(
      (it) => !has.has(it.name) && !usualFor(calc, it) && it.kind !== 'choice' && !isFed(it.name, has),
    ).length
  const open = Math.min(...calcs.map(lacks)) + loose.length
  if (calcs.some((it) => it.name === taught.calculation.name)) return open < taught.missing + taught.loose.length
  // “How many pickets should I buy for a 48 ft run?” asks by name for what those of one bay lead on to.
  const leadsOn = calcs.some((it) => Object.keys(taught.calculation.gives).some((word) => it.needs[word]))
  return asks.length > 0 && open === 0 && leadsOn
}

// As sure as that, and with all that it needs, a message is one sum, though it names ways and lengths: “moved it 300 to the left, bays were 2100”.
const sureSum = -0.3
/** Whether a reading is a sum with nothing lacking and nothing left over, and is very likely right. */
export const isWholeSum = (sum: Taught | undefined): sum is Taught =>
  sum !== undefined && sum.missing === 0 && sum.loose.length === 0 && sum.asks.length > 0 && sum.sure >= sureSum

/** “3 sides 40 ft, 40 ft, 40 ft”: it takes just as many sides as the message says that there are, and they do not close. */
export function hasAllSides({ bound, calculation }: Taught, message: readonly Token[]): boolean {
  const said = message.find(({ reading }, at) => reading?.bare && message[at + 1]?.stem === 'side')?.reading
  const closes = message.some(({ stem }) => /^(clos|closed?|around|round)$/.test(stem))
  const isAll =
    said !== undefined &&
    said !== null &&
    countsList(
      said,
      bound.map((it) => it.word).filter((it) => it === 'fenceSides'),
    )
  return calculation.needs.fenceSides !== undefined && isAll && !closes
}

/** Whether a message that could tell the sides of a fence is rather one sum. */
export const isOneSum = (job: Job, sum: Taught | undefined): boolean =>
  runPlaces(job).length === 0 &&
  isWholeSum(sum) &&
  !sum.calculation.needs.fenceSides &&
  !sum.calculation.needs.runLength

/** What is told and asked beside the quantity that the person is asked about. */
export const tornOf = (
  { asks, bound, chosen, calculation }: Taught,
  either: Either,
): Pick<Request, 'told' | 'wants' | 'calculation' | 'either'> => ({
  told: [...inOrder(bound.filter((it) => it.reading.tag !== either.tag)).map(fromTag), ...chosen],
  wants: [...asks],
  calculation: calculation.name,
  either: [either],
})
