// This file is about a bill whose numbers and prices do not stand side by side: it is of other things, and is asked about.
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'

/** How a number and its price follow each other: “12 posts at 9.50”, or “9.50 each, need 12”. */
const isCountFirst = (count: Tagged, price: Tagged): boolean => count.start < price.start
// “Each, I shall need about” is all that stands between a number and its price.
const nearly = 25
const isFar = (count: Tagged, price: Tagged, said: string): boolean => {
  const between = isCountFirst(count, price) ? said.slice(count.end, price.start) : said.slice(price.end, count.start)
  return between.length > nearly || /[.?!]\s/.test(between)
}

/**
 * The request without the numbers and prices of its bill, where some are told number first and others price first, and some of them stand far apart:
 * of “I put 700 by, told her 900, 60 boards at 3.20”, the 700 is no price of 900 things.
 */
export function withoutPairsApart(request: Request, { readings, said }: Heard): Request {
  const of = (name: string): Tagged[] =>
    request.told.flatMap(({ word, from }) => (word === name ? readings.filter((it) => it.tag === from.tag) : []))
  const [counts, prices] = [of('itemCounts'), of('unitPrices')]
  if (counts.length < 2 || counts.length !== prices.length) return request
  const orders = new Set(counts.map((count, i) => isCountFirst(count, prices[i] as Tagged)))
  const isOfBill = ({ word }: Told): boolean => word === 'itemCounts' || word === 'unitPrices'
  const isApart = orders.size > 1 && counts.some((count, i) => isFar(count, prices[i] as Tagged, said))
  return !isApart ? request : { ...request, told: request.told.filter((it) => !isOfBill(it)) }
}
