// This file is about numbers as people write and say them: digits, fractions, and words, all exact.
import { tableOf } from './table-of.ts'
import Fraction from 'fraction.js'
import { type Scanned, vulgarFraction } from './scan.ts'

export interface NumberRead {
  readonly value: Fraction
  /** The token after it. */
  readonly next: number
  readonly spoken: boolean
  /** It ended in a fraction: nothing further can belong to it. */
  readonly hasFraction: boolean
  readonly note?: string
  /** Feet and inches written with a hyphen, "7-10 3/8": the feet. */
  readonly feet?: Fraction
}

const small = tableOf<number>({
  zero: 0,
  nought: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
})
const parts = tableOf<number>({
  half: 2,
  halves: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fourth: 4,
  fourths: 4,
  fifth: 5,
  fifths: 5,
  sixth: 6,
  sixths: 6,
  eighth: 8,
  eighths: 8,
  eigth: 8,
  eigths: 8,
  tenth: 10,
  tenths: 10,
  sixteenth: 16,
  sixteenths: 16,
  twelfth: 12,
  twelfths: 12,
  thirtysecond: 32,
  thirtyseconds: 32,
  hundredth: 100,
  hundredths: 100,
  thousandth: 1000,
  thousandths: 1000,
})
const severalParts = /^(thirds|quarters|fourths|fifths|sixths|eighths|eigths|tenths|sixteenths|twelfths)$/
/** In two words the second is also a time, or which one of a row. */
const partsInTwoWords = tableOf<number>({
  'thirty second': 32,
  'thirty seconds': 32,
  'sixty fourth': 64,
  'sixty fourths': 64,
})

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** Nobody measures anything with more figures than these. */
const mostDigits = 40

/** A number written in digits: 1,250 and 2.4 and 2,4 and 1,00,000; undefined when it is none of these. */
export function digits(text: string, decimalComma: boolean): Fraction | undefined {
  if (text.length > mostDigits) return undefined
  const exactly = (it: string): Fraction => new Fraction(it.startsWith('.') ? `0${it}` : it)
  if (/^\d*\.?\d+$/.test(text)) return exactly(text)
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(text) && !(decimalComma && /^\d+,\d+$/.test(text)))
    return exactly(text.replace(/,/g, ''))
  if (/^\d{1,2}(,\d{2})+,\d{3}(\.\d+)?$/.test(text)) return exactly(text.replace(/,/g, ''))
  if (/^\d+,\d+$/.test(text)) return exactly(text.replace(',', '.'))
  // Two points at least: 1.250.000 can be nothing else.
  if (/^[1-9]\d{0,2}(\.\d{3}){2,}$/.test(text)) return exactly(text.replace(/\./g, ''))
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) return exactly(text.replace(/\./g, '').replace(',', '.'))
  return undefined
}

/** The number that begins at a token, if one does. */
export function numberAt(tokens: readonly Scanned[], at: number, decimalComma: boolean): NumberRead | null {
  const read = alone(tokens, at, decimalComma)
  if (!read || read.feet) return read
  // "two and a half thousand", "one point four million": what is cut into parts comes before what it counts.
  const power = read.value.d === 1n ? null : powerOfTenAfter(tokens, read.next)
  const number = power ? { ...read, value: read.value.mul(power.by), next: power.next, hasFraction: false } : read
  return lower(tokens[number.next]) === 'dozen' ? dozens(tokens, number.value, number.next + 1) : number
}

/** “2 dozen”, “half a dozen”, “a dozen and a half”: so many twelves. */
function dozens(tokens: readonly Scanned[], count: Fraction, at: number): NumberRead {
  const extra = spokenFractionAfter(tokens, at)
  const value = count.add(extra?.value ?? 0).mul(12)
  return { value, next: extra?.next ?? at, spoken: true, hasFraction: false, note: 'a dozen is 12' }
}

function alone(tokens: readonly Scanned[], at: number, decimalComma: boolean): NumberRead | null {
  const token = tokens[at]
  if (!token) return null
  if (token.sort === 'digits') return written(tokens, at, decimalComma)
  const sign = vulgarFraction(token.text)
  if (sign) return { value: sign, next: at + 1, spoken: false, hasFraction: true }
  return token.sort === 'word' ? spoken(tokens, at) : null
}

