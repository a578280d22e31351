// This file is about the lines of a bill: “19 posts at 18.40 and 240 pickets at 3.15 each”, “3.10 a picket, 14.25 a post; 170 and 13 of them”.
// What buys what is said by the order of numbers and prices, whatever the things are called.
import type { Heard, Tagged } from '../reader.ts'
import { filler, type Token } from './stems.ts'

/** So many of a thing, or the price of one, or both. */
export interface BillLine {
  /** What it is called, in words of the message; empty where nothing names it. */
  readonly thing: string
  readonly count?: Tagged
  readonly price?: Tagged
}

export interface BillSaid {
  readonly lines: readonly BillLine[]
  /** Tax and discount, in percent, and what the delivery costs. */
  readonly tax?: Tagged
  readonly discount?: Tagged
  readonly delivery?: Tagged
  /** So many percent more of them, for waste. */
  readonly spare?: Tagged
  /** Whether a price has its currency, “each” or “at” beside it, so that it is one for sure. */
  readonly isPriced: boolean
  /** Quantities that are no part of a bill: sizes of what is bought, or another matter. */
  readonly others: readonly Tagged[]
}

const eachOf = /^(each|apiece|ea|per|a|an|every|the)$/
const atPrice = /^(at|for|cost|are|is|be|pay|paying|charge|want|@|from|was|were|now)$/
const ofTax = /^(tax|vat|gst|hst|pst)$/
const ofDiscount = /^(discount|off|rebate|less|knock|knocked)$/
const ofSpare = /^(spare|over|extra|waste|wastage|junk|split|breakage|more|cull|reject|bad)$/
const ofDelivery = /^(deliver|delivery|delivered|freight|shipping|carriage|drop-off)$/
const isStop = (token: Token | undefined): boolean => token === undefined || /^[.;?!\n]$/.test(token.text)
const isWord = (token: Token | undefined): token is Token =>
  token !== undefined && token.tag === undefined && /\p{L}/u.test(token.text)
