// This file is about money and measures asked in one go, or going on from the last answer: each of the ways it may be put, in turn.
import type { Request } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { billIn } from './bills.ts'
import { budgetIn } from './budgets-said.ts'
import { eachOfGroups } from './groups-said.ts'
import { besideLast, priceOfOneIn } from './each-priced.ts'
import { loadIn } from './bulk-said.ts'
import { declined } from './declines.ts'
import { goingOnIn } from './money-onward.ts'
import { cansPricedIn } from './painting-said.ts'
import { packsIn } from './packs-said.ts'
import { pricesApartIn } from './prices-apart-said.ts'
import { moneyLeftIn } from './money-left-said.ts'
import { moneyHadIn } from './money-had-said.ts'
import { packPricesIn } from './pack-prices-said.ts'
import { empty } from './plain-phrases.ts'
import { quoteIn } from './quotes-said.ts'
import { rentIn } from './rents-said.ts'
import { savingIn } from './saving-said.ts'
import { saidWithin } from './said-within.ts'
import type { Token } from './stems.ts'
import { taxesIn } from './taxes-said.ts'

/** The request of a message about a bill, a budget, a load, a rent, so many to each at a price, or of one that goes on from the last answer. `read` reads what a message holds beside it. */
export const moneyAsked = (
  heard: Heard,
  message: readonly Token[],
  read: (heard: Heard) => Request,
): Request | undefined =>
  heard.said.length > 900
    ? undefined
    : (cansPricedIn(heard, message) ??
      packsIn(heard, message) ??
      pricesApartIn(heard, message) ??
      moneyHadIn(heard, message) ??
      moneyLeftIn(heard) ??
      savingIn(heard) ??
      packPricesIn(heard, message) ??
      besideLast(heard, message) ??
      billIn(heard, message) ??
      priceOfOneIn(heard, message) ??
      taxesIn(heard, message) ??
      budgetIn(heard, message) ??
      quoteIn(heard) ??
      loadIn(heard) ??
      rentIn(heard) ??
      eachOfGroups(heard, message) ??
      goingOnIn(heard, message) ??
      saidWithin(heard, message, read) ??
      thingsWithoutRun(heard))

const priced =
  /\b(posts?|rails?|pickets?|palings?|boards?|panels?|caps?)\s+(?:(?:are|r|is|at|cost)\s+)?[$£€]?\d+(?:\.\d\d)?(?!\s*(?:x|\/|mm|cm|m|ft|feet|foot|in|inch(?:es)?|per|to|a|wide|high|tall|long)\b|[\d"'])/gi
const ofRuns = /\b(front|back|left|right|sides?|north|south|east|west|runs?|how|what|which)\b|\?/i
/** “50 ft, 8 ft sections, posts are 14 bucks, rails 5, pickets 2.75”, and nothing asked: prices that no sum of sizes has a place for. */
function thingsWithoutRun(heard: Heard): Request | undefined {
  const { readings, said } = heard
  const hasMoney = readings.some((it) => it.quantity?.kind === 'money')
  const sizes = readings.filter((it) => it.quantity?.kind === 'length')
  if (!hasMoney || sizes.length < 2 || ofRuns.test(said) || [...said.matchAll(priced)].length < 2) return undefined
  return { ...empty, declines: declined('unclear', said.slice(0, 200)) }
}