function written(tokens: readonly Scanned[], at: number, decimalComma: boolean): NumberRead | null {
  const whole = digits((tokens[at] as Scanned).text, decimalComma)
  if (!whole) return null
  const simple = simpleFraction(tokens, at)
  if (simple) return { value: simple.value, next: simple.next, spoken: false, hasFraction: true }
  const power = powerOfTenAfter(tokens, at + 1)
  if (power) return { value: whole.mul(power.by), next: power.next, spoken: false, hasFraction: false }
  if (whole.d !== 1n) return { value: whole, next: at + 1, spoken: false, hasFraction: false }
  // "3 eighths of an inch"; "3 quarter inch bolts" are three bolts.
  const part = severalParts.test(lower(tokens[at + 1])) ? partAt(tokens, at + 1) : null
  if (part && whole.compare(part.into) < 0)
    return { value: whole.div(part.into), next: skipOf(tokens, part.next), spoken: true, hasFraction: true }
  const rest = fractionAfter(tokens, at + 1) ?? spokenFractionAfter(tokens, at + 1)
  if (rest) return { value: whole.add(rest.value), next: rest.next, spoken: false, hasFraction: true }
  // "7-10 3/8": feet, a hyphen, and inches with a fraction.
  const [hyphen, inches] = [tokens[at + 1], tokens[at + 2]]
  if (
    hyphen?.text === '-' &&
    hyphen.glued &&
    inches?.sort === 'digits' &&
    inches.glued &&
    /^\d{1,2}$/.test(inches.text) &&
    Number(inches.text) < 12
  ) {
    const fraction = fractionAfter(tokens, at + 3)
    if (fraction)
      return {
        value: new Fraction(inches.text).add(fraction.value),
        feet: whole,
        next: fraction.next,
        spoken: false,
        hasFraction: true,
        note: `${whole.toFraction()} ft and inches`,
      }
  }
  // "2 400 mm": groups of three, when a unit follows, which the caller sees to.
  return { value: whole, next: at + 1, spoken: false, hasFraction: false }
}

/** "1.4 million", "1.4e6": how large figures are written. */
function powerOfTenAfter(tokens: readonly Scanned[], at: number): { by: Fraction; next: number } | null {
  if (lower(tokens[at]) === 'million') return { by: new Fraction(1_000_000), next: at + 1 }
  if (lower(tokens[at]) === 'thousand') return { by: new Fraction(1000), next: at + 1 }
  if (lower(tokens[at]) === 'hundred') return { by: new Fraction(100), next: at + 1 }
  const [e, power] = [tokens[at], tokens[at + 1]]
  // "2.5k", but not "2 kg".
  if (lower(e) === 'k' && e?.glued && !(power?.glued && power.sort !== 'sign'))
    return { by: new Fraction(1000), next: at + 1 }
  return lower(e) === 'e' && e?.glued && power?.glued && /^[1-9]$/.test(power.text)
    ? { by: new Fraction(10 ** Number(power.text)), next: at + 2 }
    : null
}

/** n/d, glued together; as it is said, "3/8ths", too. */
function simpleFraction(tokens: readonly Scanned[], at: number): { value: Fraction; next: number } | null {
  const [top, slash, bottom] = [tokens[at], tokens[at + 1], tokens[at + 2]]
  if (top?.sort !== 'digits' || slash?.text !== '/' || !slash.glued || bottom?.sort !== 'digits' || !bottom.glued)
    return null
  if (
    !/^\d+$/.test(top.text) ||
    !/^\d+$/.test(bottom.text) ||
    Number(bottom.text) === 0 ||
    tokens[at + 3]?.text === '/'
  )
    return null
  if (top.text.length > mostDigits || bottom.text.length > mostDigits) return null
  const isSaid = /^(th|ths|nd|nds|rd|rds)$/.test(lower(tokens[at + 3])) && tokens[at + 3]?.glued
  return { value: new Fraction(top.text).div(bottom.text), next: isSaid ? at + 4 : at + 3 }
}

/** The fraction that goes with a whole number before it: "3 1/2", "3-1/2", "3½", "seven and 3/8". Less than one. */
export function fractionAfter(tokens: readonly Scanned[], at: number): { value: Fraction; next: number } | null {
  let from = at
  if (tokens[from]?.text === '-' && tokens[from]?.glued) from++
  else if (lower(tokens[from]) === 'and' || tokens[from]?.text === '&') from++
  const sign = vulgarFraction(tokens[from]?.text ?? '')
  if (sign) return { value: sign, next: from + 1 }
  const simple = simpleFraction(tokens, from)
  return simple && simple.value.compare(1) < 0 ? simple : null
}