/** No name of a thing: what is done with it, what asks for it, and small words. */
const noName =
  /^(need|want|get|buy|bought|take|taking|took|have|for|at|and|plus|with|x|times|each|apiece|ea|piece|pop|go|one|it|them|em|'em|those|these|only|just|total|what|what's|whats|how|much|cost|price|priced|come|to|tax|vat|gst|hst|pst|sale|off|discount|delivery|in|on|by|or|so|then|also|now|if|instead|make|say|more|but|not|per|every|all|up|down|went|gone|sell|sold|charge|paying|pay|altogether|together|they|he|she|who|will|they're|as|same|actually|sorry|wait|no|yes|ok|okay|add|thing|stuff|damage|quantity|qty|us|ex|inc|incl|here|there|was|were|right|hi|hello|hey|well|lot)$/

const isBareWhole = (it: Tagged): boolean =>
  it.bare !== null &&
  it.bare.d === 1n &&
  it.bare.compare(0) > 0 &&
  !it.proportion &&
  !it.clock &&
  !it.section &&
  !/^\d+\.\d/.test(it.said) &&
  it.firmness !== 'range'

/** The lines of a bill that a message tells, with what comes off and on top; nothing where a number or a price is left without its fellow. */
export function billSaid(heard: Heard, message: readonly Token[]): BillSaid | undefined {
  const others: Tagged[] = []
  const parts: { readonly sort: 'count' | 'price'; readonly at: number; readonly reading: Tagged }[] = []
  let [tax, discount, delivery, spare]: (Tagged | undefined)[] = []
  let isPriced = false
  for (const [at, { reading }] of message.entries()) {
    if (!reading) continue
    const near = (before: number, behind: number, what: RegExp): boolean => isNear(message, at, before, behind, what)
    const isPercent = reading.quantity?.kind === 'percent'
    if (isPercent || isRateOfTax(message, at)) {
      if (near(2, 2, ofTax) && !tax) tax = reading
      else if (!spare && near(3, 4, ofSpare)) spare = reading
      else if (!discount && (near(5, 5, ofDiscount) || message.some((it) => it.stem === 'discount'))) discount = reading
      else return undefined
      continue
    }
    const isMoney = reading.quantity?.kind === 'money'
    if (isMoney && reading.per) return undefined
    if ((isMoney || reading.bare !== null) && near(3, 3, ofDelivery) && !isPriceOfEach(message, at) && !delivery) {
      delivery = reading
      isPriced ||= isMoney
      continue
    }
    const how = isMoney ? 'sure' : isPriceAt(heard, message, at)
    if (how) {
      isPriced ||= how === 'sure'
      parts.push({ sort: 'price', at, reading })
    } else if (isBareWhole(reading) && message[at - 1]?.stem !== 'of' && !isSizeOf(message, at))
      parts.push({ sort: 'count', at, reading })
    else others.push(reading)
  }
  const pairs = inTurn(parts) ?? inBlocks(parts)
  if (!pairs) return undefined
  let from = 0
  const lines = pairs.map((pair): BillLine => {
    const spots = [pair.count, pair.price].filter((it) => it !== undefined).map((it) => it.at)
    const [first, last] = [Math.min(...spots), Math.max(...spots)]
    const thing = nameOf(heard, message, Math.min(first, from), pair)
    from = last + 1
    return {
      thing,
      ...(pair.count ? { count: pair.count.reading } : {}),
      ...(pair.price ? { price: pair.price.reading } : {}),
    }
  })
  return {
    lines,
    isPriced,
    others,
    ...(tax ? { tax } : {}),
    ...(discount ? { discount } : {}),
    ...(delivery ? { delivery } : {}),
    ...(spare ? { spare } : {}),
  }
}

/** Whether such a word stands within so many tokens before or behind, in the same sentence. */
function isNear(message: readonly Token[], at: number, before: number, behind: number, what: RegExp): boolean {
  const reach = (step: 1 | -1, most: number): boolean => {
    for (let i = 1; i <= most && !isStop(message[at + i * step]); i++)
      if (what.test(message[at + i * step]?.stem ?? '')) return true
    return false
  }
  return reach(-1, before) || reach(1, behind)
}

/** “Tax 7.25”, “gst is 10”, “7.25 tax”: a rate that was said without its percent. */
function isRateOfTax(message: readonly Token[], at: number): boolean {
  const { reading } = message[at] as Token
  if (!reading?.bare || isPriceOfEach(message, at) || reading.bare.compare(30) > 0) return false
  let before = at - 1
  while (/^(is|of|be|at|rate|:|here)$/.test(message[before]?.stem ?? '')) before--
  return ofTax.test(message[before]?.stem ?? '') || ofTax.test(message[at + 1]?.stem ?? '')
}

/** Whether a number without its currency is a price: in cents, or with “at … each” around it. `sure` where it can be nothing else. */
function isPriceAt(heard: Heard, message: readonly Token[], at: number): 'sure' | 'likely' | false {
  const reading = message[at]?.reading
  if (!reading?.bare || reading.proportion || reading.clock || reading.section) return false
  if (!/^\d+(\.\d+)?$/.test(reading.said)) return false
  const isCents = /^\d+\.\d\d$/.test(reading.said)
  if (isPriceOfEach(message, at) && (isCents || isAtPrice(heard, message, at))) return 'sure'
  return isCents ? 'likely' : false
}
const isAtPrice = ({ said }: Heard, message: readonly Token[], at: number): boolean =>
  /^(at|for|cost|are|is|@)$/.test(message[at - 1]?.stem ?? '') ||
  said.slice(0, message[at]?.start).trimEnd().endsWith('@')

/** “3.15 each”, “3.10 a picket”, “7.20 a go”. */
const isPriceOfEach = (message: readonly Token[], at: number): boolean => {
  const next = message[at + 1]?.stem ?? ''
  if (/^(each|apiece|ea)$/.test(next)) return true
  return (
    /^(a|an|per|every|for)$/.test(next) && (isWord(message[at + 2]) || message[at + 2]?.reading?.section !== undefined)
  )
}

/** “80 lb bags” has its unit read; “3 boxes of 100” and “No 8 screws” hold a number that buys nothing. */
const isSizeOf = (message: readonly Token[], at: number): boolean =>
  /^(no|number|size|gauge|grade|aisle|sku|item)$/.test(message[at - 1]?.stem ?? '') ||
  /^(gauge|grade|inch|mil|side|way|day|hour|bay|time|year|week|coat|percent|foot)$/.test(message[at + 1]?.stem ?? '')

interface Part {
  readonly at: number
  readonly reading: Tagged
}
interface Pair {
  readonly count?: Part
  readonly price?: Part
}

/** A number and a price, or a price and a number, one pair after the other; a single one of either stands alone. */
function inTurn(parts: readonly ({ readonly sort: 'count' | 'price' } & Part)[]): Pair[] | undefined {
  if (parts.length === 1) return parts.map((it) => ({ [it.sort]: it }))
  const pairs: Pair[] = []
  for (let i = 0; i < parts.length; i += 2) {
    const [one, two] = [parts[i], parts[i + 1]]
    if (!one || !two || one.sort === two.sort) return undefined
    pairs.push({ [one.sort]: one, [two.sort]: two })
  }
  return pairs.length > 0 ? pairs : []
}

/** All prices and then all numbers, or the other way round. */
function inBlocks(parts: readonly ({ readonly sort: 'count' | 'price' } & Part)[]): Pair[] | undefined {
  const half = parts.length / 2
  const [first, last] = [parts.slice(0, half), parts.slice(half)]
  const isBlock = (all: typeof first): boolean => all.every((it) => it.sort === all[0]?.sort)
  if (!Number.isInteger(half) || half < 2 || !isBlock(first) || !isBlock(last) || first[0]?.sort === last[0]?.sort)
    return undefined
  return first.map((one, i) => ({ [one.sort]: one, [(last[i] as (typeof last)[0]).sort]: last[i] }))
}

/** What is bought, with its size: behind its number, else behind its price, else before them. */
function nameOf({ said }: Heard, message: readonly Token[], from: number, { count, price }: Pair): string {
  const spots = [count, price].filter((it) => it !== undefined).map((it) => it.at)
  const slice = (first: number, end: number): string =>
    end > first ? said.slice((message[first] as Token).start, (message[end - 1] as Token).end) : ''
  const behind = (part: Part | undefined): string => {
    if (!part) return ''
    let first = part.at + 1
    while (isSmall(message[first])) first++
    let end = first
    while (isOfName(message[end]) && end - first < 6) end++
    return slice(first, end)
  }
  const before = (): string => {
    let end = Math.min(...spots)
    while (end > from && !isOfName(message[end - 1])) end--
    let first = end
    while (first > from && (isOfName(message[first - 1]) || isBetweenSizes(message, first - 1)) && end - first < 5)
      first--
    return slice(first, end)
  }
  return behind(count) || behind(price) || before()
}
const isSmall = (token: Token | undefined): boolean =>
  isWord(token) && (filler.has(token.stem) || eachOf.test(token.stem) || token.stem === 'of' || token.stem === 'more')
/** The “x” of “2x4x8”. */
const isBetweenSizes = (message: readonly Token[], at: number): boolean =>
  message[at]?.stem === 'x' && message[at - 1]?.reading !== undefined && message[at + 1]?.reading !== undefined
/** A word of a name, or a size in it: “1.8 m pales”, “2x4s”. */
const isOfName = (token: Token | undefined): boolean =>
  token !== undefined &&
  (token.reading
    ? token.reading.section !== undefined || /^(length|mass|volume)$/.test(token.reading.quantity?.kind ?? '')
    : isWord(token) &&
      !noName.test(token.stem) &&
      !(filler.has(token.stem) && token.stem !== 'of') &&
      !atPrice.test(token.stem))
