// This file is about money: its sign in front ($4.79, £3.50, NZ$5) or behind (18,50 €, 1 250 Kč), its code on either side (CAD 20, 20 AUD),
// small coin (79 cents, 50p), and what it is the price of: “28 dollars a foot”.
import { tableOf } from './table-of.ts'
import Fraction from 'fraction.js'
import { exact } from './amount.ts'
import type { Found, Habits } from './found.ts'
import { type NumberRead, numberAt } from './numbers.ts'
import { type Quantity, quantity } from './quantity.ts'
import type { Reading } from './reading.ts'
import type { Scanned } from './scan.ts'
import { unitAt } from './unit-words.ts'
import { unitNamed } from './units.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const signs = tableOf<string>({ $: 'USD', '£': 'GBP', '€': 'EUR', kr: 'kr', Kč: 'CZK', zł: 'PLN' })
/** Where these are paid, a point or a space parts the thousands and a comma the cents: 1.480 € is one thousand four hundred and eighty. */
const continental = new Set(['EUR', 'CZK', 'PLN', 'kr'])
/** Whose dollar it is, written before the sign: `C$5`, `NZ$5`. */
const before = tableOf<string>({
  a: 'AUD',
  au: 'AUD',
  aud: 'AUD',
  c: 'CAD',
  ca: 'CAD',
  can: 'CAD',
  cad: 'CAD',
  nz: 'NZD',
  nzd: 'NZD',
  us: 'USD',
  usd: 'USD',
})
const codes = tableOf<string>({
  usd: 'USD',
  cad: 'CAD',
  gbp: 'GBP',
  aud: 'AUD',
  nzd: 'NZD',
  eur: 'EUR',
  czk: 'CZK',
  kč: 'CZK',
  pln: 'PLN',
  zł: 'PLN',
  sek: 'kr',
  nok: 'kr',
  dkk: 'kr',
  kr: 'kr',
  '€': 'EUR',
  $: 'USD',
  '£': 'GBP',
})
/** Said in words behind the number: what it is in other messages is read with the units. */
const spoken = tableOf<string>({
  dollar: 'USD',
  dollars: 'USD',
  buck: 'USD',
  bucks: 'USD',
  euro: 'EUR',
  euros: 'EUR',
  quid: 'GBP',
  koruna: 'CZK',
  koruny: 'CZK',
  korun: 'CZK',
  kronor: 'kr',
  kroner: 'kr',
  zloty: 'PLN',
  zlotys: 'PLN',
  złoty: 'PLN',
  złote: 'PLN',
  złotych: 'PLN',
})
/** “20 Canadian dollars”. */
const whose = tableOf<string>({
  us: 'USD',
  american: 'USD',
  canadian: 'CAD',
  australian: 'AUD',
  aussie: 'AUD',
  nz: 'NZD',
  kiwi: 'NZD',
})
const coins = tableOf<string>({ cent: 'USD', cents: 'USD', '¢': 'USD', p: 'GBP', pence: 'GBP' })

/** The amount of money that begins at a token, sign or name before or behind it, and what it is the price of; null when none does. */
export function moneyAt(tokens: readonly Scanned[], at: number, habits: Habits): Found | null {
  const one = aCoinAt(tokens, at)
  if (one) return one
  const comma = habits.decimalComma ?? false
  const country = before[lower(tokens[at])]
  const sign = country && tokens[at + 1]?.text === '$' && tokens[at + 1]?.glued ? at + 1 : at
  const currency = signs[tokens[sign]?.text ?? ''] ?? codeAt(tokens, at)
  const start = currency ? sign + 1 : at
  const plain = numberAt(tokens, start, comma)
  if (!plain || plain.feet) return null
  if (currency) {
    const number = asPaid(tokens, start, plain, currency)
    const after = currencyAfter(tokens, number.next)
    // “$5.98 CAD” says twice what it is, and the second time in full.
    const isPlain = currency === 'USD' && sign === at
    const own = isPlain && after && !after.coin && codes[lower(tokens[number.next])] ? after : undefined
    const unit = own?.unit ?? country ?? currency
    // "£3 50p".
    const coin = number.value.d === 1n && !own ? numberAt(tokens, number.next, false) : null
    const pence = coin && coins[lower(tokens[coin.next])] === unit && coin.value.compare(100) < 0 ? coin : null
    const value = pence ? number.value.add(pence.value.div(100)) : number.value
    return priced(tokens, start, pence ? pence.next + 1 : (own?.next ?? number.next), value, unit)
  }
  const grouped = bySpaces(tokens, at)
  const after = currencyAfter(tokens, grouped ?? plain.next)
  if (!after) return null
  const number = asPaid(tokens, at, plain, after.unit)
  const value = after.coin ? number.value.div(exact(100)) : number.value
  const change = after.coin || value.d !== 1n ? null : changeAfter(tokens, after.next, plain.spoken)
  return priced(tokens, at, change?.next ?? after.next, value.add(change?.value ?? 0), after.unit)
}

