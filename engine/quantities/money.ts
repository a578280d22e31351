// This file is about money: its sign in front ($4.79, £3.50, NZ$5), its code on either side (CAD 20, 20 AUD), small coin (79 cents, 50p).
import { exact } from './amount.ts'
import type { Found, Habits } from './found.ts'
import { numberAt } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const signs: Readonly<Record<string, string>> = { $: 'USD', '£': 'GBP', '€': 'EUR' }
/** Whose dollar it is, written before the sign: `C$5`, `NZ$5`. */
const before: Readonly<Record<string, string>> = {
  a: 'AUD',
  au: 'AUD',
  aud: 'AUD',
  c: 'CAD',
  ca: 'CAD',
  cad: 'CAD',
  nz: 'NZD',
  nzd: 'NZD',
  us: 'USD',
  usd: 'USD',
}
const codes: Readonly<Record<string, string>> = {
  usd: 'USD',
  cad: 'CAD',
  gbp: 'GBP',
  aud: 'AUD',
  nzd: 'NZD',
  eur: 'EUR',
  '€': 'EUR',
}
/** “20 Canadian dollars”. */
const whose: Readonly<Record<string, string>> = {
  us: 'USD',
  american: 'USD',
  canadian: 'CAD',
  australian: 'AUD',
  aussie: 'AUD',
  nz: 'NZD',
  kiwi: 'NZD',
}
const coins: Readonly<Record<string, string>> = { cent: 'USD', cents: 'USD', '¢': 'USD', p: 'GBP', pence: 'GBP' }

export function moneyAt(tokens: readonly Scanned[], at: number, habits: Habits): Found | null {
  const comma = habits.decimalComma ?? false
  const country = before[lower(tokens[at])]
  const sign = country && tokens[at + 1]?.text === '$' && tokens[at + 1]?.glued ? at + 1 : at
  const currency = signs[tokens[sign]?.text ?? ''] ?? (sign === at ? codeAt(tokens, at) : undefined)
  const number = numberAt(tokens, currency ? sign + 1 : at, comma)
  if (!number || number.feet) return null
  const after = currencyAfter(tokens, number.next)
  if (currency) {
    // “$5.98 CAD” says twice what it is, and the second time in full.
    const isPlain = currency === 'USD' && sign === at
    const own = isPlain && after && !after.coin && codes[lower(tokens[number.next])] ? after : undefined
    const unit = own?.unit ?? (sign > at && country ? country : currency)
    return { next: own?.next ?? number.next, quantity: quantity(number.value, unit), bare: null }
  }
  if (!after) return null
  const value = after.coin ? number.value.div(exact(100)) : number.value
  return { next: after.next, quantity: quantity(value, after.unit), bare: null }
}

/** A code in capitals before its number, “CAD 20”. */
const codeAt = (tokens: readonly Scanned[], at: number): string | undefined =>
  /^[A-Z]{3}$/.test(tokens[at]?.text ?? '') ? codes[lower(tokens[at])] : undefined

/** What stands behind a number and makes it money: “20 CAD”, “20 Canadian dollars”, “79 cents”, “50p”. */
function currencyAfter(
  tokens: readonly Scanned[],
  at: number,
): { readonly unit: string; readonly next: number; readonly coin: boolean } | null {
  const word = lower(tokens[at])
  const code = codes[word]
  if (code) return { unit: code, next: at + 1, coin: false }
  const newZealand = word === 'new' && lower(tokens[at + 1]) === 'zealand'
  const dollars = newZealand ? 'NZD' : whose[word]
  const next = newZealand ? at + 2 : at + 1
  if (dollars && /^dollars?$/.test(lower(tokens[next]))) return { unit: dollars, next: next + 1, coin: false }
  const coin = coins[word]
  return coin && (word !== 'p' || tokens[at]?.glued) ? { unit: coin, next: at + 1, coin: true } : null
}

/** Whether an amount of money ends right before a token: “$1.85 a foot” is reckoned by the foot, and holds no length. */
export const endsMoney = (tokens: readonly Scanned[], at: number): boolean =>
  /^(dollars?|bucks?|quid|euros?|cents?|pence|usd|cad|aud|nzd|gbp|eur)$/.test(lower(tokens[at - 1])) ||
  (lower(tokens[at - 1]) === 'p' && tokens[at - 1]?.glued === true && tokens[at - 2]?.sort === 'digits') ||
  (tokens[at - 1]?.sort === 'digits' && /^[$£€]$/.test(tokens[at - 2]?.text ?? ''))
