// This file is about the price of one: of so many whose price nobody told (“what do 18 posts cost me”), of what nobody has counted (“45 cents each plus 6 % tax”),
// and of a measure that was answered before (“5.60 a metre, how much is that?”).
import { isList, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { howTaxed } from './bills.ts'
import { billSaid } from './bill-lines.ts'
import { lastFigures } from './last-answer.ts'
import { isTax, soldByIn } from './prices-said.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Token } from './stems.ts'

/** The request of a message that tells the price of one, or asks what so many come to without it. */
export const priceOfOneIn = (heard: Heard, message: readonly Token[]): Request | undefined =>
  priceAnswered(heard, message) ?? priceOfUncounted(heard, message) ?? countWithoutPrice(heard) ?? measureOfLast(heard)

const isOfOne =
  /^\s*(?:dollars?\s|bucks?\s|cents?\s)?(?:each|apiece|a piece|ea\b|a pop|per (?:one|piece)|every one|for one)/
const things =
  'posts?|rails?|pickets?|palings?|pales?|slats?|boards?|panels?|caps?|bags?|sacks?|bricks?|pavers?|blocks?|hinges?|latches|brackets?|screws?|nails?|stakes?|sleepers?|lengths?|sticks?|tins?|cans?|tubs?|boxes|battens?|planks?'
const asksCost =
  /\b(what(['’]?s| is| are| do| does| will| would|['’]?ll)?|how much)\b[^.]*\b(cost|costs|come to|set me back|run me|run us|price of|pay|bill|spend|worth|total)\b|\bhow much (are|is|for|do|will|would)\b|\bprice (for|of)\b/i
const asksOther =
  /\b(each|per|an?|one) (foot|metre|meter|yard|hole|bag of)\b|\b(labour|labor|install\w*|paint\w*|stain\w*|dig\w*|rent\w*|hire|deliver\w*|weigh\w*|heavy)\b/i

/** “What do 18 posts cost me?”: nobody knows before the price is told. */
function countWithoutPrice({ readings, job, said }: Heard): Request | undefined {
  const counted = new RegExp(`^\\s*(?:\\p{L}+\\s){0,2}?(?:${things})\\b`, 'iu')
  const [only, more] = readings
  if (!only || more || only.bare?.d !== 1n || only.change || said.length > 120) return undefined
  if (job.decisions.length > 0 || job.wanted.length > 0) return undefined
  if (!asksCost.test(said) || asksOther.test(said) || !counted.test(said.slice(only.end))) return undefined
  const [thing = ''] = new RegExp(`(?:${things})\\b`, 'i').exec(said.slice(only.end)) ?? []
  return requestFor('bill', ['billTotal'], [{ ...tell('itemCounts', only.tag), thing }])
}

/** “29.80 each and gst on top”, where the price of one was asked for. */
function priceAnswered(heard: Heard, message: readonly Token[]): Request | undefined {
  const { job, readings } = heard
  if (job.named !== 'bill' || !job.asked.some((it) => it.word === 'unitPrices')) return undefined
  const counts = job.decisions.find((it) => it.word === 'itemCounts' && it.at === yard)?.value
  const rate = readings.find((it) => it.quantity?.kind === 'percent')
  const [price, more] = readings.filter((it) => it !== rate)
  if (!isList(counts) || counts.length !== 1 || !price || more || !mayBeMoney(price) || price.per) return undefined
  if (rate && !message.some(isTax)) return undefined
  return requestFor(
    'bill',
    ['billTotal'],
    [tell('unitPrices', price.tag), ...(rate ? [tell('taxRate', rate.tag)] : []), ...howTaxed(heard, message)],
  )
}

/** “45 cents each plus 6 % tax, total?”, of things that nobody has counted: one of them is not the whole. */
function priceOfUncounted(heard: Heard, message: readonly Token[]): Request | undefined {
  const rates = heard.readings.filter((it) => it.quantity?.kind === 'percent')
  const [price, more] = heard.readings.filter((it) => it.quantity?.kind !== 'percent')
  const [rate] = rates
  if (!rate || rates.length > 1 || !price || more || !mayBeMoney(price) || price.per) return undefined
  if (!message.some(isTax) || !isOfOne.test(wordsBehind(heard, price))) return undefined
  return requestFor(
    'bill',
    ['billTotal'],
    [tell('unitPrices', price.tag), tell('taxRate', rate.tag), ...howTaxed(heard, message)],
  )
}

const measured: Readonly<Record<string, readonly [string, 'length' | 'area' | 'volume' | 'mass']>> = {
  ft: ['pricedLength', 'length'],
  m: ['pricedLength', 'length'],
  yd: ['pricedLength', 'length'],
  ft2: ['pricedArea', 'area'],
  m2: ['pricedArea', 'area'],
  yd3: ['pricedVolume', 'volume'],
  m3: ['pricedVolume', 'volume'],
  ft3: ['pricedVolume', 'volume'],
  gal: ['pricedVolume', 'volume'],
  L: ['pricedVolume', 'volume'],
  kg: ['pricedMass', 'mass'],
  lb: ['pricedMass', 'mass'],
  ton: ['pricedMass', 'mass'],
  tonne: ['pricedMass', 'mass'],
}
/** “5.60 a metre, how much is that”, “$41 a gallon”: of so much as was answered last. */
function measureOfLast(heard: Heard): Request | undefined {
  const { readings, job, said } = heard
  const [price, more] = readings
  const [word, kind] = measured[price?.per ?? ''] ?? []
  if (!price || more || !word || !kind || job.asked.length > 0 || said.length > 120) return undefined
  if (/\b(or|versus|vs|budget|afford)\b/i.test(said)) return undefined
  const [much, another] = lastFigures(heard, kind)
  if (!much || another || job.results.length === 0) return undefined
  return requestFor(
    'price-by-measure',
    ['measuredCost'],
    [
      tell('measurePrice', price.tag),
      ...soldByIn([{ reading: price, word: 'measurePrice', at: yard, score: 1 }], said),
      tell(word, much.tag),
    ],
  )
}

const single = /\b(?:an?|one|the)\s+(?:\p{L}+\s){0,3}?(?:at|for|is|costs?|that['’]s)\s*[$£€]?$/iu
const goesOn =
  /^(?:(?:and|ok|okay|now) )*(?:plus|also|add)\b|\b(?:plus|also|on top|as well|too|total for|together with|now)\b/i
/** “Plus a gate at 150 and 9 caps at 3.75 each, what is it now?”: on the same bill as the amount that was answered last. */
export function besideLast(heard: Heard, message: readonly Token[]): Request | undefined {
  const { job, said } = heard
  if (!goesOn.test(said.trim()) || job.asked.length > 0 || job.named === 'bill' || job.named === 'money-left')
    return undefined
  const [last] = lastFigures(heard, 'money')
  if (!last || !/(Cost|Total|Bill|quotedByMeasure)/i.test(last.word)) return undefined
  const alone = heard.readings.filter(
    (it) => mayBeMoney(it) && !it.per && single.test(wordsBefore(heard, it)) && !isOfOne.test(wordsBehind(heard, it)),
  )
  const rest = { ...heard, readings: heard.readings.filter((it) => !alone.includes(it)) }
  const bill = billSaid(
    rest,
    message.map((it) => withoutReading(it, alone)),
  )
  if (!bill || bill.lines.length === 0 || bill.others.length > 0 || bill.discount || bill.spare) return undefined
  if (!bill.lines.every((it) => it.count && it.price)) return undefined
  // An amount with tax in it is not taxed again.
  if (bill.tax && job.decisions.some((it) => /tax/i.test(it.word))) return undefined
  return requestFor(
    'bill',
    ['billTotal'],
    [
      tell('amountCarried', last.tag),
      ...alone.map((it) => tell('amountsBeside', it.tag)),
      ...bill.lines.flatMap((it) => [
        { ...tell('itemCounts', (it.count as Tagged).tag), thing: it.thing },
        tell('unitPrices', (it.price as Tagged).tag),
      ]),
      ...(bill.delivery ? [tell('deliveryPrice', bill.delivery.tag)] : []),
      ...(bill.tax ? [tell('taxRate', bill.tax.tag)] : []),
      ...howTaxed(heard, message),
    ],
  )
}

const withoutReading = (token: Token, but: readonly Tagged[]): Token => {
  if (!but.some((it) => it.tag === token.tag)) return token
  const { reading: _, tag: __, ...rest } = token
  return rest
}
