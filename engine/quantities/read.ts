// This file is about reading quantities: every one in a message, exactly, with where it stands and how it was taken.
import Fraction from 'fraction.js'
import { spreadOf } from './coverage.ts'
import { type DayAndMonth, dateAt, dayAndMonthAt, inYearOf, isDateOrTime } from './dates.ts'
import { firmnessOf } from './firmness.ts'
import { endsMeasure, feetSpoken, inchesAfter } from './feet-and-inches.ts'
import type { Found, Habits } from './found.ts'
import { looseYard } from './loose-material.ts'
import { barePriceAt, endsMoney, inQuotes, moneyAt } from './money.ts'
import { type NumberRead, numberAt, spokenFractionAfter } from './numbers.ts'
import { quantity } from './quantity.ts'
import { proportionAt, type Term } from './proportions.ts'
import type { Reading } from './reading.ts'
import { pointsIn } from './points.ts'
import { plainForm, scan, type Scanned } from './scan.ts'
import { inTheirRow, underTheirHeads } from './rows.ts'
import { sectionAt } from './sections.ts'
import { unitNamed } from './units.ts'
import { coldAt, opposite, temperatureAt } from './temperatures.ts'
import { hourAt } from './times-of-day.ts'
import { unitAfter, unitAt, type UnitRead } from './unit-words.ts'

/** Every quantity of the message, in order. Offsets are those of the message as it was typed. */
export function readQuantities(message: string, habits: Habits = {}): Reading[] {
  const text = plainForm(message)
  const points = pointsIn(text, habits.system ?? 'imperial')
  const [first, last] = [points[0], points.at(-1)]
  // What stands among corner points is one of their measures, or their unit.
  const apart = (it: Reading): boolean => !first || !last || it.end <= first.start || it.start > last.end
  const others = quantitiesIn(message, habits).filter(apart)
  const read = inQuotes(underTheirHeads(inTheirRow(others, text), text, unitSaidBy), text)
  return points.length > 0 ? [...read, ...points].sort((a, b) => a.start - b.start) : read
}

function quantitiesIn(message: string, habits: Habits = {}): Reading[] {
  const tokens = scan(plainForm(message))
  const metric = habits.system === 'metric'
  const readings: Reading[] = []
  const yearless: (DayAndMonth & { readonly at: number })[] = []
  for (let at = 0; at < tokens.length; ) {
    const terms = proportionAt(tokens, at)
    if (terms) {
      for (const { from, next, value } of terms) {
        const [start, end] = [(tokens[from] as Scanned).start, (tokens[next - 1] as Scanned).end]
        const said = message.slice(start, end)
        readings.push({
          start,
          end,
          said,
          quantity: null,
          bare: value,
          firmness: 'exactly',
          rivals: [],
          proportion: true,
        })
      }
      at = (terms.at(-1) as Term).next
      continue
    }
    const day = dateAt(tokens, at) ? null : dayAndMonthAt(tokens, at)
    if (day) {
      yearless.push({ ...day, at })
      at = day.next
      continue
    }
    const found = isPartOfName(tokens, at) ? null : quantityAt(tokens, at, habits, metric)
    if (!found || found.next <= at) {
      at = isPartOfName(tokens, at) ? skipName(tokens, at) : at + 1
      continue
    }
    const [start, end] = [(tokens[at] as Scanned).start, (tokens[found.next - 1] as Scanned).end]
    const firmness = firmnessOf(tokens, at, found)
    readings.push({
      start,
      end,
      said: message.slice(start, end),
      quantity: found.quantity,
      bare: found.bare,
      firmness,
      rivals: found.rivals ?? [],
      ...(found.high ? { high: found.high } : {}),
      ...(found.bareHigh ? { bareHigh: found.bareHigh } : {}),
      ...(found.section ? { section: found.section } : {}),
      ...(found.clock ? { clock: found.clock } : {}),
      ...(found.per ? { per: found.per } : {}),
      ...(found.note ? { note: found.note } : {}),
    })
    at = found.next
    const long = found.section ? lengthOfStick(tokens, at) : null
    if (long) {
      const { start: from, end: to } = tokens[at + 1] as Scanned
      readings.push({ start: from, end: to, said: message.slice(from, to), firmness: 'exactly', rivals: [], ...long })
      at += 2
    }
  }
  return [...readings, ...datesFrom(yearless, readings, tokens, message, habits)].sort((a, b) => a.start - b.start)
}

