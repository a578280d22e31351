// This file is about reading quantities: every one in a message, exactly, with where it stands and how it was taken.
import Fraction from 'fraction.js'
import { inMillimetres } from './bare-millimetres.ts'
import { bulkAfter, heapByArticle } from './bulk.ts'
import { isPartOfName, skipName } from './called-by-number.ts'
import { bareSpread, spreadOf } from './coverage.ts'
import { type DayAndMonth, dateAt, dayAndMonthAt, inYearOf, isDateOrTime, yearByWeekday } from './dates.ts'
import { firmnessOf } from './firmness.ts'
import { endsMeasure, feetSpoken, fractionBehind, inchesAfter, taped } from './feet-and-inches.ts'
import type { Found, Habits } from './found.ts'
import { looseYard } from './loose-material.ts'
import { barePriceAt, endsMoney, moneyAt, perUnit } from './money.ts'
import { isOfTape, isOnTape, type NumberRead, numberAt, spokenFractionAfter } from './numbers.ts'
import { forEach, oneInSoMany } from './inclines.ts'
import { centimetresAfter, minutesAfter } from './in-two-units.ts'
import { less, quantity } from './quantity.ts'
import { inMoney } from './prices-by-measure.ts'
import { proportionAt, type Term } from './proportions.ts'
import { middleRailAt } from './middle-rail.ts'
import { peopleAt } from './people.ts'
import { tapeMarkAt } from './tape-marks.ts'
import type { Reading } from './reading.ts'
import { pointsIn } from './points.ts'
import { plainForm, scan, type Scanned } from './scan.ts'
import { inTheirRow, underTheirHeads } from './rows.ts'
import { lengthOfStick, sectionAt } from './sections.ts'
import { unitNamed } from './units.ts'
import { changeAt, timesAt } from './changes.ts'
import { coldAt, opposite, temperatureAt } from './temperatures.ts'
import { shareSaid } from './shares-said.ts'
import { sticksAt } from './stick-lengths.ts'
import { hourAt } from './times-of-day.ts'
import { poundsBehind, unitAfter, unitAt } from './unit-words.ts'

