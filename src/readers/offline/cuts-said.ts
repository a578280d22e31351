// This file is about cut lists: “12 pieces at 45 in and 8 at 30 in, from 8 ft boards at $6.80 or 10 ft ones at $9.20”.
// A length with a number before it is a piece; one with a price behind it, or behind “from”, is what the yard sells.
import { yard } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

const sells = /^(from|out|sell|sells|sold|stock|come|comes|offer|offers)$/
const parts = /^(and|or|then|plus|,|;|\.|:|\n|with|from|out|cut|keep)$/
/** What such a length is of, where it is of no piece and no board. */
const ofTheSaw = /^(kerf|blade|saw|cut|trim|trimmed|square|squared|off|wide|thick)$/

/** Every length of a cut list with its number or price, where a cut list is what is asked. */
export function cutsIn(message: readonly Token[], needed: ReadonlySet<string>): Bound[] {
  if (!needed.has('pieceLengths') || !needed.has('stockLengths')) return []
  let isSold = false
  return message.flatMap((token, spot) => {
    if (sells.test(token.stem)) isSold = true
    const length = token.reading
    if (length?.quantity?.kind !== 'length' || length.section || isOfTheSaw(message, spot)) return []
    const price = priceBehind(message, spot)
    if (price) return [bound(length, 'stockLengths'), bound(price, 'stockPrices')]
    const count = countBeside(message, spot)
    if (count)
      return isFromOffcuts(message, spot)
        ? [bound(length, 'smallLengths'), bound(count, 'smallCounts')]
        : [bound(length, 'pieceLengths'), bound(count, 'pieceCounts')]
    return isSold ? [bound(length, 'stockLengths')] : []
  })
}

const bound = (reading: Tagged, word: string): Bound => ({ reading, word, at: yard, score: weight.byPlace })

const isWord = (token: Token | undefined): token is Token =>
  token !== undefined && !token.tag && !parts.test(token.stem) && !parts.test(token.text)

const isOfTheSaw = (message: readonly Token[], spot: number): boolean =>
  [spot - 2, spot - 1, spot + 1].some((at) => !message[at]?.tag && ofTheSaw.test(message[at]?.stem ?? '')) &&
  !/^(cut)$/.test(message[spot - 2]?.stem ?? '')

/** “8 ft boards at $6.80”, “8 ft ($6.80)”: the price of what was named last. */
function priceBehind(message: readonly Token[], spot: number): Tagged | undefined {
  let at = spot + 1
  while (at <= spot + 6 && isWord(message[at])) at++
  const reading = message[at]?.reading
  return reading?.quantity?.kind === 'money' && !reading.per ? reading : undefined
}

/** “12 pieces at 45 in”, “12 × 45 in”, “45 in × 12”. */
function countBeside(message: readonly Token[], spot: number): Tagged | undefined {
  let at = spot - 1
  while (at >= spot - 5 && isWord(message[at])) at--
  const behind = /^[x×*]$/.test(message[spot + 1]?.stem ?? '') ? message[spot + 2]?.reading : undefined
  return [message[at]?.reading, behind].find((it) => it?.bare && it.bare.d === 1n && !it.proportion && !it.clock)
}

/** “6 caps of 5 1/2 in from the offcuts”. */
function isFromOffcuts(message: readonly Token[], spot: number): boolean {
  for (let at = spot + 1; at <= spot + 6 && message[at] && !message[at]?.tag; at++)
    if (/^offcuts?$/.test((message[at] as Token).stem)) return true
  return false
}
