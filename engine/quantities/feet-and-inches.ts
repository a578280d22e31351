// This file is about feet with inches behind them, in all the ways that people write and say them.
import type Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { isLoose } from './loose-material.ts'
import { fractionAfter, type NumberRead, numberAt, spokenFractionAfter } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { sectionAt } from './sections.ts'
import { isUnitWanted, unitAfter, unitAt, type UnitRead } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** Feet with inches after them: 7' 10 3/8", 7 ft 10 in, 7ft10, seven foot ten and three eighths. */
export function inchesAfter(tokens: readonly Scanned[], feet: Fraction, unit: UnitRead, metric: boolean): Found | null {
  if (feet.d !== 1n) return null
  let at = unit.next
  const joint = tokens[at]
  if (joint?.text === '-' || joint?.text === ',' || /^(and|&)$/.test(lower(joint))) {
    if (joint?.text === ',' && !closesAfterInches(tokens, at + 1, metric)) return null
    at++
  }
  const whole = numberAt(tokens, at, false)
  // "two feet and a half" is half a foot; "8 foot 4x4 posts" are called by their size.
  if (
    !whole ||
    sectionAt(tokens, at) !== null ||
    whole.value.compare(12) >= 0 ||
    whole.note ||
    whole.feet ||
    (whole.spoken && whole.value.compare(1) < 0 && lower(joint) === 'and' && !unitAt(tokens, whole.next, metric))
  )
    return null
  const inch = unitAt(tokens, whole.next, metric)
  const total = feet.add(whole.value.div(12))
  // "fence 4 ft 6 in of gravel": nobody lays feet of it, so these are two measures.
  if (inch && lower(tokens[inch.next]) === 'of' && isLoose(tokens[inch.next + 1])) return null
  if (inch?.unit === 'in' && unitAfter(tokens, whole.next, metric)) {
    const extra = whole.hasFraction ? null : fractionBehind(tokens, inch.next, metric)
    return {
      next: extra ? extra.next : inch.next,
      quantity: quantity(extra ? total.add(extra.value.div(12)) : total, 'ft'),
      bare: null,
    }
  }
  const isWanted = isUnitWanted(tokens, whole.next, metric)
  if ((inch && !isWanted) || joint?.text === ',') return null
  const follower = tokens[whole.next]
  const closes =
    isWanted || endsMeasure(follower) || outOf.test(lower(follower)) || (!whole.spoken && endsFeet(tokens, whole.next))
  const tight = tokens[at]?.glued === true || tokens[unit.next - 1]?.text === "'"
  // Without a unit of its own the inch is believed when it is glued on, ends the measure, or carries a fraction.
  if (tight || closes || whole.hasFraction)
    return joint?.text === '-' && !tight && !whole.hasFraction
      ? null
      : {
          next: whole.next,
          quantity: quantity(total, 'ft'),
          bare: null,
          note: 'the number after the feet is read as inches',
        }
  return null
}

// “Four foot two out of the ground”, also where it is said in words.
const outOf = /^(out|above|below|under|underground)$/

/** "3 inches and a half", "an inch and 3/8": a fraction that stands behind its unit. In figures it must end the measure: "3 in and 1/2 in" are two. */
export function fractionBehind(
  tokens: readonly Scanned[],
  at: number,
  metric: boolean,
): { value: Fraction; next: number } | null {
  const spoken = spokenFractionAfter(tokens, at)
  // “40 in and half inch gap each side” are two.
  const own = spoken && unitAt(tokens, spoken.next, metric)
  if (spoken && own && !endsPhrase(tokens[own.next])) return null
  if (spoken) return spoken
  const written = /^(and|&)$/.test(lower(tokens[at])) ? fractionAfter(tokens, at) : null
  return written && !unitAt(tokens, written.next, metric) && endsMeasure(tokens[written.next]) ? written : null
}

/** Whether what follows a number shows that nothing is counted by it: "5 foot 8 high", "3 ft 6 gate", but not "40 ft 6 posts". */
export const endsMeasure = (follower: Scanned | undefined): boolean =>
  follower === undefined || follower.sort === 'sign' || closing.has(lower(follower))
const closing = new Set(
  'plus minus times less wide long tall high deep thick across apart square clear off inside between over down by x and with from to is but oc centres centers centre center on opening gate bay fence hole run span gap'.split(
    ' ',
  ),
)

