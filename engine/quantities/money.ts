// This file is about money with its sign in front: $4.79, £3.50, NZ$5.
import type { Found, Habits } from './found.ts'
import { numberAt } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const currencies: Readonly<Record<string, string>> = { $: 'USD', '£': 'GBP', '€': 'EUR' }
const countries: Readonly<Record<string, string>> = {
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
export function moneyAt(tokens: readonly Scanned[], at: number, habits: Habits): Found | null {
  let sign = at
  const country = countries[lower(tokens[at])]
  if (country && tokens[at + 1]?.text === '$' && tokens[at + 1]?.glued) sign = at + 1
  const currency = currencies[tokens[sign]?.text ?? '']
  if (!currency) return null
  const number = numberAt(tokens, sign + 1, habits.decimalComma ?? false)
  if (!number) return null
  const unit = sign > at && country ? country : currency
  return {
    next: number.next,
    quantity: quantity(number.value, unit),
    bare: null,
    ...(unit === 'USD' && sign === at ? { note: 'read as US dollars' } : {}),
  }
}