/** “2x4x8” carries its length on, in feet; from 36 up in inches: “2x4x96”. */
function lengthOfStick(tokens: readonly Scanned[], at: number): Pick<Reading, 'quantity' | 'bare'> | null {
  const [joint, length] = [tokens[at], tokens[at + 1]]
  if (lower(joint) !== 'x' || !joint?.glued || !/^\d{1,3}$/.test(length?.text ?? '') || !length?.glued) return null
  const long = Number(length.text)
  if (
    long < 3 ||
    (long > 24 && long < 36) ||
    long > 300 ||
    (tokens[at + 2]?.glued && /^[\dx'"/.-]/.test(lower(tokens[at + 2])))
  )
    return null
  return { quantity: quantity(long, long < 36 ? 'ft' : 'in'), bare: null }
}

/** The days that were said without their year, each in the year of the whole date nearest to it in the message, or of the talk. Without one they are no dates. */
function datesFrom(
  yearless: readonly (DayAndMonth & { readonly at: number })[],
  readings: readonly Reading[],
  tokens: readonly Scanned[],
  message: string,
  { near }: Habits,
): Reading[] {
  const dated = readings.filter((it) => it.quantity?.kind === 'date' && it.rivals.length === 0)
  return yearless.flatMap((it) => {
    const [start, end] = [(tokens[it.at] as Scanned).start, (tokens[it.next - 1] as Scanned).end]
    const before = dated.findLast((other) => other.start < start)
    const other = (before ?? dated.find((each) => each.start > start))?.quantity ?? near
    const found = other && inYearOf(it, other, before !== undefined || dated.length === 0)
    if (!found) return []
    return [
      {
        start,
        end,
        said: message.slice(start, end),
        quantity: found.quantity,
        bare: null,
        firmness: 'exactly' as const,
        rivals: [],
        ...(found.note ? { note: found.note } : {}),
      },
    ]
  })
}

/** A unit as the head of a column or a form has it: "°F", "%", "in". */
const unitSaidBy = (said: string): string | undefined => {
  const [only, more] = quantitiesIn(`1 ${said}`)
  return only?.quantity && !more && only.end === said.length + 2 ? only.quantity.unit : undefined
}

/** The whole text as one quantity, as programs and forms send it; null when it is not just one. */
export function readOne(text: string, habits: Habits = {}): Reading | null {
  const trimmed = text.trim()
  const negative = /^[-−]\s?(?=[\d.]|[A-Z]{0,2}[$£€])/.exec(trimmed)
  const [only, more] = readQuantities(trimmed.slice(negative?.[0].length ?? 0), habits)
  if (!only || more || only.start !== 0) return null
  const rest = trimmed.slice((negative?.[0].length ?? 0) + only.end)
  // A count may bring its noun along ("23 bags"); a measure stands alone.
  if (!(rest === '' || (only.bare !== null && /^( [a-z]+){1,2}$/.test(rest)))) return null
  if (!negative) return only
  return {
    ...only,
    said: trimmed,
    end: trimmed.length,
    quantity: only.quantity && opposite(only.quantity),
    bare: only.bare?.neg() ?? null,
    rivals: only.rivals.map(opposite),
  }
}

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** "No. 2 southern pine", "no 2 4x4", "grade 2": a grade by its number; "no 2 in gaps" is a size. */
const isGrade = (tokens: readonly Scanned[], at: number): boolean => {
  const before = lower(tokens[at - 1]) === '.' ? lower(tokens[at - 2]) : lower(tokens[at - 1])
  if (!/^[1-3]$/.test(tokens[at]?.text ?? '')) return false
  const next = tokens[at + 1]
  const isSize =
    next?.sort === 'digits'
      ? !sectionAt(tokens, at + 1)
      : unitAt(tokens, at + 1, false) !== null || (next?.glued === true && next.sort !== 'sign')
  return before === 'grade' || (before === 'no' && !isSize && !/^(or|more|gaps?|posts?|bays?|of)$/.test(lower(next)))
}

/** "R403", "A153", "#8": digits that belong to a name. */
const isPartOfName = (tokens: readonly Scanned[], at: number): boolean => {
  const [token, before] = [tokens[at] as Scanned, tokens[at - 1]]
  if (isGrade(tokens, at)) return true
  return (
    token.sort === 'digits' &&
    token.glued &&
    before !== undefined &&
    ((before.sort === 'word' && !/^x$/i.test(before.text) && unitAt(tokens, at - 1, false) === null) ||
      before.text === '#' ||
      before.text === ':' ||
      (before.text === '@' && before.glued) ||
      // "12 yd² in m2": the unit that is wanted, and no number.
      (/^[23]$/.test(token.text) &&
        /^(mm|cm|m|ft|yd|in)$/i.test(before.text) &&
        /^(in|to|into|as|per|many)$/.test(lower(tokens[at - 2]))))
  )
}
const skipName = (tokens: readonly Scanned[], at: number): number => {
  while (at + 1 < tokens.length && (tokens[at + 1] as Scanned).glued && (tokens[at + 1] as Scanned).sort !== 'sign')
    at++
  return at + 1
}

function quantityAt(tokens: readonly Scanned[], at: number, habits: Habits, metric: boolean): Found | null {
  const token = tokens[at] as Scanned
  const date = dateAt(tokens, at)
  if (date) return date
  const hour = hourAt(tokens, at)
  if (hour) return hour
  if (isDateOrTime(tokens, at)) return null
  const section = sectionAt(tokens, at)
  if (section) return { next: section.next, quantity: null, bare: null, section: section.section }
  const money = moneyAt(tokens, at, habits) ?? barePriceAt(tokens, at)
  if (money) return money
  const article = articleAt(tokens, at, metric)
  if (article) return article
  const cold = coldAt(tokens, at, habits)
  if (cold) return cold
  const number = numberAt(tokens, at, habits.decimalComma ?? false)
  if (!number) return null
  if (isOrdinal(tokens, number.next) && token.sort === 'digits') return null
  return range(tokens, at, number, habits, metric) ?? measured(tokens, at, number, habits, metric)
}

/** A number and what follows it: its unit, feet with inches, metres with centimetres, or nothing. */
function measured(
  tokens: readonly Scanned[],
  at: number,
  number: NumberRead,
  habits: Habits,
  metric: boolean,
): Found | null {
  const note = number.note ? { note: number.note } : {}
  if (number.feet) {
    const unit = unitAt(tokens, number.next, metric)
    const total = number.feet.mul(12).add(number.value).div(12)
    return {
      next: unit?.unit === 'in' ? unit.next : number.next,
      quantity: quantity(total, 'ft'),
      bare: null,
      ...note,
      rivals: [],
    }
  }
  const temperature = temperatureAt(tokens, number, habits)
  if (temperature) return temperature
  const grouped = groupedBySpaces(tokens, at, number)
  const { value, next } = grouped ?? number
  // "3/4 of an inch".
  const isPart = number.hasFraction && /^an?$/.test(lower(tokens[next + 1])) && lower(tokens[next]) === 'of'
  const unit = unitAfter(tokens, isPart ? next + 2 : next, metric, value.d !== 1n)
  if (!unit) return bareNumber(tokens, at, number)
  if (unit.unit === 'yd') {
    // "2 yards 1 foot".
    const feet = numberAt(tokens, unit.next, false)
    const named = feet && unitAfter(tokens, feet.next, metric)
    if (feet && named?.unit === 'ft' && feet.value.compare(3) < 0)
      return { next: named.next, quantity: quantity(value.mul(3).add(feet.value), 'ft'), bare: null }
  }
  if (unit.unit === 'ft' || unit.unit === 'yd') {
    const inches = unit.unit === 'ft' ? inchesAfter(tokens, value, unit, metric) : null
    if (inches) return inches
    const loose = looseYard(tokens, value, unit)
    if (loose) return loose
  }
  if (unit.unit === 'h') {
    const minutes = minutesAfter(tokens, value, unit.next)
    if (minutes) return minutes
  }
  if (unit.unit === 'm') {
    const centimetres = tokens[unit.next]
    if (centimetres?.sort === 'digits' && /^\d\d$/.test(centimetres.text) && value.d === 1n) {
      const after = unitAt(tokens, unit.next + 1, true)
      const total = value.add(new Fraction(centimetres.text).div(100))
      if (after?.unit === 'cm') return { next: after.next, quantity: quantity(total, 'm'), bare: null }
      if (!after) return { next: unit.next + 1, quantity: quantity(total, 'm'), bare: null }
    }
    // "one metre eighty"
    const said = number.spoken ? numberAt(tokens, unit.next, false) : null
    if (said?.spoken && said.value.compare(10) >= 0 && said.value.compare(100) < 0 && endsMeasure(tokens[said.next]))
      return { next: said.next, quantity: quantity(value.add(said.value.div(100)), 'm'), bare: null }
  }
  // "a foot and a half" said with a number: "two feet and a half".
  const extra = number.hasFraction ? null : spokenFractionAfter(tokens, unit.next)
  if (extra) return { next: extra.next, quantity: quantity(value.add(extra.value), unit.unit), bare: null, ...note }
  const spread = spreadOf(tokens, at, value, unit.unit)
  return { next: unit.next, quantity: spread ?? quantity(value, unit.unit), bare: null, ...note }
}

/** "2 h 45 min", "2 hours and 45 minutes", "2h45": hours with their minutes. */
function minutesAfter(tokens: readonly Scanned[], hours: Fraction, at: number): Found | null {
  const from = lower(tokens[at]) === 'and' ? at + 1 : at
  const minutes = tokens[from]
  if (minutes?.sort !== 'digits' || !/^[0-5]?\d$/.test(minutes.text)) return null
  const isSaid = /^(min|mins|minutes?|m)$/.test(lower(tokens[from + 1])) && lower(tokens[from + 2]) !== '/'
  // "2h45" alone is written together; "8 h 20 pickets" are two things.
  const isTogether = from === at && minutes.glued && /^\d\d$/.test(minutes.text) && tokens[from + 1]?.glued !== true
  if (!isSaid && !isTogether) return null
  const total = hours.add(new Fraction(minutes.text).div(60))
  return { next: isSaid ? from + 2 : from + 1, quantity: quantity(total, 'h'), bare: null }
}

/** "a foot and a half", "an inch", "half a yard of stone" begins with a number and comes elsewhere; here the article is the number. */
function articleAt(tokens: readonly Scanned[], at: number, metric: boolean): Found | null {
  const word = lower(tokens[at])
  const isArticle = word === 'a' || word === 'an'
  const start = isArticle ? at + 1 : at
  if (tokens[start]?.sort !== 'word') return null
  const unit = unitAt(tokens, start, metric)
  if (!unit || lower(tokens[start]).length < 3) return null
  const kind = unitNamed(unit.unit).kind
  const extra = spokenFractionAfter(tokens, unit.next)
  if (!isArticle) {
    // "foot and a half" without its article.
    return extra && kind === 'length' && /^(foot|inch|yard|metre|meter)$/.test(lower(tokens[start]))
      ? { next: extra.next, quantity: quantity(extra.value.add(1), unit.unit), bare: null }
      : null
  }
  if (endsMoney(tokens, at)) return null
  if (kind === 'money' || kind === 'percent' || /^(pounder|footer|min|minute)s?$/.test(lower(tokens[start])))
    return null
  // "What's that a metre?": what it is reckoned by.
  if (isArticle && /^(that|it|much|cost|costs|price)$/.test(lower(tokens[at - 1]))) return null
  if (unit.unit === 'yd') return looseYard(tokens, new Fraction(1), unit)
  // "8 ft a bay", "300 ft² a gallon", "twice a day", "6 hours a day": what is reckoned by, not a quantity.
  if (
    kind === 'duration' &&
    /^(times?|once|twice|holes|posts|pickets|palings|boards|rails|gates|bags|hours?|hrs?|h|minutes?|mins?)$/.test(
      lower(tokens[at - 1]),
    )
  )
    return null
  return {
    next: extra ? extra.next : unit.next,
    quantity: quantity(extra ? extra.value.add(1) : new Fraction(1), unit.unit),
    bare: null,
  }
}

const between = /^(to|or|-)$/
function range(
  tokens: readonly Scanned[],
  at: number,
  first: NumberRead,
  habits: Habits,
  metric: boolean,
): Found | null {
  if (first.feet) return null
  const firstUnit = unitAfter(tokens, first.next, metric)
  const joint = firstUnit ? firstUnit.next : first.next
  const word = lower(tokens[joint])
  const andBetween = word === 'and' && lower(tokens[at - 1]) === 'between'
  if (!between.test(word) && !andBetween) return null
  const second = numberAt(tokens, joint + 1, habits.decimalComma ?? false)
  if (!second || second.feet || second.note) return null
  const unit = unitAfter(tokens, second.next, metric) ?? percentOf(tokens, second.next)
  if (firstUnit && (!unit || unitNamed(unit.unit).kind !== unitNamed(firstUnit.unit).kind)) return null
  if (word === '-' && !unit && (tokens[joint]?.glued !== true || first.hasFraction)) return null
  const low = first.value
  const high = second.value
  const note = word === 'or' ? 'read as a range' : undefined
  if (!unit)
    return low.compare(high) < 0 && word !== 'or'
      ? { next: second.next, quantity: null, bare: low, bareHigh: high }
      : null
  // "Swells from 12 to 20 %": it goes from the one to the other, and is both in turn.
  if (unit.unit === 'percent' && word === 'to' && lower(tokens[at - 1]) === 'from') return null
  const [a, b] = [quantity(low, (firstUnit ?? unit).unit), quantity(high, unit.unit)]
  if ((a.amount as Fraction).compare(b.amount as Fraction) >= 0) return null
  return { next: unit.next, quantity: a, bare: null, high: b, ...(note ? { note } : {}) }
}
const percentOf = (tokens: readonly Scanned[], at: number): UnitRead | null =>
  tokens[at]?.text === '%' ? { unit: 'percent', next: at + 1 } : null

/** 2 400 mm: groups of exactly three, with a unit behind them. */
function groupedBySpaces(
  tokens: readonly Scanned[],
  at: number,
  number: NumberRead,
): { value: Fraction; next: number } | null {
  const first = tokens[at]
  if (
    number.spoken ||
    number.hasFraction ||
    first?.sort !== 'digits' ||
    !/^\d{1,3}$/.test(first.text) ||
    number.next !== at + 1
  )
    return null
  let next = at + 1
  let digits = first.text
  while (next < at + 4 && tokens[next]?.sort === 'digits' && /^\d{3}$/.test(tokens[next]?.text ?? ''))
    digits += tokens[next++]?.text
  return next > at + 1 && unitAt(tokens, next, true) ? { value: new Fraction(digits), next } : null
}

function bareNumber(tokens: readonly Scanned[], at: number, number: NumberRead): Found | null {
  const word = lower(tokens[at])
  const after = lower(tokens[number.next])
  const note = number.note ? { note: number.note } : {}
  if (number.spoken) {
    // "one of the posts", "which one", "that one", "one-third rule": no number is meant.
    if (
      word === 'one' &&
      number.next === at + 1 &&
      (!tokens[number.next] ||
        /^(of|another|way|thing|side|end|day|more|by|at|that|is|on|i|in|can|for|to|and|or|if|,|\.|\?|!)$/.test(after) ||
        /^(which|this|that|the|no|each|any|every|other)$/.test(lower(tokens[at - 1])))
    )
      return null
    if (number.hasFraction) {
      const fraction = number.value.compare(1) < 0
      // Half of something, a third of the post: a share, not a measure, unless "of an inch" brought its unit, or "of 94 in" what it is a share of.
      const isOfNumber =
        after === 'of' &&
        (tokens[number.next + 1]?.sort === 'digits' || /^(that|it|this)$/.test(lower(tokens[number.next + 1])))
      if (fraction) return isOfNumber ? { next: number.next, quantity: null, bare: number.value } : null
      // "seven ten and 3/8" stays with feet and inches only when two numbers stand side by side.
    }
    const inches = feetSpoken(tokens, number)
    if (inches) return inches
    if ((word === 'half' || word === 'quarter') && !number.note) return null
    if (isOrdinalWord(after)) return null
  }
  return { next: number.next, quantity: null, bare: number.value, ...note }
}

const isOrdinal = (tokens: readonly Scanned[], next: number): boolean =>
  /^(st|nd|rd|th)$/.test(lower(tokens[next])) && tokens[next]?.glued === true
const isOrdinalWord = (word: string): boolean => /^(hundredth|th)$/.test(word)
