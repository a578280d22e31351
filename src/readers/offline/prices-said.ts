// This file is about prices that stand right behind what they buy: “12 bags at $5.98”, “20 pickets for £3.25 each”.
// So many of a thing and the price of one belong together, however near another cue stands.
import { askable, unitNamed, vocabulary, yard } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Heard } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import { pricedPer } from './fits.ts'
import type { Hit } from './lexicon.ts'
import type { Token } from './stems.ts'

/** The money of a message whose place says what it is, with what it buys. */
export const moneyIn = (heard: Heard, message: readonly Token[], needed: ReadonlySet<string>): Bound[] => [
  ...pricesIn(heard, message, needed),
  ...measureBought(heard, needed),
  ...amountsIn(heard, needed),
]

const [count, price] = ['itemCounts', 'unitPrices']

const bought: Readonly<Record<string, string>> = {
  length: 'pricedLength',
  area: 'pricedArea',
  volume: 'pricedVolume',
  mass: 'pricedMass',
}

/** “145 ft of fence at 28 dollars a foot”: so much of what the price is for, where that is what is asked. A yard may be one of length, or of gravel. */
function measureBought(heard: Heard, needed: ReadonlySet<string>): Bound[] {
  const prices = heard.readings.filter((it) => pricedPer(it) === 'measure')
  const [per] = prices.map((it) => it.per as string)
  if (!per || prices.length !== 1 || !needed.has('measurePrice')) return []
  const kinds = [unitNamed(per).kind, ...(per === 'yd' ? ['volume'] : [])]
  const much = heard.readings.filter((it) => it.quantity && kinds.includes(it.quantity.kind))
  const word = bought[much[0]?.quantity?.kind ?? '']
  return much[0] && much.length === 1 && word ? [{ reading: much[0], word, at: yard, score: weight.byPlace }] : []
}

/** “Materials £2,140, concrete £186, hire £95, plus VAT”: what each comes to, whatever it is called, where amounts are what is needed. */
function amountsIn(heard: Heard, needed: ReadonlySet<string>): Bound[] {
  const word = 'taxedAmounts'
  if (!needed.has(word) || needed.has(price)) return []
  return heard.readings
    .filter((it) => it.quantity?.kind === 'money' && !it.per)
    .map((reading) => ({ reading, word, at: yard, score: weight.byPlace }))
}

/** What a tax on sales is called. */
export const isTax = (token: Token): boolean => /^(tax|vat|gst|hst|pst)$/.test(token.stem)

/** “$480 plus 8.25 % tax”: money, a rate of tax, and nothing else to work with. */
export const isOfTax = ({ readings }: Heard, message: readonly Token[]): boolean =>
  readings.filter((it) => it.quantity?.kind === 'percent').length === 1 &&
  readings.some((it) => it.quantity?.kind === 'money') &&
  readings.every((it) => it.quantity?.kind === 'percent' || (it.quantity?.kind === 'money' && !it.per)) &&
  message.some(isTax)

/** Each number of things with its price, where the question is what they come to, or nothing is asked. */
export function pricesIn(heard: Heard, message: readonly Token[], needed: ReadonlySet<string>): Bound[] {
  if (needed.size > 0 && !needed.has(price)) return []
  if (!vocabulary.has(count) || !vocabulary.has(price)) return []
  const bound: Bound[] = []
  const readingAt = (spot: number) => message[spot]?.reading
  for (const [spot] of message.entries()) {
    const money = readingAt(spot)
    if (money?.quantity?.kind !== 'money' || money.per) continue
    const joint = message[spot - 1]?.stem ?? ''
    const isEach = /^(each|apiece|ea|per|a)$/.test(message[spot + 1]?.stem ?? '')
    // “@” is no word, and leaves no token.
    const isAt = joint === 'at' || heard.said.slice(0, money.start).trimEnd().endsWith('@')
    if (!isAt && !((joint === 'for' || joint === 'cost') && isEach)) continue
    let at = isAt && joint !== 'at' ? spot - 1 : spot - 2
    while (
      at >= 0 &&
      spot - at <= 7 &&
      !message[at]?.tag &&
      /^\p{L}/u.test(message[at]?.text ?? '') &&
      !/^(and|for|to)$/.test(message[at]?.stem ?? '')
    )
      at--
    // The stick or the size between: “20 8 ft rails at $4”.
    while (at > 0 && readingAt(at) && readingAt(at)?.bare === null && message[at - 1]?.tag) at--
    const many = readingAt(at)
    if (!many?.bare || many.proportion || many.clock || many.bare.d !== 1n || at > spot - 2) continue
    bound.push(
      { reading: many, word: count, at: yard, score: weight.byPlace },
      { reading: money, word: price, at: yard, score: weight.byPlace },
    )
  }
  return bound
}

const soldBy = askable
  .filter((it) => Object.values(it.needs).some((word) => word.per === 'measure'))
  .flatMap((it) => Object.values(it.needs))
  .find((word) => word.kind === 'choice')

/** What a price is for, “$28/ft”, told by the price itself: “per m³” holds “per m”, and is not that. */
export function soldByIn(bound: readonly Bound[], said: string): Told[] {
  const price = bound.find((it) => vocabulary.get(it.word)?.per === 'measure')?.reading
  if (!price?.per || !soldBy?.options?.[price.per]) return []
  const [by = ''] = /^\/[\p{L}\p{N}]+/u.exec(said.slice(price.end, price.end + 20)) ?? []
  const quote = said.slice(price.start, price.end) + by
  return [{ word: soldBy.name, at: yard, from: { tag: null, quote, option: price.per, usual: null } }]
}

/** “Costs 28 dollars a foot”: a phrase that would ask for a price, with the price in it, tells it; “£42 per cubic metre” asks for no volume. */
export function tellsIt(hit: Hit, message: readonly Token[]): boolean {
  if (hit.sort !== 'ask') return false
  const priceAt = (token: Token | undefined) => (token?.reading?.quantity?.kind === 'money' ? token.reading : undefined)
  if (vocabulary.get(hit.word)?.kind === 'money') return message.slice(hit.from, hit.to).some((it) => priceAt(it))
  let at = hit.from - 1
  while (/^(a|an|per|each|every|the|by|running|linear|lineal)$/.test(message[at]?.stem ?? '')) at--
  return priceAt(message[at])?.per !== undefined
}