function spoken(tokens: readonly Scanned[], at: number): NumberRead | null {
  const word = lower(tokens[at])
  const next = lower(tokens[at + 1])
  if (
    word === 'point' &&
    !/^(that|this|some|which|a|one|each|every|high|low|end|corner|starting|dew|freezing)$/.test(lower(tokens[at - 1]))
  )
    return afterPoint(tokens, at, new Fraction(0))
  if (word === 'half' && (next === 'a' || next === 'an'))
    return { value: new Fraction(1, 2), next: at + 2, spoken: true, hasFraction: true }
  const part = word === 'a' || word === 'an' ? partAt(tokens, at + 1) : null
  if (part && (next !== 'third' || lower(tokens[at + 2]) === 'of'))
    return {
      value: new Fraction(1, part.into),
      next: skipOf(tokens, part.next),
      spoken: true,
      hasFraction: true,
    }
  if (word === 'a' && next === 'dozen') return dozens(tokens, new Fraction(1), at + 2)
  if (word === 'dozen') return dozens(tokens, new Fraction(1), at + 1)
  if (word === 'a' && (next === 'couple' || next === 'pair')) return couple(tokens, at + 1)
  // "Couple of inches"; the couple next door are no number.
  if (word === 'couple' && /^(of|hundred|thousand|dozen)$/.test(next)) return couple(tokens, at)
  if (word === 'a' && (next === 'hundred' || next === 'thousand' || next === 'million')) return cardinal(tokens, at + 1)
  if (word === 'half' || word === 'quarter')
    return { value: new Fraction(1, parts[word] as number), next: at + 1, spoken: true, hasFraction: true }
  return cardinal(tokens, at)
}

/** “a couple”, “a pair of”, “a couple of hundred”. */
function couple(tokens: readonly Scanned[], at: number): NumberRead {
  const next = lower(tokens[at + 1]) === 'of' ? at + 2 : at + 1
  const power = powerOfTenAfter(tokens, next)
  return {
    value: new Fraction(2).mul(power?.by ?? 1),
    next: power?.next ?? next,
    spoken: true,
    hasFraction: false,
    note: `a ${lower(tokens[at])} is read as 2`,
  }
}

/** “eighths”, “thirty-seconds”, “16th”: into how many parts, and the token after. What may be a time, or which one of a row, is a part of an inch only. */
function partAt(tokens: readonly Scanned[], at: number): { readonly into: number; readonly next: number } | null {
  const word = lower(tokens[at])
  const into = parts[word]
  if (into !== undefined) return { into, next: at + 1 }
  if (word === 'eights' && isOfInch(tokens, at + 1)) return { into: 8, next: at + 1 }
  const second = afterHyphen(tokens, at + 1)
  const both = partsInTwoWords[`${word} ${lower(tokens[second])}`]
  if (both !== undefined && isOfInch(tokens, second + 1)) return { into: both, next: second + 1 }
  const isNth = tokens[at + 1]?.glued && /^(ths?|nds?)$/.test(lower(tokens[at + 1]))
  return isNth && /^(8|10|16|32|64|100|1000)$/.test(word) && isOfInch(tokens, at + 2)
    ? { into: Number(word), next: at + 2 }
    : null
}

const isOfInch = (tokens: readonly Scanned[], at: number): boolean =>
  /^inch(es)?$/.test(lower(tokens[skipOf(tokens, at)]))

/** The token after a hyphen that joins two words; the same token where there is none. */
const afterHyphen = (tokens: readonly Scanned[], at: number): number =>
  tokens[at]?.text === '-' && tokens[at]?.glued && tokens[at + 1]?.glued ? at + 1 : at

/** "point six", "nought point four five": digit by digit, as it is said. */
function afterPoint(tokens: readonly Scanned[], at: number, whole: Fraction): NumberRead | null {
  let next = at + 1
  let said = ''
  while (true) {
    const word = lower(tokens[next])
    const value = small[word] ?? (word === 'oh' || word === 'o' || word === 'nought' ? 0 : undefined)
    if (tokens[next]?.sort === 'digits' && said === '' && /^\d+$/.test(word)) said = word
    // "point forty five" is .45, "point forty-five" and "point four five" too; "point four twenty" is neither.
    else if (value !== undefined && (value < 10 || said === '') && said.length < mostDigits) {
      const ones = value >= 20 ? afterHyphen(tokens, next + 1) : next
      const isTwoWords = ones > next && (small[lower(tokens[ones])] ?? 10) < 10
      said += String(isTwoWords ? value / 10 : value)
      if (isTwoWords) next = ones - 1
    } else break
    next++
  }
  return said === '' ? null : { value: whole.add(new Fraction(`0.${said}`)), next, spoken: true, hasFraction: false }
}

/** "of an", "of a" between a spoken fraction and its unit: three quarters of an inch. */
const skipOf = (tokens: readonly Scanned[], at: number): number =>
  lower(tokens[at]) === 'of' && /^an?$/.test(lower(tokens[at + 1])) ? at + 2 : at