/** “A dollar eighty five apiece”, “a buck ten”, “a dollar a foot”: one of it. Of a dollar alone only what it is the price of says that it is one. */
function aCoinAt(tokens: readonly Scanned[], at: number): Found | null {
  const unit = lower(tokens[at]) === 'a' ? ofOne[lower(tokens[at + 1])] : undefined
  if (!unit) return null
  const change = changeAfter(tokens, at + 2, true)
  const isPrice = /^(each|apiece|a|an|per|ea)$/.test(lower(tokens[at + 2]))
  return change || isPrice ? priced(tokens, at, change?.next ?? at + 2, exact(1).add(change?.value ?? 0), unit) : null
}
const ofOne = tableOf<string>({ dollar: 'USD', buck: 'USD', euro: 'EUR', quid: 'GBP' })

/** “4 dollars and 79 cents”, “three euros twenty”: the small coin behind the large. Without its name it is said in words, or in two figures, and ends the price. */
function changeAfter(
  tokens: readonly Scanned[],
  at: number,
  spoken: boolean,
): { value: Fraction; next: number } | null {
  const hasAnd = lower(tokens[at]) === 'and'
  const from = hasAnd ? at + 1 : at
  const number = numberAt(tokens, from, false)
  if (!number || number.feet || number.note || number.value.d !== 1n || number.value.compare(100) >= 0) return null
  const value = number.value.div(100)
  if (/^(cents?|¢|pence|p)$/.test(lower(tokens[number.next]))) return { value, next: number.next + 1 }
  const isTold = spoken ? number.spoken && number.value.compare(10) >= 0 : /^\d\d$/.test(tokens[from]?.text ?? '')
  return isTold && !hasAnd && endsPrice(tokens[number.next]) ? { value, next: number.next } : null
}
const endsPrice = (token: Scanned | undefined): boolean =>
  token === undefined || /^([,.;:!?)]|a|an|each|per|apiece|ea|the)$/.test(lower(token))

/** The number as those write it who pay in that money. */
function asPaid(
  tokens: readonly Scanned[],
  at: number,
  plain: NumberRead,
  unit: string,
): { readonly value: Fraction; readonly next: number } {
  if (plain.spoken || tokens[at]?.sort !== 'digits') return plain
  // “$3 250 posts” may be two things: only where the money stands behind, “1 250 dollars”, do groups belong together in all of them.
  const isBehind = currencyAfter(tokens, bySpaces(tokens, at) ?? at) !== null
  if (!continental.has(unit) && !isBehind) return plain
  const next = bySpaces(tokens, at) ?? plain.next
  const text = tokens
    .slice(at, next)
    .map((it) => it.text)
    .join('')
  if (continental.has(unit) && /^[1-9]\d{0,2}(\.\d{3})+(,\d+)?$/.test(text))
    return { value: new Fraction(text.replace(/\./g, '').replace(',', '.')), next }
  return next > at + 1 && /^\d+([.,]\d+)?$/.test(text) ? { value: new Fraction(text.replace(',', '.')), next } : plain
}

/** The end of a number in groups of three, “1 250” and “12 500,50”; nothing where it is not one. */
function bySpaces(tokens: readonly Scanned[], at: number): number | undefined {
  if (!/^[1-9]\d{0,2}$/.test(tokens[at]?.text ?? '')) return undefined
  let next = at + 1
  while (isGroup(tokens[next])) next++
  return next > at + 1 ? next : undefined
}
const isGroup = (token: Scanned | undefined): boolean =>
  token?.sort === 'digits' && !token.glued && /^\d{3}([.,]\d\d?)?$/.test(token.text)

/** An amount, what it is the price of, and the other way to read it: “$1.480” may be a thousand to who learnt to write it so. */
function priced(tokens: readonly Scanned[], at: number, next: number, value: Fraction, unit: string): Found {
  const thousand = afterThousandBoardFeet(tokens, next)
  if (thousand !== undefined)
    return { next: thousand, quantity: quantity(value.div(1000), unit), bare: null, per: boardFoot }
  const ofBoards = afterJoint(tokens, next)
  const boards = ofBoards === undefined ? undefined : afterBoardFeet(tokens, ofBoards)
  if (boards !== undefined) return { next: boards, quantity: quantity(value, unit), bare: null, per: boardFoot }
  const per = perUnit(tokens, next)
  const rivals: readonly Quantity[] =
    !continental.has(unit) && /^[1-9]\d{0,2}\.\d\d0$/.test(tokens[at]?.text ?? '')
      ? [quantity(value.mul(1000), unit)]
      : []
  return { next, quantity: quantity(value, unit), bare: null, rivals, ...(per ? { per } : {}) }
}