/** Every quantity of the message, in order. Offsets are those of the message as it was typed. */
export function readQuantities(message: string, habits: Habits = {}): Reading[] {
  const text = plainForm(message)
  const points = pointsIn(text, habits.system ?? 'imperial')
  const [first, last] = [points[0], points.at(-1)] // what stands among corner points is one of their measures, or their unit
  const apart = (it: Reading): boolean => !first || !last || it.end <= first.start || it.start > last.end
  const others = inMillimetres(quantitiesIn(message, habits).filter(apart), text, habits)
  const read = inMoney(underTheirHeads(inTheirRow(others, text), text, unitSaidBy), text)
  return [...read, ...points].sort((a, b) => a.start - b.start)
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
    const change = changeAt(tokens, at, found)
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
      ...(found.people ? { people: found.people } : {}),
      ...(found.rails ? { rails: found.rails } : {}),
      ...(found.per ? { per: found.per } : {}),
      ...(change ? { change } : {}),
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

/** The days that were said without their year, each in the year of the whole date nearest to it in the message, or of the talk. Without one they are no dates. */
function datesFrom(
  yearless: readonly (DayAndMonth & { readonly at: number })[],
  readings: readonly Reading[],
  tokens: readonly Scanned[],
  message: string,
  { near }: Habits,
): Reading[] {
  const dated = readings.filter((it) => it.quantity?.kind === 'date' && it.rivals.length === 0)
  // Both stand in the order of the message.
  let behind = 0
  return yearless.flatMap((it) => {
    const [start, end] = [(tokens[it.at] as Scanned).start, (tokens[it.next - 1] as Scanned).end]
    while ((dated[behind]?.start ?? Infinity) < start) behind++
    const before = dated[behind - 1]
    const other = (before ?? dated[behind])?.quantity ?? near
    const found = other ? inYearOf(it, other, !!before || dated.length === 0) : yearByWeekday(it, tokens, it.at)
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

function quantityAt(tokens: readonly Scanned[], at: number, habits: Habits, metric: boolean): Found | null {
  const token = tokens[at] as Scanned
  const date = dateAt(tokens, at)
  if (date) return date
  const words = peopleAt(tokens, at) ?? middleRailAt(tokens, at) ?? tapeMarkAt(tokens, at) ?? timesAt(tokens, at)
  const called = words ?? sticksAt(tokens, at) ?? shareSaid(tokens, at)
  if (called) return called
  const incline = oneInSoMany(tokens, at) // before the hour of the clock: beside a word for a slope “1:15” is one
  if (incline) return incline
  const hour = hourAt(tokens, at)
  if (hour) return hour
  if (isDateOrTime(tokens, at)) return null
  const section = sectionAt(tokens, at)
  if (section) return { next: section.next, quantity: null, bare: null, section: section.section }
  const money = moneyAt(tokens, at, habits) ?? barePriceAt(tokens, at)
  if (money) return moneyRange(tokens, at, money, habits) ?? money
  const unnumbered = heapByArticle(tokens, at) ?? articleAt(tokens, at, metric) ?? coldAt(tokens, at, habits)
  if (unnumbered) return unnumbered
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
  const apart = temperatureAt(tokens, number, habits) ?? bulkAfter(tokens, at, number)
  if (apart) return apart
  const { value, next } = groupedBySpaces(tokens, at, number) ?? number
  // "3/4 of an inch", "½ an inch".
  const article = lower(tokens[next]) === 'of' ? next + 1 : next
  const isPart = value.compare(1) < 0 && value.d !== 1n && /^an?$/.test(lower(tokens[article]))
  // "8+ ft": so many at least, which its firmness says.
  const hasPlus = tokens[next]?.text === '+' && tokens[next]?.glued && tokens[next + 1]?.sort === 'word'
  const unit = unitAfter(tokens, isPart ? article + 1 : hasPlus ? next + 1 : next, metric, isOfTape(value))
  if (!unit)
    return taped(tokens, at, number, metric) ?? bareSpread(tokens, at, number) ?? bareNumber(tokens, at, number)
  const incline = forEach(tokens, value, unit)
  if (incline) return incline
  if (unit.unit === 'yd') {
    // "2 yards 1 foot".
    const feet = numberAt(tokens, lower(tokens[unit.next]) === 'and' ? unit.next + 1 : unit.next, false)
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
  const pounds = unit.unit === 'stone' ? poundsBehind(tokens, unit.next) : null
  if (pounds !== null) return { next: unit.next + 2, quantity: quantity(value.mul(14).add(pounds), 'lb'), bare: null }
  if (unit.unit === 'm') {
    const centimetres = centimetresAfter(tokens, value, unit, number.spoken)
    if (centimetres) return centimetres
  }
  // "a foot and a half" said with a number: "two feet and a half".
  const extra = number.hasFraction ? null : fractionBehind(tokens, unit.next, metric)
  if (extra) return { next: extra.next, quantity: quantity(value.add(extra.value), unit.unit), bare: null, ...note }
  const spread = spreadOf(tokens, at, value, unit.unit)
  const rivals = otherPoint(tokens[at] as Scanned, unit.unit, habits)
  return { next: unit.next, quantity: spread ?? quantity(value, unit.unit), bare: null, ...note, ...rivals }
}

/** “2.400 mm” may be 2400 where a point parts the thousands, and “2,400 m” 2.4 where a comma is the point. Nobody writes a nought for the thousandths of a millimetre, or fences by the kilometre. */
function otherPoint(number: Scanned, unit: string, { decimalComma }: Habits): Pick<Found, 'rivals'> {
  if (unit === 'mm' && /^[1-9]\d{0,2}\.\d\d0$/.test(number.text))
    return { rivals: [quantity(new Fraction(number.text).mul(1000), unit)] }
  if (unit === 'm' && !decimalComma && /^[1-9]\d{0,2},\d{3}$/.test(number.text))
    return { rivals: [quantity(new Fraction(number.text.replace(',', '.')), unit)] }
  return {}
}

/** "a foot and a half", "an inch", "half a yard of stone" begins with a number and comes elsewhere; here the article is the number. */
function articleAt(tokens: readonly Scanned[], at: number, metric: boolean): Found | null {
  const word = lower(tokens[at])
  const isArticle = word === 'a' || word === 'an'
  const start = isArticle ? at + 1 : at
  // "2.95 a running metre": what it is reckoned by.
  if (tokens[start]?.sort !== 'word' || /^(running|lineal|linear|lin)$/.test(lower(tokens[start]))) return null
  const unit = unitAt(tokens, start, metric)
  if (!unit || lower(tokens[start]).length < 3) return null
  const kind = unitNamed(unit.unit).kind
  const extra = kind === 'length' ? fractionBehind(tokens, unit.next, metric) : spokenFractionAfter(tokens, unit.next)
  if (!isArticle) {
    // "foot and a half" without its article.
    return extra && /^(foot|inch|yard|metre|meter|hour)$/.test(lower(tokens[start]))
      ? { next: extra.next, quantity: quantity(extra.value.add(1), unit.unit), bare: null }
      : null
  }
  if (endsMoney(tokens, at)) return null
  if (kind === 'money' || kind === 'percent' || /^(pounder|footer|min|minute|stone)s?$/.test(lower(tokens[start])))
    return null
  // "What's that a metre?": what it is reckoned by.
  if (isArticle && /^(that|it|much|cost|costs|price)$/.test(lower(tokens[at - 1]))) return null
  if (unit.unit === 'yd')
    return looseYard(tokens, new Fraction(1).add(extra?.value ?? 0), extra ? { ...unit, next: extra.next } : unit)
  // "8 ft a bay", "300 ft² a gallon", "twice a day", "6 hours a day": what is reckoned by, not a quantity.
  if (
    kind === 'duration' &&
    /^(times?|once|twice|holes|posts|pickets|palings|boards|rails|gates|bags|hours?|hrs?|h|minutes?|mins?)$/.test(
      lower(tokens[at - 1]),
    )
  )
    return null
  const one = new Fraction(1)
  if (extra) return { next: extra.next, quantity: quantity(extra.value.add(1), unit.unit), bare: null }
  // "a foot or two", "a week or two".
  if (lower(tokens[unit.next]) === 'or' && lower(tokens[unit.next + 1]) === 'two') {
    const after = tokens[unit.next + 2]
    if (endsMeasure(after) || /^(of|at|later|after|before|more|less)$/.test(lower(after)))
      return { next: unit.next + 2, quantity: quantity(one, unit.unit), bare: null, high: quantity(2, unit.unit) }
  }
  const more =
    unit.unit === 'ft'
      ? inchesAfter(tokens, one, unit, metric)
      : unit.unit === 'm'
        ? centimetresAfter(tokens, one, unit, true)
        : unit.unit === 'h'
          ? minutesAfter(tokens, one, unit.next)
          : null
  return more ?? { next: unit.next, quantity: quantity(one, unit.unit), bare: null }
}

/** “$5 to $8”, “$5-8”, “between £5 and £8”; “from $5 to $8” is both in turn, and “$5 a foot to $8 a foot” two prices. */
function moneyRange(tokens: readonly Scanned[], at: number, first: Found, habits: Habits): Found | null {
  const joint = tokens[first.next]
  const word = lower(joint)
  const joins =
    word === '-' || (word === 'to' && lower(tokens[at - 1]) !== 'from') || (word === 'and' && isBetween(tokens, at - 1))
  const low = first.quantity
  if (!joins || !low || first.per || (first.rivals?.length ?? 0) > 0) return null
  const priced = moneyAt(tokens, first.next + 1, habits)
  const number = priced ? null : numberAt(tokens, first.next + 1, habits.decimalComma ?? false)
  const isSum = number && !number.feet && !number.note && !number.spoken && !unitAfter(tokens, number.next, false)
  const endsSum =
    endsMeasure(tokens[number?.next ?? 0]) || /^(a|an|each|per|apiece)$/.test(lower(tokens[number?.next ?? 0]))
  const high = priced?.quantity ?? (isSum && endsSum ? quantity(number.value, low.unit) : undefined)
  if (!high || high.unit !== low.unit || !less(low, high)) return null
  const next = priced?.next ?? (number as NumberRead).next
  const per = priced ? priced.per : perUnit(tokens, next)
  return { next, quantity: low, bare: null, high, ...(per ? { per } : {}) }
}

/** "Between 6 and 8 ft"; the difference between the two is asked of both. */
const isBetween = (tokens: readonly Scanned[], at: number): boolean =>
  lower(tokens[at]) === 'between' && lower(tokens[at - 1]) !== 'difference'

const between = /^(to|or|-)$/
/** These join what has a unit only: “posts 3 through 7” are called by their numbers. */
const through = /^(through|thru|till|~)$/
function range(
  tokens: readonly Scanned[],
  at: number,
  first: NumberRead,
  habits: Habits,
  metric: boolean,
): Found | null {
  if (first.feet) return null
  const own = measured(tokens, at, first, habits, metric)
  const from = own?.quantity ?? null
  // "six-to-eight feet", "60- to 80-lb": the hyphens join nothing.
  const hung = hyphenBefore(tokens, from && own ? own.next : first.next)
  const joint = hung && lower(tokens[hung]) === 'to' ? hung : from && own ? own.next : first.next
  const word = lower(tokens[joint])
  const andBetween = word === 'and' && isBetween(tokens, at - 1)
  if (!between.test(word) && !andBetween && !through.test(word)) return null
  const start = (hung === joint && hyphenBefore(tokens, joint + 1)) || joint + 1
  const second = numberAt(tokens, start, habits.decimalComma ?? false)
  if (!second || second.feet || second.note) return null
  const last = measured(tokens, start, second, habits, metric)
  const to = last?.quantity ?? null
  if (from && from.kind !== to?.kind) return null
  // "From 40 °F to 50 °F", "40 °F to 50 °F": two temperatures, each said in full.
  if (from?.kind === 'temperature') return null
  if (word === '-' && !to && (tokens[joint]?.glued !== true || first.hasFraction)) return null
  const note = word === 'or' ? 'read as a range' : undefined
  if (!to || !last) {
    // "seven-ten and three eighths" is one length.
    const isLength = word === '-' && first.spoken && second.spoken && second.hasFraction
    if (word === 'or' || through.test(word) || isLength) return null
    return first.value.compare(second.value) < 0
      ? { next: second.next, quantity: null, bare: first.value, bareHigh: second.value }
      : null
  }
  // "Swells from 12 to 20 %", "from 40 to 50 °F": it goes from the one to the other, and is both in turn.
  if (/^(percent|temperature)$/.test(to.kind) && word === 'to' && lower(tokens[at - 1]) === 'from') return null
  const low = from ?? quantity(first.value, to.unit)
  return less(low, to) ? { next: last.next, quantity: low, bare: null, high: to, ...(note ? { note } : {}) } : null
}
/** The token behind a hyphen that joins it to the word before; nothing where none does. */
const hyphenBefore = (tokens: readonly Scanned[], at: number): number | undefined =>
  tokens[at]?.text === '-' && tokens[at]?.glued ? at + 1 : undefined

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
  while (next < at + 4 && tokens[next]?.sort === 'digits' && /^\d{3}([.,]\d{1,2})?$/.test(tokens[next]?.text ?? '')) {
    digits += tokens[next++]?.text.replace(',', '.')
    if (digits.includes('.')) break
  }
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
        /^(which|this|that|the|no|each|any|every|other|another)$/.test(lower(tokens[at - 1])))
    )
      return null
    if (number.hasFraction) {
      const fraction = number.value.compare(1) < 0
      // Half of something, a third of the post: a share, not a measure, unless "of an inch" brought its unit, or "of 94 in" what it is a share of.
      const isOfNumber =
        after === 'of' &&
        (tokens[number.next + 1]?.sort === 'digits' || /^(that|it|this)$/.test(lower(tokens[number.next + 1])))
      if (fraction)
        return isOfNumber || isOnTape(tokens, number) ? { next: number.next, quantity: null, bare: number.value } : null
      // "seven ten and 3/8" stays with feet and inches only when two numbers stand side by side.
    }
    const inches = feetSpoken(tokens, number)
    if (inches) return inches
    if ((word === 'half' || word === 'quarter') && !number.note) return null
    if (/^(hundredth|th)$/.test(after)) return null
  }
  return { next: number.next, quantity: null, bare: number.value, ...note }
}
const isOrdinal = (tokens: readonly Scanned[], next: number): boolean =>
  /^(st|nd|rd|th)$/.test(lower(tokens[next])) && tokens[next]?.glued === true