/** “27 ft 6 left of the walk”, “6 ft 10 spacing”, “24 ft 8 front”: nothing there is counted; but “40 ft 2 side gates” are two. */
function endsFeet(tokens: readonly Scanned[], at: number): boolean {
  if (aloneBehind.has(lower(tokens[at]))) return true
  const next = tokens[at + 1]
  return sidesBehind.has(lower(tokens[at])) && (endsMeasure(next) || aloneBehind.has(lower(next)))
}
const aloneBehind = new Set(
  'left right into out above under below spacing spacings spaced overall total totalling along past beyond behind before toward towards away for at if so how what which where when then i we my the each either between straight level exactly roughly about'.split(
    ' ',
  ),
)
const sidesBehind = new Set('post front back side sides wall house drive yard line stretch end ends lot'.split(' '))

/** "7 feet, 10 inches" is one length; "fence 4 ft, 6 in of gravel" is two: after a comma the inches must end the phrase. */
function closesAfterInches(tokens: readonly Scanned[], at: number, metric: boolean): boolean {
  const number = numberAt(tokens, at, false)
  const unit = number && unitAt(tokens, number.next, metric)
  if (!unit) return false
  return endsPhrase(tokens[unit.next])
}

const endsPhrase = (follower: Scanned | undefined): boolean =>
  !follower ||
  follower.sort === 'sign' ||
  /^(wide|long|tall|high|deep|apart|clear|across|between)$/i.test(follower.text)

/** "seven ten and 3/8": two spoken numbers, the last with a fraction, are feet and inches; a door of "six-six" too, but "six-eight" may be six to eight. */
export function feetSpoken(tokens: readonly Scanned[], feet: NumberRead): Found | null {
  if (feet.hasFraction || feet.value.d !== 1n) return null
  const isJoined = tokens[feet.next]?.text === '-' && tokens[feet.next]?.glued === true
  const inches = numberAt(tokens, isJoined ? feet.next + 1 : feet.next, false)
  if (!inches || inches.value.compare(12) >= 0 || inches.value.compare(1) < 0 || !inches.spoken) return null
  const isDoor =
    isJoined &&
    feet.value.compare(3) >= 0 &&
    inches.value.compare(feet.value) <= 0 &&
    !isFiveQuarter(feet, inches) &&
    endsMeasure(tokens[inches.next])
  if (inches.value.d === 1n && !isDoor) return null
  const total = feet.value.add(inches.value.div(12))
  return {
    next: inches.next,
    quantity: quantity(total, 'ft'),
    bare: null,
    note: 'two numbers side by side are read as feet and inches',
    rivals: [],
  }
}

const beforeTape =
  /^(got|get|gets|measured|measure|remeasured|taped|retaped|reads|read|diagonals?|diag|is|was|now|it|came|to|and)$/
const isAboutTape = /^(got|get|gets|measured|measure|remeasured|taped|retaped|diagonals?|diag|tape)$/

/** “Retaped it 40 1”, “I got 15 1 and a half”: what a long tape was read at, in feet and inches, and nothing behind it that the second number could count. */
export function taped(tokens: readonly Scanned[], at: number, feet: NumberRead, metric: boolean): Found | null {
  const isWhole = tokens[at]?.sort === 'digits' && feet.next === at + 1 && feet.value.d === 1n
  const inches = isWhole && tokens[feet.next]?.sort === 'digits' ? numberAt(tokens, feet.next, false) : null
  if (metric || !inches || feet.value.compare(5) < 0 || inches.value.compare(12) >= 0) return null
  const follower = lower(tokens[inches.next])
  const ends =
    tokens[inches.next] === undefined || tokens[inches.next]?.sort === 'sign' || /^(and|not|now|so)$/.test(follower)
  if (!ends || !beforeTape.test(lower(tokens[at - 1])) || !tokens.some((it) => isAboutTape.test(lower(it)))) return null
  return {
    next: inches.next,
    quantity: quantity(feet.value.add(inches.value.div(12)), 'ft'),
    bare: null,
    note: 'two numbers side by side are read as feet and inches',
  }
}

/** "Five-four" is a board of five quarters. */
const isFiveQuarter = (first: NumberRead, second: NumberRead): boolean =>
  first.value.equals(5) && second.value.equals(4)
