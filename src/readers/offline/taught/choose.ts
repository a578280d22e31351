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
import { readingsByDate } from '../dated-readings.ts'
import type { PlaceSaid } from '../places.ts'
import { isFed } from '../senses.ts'
import type { Taught } from './read.ts'

const mostTaught = 24
/** Whether the taught reading may try a message: no table, no readings by their dates, no post of a kind: those have readers of their own. */
export const isPlain = (heard: Heard, places: readonly PlaceSaid[]): boolean =>
  places.length === 0 &&
  heard.readings.length <= mostTaught &&
  // A price by the measure, and a day of the calendar, too.
  heard.readings.every((it) => !it.per && it.quantity?.kind !== 'date') &&
  !/\t|\n[^\n]*\d[^\n]*\n/.test(heard.said) &&
  readingsByDate(heard) === undefined &&
  heard.job.decisions.every((it) => it.at === yard)

// So much better a taught reading must explain a message that ours explains whole, by another calculation.
const clearly = 1.2
// And so much, with every binding so sure, where the talk goes on.
const far = 4
const sure = 2

/** What the reading by the vocabulary alone came to. */
interface Own {
  readonly meant: Calculation | undefined
  readonly bound: readonly Bound[]
  readonly loose: readonly Tagged[]
  readonly context: readonly Wanted[]
}

/** Whether the taught reading is taken: where ours leaves more over, or lacks more. It was taught on more sentences, and ours knows more of the talk. */
export function isPreferred(taught: Taught, own: Own, heard: Heard): boolean {
  const wanted = own.context.map((it) => it.word)
  const calcs = own.meant
    ? [own.meant]
    : askable.filter((it) => wanted.length > 0 && wanted.every((word) => it.gives[word]))
  if (calcs.length === 0) return true
  // What goes on with the talk, or answers our own question, and leaves nothing over, is no new question.
  const goesOn = own.context === heard.job.wanted && own.bound.length > 0 && own.loose.length === 0
  if (goesOn && !(taught.ahead > far && taught.least > sure && taught.loose.length === 0)) return false
  const has = new Set([
    ...own.bound.flatMap((it) => [it.word, vocabulary.get(it.word)?.otherSide ?? it.word]),
    ...heard.job.decisions.map((it) => it.word),
  ])
  const lacks = (calc: Calculation): number =>
    needsFor(calc, wanted).filter(
      (it) => !has.has(it.name) && !usualFor(calc, it) && it.kind !== 'choice' && !isFed(it.name, has),
    ).length
  const least = Math.min(...calcs.map(lacks))
  const open = least + own.loose.length
  const openTaught = taught.missing + taught.loose.length
  if (open > 0) return openTaught < open || (openTaught === open && taught.ahead > clearly)
  const isElse = !calcs.some((it) => it.name === taught.calculation.name)
  return isElse && openTaught === 0 && taught.ahead > clearly
}