/** Lumber is priced by the board foot, or by a thousand of them, which is no unit of what is bought. */
export const boardFoot = 'board foot'

/** The end of “per thousand board feet”, “/MBF”, “a thousand”: the price is then brought to one board foot. */
function afterThousandBoardFeet(tokens: readonly Scanned[], at: number): number | undefined {
  const from = afterJoint(tokens, at)
  if (from === undefined) return undefined
  const word = lower(tokens[from])
  if (/^(mbf|mbft|mfbm)$/.test(word)) return from + 1
  const isThousand = /^(thousand|m|mille)$/.test(word) || /^1[,.]?000$/.test(word)
  if (!isThousand) return undefined
  return (
    afterBoardFeet(tokens, from + 1) ??
    (word === 'thousand' && !/^\p{L}/u.test(lower(tokens[from + 1])) ? from + 1 : undefined)
  )
}

function afterBoardFeet(tokens: readonly Scanned[], at: number): number | undefined {
  const word = lower(tokens[at])
  if (/^(bf|bdft|fbm)$/.test(word)) return at + 1
  return /^(board|bd|brd)$/.test(word) && /^(foot|feet|ft)$/.test(lower(tokens[at + 1])) ? at + 2 : undefined
}

/** What stands between a price and what it is for: “a”, “per”, “/”, “by the”. */
function afterJoint(tokens: readonly Scanned[], at: number): number | undefined {
  const joint = lower(tokens[at])
  if (joint === 'by' && lower(tokens[at + 1]) === 'the') return at + 2
  if (joint === 'for' && /^(a|an|one|each|every)$/.test(lower(tokens[at + 1]))) return at + 2
  return /^(a|an|per|each|every|\/)$/.test(joint) ? at + 1 : undefined
}

/** “… a foot”, “/m²”: the measure that the price is for; nothing for a day, an hour or a thing. */
export function perUnit(tokens: readonly Scanned[], at: number): string | undefined {
  const joint = afterJoint(tokens, at)
  if (joint === undefined) return undefined
  const from = /^(running|lineal|linear|lin)$/.test(lower(tokens[joint])) ? joint + 1 : joint
  const unit = unitAt(tokens, from, false)?.unit
  const kind = unit && unitNamed(unit).kind
  return kind === 'length' || kind === 'area' || kind === 'volume' || kind === 'mass' ? unit : undefined
}

/** A code in capitals before its number, “CAD 20”. */
const codeAt = (tokens: readonly Scanned[], at: number): string | undefined =>
  /^[A-Z]{3}$/.test(tokens[at]?.text ?? '') ? codes[lower(tokens[at])] : undefined

/** What stands behind a number and makes it money: “20 CAD”, “20 Canadian dollars”, “79 cents”, “50p”. */
function currencyAfter(
  tokens: readonly Scanned[],
  at: number,
): { readonly unit: string; readonly next: number; readonly coin: boolean } | null {
  // “1.250,- kr”, “15,- €”: a stroke for no cents.
  if (/^[.,]$/.test(tokens[at]?.text ?? '') && tokens[at + 1]?.text === '-') return currencyAfter(tokens, at + 2)
  const word = lower(tokens[at])
  const code = codes[word] ?? spoken[word]
  // “12 $5 packs”: the sign belongs to what it is glued to.
  const isNext = /^[$£€]$/.test(word) && tokens[at + 1]?.sort === 'digits' && tokens[at + 1]?.glued
  if (code && !isNext) {
    const dot = word === 'kr' && tokens[at + 1]?.text === '.' && tokens[at + 1]?.glued && tokens[at + 2] !== undefined
    return { unit: code, next: dot ? at + 2 : at + 1, coin: false }
  }
  const newZealand = word === 'new' && lower(tokens[at + 1]) === 'zealand'
  const dollars = newZealand ? 'NZD' : whose[word]
  const next = newZealand ? at + 2 : at + 1
  if (dollars && /^(dollar|buck)s?$/.test(lower(tokens[next]))) return { unit: dollars, next: next + 1, coin: false }
  // "79c each"; "79c" alone is a temperature.
  if (word === 'c' && tokens[at]?.glued && /^(each|apiece|ea|a|an|per|\/)$/.test(lower(tokens[at + 1])))
    return { unit: 'USD', next: at + 1, coin: true }
  const coin = coins[word]
  return coin && (word !== 'p' || tokens[at]?.glued) ? { unit: coin, next: at + 1, coin: true } : null
}

