// This file is about choosing between the two readings of a message: the one by the vocabulary alone, and the one that was taught.
import {
  askable,
  type Calculation,
  needsFor,
  usualFor,
  vocabulary,
  type Wanted,
  yard,
} from '../../../../engine/index.ts'
import type { Heard, Tagged } from '../../reader.ts'
import type { Bound } from '../bound.ts'
import { likelihood } from '../likelihood.ts'
import { readingsByDate } from '../dated-readings.ts'
import { hoursInTable } from '../hour-table.ts'
import type { PlaceSaid } from '../places.ts'
import { isFed } from '../feeds.ts'
import { isLater } from './features.ts'
import type { Taught } from './read.ts'

/** “At $6.48 each”: things are priced, and have a reader of their own. */
const isPriceOfEach = ({ quantity, end }: Tagged, { said }: Heard): boolean =>
  quantity?.kind === 'money' && /^\s*(each|apiece|a piece)\b/i.test(said.slice(end))

const mostTaught = 24
/** Whether the taught reading may try a message: no table and no readings by their dates, which have readers of their own. */
export const isPlain = (heard: Heard): boolean =>
  heard.readings.length <= mostTaught &&
  // A price by the measure, and several days of the calendar, too.
  heard.readings.every((it) => !it.per && !isPriceOfEach(it, heard)) &&
  heard.readings.filter((it) => it.quantity?.kind === 'date').length <= 1 &&
  !/\t|\n[^\n]*\d[^\n]*\n/.test(heard.said) &&
  hoursInTable(heard).bound.length === 0 &&
  readingsByDate(heard) === undefined

/** Whether a calculation is worked for posts of one kind apart from others: where they are named, or were, the vocabulary says which. */
export const isOfKinds = ({ needs }: Calculation, { job }: Heard, places: readonly PlaceSaid[]): boolean =>
  needs.posts !== undefined && (places.length > 0 || job.decisions.some((it) => it.at !== yard))

// So much better than the next a taught reading must be to be taken before ours, by another calculation.
const clearly = 1.2
// So much where no size is said and the vocabulary names no sum.
const surely = 2
// The least sure binding is hardly surer than its rivals.
const unsure = 3
// So little better than the next, in a talk, that neither is taken: one in three of such answers was wrong.
const close = 0.8

/** What the reading by the vocabulary alone came to. */
interface Own {
  readonly meant: Calculation | undefined
  readonly bound: readonly Bound[]
  readonly loose: readonly Tagged[]
  readonly context: readonly Wanted[]
  /** What the message itself asks for by name. */
  readonly asks: readonly Wanted[]
  /** Whether posts of a kind are named. */
  readonly ofKinds: boolean
}

/**
 * Which reading is taken. It is the taught one, which learned from many sentences, but where ours explains more of the message.
 * In a talk ours goes on only with what the taught one can make nothing of. `torn` where two calculations explain it as well, and ours does not settle it.
 */
export function chosenReading(taught: Taught, own: Own, heard: Heard): 'taught' | 'own' | 'torn' {
  const openTaught = taught.missing + taught.loose.length
  if (own.meant?.plain) return 'own'
  if (isLater(heard.job)) {
    // “July 2 2025” to “on which day do you call?”: a day of the calendar is what it was asked for.
    const isDay = own.bound.some(
      (it) => it.reading.quantity?.kind === 'date' && heard.job.asked.some((asked) => asked.word === it.word),
    )
    if (isDay) return 'own'
    // The same sum, and ours has a place for all that was said.
    const isSame = own.context.length > 0 && own.context.every((it) => taught.calculation.gives[it.word] !== undefined)
    if (isSame && taught.loose.length > 0 && own.loose.length === 0 && own.bound.length > taught.bound.length)
      return 'own'
    if (taught.bound.length === 0 && taught.loose.length > 0 && own.bound.length > 0) return 'own'
    // “How much ready mix would that be?”: it asks by name for what the other sum does not give.
    const isNamed = own.asks.length > 0 && !own.asks.some((it) => taught.calculation.gives[it.word])
    if (isNamed && heard.readings.length === 0) return 'own'
    if (taught.ahead >= close || openTaught > 0) return 'taught'
    return own.loose.length === 0 && (own.bound.length > 0 || own.context.length > 0) ? 'own' : 'torn'
  }
  const wanted = own.context.map((it) => it.word)
  const calcs = own.meant
    ? [own.meant]
    : askable.filter((it) => wanted.length > 0 && wanted.every((word) => it.gives[word]))
  // “How strong must it be against snow drifts?”: no size is said, and no sum of ours is surely meant.
  // “Posts 4 in, pickets”: what is only told is no sum that happens to take it.
  if (calcs.length === 0) return taught.ahead < (heard.readings.length === 0 ? surely : close) ? 'own' : 'taught'
  const isElse = !calcs.some((it) => it.name === taught.calculation.name)
  const has = new Set([
    ...own.bound.flatMap((it) => [it.word, vocabulary.get(it.word)?.otherSide ?? it.word]),
    ...heard.job.decisions.map((it) => it.word),
  ])
  const lacks = (calc: Calculation): number =>
    needsFor(calc, wanted).filter(
      (it) => !has.has(it.name) && !usualFor(calc, it) && it.kind !== 'choice' && !isFed(it.name, has),
    ).length
  const open = Math.min(...calcs.map(lacks)) + own.loose.length
  // Where a kind of post is named, the vocabulary knows what is said of it.
  if (own.ofKinds && open <= openTaught) return 'own'
  if (isElse && taught.ahead <= clearly && open <= openTaught) return 'own'
  // “For a 48 ft run”: no opening is so wide.
  const isOdd = taught.bound.some(({ word, reading }) => {
    const it = vocabulary.get(word)
    return it !== undefined && likelihood(it, reading, heard) < 0
  })
  if (isElse && isOdd && open === 0) return 'own'
  // The same sum, and it is not sure which size is which: ours takes what the vocabulary names.
  const differs = own.bound.some((it) =>
    taught.bound.some((other) => other.reading === it.reading && other.word !== it.word),
  )
  if (!isElse && (open < openTaught || (open === 0 && differs && taught.least < unsure))) return 'own'
  return isElse && taught.ahead < close && openTaught === 0 ? 'torn' : 'taught'
}