function cardinal(tokens: readonly Scanned[], at: number): NumberRead | null {
  let total = 0
  let group = 0
  let next = at
  let read = false
  let last = 1000
  while (true) {
    const word = lower(tokens[next])
    const value = small[word]
    if (value !== undefined) {
      // Twenty takes a unit after it; seven takes nothing: "seven ten" is two numbers.
      const takes = last >= 100 || (last >= 20 && last < 100 && value < 10 && value > 0)
      if (read && !takes) break
      group += value
      last = value
    } else if (word === 'hundred' && read && last < 100 && group > 0 && group < 100) {
      group *= 100
      last = 100
    } else if (word === 'hundred' && !read) {
      group = 100
      last = 100
    } else if (word === 'thousand' && total % 1_000_000 === 0) {
      total += (group || 1) * 1000
      group = 0
      last = 1000
    } else if (word === 'million' && total === 0 && (group > 0 || !read)) {
      total = (group || 1) * 1_000_000
      group = 0
      last = 1000
    } else if (word === 'and' && read && last >= 100 && small[lower(tokens[next + 1])] !== undefined) {
      next++
      continue
    } else if (
      tokens[next]?.text === '-' &&
      tokens[next]?.glued &&
      read &&
      last >= 20 &&
      last < 100 &&
      (small[lower(tokens[next + 1])] ?? 10) < 10
    ) {
      next++
      continue
    } else break
    read = true
    next++
  }
  if (!read) return null
  const whole = new Fraction(total + group)
  const word = lower(tokens[next])
  if (word === 'point') {
    const decimal = afterPoint(tokens, next, whole)
    if (decimal) return decimal
  }
  // "three eighths of an inch"; "one third rule" and "two thirds" stay what they are when no measure follows, which the caller sees to.
  const part = partAt(tokens, afterHyphen(tokens, next))
  // "Five quarter" is what a board of 5/4 is called.
  if (part && (whole.compare(part.into) < 0 || (whole.equals(5) && part.into === 4)))
    return { value: whole.div(part.into), next: skipOf(tokens, part.next), spoken: true, hasFraction: true }
  const after = spokenFractionAfter(tokens, next) ?? fractionAfter(tokens, next)
  if (after) return { value: whole.add(after.value), next: after.next, spoken: true, hasFraction: true }
  return { value: whole, next, spoken: true, hasFraction: false }
}

/** "… and a half", "… and three eighths", "-and-a-half". */
export function spokenFractionAfter(tokens: readonly Scanned[], at: number): { value: Fraction; next: number } | null {
  const and = afterHyphen(tokens, at)
  if (!/^(and|&)$/.test(lower(tokens[and]))) return null
  const from = afterHyphen(tokens, and + 1)
  const first = lower(tokens[from])
  const second = partAt(tokens, afterHyphen(tokens, from + 1))
  if (/^an?$/.test(first) && second) return { value: new Fraction(1, second.into), next: second.next }
  // “5 and 11 sixteenths”: in figures, where the parts are said as several.
  const figures = /^\d{1,2}$/.test(first) && severalParts.test(lower(tokens[from + 1])) ? Number(first) : undefined
  const top = small[first] ?? figures
  if (top !== undefined && second && top < second.into && top > 0)
    return { value: new Fraction(top, second.into), next: second.next }
  if (first === 'half' || first === 'quarter') return { value: new Fraction(1, parts[first] as number), next: from + 1 }
  return null
}

/** “Five eighths”, “a sixteenth”: nobody shares in such parts, they are on the tape. So is “three quarter”, unless something is so far done, or stones are so large. */
export function isOnTape(tokens: readonly Scanned[], { value, next }: NumberRead): boolean {
  const [last, after] = [lower(tokens[next - 1]), lower(tokens[next])]
  const isQuarter = last === 'quarter' && value.n > 1n && !isStoneSize.test(after)
  const behind = tokens.slice(next, next + 4).map(lower)
  const isGap =
    /^(on|at|for|by|to)$/.test(after) && behind.some((it) => /^(hinges?|latch|catch|bolt|hinging)$/.test(it))
  return after !== 'of' && (isQuarter || isGap || [8n, 16n, 32n, 64n].includes(value.d))
}
// A tape has halves, quarters, eighths: nobody puts 1.1 in in a middle.
export const isOfTape = ({ d }: Fraction): boolean => d !== 1n && (d & (d - 1n)) === 0n
const isStoneSize = /^(clear|clean|minus|stone|gravel|crushed|rock|chips?|ballast|angular|full|done|empty|way)$/