const things =
  'bag|picket|paling|board|slat|post|rail|panel|box|boxe|packet|pack|tin|tub|roll|hinge|latch|latche|bracket|cap|brick|screw|stick|length|sheet|sleeper|batten|tube|gate|plank|cap|bolt|nail|stake|can'
const thing = new RegExp(`^(${things})e?s?$`)

/**
 * “160 pickets at 2.85”, “12 bags @ 5.98 each”: things that are counted, and a price without its currency.
 * Posts and rails stand at a spacing as well: of them, and of a whole number, only “each” makes a price.
 */
export function barePriceAt(tokens: readonly Scanned[], at: number): Found | null {
  const [token, joint] = [tokens[at], lower(tokens[at - 1])]
  if (token?.sort !== 'digits' || !/^(at|@|for|cost|costs)$/.test(joint)) return null
  const number = numberAt(tokens, at, false)
  if (!number || number.hasFraction || number.feet || number.next !== at + 1) return null
  const after = lower(tokens[at + 1])
  if (unitAt(tokens, at + 1, true) && after !== 'each' && after !== 'a') return null
  if (/^(o|oc|on|c|cent(er|re)s?|ctrs?|spacing|apart|degrees?|x|by|:|-|°|%|am|pm)$/.test(after)) return null
  const isEach =
    /^(each|apiece|ea)$/.test(after) ||
    (/^(a|per)$/.test(after) &&
      /^(piece|pop|picket|paling|board|bag|post|rail|box|pack|stick|length|tin|panel)$/.test(lower(tokens[at + 2])))
  const counted = [at - 2, at - 3, at - 4].find((i) => thing.test(lower(tokens[i])))
  if (counted === undefined) return null
  const hasCount = [counted - 1, counted - 2, counted - 3].some(
    (i) => tokens[i]?.sort === 'digits' || numberAt(tokens, i, false)?.spoken === true,
  )
  const name = lower(tokens[counted])
  const isPriceAlone = /^\d+\.\d\d$/.test(token.text) && joint !== 'for' && !/^(post|rail|batten|stake)s?$/.test(name)
  return isEach || (hasCount && isPriceAlone)
    ? { next: number.next, quantity: quantity(number.value, 'money'), bare: null }
    : null
}

const asksPrice =
  /\b(cheap|quot|bid|price|pric|cost|better (deal|value|buy|offer)|dear|per (foot|ft|met(er|re)|m)\b|(a|by the) (foot|met(er|re)))/i
/** “4200 for 120 ft, 3900 for 110 ft: which is cheaper”: a number for a length is its price, where prices are asked about. */
export function inQuotes(readings: readonly Reading[], text: string): Reading[] {
  if (!asksPrice.test(text)) return [...readings]
  return readings.map((it, i) => {
    const next = readings[i + 1]
    const isLength = next?.quantity != null && unitNamed(next.quantity.unit).kind === 'length'
    const isFor = next !== undefined && /^\s*(is |was )?for (the |a )?$/.test(text.slice(it.end, next.start))
    if (!it.bare || it.clock || it.proportion || !isLength || !isFor || it.bare.compare(50) < 0) return it
    return { ...it, quantity: quantity(it.bare, 'money'), bare: null, note: 'no currency was said' }
  })
}

/** What is said of prices that came without their currency. */
export const unnamedCurrency = ({ unit }: Quantity): string | undefined =>
  unit === 'money' ? 'You named no currency: the figures are in whatever money your prices are in.' : undefined

/** Whether an amount of money ends right before a token: “$1.85 a foot” is reckoned by the foot, and holds no length. */
export const endsMoney = (tokens: readonly Scanned[], at: number): boolean =>
  /^(dollars?|bucks?|quid|euros?|cents?|pence|usd|cad|aud|nzd|gbp|eur|czk|pln|sek|nok|dkk|kr|kč|zł|zlotys?|korun[ay]?|kron[oe]r|[$£€])$/.test(
    lower(tokens[at - 1]),
  ) ||
  (lower(tokens[at - 1]) === 'p' && tokens[at - 1]?.glued === true && tokens[at - 2]?.sort === 'digits') ||
  isSignedSum(tokens, at - 1) ||
  (/^(-|to|and)$/.test(lower(tokens[at - 2])) && tokens[at - 1]?.sort === 'digits' && isSignedSum(tokens, at - 3))

/** “$5”, as it ends “$5 a foot” and “$4 to 5 a foot”. */
const isSignedSum = (tokens: readonly Scanned[], at: number): boolean =>
  tokens[at]?.sort === 'digits' && /^[$£€]$/.test(tokens[at - 1]?.text ?? '')
