// This file is about several amounts with one rate of tax: “lumber $900, hardware $120, 7 % tax on both; delivery $60 is not taxed”.
import { calculationNamed } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { chosenBy, requestFor, tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBefore, wordsBehind } from './around.ts'
import { isTax } from './prices-said.ts'
import { howTaxed } from './bills.ts'
import { messageOf, type Token } from './stems.ts'

const isOff =
  /\b(not|isn['’]?t|never|no)\b[^,;]{0,16}\b(tax\w*|vat|gst|hst)|\b(untaxed|tax[- ]free|exempt|tax exempt|no tax|without tax)\b/
const isPaid = /\b((already|been) paid|paid (already|for|in|last)|prepaid|paid)\b/
const isOfEach = /^\s*(each|apiece|a piece|ea\b|a |an |per )/

/** Amounts with their tax, those that it does not come on, and those that are paid already. */
export function taxesIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { readings, said } = heard
  const rates = readings.filter((it) => it.quantity?.kind === 'percent')
  const amounts = readings.filter((it) => it.quantity?.kind === 'money')
  const others = readings.filter((it) => !rates.includes(it) && !amounts.includes(it))
  const [rate] = rates
  if (!rate || rates.length > 1 || amounts.length < 2 || !message.some(isTax)) return undefined
  if (amounts.some((it) => it.per || isOfEach.test(wordsBehind(heard, it)))) return undefined
  const around = (it: Tagged): string => aroundOf(heard, it, amounts)
  const untaxed = amounts.filter((it) => isOff.test(around(it)))
  const paid = amounts.filter((it) => !untaxed.includes(it) && isPaid.test(around(it)))
  const taxed = amounts.filter((it) => !untaxed.includes(it) && !paid.includes(it))
  if (untaxed.length + paid.length === 0 || taxed.length === 0) return undefined
  const counts = others.every(
    (it) => it.bare?.equals(taxed.length) && /\b(all|these|those|the|both|on)\s*$/.test(wordsBefore(heard, it)),
  )
  if (!counts) return undefined
  const tax = (message.find(isTax) as Token).text
  const option = /\b(includ\w*|inclusive|incl)\b/i.test(said) ? 'included' : 'added'
  return requestFor(
    'tax-on-amounts',
    ['billTotal'],
    [
      ...taxed.map((it) => tell('taxedAmounts', it.tag)),
      ...untaxed.map((it) => tell('untaxedAmounts', it.tag)),
      ...paid.map((it) => tell('settledAmounts', it.tag)),
      tell('taxRate', rate.tag),
      chosenBy('taxIncluded', option, tax),
    ],
  )
}

/** Its own clause: from the amount before it, or the stop of the sentence, to the next comma or stop behind it. */
function aroundOf(heard: Heard, it: Tagged, amounts: readonly Tagged[]): string {
  const earlier = amounts.filter((other) => other.end <= it.start).at(-1)?.end ?? 0
  const clause =
    heard.said
      .slice(Math.max(earlier, it.start - 40), it.start)
      .split(/[.;?!,]\s/)
      .at(-1) ?? ''
  const behind = /^.*?(?=[;?!,\n]|\.\s|\.$|$)/s.exec(heard.said.slice(it.end, it.end + 48))?.[0] ?? ''
  const next = amounts.find((other) => other.start >= it.end)
  const until = next && next.start - it.end < behind.length ? behind.slice(0, next.start - it.end) : behind
  return `${clause} ${until}`.toLowerCase()
}

/** “What will the tax come to, at 8.1 %?”: a sales tax comes on top where nothing says otherwise. */
export function withTaxOnTop(heard: Heard, request: Request): Request {
  const isOfTax =
    request.told.some((it) => it.word === 'taxRate') &&
    (request.calculation === null || calculationNamed(request.calculation)?.needs.taxIncluded !== undefined)
  const isSaid = [...request.told, ...heard.job.decisions].some((it) => it.word === 'taxIncluded')
  return isOfTax && !isSaid ? { ...request, told: [...request.told, ...howTaxed(heard, messageOf(heard))] } : request
}
